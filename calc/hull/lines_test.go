package hull

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// prism makes a table of five stations 24 in apart for a hull that is alike from end to
// end, and gives what adds a line to it by its one figure, in inches.
func prism(o *Offsets) func(l Line, v float64) {
	*o = Offsets{Resolution: measure.Nanometre, Surface: OutsidePlanking, Form: measure.Form{Unit: measure.InInches, Notation: measure.Decimal}}
	for k := range 5 {
		o.Stations = append(o.Stations, Station{Name: fmt.Sprint(k), At: source.Is(measure.Inches(24 * float64(k)))})
	}
	return func(l Line, v float64) {
		for range 5 {
			l.Values = append(l.Values, source.Is(measure.Inches(v)))
		}
		o.Lines = append(o.Lines, l)
	}
}

// barrel is a table of a round of radius 36 about an axis at the height 36, from
// the keel up past its greatest breadth to a deck at the height 60, where it has
// fallen in again: five stations, waterlines every 8 in, and a diagonal from the
// axis down at 45 degrees.
func barrel() Offsets {
	var o Offsets
	add := prism(&o)
	half := func(z float64) float64 { return math.Sqrt(36*36 - (z-36)*(z-36)) }
	add(Line{Name: "keel", View: Height, Role: Keel}, 0)
	add(Line{Name: "deck", View: Height, Role: Deck}, 60)
	add(Line{Name: "deck", Role: Deck}, half(60))
	for z := 8.0; z < 60; z += 8 {
		add(Line{Name: fmt.Sprint("WL ", z), Role: Waterline, At: source.Is(measure.Inches(z))}, half(z))
	}
	for _, y := range []float64{8, 16} {
		add(Line{Name: fmt.Sprint("buttock ", y), View: Height, Role: Buttock, At: source.Is(measure.Inches(y))}, 36-math.Sqrt(36*36-y*y))
	}
	add(Line{Name: "diagonal", View: Diagonal, Role: DiagonalLine, At: source.Is(36 * measure.Inch), Down: source.Is(measure.Angle(45))}, 36)
	return o
}

// TestTumblehome draws a section that falls in again above its greatest breadth,
// through a diagonal among its waterlines: its girth is 36 (pi/2 + asin 24/36).
func TestTumblehome(t *testing.T) {
	o := barrel()
	s, found := Work(o, planked(), DefaultRules())
	for _, f := range found {
		if f.Kind == LineUnused || f.Kind == SectionBeyond || f.Kind == ViewsApart {
			t.Errorf("%s: %s", f.Code, f.Text)
		}
	}
	want := 36 * (math.Pi/2 + math.Asin(24./36))
	for k, g := range s.Stations {
		near(t, "girth", g.Girth.Inches(), want, 36e-4)
		on := false
		for _, p := range s.Sections[k].Points {
			on = on || p.Line == "diagonal" && math.Abs(math.Hypot(p.Out.Inches(), p.Up.Inches()-36)-36) < 1e-6
		}
		if !on {
			t.Errorf("station %s is not drawn through the diagonal", g.Name)
		}
	}
	// An inch of planks over 5/8 in of strips: each surface a round of its own radius,
	// met by the levels, the buttocks and the deck's height.
	radius := map[Surface]float64{OutsidePlanking: 36, BetweenSkins: 35, InsidePlanking: 34.375}
	count := map[Surface]int{}
	for _, m := range s.Moulds {
		r, at, want := radius[m.Surface], m.At.Inches(), 0.0
		switch {
		case m.Role == Waterline:
			want = math.Sqrt(r*r - (at-36)*(at-36))
		case m.Role == Buttock:
			want = 36 - math.Sqrt(r*r-at*at)
		case m.Role == Deck && m.View == HalfBreadth:
			want = math.Sqrt(r*r - 24*24)
		case m.Role == Deck:
			want = 60
		case m.View == Height: // the keel
			want = 36 - r
		}
		near(t, fmt.Sprintf("%s, %v, %v at station %s", m.Line, m.View, m.Surface, m.Station), m.Offset.Inches(), want, 1./64)
		count[m.Surface]++
	}
	for on, n := range count { // seven levels, two buttocks, deck and keel in both views
		if n != 5*13 {
			t.Errorf("%d figures to the %v", n, on)
		}
	}
}

