package measure

import "math"

// Angle is an angle in degrees, as the yard's gauge reads it. Bevels are
// degrees off square, plus where the outside face is the wider.
type Angle float64

// Radians is the angle of so many radians.
func Radians(r float64) Angle { return Angle(r * 180 / math.Pi) }

// Radians reads the angle in radians.
func (a Angle) Radians() float64 { return float64(a) * math.Pi / 180 }

// Tan is the tangent of the angle: how far a bevel leans for a unit of thickness.
func (a Angle) Tan() float64 { return math.Tan(a.Radians()) }

// Cos is the cosine of the angle.
func (a Angle) Cos() float64 { return math.Cos(a.Radians()) }

// Round is the angle rounded to the nearest whole step, halves away from
// zero; a step of zero or less leaves it as it is.
func (a Angle) Round(step Angle) Angle {
	if step <= 0 {
		return a
	}
	return Angle(math.Round(float64(a/step))) * step
}

// PerMetre is a change of angle a foot as one a metre.
func (a Angle) PerMetre() Angle { return a * Angle(1000*Millimetre) / Angle(Foot) }
