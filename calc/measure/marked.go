package measure

import (
	"math"
	"regexp"
	"strings"
)

var (
	feetMarked   = regexp.MustCompile(`^(-?) ?(\d+(?:[.,]\d+)?|\.\d+|\d+ \d+/\d+|\d+/\d+) ?(?:'|ft\.?|feet|foot)(?: ?-? ?(.*?))$`)
	inchesMarked = regexp.MustCompile(`^(-?) ?(\(?[\d.,].*?) ?(?:"|in\.?|inch|inches|ins\.?)$`)
	metricMarked = regexp.MustCompile(`^([-+(]?.*\d.*?) ?(mm|millimet(?:er|re)s?|cm|centimet(?:er|re)s?|m|met(?:er|re)s?)\.?$`)
)

// MarkedUnit is the unit that a text itself shows by a mark: mm, cm, m, ', ",
// ft or in. NoUnit where it shows none, or is no length.
func MarkedUnit(text string) Unit {
	t := strings.ToLower(Fold(text))
	_, ok, err := marked(t, loneComma(t))
	switch e, _ := err.(*ReadError); {
	case !ok, e != nil && e.Fault == NotRead:
		return NoUnit
	case metricMarked.MatchString(t):
		return metricUnit(metricMarked.FindStringSubmatch(t)[2])
	case feetMarked.MatchString(t):
		return InFeet
	}
	return InInches
}

// metricUnit is the unit of a metric mark already matched.
func metricUnit(mark string) Unit {
	switch {
	case mark == "mm", strings.HasPrefix(mark, "mill"):
		return InMillimetres
	case mark == "cm", strings.HasPrefix(mark, "cent"):
		return InCentimetres
	}
	return InMetres
}

// marked reads a text that shows its own unit; ok is false where it shows none.
func marked(t string, comma bool) (l Length, ok bool, err error) {
	if !strings.ContainsAny(t, "0123456789") {
		return 0, false, nil
	}
	t = strings.ToLower(t)
	comma = comma || loneComma(t)
	if m := metricMarked.FindStringSubmatch(t); m != nil {
		unit := metricUnit(m[2])
		if _, fine := decimal(m[1], comma); !fine {
			return 0, true, notRead(t, "a number before "+m[2])
		}
		l, err = measured(m[1], unit, comma)
		return l, true, err
	}
	if m := feetMarked.FindStringSubmatch(t); m != nil {
		l, err = feetAndInches(m, comma)
		return l, true, err
	}
	if m := inchesMarked.FindStringSubmatch(t); m != nil {
		if _, fine := number(m[2], comma); !fine {
			return 0, true, notRead(t, `inches such as 4 3/4"`)
		}
		l, err = measured(m[2], InInches, comma)
		return signed(m[1], l), true, err
	}
	return 0, false, nil
}

// feetAndInches reads the parts of a text with a foot mark: 3' 4 3/4", the inch
// mark left out or not.
func feetAndInches(m []string, comma bool) (Length, error) {
	t, rest := m[0], strings.TrimSpace(m[3])
	feet, fine := number(m[2], comma)
	if !fine {
		return 0, notRead(t, "feet before the foot mark")
	}
	l, err := measured(m[2], InFeet, comma)
	if err != nil || rest == "" {
		return signed(m[1], l), err
	}
	if n := inchesMarked.FindStringSubmatch(rest); n != nil && n[1] == "" {
		rest = n[2]
	}
	inches, fine := number(rest, comma)
	switch {
	case !fine || inches < 0 || math.Signbit(inches) || strings.HasPrefix(rest, "("):
		return 0, notRead(t, `feet and inches such as 3' 4 3/4"`)
	case feet != math.Trunc(feet):
		return 0, notRead(t, "whole feet before the inches")
	case inches >= 12: // after no feet too: 0' 101" is a lost fraction, not 101 inches
		return 0, &ReadError{t, InchesOver, "inches up to 11 after feet", nil}
	}
	part, err := measured(rest, InInches, comma)
	return signed(m[1], l+part), err
}

// Notations is every notation that a text could be in, the likeliest first; none
// where it is no length at all. One reading of one cell decides nothing: the
// form is decided over a table.
func Notations(text string) []Notation {
	t := Fold(text)
	if !strings.ContainsAny(t, "0123456789") {
		return nil
	}
	if _, ok, err := marked(t, loneComma(t)); ok {
		if !readOr(err) {
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
	if _, err := feetInches(t, Form{Unit: InInches}); err == nil && feetInchText.MatchString(t) {
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
