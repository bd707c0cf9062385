package measure

import (
	"math"
	"testing"
)

// A length is rounded up to a step that is not shorter, and otherwise to the nearest,
// halves away from nothing. By hand.
func TestRoundings(t *testing.T) {
	for _, c := range []struct{ l, step, up, near Length }{
		{Inch + Nanometre, Inch, 2 * Inch, Inch},
		{2 * Inch, Inch, 2 * Inch, 2 * Inch},
		{Inch / 2, Inch, Inch, Inch},
		{-Inch / 2, Inch, 0, -Inch},
		{5 * SixtyFourth, 0, 5 * SixtyFourth, 5 * SixtyFourth},
	} {
		if up, near := c.l.RoundUp(c.step), c.l.Round(c.step); up != c.up || near != c.near {
			t.Errorf("%v to steps of %v: up %v, nearest %v; want %v and %v", c.l, c.step, up, near, c.up, c.near)
		}
	}
}

// A metre is 1/.3048 feet: 2 degrees a foot are 6.5617 a metre.
func TestPerMetre(t *testing.T) {
	if got := float64(Angle(2).PerMetre()); math.Abs(got-2/0.3048) > 1e-9 {
		t.Errorf("%v a metre", got)
	}
}
