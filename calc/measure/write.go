package measure

import (
	"fmt"
	"strconv"
	"strings"
)

// Write writes the length as the form has it, to the form's own step: what is
// written reads back the same wherever the length is a whole number of steps.
// The step is a sixteenth in eighths, an eighth in old print, a sixty-fourth in
// fractions and in decimal inches and feet, a hundredth of a millimetre in
// metric units; a length between is rounded to a thirty-second in fractions and
// to the fourth place in decimal inches.
func (f Form) Write(l Length) string {
	switch f.Notation {
	case FeetInchesEighths:
		return EighthsText(l)
	case OldPrint:
		return oldPrintText(l)
	case FeetInchesFractions:
		return FeetInchesText(l)
	case InchesFractions:
		if f.Unit == InInches || f.Unit == NoUnit {
			return InchesText(l)
		}
	}
	unit := f.Unit
	if unit == NoUnit {
		unit = InInches
	}
	s := tidy(float64(l)/float64(unit.Length()), places(unit, l))
	if f.DecimalComma {
		s = strings.Replace(s, ".", ",", 1)
	}
	return s
}

// places is how many figures after the point a length is written with.
func places(u Unit, l Length) int {
	switch u {
	case InMillimetres:
		return 2
	case InCentimetres:
		return 3
	case InMetres:
		return 5
	case InInches:
		if l%SixtyFourth != 0 {
			return 4
		}
	case Fractions:
		return 9
	}
	return 6
}

// tidy writes a number with so many places at most, without needless noughts.
func tidy(v float64, places int) string {
	s := strconv.FormatFloat(v, 'f', places, 64)
	if strings.Contains(s, ".") {
		s = strings.TrimSuffix(strings.TrimRight(s, "0"), ".")
	}
	if s == "-0" {
		return "0"
	}
	return s
}

// String is the length in decimal inches with its mark, for messages: 40.75 in.
func (l Length) String() string { return tidy(l.Inches(), places(InInches, l)) + " in" }

// EighthsText writes feet-inches-eighths to the nearest sixteenth:
// 3-4-6, with a + where a sixteenth more.
func EighthsText(l Length) string {
	sign := ""
	if l = l.Round(Sixteenth); l < 0 {
		sign, l = "-", -l
	}
	more := ""
	if l%Eighth != 0 {
		more = "+"
	}
	return fmt.Sprintf("%s%d-%d-%d%s", sign, int64(l/Foot), int64(l%Foot/Inch), int64(l%Inch/Eighth), more)
}

// FeetInchesText writes feet and inches to the nearest thirty-second, or to the
// sixty-fourth where it is a whole number of them: 3' 4 3/4".
func FeetInchesText(l Length) string {
	sign, l := fractional(l)
	return fmt.Sprintf(`%s%d' %s"`, sign, int64(l/Foot), InchesText(l%Foot))
}

// InchesText writes inches and fractions to the nearest thirty-second, or to the
// sixty-fourth where it is a whole number of them: 40 3/4.
func InchesText(l Length) string {
	sign, l := fractional(l)
	inches, parts, of := int64(l/Inch), int64(l%Inch/SixtyFourth), 64
	for parts != 0 && parts%2 == 0 {
		parts, of = parts/2, of/2
	}
	switch {
	case parts == 0:
		return fmt.Sprintf("%s%d", sign, inches)
	case inches == 0:
		return fmt.Sprintf("%s%d/%d", sign, parts, of)
	default:
		return fmt.Sprintf("%s%d %d/%d", sign, inches, parts, of)
	}
}

// fractional is a length's sign and its size, rounded as fractions are written.
func fractional(l Length) (sign string, size Length) {
	if l%SixtyFourth != 0 {
		l = l.Round(2 * SixtyFourth)
	}
	if l < 0 {
		return "-", -l
	}
	return "", l
}

// oldPrintText writes old print so that it can be read in one way only: eleven
// inches and an inch and an eighth, which old books print alike, get a nought
// that tells them apart.
func oldPrintText(l Length) string {
	sign := ""
	if l = l.Round(Eighth); l < 0 {
		sign, l = "-", -l
	}
	feet, inches, eighths := int64(l/Foot), int64(l%Foot/Inch), int64(l%Inch/Eighth)
	figures := strconv.FormatInt(inches, 10)
	switch {
	case inches == 11 && eighths == 0:
		figures = "110"
	case inches == 1 && eighths == 1:
		figures = "011"
	case eighths != 0:
		figures += strconv.FormatInt(eighths, 10)
	}
	return fmt.Sprintf("%s%d-%s", sign, feet, figures)
}

// Write writes an angle to two places at most, without needless noughts.
func (a Angle) Write() string { return tidy(float64(a), 2) }
