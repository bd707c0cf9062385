package read

import (
	"math"
	"testing"
)

// Where words over bevels say degrees and minutes, 2 30 is two and a half degrees; with
// a point it is asked about. Elsewhere such a text is no angle.
func TestDegreesAndMinutesApart(t *testing.T) {
	const figures = "\n1|upper|0 30|1 15|2 30|(2 45)\n2|upper|0 30|1 15|2 30|-2 45"
	for _, c := range []struct{ sheet, told string }{
		{"Bevels of planks, deg min|||||\nStrake|Edge|Station 0|Station 1|Station 2|Station 3" + figures, "convention-read"},
		{"Bevels|||||\nStrake|Edge|Station 0 deg min|Station 1 deg min|Station 2 deg min|Station 3 (deg. & min.)" + figures, "convention-read"},
		{"Bevels of planks, deg. min.|||||\nStrake|Edge|Station 0|Station 1|Station 2|Station 3\n1|upper|text:0.30|1.5|2.3|-2.45\n2|upper|0|1|2|-2", "point-minutes"},
	} {
		r := read(t, bookOf(sheetOf("Bevels", "\n"+c.sheet)), Options{})
		if len(r.job.Bevels) != 1 || len(r.job.Bevels[0].Seams) != 2 || !tells(r.found, c.told, 3) {
			t.Errorf("%s: %d tables; %v", c.sheet, len(r.job.Bevels), r.found)
			continue
		}
		for _, s := range r.job.Bevels[0].Seams {
			for k, want := range []float64{0.5, 1.25, 2.5, -2.75} {
				if v := s.Readings[k]; c.told == "convention-read" && (!v.OK() || math.Abs(float64(v.Value)-want) > 1e-9) {
					t.Errorf("%s: %q read as %v, want %v", c.sheet, v.Text, v.Value, want)
				}
			}
		}
	}
	r := read(t, bookOf(sheetOf("Bevels", "\nBevels of planks, degrees|||||\nStrake|Edge|Station 0|Station 1|Station 2|Station 3\n1|upper|0.5|1.25|2 30|2.75\n2|upper|0.5|1.25|2.5|2.75")), Options{})
	if !tells(r.found, "angle-unread", 3) {
		t.Errorf("2 30 among decimals: %v", r.found)
	}
}
