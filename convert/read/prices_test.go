package read

import "testing"

// What a price is of, by the words over it; none is taken for a price of the board
// itself that says it is of something else.
func TestPriceHeads(t *testing.T) {
	w := newWords(headingWords(t))
	for head, want := range map[string]string{
		"Price": "price", "Price each": "price", "Cost ($)": "price", "Price, $": "price", "Price per board": "price", "Price/pc": "price", "Price each, delivered": "",
		"Price a foot": "runfoot", "Price/ft": "runfoot", "Price $/lf": "runfoot", "Price ($/lf)": "runfoot", "$ per ft": "runfoot", "$/lin. ft.": "runfoot", "per running foot": "runfoot", "Price per foot run": "runfoot", "Cost per lineal foot": "runfoot",
		"Price per m": "runmetre", "£/m": "runmetre", "Cost (€ / m)": "runmetre", "Price per running metre": "runmetre",
		"Price per M": "", "PRICE PER M": "", "Price/MBF": "thousand", "$ per thousand": "thousand",
		"Cost per bd ft": "footprice", "Price/bf": "footprice", "$/BF": "footprice", "Price (per bd. ft.)": "footprice", "per board foot": "footprice", "Price BF": "footprice",
		"Price per 100": "", "Price (per cubic metre)": "", "BF": "", "Width": "width",
	} {
		if got := w.heading(head); got != want {
			t.Errorf("%q is read as %q, want %q", head, got, want)
		}
	}
}
