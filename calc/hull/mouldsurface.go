package hull

import (
	"strakebook/calc/finding"
	"strakebook/calc/measure"
)

// depths is how far each surface lies inside the one the offsets are to, in
// inches, below nothing where it lies outside; ok says which are known.
type depths struct {
	in [4]float64
	ok [4]bool
}

// depths follows from the thicknesses of the skins.
func (h *hull) depths(skins []SkinThickness) depths {
	var d depths
	inner, outer := thicknesses(skins)
	to := h.o.To(h.r)
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
func thicknesses(skins []SkinThickness) (inner, outer measure.Length) {
	for _, s := range skins {
		if s.Skin == Strips {
			inner += s.Thickness
		} else {
			outer += s.Thickness
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
	case h.o.To(h.r) == SurfaceUnstated:
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
