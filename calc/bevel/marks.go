package bevel

import (
	"slices"

	"gonum.org/v1/gonum/interp"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// laid is a seam being laid out.
type laid struct {
	b           Readings
	s           Seam
	places      []hull.Station // whose positions are known
	shape       *hull.Shape    // nil where the hull is not known
	y           []float64      // bevels off square, square to the edge
	smooth      []float64      // the same, faired
	given       []bool         // which stations have one
	first, last int            // of those
	way                        // along the edge from the first reading
	width       func(measure.Length) measure.Length
}

// marks lays out a mark at each station and at each even step from the first,
// less those steps that a station's own mark serves.
func (l laid) marks(r Rules) []Mark {
	x := make([]float64, l.last+1)
	for k := l.first; k <= l.last; k++ {
		x[k] = l.at[k].Inches()
	}
	have := l.given[:l.last+1]
	read := curve(x, l.y, have)
	faired := curve(x, l.smooth, have) // through what was read: a gap is filled in the same way
	var all []Mark
	for k := l.first; k <= l.last; k++ {
		m := Mark{At: l.at[k], Station: l.b.Stations[k].Name, Read: l.s.Readings[k], Filled: !l.given[k], Unseen: l.fills != nil && l.fills[k]}
		if own, ok := r.own(l.shape, l.s, m.Station); ok {
			m.Hull = source.Is(own)
		}
		all = append(all, m)
	}
	next := l.first
	for step := r.Step; r.Step > 0 && step < l.at[l.last]; step += r.Step {
		for next < l.last && l.at[next] < step-r.Step/24 {
			next++
		}
		if l.at[next] > step+r.Step/24 {
			all = append(all, Mark{At: step})
		}
	}
	slices.SortStableFunc(all, func(a, b Mark) int { return int(max(-1, min(1, a.At-b.At))) })
	for i := range all {
		l.fill(all, i, read, faired, r)
	}
	cross(all)
	return all
}

// fill works out one mark from its place; those before it are worked out.
func (l laid) fill(all []Mark, i int, read, faired *interp.FritschButland, r Rules) {
	m := &all[i]
	m.Between = measure.Angle(read.Predict(m.At.Inches()))
	m.Faired = measure.Angle(faired.Predict(m.At.Inches()))
	m.Set = m.sawn(r).Round(r.Readout)
	m.Tilt = r.tilt(m.sawn(r))
	m.Width = l.width(m.At)
	if i > 0 {
		before := all[i-1]
		m.PerFoot = (m.sawn(r) - before.sawn(r)) / measure.Angle((m.At - before.At).Feet())
	}
}

// sawn is the bevel to be sawn before it is rounded to the readout.
func (m Mark) sawn(r Rules) measure.Angle {
	if r.SawFaired {
		return m.Faired
	}
	return m.Between
}

// cross marks where the blade has gone over to the other hand since the last mark that
// was not square, as they are called out from the fore end aft and from aft forward.
func cross(all []Mark) {
	last := measure.Angle(0)
	for i := range all {
		if m := &all[i]; m.Tilt != 0 {
			m.Crossing, last = last*m.Tilt < 0, m.Tilt
		}
	}
	last = 0
	for i := len(all) - 1; i >= 0; i-- {
		if m := &all[i]; m.Tilt != 0 {
			m.CrossingBack, last = last*m.Tilt < 0, m.Tilt
		}
	}
}
