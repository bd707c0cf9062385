package read

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// halfSiding is the half siding of a keel or stem that words state once for a whole
// line, as "Rabbet, half siding 1 in", and what stands after it.
var halfSiding = regexp.MustCompile(`\b(?:half|1/2)[ -]*(?:siding|sided|sid\.)[ :=]*(?:is |of )?([^,;()]*)`)

// sidingsIn keeps what the words of the lines of a table say of half sidings.
func (r *reader) sidingsIn(lines []tableLine, t *stationTable) {
	for _, l := range lines {
		if l.line.View != hull.Height || l.line.Role != hull.Rabbet && l.line.Role != hull.Keel {
			continue
		}
		words := []string{l.line.Name, l.over}
		if len(lines) == 1 {
			words = append(words, t.titlesOver()...)
		}
		for _, w := range words {
			if m := halfSiding.FindStringSubmatch(strings.ToLower(measure.Fold(w))); m != nil && strings.ContainsAny(m[1], "0123456789") {
				r.sidings[l.line.Cell] = strings.TrimSpace(m[1])
				break
			}
		}
	}
}

// ofSidings says that a line is headed as one of half sidings, station by station.
func ofSidings(label string) bool {
	m := halfSiding.FindStringSubmatch(strings.ToLower(measure.Fold(label)))
	return m != nil && !strings.ContainsAny(m[1], "0123456789")
}

// sidedTo gives the rabbet or keel the half siding that its title states, as its
// half-breadths wherever its heights are given; where it has such they hold.
func (r *reader) sidedTo(o *hull.Offsets) {
	for _, l := range slices.Clone(o.Lines) {
		said := r.sidings[l.Cell]
		if said == "" || slices.ContainsFunc(o.Lines, func(b hull.Line) bool { return b.Role == l.Role && b.View == hull.HalfBreadth }) {
			continue
		}
		half, err := sidingOf(said)
		if err != nil || half < 0 {
			r.add(finding.Finding{Kind: LengthUnread, Cell: l.Cell, Reads: said, Text: fmt.Sprintf("the half siding in %q reads %q: expected a length with its unit", l.Name, said)})
			continue
		}
		b := hull.Line{Name: l.Name, View: hull.HalfBreadth, Role: l.Role, Cell: l.Cell, Values: make([]source.Reading[measure.Length], len(l.Values))}
		for k, v := range l.Values {
			if v.OK() {
				b.Values[k] = source.Reading[measure.Length]{Value: half, State: source.Given, Text: said, Cell: l.Cell}
			}
		}
		o.Lines = append(o.Lines, b)
		r.add(finding.Finding{Kind: ConventionRead, Cell: l.Cell, Reads: said, Text: fmt.Sprintf("%q stands %s out from the middle line throughout, as its title says", l.Name, o.Form.Write(half))})
	}
}

// sidingOf is a half siding that shows its unit, or is in feet-inches-eighths.
func sidingOf(said string) (measure.Length, error) {
	if n := measure.Notations(said); len(n) > 0 && n[0] == measure.FeetInchesEighths {
		return measure.Form{Notation: measure.FeetInchesEighths}.Length(said)
	}
	return measure.ParseLength(said, measure.NoUnit)
}
