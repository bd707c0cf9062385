package read

import (
	"fmt"
	"regexp"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Half-breadths are out from the middle line and heights up from the base. Full breadths
// are halved, heights below a line of known height taken from it; where that height is
// not said they are left: read as heights above base they would draw another hull.

var (
	fullBreadths = regexp.MustCompile(`\b(?:full|whole|overall|total)[ -](?:mou?lded |inside |outside )?(?:breadths?|widths?|beams?)\b|\bbreadths? (?:overall|full)\b|\bbreadths? (?:over|across|of|from)\b[^.;]*\b(?:both sides|side to side|port to starboard)\b`)
	eitherSide   = regexp.MustCompile(`\b(?:half|halves|1/2|alike|each|same)\b`)
	downwards    = regexp.MustCompile(heightsOf + ` (?:below|under|beneath|down(?:wards)? from|(?:above|from|off) (?:the )?floor)\b|\bupside down\b`)
	aboveLoad    = regexp.MustCompile(heightsOf + ` (?:above|over|from|to|re)(?: the)? (?:l\.?w\.?l|d\.?w\.?l|load water ?line|designed water ?line|water ?line)\b`)
	ofBase       = regexp.MustCompile(`((?:\d+ )?\d[\d/.,'-]*"?(?: ?(?:ft|feet|foot|ins?|inches|mm|cm|m))?\.?(?: (?:\d+ )?\d[\d/.]* ?(?:ins?|inches|"))?) ?(?:above|over) (?:the )?base\b`)
	loadLine     = regexp.MustCompile(`\b(?:lwl|dwl|load water ?line|designed water ?line)\b`)
)

// heightsOf is heights in words, up to where they are from.
const heightsOf = `\b(?:heights?|depths?|hts?)\b\.?(?: (?:in|of|all|feet|ft|inches|ins|mm|taken|measured|given|the|lines?|sheer|deck|rabbet|chine))*`

// isFull says that words which name breadths have them from side to side.
func isFull(words string) bool {
	t := strings.ToLower(measure.Fold(words))
	return fullBreadths.MatchString(t) && !eitherSide.MatchString(t)
}

// aboveBase is the height above base that words give.
func aboveBase(words string, form measure.Form) (measure.Length, bool) {
	m := ofBase.FindStringSubmatch(strings.ToLower(measure.Fold(words)))
	if m == nil {
		return 0, false
	}
	t := strings.Trim(m[1], " .")
	if n := measure.Notations(t); len(n) > 0 && n[0] == measure.FeetInchesEighths {
		form = measure.Form{Notation: measure.FeetInchesEighths}
	} else if measure.MarkedUnit(t) != measure.NoUnit {
		v, err := measure.ParseLength(t, measure.NoUnit)
		return v, err == nil
	}
	v, err := form.Length(t)
	return v, err == nil
}

// inForm is a length as the table writes it, and its unit.
func inForm(v measure.Length, form measure.Form) string {
	if form.Notation == measure.Decimal && form.Unit != measure.NoUnit {
		return form.Write(v) + " " + form.Unit.String()
	}
	return form.Write(v)
}

// asMeasured makes the figures of some lines what their words say that they were
// measured from: halves of full breadths, heights above base of those below a line.
func (r *reader) asMeasured(lines []tableLine, form measure.Form) {
	told := map[string]bool{}
	for i := range lines {
		r.asMeasuredLine(&lines[i], form, told)
	}
}

func (r *reader) asMeasuredLine(l *tableLine, form measure.Form, told map[string]bool) {
	t := strings.ToLower(measure.Fold(l.viewBy))
	switch {
	case l.line.View == hull.HalfBreadth && isFull(l.viewBy):
		r.tellOnce(told, finding.Finding{Kind: ConventionRead, Cell: l.line.Cell, Reads: l.viewBy,
			Text: fmt.Sprintf("%q are read as full breadths: half of each is its half-breadth", l.viewBy)})
		change(l.line, func(v measure.Length) measure.Length { return v / 2 })
	case l.line.View != hull.Height:
	case aboveLoad.MatchString(t):
		r.fromLoad[l.line.Cell] = l.viewBy
	case downwards.MatchString(t):
		r.upright(l, form, told)
	}
}

// upright makes heights below a line heights above base, where it is said how high the
// line is; else they are left.
func (r *reader) upright(l *tableLine, form measure.Form, told map[string]bool) {
	datum, ok := aboveBase(l.viewBy, form)
	if !ok {
		r.tellOnce(told, finding.Finding{Kind: ConventionOpen, Cell: l.line.Cell, Reads: l.viewBy,
			Text: fmt.Sprintf("%q: how high that is above base is not said, and the heights were left", l.viewBy),
			Do:   "write it over them, as \"heights below a line 4 ft above base\", or give heights above base"})
		leave(l.line)
		return
	}
	r.tellOnce(told, finding.Finding{Kind: ConventionRead, Cell: l.line.Cell, Reads: l.viewBy,
		Text: fmt.Sprintf("%q are read as heights below a line %s above base: each was taken from that", l.viewBy, inForm(datum, form))})
	change(l.line, func(v measure.Length) measure.Length { return datum - v })
}

// listedFrom makes the breadths and heights of a list what its headings, else the words
// over it, say that they were measured from.
func (r *reader) listedFrom(t *records, cols map[string]column) {
	told := map[string]bool{}
	for _, field := range []string{"breadths", "heights"} {
		c, ok := cols[field]
		if !ok {
			continue
		}
		words := t.heads[t.cols[field]]
		if t.bareView(words) {
			for _, w := range t.caption {
				if r.words.has(w, field) {
					words = w
					break
				}
			}
		}
		l := tableLine{viewBy: words, line: hull.Line{View: hull.HalfBreadth, Cell: t.page.cell(t.head, t.cols[field])}}
		if field == "heights" {
			l.line.View = hull.Height
		}
		c.as = func(v *source.Reading[measure.Length]) {
			l.line.Values = []source.Reading[measure.Length]{*v}
			r.asMeasuredLine(&l, c.form, told)
			*v = l.line.Values[0]
		}
		cols[field] = c
	}
}

// bareView says that a heading names breadths or heights and says no more of them.
func (t *records) bareView(head string) bool {
	return len(tokens(inBrackets.ReplaceAllString(head, " "))) == 1
}

// tellOnce tells what is found of the lines under one title at the first of them.
func (r *reader) tellOnce(told map[string]bool, f finding.Finding) {
	if !told[f.Reads] {
		told[f.Reads] = true
		r.add(f)
	}
}

// change makes other figures of those of a line.
func change(l hull.Line, as func(measure.Length) measure.Length) {
	for i := range l.Values {
		if v := &l.Values[i]; v.OK() {
			v.Value = as(v.Value)
		}
	}
}

// leave takes the figures of a line as not read: what they are was asked.
func leave(l hull.Line) {
	for i := range l.Values {
		if v := &l.Values[i]; v.OK() {
			v.State = source.Unread
		}
	}
}

// signedName is the name of a waterline by its place above or below the load waterline.
var signedName = regexp.MustCompile(`\b(?:[ld]?wl|water ?line)\.? ?\+ ?\d|\b(?:[ld]?wl|water ?line)\.? -\d|\d (?:above|below)(?: (?:the )?(?:[ld]?wl|load water ?line|water ?line))?$`)

// fromLoadLine holds heights above the load waterline against waterlines that are named
// from base, and the other way about: how far apart the two are is asked where no words
// say it.
func (r *reader) fromLoadLine() {
	for i := range r.job.Offsets {
		o := &r.job.Offsets[i]
		var loads, heights, waterlines, named []*hull.Line
		words, signed, below := "", "", false
		for k := range o.Lines {
			l := &o.Lines[k]
			w, load := r.fromLoad[l.Cell]
			switch {
			case load:
				loads, words = append(loads, l), w
			case l.View == hull.Height && l.Role != hull.OtherLine:
				heights = append(heights, l)
				for _, v := range l.Values {
					below = below || v.OK() && v.Value < 0
				}
			case l.Role == hull.Waterline && l.At.OK():
				waterlines = append(waterlines, l)
				switch {
				case aboveOrBelow(l.Name), l.At.Value < 0:
					named, signed = append(named, l), l.Name
				case l.At.Value == 0 && loadLine.MatchString(strings.ToLower(l.Name)):
					named = append(named, l)
				}
			}
		}
		switch {
		case len(waterlines) == 0:
		case len(loads) > 0 && signed == "":
			r.fromBase(o, loads, words, func(l *hull.Line, up measure.Length) {
				change(*l, func(v measure.Length) measure.Length { return v + up })
			}, func(l *hull.Line) { leave(*l) })
		case len(loads) == 0 && signed != "" && len(heights) > 0 && !below:
			r.fromBase(o, named, signed, func(l *hull.Line, up measure.Length) { l.At.Value += up }, func(l *hull.Line) { l.At.State = source.Unread })
		}
	}
}

// fromBase raises lines that are from the load waterline by its height above base, or
// leaves them and asks for it.
func (r *reader) fromBase(o *hull.Offsets, lines []*hull.Line, words string, raise func(*hull.Line, measure.Length), drop func(*hull.Line)) {
	up, by := r.loadHeight(o)
	f := finding.Finding{Kind: ConventionRead, Cell: lines[0].Cell, Reads: words, Text: fmt.Sprintf("%q are from the load waterline: %s was added to each, as %q says", words, inForm(up, o.Form), by)}
	if by == "" {
		f = finding.Finding{Kind: ConventionOpen, Cell: lines[0].Cell, Reads: words,
			Text: fmt.Sprintf("%q are from the load waterline and other lines are from base: how high it lies is not said, and they were left", words),
			Do:   "write how high it is, as \"LWL is 2 ft above base\", or give them all from base"}
	}
	r.add(f)
	for _, l := range lines {
		if by == "" {
			drop(l)
		} else {
			raise(l, up)
		}
	}
}

// loadHeight is how high above base the words on a table's sheet have the load
// waterline, and those words.
func (r *reader) loadHeight(o *hull.Offsets) (measure.Length, string) {
	for _, p := range r.pages {
		if p.book.Name != o.Cell.Book || p.sheet.Name != o.Cell.Sheet {
			continue
		}
		remarks, titles := p.sheetWords()
		for _, w := range append(remarks, titles...) {
			if !loadLine.MatchString(strings.ToLower(measure.Fold(w))) {
				continue
			}
			if v, ok := aboveBase(w, o.Form); ok {
				return v, w
			}
		}
	}
	return 0, ""
}
