package bevel

import (
	"fmt"
	"math"

	"strakebook/calc/fair"
	"strakebook/calc/finding"
	"strakebook/calc/source"
)

// repeats notes a reading equal to the one before where the bevel changes by two
// steps of the gauge or more a station: an equal pair elsewhere is usual.
func repeats(b Readings, s Seam, y []float64, given []bool, odd map[int]fair.Odd) finding.List {
	var found finding.List
	isOdd := func(k int) bool { _, ok := odd[k]; return ok }
	for k := 2; k+1 < len(y); k++ {
		if given[k-2] && given[k-1] && given[k] && given[k+1] && y[k] == y[k-1] &&
			!isOdd(k-2) && !isOdd(k-1) && !isOdd(k) && !isOdd(k+1) &&
			math.Abs(y[k+1]-y[k-2])/3 >= 2*float64(b.Resolution) {
			v := s.Readings[k]
			found = append(found, finding.Finding{Kind: Repeated, Cell: v.Cell, Reads: v.Text, Also: []source.Cell{s.Readings[k-1].Cell},
				Text: fmt.Sprintf("%s reads %q at both %s and %s", s.name(), v.Text, b.called(k-1), b.called(k))})
		}
	}
	return found
}
