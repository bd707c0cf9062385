package hull

import (
	"testing"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// A thick sheer strake at the head of the list does not make the moulds too small
// for all the others: they are drawn for the thickness most share.
func TestMouldsAreForTheThicknessMostShare(t *testing.T) {
	strake := func(name string, side Side, mm float64) Strake {
		return Strake{Name: name, Skin: Planks, Side: side, Thickness: source.Reading[measure.Length]{Value: measure.Length(mm * float64(measure.Millimetre)), State: source.Given}}
	}
	h := &hull{table: &table{o: Offsets{Surface: OutsidePlanking}}, r: DefaultRules()}
	for _, c := range []struct {
		strakes []Strake
		mm      measure.Length
		said    int
	}{
		{[]Strake{strake("1", BothSides, 30), strake("2", BothSides, 20), strake("3", BothSides, 20)}, 20, 1},
		{[]Strake{strake("1", BothSides, 30), strake("2-4", BothSides, 20).Spanned()}, 20, 1},
		{[]Strake{strake("1", BothSides, 22), strake("2", Port, 20), strake("3", Starboard, 20)}, 20, 1}, // as many: the lesser
		{[]Strake{strake("1", BothSides, 20), strake("2", BothSides, 20)}, 20, 0},
	} {
		skins, found := h.skinThicknesses(c.strakes)
		if len(skins) != 1 || skins[0].Thickness != c.mm*measure.Millimetre || len(found) != c.said {
			t.Errorf("%v: %v, %v", c.strakes, skins, found)
		}
	}
}
