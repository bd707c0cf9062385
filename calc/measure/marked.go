package measure

import (
	"regexp"
	"strings"
)

var (
	feetMarked   = regexp.MustCompile(`^(-?) ?(\d+(?:\.\d+)?|\d+ \d+/\d+|\d+/\d+) ?(?:'|ft\.?|feet|foot)(?: ?-? ?(.*?))$`)
	inchesMarked = regexp.MustCompile(`^(-?) ?(.+?) ?(?:"|in\.?|inch|inches|ins\.?)$`)
	metricMarked = regexp.MustCompile(`^(.+?) ?(mm|cm|m)\.?$`)
)

// MarkedUnit is the unit that a text itself shows by a mark: mm, cm, m, ', ",
// ft or in. NoUnit where it shows none.
func MarkedUnit(text string) Unit {
	t := strings.ToLower(Fold(text))
	if m := metricMarked.FindStringSubmatch(t); m != nil {
		if _, ok := decimal(m[1], loneComma(m[1])); ok {
			return map[string]Unit{"mm": InMillimetres, "cm": InCentimetres, "m": InMetres}[m[2]]
		}
	}
	if _, ok, err := marked(t, false); !ok || err != nil {
		return NoUnit
	}
	if feetMarked.MatchString(t) {
		return InFeet
	}
	return InInches
}

// marked reads a text that shows its own unit; ok is false where it shows none.
func marked(t string, comma bool) (l Length, ok bool, err error) {
	t = strings.ToLower(t)
	if m := metricMarked.FindStringSubmatch(t); m != nil {
		if v, fine := decimal(m[1], comma || loneComma(m[1])); fine {
			unit := map[string]Length{"mm": Millimetre, "cm": Centimetre, "m": Metre}[m[2]]
			return times(v, unit), true, nil
		}
		return 0, true, notRead(t, "a number before "+m[2])
	}
	if m := feetMarked.FindStringSubmatch(t); m != nil {
		feet, fine := number(m[2], comma)
		if !fine {
			return 0, true, notRead(t, "feet before the foot mark")
		}
		l = Feet(feet)
		if rest := strings.TrimSpace(m[3]); rest != "" {
			n := inchesMarked.FindStringSubmatch(rest)
			if n != nil {
				rest = n[2]
			}
			inches, fine := number(strings.TrimSpace(rest), comma)
			if !fine || inches < 0 {
				return 0, true, notRead(t, `feet and inches such as 3' 4 3/4"`)
			}
			if inches >= 12 {
				return 0, true, &ReadError{t, InchesOver, "inches up to 11 after feet", nil}
			}
			l += Inches(inches)
		}
		return signed(m[1], l), true, nil
	}
	if m := inchesMarked.FindStringSubmatch(t); m != nil {
		v, fine := number(strings.TrimSpace(m[2]), comma)
		if !fine {
			return 0, true, notRead(t, `inches such as 4 3/4"`)
		}
		return signed(m[1], Inches(v)), true, nil
	}
	return 0, false, nil
}

// number reads a decimal number or a mixed fraction.
func number(t string, comma bool) (float64, bool) {
	if v, ok := decimal(t, comma); ok {
		return v, true
	}
	return mixed(t)
}

// Notations is every notation that a text could be in, the likeliest first; none
// where it is no length at all. One reading of one cell decides nothing: the
// form is decided over a table.
func Notations(text string) []Notation {
	t := Fold(text)
	if _, ok, err := marked(t, loneComma(t)); ok {
		if err != nil {
			return nil
		}
		if MarkedUnit(t) >= InMillimetres {
			return []Notation{Decimal}
		}
		return []Notation{FeetInchesFractions, InchesFractions}
	}
	var all []Notation
	if _, err := feetInchesEighths(t); t != "0" && readOr(err) {
		all = append(all, FeetInchesEighths)
	}
	if _, ok := decimal(t, loneComma(t)); ok {
		all = append(all, Decimal)
	}
	if _, ok := mixed(t); ok {
		all = append(all, InchesFractions)
	}
	if _, err := feetInches(t, InInches); err == nil && feetInchText.MatchString(t) {
		all = append(all, FeetInchesFractions)
	}
	if _, err := oldPrint(t); readOr(err) {
		all = append(all, OldPrint)
	}
	return all
}

// readOr says that a text is in a notation, be its figures possible or not.
func readOr(err error) bool {
	e, fault := err.(*ReadError)
	return !fault || e.Fault != NotRead
}
