package read

import (
	"slices"
	"testing"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
)

// A sixteenth more or less in a column of its own belongs to the figure before it;
// what may be a dash is asked.
func TestSignsApart(t *testing.T) {
	for _, rows := range []string{
		"Half-breadths, ft-in-8ths\nStation|1||2||3||4|\nDeck|1-2-3|+|1-6-0||1-7-2|-|1-5-1|",
		"Half-breadths, ft-in-8ths\nStation|1|+/-|2|+/-|3|+/-|4|+/-\nDeck|1-2-3|+|1-6-0|+|1-7-2|-|1-5-1|+",
		"Half-breadths\n|1||||2||||3||||4|||\nStation|ft|in|8ths||ft|in|8ths||ft|in|8ths||ft|in|8ths|\nDeck|1|2|3|+|1|6|0||1|7|2|-|1|5|1|\nWL 6 in.|1|1|3||1|5|0||1|5|2||1|4|1|",
	} {
		r := read(t, bookOf(sheetOf("Lines", rows)), Options{})
		if len(r.job.Offsets) != 1 || len(r.job.Offsets[0].Lines) == 0 {
			t.Fatalf("%s: %v", rows, r.found)
		}
		v := r.job.Offsets[0].Lines[0].Values
		if got, want := v[0].Value, 14*measure.Inch+7*measure.Sixteenth; got != want || v[2].Value != 19*measure.Inch+3*measure.Sixteenth {
			t.Errorf("%s: %v and not %v", rows, got, want)
		}
	}
	r := read(t, bookOf(sheetOf("Lines", "Half-breadths, ft-in-8ths\nStation|1||2||3||4|\nDeck|1-2-3|-|1-6-0||1-7-2|-|1-5-1|")), Options{})
	if !slices.Contains(r.codes(finding.Warning), "station-unnamed@C2") {
		t.Errorf("hyphens behind figures: %v", r.codes(finding.Note))
	}
}

// Columns of feet, inches and sixteenths are not joined as if the last were not
// there.
func TestSixteenthsInColumns(t *testing.T) {
	r := read(t, bookOf(sheetOf("Lines", "Half-breadths\n|1|||2|||3|||4||\nStation|ft|in|16ths|ft|in|16ths|ft|in|16ths|ft|in|16ths\nDeck|1|2|3|1|6|0|1|7|2|1|5|1\nWL 6 in.|1|1|3|1|5|0|1|5|2|1|4|1")), Options{})
	if len(r.job.Offsets) > 0 || len(r.codes(finding.Note)) == 0 {
		t.Errorf("%v, %v", r.job.Offsets, r.codes(finding.Note))
	}
}
