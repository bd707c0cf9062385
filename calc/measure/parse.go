package measure

import (
	"math"
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
	if _, ok, err := marked(Fold(text), false); ok && err != nil {
		err.(*ReadError).Text = text
		return 0, err
	}
	return 0, notRead(text, `a length such as 5/8, 4.375, 3-4-6, 3' 4 3/4" or 35 mm`)
}

// Length reads a text in the form. A mark in the text (mm, ', ") holds over the
// form's unit. Its errors are *ReadError.
func (f Form) Length(text string) (Length, error) {
	t := Fold(text)
	l, err := f.length(t)
	if err != nil {
		if f.signedBehind(t) {
			err = notRead(t, "the fraction written out: a sign behind is a sixteenth after feet-inches-eighths alone")
		}
		err.(*ReadError).Text = text
		return 0, err
	}
	if l.Abs() > longest {
		return 0, &ReadError{text, TooFar, "a length on a hull", nil}
	}
	return l, nil
}

// signedBehind says that a text would be a length in the form but for a sign behind
// it. How much more or less that is, no usage settles but for eighths.
func (f Form) signedBehind(t string) bool {
	stem := strings.TrimRight(t, "+- ")
	if stem == t {
		return false
	}
	_, err := f.length(stem)
	return err == nil
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
		return feetInches(t, f)
	case InchesFractions:
		return f.bare(t, "inches and fractions such as 40 3/4")
	default:
		return f.bare(t, "a decimal number such as 40.75")
	}
}

// bare is a number without a mark, in the form's unit. Vulgar fractions are
// never of metric units.
func (f Form) bare(t, expected string) (Length, error) {
	if _, ok := number(t, f.DecimalComma); !ok {
		return 0, notRead(t, expected)
	}
	metric := f.Unit == InMillimetres || f.Unit == InCentimetres || f.Unit == InMetres
	switch {
	case f.Unit == NoUnit:
		return 0, &ReadError{t, UnitOpen, "a unit: in the heading, the caption or Settings", nil}
	case f.Unit == InFeet && hyphenPart.MatchString(t):
		return 0, feetTwoWays(t)
	case metric && strings.Contains(t, "/"):
		return 0, notRead(t, `decimal `+f.Unit.String()+`, or inches marked as such: 5/8"`)
	}
	return measured(t, f.Unit, f.DecimalComma)
}

// Number is a stored number in the form's unit. One within a millionth of the
// unit of a whole sixty-fourth of an inch, or of a hundredth of a millimetre, is
// that; any other is kept as it is, and snapped is false. Its errors are
// *ReadError.
func (f Form) Number(v float64) (l Length, ok bool, err error) {
	text := strconv.FormatFloat(v, 'g', -1, 64)
	switch {
	case f.Unit == NoUnit:
		return 0, false, &ReadError{text, UnitOpen, "a unit: in the heading, the caption or Settings", nil}
	case !(math.Abs(v)*float64(f.Unit.Length()) <= float64(longest)):
		return 0, false, &ReadError{text, TooFar, "a length on a hull", nil}
	}
	l, ok = snapped(v, f.Unit)
	return l, ok, nil
}
