package read

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"strakebook/calc/bevel"
	"strakebook/calc/finding"
)

// The edge that a cell under Edge names, and the one named in a label; what names
// neither, or another plank's, is asked and its bevels are left.
func TestEdgesNamed(t *testing.T) {
	for edge, want := range map[string]string{
		"upper": "upper", "top": "upper", "U": "upper", "u/e": "upper", "sheer edge": "upper", "above": "upper", "over": "upper", "Upper edge": "upper",
		"lower": "lower", "bottom": "lower", "lwr": "lower", "keel edge": "lower", "keel": "lower", "below": "lower", "under": "lower",
		"": "", "both": "", "upper/lower": "asked", "inner": "asked", "butt": "asked", "lower edge of plank above": "asked",
	} {
		for _, book := range []string{
			"Strake|Edge|Sta. 1|Sta. 2|Sta. 3\n3|" + edge + "|2|2|2\n4|upper|2|2|2",
			"Strake|Edge|Station|Bevel\n3|" + edge + "|1|2\n3|" + edge + "|2|2\n4|upper|1|2\n4|upper|2|2",
		} {
			r := read(t, bookOf(sheetOf("Bevels", "Bevels, degrees\n"+book)), Options{})
			got := "no table"
			if len(r.job.Bevels) == 1 {
				s := r.job.Bevels[0].Seams[0]
				got = map[bevel.Edge]string{bevel.Upper: "upper", bevel.Lower: "lower"}[s.Edge]
				if s.Strake != "3" {
					got = s.Strake
				}
				if slices.Contains(r.codes(finding.Error), "convention-open@A3") || slices.Contains(r.codes(finding.Error), "convention-open@B3") {
					got = "asked"
				}
			}
			if got != want {
				t.Errorf("%q is read as %q, want %q: %v\n%s", edge, got, want, r.codes(finding.Note), book)
			}
		}
	}
	for label, want := range map[string]bevel.Edge{"3 keel edge": bevel.Lower, "3, sheer edge": bevel.Upper, "3 upper": bevel.Upper} {
		r := read(t, bookOf(sheetOf("Bevels", "Bevels of planks, degrees\nStrake|Sta. 1|Sta. 2|Sta. 3\n"+label+"|2|2|2\n4 upper|2|2|2")), Options{})
		if s := r.job.Bevels[0].Seams[0]; s.Edge != want || s.Strake != "3" {
			t.Errorf("%q is read as %s, %v", label, s.Strake, s.Edge)
		}
	}
}

// What the words over bevels say that they are: a rise is read by its tangent, what no
// bevel follows from is asked, and degrees are degrees. Wanted values are arc tangents by
// hand: 1/8 is 7.1250 degrees, 1/12 4.7636, 2/100 1.1458, 1/4 14.0362.
func TestBevelsAsRises(t *testing.T) {
	const asked, degrees = -99, 2
	for words, want := range map[string]float64{
		"Bevels in sixteenths of an inch to the inch of thickness": 7.1250,
		"Plank bevels, 1/16 in per inch":                           7.1250,
		"Bevels, 16ths to the inch":                                7.1250,
		"Bevels in eighths to the inch":                            14.0362,
		"Bevels, rise in 12":                                       9.4623,
		"Bevels, inches to the foot":                               9.4623,
		"Bevels, inches in 12":                                     9.4623,
		"Bevels, mm in 100":                                        1.1458,
		"Bevels, per cent":                                         1.1458,
		"Bevels (%)":                                               1.1458,
		"Bevels in mm on the thickness":                            asked,
		"Bevel: difference between faces, 1/16 in":                 asked,
		"Bevels, sixteenths":                                       asked,
		"Bevels, slope":                                            asked,
		"Bevels in radians":                                        asked,
		"Bevels in degrees and minutes":                            degrees,
		"Bevels in degrees, per cent":                              asked,
		"Bevels, degrees":                                          degrees,
		"Bevels":                                                   degrees,
		"Bevels, degrees, with 1 in planks on the thickness side":  degrees,
		"Bevels, lifted tangent to the skin, both edges":           degrees,
		"Bevels of 1 in. planking, with 10 % spare":                degrees,
		"Bevels in degrees; drawing to scale 1 inch to the foot":   degrees,
		"Bevels at stations 3 ft apart":                            degrees,
	} {
		r := read(t, bookOf(sheetOf("Bevels", words+"\nStrake|Edge|Sta. 1|Sta. 2|Sta. 3\n3|upper|2|2|2\n4|upper|2|2|2°")), Options{})
		got := fmt.Sprint(r.codes(finding.Error))
		if want == asked && got == "[convention-open@B2]" {
			continue
		}
		if len(r.job.Bevels) != 1 || got != "[]" {
			t.Errorf("%s: %d tables, %s", words, len(r.job.Bevels), got)
			continue
		}
		seams := r.job.Bevels[0].Seams
		if v := seams[0].Readings[1].Value; math.Abs(float64(v)-want) > 5e-4 {
			t.Errorf("%s: 2 is read as %v degrees, want %v", words, float64(v), want)
		}
		if v := seams[1].Readings[2].Value; v != 2 {
			t.Errorf("%s: 2° is read as %v degrees", words, float64(v))
		}
		if told := fmt.Sprint(r.codes(finding.Note)) != "[]"; told != (want != degrees) {
			t.Errorf("%s: told %v", words, r.codes(finding.Note))
		}
	}
	r := read(t, bookOf(sheetOf("Bevels", "Bevels of planks\nStrake|Edge|Station|Bevel (1/16 in per inch)\n3|upper|1|2\n3|upper|2|2\n4|upper|1|2\n4|upper|2|1")), Options{})
	if v := r.job.Bevels[0].Seams[0].Readings[0].Value; math.Abs(float64(v)-7.125) > 5e-4 {
		t.Errorf("2 of a list in sixteenths to the inch is read as %v degrees: %v", v, r.codes(finding.Note))
	}
	for _, c := range []struct {
		head, cell string
		want       float64
	}{
		{"Bevels, 1/16 in per inch", `1/8"`, 7.1250},
		{"Bevels, 1/16 in per inch", `text:-1 1/2`, -5.3558}, // 1.5/16
		{"Bevels, 1/16 in per inch", `1/8`, asked},
		{"Bevels, inches to the inch", `1/8`, 7.1250},
		{"Bevels, inches to the inch", `3`, asked},
		{"Bevels, per cent", `1/8"`, asked},
		{"Bevels, degrees", `1/8`, asked},
		{"Bevels, degrees", `1/8°`, 0.125},
		{"Bevels, degrees", `1/4`, 0.25},
	} {
		r := read(t, bookOf(sheetOf("Bevels", c.head+"\nStrake|Edge|Sta. 1|Sta. 2|Sta. 3\n3|upper|0|"+c.cell+"|0\n4|upper|0|0|0")), Options{})
		v := r.job.Bevels[0].Seams[0].Readings[1]
		if asks := fmt.Sprint(r.codes(finding.Error)) == "[angle-unread@D3]"; asks != (c.want == asked) || v.OK() && math.Abs(float64(v.Value)-c.want) > 5e-4 {
			t.Errorf("%s, %q: %v, %v", c.head, c.cell, float64(v.Value), r.codes(finding.Error))
		}
	}
}
