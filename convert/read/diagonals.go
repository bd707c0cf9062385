package read

import (
	"fmt"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// placed reads where a line runs: the height or the distance out of a level line, the
// height and the angle of a diagonal.
func (r *reader) placed(l *tableLine, t *stationTable, form measure.Form) {
	if l.line.Role != hull.DiagonalLine {
		l.line.At = r.level(l, t, form)
		return
	}
	at := func(text string) source.Reading[measure.Length] {
		return source.Reading[measure.Length]{State: source.Given, Text: text, Cell: l.line.Cell}
	}
	l.line.At, l.line.Down = source.Reading[measure.Length]{Cell: l.line.Cell}, source.Reading[measure.Angle]{Cell: l.line.Cell}
	s := r.runs(l, t, form)
	if l.line.Unread = s.unread; s.unread != "" {
		return
	}
	if s.heightText != "" {
		l.line.At = at(s.heightText)
		l.line.At.Value = s.height
	}
	if s.angleText != "" {
		l.line.Down = source.Reading[measure.Angle]{Value: s.down, State: source.Given, Text: s.angleText, Cell: l.line.Cell}
	}
}

// runs is where a diagonal runs: by columns headed so, by its label, and by the title
// over it where these do not say.
func (r *reader) runs(l *tableLine, t *stationTable, form measure.Form) run {
	s := r.columned(l, t, form)
	s.join(l.line.Name, form)
	if s.heightText == "" || s.angleText == "" || saidOtherwise.MatchString(strings.ToLower(l.over)) {
		s.join(l.over, form)
	}
	return s
}

// join adds what more words say. Words without a figure are a name, unless they place
// diagonals otherwise.
func (s *run) join(words string, form measure.Form) {
	o := runOf(words, form)
	if !strings.ContainsAny(words, "0123456789") {
		o = run{}
		if saidOtherwise.MatchString(strings.ToLower(words)) {
			o.unread = words
		}
	}
	switch {
	case s.unread != "":
	case o.unread != "":
		s.unread = o.unread
	case s.heightText != "" && o.heightText != "" && s.height != o.height:
		s.unread = s.heightText + ", " + o.heightText
	case s.angleText != "" && o.angleText != "" && s.down != o.down:
		s.unread = s.angleText + ", " + o.angleText
	}
	if s.heightText == "" {
		s.height, s.heightText = o.height, o.heightText
	}
	if s.angleText == "" {
		s.down, s.angleText = o.down, o.angleText
	}
}

// columned is where a diagonal runs by the columns of its own for it.
func (r *reader) columned(l *tableLine, t *stationTable, form measure.Form) run {
	var s run
	heads := [2]string{strings.ToLower(l.heightHead), strings.ToLower(l.angleHead)}
	if l.height != "" {
		v, err := labelLength(strings.ToLower(measure.Fold(l.height)), form)
		ok := err == nil && (measure.MarkedUnit(l.height) != measure.NoUnit || threeDashed.MatchString(measure.Fold(l.height)))
		if !ok {
			v, ok = r.headed(l.height, t, form)
		}
		if s.height, s.heightText = v, l.height; !ok {
			s.unread = l.height
		} else if otherwiseHeight.MatchString(heads[0]) {
			s.unread = l.heightHead
		}
	}
	if l.angle != "" {
		v, err := measure.ParseAngle(l.angle)
		if s.down, s.angleText = v, l.angle; err != nil || v <= 0 || v >= 90 {
			s.unread = l.angle
		} else if otherwiseAngle.MatchString(heads[1]) {
			s.unread = l.angleHead
		}
	}
	return s
}

// isAngle says that a label's cell holds nothing but an angle.
func isAngle(c sheet.Cell, word string) bool {
	_, err := measure.ParseAngle(word)
	return c.Kind == sheet.Number || c.Kind == sheet.Text && err == nil
}

// diagonalsSaid says how the words about diagonals are read, by the first of them.
func (r *reader) diagonalsSaid(lines []tableLine) {
	n := 0
	var first hull.Line
	for _, l := range lines {
		if l.line.Role == hull.DiagonalLine && l.line.At.OK() && l.line.Down.OK() {
			if n++; n == 1 {
				first = l.line
			}
		}
	}
	if n == 0 {
		return
	}
	text := fmt.Sprintf("%s is read as running out and down from %q above base on the centre line, at %s degrees below level, its figures along it", first.Name, first.At.Text, first.Down.Value.Write())
	if n > 1 {
		text += fmt.Sprintf(", and so %d more", n-1)
	}
	r.add(finding.Finding{Kind: ConventionRead, Cell: first.Cell, Text: text})
}