// raked is a table of plane-sided waterlines that start on a raked stem, the
// parabola z = 36 (1 - x/60)^2, and open out 0.3 in an inch.
func raked() Offsets {
	o := Offsets{Resolution: measure.Nanometre, Surface: OutsidePlanking, Form: measure.Form{Unit: measure.InInches, Notation: measure.Decimal}}
	for k := range 11 {
		o.Stations = append(o.Stations, Station{Name: fmt.Sprint(k), At: source.Is(measure.Inches(12 * float64(k)))})
	}
	add := func(l Line, f func(x float64) float64) {
		for k := range 11 {
			v := f(12 * float64(k))
			if v < 0 {
				l.Values = append(l.Values, source.Reading[measure.Length]{State: source.Dash})
				continue
			}
			l.Values = append(l.Values, source.Is(measure.Inches(v)))
		}
		o.Lines = append(o.Lines, l)
	}
	out := func(z float64) func(x float64) float64 { return func(x float64) float64 { return 0.3 * (x - stem(z)) } }
	add(Line{Name: "rabbet", View: Height, Role: Rabbet}, func(x float64) float64 { return 36 * math.Pow(max(0, 1-x/60), 2) })
	add(Line{Name: "deck", View: Height, Role: Deck}, func(float64) float64 { return 36 })
	add(Line{Name: "deck", Role: Deck}, out(36))
	for z := 6.0; z < 36; z += 6 {
		add(Line{Name: fmt.Sprint("WL ", z), Role: Waterline, At: source.Is(measure.Inches(z))}, out(z))
	}
	return o
}

// stem is where the raked stem stands at a height.
func stem(z float64) float64 { return 60 * (1 - math.Sqrt(z/36)) }

// TestRakedStem ends every waterline on the stem between two stations: its length
// is (120 - stem) sqrt(1 + 0.3^2).
func TestRakedStem(t *testing.T) {
	s, _ := Work(raked(), []Strake{{Name: "1-6", Skin: Planks, Count: source.Is(6)}}, DefaultRules())
	// The first strake begins where its upper edge does, at the stem head on station 0.
	fore, after, ok := s.Linings[0].Ends(0)
	near(t, "fore end of the first strake", fore.Inches(), stem(36), 1e-3)
	near(t, "after end", after.Inches(), 120, 1e-3)
	if lower := s.Linings[0].Seams[1].run.p[0].x; !ok || lower < 3 {
		t.Errorf("its lower edge begins at %v", lower)
	}
	n := 0
	for _, l := range s.Lines {
		if l.Role != Waterline {
			continue
		}
		n++
		var z float64
		fmt.Sscanf(l.Name, "WL %g", &z)
		want := (120 - stem(z)) * math.Hypot(1, 0.3)
		if l.From != "profile" && stem(z) != 12*math.Round(stem(z)/12) {
			t.Errorf("%s starts from %s, not from the profile", l.Name, l.From)
		}
		near(t, l.Name, l.Length.Inches(), want, 1e-3*want)
	}
	if n != 5 {
		t.Fatalf("%d waterlines", n)
	}
}

// TestBetweenStations gives a strake that runs between two stations the length of
// its part: on the Wigley hull's sheer from station 10 to the end half of it all.
func TestBetweenStations(t *testing.T) {
	o := wigley(measure.Foot, measure.Millimetre/100)
	list := []Strake{{Name: "1", Skin: Planks, From: "10", To: "20"}, {Name: "2-8", Skin: Planks, Count: source.Is(7)}}
	s, _ := Work(o, list, DefaultRules())
	runs, _ := s.Runs(list, DefaultRules())
	near(t, "half the sheer", runs[0].Length.Value.Feet(), 10.402288194, 0.02) // rounded up to an eighth
}

// TestListedWidths lines off by the widths by station of the list of strakes.
func TestListedWidths(t *testing.T) {
	o := roundOffsets(func(float64) float64 { return 36 })
	at := []Station{{Name: "0"}, {Name: "5"}, {Name: "10"}}
	wide := []source.Reading[measure.Length]{source.Is(5 * measure.Inch), source.Is(5 * measure.Inch), source.Is(5 * measure.Inch)}
	list := []Strake{{Name: "1", Skin: Planks, WidthAt: at, Widths: wide}, {Name: "2", Skin: Planks, WidthAt: at, Widths: wide}}
	s, found := Work(o, list, DefaultRules())
	if l := s.Linings[0]; l.By != ByMarks || l.Seams[2].Points[5].Girth != 10*measure.Inch {
		t.Errorf("%s, seam 2 is %v down", l.By, l.Seams[2].Points[5].Girth)
	}
	var sums []string
	for _, f := range found {
		if f.Kind == LiningSum {
			sums = append(sums, f.Text)
		}
	}
	// 10 in of 56 at each of the eleven stations, listed and between: told of once for
	// the skin.
	if len(sums) != 1 || !strings.Contains(sums[0], " 46.5625 in less than the girth on the outside of planking; at station 1 46.5625 in less, ") || strings.Count(sums[0], " 46.5625 in less") != 11 {
		t.Errorf("sums told of: %q", sums)
	}
}
