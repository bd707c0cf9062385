package measure

import (
	"math"
	"regexp"
	"strconv"
	"strings"
)

// longest is the longest length any cell may hold: no hull comes near it.
const longest = 100_000 * Foot

// ParseLength reads one length standing alone, as in a setting or a flag: the
// notation is known from the text, and a bare number is in the unit. Its errors
// are *ReadError, and say what was read and what would have been accepted.
func ParseLength(text string, unit Unit) (Length, error) {
	for _, n := range Notations(text) {
		if n != OldPrint {
			return Form{Unit: unit, Notation: n, DecimalComma: loneComma(text)}.Length(text)
		}
	}
	return 0, notRead(text, `a length such as 5/8, 4.375, 3-4-6, 3' 4 3/4" or 35 mm`)
}

// Length reads a text in the form. A mark in the text (mm, ', ") holds over the
// form's unit. Its errors are *ReadError.
func (f Form) Length(text string) (Length, error) {
	t := Fold(text)
	l, err := f.length(t)
	if err != nil {
		err.(*ReadError).Text = text
		return 0, err
	}
	if l.Abs() > longest {
		return 0, &ReadError{text, TooFar, "a length on a hull", nil}
	}
	return l, nil
}

func (f Form) length(t string) (Length, error) {
	if l, ok, err := marked(t, f.DecimalComma); ok {
		return l, err
	}
	switch f.Notation {
	case FeetInchesEighths:
		return feetInchesEighths(t)
	case OldPrint:
		return oldPrint(t)
	case FeetInchesFractions:
		return feetInches(t, f.Unit)
	case InchesFractions:
		v, ok := mixed(t)
		if !ok {
			return 0, notRead(t, "inches and fractions such as 40 3/4")
		}
		return f.bare(v, t)
	default:
		v, ok := decimal(t, f.DecimalComma)
		if !ok {
			return 0, notRead(t, "a decimal number such as 40.75")
		}
		return f.bare(v, t)
	}
}

// bare is a bare number in the form's unit.
func (f Form) bare(v float64, t string) (Length, error) {
	if f.Unit == NoUnit {
		return 0, &ReadError{t, UnitOpen, "a unit: in the heading, the caption or Settings", nil}
	}
	return times(v, f.Unit.Length()), nil
}

// Number is a stored number in the form's unit. One within a millionth of a
// sixty-fourth of an inch or of a hundredth of a millimetre is that; any other
// is kept as it is, and snapped is false.
func (f Form) Number(v float64) (l Length, snapped bool, err error) {
	if f.Unit == NoUnit {
		return 0, false, &ReadError{strconv.FormatFloat(v, 'f', -1, 64), UnitOpen, "a unit: in the heading, the caption or Settings", nil}
	}
	unit := f.Unit.Length()
	if math.IsNaN(v) || math.Abs(v)*float64(unit) > float64(longest) {
		return 0, false, &ReadError{strconv.FormatFloat(v, 'g', -1, 64), TooFar, "a length on a hull", nil}
	}
	step := SixtyFourth
	if f.Unit >= InMillimetres {
		step = Millimetre / 100
	}
	l = times(v, unit)
	whole := l.Round(step)
	if math.Abs(v-float64(whole)/float64(unit)) <= 1e-6 {
		return whole, true, nil
	}
	return l, false, nil
}

var (
	fieText      = regexp.MustCompile(`^(-?)(\d*) ?- ?(\d+) ?- ?(\d+) ?([+-]?)$`)
	feetInchText = regexp.MustCompile(`^(-?)(\d+)(?: ?- ?| )(\d+)((?:[ -]\d+/\d+)?)$`)
	mixedText    = regexp.MustCompile(`^(-?)(?:(\d+)(?:[ -](\d+)/(\d+))?|(\d+)/(\d+))$`)
	oldApart     = regexp.MustCompile(`^(-?)(?:(\d+)[- ]+)?(\d{1,3})$`)
)

func feetInchesEighths(t string) (Length, error) {
	if t == "0" {
		return 0, nil
	}
	m := fieText.FindStringSubmatch(t)
	if m == nil {
		return 0, notRead(t, "feet-inches-eighths such as 3-4-6")
	}
	feet, inches, eighths := whole(m[2]), whole(m[3]), whole(m[4])
	switch {
	case eighths > 7:
		return 0, &ReadError{t, EighthsOver, "eighths up to 7", nil}
	case inches > 11 && feet > 0:
		return 0, &ReadError{t, InchesOver, "inches up to 11 after feet", nil}
	}
	l := Length(feet)*Foot + Length(inches)*Inch + Length(eighths)*Eighth
	switch m[5] {
	case "+":
		l += Sixteenth
	case "-":
		l -= Sixteenth
	}
	return signed(m[1], l), nil
}

