package read

import (
	"fmt"
	"regexp"
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
	l.line.At, l.line.Down = source.Reading[measure.Length]{Cell: l.line.Cell}, source.Reading[measure.Angle]{Cell: l.line.Cell}
	own, over := strings.ToLower(measure.Fold(l.line.Name)), strings.ToLower(measure.Fold(l.over))
	if v, text, ok := r.diagonalHeight(l, t, form, own, over); ok {
		l.line.At = source.Reading[measure.Length]{Value: v, State: source.Given, Text: text, Cell: l.line.Cell}
	}
	for _, words := range []string{l.angle, own, over} {
		if v, text, ok := slant(words, words == l.angle); ok {
			l.line.Down = source.Reading[measure.Angle]{Value: v, State: source.Given, Text: text, Cell: l.line.Cell}
			return
		}
	}
}

var (
	// angleText is an angle within a label: the 45 deg of "Diagonal 4-0-0 45 deg".
	angleText = regexp.MustCompile(`\d+(?:[.,]\d+)?(?: \d+/\d+)? ?(?:° ?\d+(?:[.,]\d+)? ?'|°|deg(?:rees|ree|s)?\b\.?)`)
	// upright is an angle that is off the vertical, not off level.
	upright = regexp.MustCompile(`\b(?:to|from|off|with) (?:the )?vertical\b`)
	// heightText is a length within a label that shows what it is.
	heightText = regexp.MustCompile(`\d+-\d+-\d+[+-]?|\d[\d./ -]* ?(?:'|ft\b\.?|feet\b)(?: ?\d[\d./ -]* ?(?:"|inches\b|inch\b|ins\b\.?|in\b\.?)?)?|\d[\d./ ]* ?(?:mm|cm|m|inches|inch|ins|in)\b\.?|\d[\d./ ]* ?"`)
	// onCentre is a bare number that is said to be up on the centre line.
	onCentre = regexp.MustCompile(`(\d+(?:[.,/-]\d+)*) (?:up )?(?:on|above) `)
)

// slant is the angle below level at which words say that a diagonal runs out; alone,
// they are nothing but an angle.
func slant(words string, alone bool) (v measure.Angle, text string, ok bool) {
	text = angleText.FindString(words)
	if alone {
		text = words
	}
	if text == "" {
		return 0, "", false
	}
	v, err := measure.ParseAngle(strings.TrimRight(text, ". "))
	_, after, _ := strings.Cut(words, text)
	after = strings.TrimSpace(after)
	switch {
	case err != nil, strings.HasPrefix(after, "up"), strings.HasPrefix(after, "above"):
		return 0, "", false
	case upright.MatchString(after):
		v = 90 - v
	}
	return v, text, v > 0 && v < 90
}

// isAngle says that a label's cell holds nothing but an angle.
func isAngle(c sheet.Cell, word string) bool {
	_, err := measure.ParseAngle(word)
	return c.Kind == sheet.Number || c.Kind == sheet.Text && err == nil
}

// diagonalHeight is where on the centre line a diagonal begins: in a column headed so,
// in its label, or in the title over it.
func (r *reader) diagonalHeight(l *tableLine, t *stationTable, form measure.Form, words ...string) (measure.Length, string, bool) {
	if l.height != "" {
		if v, text, ok := lengthIn(strings.ToLower(measure.Fold(l.height))); ok {
			return v, text, true
		}
		if v, ok := r.headed(l.height, t, form); ok {
			return v, l.height, true
		}
	}
	for _, w := range words {
		w = angleText.ReplaceAllString(w, " ")
		if v, text, ok := lengthIn(w); ok {
			return v, text, true
		}
		if bare := onCentre.FindStringSubmatch(w); bare != nil && form.Unit != measure.NoUnit {
			form.Notation = measure.Decimal
			if v, err := form.Length(bare[1]); err == nil {
				return v, bare[1], true
			}
		}
	}
	return 0, "", false
}

// lengthIn is the first length within words that shows what it is.
func lengthIn(words string) (v measure.Length, text string, ok bool) {
	for _, text := range heightText.FindAllString(words, -1) {
		text = strings.TrimSpace(text)
		if measure.MarkedUnit(text) != measure.NoUnit {
			if v, err := measure.ParseLength(text, measure.NoUnit); err == nil {
				return v, text, true
			}
		}
		if n := measure.Notations(text); len(n) > 0 && n[0] == measure.FeetInchesEighths {
			if v, err := (measure.Form{Notation: n[0]}).Length(text); err == nil {
				return v, text, true
			}
		}
	}
	return 0, "", false
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
