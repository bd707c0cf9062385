package stock

import "strakebook/calc/measure"

// DressBy is how the finished thickness of a rough board is reckoned.
type DressBy uint8

// The ways of reckoning it.
const (
	ByAllowance DressBy = iota // so much less than the rough
	ByQuarters                 // as rough quarters of an inch surface on two sides
)

// What rough hardwood loses surfaced on two sides: 4/4 comes to 13/16, 5/4 to
// 1 1/16, 6/4 to 1 5/16, 8/4 to 1 3/4, 12/4 to 2 3/4 and 16/4 to 3 3/4 in (tables of
// engineeringtoolbox and woodbin, which agree; S2S is the grading standard).
const (
	quartersTo    = 3 * measure.Inch / 2
	quartersThin  = 3 * measure.Inch / 16 // to 6/4
	quartersThick = measure.Inch / 4      // beyond
)

// finishes is the thickness that a rough one dresses to.
func (r Rules) finishes(rough measure.Length) measure.Length {
	switch {
	case r.DressBy == ByAllowance:
		return rough - r.Dressing
	case rough <= quartersTo:
		return rough - quartersThin
	}
	return rough - quartersThick
}

// rough is the least thickness that dresses to a finished one.
func (r Rules) rough(finished measure.Length) measure.Length {
	switch {
	case r.DressBy == ByAllowance:
		return finished + r.Dressing
	case finished+quartersThin <= quartersTo:
		return finished + quartersThin
	}
	return finished + quartersThick
}
