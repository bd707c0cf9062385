package measure

import (
	"math"
	"regexp"
	"strconv"
	"strings"
)

var (
	mixedText     = regexp.MustCompile(`^(-?) ?(?:(\d+)(?:(?: ?- ?| )(\d+)/(\d+))?|(\d+)/(\d+))$`)
	plainText     = regexp.MustCompile(`^[-+]? ?(\d+\.?\d*|\.\d+)$`)
	thousandsText = regexp.MustCompile(`^[-+]? ?[1-9]\d{0,2}(,\d{3})+(\.\d+)?$`)
	commaText     = regexp.MustCompile(`^[-+]? ?(\d+|[1-9]\d{0,2}(\.\d{3})+|[1-9]\d{0,2}( \d{3})+)(,\d+)?$`)
	oneComma      = regexp.MustCompile(`^[-+]? ?[1-9]\d{0,2},\d{3}$`)
	onePoint      = regexp.MustCompile(`^[-+]? ?[1-9]\d{0,2}\.\d{3}$`)
)

// ParseNumber reads one bare number standing alone: 12.5, 12,5, 12 1/2, 1,234.5.
// One comma before three figures can be read in two ways, and is refused. Its
// errors are *ReadError.
func ParseNumber(text string) (float64, error) {
	t := Fold(text)
	if oneComma.MatchString(t) {
		return 0, &ReadError{text, TwoWays, "a number without a mark for thousands", nil}
	}
	v, ok := number(t, loneComma(t))
	if !ok {
		return 0, notRead(text, "a number such as 12.5")
	}
	return v, nil
}

// number reads a decimal number or a mixed fraction.
func number(t string, comma bool) (float64, bool) {
	if v, ok := decimal(t, comma); ok {
		return v, true
	}
	return mixed(t)
}

// mixed reads a whole number, a fraction, or both: 40, 3/4, 40 3/4. Fractions
// are halves to hundred-and-twenty-eighths, and thirds: 10/6 is more likely ten
// feet six than one and two thirds, so it is not read.
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
		n, d := whole(over), whole(under)
		if d < 2 || 128%d != 0 && d != 3 {
			return 0, false
		}
		if n >= d && m[2] != "" {
			return 0, false // 4 9/8 is a slip of the pen
		}
		v += float64(n) / float64(d)
	}
	if m[1] == "-" {
		v = -v
	}
	return v, true
}

// decimal reads a decimal number with a point, or with a comma where the table
// is written so; in brackets it is negative.
func decimal(t string, comma bool) (float64, bool) {
	if strings.HasPrefix(t, "(") && strings.HasSuffix(t, ")") {
		inside := strings.TrimSpace(t[1 : len(t)-1])
		if strings.HasPrefix(inside, "-") || strings.HasPrefix(inside, "(") {
			return 0, false
		}
		v, ok := decimal(inside, comma)
		return -v, ok
	}
	switch {
	case comma && commaText.MatchString(t):
		t = strings.NewReplacer(".", "", ",", ".").Replace(t)
	case plainText.MatchString(t):
	case !comma && thousandsText.MatchString(t):
		t = strings.ReplaceAll(t, ",", "")
	default:
		return 0, false
	}
	v, err := strconv.ParseFloat(strings.ReplaceAll(t, " ", ""), 64)
	return v, err == nil
}

// loneComma says that a text standing alone can only be read with a decimal comma.
func loneComma(text string) bool {
	t := strings.TrimRight(strings.ToLower(Fold(text)), " .acefhilmnorst'\"°")
	return strings.Contains(t, ",") && !thousandsText.MatchString(t)
}

// measured is a number in a unit. One comma before three figures parts thousands
// in millimetres, which nobody writes to a thousandth, and is a decimal comma in
// metres, of which no hull has a thousand; in any other unit it can be either.
// Where commas are decimal the same goes for a point.
func measured(t string, unit Unit, comma bool) (Length, error) {
	doubtful := oneComma
	if comma {
		doubtful = onePoint
	}
	if !doubtful.MatchString(t) {
		v, ok := number(t, comma)
		if !ok {
			return 0, notRead(t, "a number such as 40.75 or 40 3/4")
		}
		l, _ := snapped(v, unit)
		return l, nil
	}
	large, _ := decimal(t, comma)
	small, _ := decimal(t, !comma)
	switch unit {
	case InMillimetres:
		l, _ := snapped(large, unit)
		return l, nil
	case InMetres, Fractions:
		l, _ := snapped(small, unit)
		return l, nil
	}
	return 0, &ReadError{t, TwoWays, "a number without a mark for thousands", []Length{times(small, unit.Length()), times(large, unit.Length())}}
}

// snapped is a number in a unit as a length, float noise taken off it: a value
// within a millionth of the unit of a whole sixty-fourth of an inch, or of a
// whole hundredth of a millimetre, is that. Any other is kept as it is, and ok
// is false.
func snapped(v float64, unit Unit) (l Length, ok bool) {
	l = times(v, unit.Length())
	whole := l.Round(unit.step())
	if math.Abs(v-float64(whole)/float64(unit.Length())) <= 1e-6 {
		return whole, true
	}
	return l, false
}

// step is the finest step that is written in the unit by hand or by machine.
func (u Unit) step() Length {
	switch u {
	case InMillimetres, InCentimetres, InMetres:
		return Millimetre / 100
	case Fractions:
		return Nanometre
	default:
		return SixtyFourth
	}
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
