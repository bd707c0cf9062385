package read

import (
	"strings"
	"testing"

	"strakebook/calc/finding"
)

// A row named from one strake to another stands for all of them where it gives no
// count, and is told of; not where one of those has a row of its own. Where it may be
// meant otherwise it is asked about.
func TestRowsNamedFromOneToAnother(t *testing.T) {
	for _, c := range []struct {
		rows string
		want int // strakes in all
		asks bool
	}{
		{"1-34|strip|1/2|1 1/4|", 34, false},
		{"s1-s30|strip|1/2|1 1/4|", 30, false},
		{"1 to 12|strip|1/2|1 1/4|", 12, false},
		{"1-34|strip|1/2|1 1/4|2", 2, true},
		{"3|plank|1|5|\n4|plank|1|5|\n3-4|plank|1|5|", 3, true},
		{"5-1|plank|1|5|", 1, true},
		{"1-4|plank|1|5|4", 4, false},
		{"1-4|plank|1|5|8", 8, true},
		{"1-4|plank|1|5|4\n3|plank|1|5|", 5, true},
		{"1-4|plank|1|5|\n3-6|plank|1|5|", 8, true},
		{"A-D|plank|1|5|", 1, true},
		{"1..34|plank|1|5|", 1, true},
		{"1-34 (stbd)|plank|1|5|", 1, true},
		{"S-1|plank|1|5|", 1, false},
		{"stop|plank|1|5|", 1, false},
	} {
		r := read(t, bookOf(sheetOf("Strakes", "Strake|Skin|Thickness (in)|Width (in)|Count\n"+c.rows)), Options{})
		n, told, asks := 0, false, false
		for _, s := range r.job.Strakes {
			n += len(s.Names())
			told = told || s.Cell.Row > 0 && has(r.found, "convention-read", s.Cell)
			asks = asks || has(r.found, "strake-range", s.Cell)
		}
		if counted := strings.HasSuffix(c.rows, "|") && c.want > 5; n != c.want || asks != c.asks || told != counted {
			t.Errorf("%q: %d strakes, told %v, asked %v: %v", c.rows, n, told, asks, r.codes(finding.Note))
		}
	}
}
