package measure

import "testing"

// What is said of a table is in its notation, or in the style that is asked for where
// that is of another kind.
func TestOneNotation(t *testing.T) {
	eighths, mm := Form{Notation: FeetInchesEighths}, Form{Unit: InMillimetres, Notation: Decimal}
	inches := Form{Unit: InInches, Notation: Decimal}
	for _, c := range []struct {
		form  Form
		style Style
		want  string
	}{
		{eighths, StyleFeet, "6-11-4"}, {eighths, StyleInches, "83.5 in"}, {eighths, StyleMM, "2120.9 mm"},
		{inches, StyleFeet, "83.5 in"}, {inches, StyleInches, "83.5 in"}, {mm, StyleMM, "2120.9 mm"}, {mm, StyleFeet, `6' 11 1/2"`},
	} {
		if got := c.style.As(c.form, 83*Inch+Inch/2); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
}
