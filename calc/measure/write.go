package measure

import (
	"fmt"
	"strconv"
	"strings"
)

// Write writes the length as the form has it, to the form's own step: eighths
// and sixteenths, thirty-seconds, or thousandths of the unit. What is written
// reads back the same to that step.
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
	unit := f.Unit.Length()
	if unit == 0 {
		unit = Inch
	}
	s := strconv.FormatFloat(float64(l)/float64(unit), 'f', 4, 64)
	s = strings.TrimSuffix(strings.TrimRight(s, "0"), ".")
	if f.DecimalComma {
		s = strings.Replace(s, ".", ",", 1)
	}
	return s
}

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
	return fmt.Sprintf("%s%d-%d-%d%s", sign, l/Foot, l%Foot/Inch, l%Inch/Eighth, more)
}

// FeetInchesText writes feet and inches to the nearest thirty-second: 3' 4 3/4".
func FeetInchesText(l Length) string {
	sign := ""
	if l = l.Round(SixtyFourth * 2); l < 0 {
		sign, l = "-", -l
	}
	return fmt.Sprintf(`%s%d' %s"`, sign, l/Foot, InchesText(l%Foot))
}

// InchesText writes inches and fractions to the nearest thirty-second: 40 3/4.
func InchesText(l Length) string {
	sign := ""
	if l = l.Round(SixtyFourth * 2); l < 0 {
		sign, l = "-", -l
	}
	inches, parts, of := l/Inch, l%Inch/(2*SixtyFourth), Length(32)
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

func oldPrintText(l Length) string {
	sign := ""
	if l = l.Round(Eighth); l < 0 {
		sign, l = "-", -l
	}
	eighths := ""
	if e := l % Inch / Eighth; e != 0 {
		eighths = strconv.Itoa(int(e))
	}
	return fmt.Sprintf("%s%d-%d%s", sign, l/Foot, l%Foot/Inch, eighths)
}

// Write writes an angle to two places at most, without needless noughts.
func (a Angle) Write() string {
	s := strings.TrimSuffix(strings.TrimRight(strconv.FormatFloat(float64(a), 'f', 2, 64), "0"), ".")
	if s == "-0" {
		return "0"
	}
	return s
}
