package bevel

import (
	"testing"

	"strakebook/calc/hull"
)

// bothSides is one strake read on starboard and port.
func bothSides(starboard, port []float64) Readings {
	b, p := table(starboard...), table(port...)
	b.Seams[0].Side = hull.Starboard
	s := p.Seams[0]
	s.Side = hull.Port
	s.Cell.Row = 3
	for k := range s.Readings {
		s.Readings[k].Cell.Row = 3
	}
	b.Seams = append(b.Seams, s)
	return b
}

func TestPortAgainstStarboard(t *testing.T) {
	starboard := []float64{-2, -1.5, -0.75, 0, 0.75, 1.25, 1.75, 2.25, 2.5}
	test := func(want string, change func(y []float64)) {
		t.Helper()
		port := append([]float64{}, starboard...)
		change(port)
		if got := codes(t, bothSides(starboard, port)); got != want {
			t.Errorf("port %v: got %q, want %q", port, got, want)
		}
	}
	test("", func(y []float64) {})
	test("", func(y []float64) { y[3], y[6] = 0.25, 1.5 })
	test("bevel-jump F3", func(y []float64) { y[4] = 3.75 }) // said once, at the reading that jumps
	test("bevel-sides-sign ", func(y []float64) {
		for k := range y {
			y[k] = -y[k]
		}
	})
	test("bevel-sides ", func(y []float64) {
		for k := range y {
			y[k] += 1.5
		}
	})
	test("bevel-sides I3, bevel-sides J3", func(y []float64) { y[7], y[8] = 3.5, 4.5 })
}
