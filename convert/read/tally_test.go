package read

import (
	"fmt"
	"strings"
	"testing"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
)

// A tally of lumber in the cell of a length is as many boards as it says: 3/16' is three
// of sixteen feet and no part of a foot. A count beside it must agree.
func TestTallies(t *testing.T) {
	for _, c := range []struct{ rows, want, told string }{
		{"Fir|1 1/4|6|3/16', 2/14'|", "row 1 16': 3 of 192; row 1 14': 2 of 168; row 2: free of 120", "convention-read"},
		{"Fir|1 1/4|6|3/16 ft; 2/14 ft|5", "row 1 16 ft: 3 of 192; row 1 14 ft: 2 of 168; row 2: free of 120", "convention-read"},
		{"Fir|1 1/4|6|3/16'|", "row 1 16': 3 of 192; : free of 120", "convention-read"},
		{"Fir|1 1/4|6|3/16', 2/14'|7", ": 7 unread; : free of 120", "length-unread"},
		{"Fir|1 1/4|6|3/16', some|", ": free unread; : free of 120", "length-unread"},
	} {
		r := read(t, bookOf(sheetOf("Rack", "\nSpecies|Thickness (in)|Width (in)|Length|Count\n"+c.rows+"\nFir|1 1/4|6|10'|")), Options{})
		var got []string
		for _, b := range r.job.Rack {
			n, l := "free", "unread"
			if !b.Free() {
				n = fmt.Sprint(b.Count.Value)
			}
			if b.Length.OK() {
				l = fmt.Sprint("of ", b.Length.Value.Inches())
			}
			got = append(got, fmt.Sprintf("%s: %s %s", b.Mark, n, l))
		}
		if all := strings.Join(got, "; "); all != c.want || !tells(r.found, c.told, 2) {
			t.Errorf("%s: %s, want %s; %v", c.rows, all, c.want, r.found)
		}
	}
	r := read(t, bookOf(sheetOf("Strakes", "\nStrake|Thickness (in)|Width (in)|Length\n1|1|5|3/16'\n2|1|5|16'")), Options{})
	if r.job.Strakes[0].Length.OK() || !tells(r.found, "length-unread", 2) {
		t.Errorf("a strake of 3/16' is %v long: %v", r.job.Strakes[0].Length, r.found)
	}
}

// tells says that a finding of a code stands in a row.
func tells(found finding.List, code string, row int) bool {
	for _, f := range found {
		if f.Code == code && f.Cell.Row == row {
			return true
		}
	}
	return false
}

// A length such as 12-16 of a board may be all lengths between the two: it is asked
// about, unless words or the other lengths of its column show feet and inches. Thickness
// in quarters is of an inch.
func TestRanges(t *testing.T) {
	for _, c := range []struct {
		thick, length, lengths string
		inches                 float64
		want                   string
	}{
		{"Thickness (in)", "Length (ft)", "12-16,16", 0, "length-two-ways@D2"},
		{"Thickness (in)", "Length (ft)", "8-10,10-14", 0, "length-two-ways@D2 length-two-ways@D3"},
		{"Thickness (in)", "Length", "12' - 16',16'", 0, "length-two-ways@D2"},
		{"Thickness (in)", "Length (ft)", "text:8-10,12-6", 106, ""},
		{"Thickness (in)", "Length (ft-in)", "8-10,10-11", 106, ""},
		{"Thickness (quarters)", "Length (ft)", "10,12", 120, ""},
		{"Thickness, quarters", "Length (ft)", "10,12", 120, ""},
		{"Thickness (1/4 in)", "Length (ft)", "10,12", 120, ""},
	} {
		first, second, _ := strings.Cut(c.lengths, ",")
		one := "1.25"
		if c.thick != "Thickness (in)" {
			one = "5"
		}
		r := read(t, bookOf(sheetOf("Lumber", "Board|"+c.thick+"|Width (in)|"+c.length+"|Price\nA|"+one+"|6|"+first+"|4\nB|5/4|6|"+second+"|4")), Options{})
		if got := strings.Join(r.codes(finding.Error), " "); got != c.want || len(r.job.Rack) != 2 {
			t.Errorf("%s, %s: %d boards, %s, want %s", c.thick, c.lengths, len(r.job.Rack), got, c.want)
			continue
		}
		for i, b := range r.job.Rack {
			if b.Thickness.Value != measure.Inches(1.25) || i == 0 && c.want == "" && b.Length.Value != measure.Inches(c.inches) {
				t.Errorf("%s, %s: board %s is %v thick, %v long", c.thick, c.lengths, b.Mark, b.Thickness.Value, b.Length.Value)
			}
		}
	}
}
