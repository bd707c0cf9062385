package bevel

import (
	"math"

	"strakebook/calc/measure"
)

// Batten is the width from the plank's free edge to the edge of the guide batten
// that the saw runs along, so that the inside face comes out at the width
// wanted: the saw tilts about its base, which rides on the batten.
func Batten(width, thickness measure.Length, bevel measure.Angle, r Rules) measure.Length {
	if r.FaceUp == Inside {
		return width - r.offset() - r.Batten.Times(bevel.Tan())
	}
	return width - r.offset() + (r.Batten + thickness).Times(bevel.Tan())
}

// Depth is the blade needed at a bevel: through the plank, and through the
// batten too where the saw rides on one, with a little spare.
func Depth(thickness measure.Length, bevel measure.Angle, r Rules) measure.Length {
	return (thickness + r.Batten).Times(1/bevel.Cos()) + r.DepthSpare
}

// batten fills in the batten at every mark, how far it must be set out or in
// from a parallel one, and the depth of blade at the steepest. The parallel
// batten is right at the middle of the bevels' range, where it need be moved
// least; of those that are sure, where some are.
func (s *Schedule) batten(r Rules) {
	low, high := math.Inf(1), math.Inf(-1)
	none := s.Sure() == 0
	for _, m := range s.Marks {
		if m.Doubt == Sure || none {
			low, high = min(low, float64(m.Set)), max(high, float64(m.Set))
		}
		s.Steepest = max(s.Steepest, measure.Angle(math.Abs(float64(m.Set))))
	}
	if s.Thickness <= 0 || len(s.Marks) == 0 || s.Marks[0].Width <= 0 {
		return // a plank of no size has no batten; hull.CheckStrakes names it
	}
	s.Parallel = measure.Angle((low + high) / 2).Round(r.Readout)
	s.Depth = Depth(s.Thickness, s.Steepest, r)
	for i := range s.Marks {
		m := &s.Marks[i]
		m.Batten = s.edge(m.Width, m.Set, r)
		parallel := m.Width
		if s.Outside {
			parallel += m.Faces - (s.Thickness - s.Rounded).Times(s.Parallel.Tan())
		}
		m.SetOut = m.Batten - s.edge(parallel, s.Parallel, r)
	}
}

// edge is Batten of a plank as it lies on the bench: where its back will be rounded
// the inside corners lie so far within the board.
func (s *Schedule) edge(width measure.Length, bevel measure.Angle, r Rules) measure.Length {
	if r.FaceUp == Inside {
		r.Batten += s.Rounded
	}
	return Batten(width, s.Thickness-s.Rounded, bevel, r)
}

// widest takes a plank's width from its marks where the list has it in no one figure:
// by station, or as the hull is lined off.
func (s *Schedule) widest() {
	if s.Width > 0 {
		return
	}
	for _, m := range s.Marks {
		s.Width = max(s.Width, m.Width)
	}
}
