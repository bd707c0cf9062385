package hull

import (
	"math"

	"strakebook/calc/measure"
)

// Mould is one figure of the table the moulds are laid down from.
type Mould struct {
	Line    string
	Role    Role
	View    View
	At      measure.Length // of a waterline its height, of a buttock its distance out
	Station string
	Place   int // of the station among all
	Surface Surface
	Offset  measure.Length
}

// MouldFace is which face of a mould stands on the station line.
type MouldFace uint8

// The faces. Standing is the fore face where the hull widens going aft and the after
// face where it narrows, so that the moulds lie towards midships and their bevels
// stand.
const (
	FaceStanding MouldFace = iota
	FaceFore
	FaceAfter
)

// String is the face's words.
func (f MouldFace) String() string { return [...]string{"standing", "fore", "after"}[f] }

// fore says whether the fore face stands on a station's line.
func (f MouldFace) fore(station, widens int) bool {
	return f == FaceFore || f == FaceStanding && station <= widens
}

// widens is the last station at which the hull widens going aft, -1 where none: the
// one at which it is widest or, where it narrows from there on as at a hull's fore
// end, the one before.
func (h *hull) widens(n *net) int {
	widest := h.widest()
	if n == nil {
		return widest
	}
	lean := 0.0
	for _, k := range n.knots[widest] {
		lean += k.square.dot(h.facing(widest))
	}
	if lean > 1e-3*float64(len(n.knots[widest])) {
		return widest - 1
	}
	return widest
}

// widest is the station at which the hull is widest.
func (h *hull) widest() int {
	best, wide := 0, 0.0
	for k, s := range h.sections {
		for _, p := range s.points {
			if p.y > wide+h.step/2 {
				best, wide = k, p.y
			}
		}
	}
	return best
}

// moulds is the table of offsets to each surface: half-breadths at the
// waterlines, heights at the buttocks, the deck at its own height, the rabbet and
// chines where the curves end and turn.
func (h *hull) moulds(n *net, s skinned) []Mould {
	widens := h.widens(n)
	var all []Mould
	for surface := OutsidePlanking; surface <= InsidePlanking; surface++ {
		if s.sections[surface] == nil {
			continue
		}
		for k, c := range s.sections[surface] {
			if surface == InsidePlanking && h.r.MouldSquare {
				c = h.squared(n, s, k, widens)
			}
			if c != nil {
				all = append(all, h.lift(c, k, surface)...)
			}
		}
	}
	return all
}

// squared is a mould's outline where its edge is left square: laid in so far
// that the face away from the station line clears the planking.
func (h *hull) squared(n *net, s skinned, k, widens int) *curve {
	if n == nil || h.sections[k].line == nil {
		return s.sections[InsidePlanking][k]
	}
	thick := h.r.MouldThickness.Inches()
	if !h.r.MouldFace.fore(k, widens) {
		thick = -thick
	}
	c, out := h.parallel(n, k, s.in[InsidePlanking], thick)
	if !out {
		return nil
	}
	return c
}

// onMiddle is how far past the middle line a point may be reckoned and still lie on
// it, in inches.
const onMiddle = 1e-6

// foot is where an outline starts: at its own foot, or where it comes to the middle
// line, if it was laid in past that. There the planking of the two sides meets, and
// no mould stands below it.
func (c *curve) foot() point {
	if c.p[0].y >= 0 {
		return c.p[0]
	}
	cuts := c.crossings(func(q point) float64 { return q.y })
	if len(cuts) == 0 {
		return point{y: 0, z: c.p[0].z, x: c.p[0].x}
	}
	q := c.at(cuts[len(cuts)-1])
	q.y = 0
	return q
}

// lift is the figures of one outline at one station.
func (h *hull) lift(c *curve, k int, surface Surface) []Mould {
	var all []Mould
	add := func(p pair, v View, at, offset float64) {
		m := Mould{Line: p.name, Role: p.role, View: v, Station: h.o.Stations[k].Name, Place: k, Surface: surface, Offset: measure.Inches(offset)}
		switch {
		case v == Height:
			m.Offset = h.above(offset)
			m.At = measure.Inches(at)
		case p.role == Waterline:
			m.At = h.above(at)
		}
		all = append(all, m)
	}
	corners := c.corners()
	for _, p := range h.pairs {
		at, ok := h.place(p, k)
		switch {
		case p.role == Waterline:
			z := h.o.Lines[p.out].At.Value.Inches()
			if q, found := c.level(at, ok, func(q point) float64 { return q.z - z }); found && q.y > -onMiddle {
				add(p, HalfBreadth, z, max(0, q.y))
			}
		case p.role == Buttock:
			y := h.o.Lines[p.up].At.Value.Inches()
			if q, found := c.level(at, ok, func(q point) float64 { return q.y - y }); found {
				add(p, Height, y, q.z)
			}
		}
		if !ok {
			continue
		}
		switch p.role {
		case Deck:
			q := c.p[len(c.p)-1]
			add(p, HalfBreadth, 0, q.y)
			add(p, Height, 0, q.z)
		case Rabbet, Keel:
			if h.sections[k].from == p.role {
				q := c.foot()
				add(p, HalfBreadth, 0, q.y)
				add(p, Height, 0, q.z)
			}
		case Chine:
			if q, ok := closest(corners, at); ok && q.y > -onMiddle {
				add(p, HalfBreadth, 0, q.y)
				add(p, Height, 0, q.z)
			}
		}
	}
	return all
}

// above is a height above the base line as the yard measures it: from the floor
// down to a hull built upside down where that is set.
func (h *hull) above(z float64) measure.Length {
	if h.r.FloorToBase > 0 {
		return h.r.FloorToBase - measure.Inches(z)
	}
	return measure.Inches(z)
}

// level is where the curve meets the level of a waterline or buttock: nearest to
// the figure given there; where none is, or none that is believed, the one place
// there is.
func (c *curve) level(given point, ok bool, f func(point) float64) (point, bool) {
	if ok {
		return c.nearest(given, f)
	}
	all := c.crossings(f)
	if len(all) != 1 {
		return point{}, false
	}
	return c.at(all[0]), true
}

// nearest is the crossing of the curve nearest to a place.
func (c *curve) nearest(to point, f func(point) float64) (point, bool) {
	var all []point
	for _, t := range c.crossings(f) {
		all = append(all, c.at(t))
	}
	return closest(all, to)
}

// closest is the one of the points closest to a place.
func closest(all []point, to point) (best point, ok bool) {
	least := math.Inf(1)
	for _, p := range all {
		if d := p.from(to); d < least {
			best, least, ok = p, d, true
		}
	}
	return best, ok
}

// corners is the places at which the curve turns sharply.
func (c *curve) corners() []point {
	var all []point
	for i := 1; i < len(c.p)-1; i++ {
		if c.in[i].minus(c.out[i]).length() > 1e-9 {
			all = append(all, c.p[i])
		}
	}
	return all
}
