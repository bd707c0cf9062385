package read

import (
	"fmt"
	"strings"
	"testing"

	"strakebook/calc/measure"
)

// The step of a table is what its figures are multiples of, however they are
// written: hulls are drawn within half of it.
func TestStepOfTable(t *testing.T) {
	for _, c := range []struct {
		unit, row  string
		want, step measure.Length
	}{
		{"mm", "155|345|520|645|650|665|670|680|685|690", measure.Millimetre, 5 * measure.Millimetre},
		{"inches", "15 1/4|34 1/2|52|64|64 1/4|65|65 1/2|66|66 1/4|67", measure.Eighth, 2 * measure.Eighth},
		{"inches", "15.25|34.5|52|64|64.25|65|65.5|66|66.25|67", measure.Eighth, 2 * measure.Eighth},
		{"cm", "15.50|34.50|52.00|64.50|65.00|66.50|68.00|68.50|69.00|70.50", measure.Millimetre, 5 * measure.Millimetre},
		{"inches", "15 1/4|34 1/2|52|64", measure.Eighth, measure.Eighth}, // too few to say

		{"cm", "text:15,9|text:34,8|text:52,0|text:64,4", measure.Millimetre, measure.Millimetre},
		{"m", "text:0,159|text:0,348|text:0,52|text:0,644", measure.Millimetre, measure.Millimetre},
		{"cm", "text:15.9|text:34.8|text:52|text:64.4", measure.Millimetre, measure.Millimetre},
		{"mm", "159|348|520|644", measure.Millimetre, measure.Millimetre},
		{"mm", "159.25|348.5|520|644.75", measure.Millimetre / 100, measure.Millimetre / 100},
	} {
		head := "Half-breadths"
		for k := range strings.Count(c.row, "|") + 1 {
			head += fmt.Sprintf("|Station %d", k)
		}
		r := read(t, bookOf(sheetOf("Offsets", fmt.Sprintf("\nTable of offsets in %s||||\n%s\nWL 1|%s\nWL 2|%s", c.unit, head, c.row, c.row))), Options{})
		if o := r.job.Offsets[0]; len(r.job.Offsets) != 1 || o.Resolution != c.want || o.Step != c.step {
			t.Errorf("%s %s: %d tables, resolution %v and step %v, want %v and %v", c.unit, c.row, len(r.job.Offsets), o.Resolution.Millimetres(), o.Step.Millimetres(), c.want.Millimetres(), c.step.Millimetres())
		}
	}
}
