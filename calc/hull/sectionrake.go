package hull

import (
	"math"
	"slices"
)

// rake leans the transom off plumb: it is the last station, its place that of its
// foot, and its breadths and heights are as the body plan shows them. Every other
// station stands plumb.
func (t *table) rake(r Rules) {
	last := len(t.o.Stations) - 1
	if last < 0 || !t.o.Stations[last].Transom || r.TransomRake == 0 {
		return
	}
	low := math.Inf(1)
	for _, p := range t.pairs {
		if at, ok := t.place(p, last); ok {
			low = min(low, at.z)
		}
	}
	if !math.IsInf(low, 1) {
		t.lean, t.low = r.TransomRake.Tan(), low
	}
}

// leaning says that a station is a transom off plumb.
func (t *table) leaning(k int) bool { return t.lean != 0 && k == len(t.x)-1 }

// leans is how far aft of the station's place a height on it lies.
func (t *table) leans(k int, z float64) float64 {
	if !t.leaning(k) {
		return 0
	}
	return (z - t.low) * t.lean
}

// plumb is a section of a leaning transom as the body plan shows it, at one place
// along the hull. Its places are those of the section at the same t.
func (c *curve) plumb(x float64) *curve {
	flat := &curve{t: c.t, p: slices.Clone(c.p), in: slices.Clone(c.in), out: slices.Clone(c.out), s: make([]float64, len(c.s))}
	for i := range flat.p {
		flat.p[i].x, flat.in[i].x, flat.out[i].x = x, 0, 0
		if i > 0 {
			flat.s[i] = flat.s[i-1] + flat.lengthIn(i-1, flat.t[i-1], flat.t[i])
		}
	}
	return flat
}

// facing is the direction square to a station's plane, aft.
func (t *table) facing(k int) point {
	if !t.leaning(k) {
		return point{x: 1}
	}
	return point{x: 1, z: -t.lean}.unit()
}
