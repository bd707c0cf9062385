package read

import (
	"fmt"
	"regexp"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/calc/stock"
)

// By what measure prices under a bare "Price" are may be said elsewhere: in words over
// the rack, or in a column beside them.

// pricesBy is words over a rack that say by what its prices are: prices are by the
// board foot, $ per bf. What comes after is the measure.
var pricesBy = regexp.MustCompile(`(?:\b(?:prices?|priced|costs?)\b(?: (?:are|is|all|given|quoted|in \S+))*|[$£€]|\b` + currency + `\b)[ ,:]*(/|\b(?:an?|per|by the|by)\b) ?([^;,()]*)`)

// priceMeasure is the meaning of a measure of prices that some words are, or begin
// with where more may follow; "" for none.
func priceMeasure(words string, more bool) string {
	t := strings.Join(strings.Fields(strings.NewReplacer(".", " ", "-", " ", "³", "3").Replace(strings.ToLower(measure.Fold(words)))), " ")
	for _, by := range []string{"per ", "by the ", "a ", "an "} {
		t = strings.TrimPrefix(t, by)
	}
	best, meaning := "", ""
	for m, all := range priceMeasures {
		for _, of := range all {
			if (t == of || more && strings.HasPrefix(t, of+" ")) && len(of) > len(best) {
				best, meaning = of, m
			}
		}
	}
	if best == "m" && strings.Contains(words, "M") {
		return "" // a metre, or a thousand feet
	}
	return meaning
}

// pricesOver reads the prices of a rack by the measure that the words over it name,
// where their heading names none; a measure not known is asked.
func (r *reader) pricesOver(t *records) {
	col, ok := t.cols["price"]
	if !ok {
		return
	}
	if _, own := t.cols["pricedby"]; own || holdsAny(t.heads[col], "each", "board", "piece", "pc", "ea", "stick", "plank") {
		return
	}
	remarks, _ := t.page.sheetWords()
	for i, w := range append(append([]string{}, t.caption...), remarks...) {
		m := pricesBy.FindStringSubmatchIndex(strings.ToLower(measure.Fold(w)))
		if m == nil {
			continue
		}
		of := measure.Fold(w)[m[4]:m[5]]
		at := t.page.cell(t.head, col)
		meaning := priceMeasure(of, true)
		if by := measure.Fold(w)[m[2]:m[3]]; meaning == "" && (i >= len(t.caption) || len(by) < 3 && by != "/") {
			continue // prices by Smith and Son, the price a boat was sold at
		}
		delete(t.cols, "price")
		if meaning == "" {
			r.add(finding.Finding{Kind: ColumnUnread, Cell: at, Reads: w, Text: fmt.Sprintf("the prices were not read: %q does not say of how much of a board they are", w)})
			return
		}
		t.cols[meaning] = col
		r.add(finding.Finding{Kind: ConventionRead, Cell: at, Reads: w, Text: fmt.Sprintf("the prices are read as %s, as %q says", pricedWords[meaning], w)})
		return
	}
}

// pricedWords is the measures of prices in words.
var pricedWords = map[string]string{"price": "of a board", "footprice": "of a board foot", "thousand": "of a thousand board feet", "runfoot": "of a foot of a board's length", "runmetre": "of a metre of a board's length", "cubicmetre": "of a cubic metre"}

// pricedBeside prices a board by the measure that stands in a column beside its price.
func (r *reader) pricedBeside(t *records, row int, b *stock.Board, what string) {
	c, at, ok := t.cell(row, "pricedby")
	p := b.Price
	if !ok || !p.OK() {
		return
	}
	b.Price = source.Reading[float64]{State: source.Unread, Text: p.Text, Cell: p.Cell}
	meaning := priceMeasure(text(c), false)
	if meaning == "" {
		r.add(finding.Finding{Kind: NumberUnread, Cell: at, Reads: text(c),
			Text: fmt.Sprintf("%s is %q by %q: of how much of a board is not said", what, p.Text, text(c)), Do: "write board, board foot, thousand, foot, metre or cubic metre beside it"})
		return
	}
	if meaning == "runfoot" {
		r.add(finding.Finding{Kind: ConventionRead, Cell: at, Reads: text(c), Text: fmt.Sprintf("%s is read as that %s: a price of a board foot is marked so", what, pricedWords[meaning])})
	}
	b.Price = source.Reading[float64]{Cell: p.Cell, Text: p.Text}
	pricedOf(b, p, meaning)
}
