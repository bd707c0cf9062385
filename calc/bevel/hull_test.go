package bevel

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// round is a hull of 9 stations whose every section is the same quarter round of
// 3 ft, drawn from heights and half-breadths, with 12 planks in equal shares: each
// turns 90/12 = 7.5 degrees from the next. Plain geometry.
func round(t testing.TB) (*hull.Shape, []hull.Strake) {
	t.Helper()
	o, strakes := roundOf(9, 12)
	shape, _ := hull.Work(o, strakes, hull.DefaultRules())
	if shape == nil {
		t.Fatal("no hull was drawn")
	}
	return shape, strakes
}

// roundOf is that hull's offsets at so many stations, and so many planks.
func roundOf(stations, planks int) (hull.Offsets, []hull.Strake) {
	const radius = 36.0
	o := hull.Offsets{Resolution: measure.SixtyFourth, Surface: hull.InsidePlanking, Form: measure.Form{Unit: measure.InInches, Notation: measure.Decimal}}
	for k := range stations {
		o.Stations = append(o.Stations, hull.Station{Name: fmt.Sprint(k), At: source.Is(measure.Feet(float64(4 * k)))})
	}
	line := func(name string, view hull.View, role hull.Role, at, value float64) {
		l := hull.Line{Name: name, View: view, Role: role, At: source.Is(measure.Inches(at))}
		for range o.Stations {
			l.Values = append(l.Values, source.Is(measure.Inches(value)))
		}
		o.Lines = append(o.Lines, l)
	}
	line("Deck", hull.Height, hull.Deck, 0, radius)
	line("Deck", hull.HalfBreadth, hull.Deck, 0, radius)
	line("Rabbet", hull.Height, hull.Rabbet, 0, 0)
	for _, angle := range []float64{15, 25, 35, 45, 55, 65, 75} {
		a := angle * math.Pi / 180
		z := radius * (1 - math.Cos(a))
		line(fmt.Sprintf("WL %.2f", z), hull.HalfBreadth, hull.Waterline, z, radius*math.Sin(a))
		y := radius * math.Sin(a)
		line(fmt.Sprintf("Buttock %.2f", y), hull.Height, hull.Buttock, y, z)
	}
	var strakes []hull.Strake
	for k := range planks {
		strakes = append(strakes, hull.Strake{Name: fmt.Sprint(k + 1), Skin: hull.Planks, Thickness: source.Is(measure.Inch),
			Width: source.Is(5 * measure.Inch), Length: source.Is(32 * measure.Foot)})
	}
	return o, strakes
}

// BenchmarkPlanks is the cost of every plank of a hull before it is cut: the hull
// drawn and lined off, the bevels and battens worked out, the planks laid out flat.
// Twice the seams or twice the stations cost twice as much.
func BenchmarkPlanks(b *testing.B) {
	for _, n := range [][2]int{{30, 60}, {30, 120}, {60, 60}} {
		o, strakes := roundOf(n[0], n[1])
		// Along a parallel body waterlines run on buttocks: each would be held to the other
		// at every station.
		o.Lines = slices.DeleteFunc(o.Lines, func(l hull.Line) bool { return l.Role == hull.Buttock })
		b.Run(fmt.Sprintf("stations=%d/seams=%d", n[0], n[1]), func(b *testing.B) {
			for b.Loop() {
				shape, _ := hull.Work(o, strakes, hull.DefaultRules())
				made, _ := Computed(shape, strakes, nil, nil, DefaultRules())
				Guides(made, DefaultRules())
				shape.Spile(strakes, hull.SawnUpper, hull.DefaultRules())
			}
		})
	}
}

// onRound is readings of planks 5 to 8 on that hull, changed.
func onRound(change func(rows [][]float64)) Readings {
	var rows [][]float64
	for range 4 {
		rows = append(rows, []float64{7.5, 7.5, 7.25, 7.5, 7.75, 7.5, 7.5, 7.25, 7.5})
	}
	change(rows)
	b := sheet(rows)
	for i := range b.Seams {
		b.Seams[i].Strake = fmt.Sprint(i + 5)
	}
	return b
}

func TestLiftedAgainstTheHull(t *testing.T) {
	shape, strakes := round(t)
	test := func(want string, change func(rows [][]float64)) {
		t.Helper()
		_, found := Schedules(onRound(change), strakes, nil, shape, DefaultRules())
		var got []string
		for _, f := range found {
			got = append(got, f.Code+" "+f.Cell.Ref())
		}
		if strings.Join(got, ", ") != want {
			t.Errorf("got %v, want %s", found, want)
		}
	}
	test("", func([][]float64) {})
	test("bevel-hull E2", func(rows [][]float64) { rows[1][4] = 8.25 }) // too little to be odd in its seam
	test("bevel-hull ", func(rows [][]float64) {
		for k := range rows[1] {
			rows[1][k] += 1
		}
	})
	test("bevel-hull-station , bevel-hull-station , bevel-hull-station , bevel-hull-station , bevel-hull-station , bevel-hull-gross E2", func(rows [][]float64) {
		for i := range rows {
			for k, by := range []float64{0, 0, 1, 2, 3, 2, 1, 0, 0} { // no jump in any seam
				rows[i][k] -= by
			}
		}
		rows[1][4] -= 0.25
	})
	test("bevel-hull-station ", func(rows [][]float64) {
		for i := range rows {
			rows[i][4] += 0.75
		}
	})
}

