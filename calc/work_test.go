package calc

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

var eighths = measure.Form{Notation: measure.FeetInchesEighths}

// wigley is a table of five waterlines at thirteen stations of a hull whose
// half-breadth is a product of two parabolas, to an eighth.
func wigley() hull.Offsets {
	o := hull.Offsets{Resolution: measure.Eighth, Form: eighths, Surface: hull.OutsidePlanking}
	for k := range 13 {
		o.Stations = append(o.Stations, hull.Station{Name: fmt.Sprint(k), At: source.Is(measure.Feet(float64(2 * k))), Cell: source.Cell{Sheet: "Offsets", Row: 1, Col: k + 2}})
	}
	for i := range 5 {
		l := hull.Line{Name: fmt.Sprintf("WL %d", i+1), Role: hull.Waterline, At: source.Is(measure.Inches(float64(8 * (i + 1))))}
		for k := range 13 {
			x, z := float64(k)/6-1, 1-float64(i+1)/6
			v := measure.Inches(40 * (1 - x*x) * (1 - z*z)).Round(measure.Eighth)
			l.Values = append(l.Values, source.Reading[measure.Length]{Value: v, State: source.Given, Text: eighths.Write(v), Cell: source.Cell{Sheet: "Offsets", Row: i + 2, Col: k + 2}})
		}
		o.Lines = append(o.Lines, l)
	}
	return o
}

func codes(l finding.List) map[string]int {
	n := map[string]int{}
	for _, f := range l {
		n[f.Code]++
	}
	return n
}

// One foot too many stands in the table until the builder decides.
func TestDecisions(t *testing.T) {
	right := wigley().Lines[2].Values[5]
	work := func(take bool, decisions ...Decision) (Result, map[string]int) {
		o := wigley()
		o.Lines[2].Values[5].Value += measure.Foot
		o.Lines[2].Values[5].Text = eighths.Write(o.Lines[2].Values[5].Value)
		r, found := Work(Job{Offsets: []hull.Offsets{o}, Rules: DefaultRules(), Decisions: decisions, TakeProposals: take})
		if o.Lines[2].Values[5].Value != right.Value+measure.Foot {
			t.Error("the table as read was changed")
		}
		if len(r.Queries) != 1 || r.Queries[0].Cell != right.Cell || r.Queries[0].Before == "" || r.Queries[0].Above == "" {
			t.Errorf("queries to the designer: %+v", r.Queries)
		}
		return r, codes(found)
	}
	at := right.Cell
	for _, c := range []struct {
		name      string
		take      bool
		decisions []Decision
		want      measure.Length
		jump      int
		decided   int
		idle      int
	}{
		{"nothing decided", false, nil, right.Value + measure.Foot, 1, 0, 0},
		{"take", false, []Decision{{Cell: at, Take: true}}, right.Value, 0, 1, 0},
		{"a value of the builder's own", false, []Decision{{Cell: at, Value: eighths.Write(right.Value + measure.Eighth)}}, right.Value + measure.Eighth, 0, 1, 0},
		{"let it stand", false, []Decision{{Cell: at, Code: "offset-jump", Value: "Leave"}}, right.Value + measure.Foot, 1, 1, 0},
		{"let it stand, of another figure", false, []Decision{{Cell: at, Code: "offset-jump", Value: "keep", Reads: "1-1-1"}}, right.Value + measure.Foot, 1, 0, 0},
		{"every proposal", true, nil, right.Value, 0, 1, 0},
		{"every proposal but one left", true, []Decision{{Cell: at, Code: "offset-jump", Value: "leave"}}, right.Value + measure.Foot, 1, 1, 0},
		{"no length", false, []Decision{{Cell: at, Value: "ask Tom"}}, right.Value + measure.Foot, 1, 0, 1},
		{"nothing to take", false, []Decision{{Cell: source.Cell{Sheet: "Offsets", Row: 2, Col: 3}, Take: true}}, right.Value + measure.Foot, 1, 0, 1},
		{"elsewhere", false, []Decision{{Cell: source.Cell{Sheet: "Bevels", Row: 2, Col: 3}, Take: true}}, right.Value + measure.Foot, 1, 0, 1},
	} {
		r, found := work(c.take, c.decisions...)
		if got := r.Offsets[0].Lines[2].Values[5].Value; got != c.want {
			t.Errorf("%s: %s, want %s", c.name, eighths.Write(got), eighths.Write(c.want))
		}
		if found["offset-jump"] != c.jump || len(r.Decided) != c.decided || found["decision-idle"] != c.idle {
			t.Errorf("%s: %v, decided %+v", c.name, found, r.Decided)
		}
		if changed := c.decided > 0 && c.jump == 0; changed != (found["offset-decided"] == 1) {
			t.Errorf("%s: a change is noted %d times", c.name, found["offset-decided"])
		}
	}
}

