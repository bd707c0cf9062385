package xlsx

import (
	"math"
	"testing"

	"strakebook/convert/sheet"
)

// A column is as wide as its words where something stands to their right, but not
// for words that are wrapped, lie across cells, or have the row to themselves.
func TestColumnsAreAsWideAsTheirWords(t *testing.T) {
	word := func(text string, style sheet.Style) sheet.Cell {
		return sheet.Cell{Kind: sheet.Text, Text: text, Style: style}
	}
	next := sheet.Cell{Kind: sheet.Number, Number: 1}
	const long = "a strake's long name" // 20 letters
	for _, c := range []struct {
		what string
		row  []sheet.Cell
		had  []float64
		want float64
	}{
		{"a word", []sheet.Cell{word(long, sheet.Entry), next}, []float64{8, 8}, 22},
		{"a short word", []sheet.Cell{word("S1", sheet.Entry), next}, []float64{8, 8}, 8},
		{"wrapped", []sheet.Cell{word(long, sheet.Words), next}, []float64{8, 8}, 8},
		{"across", []sheet.Cell{word(long, sheet.Across), next}, []float64{8, 8}, 8},
		{"alone", []sheet.Cell{word(long, sheet.Entry)}, []float64{8, 8}, 8},
		{"nothing beside", []sheet.Cell{word(long, sheet.Entry), {}}, []float64{8, 8}, 8},
		{"called out", []sheet.Cell{word("Transom", sheet.Called), next}, []float64{8, 8}, 2.1*7 + 3},
		{"the builder's", []sheet.Cell{word(long, sheet.Plain), next}, nil, 22},
		{"a paragraph", []sheet.Cell{word(long+long+long, sheet.Entry), next}, []float64{8, 8}, 8},
	} {
		var w widths
		w.row(&sheet.Sheet{Out: sheet.Layout{Widths: c.had}}, 1, c.row)
		if got := w.widen(c.had); len(got) == 0 || math.Abs(got[0]-c.want) > 1e-9 {
			t.Errorf("%s: %v, want %v", c.what, got, c.want)
		}
	}
}
