package read

import (
	"fmt"
	"math"
	"slices"

	"strakebook/calc"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// What a table gives of its own, in a column or by its figures, is held against what
// is set for all: neither is passed over in silence.

// against holds what the tables give against what is set, once all are read.
func (r *reader) against() {
	r.slopesOfRuns()
	r.outsideWorked()
	r.slopesSet()
	r.spacingIdle()
	r.bareIdle()
}

// slopesSet makes a slope given on the command line hold over those listed for
// strakes; the book's own Settings are for strakes that list none.
func (r *reader) slopesSet() {
	for _, strips := range []bool{true, false} {
		name, set := "plank scarf slope", r.rules.Scarf.PlankSlope
		if strips {
			name, set = "strip scarf slope", r.rules.Scarf.StripSlope
		}
		if !r.commanded(name) {
			continue
		}
		var listed []source.Reading[float64]
		for i := range r.job.Strakes {
			s := &r.job.Strakes[i]
			if (s.Skin == hull.Strips) != strips || !s.Slope.OK() || s.Slope.Value == set {
				continue
			}
			listed = append(listed, s.Slope)
			s.Slope = source.Reading[float64]{Cell: s.Slope.Cell}
		}
		r.passedOver(name, fmt.Sprintf("%g to 1", set), "the list of strakes gives scarfs of its own", listed)
	}
}

// commanded says that a setting is as the command line has it, or had it when the book
// was made that is handed back.
func (r *reader) commanded(name string) bool {
	return r.stated[name].by == byCommand || slices.ContainsFunc(r.job.SetInBook, func(s calc.SetInBook) bool { return s.Name == name && s.Commanded })
}

// passedOver tells of figures listed that a setting held over.
func (r *reader) passedOver(name, set, says string, listed []source.Reading[float64]) {
	if len(listed) == 0 {
		return
	}
	f := finding.Finding{Kind: ConventionTwo, Cell: listed[0].Cell, Reads: listed[0].Text,
		Text: fmt.Sprintf("%s, and %s: %s was used", says, r.stated[name].says(name, set), set),
		Do:   fmt.Sprintf("leave %q off the command line, or write in its box what it was, where the list is right", name)}
	for _, l := range listed[1:] {
		f.Also = append(f.Also, l.Cell)
	}
	r.add(f)
}

// spacingIdle tells of a spacing that is set where the table gives positions that
// are not so apart: it places only stations that are given none.
func (r *reader) spacingIdle() {
	who, spacing := r.stated["station spacing"], r.rules.Hull.StationSpacing
	if who.by == "" || spacing == 0 {
		return
	}
	for _, o := range r.job.Offsets {
		for i := 1; i < len(o.Stations); i++ {
			a, b := o.Stations[i-1], o.Stations[i]
			x, okA := stationNumber(a.Name)
			y, okB := stationNumber(b.Name)
			if !okA || !okB || !a.At.OK() || !b.At.OK() || (b.At.Value-a.At.Value-spacing.Times(math.Abs(y-x))).Abs() <= measure.Eighth {
				continue
			}
			r.add(finding.Finding{Kind: ConventionTwo, Cell: b.At.Cell, Also: who.cells(), Reads: b.At.Text,
				Text: fmt.Sprintf("%ss %s and %s are given %v apart, and %s: the positions given were used", o.Places, a.Name, b.Name, b.At.Value-a.At.Value, who.says("station spacing", spacing.String())),
				Do:   "look which is so: clear the positions, or take the setting out"})
			return
		}
	}
}

// bareIdle tells that a unit given on the command line for bare numbers was used by
// none.
func (r *reader) bareIdle() {
	if who := r.stated["bare numbers"]; who.by == byCommand && !r.bared {
		r.add(finding.Finding{Kind: ConventionRead,
			Text: fmt.Sprintf("%s, and no figure was read by it: each table's own headings, captions or figures say its unit", who.says("bare numbers", r.bare.String()))})
	}
}

// formed is how some cells are written, by what is said of them and the unit that is
// set for bare numbers.
func (r *reader) formed(e evidence, said measure.Form, bare measure.Unit, coarse bool) decision {
	d := decide(e, said, bare, coarse)
	r.bared = r.bared || slices.ContainsFunc(d.why, func(why string) bool { return why == bySetting(bare) })
	return d
}
