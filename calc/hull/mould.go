package hull

import (
	"math"

	"strakebook/calc/finding"
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

// The faces. Standing is the fore face forward of midships and the after face
// abaft it, so that the moulds lie towards midships and their bevels stand.
const (
	FaceStanding MouldFace = iota
	FaceFore
	FaceAfter
)

// String is the face's words.
func (f MouldFace) String() string { return [...]string{"standing", "fore", "after"}[f] }

// fore says whether the fore face stands on a station's line.
func (f MouldFace) fore(station, midships int) bool {
	return f == FaceFore || f == FaceStanding && station <= midships
}

// midships is the station at which the hull is widest.
func (h *hull) midships() int {
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

// depths is how far each surface lies inside the one the offsets are to, in
// inches, below nothing where it lies outside; ok says which are known.
type depths struct {
	in [4]float64
	ok [4]bool
}

// depths follows from the thicknesses of the skins.
func (h *hull) depths(strakes []Strake) depths {
	var d depths
	inner, outer := thicknesses(strakes)
	to := h.o.Surface
	if to == SurfaceUnstated {
		to = h.r.OffsetsTo
	}
	from := [4]float64{BetweenSkins: outer.Inches(), InsidePlanking: outer.Inches() + inner.Inches()}
	if to == SurfaceUnstated {
		return d
	}
	for s := OutsidePlanking; s <= InsidePlanking; s++ {
		d.in[s] = from[s] - from[to]
		d.ok[s] = s == to || outer > 0 || inner > 0
	}
	d.ok[BetweenSkins] = d.ok[BetweenSkins] && inner > 0 && outer > 0 || to == BetweenSkins
	return d
}

// thicknesses is that of the strip skin, and of everything laid outside it.
func thicknesses(strakes []Strake) (inner, outer measure.Length) {
	seen := map[Skin]bool{}
	for _, s := range strakes {
		if seen[s.Skin] || !s.Thickness.OK() {
			continue
		}
		seen[s.Skin] = true
		if s.Skin == Strips {
			inner += s.Thickness.Value
		} else {
			outer += s.Thickness.Value
		}
	}
	return inner, outer
}

// skinned is the hull's sections on each of the three surfaces.
type skinned struct {
	depths
	sections [4][]*curve // by surface and station; nil where there is none
	beyond   [4][]*curve // those beyond the middle line
}

// skinned draws the sections on every surface whose depth is known.
func (h *hull) skinned(n *net, d depths) skinned {
	s := skinned{depths: d}
	for surface := OutsidePlanking; surface <= InsidePlanking; surface++ {
		if d.ok[surface] {
			s.sections[surface], s.beyond[surface] = h.surface(n, d.in[surface])
		}
	}
	return s
}

// unskinned says which surfaces could not be drawn.
func (h *hull) unskinned(s skinned) finding.List {
	switch {
	case !h.placed:
		return nil // said already
	case h.o.Surface == SurfaceUnstated && h.r.OffsetsTo == SurfaceUnstated:
		return finding.List{{Kind: MouldSurface, Cell: h.o.Cell,
			Text: "the book does not say which surface the offsets are to: moulds are not laid down, and strakes are lined off on the offsets' own surface"}}
	case !s.ok[OutsidePlanking] || !s.ok[InsidePlanking]:
		return finding.List{{Kind: MouldSurface, Cell: h.o.Cell, Do: "write the strakes' thickness",
			Text: "no thickness of planking is given: moulds are to the offsets' own surface, with no deduction"}}
	}
	return nil
}

// surface is every station's section a distance inside that of the offsets; where
// all of it would lie beyond the middle line, as at a stem, it is kept apart.
func (h *hull) surface(n *net, in float64) (all, beyond []*curve) {
	all, beyond = make([]*curve, len(h.sections)), make([]*curve, len(h.sections))
	for k, s := range h.sections {
		switch {
		case s.line == nil:
		case in == 0:
			all[k] = s.line
		default:
			c, out := h.parallel(n, k, in, 0)
			if out {
				all[k] = c
			} else {
				beyond[k] = c
			}
		}
	}
	return all, beyond
}

// moulds is the table of offsets to each surface: half-breadths at the
// waterlines, heights at the buttocks, the deck at its own height, the rabbet and
// chines where the curves end and turn.
func (h *hull) moulds(n *net, s skinned) []Mould {
	midships := h.midships()
	var all []Mould
	for surface := OutsidePlanking; surface <= InsidePlanking; surface++ {
		if s.sections[surface] == nil {
			continue
		}
		for k, c := range s.sections[surface] {
			if surface == InsidePlanking && h.r.MouldSquare {
				c = h.squared(n, s, k, midships)
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
func (h *hull) squared(n *net, s skinned, k, midships int) *curve {
	if n == nil || h.sections[k].line == nil {
		return s.sections[InsidePlanking][k]
	}
	thick := h.r.MouldThickness.Inches()
	if !h.r.MouldFace.fore(k, midships) {
		thick = -thick
	}
	c, out := h.parallel(n, k, s.in[InsidePlanking], thick)
	if !out {
		return nil
	}
	return c
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
			if q, found := c.level(at, ok, func(q point) float64 { return q.z - z }); found {
				add(p, HalfBreadth, z, q.y)
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
				add(p, HalfBreadth, 0, c.p[0].y)
				add(p, Height, 0, c.p[0].z)
			}
		case Chine:
			if q, ok := closest(corners, at); ok {
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
