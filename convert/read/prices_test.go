package read

import (
	"math"
	"testing"
)

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
		"Price per 100": "", "Price (per cubic metre)": "cubicmetre", "Price per m3": "cubicmetre", "Price/m³": "cubicmetre", "EUR per m3": "cubicmetre", "€/m³": "cubicmetre", "Price a cubic metre": "cubicmetre", "Price, EUR per m³": "cubicmetre", "SEK/lm": "runmetre", "Price per cubic foot": "", "BF": "", "Width": "width",
	} {
		if got := w.heading(head); got != want {
			t.Errorf("%q is read as %q, want %q", head, got, want)
		}
	}
}

// A price of a cubic metre is of a board's rough size; what a caption says of prices
// is no unit of its lengths.
func TestPriceOfACubicMetre(t *testing.T) {
	r := read(t, bookOf(sheetOf("Lumber", `Lumber, mm; prices a cubic metre
Board|Species|Thickness|Width|Length|Count|EUR per m3
A|Larch|32|150|4800||900`)), Options{})
	if len(r.job.Rack) != 1 || len(r.found) > 0 {
		t.Fatalf("%d boards: %v", len(r.job.Rack), r.found)
	}
	const want = 0.032 * 0.150 * 4.8 * 900
	if b := r.job.Rack[0]; b.PerFoot || math.Abs(b.Price.Value-want) > 1e-9 {
		t.Errorf("priced at %v, want %v", b.Price.Value, want)
	}
}

// What the words over a rack, or a column beside its prices, say that they are of. A
// board of 1 x 6, 16 ft long, is 8 board feet (by hand).
func TestPricesSaidElsewhere(t *testing.T) {
	const asked = -1
	for _, c := range []struct {
		over, head, price string
		want              float64
		foot              bool
	}{
		{"", "Price", "4", 4, false},
		{"Prices are by the board foot", "Price", "4", 4, true},
		{"Lumber, $ per board foot", "Price", "4", 4, true},
		{"Lumber; prices per MBF", "Price", "4000", 4, true},
		{"Lumber. Costs are in $ a running foot, delivered", "Cost", "4", 64, false},
		{"Prices are by the board foot", "Price each", "4", 4, false},
		{"Prices per hundredweight", "Price", "4", asked, false},
		{"Prices by Smith and Son", "Price", "4", 4, false},
		{"Prices of May, by agreement with the yard", "Species", "oak", asked, false},
		{"", "Price|Price per", "4|board foot", 4, true},
		{"", "Price|Price per", "4|BF", 4, true},
		{"", "Price|Price per", "4|foot", 64, false},
		{"", "Price|Price per", "4|board", 4, false},
		{"", "Price|Price per", "4|load", asked, false},
		{"", "Price|Price per", "4|", asked, false},
	} {
		r := read(t, bookOf(sheetOf("Lumber", c.over+"\nBoard|Thickness (in)|Width (in)|Length (ft)|Count|"+c.head+"\nA|1|6|16||"+c.price)), Options{})
		if len(r.job.Rack) != 1 {
			t.Errorf("%q, %q: %d boards", c.over, c.head, len(r.job.Rack))
			continue
		}
		b := r.job.Rack[0]
		if b.Price.OK() != (c.want != asked) || b.Price.OK() && (math.Abs(b.Price.Value-c.want) > 1e-9 || b.PerFoot != c.foot) {
			t.Errorf("%q, %q, %q: priced at %v (%v), of a board foot %v, want %v: %v", c.over, c.head, c.price, b.Price.Value, b.Price.State, b.PerFoot, c.want, r.found)
		}
		if c.want == asked && c.head != "Species" && len(r.codes(1)) == 0 {
			t.Errorf("%q, %q, %q: nothing is said", c.over, c.head, c.price)
		}
	}
}
