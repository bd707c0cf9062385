package read

import (
	"fmt"
	"strings"
	"testing"

	"strakebook/calc"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/convert/sheet"
)

// laidAs is what a job holds by station, in its order, without the cells it came from.
func laidAs(j calc.Job) string {
	var b strings.Builder
	stations := func(all []hull.Station) {
		for _, s := range all {
			fmt.Fprintf(&b, "%s; ", s.Name)
		}
	}
	for _, o := range j.Offsets {
		for _, s := range o.Stations {
			fmt.Fprintf(&b, "%s at %v %v; ", s.Name, s.At.Value, s.At.OK())
		}
		for _, l := range o.Lines {
			fmt.Fprintf(&b, "\n%s", l.Name)
			for _, v := range l.Values {
				fmt.Fprint(&b, " ", v.Value)
			}
		}
		b.WriteString("\n")
	}
	for _, t := range j.Bevels {
		stations(t.Stations)
		for _, s := range t.Seams {
			fmt.Fprintf(&b, "\n%s", s.Strake)
			for _, v := range s.Readings {
				fmt.Fprint(&b, " ", v.Value)
			}
			for _, v := range s.Along {
				fmt.Fprint(&b, " ", v.Value)
			}
		}
		b.WriteString("\n")
	}
	for _, m := range j.Seams {
		stations(m.Stations)
		for _, s := range m.Seams {
			fmt.Fprint(&b, "\n", s.Strake, " ", s.Values[0].Value, s.Values[len(s.Values)-1].Value)
		}
	}
	for _, s := range j.Strakes {
		fmt.Fprint(&b, "\n", s.Name, s.From, s.To)
	}
	return b.String()
}

// aftBook is one small boat: its stations' names and positions as told, the figures of
// each, from forward aft or from aft.
func aftBook(title, label string, names, at []string, fromAft bool) []*sheet.Book {
	row := func(head string, all ...string) string {
		all = append([]string{}, all...)
		if fromAft {
			for i := range len(all) / 2 {
				all[i], all[len(all)-1-i] = all[len(all)-1-i], all[i]
			}
		}
		return head + "|" + strings.Join(all, "|") + "\n"
	}
	positions := ""
	if len(at) > 0 {
		positions = row(label, at...)
	}
	fore, aft := names[0], names[4]
	if fromAft {
		fore, aft = aft, fore
	}
	return bookOf(
		sheetOf("Offsets", title+"\n"+row("Half-breadths, in inches", names...)+positions+row("Sheer", "2", "20", "30", "34", "26")+row("WL 24 in", "1", "14", "25", "31", "18")),
		sheetOf("Bevels", "Bevels, degrees off square\n"+row("Strake", names...)+row("2", "4", "3", "2", "1.5", "1")+row("Distance along (in)", "0", "37", "74", "111", "149")),
		sheetOf("Seams", "Girths from the sheer, in inches\n"+row("Strake", names...)+row("1", "5", "6", "7", "6", "4")+row("2", "10", "12", "14", "12", "8")),
		sheetOf("Planks", "Strake|Thickness (in)|From station|To station\n"+row("1|1", fore, aft)),
	)
}

// A boat numbered and measured from aft is the same boat: turned about where its words
// say so, asked about where only the names of its stations do.
func TestPositionsFromAft(t *testing.T) {
	numbers, falling := []string{"0", "1", "2", "3", "4"}, []string{"4", "3", "2", "1", "0"}
	named := []string{"Stem", "3", "2", "1", "Transom"}
	rising, from := []string{"0", "36", "72", "108", "144"}, []string{"144", "108", "72", "36", "0"}
	const forward = "Offsets. Station 0 is at the after perpendicular, numbers run forward."
	for _, c := range []struct {
		title, label string
		names, at    []string
		fromAft      bool
		set          string
		asked        bool
	}{
		{"Offsets", "Distance from FP", numbers, rising, false, "", false},
		{"Offsets", "Distance from FP", numbers, rising, true, "", false},
		{"Offsets", "Distance from AP", numbers, from, true, "", false},
		{"Offsets", "Distance from A.P. (in)", falling, from, true, "", false},
		{"Offsets", "From after perpendicular", falling, from, false, "", false},
		{"Offsets", "Distance fwd of transom", named, from, true, "", false},
		{"Offsets", "x, + fwd", named, from, true, "", false},
		{forward, "Position", falling, from, true, "", false},
		{"Distances of stations are measured from the transom", "Position", numbers, from, false, "", false},
		{forward, "", falling, nil, true, "station spacing=36 in", false},
		{"Offsets", "", numbers, nil, true, "station spacing=36 in", false},
		{"Offsets", "", []string{"FP", "3", "2", "1", "AP"}, nil, true, "station spacing=36 in", false},
		{"Offsets", "Position", numbers, from, true, "", true},
		{"Offsets", "Position", []string{"Fwd", "3", "2", "1", "Aft"}, from, true, "", true},
		{forward, "Distance from AP", numbers, from, true, "", true},
		{"Offsets", "Distance from FP", named, from, true, "", true},
		{"Stations are not numbered from aft", "Distance from bow", numbers, rising, true, "", false},
	} {
		name := fmt.Sprint(c.title, " ", c.label, " ", c.names, c.at, c.fromAft)
		var o Options
		if c.set != "" {
			o.Set = []string{c.set}
		}
		got := read(t, aftBook(c.title, c.label, c.names, c.at, c.fromAft), o)
		asked := false
		for _, f := range got.found {
			asked = asked || f.Kind == PositionOpen
			if f.Severity >= finding.Warning && f.Kind != PositionOpen && f.Kind.Code != "convention-open" {
				t.Errorf("%s: %s", name, f.Text)
			}
		}
		if asked != c.asked {
			t.Errorf("%s: asked %v", name, asked)
		}
		if c.asked {
			for _, s := range got.job.Offsets[0].Stations {
				if s.At.OK() {
					t.Errorf("%s: station %s is laid at %v", name, s.Name, s.At.Value)
				}
			}
			continue
		}
		want := read(t, aftBook("Offsets", "Distance from FP", c.names, rising, false), Options{})
		if a, b := laidAs(got.job), laidAs(want.job); a != b {
			t.Errorf("%s:\n%s\nfrom forward:\n%s", name, a, b)
		}
	}
}

