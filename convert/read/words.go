package read

import (
	"regexp"
	"strings"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// words is the meanings a heading may have, from templates/headings.csv.
type words struct {
	meaning map[string]string // folded heading -> meaning
	order   []string          // every heading word, longest first
}

// newWords reads the list of heading words: meaning, and words apart by
// semicolons. A word may stand under one meaning only.
func newWords(text string) words {
	w := words{meaning: map[string]string{}}
	for _, line := range strings.Split(text, "\n")[1:] {
		meaning, list, ok := strings.Cut(strings.TrimSpace(line), ",")
		if !ok {
			continue
		}
		for _, word := range strings.Split(strings.Trim(list, `"`), ";") {
			if word = plainWords(word); word != "" && w.meaning[word] == "" {
				w.meaning[word] = meaning
				w.order = append(w.order, word)
			}
		}
	}
	return w
}

var (
	brackets   = regexp.MustCompile(`[\(\[][^\)\]]*[\)\]]`)
	notLetters = regexp.MustCompile(`[^a-z0-9/' .-]+`)
	unitTail   = regexp.MustCompile(`[ ,]+(in|ins|inches|mm|cm|m|ft|feet|deg|degrees|ft-in-8ths|f-i-e)\.?$`)
)

// plainWords is a heading without its case, its brackets and its punctuation.
func plainWords(text string) string {
	t := strings.ToLower(measure.Fold(text))
	t = brackets.ReplaceAllString(t, " ")
	t = strings.ReplaceAll(t, "°", " deg")
	t = notLetters.ReplaceAllString(t, " ")
	t = strings.Join(strings.Fields(t), " ")
	return strings.Trim(t, " .:-")
}

// of is the meaning of a cell that is a heading and nothing else; "" for none.
func (w words) of(c sheet.Cell) string {
	if c.Kind != sheet.Text {
		return ""
	}
	t := plainWords(c.Text)
	if m := w.meaning[t]; m != "" {
		return m
	}
	return w.meaning[strings.Trim(unitTail.ReplaceAllString(t, ""), " .:-")]
}

// first is the meaning of the heading word that a text begins with, and the rest
// of it: "WL 2" is a waterline and 2.
func (w words) first(text string) (meaning, rest string) {
	t := plainWords(text)
	best := ""
	for word, m := range w.meaning {
		if len(word) > len(best) && strings.HasPrefix(t, word) && (len(t) == len(word) || !letter(t[len(word)])) {
			best, meaning = word, m
		}
	}
	return meaning, strings.Trim(strings.TrimPrefix(t, best), " .:-")
}

func letter(b byte) bool { return b >= 'a' && b <= 'z' }

// has says that a text holds a word of a meaning.
func (w words) has(text string, meanings ...string) bool {
	t := " " + plainWords(text) + " "
	for word, m := range w.meaning {
		if len(word) < 2 {
			continue
		}
		for _, want := range meanings {
			if m == want && strings.Contains(t, " "+word+" ") {
				return true
			}
		}
	}
	return false
}

// unitWords are the ways a heading or caption says its unit.
var unitWords = []struct {
	re   *regexp.Regexp
	form measure.Form
}{
	{regexp.MustCompile(`feet[ ,-]+inches[ ,-]+(and )?(eighths|8ths)|ft[ .,-]+ins?[ .,-]+(eighths|8ths)|f-i-e|ft-in-8ths`), measure.Form{Unit: measure.NoUnit, Notation: measure.FeetInchesEighths}},
	{regexp.MustCompile(`\b(dimensionless|fractions? of (the )?(half[- ]beam|beam|b/2|maximum|max)|as fractions|fractions)\b`), measure.Form{Unit: measure.Fractions, Notation: measure.Decimal}},
	{regexp.MustCompile(`\b(mm|millimet(er|re)s?)\b`), measure.Form{Unit: measure.InMillimetres, Notation: measure.Decimal}},
	{regexp.MustCompile(`\b(cm|centimet(er|re)s?)\b`), measure.Form{Unit: measure.InCentimetres, Notation: measure.Decimal}},
	{regexp.MustCompile(`\b(metres?|meters?)\b|\(m\)|, m$`), measure.Form{Unit: measure.InMetres, Notation: measure.Decimal}},
	{regexp.MustCompile(`\b(inches|inch|ins)\b|\bin\.(\s|$|\))|\(in\)|, in$|"$`), measure.Form{Unit: measure.InInches}},
	{regexp.MustCompile(`\b(decimal feet|feet|foot)\b|\(ft\.?\)|, ft\.?$|\bft\.(\s|$)`), measure.Form{Unit: measure.InFeet}},
}

// saysUnit is the unit or notation that a heading or caption states.
func saysUnit(text string) (measure.Form, bool) {
	t := strings.ToLower(measure.Fold(text))
	for _, u := range unitWords {
		if u.re.MatchString(t) {
			return u.form, true
		}
	}
	return measure.Form{}, false
}

// bareUnit is the unit that a cell of a unit row states and nothing else.
func bareUnit(text string) (measure.Form, bool) {
	switch strings.Trim(strings.ToLower(measure.Fold(text)), "()[] .") {
	case "in", "ins", "inch", "inches", `"`:
		return measure.Form{Unit: measure.InInches}, true
	case "ft", "feet", "foot", "'":
		return measure.Form{Unit: measure.InFeet}, true
	case "mm":
		return measure.Form{Unit: measure.InMillimetres}, true
	case "cm":
		return measure.Form{Unit: measure.InCentimetres}, true
	case "m":
		return measure.Form{Unit: measure.InMetres}, true
	case "ft-in-8ths", "f-i-e", "feet-inches-eighths", "ft-in-8":
		return measure.Form{Notation: measure.FeetInchesEighths}, true
	case "deg", "degrees", "°", "each", "to 1", "pcs", "a side", "n":
		return measure.Form{}, true
	}
	return measure.Form{}, false
}
