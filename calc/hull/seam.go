package hull

import (
	"math"
	"sort"

	"strakebook/calc/measure"
)

// bevels finds how much the planking turns at every seam, at every station: in
// the plane square to the seam there, the angle between the chord of the plank
// above and that of the plank below, plus where the outside is rounded. The sheer
// and the last seam have none.
func (h *hull) bevels(l *Lining) {
	for j := 1; j < len(l.Seams)-1; j++ {
		seam := &l.Seams[j]
		if seam.run == nil {
			continue
		}
		for i, at := range seam.run.p {
			k := seam.at[i]
			if k < 0 {
				continue
			}
			p := &seam.Points[k]
			along := seam.run.out[i].unit()
			p.Angle = measure.Radians(math.Acos(min(1, math.Abs(along.x))))
			if angle, ok := seamTurn(l.Seams[j-1].run, l.Seams[j+1].run, at, along, h.leaning(k)); ok {
				p.Bevel, p.HasBevel = measure.Radians(angle), true
			}
		}
	}
}

// seamTurn is the angle between the chords to the seams above and below in the plane
// through a place square to a direction. It is not ok where the plane does not
// meet both. On a leaning transom one of them has ended before the plane: it is
// drawn on straight.
func seamTurn(above, below *curve, at, along point, leaning bool) (float64, bool) {
	up, okUp := square(above, at, along, leaning)
	down, okDown := square(below, at, along, leaning)
	if !okUp || !okDown {
		return 0, false
	}
	a, b := up.minus(at), at.minus(down)
	if a.length() == 0 || b.length() == 0 {
		return 0, false
	}
	// Going up the planking turns inward, to starboard of the way aft, on a round.
	across := b.cross(a)
	angle := math.Atan2(across.length(), a.dot(b))
	if across.dot(along) < 0 {
		angle = -angle
	}
	return angle, true
}

// square is where a curve passes through the plane at a place square to a
// direction, the nearest where it does so more than once. A curve that ends at
// the plane meets it; one that ends short of it does where it is drawn on.
func square(c *curve, at, along point, drawnOn bool) (point, bool) {
	if c == nil {
		return point{}, false
	}
	f := func(p point) float64 { return p.minus(at).dot(along) }
	if p, ok := c.beside(at, f); ok {
		return p, true
	}
	for _, end := range []point{c.p[0], c.p[len(c.p)-1]} {
		if math.Abs(f(end)) < 1e-6 {
			return end, true
		}
	}
	last := len(c.p) - 1
	if way := c.in[last]; drawnOn && f(c.p[last]) < 0 && way.dot(along) > 0 {
		return c.p[last].minus(way.times(f(c.p[last]) / way.dot(along))), true
	}
	return point{}, false
}

// beside is nearest for a curve that runs aft beside the place: it is looked for
// from the point abreast of it outward, and no farther than the crossing and one
// space beyond it, so that the cost does not grow with the curve.
func (c *curve) beside(to point, f func(point) float64) (point, bool) {
	abreast := sort.Search(len(c.p)-1, func(i int) bool { return c.p[i].x >= to.x })
	var best point
	least, left := math.Inf(1), len(c.p)
	for ring := 0; ring < len(c.p) && left > 0; ring++ {
		for _, i := range [2]int{abreast - 1 - ring, abreast + ring} {
			if i < 0 || i >= len(c.t)-1 {
				continue
			}
			c.crossingsIn(i, f, func(t float64) {
				if p := c.at(t); p.from(to) < least {
					best, least = p, p.from(to)
					left = min(left, 2)
				}
			})
		}
		left--
	}
	return best, !math.IsInf(least, 1)
}

// EdgeAt is where a strake's upper or lower edge crosses a station, with the
// bevel of its seam there and the angle it runs at. It is not ok where the hull,
// the strake or the station is not known or the edge does not reach it.
func (s *Shape) EdgeAt(skin Skin, strake string, side Side, upper bool, station string) (SeamPoint, bool) {
	seam, ok := s.edge(skin, strake, side, upper)
	if !ok {
		return SeamPoint{}, false
	}
	k := s.station(station)
	if k < 0 || k >= len(seam.Points) || !seam.Points[k].Crosses {
		return SeamPoint{}, false
	}
	return seam.Points[k], true
}

// Loose is about how far the table's step alone may put a computed bevel out between
// planks of a breadth: the step over the breadth. A seam and its two neighbours are each
// known to half a step, and the turn is their second difference over the breadth: .71
// steps in the mean of squares, were the figures not eased (G). Measured
// (TestSeamsAgainstFormulas): of hulls of formulas in eighths at 21 stations no bevel is
// farther out, at 11 stations 3 in 1000. What lines too far apart do not show is not in it.
func (s *Shape) Loose(breadth measure.Length) measure.Angle {
	if s == nil || breadth <= 0 {
		return 0
	}
	return measure.Radians(math.Atan(s.Step.Inches() / breadth.Inches()))
}
