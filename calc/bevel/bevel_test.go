package bevel

import (
	"math"
	"slices"
	"strings"
	"testing"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// table makes readings at even stations 24 in apart; NaN is a blank.
func table(y ...float64) Readings {
	b := Readings{Resolution: 0.25}
	s := Seam{Strake: "3", Skin: hull.Planks, Edge: Upper}
	for k, v := range y {
		b.Stations = append(b.Stations, hull.Station{Name: string(rune('A' + k)), At: source.Is(measure.Inches(24 * float64(k)))})
		read := source.Reading[measure.Angle]{Cell: source.Cell{Sheet: "B", Row: 2, Col: k + 2}}
		if !math.IsNaN(v) {
			read.Value, read.State, read.Text = measure.Angle(v), source.Given, measure.Angle(v).Write()
		}
		s.Readings = append(s.Readings, read)
	}
	b.Seams = []Seam{s}
	return b
}

func plank(thick, wide float64) []hull.Strake {
	return []hull.Strake{{Name: "3", Skin: hull.Planks, Thickness: source.Is(measure.Inches(thick)), Width: source.Is(measure.Inches(wide))}}
}

func codes(t *testing.T, b Readings) string {
	t.Helper()
	var all []string
	for _, f := range Check(b, DefaultRules()) {
		all = append(all, f.Code+" "+f.Cell.Ref())
	}
	return strings.Join(all, ", ")
}

func TestCheck(t *testing.T) {
	nan := math.NaN()
	test := func(want string, y ...float64) {
		t.Helper()
		if got := codes(t, table(y...)); got != want {
			t.Errorf("%v: got %q, want %q", y, got, want)
		}
	}
	test("", -2, -1.5, -0.75, 0, 0.75, 1.25, 1.75, 2.25, 2.5)
	test("bevel-jump F2", -2, -1.5, -0.75, 0, 3.75, 1.25, 1.75, 2.25, 2.5)
	test("bevel-gap E2", -2, -1.5, -0.75, nan, 0.75, 1.25, 1.75, 2.25, 2.5)
	test("bevel-mixed E2", -2, -1.5, -0.75, 92, 0.75, 1.25, 1.75, 2.25, 2.5)
	test("bevel-tilt H2", 11, 12, 12.75, 13.5, 14.25, 15, 15.75, 15, 14)
	test("bevel-gauge ", 92, 92.5, 93, 93.5, 94)
	test("bevel-repeat E2", 0, 1, 2, 2, 3.25, 4, 5)
	test("bevel-hood ", nan, 1, 1.5, 2, 2.5)
}

// A gauge with its stock on the inside face reads 90 + b; on the outside 90 - b.
func TestGaugeFace(t *testing.T) {
	for gauge, want := range map[Gauge]measure.Angle{OnInside: 3, OnOutside: -3} {
		b := table(92, 92.5, 93, 93.5, 94)
		b.Gauge = gauge
		s, _ := Schedules(b, plank(1, 5), nil, nil, DefaultRules())
		if len(s) != 1 || s[0].Marks[4].Station != "C" || s[0].Marks[4].Set != want {
			t.Errorf("%s: %+v", gauge, s)
		}
	}
}

// scipy 1.10.1 PCHIP at the same readings, four places: the run below with a
// sign change, a local maximum and repeated readings at 24 in stations.
func TestMonotoneBetweenStations(t *testing.T) {
	b := table(-2, -0.5, 1, 3, 3, 2, 2, 0.5)
	s, _ := Schedules(b, plank(1, 5), nil, nil, DefaultRules())
	for at, want := range map[float64]float64{12: -1.25, 36: 0.223214, 60: 2.214286, 108: 2.5} {
		i := slices.IndexFunc(s[0].Marks, func(m Mark) bool { return m.At == measure.Inches(at) })
		if i < 0 {
			t.Errorf("no mark at %v in", at)
		} else if got := float64(s[0].Marks[i].Between); math.Abs(got-want) > 1e-6 {
			t.Errorf("at %v in: %v, want %v", at, got, want)
		}
	}
	if n := len(s[0].Marks); n != 15 {
		t.Errorf("%d marks, want 8 stations and 7 steps", n)
	}
	var aft, forward []float64
	for _, m := range s[0].Marks {
		if m.Crossing {
			aft = append(aft, m.At.Inches())
		}
		if m.CrossingBack {
			forward = append(forward, m.At.Inches())
		}
	}
	if !slices.Equal(aft, []float64{36}) || !slices.Equal(forward, []float64{24}) {
		t.Errorf("the other hand from %v aft and from %v forward, want 36 and 24 in", aft, forward) // .22 sawn at .25
	}
}

// Plain geometry, as a repair handbook tables it: 1 in at 5 degrees .0875, at 10
// .1763; 1 1/4 at 7.5 .1646; 3/4 at 5 .0656.
func TestFaces(t *testing.T) {
	test := func(thick, bevel, want float64) {
		t.Helper()
		s, _ := Schedules(table(bevel, bevel), plank(thick, 5), nil, nil, DefaultRules())
		if got := s[0].Marks[0].Faces.Inches(); math.Abs(got-want) > 5e-5 {
			t.Errorf("%v at %v: %v, want %v", thick, bevel, got, want)
		}
	}
	test(1, 5, 0.0875)
	test(1, 10, 0.1763)
	test(1.25, 7.5, 0.1646)
	test(0.75, 5, 0.0656)
	test(1, -5, -0.0875)
}

func TestEndsAreNeverGuessed(t *testing.T) {
	nan := math.NaN()
	s, _ := Schedules(table(nan, 1, 1.5, nan, 2.5, nan), plank(1, 5), nil, nil, DefaultRules())
	if s[0].From != "B" || s[0].To != "E" {
		t.Fatalf("runs from %s to %s", s[0].From, s[0].To)
	}
	// Marks are measured from the first reading's station: B is 24 in aft of A.
	if m := s[0].Marks; m[0].At != 0 || m[len(m)-1].At != 72*measure.Inch {
		t.Errorf("marks from %v to %v", m[0].At, m[len(m)-1].At)
	}
	for _, m := range s[0].Marks {
		if (m.Station == "D") != m.Filled {
			t.Errorf("mark %q filled %v", m.Station, m.Filled)
		}
	}
}

func TestTrialCut(t *testing.T) {
	r := DefaultRules()
	r.TrialReads, r.TrialCuts = 10, 8
	s, _ := Schedules(table(4, 4), plank(1, 5), nil, nil, r)
	if m := s[0].Marks[0]; m.Set != 4 || m.Tilt != 5 {
		t.Errorf("a scale that reads 10 for 8 must show 5 for 4: %+v", m)
	}
	// About square there is no proportion: the scale is as far off all along, by hand.
	for trial, want := range map[Trial]measure.Angle{{Reads: 1, Cuts: 0}: 5, {Reads: 0, Cuts: 0.25}: 3.75, {Reads: -0.25, Cuts: 0.25}: 3.5, {Reads: 0.25, Cuts: 0.75}: 3.5} {
		r.Trials = []Trial{trial}
		if got := r.tilt(4); got != want {
			t.Errorf("a scale that reads %v for %v must show %v for 4: %v", trial.Reads, trial.Cuts, want, got)
		}
	}
}

func TestMirroredStationsMirrorFindings(t *testing.T) {
	y := []float64{-2, -1.5, -0.75, 0, 3.75, 1.25, 1.75, 2.25, 2.5}
	back := slices.Clone(y)
	slices.Reverse(back)
	a, b := Check(table(y...), DefaultRules()), Check(table(back...), DefaultRules())
	if len(a) != 1 || len(b) != 1 || a[0].Cell.Col-2 != len(y)-1-(b[0].Cell.Col-2) {
		t.Errorf("%v and %v", a, b)
	}
}

// Plain geometry: an edge at 60 degrees to the middle line runs twice the
// station spacing, and a bevel of 2 in the station plane is atan(2 tan 2) = 3.9951.
func TestStationPlane(t *testing.T) {
	b := table(2, 2, 2)
	b.InStation = true
	if _, found := Schedules(b, plank(1, 5), nil, nil, DefaultRules()); len(found) != 1 || found[0].Kind != Plane {
		t.Errorf("without distances along the edge: %v", found)
	}
	for k := range b.Stations {
		b.Seams[0].Along = append(b.Seams[0].Along, source.Is(measure.Inches(48*float64(k))))
	}
	s, found := Schedules(b, plank(1, 5), nil, nil, DefaultRules())
	for _, got := range []measure.Angle{s[0].Marks[0].Between, s[0].Marks[0].Faired} {
		if math.Abs(float64(got)-3.9951) > 5e-5 || len(found) != 0 {
			t.Errorf("got %v, %v", got, found)
		}
	}
}

// Where the faired bevels are sawn, what is set and what the scale shows are theirs
// and not those read; by hand, readings .25 to either side of a level 2 in turn are
// faired to nearer it.
func TestFairedIsSawn(t *testing.T) {
	r := DefaultRules()
	r.SawFaired, r.Readout = true, 0.01
	b := table(2.25, 1.75, 2.25, 1.75, 2.25, 1.75, 2.25, 1.75)
	s, _ := Schedules(b, plank(1, 5), nil, nil, r)
	for _, m := range s[0].Marks[4:10] {
		if m.Station != "" && (m.Between != m.Read.Value || math.Abs(float64(m.Faired)-2) > 0.15) || m.Set != m.Faired.Round(0.01) || m.Tilt != m.Set {
			t.Errorf("%+v", m)
		}
	}
}

// The tilt is turned by degrees a foot: from 0 to 6 in 24 in, 3.
func TestTurnedAFoot(t *testing.T) {
	s, found := Schedules(table(0, 6), plank(1, 5), nil, nil, DefaultRules())
	for _, m := range s[0].Marks[1:] {
		if math.Abs(float64(m.PerFoot)-3) > 1e-9 {
			t.Errorf("at %v: %v a foot", m.At, m.PerFoot)
		}
	}
	if len(found) != 1 || found[0].Kind != Turned {
		t.Errorf("%v", found)
	}
}

// Every mark from a doubtful reading to the next sure ones rests on it, though without
// it the same would be set, and is left out of the parallel batten's middle. Of eight
// readings 24 in apart of 2 degrees, the third and the fourth doubtful, the marks from
// 24 to 96 in, both left out, rest on them; plain counting.
func TestBetweenDoubtfulReadings(t *testing.T) {
	b, r := table(2, 2, 2, 2, 2, 2, 2, 2), DefaultRules()
	s, _ := Schedules(b, plank(1, 5), nil, nil, r)
	found := finding.List{{Kind: Jump, Cell: b.Seams[0].Readings[2].Cell}, {Kind: Jump, Cell: b.Seams[0].Readings[3].Cell}}
	DoubtMarks(s, found, r)
	for _, m := range s[0].Marks {
		want := Sure
		switch {
		case m.Station == "C" || m.Station == "D":
			want = Doubtful
		case m.At > 24*measure.Inch && m.At < 96*measure.Inch:
			want = Leaning
		}
		if m.Doubt != want {
			t.Errorf("at %v: doubt %d, want %d", m.At, m.Doubt, want)
		}
	}
}

// A doubtful reading is marked, and what rests on it, and shifts neither the parallel
// batten nor what is set at the marks farther off.
func TestDoubtfulReading(t *testing.T) {
	clean := []float64{1, 1.5, 2, 2.5, 3, 3, 2.5, 2}
	wrong := slices.Clone(clean)
	wrong[4] = 13
	of := func(y []float64, kept bool) Schedule {
		b, r := table(y...), DefaultRules()
		s, _ := Schedules(b, plank(1, 5), nil, nil, r)
		found := Check(b, r)
		for i := range found {
			if kept {
				found[i] = found[i].Kept()
			}
		}
		DoubtMarks(s, found, r)
		return s[0]
	}
	was, is := of(clean, false), of(wrong, false)
	if was.Doubted() || is.Parallel != was.Parallel {
		t.Errorf("clean doubted: %v; parallel at %v, want %v", was.Doubted(), is.Parallel, was.Parallel)
	}
	for i, m := range is.Marks {
		switch {
		case m.Doubt == Sure && (m.Set != was.Marks[i].Set || m.SetOut != was.Marks[i].SetOut):
			t.Errorf("at %v: set to %v out %v and sure, want %v out %v", m.At, m.Set, m.SetOut, was.Marks[i].Set, was.Marks[i].SetOut)
		case (m.Doubt == Doubtful) != (m.Station == "E"):
			t.Errorf("at %v, station %q: doubt %d", m.At, m.Station, m.Doubt)
		case m.Doubt == Leaning && m.Station != "":
			t.Errorf("the reading at station %s leans on another", m.Station)
		}
	}
	if is.Sure() < 8 || is.Marks[9].Doubt != Leaning {
		t.Errorf("%d marks sure, the one after the doubtful: %d", is.Sure(), is.Marks[9].Doubt)
	}
	if of(wrong, true).Doubted() {
		t.Error("doubted though the builder lets it stand")
	}
}