// A list of positions from aft turns the offsets about that go by it; distances along
// each edge from the transom are from the foremost mark then.
func TestListsAndEdgesFromAft(t *testing.T) {
	r := read(t, bookOf(
		sheetOf("Positions", "Station|Distance from AP (in)\n0|0\n1|36\n2|72\n3|108"),
		sheetOf("Offsets", "Offsets in inches\nStation|0|1|2|3\nHB Sheer|2|20|30|26\nHB WL 12 in|1|14|25|18"),
		sheetOf("Bevels", "Bevels, degrees off square\nStrake|Edge|0|1|2|3\n3|upper|1|2|3|4\nDistance from transom (in)||0|37|74|111\n4|upper|1|2|3|4\nDistance from transom (in)||0|38|75|112"),
	), Options{})
	o, b := r.job.Offsets[0], r.job.Bevels[0]
	got := fmt.Sprint(o.Stations[0].Name, o.Stations[0].At.Value, o.Stations[3].At.Value, o.Lines[0].Values[0].Value, b.Stations[0].Name)
	for _, s := range b.Seams {
		got += fmt.Sprint("; ", s.Readings[0].Value.Write())
		for _, v := range s.Along {
			got += fmt.Sprint(" ", v.Value)
		}
	}
	if want := "30 in 108 in 26 in3; 4 0 in 37 in 74 in 111 in; 4 0 in 37 in 74 in 112 in"; got != want {
		t.Errorf("read as %s, want %s", got, want)
	}
}

// What labels say of the end that distances are from; an end named otherwise says nothing.
func TestOriginOf(t *testing.T) {
	for label, want := range map[string]origin{
		"Distance from AP": fromAft, "Dist. from A.P. (in)": fromAft, "From after perpendicular": fromAft, "Distance from the face of the transom": fromAft,
		"Distance fwd of transom": fromAft, "Distance forward": fromAft, "x, + fwd": fromAft, "Distance to stern": fromAft, "x (AP = 0)": fromAft,
		"Distance from FP": fromFore, "Distance from aft face of stem": fromFore, "From fore side of sternpost": fromAft, "Distance aft": fromFore, "Aft of stem": fromFore, "Abaft the bow": fromFore, "Distance from forward": fromFore,
		"Distance aft of FP (AP = 24 ft)": fromFore, "x, + aft": fromFore,
		"Position": originUnsaid, "Position of forward face of mould": originUnsaid, "Distance to aft face": originUnsaid, "Distance from station 0": originUnsaid,
		"Position, AP is 24-0-0": originUnsaid, "Distance from FP, or from AP": originTwo,
	} {
		if got := originOf(label); got != want {
			t.Errorf("%q: %d, want %d", label, got, want)
		}
	}
}

// What sentences say of how stations are numbered and measured; remarks on other things
// that name an end say nothing.
func TestOriginsIn(t *testing.T) {
	for words, want := range map[string][2]origin{
		"Station 0 is at the after perpendicular, numbers run forward.": {fromAft},
		"Offsets. Stations are numbered from aft":                       {fromAft}, "Stations run from the stern to the stem": {fromAft}, "Sta. 0 = AP; inches": {fromAft},
		"Station 10 at the transom": {fromFore}, "AP is station 0": {fromAft}, "Stations numbered from the bow aft": {fromFore}, "Numbers run aft": {fromFore},
		"Frame 1 at the stem": {fromFore}, "Stations numbered from aft; station 0 at the stem": {originTwo},
		"Distances are measured from the transom":            {originUnsaid, fromAft},
		"Offsets, all positions measured from AP":            {originUnsaid, fromAft},
		"Station positions are set out from FP":              {originUnsaid, fromFore},
		"Stations are not numbered from aft":                 {},
		"Station 5 is set 2 in from the transom":             {},
		"Distance from transom to rudder stock 300 mm":       {},
		"Plank 3 runs forward to station 2":                  {},
		"Station 1 is aft of the stem knee":                  {},
		"Numbers in red are from the after body plan":        {},
		"Stations forward of 3 are canted":                   {},
		"Moulds 1 to 4 were made from the stern drawing":     {},
		"Station spacing 3 ft, heights from base":            {},
		"Hull 31, stations 4 ft apart from the bow bulkhead": {},
	} {
		got := originsIn([]string{words})
		if got.numbered != want[0] || got.measured != want[1] {
			t.Errorf("%q: numbered %d, measured %d, want %v", words, got.numbered, got.measured, want)
		}
	}
}
