package hull

import (
	"math"
	"slices"
	"testing"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// TestRuns fills in lengths and widths from the hull and asks about a typed
// length that is not the hull's.
func TestRuns(t *testing.T) {
	list := []Strake{
		{Name: "1-5", Skin: Planks, Count: source.Is(5)},
		{Name: "6", Skin: Planks, Length: source.Is(25 * measure.Foot), Width: source.Is(7 * measure.Inch)},
		{Name: "x", Skin: "ceiling"},
	}
	r := DefaultRules()
	r.ExtraAtEnds = 2 * measure.Inch
	s, _ := Work(wigley(measure.Foot, measure.SixtyFourth), list[:2], r)
	runs, found := s.Runs(list, r)
	if len(runs) != 7 || runs[4].Name != "5" || runs[4].Side != BothSides || runs[6].Name != "x" {
		t.Fatalf("%d runs", len(runs))
	}
	// The sheer is the waterline, 2 x 10.402288194 ft, by quadrature.
	near(t, "first", runs[0].Length.Value.Feet(), 2*10.402288194+4./12, 0.03)
	if runs[0].Length.Value < runs[4].Length.Value {
		t.Errorf("the strake at the sheer is %v and that by the keel %v", runs[0].Length.Value.Feet(), runs[4].Length.Value.Feet())
	}
	near(t, "greatest width", runs[0].Width.Value.Feet(), 0.558579, 0.01)
	if len(runs[0].WidthAt) != 21 {
		t.Errorf("%d widths", len(runs[0].WidthAt))
	}
	if runs[5].Length.Value != 25*measure.Foot || runs[5].Width.Value != 7*measure.Inch {
		t.Error("what is typed is not kept")
	}
	if len(found) != 2 || found[0].Kind != StrakeRun || found[1].Kind != StrakeFromHull {
		t.Errorf("found %v", found)
	}
	r.Lengths = LengthsComputed
	if runs, _ = s.Runs(list, r); runs[5].Length.Value > 21*measure.Foot {
		t.Errorf("computed %v", runs[5].Length.Value.Feet())
	}
	// No strake is shorter than the hull and what is left on at both ends, nor narrower.
	for i, one := range runs[:5] {
		drawn := s.Linings[0].Strakes[i]
		if wide := slices.Max(drawn.Widths); one.Length.Value < drawn.Length+4*measure.Inch || one.Width.Value < wide {
			t.Errorf("strake %s is %v by %v, drawn %v by %v", one.Name, one.Length.Value, one.Width.Value, drawn.Length, wide)
		}
	}
	// From station 5, 5 ft aft, to station 15 along the sheer: 2 (x/2 sqrt(1 + x^2/400)
	// + 10 asinh(x/20)) of x = 5, plain calculus.
	part, _ := s.Runs([]Strake{{Name: "1", Skin: Planks, From: "5", To: "15"}}, r)
	near(t, "part of a strake", part[0].Length.Value.Feet(), 5*math.Sqrt(1+25./400)+20*math.Asinh(0.25)+4./12, 0.03)
	near(t, "its fore end", part[0].Start.Value.Feet(), 5, 1e-9)
	var none *Shape
	if same, found := none.Runs(list, r); len(same) != 3 || found != nil {
		t.Error("without a hull the list changes")
	}
}
