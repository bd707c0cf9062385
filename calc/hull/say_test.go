package hull

import (
	"testing"

	"strakebook/calc/measure"
)

// Findings are in the notation of the offsets, or in the units that are asked for
// where these are of another kind.
func TestFindingsAreInOneNotation(t *testing.T) {
	eighths, mm := measure.Form{Notation: measure.FeetInchesEighths}, measure.Form{Unit: measure.InMillimetres, Notation: measure.Decimal}
	inches := measure.Form{Unit: measure.InInches, Notation: measure.Decimal}
	for _, c := range []struct {
		form  measure.Form
		units measure.Style
		want  string
	}{
		{eighths, measure.StyleFeet, "6-11-4"}, {eighths, measure.StyleInches, "83.5 in"}, {eighths, measure.StyleMM, "2120.9 mm"},
		{inches, measure.StyleFeet, "83.5 in"}, {inches, measure.StyleInches, "83.5 in"}, {mm, measure.StyleMM, "2120.9 mm"}, {mm, measure.StyleFeet, `6' 11 1/2"`},
	} {
		r := Rules{Units: c.units}
		if got := r.say(c.form, 83*measure.Inch+measure.Inch/2); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
}
