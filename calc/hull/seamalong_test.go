package hull

import (
	"math"
	"testing"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// A station left blank lies on each seam where the seam through the others passes
// it: on the deck of the Wigley hull, half-breadth 2.5 (1 - x^2/100), the length from
// amidships to x is x/2 sqrt(1 + x^2/400) + 10 asinh(x/20), plain calculus, which at
// x = 10 is the 10.402288194 of the whole half waterline. So does a station that the
// offsets do not have, by its position; one past the seam's end goes on by the
// spacing, and by how much that may be out is said: at the end the deck runs at
// atan(1/2), and 0.6 is sqrt(1.25) x 0.6 long.
func TestBlankStationAlongTheSeam(t *testing.T) {
	o := wigley(measure.Metre, measure.Millimetre/100)
	for i := range o.Lines {
		o.Lines[i].Values[15] = source.Reading[measure.Length]{}
	}
	s, _ := Work(o, []Strake{{Name: "1-6", Skin: Planks, Count: source.Is(6)}}, DefaultRules())
	if s.Stations[15].Lacks == "" {
		t.Fatal("station 15 was drawn")
	}
	at := func(x float64) Station { return Station{Name: "at", At: source.Is(measure.Metre.Times(10 + x))} }
	along, ok := s.SeamAlong(Planks, "1", BothSides, true, []Station{{Name: "10"}, {Name: "15"}, {Name: "16"}, at(6.6), at(10.6)})
	if !ok {
		t.Fatal("no distances along the sheer")
	}
	run := func(x float64) float64 { return x/2*math.Sqrt(1+x*x/400) + 10*math.Asinh(x/20) }
	for i, want := range []float64{0, run(5), run(6), run(6.6), 10.402288194 + 0.6} {
		near(t, "along", along[i].At.Millimetres()/1000, want, 1e-3)
		if along[i].Fills != (i == 1 || i == 3) || along[i].Drawn != (i < 4) {
			t.Errorf("place %d: %+v", i, along[i])
		}
	}
	near(t, "may be out by", along[4].Off.Millimetres()/1000, 0.6*(math.Sqrt(1.25)-1), 1e-3)
	// And forward of its fore end, as far the other way.
	along, _ = s.SeamAlong(Planks, "1", BothSides, true, []Station{at(-10.6), {Name: "10"}})
	near(t, "from forward of the seam", along[1].At.Millimetres()/1000, 0.6+10.402288194, 1e-3)
}
