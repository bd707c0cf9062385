package hull

import (
	"math"
	"testing"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// withRabbet is a formula's table with its foot as the rabbet, in both views.
func withRabbet(h surfaceHull, rows int, step measure.Length) Offsets {
	o := tabled(h, rows, step)
	o.Lines[0].Name, o.Lines[0].Role = "rabbet", Rabbet
	out := o.Lines[0]
	out.View, out.Values = HalfBreadth, nil
	for _, st := range o.Stations {
		x := st.At.Value.Inches()
		out.Values = append(out.Values, source.Is(measure.Inches(h.half(x, h.foot(x))).Round(step)))
	}
	o.Lines = append(o.Lines, out)
	return o
}

// TestGarboardOnAPlane lays a flat bottom that rises by tan d going out and by tan
// r going aft against a keel 3 in to each side of the middle line. Two planes meet
// at the angle of the directions square to them: (-tan r, -tan d, 1) and (0, 1, 0).
func TestGarboardOnAPlane(t *testing.T) {
	const thick = 1.25
	for _, c := range []struct{ d, r float64 }{{10, 0}, {25, 3}, {60, -4}} {
		d, r := math.Tan(c.d*math.Pi/180), math.Tan(c.r*math.Pi/180)
		h := surfaceHull{240, func(x float64) float64 { return 20 + r*x }, func(x float64) float64 { return 20 + r*x + 40*d },
			func(x, z float64) float64 { return 3 + (z-20-r*x)/d }}
		o := withRabbet(h, 9, measure.Millimetre/100)
		o.Surface = InsidePlanking
		list := []Strake{{Name: "1-6", Skin: Planks, Count: source.Is(6), Thickness: source.Is(measure.Inches(thick))}}
		s, _ := Work(o, list, DefaultRules())
		l := s.Linings[0]
		if len(l.Garboards) < 19 {
			t.Fatalf("%d stations of %d", len(l.Garboards), len(o.Stations))
		}
		want := math.Acos(d/math.Sqrt(1+d*d+r*r)) * 180 / math.Pi
		for _, g := range l.Garboards {
			near(t, "plank to keel", float64(g.ToKeel), want, 0.02)
			near(t, "edge on the keel's side", float64(g.Edge), 90-want, 0.02)
			// The rabbet laid out: from the rabbet line the square edge goes into the keel
			// by the thickness, and from its inner corner the inside face goes out again
			// along the plank to the keel's side.
			plank := flat{math.Sin(want * math.Pi / 180), math.Cos(want * math.Pi / 180)} // out, up
			corner := flat{-plank.y, plank.x}.times(thick)
			beard := corner.plus(plank.times(-corner.x / plank.x))
			near(t, "depth", g.Depth.Inches(), -corner.x, 1e-3)
			near(t, "bearding line", g.Bearding.Inches(), beard.y, 2e-3)
		}
	}
}

// TestGarboardNotGiven says of a hull whose rabbet has no half-breadths that it is
// not known how the garboard meets the keel.
func TestGarboardNotGiven(t *testing.T) {
	list := []Strake{{Name: "1-6", Skin: Planks, Count: source.Is(6)}}
	s, found := Work(wigley(measure.Foot, measure.Eighth), list, DefaultRules())
	n := 0
	for _, f := range found {
		if f.Kind == GarboardOpen {
			n++
		}
	}
	if n != 1 || len(s.Linings[0].Garboards) != 0 {
		t.Errorf("told of %d times, %d worked out", n, len(s.Linings[0].Garboards))
	}
}
