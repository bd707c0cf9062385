package read

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// ofMaxima says that a table's figures are fractions of a greatest breadth that
// stands beside them: each line reaches one, and its greatest is another number.
func (t *stationTable) ofMaxima(sums []name, lines []tableLine, cols []int) bool {
	for _, s := range sums {
		if !strings.Contains(strings.ToLower(s.text), "max") {
			continue
		}
		whole, other := 0, 0
		for _, l := range lines {
			if c := t.see(l.row, s.col); c.Kind == sheet.Number && c.Number > 0 && c.Number < 1 {
				other++
			}
			if slices.ContainsFunc(t.cells(l.row, cols), func(c sheet.Cell) bool { return c.Kind == sheet.Number && c.Number == 1 }) {
				whole++
			}
		}
		return other > 0 && whole == len(lines)
	}
	return false
}

// whole says that the half-breadths of a table of fractions each reach one.
func (r *reader) whole(lines []tableLine) bool {
	for _, l := range lines {
		if l.line.View != hull.HalfBreadth {
			continue
		}
		if !slices.ContainsFunc(l.line.Values, func(v source.Reading[measure.Length]) bool { return v.OK() && v.Value == measure.Metre }) {
			return false
		}
	}
	return true
}

// maxima reads a column of a table's own summary beside its stations. In a table
// of fractions the greatest breadth of each waterline is what its figures are
// fractions of; any other summary is left and noted.
func (r *reader) maxima(t *stationTable, s name, lines []tableLine, o hull.Offsets) {
	greatest := o.Fractions && r.whole(lines) && strings.Contains(strings.ToLower(s.text), "max")
	used := 0
	for i := range lines {
		l := &lines[i]
		c := t.see(l.row, s.col)
		if !filled(c) || !greatest || l.line.View != hull.HalfBreadth {
			continue
		}
		top, unread := length(c, measure.Form{Unit: measure.Fractions, Notation: measure.Decimal}, t.place(l.row, s.col))
		if unread != nil || !top.OK() || top.Value <= 0 {
			r.add(finding.Finding{Kind: LengthUnread, Cell: t.place(l.row, s.col), Reads: text(c),
				Text: fmt.Sprintf("the greatest breadth of %s reads %q: expected a fraction of the half beam", l.line.Name, text(c))})
			continue
		}
		used++
		for k := range l.line.Values {
			if v := &l.line.Values[k]; v.OK() {
				v.Value = v.Value.Times(float64(top.Value) / float64(measure.Metre))
			}
		}
	}
	at := t.place(t.head, s.col)
	if used > 0 {
		r.add(finding.Finding{Kind: ConventionRead, Cell: at, Reads: s.text,
			Text: fmt.Sprintf("%q is read as the greatest breadth of each waterline, and the figures of %d waterlines as fractions of it", s.text, used)})
		return
	}
	r.add(finding.Finding{Kind: SummaryLeft, Cell: at, Reads: s.text, Text: fmt.Sprintf("%q is the table's own summary and no station of it", s.text)})
}