// A warning that is kept is a note; one that says something else than it did when it
// was kept, or an error, is none.
func TestKept(t *testing.T) {
	warning, bad := &finding.Kind{Code: "a", Severity: finding.Warning}, &finding.Kind{Code: "a", Severity: finding.Error}
	for _, c := range []struct {
		kind *finding.Kind
		text string
		want finding.Severity
	}{
		{warning, "", finding.Note}, {warning, "turns 3", finding.Note}, {warning, "kept as decided: turns 3", finding.Note},
		{warning, "turns 14", finding.Warning}, {bad, "turns 3", finding.Error},
	} {
		found := finding.List{{Kind: c.kind, Text: "turns 3"}}
		hull.Keep(found, []Decision{{Code: "a", Value: "keep", Text: c.text}})
		if found[0].Severity != c.want || c.want == finding.Note && found[0].Decision != "keep" {
			t.Errorf("kept as %q: %s, %q", c.text, found[0].Severity, found[0].Decision)
		}
		if told := strings.HasPrefix(found[0].ToDo(), "it cannot be kept: "); told != (c.kind == bad) {
			t.Errorf("an error told that it cannot be kept: %v", told)
		}
	}
}

// The reports by line and by station are of the same departures.
func TestReportsAgree(t *testing.T) {
	o := wigley()
	o.Lines[2].Values[5].Value += measure.Foot
	r, _ := Work(Job{Offsets: []hull.Offsets{o}, Rules: DefaultRules()})
	line := slices.MaxFunc(r.Fair, func(a, b hull.LineReport) int { return int(math.Abs(a.Largest) - math.Abs(b.Largest)) })
	station := slices.MaxFunc(r.Stations, func(a, b hull.StationReport) int { return int(math.Abs(a.Largest) - math.Abs(b.Largest)) })
	if line.Line != "WL 3" || line.Station != "5" || station.Station != "5" || station.Line != "half-breadth of WL 3" || station.Findings != 1 {
		t.Errorf("worst line %+v, worst station %+v", line, station)
	}
	if math.Abs(line.Largest-station.Largest) > 0.5 {
		t.Errorf("largest by line %v, by station %v", line.Largest, station.Largest)
	}
}

// Two figures that changed places are put right together, by a decision on either.
func TestDecisionOnTwoThatChangedPlaces(t *testing.T) {
	o := wigley()
	v := o.Lines[3].Values
	v[3].Value, v[4].Value = v[4].Value, v[3].Value
	v[3].Text, v[4].Text = v[4].Text, v[3].Text
	_, found := Work(Job{Offsets: []hull.Offsets{o}, Rules: DefaultRules()})
	i := slices.IndexFunc(found, func(f finding.Finding) bool { return f.Code == "offset-jump" })
	if i < 0 {
		t.Fatal("neither is doubted")
	}
	r, found := Work(Job{Offsets: []hull.Offsets{o}, Rules: DefaultRules(), Decisions: []Decision{{Cell: found[i].Cell, Take: true}}})
	for k, want := range wigley().Lines[3].Values {
		if got := r.Offsets[0].Lines[3].Values[k]; got.Value != want.Value || got.Cell != want.Cell {
			t.Errorf("station %d: %q at %s", k, got.Text, got.Cell)
		}
	}
	if n := codes(found); n["offset-decided"] != 2 || n["offset-jump"] != 0 {
		t.Errorf("%v", n)
	}
}
