package read

import (
	"testing"

	"strakebook/convert/sheet"
)

func cellsOf(texts ...string) []sheet.Cell {
	var all []sheet.Cell
	for _, t := range texts {
		all = append(all, cellOf(t))
	}
	return all
}

// Decimals of a foot are asked about where all of them can be inches, and only
// there.
func TestInchesAfterPoint(t *testing.T) {
	for _, c := range []struct {
		cells []string
		ask   bool
	}{
		{[]string{"40.11", "38.6", "36"}, true},
		{[]string{"4.06", "3.10", "5.11", "2.03", "1.09"}, true},
		{[]string{"text:14.10", "12.6", "9.3"}, true},
		{[]string{"40.5", "38.5", "36.25"}, false},
		{[]string{"40.5", "38.6", "36.1"}, false}, // tenths of a foot: nothing speaks for inches
		{[]string{"40.11", "38.6", "36.12"}, false},
		{[]string{"40.11", "38.6", "36.75"}, false},
		{[]string{"4.5", "4.06", "3.11"}, false},
		{[]string{"3.375", "4.11", "5.1"}, false},
		{[]string{"12", "14", "16"}, false},
	} {
		if _, ok := inchesAfterPoint(cellsOf(c.cells...)); ok != c.ask {
			t.Errorf("%v: asked %v, want %v", c.cells, ok, c.ask)
		}
	}
}

// Decimals of a degree are asked about where all of them can be minutes, and only
// there.
func TestMinutesAfterPoint(t *testing.T) {
	for _, c := range []struct {
		cells []string
		ask   bool
	}{
		{[]string{"2.30", "3.15", "4.45", "5.10"}, true},
		{[]string{"text:2.30", "text:3.30", "text:4.20", "1.15"}, true},
		{[]string{"2.5", "3.25", "4.5", "5.25", "6.5"}, false}, // quarters
		{[]string{"2.1", "3.4", "4.5", "5.2", "6.5"}, false},   // tenths
		{[]string{"2.30", "3.15", "4.75", "5.10"}, false},
		{[]string{"2.15", "3.45"}, false}, // too few to tell
		{[]string{"2.125", "3.15", "4.45", "5.10"}, false},
	} {
		if _, ok := minutesAfterPoint(cellsOf(c.cells...)); ok != c.ask {
			t.Errorf("%v: asked %v, want %v", c.cells, ok, c.ask)
		}
	}
}

// The guide says what stands after the point of the bevels.
func TestGuideOfMinutes(t *testing.T) {
	rows := "Bevels off square\nPlank|Edge|Sta 1|Sta 2|Sta 3|Sta 4\n1|upper|-2.30|3.15|4.45|0"
	for notation, want := range map[string]float64{"degrees and minutes": -2.5, "off square; degrees and minutes": -2.5, "off square; decimal": -2.3, "": -2.3} {
		r := read(t, bookOf(sheetOf("Gauge", rows)), Options{Guide: []sheet.GuideRow{{Table: "bevels", Sheet: "Gauge", Range: "A2:F3", Notation: notation}}})
		if len(r.job.Bevels) != 1 || float64(r.job.Bevels[0].Seams[0].Readings[0].Value) != want {
			t.Errorf("%q: %v, want %g; %v", notation, r.job.Bevels, want, r.codes(0))
		}
	}
}
