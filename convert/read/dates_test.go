package read

import (
	"testing"

	"strakebook/calc/measure"
)

// Figures evenly spaced are as smooth with feet and inches changed about: 1-2-0,
// 2-4-0, 3-6-0 are 2-1-0, 4-2-0, 6-3-0 as well. No order wins, and none is taken.
func TestDatesEvenlySpaced(t *testing.T) {
	r := read(t, bookOf(sheetOf("Offsets", `
Table of offsets, ft-in-8ths
Station|0|1|2|3|4
Position|0-0-0|date:2000-02-01|date:2000-04-02|date:2000-06-03|date:2000-08-04
HB deck|0-4-0|1-2-4|1-9-0|1-10-2|1-7-0`)), Options{})
	if len(r.job.Offsets) != 1 {
		t.Fatalf("%d tables", len(r.job.Offsets))
	}
	for _, s := range r.job.Offsets[0].Stations[1:] {
		if s.At.OK() || !has(r.found, LengthDateAsked.Code, s.At.Cell) {
			t.Errorf("station %s lies at %v, %v", s.Name, s.At.Value, r.codes(0))
		}
	}
}

// Each of the three orders is found where one alone makes the lines smooth.
func TestDatesOfEveryOrder(t *testing.T) {
	for o, rows := range map[order]string{
		monthDayYear: "HB deck|date:2000-01-02|date:2003-01-09|date:2002-02-03|date:2001-02-07|date:2004-02-05\nHB WL 1-0-0|0-10-0|date:2002-01-05|date:2000-01-11|date:2003-02-03|date:2000-02-01",
		dayMonthYear: "HB deck|date:2000-02-01|date:2003-09-01|date:2002-03-02|date:2001-07-02|date:2004-05-02\nHB WL 1-0-0|0-10-0|date:2002-05-01|date:2000-11-01|date:2003-03-02|date:2000-01-02",
		yearMonthDay: "HB deck|1-2-0|date:2001-09-03|date:2002-03-02|date:2002-07-01|date:2002-05-04\nHB WL 1-0-0|0-10-0|date:2001-05-02|1-11-0|date:2002-03-03|2-1-0",
	} {
		r := read(t, bookOf(sheetOf("Offsets", "Table of offsets, ft-in-8ths\nStation|0|1|2|3|4\n"+rows)), Options{})
		want := []measure.Length{14 * measure.Inch, 21*measure.Inch + 3*measure.Eighth, 27*measure.Inch + 2*measure.Eighth, 31*measure.Inch + measure.Eighth, 29*measure.Inch + 4*measure.Eighth}
		if len(r.job.Offsets) != 1 {
			t.Fatalf("order %d: %d tables", o, len(r.job.Offsets))
		}
		for i, v := range r.job.Offsets[0].Lines[0].Values {
			if v.Value != want[i] || !v.OK() {
				t.Errorf("order %d: %q is %v (%d), want %v", o, v.Text, v.Value, v.State, want[i])
			}
		}
	}
}
