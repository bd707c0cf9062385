package read

import (
	"fmt"
	"strings"
	"testing"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
)

// datumBook is one small boat in decimal feet, its breadths by a factor, its heights and
// its waterlines' names from where words have them.
func datumBook(heights, breadths, remark string, height func(float64) float64, by float64, waterlines ...string) string {
	row := func(label string, as func(float64) float64, all ...float64) string {
		for _, v := range all {
			label += fmt.Sprintf("|%.3f", as(v))
		}
		return label + "\n"
	}
	out := func(v float64) float64 { return by * v }
	const stations = "Station|0|1|2|3|4\nPosition (ft)|0|3|6|9|12\n"
	return "Offsets in decimal feet, to the outside of planking\n" + remark + "\n\n" + heights + "\n" + stations +
		row("Sheer", height, 3, 2.8, 2.7, 2.8, 3.1) + row("Rabbet", height, 0.9, 0.4, 0.3, 0.3, 0.5) +
		"\n\n" + breadths + "\n" + stations + row("Sheer", out, 0.2, 1.7, 2.2, 2, 1.2) + row("Rabbet", out, 0.1, 0.1, 0.1, 0.1, 0.1) +
		row(waterlines[0], out, 0.1, 0.9, 1.4, 1.1, 0.5) + row(waterlines[1], out, 0.15, 1.3, 1.9, 1.6, 0.8)
}

// Full breadths are halved and heights below a line or above the load waterline are
// taken from base where its height is said; else they are asked about and left.
func TestMeasuredFrom(t *testing.T) {
	same := func(v float64) float64 { return v }
	below := func(v float64) float64 { return 4 - v }
	load := func(v float64) float64 { return v - 1.5 }
	const up, half = "HEIGHTS ABOVE BASE in feet", "HALF-BREADTHS in feet"
	drawn := func(r reading) (all string, asked []string) {
		for _, o := range r.job.Offsets {
			for _, l := range o.Lines {
				place := ""
				if l.Role == hull.Waterline {
					place = fmt.Sprint(l.At.OK(), l.At.Value)
				}
				all += fmt.Sprint("\n", l.Role, l.View, place)
				for _, v := range l.Values {
					if v.OK() {
						all += fmt.Sprintf(" %.3f", v.Value.Feet())
					}
				}
			}
		}
		for _, f := range r.found {
			if f.Severity >= finding.Warning {
				asked = append(asked, f.Code)
			}
		}
		return all, asked
	}
	base, _ := drawn(read(t, bookOf(sheetOf("Lines", datumBook(up, half, "", same, 1, "WL 1.167", "WL 2.125"))), Options{}))
	fromLoad, _ := drawn(read(t, bookOf(sheetOf("Lines", datumBook(up, half, "", load, 1, "WL -0.333", "WL +0.625"))), Options{}))
	if !strings.Contains(fromLoad, "true -3.996 in") || strings.Contains(base, "false") {
		t.Fatalf("waterlines are not read: %s\n%s", base, fromLoad)
	}
	for _, c := range []struct {
		heights, breadths, remark string
		height                    func(float64) float64
		by                        float64
		low, high                 string
		want                      string // "" for asked
	}{
		{up, "FULL BREADTHS in feet", "", same, 2, "WL 1.167", "WL 2.125", base},
		{up, "BREADTHS OVERALL, in feet", "", same, 2, "WL 1.167", "WL 2.125", base},
		{up + "; see the note below", half, "", same, 1, "WL 1.167", "WL 2.125", base},
		{up, "BREADTHS in feet, both sides alike", "", same, 1, "WL 1.167", "WL 2.125", base},
		{up, "FULL SIZE BREADTHS in feet", "", same, 1, "WL 1.167", "WL 2.125", base},
		{up, half, "Full breadth 4.4", same, 1, "WL 1.167", "WL 2.125", base},
		{"HEIGHTS BELOW A DATUM 4 FT ABOVE BASE, in feet", half, "", below, 1, "WL 1.167", "WL 2.125", base},
		{"HEIGHTS BELOW A LINE 4-0-0 ABOVE THE BASE, in feet", half, "", below, 1, "WL 1.167", "WL 2.125", base},
		{"DEPTHS BELOW SHEER DATUM in feet", half, "", below, 1, "WL 1.167", "WL 2.125", ""},
		{"HEIGHTS ABOVE FLOOR, hull upside down, in feet", half, "", below, 1, "WL 1.167", "WL 2.125", ""},
		{"HEIGHTS ABOVE LWL in feet", half, "", load, 1, "WL 1.167", "WL 2.125", ""},
		{"HEIGHTS ABOVE LWL in feet", half, "LWL is 1.5 above base", load, 1, "WL 1.167", "WL 2.125", base},
		{"HEIGHTS ABOVE LWL in feet", half, "", load, 1, "LWL-0.333", "DWL+0.625", fromLoad},
		{"HEIGHTS above LWL, - below, in feet", half, "", load, 1, "0.333 below LWL", "0.625 above LWL", fromLoad},
		{up, half, "DWL is 1.5 ft above base", same, 1, "DWL-0.333", "DWL+0.625", base},
		{up, half, "", same, 1, "DWL-0.333", "DWL+0.625", ""},
	} {
		got, asked := drawn(read(t, bookOf(sheetOf("Lines", datumBook(c.heights, c.breadths, c.remark, c.height, c.by, c.low, c.high))), Options{}))
		name := fmt.Sprint(c.heights, "; ", c.breadths, "; ", c.remark, "; ", c.low)
		switch {
		case c.want == "" && !strings.Contains(strings.Join(asked, " "), "convention-open"):
			t.Errorf("%s: not asked: %v%s", name, asked, got)
		case c.want != "" && (got != c.want || len(asked) > 0):
			t.Errorf("%s: %v%s\nwant%s", name, asked, got, c.want)
		}
	}
}

// What is said over a list of offsets holds for its figures too.
func TestListedFrom(t *testing.T) {
	for title, want := range map[string]string{
		"Half-breadths, ft-in-8ths":                   "28 in",
		"Full breadths, ft-in-8ths":                   "14 in",
		"Breadths of both sides together, ft-in-8ths": "14 in",
	} {
		r := read(t, bookOf(sheetOf("Lines", title+"\nStation|Waterline|Breadth\n0|1-0-0|0-4-0\n1|1-0-0|2-4-0\n2|1-0-0|3-4-0\n0|2-0-0|0-4-0\n1|2-0-0|2-6-0\n2|2-0-0|3-6-0")), Options{})
		if got := r.job.Offsets[0].Lines[0].Values[1].Value; got.String() != want {
			t.Errorf("%s: %v, want %s", title, got, want)
		}
	}
}
