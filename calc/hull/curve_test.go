package hull

import (
	"math"
	"testing"
)

// near says that a figure is within a tolerance of another.
func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: %.9f, want %.9f within %g", what, got, want, tolerance)
	}
}

// TestSplines holds the slopes of the spline to those scipy 1.10.1's
// CubicSpline(bc_type="not-a-knot") gives for three runs of bevels and two short
// ones.
func TestSplines(t *testing.T) {
	for _, c := range []struct{ x, y, slope []float64 }{
		{[]float64{0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10}, []float64{0, 0.5, 1, 1.75, 2.5, 3, 3.5, 4, 4.25, 4.5, 4.5},
			[]float64{0.624547, 0.437726, 0.624547, 0.814084, 0.619117, 0.459449, 0.543086, 0.368208, 0.234084, 0.195458, -0.265916}},
		{[]float64{0, 0.5, 1, 1.5, 2, 3, 4, 5, 6, 7, 8, 8.5, 9}, []float64{12, 10.5, 9.25, 8, 7, 5.5, 4, 3, 2.25, 1.75, 1.5, 1.25, 1.25},
			[]float64{-3.517696, -2.616152, -2.517696, -2.313063, -1.730052, -1.493559, -1.295710, -0.823602, -0.659881, -0.286873, -0.442625, -0.403687, 0.557375}},
		{[]float64{0, 24, 48, 72, 96, 120, 144, 168}, []float64{-2, -0.5, 1, 3, 3, 2, 2, 0.5},
			[]float64{0.083533, 0.051984, 0.083533, 0.051386, -0.039075, -0.020086, -0.005582, -0.145086}},
		{[]float64{0, 1, 3}, []float64{1, 2, 1.5}, []float64{1.416667, 0.583333, -1.083333}},
		{[]float64{0, 1, 2, 4}, []float64{0, 1, 1.5, 1.75}, []float64{1.312500, 0.718750, 0.312500, 0.062500}},
	} {
		for i, m := range slopes(c.x, c.y) {
			near(t, "slope", m, c.slope[i], 1e-6)
		}
	}
}

// TestSplineValues holds the values between the places to scipy 1.10.1's
// CubicSpline(bc_type="not-a-knot"), on even places, uneven ones, and where the
// sign changes.
func TestSplineValues(t *testing.T) {
	for _, c := range []struct{ x, y, at, want []float64 }{
		{[]float64{0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10}, []float64{0, 0.5, 1, 1.75, 2.5, 3, 3.5, 4, 4.25, 4.5, 4.5},
			[]float64{0.5, 1.25, 2.5, 3.75, 5.5, 7.5, 8.5, 9.5, 9.75}, []float64{0.273353, 0.610405, 1.351308, 2.333909, 3.239545, 4.141766, 4.379828, 4.557672, 4.546557}},
		{[]float64{0, 0.5, 1, 1.5, 2, 3, 4, 5, 6, 7, 8, 8.5, 9}, []float64{12, 10.5, 9.25, 8, 7, 5.5, 4, 3, 2.25, 1.75, 1.5, 1.25, 1.25},
			[]float64{0.25, 0.75, 1.75, 2.5, 3.5, 4.5, 6.5, 8.25, 8.75}, []float64{11.193653, 9.868847, 7.463562, 6.220438, 4.725269, 3.440987, 1.953374, 1.372566, 1.189934}},
		{[]float64{0, 24, 48, 72, 96, 120, 144, 168}, []float64{-2, -0.5, 1, 3, 3, 2, 2, 0.5},
			[]float64{12, 36, 60, 84, 108, 132, 150, 160}, []float64{-1.155353, 0.155353, 2.096441, 3.271382, 2.443032, 1.956489, 1.910007, 1.394825}},
		{[]float64{0, 1, 3}, []float64{1, 2, 1.5}, []float64{0.5, 2, 2.5}, []float64{1.604167, 2.166667, 1.9375}},
		{[]float64{0, 1, 2, 4}, []float64{0, 1, 1.5, 1.75}, []float64{0.5, 1.5, 3, 3.5}, []float64{0.574219, 1.300781, 1.6875, 1.722656}},
	} {
		m := slopes(c.x, c.y)
		// As newCurve draws it, but with the places given.
		line := curve{t: c.x}
		for i := range c.x {
			line.p = append(line.p, point{y: c.y[i]})
			line.in, line.out = append(line.in, point{y: m[i]}), append(line.out, point{y: m[i]})
		}
		for i, at := range c.at {
			near(t, "value", line.at(at).y, c.want[i], 1e-6)
		}
	}
}

// TestHelix holds true lengths to a helix's own: sqrt((2 pi r n)^2 + h^2).
func TestHelix(t *testing.T) {
	for _, h := range []struct{ r, rise, turns float64 }{{24, 60, 0.25}, {500, 1200, 0.1}, {10, 30, 1}} {
		const n = 24
		var p []point
		for i := range n + 1 {
			a := 2 * math.Pi * h.turns * float64(i) / n
			p = append(p, point{h.rise * float64(i) / n, h.r * math.Cos(a), h.r * math.Sin(a)})
		}
		want := math.Hypot(2*math.Pi*h.r*h.turns, h.rise)
		c := newCurve(p, nil, 0)
		near(t, "length", c.length(), want, 1e-5*want)
		at := c.place(want / 3)
		near(t, "third", c.lengthTo(at), want/3, 1e-6)
		near(t, "third's place", c.at(at).x, h.rise/3, 1e-3)
	}
}

// TestCorner keeps straight sides straight on both sides of a corner, and
// TestCalm keeps a spline from passing beyond its neighbours where they show no
// greatest or least.
func TestCorner(t *testing.T) {
	p := []point{{0, 0, 0}, {0, 10, 3}, {0, 20, 6}, {0, 22, 16}, {0, 24, 26}}
	c := newCurve(p, []bool{false, false, true, false, false}, 0.125)
	near(t, "length", c.length(), 2*math.Hypot(10, 3)+2*math.Hypot(2, 10), 1e-9)
}

func TestCalm(t *testing.T) {
	// A flat floor, a quick bilge and a wall side.
	p := []point{{0, 0, 0}, {0, 10, 0}, {0, 20, 0}, {0, 30, 0}, {0, 36, 5}, {0, 37, 15}, {0, 37, 25}, {0, 37, 35}}
	c := newCurve(p, nil, 0.01)
	for i := range 701 {
		q := c.at(c.t[7] * float64(i) / 700)
		if q.z < -0.01 || q.y > 37.01 {
			t.Fatalf("the curve passes beyond its neighbours at %v", q)
		}
	}
	near(t, "floor", c.at(15).z, 0, 1e-12)
	near(t, "side", c.at(c.t[6]+5).y, 37, 1e-12)
}

// TestSpaceCurve holds the length of a line that crosses the Wigley hull's
// waterlines, z = 1 + cos(pi x/10)/2 below its waterline from x = 0 to 10, to
// 10.304933910 by quadrature; the straight pieces of eleven points are short of it
// by 2.6e-3.
func TestSpaceCurve(t *testing.T) {
	var p []point
	for i := range 11 {
		x := float64(i)
		z := 1 + math.Cos(math.Pi*x/10)/2
		p = append(p, point{x, wigleyHalf(x, z), 2 - z})
	}
	near(t, "length", newCurve(p, nil, math.Inf(1)).length(), 10.304933910, 1e-4*10)
}
