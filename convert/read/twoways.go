package read

import (
	"fmt"
	"slices"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// twoWay is a figure that can be read in two ways.
type twoWay struct {
	v    source.Reading[measure.Length]
	err  *measure.ReadError
	what string
}

// chosen settles the figures of a table that read two ways, where the line can
// only pass through one of the two. The rest are left, and reported.
func (r *reader) chosen(lines []tableLine) {
	r.twoWays = slices.DeleteFunc(r.twoWays, func(w twoWay) bool {
		for i := range lines {
			values := lines[i].line.Values
			for k := range values {
				if values[k].Cell != w.v.Cell {
					continue
				}
				l, ok := nearest(values, k, w.err.Ways)
				if !ok {
					return false
				}
				values[k].Value, values[k].State = l, source.Given
				r.add(finding.Finding{Kind: LengthChosen, Cell: w.v.Cell, Reads: w.v.Text, Suggests: measure.EighthsText(l),
					Text: fmt.Sprintf("%s reads %q, which can be two lengths: by its neighbours it is %s", w.what, w.v.Text, measure.FeetInchesText(l))})
				return true
			}
		}
		return false
	})
}

// nearest is the one of several lengths that lies on the line through a place's
// neighbours; ok is false where two come near it, or none does.
func nearest(values []source.Reading[measure.Length], k int, ways []measure.Length) (measure.Length, bool) {
	at, scatter, ok := drawn(values, k)
	if !ok || len(ways) < 2 {
		return 0, false
	}
	ways = slices.Clone(ways)
	slices.SortFunc(ways, func(a, b measure.Length) int { return int((a - at).Abs() - (b - at).Abs()) })
	best, next := (ways[0] - at).Abs(), (ways[1] - at).Abs()
	return ways[0], best <= scatter && next > 4*scatter && next > 4*best
}

// drawn is where a line passes a place, straight between its neighbours or on
// from the last two, and how far off it may well be there.
func drawn(values []source.Reading[measure.Length], k int) (at, scatter measure.Length, ok bool) {
	var before, after []int
	for i := k - 1; i >= 0 && len(before) < 2; i-- {
		if values[i].OK() {
			before = append(before, i)
		}
	}
	for i := k + 1; i < len(values) && len(after) < 2; i++ {
		if values[i].OK() {
			after = append(after, i)
		}
	}
	v := func(i int) measure.Length { return values[i].Value }
	const least = measure.Inch / 2
	switch {
	case len(before) > 0 && len(after) > 0:
		a, b := before[0], after[0]
		at = v(a) + (v(b) - v(a)).Times(float64(k-a)/float64(b-a))
		return at, max((v(b)-v(a)).Abs()/2, least), true
	case len(before) == 2:
		return drawnOn(v(before[1]), v(before[0]), before[1], before[0], k)
	case len(after) == 2:
		return drawnOn(v(after[1]), v(after[0]), after[1], after[0], k)
	}
	return 0, 0, false
}

// drawnOn is a line drawn on from two places to a third beyond the second.
func drawnOn(a, b measure.Length, i, j, k int) (at, scatter measure.Length, ok bool) {
	const least = measure.Inch / 2
	return b + (b - a).Times(float64(k-j)/float64(j-i)), max((b - a).Abs(), least), true
}
