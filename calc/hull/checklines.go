package hull

import (
	"cmp"
	"math"
	"slices"

	"strakebook/calc/measure"
)

// When two lines are believed to have changed places.
const (
	zigzagShare = 0.8 // of the sections at which they differ turn less with them changed about
	zigzagMends = 0.6 // and all of them together turn at most this share
	zigzagLeast = 3   // stations at which they differ
)

// mendLines finds the two neighbouring waterlines, or buttocks, that would have to
// change places for the sections not to run back and forth.
func (w whole) mendLines() (best whole, ok bool) {
	most := zigzagMends
	for _, role := range []Role{Waterline, Buttock} {
		family := w.o.family(role)
		for n := 0; n+1 < len(family); n++ {
			now, changed, fewer, differ := w.turns(family, n)
			if differ >= zigzagLeast && float64(fewer) >= zigzagShare*float64(differ) && changed <= most*now {
				most, ok = changed/now, true
				best = w.swapLines(family[n], family[n+1])
			}
		}
	}
	return best, ok
}

// family is the lines of a role whose place is known, in the order of their
// places; where none is known, of waterlines those of the table in its order.
func (o Offsets) family(role Role) []int {
	var all, open []int
	for i, l := range o.Lines {
		if l.Role != role || (role == Waterline) != (l.View == HalfBreadth) {
			continue
		}
		if open = append(open, i); l.At.OK() {
			all = append(all, i)
		}
	}
	if len(all) == 0 && role == Waterline {
		return open
	}
	slices.SortStableFunc(all, func(a, b int) int { return cmp.Compare(o.Lines[a].At.Value, o.Lines[b].At.Value) })
	return all
}

// turns is how much the sections turn about the n-th line of a family and the
// next, as they are and with the two changed about; at how many stations the two
// differ, and at how many of those changing them makes the section turn less.
func (w whole) turns(family []int, n int) (now, changed float64, fewer, differ int) {
	from, to := max(0, n-2), min(len(family), n+4)
	if to-from < 4 {
		return 0, 0, 0, 0
	}
	for k := range w.o.Stations {
		at, v := make([]float64, 0, 6), make([]float64, 0, 6)
		for i := from; i < to; i++ {
			l := w.o.Lines[family[i]]
			if !l.Values[k].OK() || l.View == HalfBreadth && l.Values[k].Value <= 0 {
				at = at[:0]
				break
			}
			place := float64(l.At.Value)
			if !l.At.OK() {
				place = float64(i) * float64(w.o.broadest()) / 4 // as the checks of sections have it
			}
			at, v = append(at, place), append(v, float64(l.Values[k].Value))
		}
		a, b := n-from, n-from+1
		if len(at) < 4 || math.Abs(v[a]-v[b]) <= 2*float64(w.o.Resolution) {
			continue
		}
		is := turning(at, v)
		v[a], v[b] = v[b], v[a]
		would := turning(at, v)
		now, changed = now+is, changed+would
		if differ++; would < is {
			fewer++
		}
	}
	return now, changed, fewer, differ
}

// turning is how far a run of points turns in all, both ways counted.
func turning(x, y []float64) float64 {
	sum, last := 0.0, 0.0
	for i := 1; i < len(x); i++ {
		angle := math.Atan2(y[i]-y[i-1], x[i]-x[i-1])
		if i > 1 {
			sum += math.Abs(angle - last)
		}
		last = angle
	}
	return sum
}

// broadest is the greatest half-breadth of the table's waterlines.
func (o Offsets) broadest() measure.Length {
	most := measure.Length(0)
	for _, l := range o.Lines {
		for _, v := range l.Values {
			if l.Role == Waterline && l.View == HalfBreadth && v.OK() {
				most = max(most, v.Value)
			}
		}
	}
	return most
}