// Of planks lifted to starboard only the port ones are those mirrored: the same marks
// from the same station, called out from the other end; or, not taken to be alike, the
// hull's own. Every plank below the sheer has a card on either side, in both ways.
func TestOneSideLifted(t *testing.T) {
	shape, strakes := round(t)
	b := onRound(func(rows [][]float64) {})
	for i := range b.Seams {
		b.Seams[i].Side = hull.Starboard
	}
	for _, alike := range []bool{true, false} {
		r := DefaultRules()
		r.Alike = alike
		all, _ := Schedules(b, strakes, nil, shape, r)
		mirrored := OtherSide(b, all, strakes, nil, shape, r)
		if alike != (len(mirrored) == 4) {
			t.Fatalf("alike %v: %d mirrored", alike, len(mirrored))
		}
		for i, m := range mirrored {
			s := all[i]
			if m.Side != hull.Port || !m.AsOther || m.From != s.From || m.ReadFrom(r) != "after end" || s.ReadFrom(r) != "fore end" || !slices.Equal(m.Marks, s.Marks) {
				t.Errorf("port %+v", m)
			}
		}
		all = append(all, mirrored...)
		made, _ := Computed(shape, strakes, all, nil, r)
		for _, m := range made {
			if alike != (m.Side == hull.BothSides) && m.Strake >= "5" && m.Strake <= "8" {
				t.Errorf("alike %v: %s %v is the hull's own", alike, m.Strake, m.Side)
			}
		}
		all = append(all, made...)
		for _, k := range strakes[1:] {
			for _, side := range []hull.Side{hull.Port, hull.Starboard} {
				if !has(all, k.Skin, k.Name, side) {
					t.Errorf("alike %v: no card of %s %v", alike, k.Name, side)
				}
			}
		}
		var codes []string
		for _, f := range CheckCards(all, strakes, r) {
			codes = append(codes, f.Code)
		}
		if alike != slices.Equal(codes, []string{"bevel-one-side"}) || !alike && len(codes) > 0 {
			t.Errorf("alike %v: %v", alike, codes)
		}
	}
}

func TestComputedWhereNoneIsLifted(t *testing.T) {
	shape, strakes := round(t)
	lifted, _ := Schedules(onRound(func([][]float64) {}), strakes, nil, shape, DefaultRules())
	if lifted[0].AlongFrom != AlongHull || lifted[0].widthFrom != "lined off" {
		t.Errorf("distances from %q, widths from %q", lifted[0].Distances(), lifted[0].widthFrom)
	}
	for _, m := range lifted[0].Marks {
		if m.Hull.OK() != (m.Station != "") || m.Hull.OK() && math.Abs(float64(m.Hull.Value)-7.5) > 0.1 {
			t.Errorf("at %v the hull turns %v, want 7.5", m.At, m.Hull)
		}
	}
	made, found := Computed(shape, strakes, lifted, nil, DefaultRules())
	if len(made) != 12-4-1 || len(found) != 0 { // the sheer strake's upper edge meets no plank
		t.Fatalf("%d schedules, %v", len(made), found)
	}
	for _, s := range made {
		if !s.Computed || s.Edge != Upper {
			t.Errorf("plank %s: %+v", s.Strake, s)
		}
		for _, m := range s.Marks {
			// Chords of the quarter round in 12 parts; a sixty-fourth in the offsets leaves some hundredths.
			if math.Abs(float64(m.Between)-7.5) > 0.1 {
				t.Errorf("plank %s at %v: %v, want 7.5", s.Strake, m.At, m.Between)
			}
			if math.Abs(m.Width.Inches()-2*36*math.Sin(3.75*math.Pi/180)) > 0.01 {
				t.Errorf("plank %s at %v is %v wide", s.Strake, m.At, m.Width)
			}
		}
	}
	handed := onRound(func([][]float64) {})
	made, _ = Computed(shape, strakes, nil, []Readings{handed}, DefaultRules())
	for _, s := range made {
		if given := slices.ContainsFunc(handed.Seams, func(h Seam) bool { return h.Strake == s.Strake }); s.Unused != given {
			t.Errorf("plank %s: handed in and not laid out: %v, want %v", s.Strake, s.Unused, given)
		}
	}
	r := DefaultRules()
	r.FromHull = false
	if made, _ := Computed(shape, strakes, lifted, nil, r); made != nil {
		t.Error("made although it was not to be")
	}
}

