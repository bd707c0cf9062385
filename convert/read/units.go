package read

import (
	"regexp"
	"slices"
	"strings"

	"strakebook/calc/measure"
)

// unitWords are the ways a heading or caption says its unit or its notation, the
// fuller first: what one has matched the next does not see.
var unitWords = []struct {
	re   *regexp.Regexp
	form measure.Form
}{
	{regexp.MustCompile(`\b(f|ft|feet|foot)\b[ .,&/-]+(i|in|ins|inch|inches)\b[ .,&/-]+(and )?(e\b|8ths?\b|eighths?\b|1/8s?\b|8\b)`), measure.Form{Notation: measure.FeetInchesEighths}},
	{regexp.MustCompile(`\bold print(ing)?\b`), measure.Form{Notation: measure.OldPrint}},
	{regexp.MustCompile(`\b(ft|feet|foot)\b[ .,&/-]+(and )?(in|ins|inch|inches)\b`), measure.Form{Notation: measure.FeetInchesFractions}},
	{regexp.MustCompile(`\b(dimensionless|non-dimensional|as fractions|fractions of [a-z/ -]+|in fractions|\(fractions\))`), measure.Form{Unit: measure.Fractions}},
	{regexp.MustCompile(`\b(mm|millimet(er|re)s?)\b`), measure.Form{Unit: measure.InMillimetres}},
	{regexp.MustCompile(`\b(cm|centimet(er|re)s?)\b`), measure.Form{Unit: measure.InCentimetres}},
	{regexp.MustCompile(`\b(metres?|meters?)\b|[(\[]m\.?[)\]]|\bin m\b`), measure.Form{Unit: measure.InMetres}},
	{regexp.MustCompile(`\b(inches|inch|ins)\b|\bin\.(\s|$)|[(\[](in|")\.?[)\]]`), measure.Form{Unit: measure.InInches}},
	{regexp.MustCompile(`\b(feet|foot|ft)\b|[(\[]'[)\]]`), measure.Form{Unit: measure.InFeet}},
}

// quantity is a measurement within words, which says nothing of the unit of the
// figures beside them: planking of 25 mm, stations 4 ft apart.
var quantity = regexp.MustCompile(`\d[\d.,/ -]*(mm|cm|m|ins?|inch(es)?|ft|feet|foot|'|")([ .)]|$)`)

// scale is a drawing's scale, which says nothing of the figures either: scale
// 1 in. to the foot.
var scale = regexp.MustCompile(`\bscale\b[^(\[]*|\bto the (foot|inch)\b`)

// inchesParts is figures said to be inches and eighths, or sixteenths, which have no
// way of writing of their own.
var inchesParts = regexp.MustCompile(`\b(in|ins|inch|inches)\b[ .,&/-]+(and )?(8ths?|eighths?|1/8s?|16ths?|sixteenths?|1/16s?|32nds?|1/32s?|quarters|1/4s?)\b`)

var feetWords = regexp.MustCompile(`\b(f|ft|feet|foot)\b`)

// says is what some words state of the unit and notation of the figures they
// stand over. Open is true where they name two.
func says(text string) (form measure.Form, ok, open bool) {
	t := strings.ToLower(measure.Fold(text))
	t = pricesText.ReplaceAllString(scale.ReplaceAllString(t, " "), " ")
	if inchesParts.MatchString(t) && !feetWords.MatchString(t) {
		return measure.Form{}, false, true // 10.4 or 10-4 may then be 10 4/8
	}
	for quantity.MatchString(t) {
		t = quantity.ReplaceAllString(t, " ")
	}
	for _, u := range unitWords {
		if !u.re.MatchString(t) {
			continue
		}
		t = u.re.ReplaceAllString(t, " ")
		if ok {
			return measure.Form{}, false, true
		}
		form, ok = u.form, true
	}
	return form, ok, false
}

// saysUnit is the unit or notation that words state; not ok where they state
// none, or two.
func saysUnit(text string) (measure.Form, bool) {
	form, ok, _ := says(text)
	return form, ok
}

// headUnit is the unit that a heading states: like saysUnit, and a bare unit at
// its end besides, as in "Length ft".
func headUnit(text string) (measure.Form, bool) {
	if form, ok, open := says(text); ok || open {
		return form, ok
	}
	if m := markAtEnd.FindStringSubmatch(strings.ToLower(measure.Fold(text))); m != nil {
		return bareUnit(m[1])
	}
	t := tokens(text)
	if n := len(t); n > 1 && n <= 5 && !strings.ContainsAny(t[n-2], "0123456789") {
		return bareUnit(t[n-1])
	}
	return measure.Form{}, false
}

// markAtEnd is a heading that ends in a foot or an inch mark standing apart.
var markAtEnd = regexp.MustCompile(`^[a-z .-]+[, ]+(["'])$`)

// bareUnit is the unit that a cell of a unit row states and nothing else.
func bareUnit(text string) (measure.Form, bool) {
	t := strings.Trim(strings.ToLower(measure.Fold(text)), "()[] .")
	if u := measure.UnitNamed(t); u != measure.NoUnit {
		return measure.Form{Unit: u}, true
	}
	switch t {
	case "deg", "degs", "degrees", "°", "each", "to 1", ":1", "pcs", "a side", "n", "no", "$", "£", "€", "-":
		return measure.Form{}, true
	}
	if len(strings.Fields(t)) > 5 {
		return measure.Form{}, false
	}
	form, ok, _ := says(t)
	return form, ok && onlyUnits(t)
}

// onlyUnits says that words are units and nothing else.
func onlyUnits(text string) bool {
	for _, w := range tokens(text) {
		if !slices.Contains(unitTokens, w) {
			return false
		}
	}
	return true
}

var unitTokens = []string{"f", "i", "e", "ft", "feet", "foot", "in", "ins", "inch", "inches", "8ths", "8th", "8", "eighths", "eighth", "1/8", "1/8s", "16ths", "16th", "sixteenths", "sixteenth", "1/16", "1/16s", "32nds", "32nd", "quarters", "4ths", "and", "mm", "cm", "m", "millimetres", "millimeters", "metres", "meters", "centimetres", "fractions", "decimal", "th", "ths", "deg", "degs", "degrees"}

// withoutUnit is a heading's words without the unit at their end.
func withoutUnit(t []string) []string {
	n := len(t)
	for n > 1 && slices.Contains(unitTokens, t[n-1]) && t[n-1] != "and" && t[n-1] != "8" {
		n--
	}
	for n > 1 && n < len(t) && (t[n-1] == "in" || t[n-1] == "and") {
		n--
	}
	if n == 0 {
		return t
	}
	return t[:n]
}
