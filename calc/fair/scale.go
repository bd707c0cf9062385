package fair

import (
	"math"
	"slices"
)

// scale is the table's own scatter: the robust spread of all its departures from
// the cubics through four neighbours or the quintics through six, whichever is
// the less. On a row that bends much the cubic's are not scatter.
func scale(rows []Row, r Rules) float64 {
	least := math.Inf(1)
	for _, count := range []int{4, 6} {
		var all []float64
		for _, row := range rows {
			l := newLine(row)
			for k := range l.at {
				if p, i := l.piece(k); len(p.x) >= max(r.Least, count+1) {
					y, gauge := p.leaveOut(i, count)
					all = append(all, math.Abs(p.y[i]-y)/gauge)
				}
			}
		}
		if len(all) > 0 {
			least = min(least, 1.4826*Median(all))
		}
	}
	if math.IsInf(least, 1) {
		return r.Floor
	}
	return max(least, r.Floor)
}

// Median is the middle of values in order, of an even number the mean of the
// middle two. It panics on none.
func Median(v []float64) float64 {
	s := slices.Clone(v)
	slices.Sort(s)
	if n := len(s); n%2 == 0 {
		return (s[n/2-1] + s[n/2]) / 2
	}
	return s[len(s)/2]
}
