package read

import (
	"testing"

	"strakebook/calc/finding"
)

// A row named from one strake to another stands for all of them where it gives no
// count, and is told of; not where one of those has a row of its own.
func TestRowsNamedFromOneToAnother(t *testing.T) {
	for _, c := range []struct {
		rows string
		want int // strakes in all
	}{
		{"1-34|strip|1/2|1 1/4|", 34},
		{"s1-s30|strip|1/2|1 1/4|", 30},
		{"1 to 12|strip|1/2|1 1/4|", 12},
		{"1-34|strip|1/2|1 1/4|2", 2},
		{"3|plank|1|5|\n4|plank|1|5|\n3-4|plank|1|5|", 3},
		{"5-1|plank|1|5|", 1},
	} {
		r := read(t, bookOf(sheetOf("Strakes", "Strake|Skin|Thickness (in)|Width (in)|Count\n"+c.rows)), Options{})
		n, told := 0, false
		for _, s := range r.job.Strakes {
			n += len(s.Names())
			told = told || s.Cell.Row > 0 && has(r.found, "convention-read", s.Cell)
		}
		if n != c.want || told != (c.want > 3) {
			t.Errorf("%q: %d strakes, told %v: %v", c.rows, n, told, r.codes(finding.Note))
		}
	}
}
