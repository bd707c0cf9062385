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

// Widths by station in a list go by the words over it as its columns do.
func TestWidthsInSixteenths(t *testing.T) {
	r := read(t, bookOf(sheetOf("List", "Strakes, widths in ft-in-16ths\nStrake|Thickness (in)|0|1|2|3|Length (ft)\n1|1|0-4-12|0-5-15|0-5-8|0-4-4|30\n2|1|0-4-7|0-5-6|0-5-4|0-4-4|30")), Options{})
	if len(r.job.Strakes) != 2 || len(r.job.Strakes[0].Widths) != 4 {
		t.Fatalf("%v: %v", r.job.Strakes, r.codes(finding.Note))
	}
	for i, want := range []measure.Length{5*measure.Inch + 15*measure.Sixteenth, 5*measure.Inch + 6*measure.Sixteenth} {
		if got := r.job.Strakes[i].Widths[1].Value; got != want {
			t.Errorf("strake %d is %v wide at station 1 and not %v", i+1, got, want)
		}
	}
}

// Lists beside each other with one blank column between are read each by itself.
func TestListsBeside(t *testing.T) {
	r := read(t, bookOf(sheetOf("Yard", "Strake|Thickness (in)|Width (in)|Length (ft)||Board|Species|Thickness (in)|Width (in)|Length (ft)|Count\n1|1|5|40||A|fir|1 1/4|6|16|\n2|1|5|40||B|fir|1 1/4|6|20|4\n3|1|5|39|||||||")), Options{})
	if len(r.job.Strakes) != 3 || len(r.job.Rack) != 2 || len(r.codes(finding.Note)) > 0 {
		t.Errorf("%d strakes, %d boards: %v", len(r.job.Strakes), len(r.job.Rack), r.codes(finding.Note))
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
