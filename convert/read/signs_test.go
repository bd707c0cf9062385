package read

import (
	"slices"
	"testing"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
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

// Feet, inches and sixteenths in a column each are one length, and inches and eighths
// without feet; more sixteenths than an inch has are not read.
func TestPartsInColumns(t *testing.T) {
	for rows, want := range map[string][]measure.Length{
		"Half-breadths\n|1|||2|||3|||4||\nStation|ft|in|16ths|ft|in|16ths|ft|in|16ths|ft|in|16ths\nDeck|1|2|3|1|6|0|1|7|12|1|5|18\nWL 6 in.|1|1|3|1|5|0|1|5|2|1|4|1": {
			14*measure.Inch + 3*measure.Sixteenth, 18 * measure.Inch, 19*measure.Inch + 12*measure.Sixteenth, 0},
		"Half-breadths\n|1||2||3||4|\nStation|in|8ths|in|8ths|in|8ths|in|8ths\nDeck|14|3|18|0|19|7|17|9\nWL 6 in.|13|3|17|0|17|2|16|1": {
			14*measure.Inch + 3*measure.Eighth, 18 * measure.Inch, 19*measure.Inch + 7*measure.Eighth, 0},
	} {
		r := read(t, bookOf(sheetOf("Lines", rows)), Options{})
		if len(r.job.Offsets) != 1 || len(r.job.Offsets[0].Lines) != 2 || len(r.job.Offsets[0].Stations) != 4 {
			t.Errorf("%v, %v", r.job.Offsets, r.codes(finding.Note))
			continue
		}
		for i, v := range r.job.Offsets[0].Lines[0].Values {
			if v.Value != want[i] || v.OK() != (want[i] > 0) {
				t.Errorf("%q is read as %v, want %v", v.Text, v.Value, want[i])
			}
		}
	}
}

// A letter beside the name of a line says its view.
func TestViewsByALetter(t *testing.T) {
	r := read(t, bookOf(sheetOf("Lines", "Offsets, ft-in-8ths, to outside of planking\nStation|Deck H|Deck Y|Sheer Z|WL 1-0-0\n0|4-0-0|0-1-0|4-0-1|0-0-4\n1|3-10-0|1-2-0|3-10-1|0-7-4\n2|3-9-0|1-8-0|3-9-1|1-0-4\n3|3-8-4|1-9-0|3-8-5|1-1-4")), Options{})
	if codes := r.codes(finding.Warning); len(codes) > 0 || len(r.job.Offsets) != 1 {
		t.Fatal(codes, r.job.Offsets)
	}
	for i, want := range []hull.View{hull.Height, hull.HalfBreadth, hull.Height, hull.HalfBreadth} {
		if l := r.job.Offsets[0].Lines[i]; l.View != want {
			t.Errorf("%s is read as %v", l.Name, l.View)
		}
	}
}

// Half-breadth and height stand in pairs under the name of their line, written once over
// the first of the two.
func TestViewsInPairs(t *testing.T) {
	r := read(t, bookOf(sheetOf("Lines", "Offsets, ft in 8ths, to outside of planking\n|WL 1||WL 2||Sheer|\nSta|HB|HT|HB|HT|HB|HT\n0|0 1 4|1 0 0|0 3 2|2 0 0|0 6 3|4 2 0\n1|0 11 4+|1 0 0|1 2 2|2 0 0|1 6 3|3 11 2\n2|1 3 4|1 0 0|1 6 2|2 0 0|1 9 5-|3 9 0\n3|1 4 0|1 0 0|1 7 2|2 0 0|1 10 3|3 8 4")), Options{})
	if codes := r.codes(finding.Warning); len(codes) > 0 || len(r.job.Offsets) != 1 {
		t.Fatal(codes, r.job.Offsets)
	}
	var names []string
	for _, l := range r.job.Offsets[0].Lines {
		names = append(names, l.Name)
	}
	if want := []string{"WL 1 HB", "WL 1 HT", "WL 2 HB", "WL 2 HT", "Sheer HB", "Sheer HT"}; !slices.Equal(slices.Sorted(slices.Values(names)), slices.Sorted(slices.Values(want))) {
		t.Error(names)
	}
	for _, l := range r.job.Offsets[0].Lines {
		if l.Name == "Sheer HT" && (l.Role != hull.Deck || l.View != hull.Height || l.Values[1].Value != 47*measure.Inch+measure.Inch/4) {
			t.Errorf("%+v", l)
		}
	}
}
