package read

import (
	"regexp"
	"slices"
	"strings"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// words is the meanings a heading may have, from templates/headings.csv.
type words struct {
	meaning map[string]string // plain words of a heading -> meaning
	longest int               // most words in one heading
	seen    map[string][]hit  // texts already looked through
	heads   map[string]string // and those looked at as headings
}

// hit is a known word found in a text.
type hit struct {
	meaning string
	from    int // its words, counted from nought
	to      int
}

// newWords reads the list of heading words: a meaning, and its words apart by
// semicolons. A word stands under one meaning only: the first.
func newWords(text string) *words {
	w := &words{meaning: map[string]string{}, seen: map[string][]hit{}, heads: map[string]string{}}
	for i, line := range strings.Split(text, "\n") {
		meaning, list, ok := strings.Cut(strings.TrimSpace(line), ",")
		if !ok || i == 0 {
			continue
		}
		for _, word := range strings.Split(strings.Trim(list, `"`), ";") {
			t := tokens(word)
			if len(t) == 0 {
				continue
			}
			if key := strings.Join(t, " "); w.meaning[key] == "" {
				w.meaning[key] = meaning
				w.longest = max(w.longest, len(t))
			}
		}
	}
	return w
}

var (
	inBrackets = regexp.MustCompile(`[\(\[][^\)\]]*[\)\]]`)
	apart      = regexp.MustCompile(`[^a-z0-9/'.]+`)
	lettered   = regexp.MustCompile(`([a-z'])(\d)`)
)

// tokens is a text as plain words: lower case, without punctuation but for the
// point within a number, "WL3" as wl and 3, "w.l." as wl.
func tokens(text string) []string {
	t := strings.ToLower(measure.Fold(text))
	t = strings.ReplaceAll(t, "°", " deg ")
	t = apart.ReplaceAllString(t, " ")
	t = lettered.ReplaceAllString(t, "$1 $2")
	var all []string
	for _, f := range strings.Fields(t) {
		if f = unpoint(f); f != "" {
			all = append(all, f)
		}
	}
	return all
}

// unpoint takes the points out of a word but for those between figures.
func unpoint(word string) string {
	if !strings.Contains(word, ".") {
		return strings.Trim(word, "'/")
	}
	var b strings.Builder
	for i := range len(word) {
		if word[i] == '.' && !(i > 0 && digit(word[i-1]) && i+1 < len(word) && digit(word[i+1])) {
			continue
		}
		b.WriteByte(word[i])
	}
	return strings.Trim(b.String(), "'/")
}

func digit(b byte) bool { return b >= '0' && b <= '9' }

// plainWords is a heading without its case, its brackets and its punctuation.
func plainWords(text string) string {
	return strings.Join(tokens(inBrackets.ReplaceAllString(text, " ")), " ")
}

// qualifiers is the words that may stand before the name of a quantity and
// change nothing of what it is.
var qualifiers = []string{"plank", "planks", "strake", "strakes", "strip", "strips", "board", "boards", "stock", "rough", "finished", "nominal", "actual", "overall", "full", "greatest", "max", "maximum", "mean"}

// quantities is the meanings that a qualifier may stand before.
var quantities = []string{"thickness", "width", "length", "count", "species"}

// of is the meaning of a cell that is a heading and nothing else; "" for none.
func (w *words) of(c sheet.Cell) string {
	if c.Kind != sheet.Text {
		return ""
	}
	return w.heading(c.Text)
}

// heading is the meaning of a text that is a heading and nothing else.
func (w *words) heading(text string) string {
	if m, ok := w.heads[text]; ok {
		return m
	}
	m := w.asHeading(text)
	w.heads[text] = m
	return m
}

func (w *words) asHeading(text string) string {
	if m := w.meaning[strings.Join(tokens(text), " ")]; m != "" {
		return m
	}
	if m, ok := priceHead(text); ok {
		return m
	}
	for _, t := range [][]string{tokens(inBrackets.ReplaceAllString(text, " ")), tokens(text)} {
		if m := w.meaning[strings.Join(t, " ")]; m != "" {
			return m
		}
		t = withoutUnit(t)
		if len(t) == 0 || len(t) > 6 {
			continue
		}
		if m := w.meaning[strings.Join(t, " ")]; m != "" {
			return m
		}
		if slices.Contains(qualifiers, t[0]) {
			if m := w.meaning[strings.Join(t[1:], " ")]; slices.Contains(quantities, m) {
				return m
			}
		}
	}
	return ""
}

// in is every known word in a text, from its start on, the longest first where
// two begin together. Words of one letter count only where they are all there is.
func (w *words) in(text string) []hit {
	if found, ok := w.seen[text]; ok {
		return found
	}
	t := tokens(text)
	var all []hit
	for i := 0; i < len(t); {
		n := min(w.longest, len(t)-i)
		for ; n > 0; n-- {
			key := strings.Join(t[i:i+n], " ")
			if m := w.meaning[key]; m != "" && (len(key) > 1 || len(t) == 1) {
				all = append(all, hit{m, i, i + n})
				break
			}
		}
		i += max(1, n)
	}
	w.seen[text] = all
	return all
}

// has says that a text holds a word of one of the meanings.
func (w *words) has(text string, meanings ...string) bool {
	return slices.ContainsFunc(w.in(text), func(h hit) bool { return slices.Contains(meanings, h.meaning) })
}

// first is the meaning of the heading word that a text begins with, and the rest
// of its words: "WL 2" is a waterline and 2.
func (w *words) first(text string) (meaning, rest string) {
	t := tokens(text)
	if hits := w.in(text); len(hits) > 0 && hits[0].from == 0 {
		return hits[0].meaning, strings.Join(t[hits[0].to:], " ")
	}
	return "", strings.Join(t, " ")
}
