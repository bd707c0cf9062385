// Package scarf is the joiner's trade: the geometry of a plain glued scarf, the
// table of scarfs a job needs and the cuts at each saw. It knows nothing of
// where along the strakes the joints fall, nor of boards.
package scarf

import (
	"math"

	"strakebook/calc/measure"
)

// Run is how far a scarf runs along the plank: n times the thickness less both
// nibs. A nib of half the thickness or more leaves no scarf, and the run is 0;
// so it is where the slope is no slope.
func Run(thickness measure.Length, slope float64, nib measure.Length) measure.Length {
	return glued(thickness, slope, nib).Times(slope)
}

// Angle is the fence's angle to the plank's face: the arc whose tangent is 1 in n.
func Angle(slope float64) measure.Angle { return measure.Radians(math.Atan2(1, slope)) }

// Face is the length of the cut, up the slope.
func Face(thickness measure.Length, slope float64, nib measure.Length) measure.Length {
	return glued(thickness, slope, nib).Times(math.Hypot(slope, 1))
}

// Gap is how far a scarf stands open at the feather where the two fences differ.
func Gap(thickness measure.Length, slope float64, nib measure.Length, fences measure.Angle) measure.Length {
	return Face(thickness, slope, nib).Times(math.Abs(fences.Tan()))
}

// glued is the thickness that slopes, between the nibs; none where the slope is
// no slope.
func glued(thickness measure.Length, slope float64, nib measure.Length) measure.Length {
	if !sloped(slope) {
		return 0
	}
	return max(0, thickness-2*nib)
}

// sloped says that a slope is one: more than nothing, and not endless.
func sloped(slope float64) bool { return slope > 0 && slope <= math.MaxInt32 }
