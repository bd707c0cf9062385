package read

import (
	"testing"

	"strakebook/calc/bevel"
	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// What a guide says of the unit and the place of a list holds over what is found,
// column by column where it says so.
func TestGuideOfLists(t *testing.T) {
	rows := `
Plank|Thickness|Width|Length
1|18|110|5.2
2|18|115|5.1
|||
|||
|||
Mark|Thickness (in.)|Width (in.)|Length (ft)|Count
A|1|8|14|3`
	r := read(t, bookOf(sheetOf("Yard", rows)), Options{Guide: []sheet.GuideRow{
		{Table: "strakes", Sheet: "Yard", Range: "A1:D3", Unit: "thickness mm; width mm; length m", Notation: "decimal"},
		{Table: "rack", Sheet: "Yard", Range: "A7:E8", Unit: "cm"},
	}})
	if len(r.job.Strakes) != 2 || len(r.job.Rack) != 1 {
		t.Fatalf("%d strakes and %d boards: %v", len(r.job.Strakes), len(r.job.Rack), r.codes(0))
	}
	s, b := r.job.Strakes[0], r.job.Rack[0]
	for what, got := range map[string][2]measure.Length{
		"thickness of the strake": {s.Thickness.Value, 18 * measure.Millimetre},
		"width of the strake":     {s.Width.Value, 110 * measure.Millimetre},
		"length of the strake":    {s.Length.Value, 5200 * measure.Millimetre},
		"thickness of the board":  {b.Thickness.Value, measure.Centimetre},
		"length of the board":     {b.Length.Value, 14 * measure.Centimetre},
	} {
		if got[0] != got[1] {
			t.Errorf("%s is %v, want %v", what, got[0], got[1])
		}
	}
}

// A guide's range keeps a list from running on into what stands below it, and its
// word for the way stations run settles what the sheet leaves open.
func TestGuideOfPlaces(t *testing.T) {
	list := "Plank|Thickness (mm)|Width (mm)|Length (mm)\n1|18|110|5200\n2|18|115|5100\n3|18|120|5000"
	r := read(t, bookOf(sheetOf("Yard", list)), Options{Guide: []sheet.GuideRow{{Table: "strakes", Sheet: "Yard", Range: "A1:D3"}}})
	if len(r.job.Strakes) != 2 {
		t.Errorf("%d strakes, want the 2 of the range", len(r.job.Strakes))
	}
	both := "|1|2|3|4|5\n1|10|12|14|15|11\n2|20|22|24|25|21\n3|30|32|34|35|31\n4|40|42|44|45|41\n5|50|52|54|55|51"
	for way, want := range map[string]measure.Length{"across": 12 * measure.Millimetre, "down": 20 * measure.Millimetre} {
		r := read(t, bookOf(sheetOf("Yard", both)), Options{Guide: []sheet.GuideRow{{Table: "offsets", Sheet: "Yard", Range: "A1:F6", Stations: way, Unit: "mm"}}})
		if len(r.job.Offsets) != 1 || r.job.Offsets[0].Lines[0].Values[1].Value != want {
			t.Errorf("stations %s: %d tables, %v", way, len(r.job.Offsets), r.codes(0))
		}
	}
}

// A guide's notation holds over the figures' own where both could be read.
func TestGuideOfNotation(t *testing.T) {
	rows := "Plank|Thickness (in.)|Width (in.)|Length\n1|3/4|5|1-44\n2|3/4|5|1-52"
	r := read(t, bookOf(sheetOf("Yard", rows)), Options{Guide: []sheet.GuideRow{{Table: "strakes", Sheet: "Yard", Range: "A1:D3", Unit: "thickness inches; width inches; length feet", Notation: "old print"}}})
	if len(r.job.Strakes) != 2 || r.job.Strakes[0].Length.Value != measure.Foot+4*measure.Inch+4*measure.Eighth {
		t.Errorf("%v %v", r.job.Strakes, r.codes(0))
	}
}

// A guide's notation says what readings about 90 stand for, over what the book's
// own words say; "not stated" leaves that to the book.
func TestGuideOfBevels(t *testing.T) {
	rows := "Bevels, gauge with its stock on the outside face\nPlank|Edge|0|1|2|3\n1|top|92|93|94|93\n1|bottom|91|92|93|92"
	for notation, want := range map[string]bevel.Gauge{
		"gauge on the inside face":  bevel.OnInside,
		"Gauge on the outside face": bevel.OnOutside,
		"off square":                bevel.OffSquare,
		"not stated":                bevel.OnOutside,
		"":                          bevel.OnOutside,
	} {
		r := read(t, bookOf(sheetOf("Yard", rows)), Options{Guide: []sheet.GuideRow{{Table: "bevels", Sheet: "Yard", Range: "A2:F4", Unit: "degrees", Notation: notation}}})
		if len(r.job.Bevels) != 1 || r.job.Bevels[0].Gauge != want || len(codes(r.found)) != 0 {
			t.Errorf("%q: %v, %v", notation, r.job.Bevels, r.codes(0))
		}
	}
	list := "Plank|Edge|Station|Bevel\n1|top|0|92\n1|top|1|93\n1|top|2|94"
	r := read(t, bookOf(sheetOf("Yard", list)), Options{Guide: []sheet.GuideRow{{Table: "bevels", Sheet: "Yard", Range: "A1:D4", Notation: "gauge on the inside face"}}})
	if len(r.job.Bevels) != 1 || r.job.Bevels[0].Gauge != bevel.OnInside {
		t.Errorf("a list: %v, %v", r.job.Bevels, r.codes(0))
	}
}
