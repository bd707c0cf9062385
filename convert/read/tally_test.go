package read

import (
	"fmt"
	"strings"
	"testing"

	"strakebook/calc/finding"
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
