package hull

import (
	"reflect"
	"slices"
	"strings"
	"testing"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

var eighths = measure.Form{Notation: measure.FeetInchesEighths}

func aboveNote(l finding.List) finding.List {
	return slices.DeleteFunc(slices.Clone(l), func(f finding.Finding) bool { return f.Severity == finding.Note })
}

// The tables' sources stand in their files: a Wigley hull computed and rounded
// to an eighth, and a canoe of W. P. Stephens (1889) with its misprints mended.
func TestCleanTablesRaiseNothing(t *testing.T) {
	for _, name := range []string{"12", "14"} {
		found := Examine(worked(t, name, eighths, measure.Eighth, false), DefaultRules()).Found
		for _, f := range aboveNote(found) {
			t.Errorf("table %s: %s: %s [%s]", name, f.Cell, f.Text, f.Code)
		}
	}
}

// W. P. Stephens, Canoe and Boat Building (1889), plate XI, as copied: three of
// the faults below are certain, the figures being impossible between their
// neighbours; the deck at station 1 is probable in the same source.
func TestStephensFaultsAreFound(t *testing.T) {
	o := worked(t, "01", measure.Form{Notation: measure.OldPrint}, measure.Eighth, true)
	found := Examine(o, DefaultRules()).Found
	for _, want := range [][2]string{{"hb 6 in.", "0"}, {"hb 2 in.", "3"}, {"hb deck", "13"}, {"hb deck", "1"}} {
		line, station := want[0], want[1]
		i := slices.IndexFunc(o.Lines, func(l Line) bool { return l.Name == line })
		k := slices.IndexFunc(o.Stations, func(s Station) bool { return s.Name == station })
		if !slices.ContainsFunc(found, func(f finding.Finding) bool {
			return f.Severity > finding.Note && f.Cell == o.Lines[i].Values[k].Cell
		}) {
			t.Errorf("%s at station %s: not found", line, station)
		}
	}
	if n := len(aboveNote(found)); n > 4 {
		for _, f := range aboveNote(found) {
			t.Errorf("%s: %s; %s [%s]", f.Cell, f.Text, f.Suggests, f.Code)
		}
	}
}

// F. H. Todd, DTMB Report 1712, Series 60 CB .60: the copy reads 10 for
// 0 on WL .25 at the fore perpendicular.
func TestSeries60TypingFault(t *testing.T) {
	o := dropStation(worked(t, "05", measure.Form{Unit: measure.Fractions, Notation: measure.Decimal}, measure.Millimetre, true), "MaxBm")
	found := Examine(o, DefaultRules()).Found
	var got []string
	for _, f := range aboveNote(found) {
		if f.Code == "offset-unfair" && o.Lines[f.Cell.Row-2].Name == "0" {
			continue // the edge of the flat of bottom: a real corner
		}
		got = append(got, f.Code+" "+f.Reads)
	}
	if !slices.Contains(got, "offset-jump 10") {
		t.Errorf("WL .25 at station 0 was not named: %s", strings.Join(got, ", "))
	}
	if len(got) > 1 {
		t.Errorf("more was named: %s", strings.Join(got, ", "))
	}
}

func TestGapsAndImpossible(t *testing.T) {
	o := worked(t, "12", eighths, measure.Eighth, false)
	o.Lines[3].Values[8] = source.Reading[measure.Length]{Cell: o.Lines[3].Values[8].Cell}
	o.Lines[5].Values[4].Value *= -1
	o.Lines[6].Values[9].Value = 0
	for i := range o.Lines {
		o.Lines[i].Values[15] = source.Reading[measure.Length]{Cell: o.Lines[i].Values[15].Cell}
	}
	o.Stations[2].Name = "1"
	o.Lines[2].Values[10].State, o.Lines[2].Values[10].Text = source.Unread, "1-x-4"
	e := Examine(o, DefaultRules())
	found := e.Found
	for _, want := range []string{"offset-gap J5", "offset-negative F7", "offset-zero K8", "station-blank Q1", "station-repeated D1"} {
		n := 0
		for _, f := range found {
			if f.Code+" "+f.Cell.Ref() == want {
				n++
			}
		}
		if n != 1 {
			t.Errorf("%s: found %d times", want, n)
		}
	}
	above := aboveNote(found)
	if len(above) != 5 {
		for _, f := range above {
			t.Errorf("%s: %s [%s]", f.Cell, f.Text, f.Code)
		}
	}
	// All of it is asked, and the figure that cannot be read as well, a station
	// after the other.
	queries, counted := e.Queries(o), 0
	if !slices.IsSortedFunc(queries, func(a, b Query) int { return a.Cell.Col - b.Cell.Col }) || len(queries) != len(above)+1 {
		t.Errorf("queries: %+v", queries)
	}
	if i := slices.IndexFunc(queries, func(q Query) bool { return q.Reads == "1-x-4" }); i < 0 || queries[i].Station != "10" || queries[i].Before == "" || !strings.HasPrefix(queries[i].Suggests, "about 1-") {
		t.Errorf("no query of the figure that cannot be read: %+v", queries)
	}
	for _, l := range e.Lines {
		counted += l.Findings
	}
	if counted != 3 { // the gap, the sign and the zero; two are of stations
		t.Errorf("%d findings of lines", counted)
	}
}

func TestProposals(t *testing.T) {
	test := func(line, station int, seeded, want string) {
		t.Helper()
		o := worked(t, "12", eighths, measure.Eighth, false)
		v := &o.Lines[line].Values[station]
		v.Value, _ = eighths.Length(seeded)
		v.Text = seeded
		found := Examine(o, DefaultRules()).Found
		above := aboveNote(found)
		if len(above) != 1 || above[0].Cell != v.Cell || !strings.HasPrefix(above[0].Suggests, want) {
			t.Errorf("%s seeded: %+v, want %q", seeded, above, want)
		}
	}
	test(4, 8, "1-0-6", "2-0-6 (one foot)")
	test(3, 5, "1-7-4", "1-4-7 (inches and eighths changed places)")
	test(7, 12, "2-7-6", "2-4-6 (")
	test(4, 7, "2-0-6", "the same figure as station 8")
}

func TestCheckStrakes(t *testing.T) {
	given := func(in float64) source.Reading[measure.Length] { return source.Is(measure.Inches(in)) }
	found := CheckStrakes([]Strake{
		{Name: "1", Skin: Planks, Thickness: given(1), Width: given(5), Length: given(600)},
		{Name: "2", Skin: Planks, Width: given(5), Length: given(600)},
		{Name: "3", Skin: Planks, Thickness: given(1), Length: given(600)},
		{Name: "4", Skin: Planks, Thickness: given(1), Width: given(5)},
		{Name: "1", Skin: Planks, Thickness: given(10), Width: given(5), Length: given(600)},
		{Name: "1", Skin: Strips, Thickness: given(1), Width: given(5), Length: given(600)},
	}, DefaultRules())
	var codes []string
	for _, f := range found {
		codes = append(codes, f.Code)
	}
	if got := strings.Join(codes, " "); got != "strake-thickness strake-width strake-length strake-repeated strake-odd" {
		t.Errorf("got %s", got)
	}
}

// TestTableIsNotChanged says that a table looked into and worked out is the
// builder's own afterwards, to the last figure and every station's place, whatever
// is tried on it.
func TestTableIsNotChanged(t *testing.T) {
	tables := []Offsets{wigley(measure.Metre, measure.Millimetre)} // its stations are no whole half inches apart
	for _, f := range append(tuned(), held()...) {
		o := f.offsets()
		o.Stations[len(o.Stations)/2].At.Value += measure.Foot // one off its place
		tables = append(tables, o)
	}
	for i, o := range tables {
		before := o.copied()
		before.Stations = slices.Clone(o.Stations)
		Decide(o, Examine(o, DefaultRules()), nil)
		Work(o, planked(), DefaultRules())
		if !reflect.DeepEqual(before, o) {
			t.Errorf("table %d is changed:\n%v\nwas\n%v", i, o.Stations, before.Stations)
		}
	}
}

// What a line stands under is not said twice, and a station without a name is told by
// the one before it.
func TestLinesAndStationsAreNamedOnce(t *testing.T) {
	for _, c := range []struct {
		l    Line
		want string
	}{
		{Line{View: HalfBreadth, Name: "WL 3"}, "half-breadth of WL 3"},
		{Line{View: HalfBreadth, Name: "Half-breadths WL 2-0-0"}, "half-breadth of WL 2-0-0"},
		{Line{View: Height, Name: "Heights above base Butt. 24 in"}, "height of Butt. 24 in"},
		{Line{View: Height, Name: "Height of deck"}, "height of deck"},
		{Line{View: Diagonal, Name: "Diagonals A, 3-0-0, 40 deg"}, "diagonal A, 3-0-0, 40 deg"},
		{Line{View: Diagonal, Name: "Diagonal A"}, "diagonal A"},
		{Line{View: HalfBreadth, Name: "Half-breadths"}, "half-breadth of Half-breadths"},
	} {
		if got := c.l.words(); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
	o := Offsets{Stations: []Station{{Name: "0"}, {}, {Name: "2"}}}
	if got := o.called(1); got != "the station after station 0" {
		t.Errorf("%q", got)
	}
}
