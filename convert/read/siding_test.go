package read

import (
	"fmt"
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// A half siding in the title of a rabbet given in heights alone is its half-breadth
// throughout; one that cannot be read is asked for, and half-breadths given hold.
func TestHalfSidingInATitle(t *testing.T) {
	for _, c := range []struct {
		label, more string
		want        measure.Length // -1: none
		told        string
	}{
		{"Rabbet, half siding 1 in", "", measure.Inch, "convention-read"},
		{"Rabbet (1/2 siding: 0-1-4)", "", 12 * measure.Eighth, "convention-read"},
		{"Height of rabbet, half-siding 25 mm", "", 25 * measure.Millimetre, "convention-read"},
		{"Rabbet, half siding 1", "", -1, "length-unread"},
		{"Rabbet, half siding 1 in", "Rabbet half-breadth|0-2-0|0-2-0|0-2-0|0-2-0", 2 * measure.Inch, ""},
		{"Rabbet", "Half siding of rabbet|0-2-0|0-2-0|0-2-0|0-2-0", 2 * measure.Inch, ""},
	} {
		r := read(t, bookOf(sheetOf("Offsets", fmt.Sprintf(`
Table of offsets in feet-inches-eighths||||
Heights|Station 0|Station 1|Station 2|Station 3
%s|0-4-0|0-3-0|0-2-0|0-2-4
Sheer|3-0-0|2-9-0|2-7-0|2-8-0
%s`, c.label, c.more))), Options{})
		got := measure.Length(-1)
		for _, l := range r.job.Offsets[0].Lines {
			if l.Role == hull.Rabbet && l.View == hull.HalfBreadth {
				got = l.Values[2].Value
			}
		}
		told := ""
		for _, f := range r.found {
			if f.Cell.Row == 3 {
				told = f.Code
			}
		}
		if got != c.want || told != c.told {
			t.Errorf("%s; %s: half siding %v, told %q; want %v, %q", c.label, c.more, got, told, c.want, c.told)
		}
	}
}
