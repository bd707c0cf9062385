package measure

import "testing"

// 39.37 in to a metre: NIST SP 811, the inch of 25.4 mm exactly.
func TestStyle(t *testing.T) {
	for _, c := range []struct {
		style       Style
		l           Length
		long, small string
	}{
		{StyleFeet, 195*Inch + 3*Inch/8, `16' 3 3/8"`, "195 3/8 in"},
		{StyleInches, 195*Inch + 3*Inch/8, "195.375 in", "195.375 in"},
		{StyleMM, 195 * Inch, "4953 mm", "4953 mm"},
		{StyleMM, 3 * Inch / 2, "38.1 mm", "38.1 mm"},
		{StyleFeet, -3 * Inch / 2, `-0' 1 1/2"`, "-1 1/2 in"},
	} {
		if got := c.style.Long(c.l); got != c.long {
			t.Errorf("%v long in %v: %q, want %q", c.l, c.style, got, c.long)
		}
		if got := c.style.Small(c.l); got != c.small {
			t.Errorf("%v small in %v: %q, want %q", c.l, c.style, got, c.small)
		}
	}
}
