package stock

import (
	"math"
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/scarf"
)

// Pounds a cubic foot at 12 per cent, worked from the Wood Handbook's specific
// gravities; 34 for air-dry Douglas fir in an Oregon State University table and
// 42 for sapele as published agree to their last figure.
func TestDensity(t *testing.T) {
	for name, want := range map[string]float64{"Douglas fir": 33.6, "white oak": 47.5, "longleaf pine": 41.3, "Western Red Cedar": 22.4, "Western larch": 36.4, "teak": 40.1, "sapele": 42.0, "black locust": 48.2, "elm": 0} {
		if got := density(name); math.Abs(got-want) > 0.06 {
			t.Errorf("%s: %.2f lb a cubic foot, want %v", name, got, want)
		}
	}
}

// One plank of 20 ft, 6 in by 1 in: 10 board feet, 10/12 of a cubic foot; 10 sq ft
// of inside face, 1 2/3 sq ft of edge. By hand.
func TestSkins(t *testing.T) {
	r := DefaultRules()
	r.Spread = 2
	strakes := []hull.Strake{{Name: "1", Skin: hull.Planks, Side: hull.Port, Thickness: in(1), Width: in(6), Length: in(240), Species: "Douglas fir"}}
	_, p, _ := Work(lay.Runs(strakes, scarf.DefaultRules()), []Board{board("a", "Douglas fir", 1.25, 8, 22, 0), board("b", "Douglas fir", 1.25, 8, 12, 2)}, nil, lay.DefaultRules(), r)
	s := p.Skins[0]
	for _, c := range []struct{ got, want float64 }{{float64(s.Feet), 10}, {s.Weight, 33.56 * 10 / 12}, {s.Faying, 10}, {s.Seams, 20. / 12}, {s.Glue, 2 * (10 + 20./12)}} {
		if math.Abs(c.got-c.want) > 0.01 {
			t.Errorf("%v, want %v", c.got, c.want)
		}
	}
	if len(p.Stay) != 1 || p.Stay[0].Count != 2 {
		t.Errorf("%+v stay, want both of b", p.Stay)
	}
}
