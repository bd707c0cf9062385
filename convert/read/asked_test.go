package read

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"strakebook/calc/finding"
	"strakebook/calc/source"
)

// A list of strakes whose words make its figures others than those asked for is asked
// about, and they are left; counts of both sides together are halved.
func TestStrakesSayOtherwise(t *testing.T) {
	const heads = "Strake|Thickness (in)|Width (in)|Length (ft)|No. off|Scarf"
	const row = "\n1|3/4|5|20|2|8\n2|3/4|5|20|2|8"
	for _, c := range []struct{ book, want string }{
		{heads + row, "t0.75 w5 n2 s8 []"},
		{strings.Replace(heads, "Thickness", "Rough thickness", 1) + row, "t? w5 n2 s8 [convention-open@B1]"},
		{strings.Replace(heads, "Thickness", "Nominal thickness", 1) + row, "t? w5 n2 s8 [convention-open@B1]"},
		{strings.Replace(heads, "Width", "Mean width", 1) + row, "t0.75 w? n2 s8 [convention-open@C1]"},
		{strings.Replace(heads, "Thickness", "Finished thickness", 1) + row, "t0.75 w5 n2 s8 []"},
		{strings.Replace(heads, "Width", "Max width", 1) + row, "t0.75 w5 n2 s8 []"},
		{"Planks; widths on the outside face\n" + heads + row, "t0.75 w5 outside n2 s8 []"},
		{strings.Replace(heads, "Width (in)", "Width on outside face (in)", 1) + row, "t0.75 w5 outside n2 s8 []"},
		{strings.Replace(heads, "Width (in)", "Outside width (in)", 1) + row, "t0.75 w5 outside n2 s8 []"},
		{strings.Replace(heads, "Width (in)", "Inside width (in)", 1) + "|Outside width (in)" + strings.ReplaceAll(row, "|8", "|8|6"), "t0.75 w5 n2 s8 []"},
		{"Planks; widths on the inside face, not the outside\n" + heads + row, "t0.75 w5 n2 s8 []"},
		{"Planking; number off is for both sides together\n" + heads + row, "t0.75 w5 n1 s8 []"},
		{"Planks, counts of the whole boat\n" + heads + row, "t0.75 w5 n1 s8 []"},
		{"Planks of both sides, numbers from the sheer down\n" + heads + row, "t0.75 w5 n2 s8 []"},
		{"Planks, widths in inches, offsets to the outside of planking\n" + heads + row, "t0.75 w5 n2 s8 []"},
		{"Planking, both sides alike; number off a side\n" + heads + row, "t0.75 w5 n2 s8 []"},
		{strings.Replace(heads, "No. off", "Count (both sides)", 1) + row, "t0.75 w5 n1 s8 []"},
		{"Counts are for both sides together\n" + heads + strings.Replace(row, "|2|", "|3|", 1), "t0.75 w5 n? s8 [number-unread@E3]"},
		{heads + "\n1|3/4|-5|20|2|8\n2|3/4|5|20|2|8", "t0.75 w? n2 s8 [length-impossible@C2]"},
		{heads + "\n1|0|5|-20|2|8\n2|3/4|5|20|2|8", "t? w5 n2 s8 [length-impossible@B2 length-impossible@D2]"},
		{strings.Replace(heads, "Scarf", "Scarf (in)", 1) + strings.ReplaceAll(row, "|8", "|9"), "t0.75 w5 n2 s12 []"},
		{strings.Replace(heads, "Scarf", "Scarf, in", 1) + strings.ReplaceAll(row, "|8", "|9"), "t0.75 w5 n2 s12 []"},
		{strings.Replace(heads, "Scarf", "Scarf length (in)", 1) + strings.ReplaceAll(row, "|8", "|9"), "t0.75 w5 n2 s12 []"},
		{strings.Replace(heads, "Scarf", "Scarf run (mm)", 1) + strings.ReplaceAll(row, "|8", "|228.6"), "t0.75 w5 n2 s12 []"},
		{strings.Replace(heads, "Scarf", "Scarf length", 1) + row, "t0.75 w5 n2 s? [unit-open@F1]"},
		{heads + strings.ReplaceAll(row, "|8", "|1/8"), "t0.75 w5 n2 s8 []"},
		{heads + strings.Replace(row, "|8", "|none", 1), "t0.75 w5 n2 s? [number-unread@F2]"},
		{heads + strings.ReplaceAll(row, "|8", "|1 in 8"), "t0.75 w5 n2 s8 []"},
		{heads + strings.ReplaceAll(row, "|8", "|0.125"), "t0.75 w5 n2 s8 []"},
	} {
		r := read(t, bookOf(sheetOf("Planks", c.book)), Options{})
		if len(r.job.Strakes) != 2 {
			t.Errorf("%s: %d strakes", c.book, len(r.job.Strakes))
			continue
		}
		s := r.job.Strakes[0]
		said := func(v float64, state source.State) string {
			if state != source.Given {
				return "?"
			}
			return fmt.Sprint(math.Round(v*1e4) / 1e4)
		}
		outer := map[bool]string{true: " outside"}[s.Outside]
		got := fmt.Sprintf("t%s w%s%s n%s s%s %v", said(s.Thickness.Value.Inches(), s.Thickness.State), said(s.Width.Value.Inches(), s.Width.State), outer,
			said(float64(s.Count.Value), s.Count.State), said(s.Slope.Value, s.Slope.State), r.codes(finding.Error))
		if got != c.want {
			t.Errorf("%s\nis read as %s, want %s", c.book, got, c.want)
		}
	}
	r := read(t, bookOf(sheetOf("Offsets", widthHeadsOffsets), sheetOf("Planks", "Planks; widths on the outside face\n"+heads+row)), Options{})
	if got := fmt.Sprint(r.job.Strakes[0].Width.OK(), r.codes(finding.Error)); got != "false [convention-open@A3]" {
		t.Errorf("widths on the outside face of a hull that is lined off: %s", got)
	}
	for _, none := range []string{"0", "-", "none", "nil", "text:0"} {
		r := read(t, bookOf(sheetOf("Planks", heads+strings.Replace(row, "|2|", "|"+none+"|", 1))), Options{})
		if got := fmt.Sprint(len(r.job.Strakes), r.codes(finding.Warning)); got != "1 [strake-none@E2]" {
			t.Errorf("a count of %q: %s", none, got)
		}
	}
}