// cone is a hull of five stations 24 in apart whose sections are quarter rounds of a
// radius that goes from 72 in to 24: its seams are straight, at atan(1/2) to the middle
// line, so that cos a is 2 over the square root of 5.
func cone(t *testing.T) (*hull.Shape, []hull.Strake) {
	t.Helper()
	o := hull.Offsets{Resolution: measure.SixtyFourth, Surface: hull.InsidePlanking, Form: measure.Form{Unit: measure.InInches, Notation: measure.Decimal}}
	for k := range 5 {
		o.Stations = append(o.Stations, hull.Station{Name: fmt.Sprint(k), At: source.Is(measure.Feet(float64(2 * k)))})
	}
	line := func(name string, view hull.View, role hull.Role, at float64, of func(radius float64) float64) {
		l := hull.Line{Name: name, View: view, Role: role, At: source.Is(measure.Inches(at))}
		for k := range o.Stations {
			v := source.Reading[measure.Length]{State: source.Dash}
			if y := of(72 - 12*float64(k)); !math.IsNaN(y) {
				v = source.Is(measure.Inches(y))
			}
			l.Values = append(l.Values, v)
		}
		o.Lines = append(o.Lines, l)
	}
	line("Deck", hull.Height, hull.Deck, 0, func(float64) float64 { return 72 })
	line("Deck", hull.HalfBreadth, hull.Deck, 0, func(r float64) float64 { return r })
	line("Rabbet", hull.Height, hull.Rabbet, 0, func(r float64) float64 { return 72 - r })
	for down := 3.0; down < 72; down += 3 {
		line(fmt.Sprint("WL ", 72-down), hull.HalfBreadth, hull.Waterline, 72-down, func(r float64) float64 { return math.Sqrt(r*r - down*down) })
	}
	strakes := []hull.Strake{{Name: "1-8", Count: source.Is(8), Skin: hull.Planks, Thickness: source.Is(measure.Inch), Width: source.Is(5 * measure.Inch)}}
	shape, _ := hull.Work(o, strakes, hull.DefaultRules())
	if shape == nil {
		t.Fatal("no hull was drawn")
	}
	return shape, strakes
}

// Bevels of 10 degrees lifted in the station plane are atan(tan 10 / cos a) square to
// the edge, a the angle at which the hull's own seam runs.
func TestStationPlaneOnTheHull(t *testing.T) {
	shape, strakes := cone(t)
	b := sheet([][]float64{{10, 10, 10, 10, 10}})
	b.Seams[0].Strake, b.InStation = "4", true
	s, _ := Schedules(b, strakes, nil, shape, DefaultRules())
	want := math.Atan(math.Tan(10*math.Pi/180)*math.Sqrt(5)/2) * 180 / math.Pi // 11.1506
	for _, m := range s[0].Marks {
		if m.Station != "" && math.Abs(float64(m.Between)-want) > 0.02 {
			t.Errorf("at station %s %v, want %.4f", m.Station, m.Between, want)
		}
	}
}

// A station left blank in the offsets throws no mark back to the station spacing:
// along a parallel body the marks stand 4 ft apart, the width there runs on between
// its neighbours', and its place is said to be along the seam.
func TestMarksThroughABlankStation(t *testing.T) {
	o, strakes := roundOf(9, 12)
	for i := range o.Lines {
		o.Lines[i].Values[4] = source.Reading[measure.Length]{}
	}
	shape, _ := hull.Work(o, strakes, hull.DefaultRules())
	all, _ := Schedules(onRound(func([][]float64) {}), strakes, o.Stations, shape, DefaultRules())
	if len(all) != 4 {
		t.Fatalf("%d schedules", len(all))
	}
	for _, s := range all {
		if s.AlongFrom != AlongHull || s.widthFrom != linedOff || len(s.Past) > 0 {
			t.Errorf("along from %s, width %s, past %v", s.Distances(), s.widthFrom, s.Past)
		}
		for _, m := range s.Marks {
			if m.Unseen != (m.Station == "4") || m.Station == "4" && (m.At-16*measure.Foot).Abs() > measure.Inch/100 {
				t.Errorf("station %q at %v, unseen %v", m.Station, m.At, m.Unseen)
			}
			if w := m.Width - s.Marks[0].Width; w.Abs() > measure.Inch/100 {
				t.Errorf("width at %v is %v, at the first %v", m.At, m.Width, s.Marks[0].Width)
			}
		}
	}
	if found := CheckLaid(all, shape, DefaultRules()); len(found) > 0 {
		t.Errorf("%v", found)
	}
}

// The hull's own bevel and how far one lies off it are told to the hundredth, as the
// card has them, though the table is read to the half degree: of a 2 where the hull
// turns 9.2863, 9.29 and 7.29 off; by a gauge on the inside 99.29, on the outside 80.71.
func TestHullsOwnAsShown(t *testing.T) {
	b, r := Readings{Resolution: 0.5, Gauge: OffSquare}, DefaultRules()
	f := far{table: b, rules: r, of: []compared{{diff: []float64{2 - 9.2863}, hull: []float64{9.2863}}}}
	if own, off := b.hullsOwn(9.2863, r), f.off(0, 0).Write(); own != "9.29" || off != "7.29" {
		t.Errorf("hull %s, %s off", own, off)
	}
	for gauge, want := range map[Gauge]string{OnInside: "99.29", OnOutside: "80.71"} {
		b.Gauge = gauge
		if own := b.hullsOwn(9.2863, r); own != want {
			t.Errorf("by the gauge %s", own)
		}
	}
}
