package bevel

import (
	"fmt"
	"math"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// grossly is how many times the rule a lifted bevel must be off the hull's own for
// the looseness of the lines to be no excuse: our choice, twice what a table to an
// eighth leaves uncertain where most seams of a station differ, and twice again.
const grossly = 4

// far gathers the bevels far off the hull's own that are not told one by one.
type far struct {
	table  Readings
	of     []compared
	beyond float64
	rules  Rules
	cells  []source.Cell
	worst  [2]int // seam and station
}

// see takes one in where it is far off, and was not found odd in its own seam.
func (f *far) see(i, k int, j judged) {
	if _, odd := j.odd[i][k]; odd || math.Abs(f.of[i].diff[k]) <= f.beyond {
		return
	}
	if len(f.cells) == 0 || math.Abs(f.of[i].diff[k]) > math.Abs(f.of[f.worst[0]].diff[f.worst[1]]) {
		f.worst = [2]int{i, k}
	}
	f.cells = append(f.cells, f.table.Seams[i].Readings[k].Cell)
}

// off is how far a bevel lies off the hull's own as that is shown.
func (f *far) off(i, k int) measure.Angle {
	own := f.of[i].hull[k]
	lifted := own + f.of[i].diff[k]
	return measure.Angle(math.Abs(lifted - float64(measure.Angle(own).Round(hundredth)))).Round(hundredth)
}

// found names the worst, and says how many there are.
func (f *far) found() finding.List {
	if len(f.cells) == 0 {
		return nil
	}
	i, k := f.worst[0], f.worst[1]
	s, v := f.table.Seams[i], f.table.Seams[i].Readings[k]
	one := finding.Finding{Kind: HullGross, Cell: v.Cell, Reads: v.Text,
		Text: fmt.Sprintf("%s at %s reads %q and the hull as lined off turns %s there, %s degrees off, the worst of %d beyond %s: the reading, its sign, the edge or plane it was lifted by, or the offsets",
			s.name(), f.table.called(k), v.Text, f.table.hullsOwn(f.of[i].hull[k], f.rules),
			f.off(i, k).Write(), len(f.cells), measure.Angle(f.beyond).Write())}
	for _, c := range f.cells {
		if c != v.Cell {
			one.Also = append(one.Also, c)
		}
	}
	return finding.List{one}
}
