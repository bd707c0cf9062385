package read

import (
	"testing"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// A table under the title of one line is of that line, where its own headings name the
// views alone: in one view down the stations, or in both as a list.
func TestTitleNamesTheLine(t *testing.T) {
	r := read(t, bookOf(sheetOf("Sheer and profile", `
Sheer line (ft-in-8ths)||
Station|Height above base|Half-breadth
0|4-6-0|0-1-0
1|4-1-5|1-4-0
2|3-10-2|2-2-2
3|3-7-5|2-8-4
||
Profile of the rabbet, height above base||
Station|Height above base|
0|4-6-0|
1|1-4-7|
2|1-0-5|
3|1-0-1|`)), Options{})
	seen := map[hull.Role][]hull.View{}
	for _, o := range r.job.Offsets {
		for _, l := range o.Lines {
			if len(l.Values) != 4 {
				t.Errorf("%q has %d figures", l.Name, len(l.Values))
			}
			seen[l.Role] = append(seen[l.Role], l.View)
		}
	}
	if len(seen[hull.Deck]) != 2 || len(seen[hull.Rabbet]) != 1 || seen[hull.Rabbet][0] != hull.Height || len(seen) != 2 {
		t.Errorf("read as %v", seen)
	}
}

// The unit in the one title of the offsets on a sheet is that of every part of them
// which says none; parts with a title of their own offsets, or under titles that differ,
// are asked about.
func TestTitleServesEveryPart(t *testing.T) {
	for _, c := range []struct {
		title, second, asked string
	}{
		{"Offsets in decimal feet, to the outside of planking", "HALF-BREADTHS", ""},
		{"Offsets to the outside of planking", "HALF-BREADTHS", "unit-open"},
		{"Offsets in decimal feet", "OFFSETS of the half-breadths", "unit-open"},
		{"Heights in decimal feet", "HALF-BREADTHS", "unit-open"},
	} {
		r := read(t, bookOf(sheetOf("Lines", c.title+`

HEIGHTS ABOVE BASE
Station|0|1|2|3
Sheer|3.1|2.8|2.7|2.9
Rabbet|0.9|0.4|0.3|0.4

`+c.second+`
Station|0|1|2|3
Sheer|0.2|1.7|2.2|1.9
Rabbet|0.1|0.1|0.1|0.1`)), Options{})
		got := ""
		for _, f := range r.found {
			if f.Severity >= finding.Error {
				got = f.Code
			}
		}
		if got != c.asked {
			t.Errorf("%s; %s: %q, want %q", c.title, c.second, got, c.asked)
		}
		if last := r.job.Offsets[len(r.job.Offsets)-1]; got == "" && last.Lines[len(last.Lines)-2].Values[1].Value != measure.Feet(1.7) {
			t.Errorf("%s: %v", c.title, last.Lines)
		}
	}
}
