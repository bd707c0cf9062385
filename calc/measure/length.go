// Package measure holds the quantities a yard writes down, lengths, angles and
// board feet, and every notation in which they are written. It knows nothing
// of sheets, boats or findings: text in, quantity out, and back again.
package measure

import "math"

// Length is a distance in whole nanometres. A sixty-fourth of an inch is
// 396 875 nm and a millimetre 1 000 000 nm, so neither the yard's fractions nor
// the mill's millimetres are ever rounded; the range is over nine million
// kilometres.
type Length int64

// The units in which lengths are written. Multiply to make, divide to read:
// 3*Foot + 4*Inch + 6*Eighth.
const (
	Nanometre     Length = 1
	Millimetre           = 1_000_000 * Nanometre
	Centimetre           = 10 * Millimetre
	Metre                = 1_000 * Millimetre
	SixtyFourth          = 396_875 * Nanometre
	Sixteenth            = 4 * SixtyFourth
	Eighth               = 8 * SixtyFourth
	Inch                 = 64 * SixtyFourth
	Foot                 = 12 * Inch
	longestInches        = 1e9 // beyond this a float would not fit a Length
)

// Inches is the length of so many inches, to the nearest nanometre.
// It returns 0 for NaN; readers refuse such values before they come here.
func Inches(n float64) Length { return times(n, Inch) }

// Feet is the length of so many feet, to the nearest nanometre.
func Feet(n float64) Length { return times(n, Foot) }

func times(n float64, unit Length) Length {
	v := n * float64(unit)
	if math.IsNaN(v) {
		return 0
	}
	most := longestInches * float64(Inch)
	return Length(math.Round(max(-most, min(most, v))))
}

// Inches reads the length in inches.
func (l Length) Inches() float64 { return float64(l) / float64(Inch) }

// Feet reads the length in feet.
func (l Length) Feet() float64 { return float64(l) / float64(Foot) }

// Millimetres reads the length in millimetres.
func (l Length) Millimetres() float64 { return float64(l) / float64(Millimetre) }

// Abs is the length without its sign.
func (l Length) Abs() Length {
	if l < 0 {
		return -l
	}
	return l
}

// Times is the length multiplied by a bare number, to the nearest nanometre.
func (l Length) Times(n float64) Length { return times(n, l) }

// Round is the length rounded to the nearest whole step, halves away from
// zero; a step of zero or less leaves it as it is.
func (l Length) Round(step Length) Length {
	if step <= 0 {
		return l
	}
	return Length(math.Round(float64(l)/float64(step))) * step
}

// RoundUp is the least whole number of steps that is not shorter.
func (l Length) RoundUp(step Length) Length {
	if step <= 0 {
		return l
	}
	return Length(math.Ceil(float64(l)/float64(step))) * step
}