// oldPrint reads feet and inches with the eighths as a last figure of the
// inches, as older books printed it: 1-44 is 1 ft 4 4/8 in. A 10 or 11 may be
// whole inches or one inch and no or one eighth; no figure printed means none,
// so 10 is ten inches, but 11 can be either.
func oldPrint(t string) (Length, error) {
	m := oldApart.FindStringSubmatch(t)
	if m == nil {
		return 0, notRead(t, "feet and inches with the last figure eighths, such as 1-44")
	}
	feet := Length(whole(m[2])) * Foot
	figures := m[3]
	inches, eighths := whole(figures), 0
	switch {
	case figures == "11":
		return 0, &ReadError{t, TwoWays, "11 in or 1 1/8 in told apart", []Length{
			signed(m[1], feet+11*Inch), signed(m[1], feet+Inch+Eighth)}}
	case len(figures) > 1 && figures != "10":
		inches, eighths = whole(figures[:len(figures)-1]), whole(figures[len(figures)-1:])
	}
	switch {
	case eighths > 7:
		return 0, &ReadError{t, EighthsOver, "eighths up to 7", nil}
	case inches > 11:
		return 0, &ReadError{t, InchesOver, "inches up to 11", nil}
	}
	return signed(m[1], feet+Length(inches)*Inch+Length(eighths)*Eighth), nil
}

// feetInches reads feet and inches apart, without marks: 3-4 3/4, or a bare
// number in the unit.
func feetInches(t string, unit Unit) (Length, error) {
	if m := feetInchText.FindStringSubmatch(t); m != nil && !strings.Contains(m[3], "/") {
		part, ok := mixed(strings.TrimLeft(m[4], " -"))
		if m[4] == "" {
			part, ok = 0, true
		}
		if inches := whole(m[3]); ok && inches < 12 {
			return signed(m[1], Length(whole(m[2]))*Foot+Length(inches)*Inch+Inches(part)), nil
		}
		return 0, &ReadError{t, InchesOver, "inches up to 11 after feet", nil}
	}
	if v, ok := mixed(t); ok {
		return Form{Unit: unit}.bare(v, t)
	}
	return 0, notRead(t, `feet and inches such as 3' 4 3/4"`)
}

// mixed reads a whole number, a fraction, or both: 40, 3/4, 40 3/4.
func mixed(t string) (float64, bool) {
	m := mixedText.FindStringSubmatch(t)
	if m == nil {
		return 0, false
	}
	v := float64(whole(m[2]))
	over, under := m[3], m[4]
	if m[5] != "" {
		v, over, under = 0, m[5], m[6]
	}
	if under != "" {
		if whole(under) == 0 {
			return 0, false
		}
		v += float64(whole(over)) / float64(whole(under))
	}
	if m[1] == "-" {
		v = -v
	}
	return v, true
}

var (
	plainText     = regexp.MustCompile(`^[-+]?(\d+\.?\d*|\.\d+)$`)
	thousandsText = regexp.MustCompile(`^[-+]?[1-9]\d{0,2}(,\d{3})+(\.\d+)?$`)
	commaText     = regexp.MustCompile(`^[-+]?(\d+|\d{1,3}([. ]\d{3})+)(,\d+)?$`)
)

// decimal reads a decimal number with a point, or with a comma where the table
// is written so; in brackets it is negative.
func decimal(t string, comma bool) (float64, bool) {
	if strings.HasPrefix(t, "(") && strings.HasSuffix(t, ")") {
		v, ok := decimal(strings.TrimSpace(t[1:len(t)-1]), comma)
		return -v, ok
	}
	switch {
	case comma && commaText.MatchString(t):
		t = strings.NewReplacer(".", "", " ", "", ",", ".").Replace(t)
	case plainText.MatchString(t):
	case !comma && thousandsText.MatchString(t):
		t = strings.ReplaceAll(t, ",", "")
	default:
		return 0, false
	}
	v, err := strconv.ParseFloat(t, 64)
	return v, err == nil
}

// loneComma says that a text standing alone can only be read with a decimal comma.
func loneComma(text string) bool {
	t := strings.TrimRight(Fold(text), " cm")
	return strings.Contains(t, ",") && !thousandsText.MatchString(t)
}

// whole reads figures already matched; past what fits, it is past any check too.
func whole(figures string) int {
	v, err := strconv.Atoi(figures)
	if err != nil && figures != "" {
		return math.MaxInt32
	}
	return min(v, math.MaxInt32)
}

func signed(sign string, l Length) Length {
	if sign == "-" {
		return -l
	}
	return l
}
