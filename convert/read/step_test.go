package read

import (
	"fmt"
	"testing"

	"strakebook/calc/measure"
)

// The step of a table is what its figures are multiples of, however they are
// written: hulls are drawn within half of it.
func TestStepOfTable(t *testing.T) {
	for _, c := range []struct {
		unit, row string
		want      measure.Length
	}{
		{"cm", "text:15,9|text:34,8|text:52,0|text:64,4", measure.Millimetre},
		{"m", "text:0,159|text:0,348|text:0,52|text:0,644", measure.Millimetre},
		{"cm", "text:15.9|text:34.8|text:52|text:64.4", measure.Millimetre},
		{"mm", "159|348|520|644", measure.Millimetre},
		{"mm", "159.25|348.5|520|644.75", measure.Millimetre / 100},
		{"inches", "15 1/2|34|52|64", measure.Eighth},
	} {
		r := read(t, bookOf(sheetOf("Offsets", fmt.Sprintf(`
Table of offsets in %s||||
Half-breadths|Station 0|Station 1|Station 2|Station 3
WL 1|%s
WL 2|%s`, c.unit, c.row, c.row))), Options{})
		if len(r.job.Offsets) != 1 || r.job.Offsets[0].Resolution != c.want {
			t.Errorf("%s %s: %d tables, step %v, want %v", c.unit, c.row, len(r.job.Offsets), r.job.Offsets[0].Resolution.Millimetres(), c.want.Millimetres())
		}
	}
}
