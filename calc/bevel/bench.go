package bevel

import (
	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// OffsetTo is what the saw's offset is measured to, from the batten's edge.
type OffsetTo uint8

// The parts of the kerf that a builder may measure to.
const (
	KerfPlankSide OffsetTo = iota
	KerfMiddle
	KerfFarSide
)

// offset is from the batten's edge to the plank's side of the kerf.
func (r Rules) offset() measure.Length {
	switch r.OffsetTo {
	case KerfMiddle:
		return r.Offset - r.Kerf/2
	case KerfFarSide:
		return r.Offset - r.Kerf
	}
	return r.Offset
}

// thickness is a plank's thickness on the saw's bench: as measured after planing
// where that is set, else as its board is dressed, its back not yet worked. Strips
// keep their own; one that is not listed has none.
func (r Rules) thickness(k hull.Strake, back hull.Back) measure.Length {
	switch listed := k.Thickness.Value; {
	case r.Planed > 0 && k.Skin != hull.Strips:
		return r.Planed
	case listed > 0:
		return listed + back.Worked
	}
	return 0
}

// Lean is the hand to which the blade is tilted for a bevel with the named face
// up: in under the plank, or out from under it.
func (r Rules) Lean(set measure.Angle) string {
	if r.FaceUp == Inside {
		set = -set
	}
	switch {
	case set > 0:
		return "in under"
	case set < 0:
		return "out from under"
	}
	return "square"
}

// ReadFrom is the end from which the marks of a schedule are called out, so that
// the saw travels with the sawn edge to the same hand on both sides of the hull
// and tilts to the hand that Lean says: a port plank is a starboard plank turned
// end for end. From the hull's outside the bow is to the right on starboard; with
// the outside face up and the upper edge away from the sawyer the saw then runs
// from the fore end aft with that edge to its right.
func (s Schedule) ReadFrom(r Rules) string {
	fore := s.Side != hull.Port
	if s.Edge == Lower {
		fore = !fore
	}
	if r.FaceUp == Inside {
		fore = !fore
	}
	if fore {
		return "fore end"
	}
	return "after end"
}

// edges is the edges of a plank that are sawn to a bevel.
func (r Rules) edges() []Edge {
	if r.Shared {
		return []Edge{Upper, Lower}
	}
	if r.Sawn == Lower {
		return []Edge{Lower}
	}
	return []Edge{Upper}
}

// ofTurn is the bevel of one edge of a seam at which the planking turns so much.
func (r Rules) ofTurn(turn measure.Angle) measure.Angle {
	if r.Shared {
		return turn / 2
	}
	return turn
}

// SawnEdges is which of a plank's edges take the bevel.
func (r Rules) SawnEdges() hull.Sawn {
	switch {
	case r.Shared:
		return hull.SawnShared
	case r.Sawn == Lower:
		return hull.SawnLower
	}
	return hull.SawnUpper
}
