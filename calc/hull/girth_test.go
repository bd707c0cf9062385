package hull

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// wigley is the table of the hull y = (B/2)(1-(2x/L)^2)(1-(z/T)^2), 20 by 5 by 2
// of a unit, x from midships and z down from the waterline: 21 stations and 9
// levels, rounded to a step. Its keel lies on the base line.
func wigley(unit, step measure.Length) Offsets {
	return wigleyTable(unit, step, 21, 9)
}

func wigleyTable(unit, step measure.Length, stations, levels int) Offsets {
	o := Offsets{Resolution: step, Form: measure.Form{Unit: measure.InMillimetres, Notation: measure.Decimal}, Surface: OutsidePlanking}
	for k := range stations {
		o.Stations = append(o.Stations, Station{Name: fmt.Sprint(k), At: source.Is(unit.Times(20 * float64(k) / float64(stations-1)))})
	}
	values := func(f func(x float64) float64) []source.Reading[measure.Length] {
		var all []source.Reading[measure.Length]
		for k := range stations {
			all = append(all, source.Is(unit.Times(f(20*float64(k)/float64(stations-1)-10)).Round(step)))
		}
		return all
	}
	for i := range levels {
		up := 2 * float64(i) / float64(levels-1)
		o.Lines = append(o.Lines, Line{Name: fmt.Sprint("WL ", i), Role: Waterline, At: source.Is(unit.Times(up)),
			Values: values(func(x float64) float64 { return wigleyHalf(x, 2-up) })})
	}
	o.Lines = append(o.Lines,
		Line{Name: "keel", View: Height, Role: Keel, Values: values(func(float64) float64 { return 0 })},
		Line{Name: "deck", View: Height, Role: Deck, Values: values(func(float64) float64 { return 2 })},
		Line{Name: "deck", Role: Deck, Values: values(func(x float64) float64 { return wigleyHalf(x, 0) })})
	return o
}

// wigleyHalf is the half-breadth at x from midships and z below the waterline.
func wigleyHalf(x, z float64) float64 { return 2.5 * (1 - x*x/100) * (1 - z*z/4) }

// wigleyGirth is its girth: (1/2) sqrt(T^2+4a^2) + (T^2/(4a)) asinh(2a/T), a the
// half-breadth at the waterline.
func wigleyGirth(x float64) float64 {
	a := wigleyHalf(x, 0)
	if a == 0 {
		return 2
	}
	return math.Sqrt(4+4*a*a)/2 + math.Asinh(a)/a
}

// planked is a list of strakes: ten strips' worth of first skin 5/8 thick and
// eight planks of 1 inch.
func planked() []Strake {
	return []Strake{
		{Name: "A", Skin: Strips, Thickness: source.Is(5 * measure.Eighth), Width: source.Is(measure.Inches(4.375)), Count: source.Is(60)},
		{Name: "1-8", Skin: Planks, Thickness: source.Is(measure.Inch), Count: source.Is(8)},
	}
}

// TestWigleyGirths holds girths and the waterline's length to the closed forms.
func TestWigleyGirths(t *testing.T) {
	near(t, "closed form", wigleyGirth(5), 2.864356993, 1e-9) // by quadrature
	for _, c := range []struct {
		unit, step       measure.Length
		girth, waterline float64
	}{
		{measure.Metre, measure.Millimetre / 100, 0.0002, 0.0001},
		{measure.Foot, measure.Eighth, 0.001, 0.001},
	} {
		s, found := Work(wigley(c.unit, c.step), nil, DefaultRules())
		if len(found) != 1 || found[0].Kind != MouldSurface {
			t.Errorf("found %v", found)
		}
		worst := 0.0
		for k, g := range s.Stations {
			want := wigleyGirth(float64(k) - 10)
			worst = max(worst, math.Abs(float64(g.Girth)/float64(c.unit)/want-1))
		}
		if worst > c.girth {
			t.Errorf("girths are out by %.5f %%, more than %.5f", 100*worst, 100*c.girth)
		}
		t.Logf("girths out by %.5f %%", 100*worst)
		for _, l := range s.Lines {
			if l.Role == Deck {
				near(t, "waterline", float64(l.Length)/float64(c.unit), 2*10.402288194, 20.8*c.waterline)
				t.Logf("waterline out by %.5f %%", 100*(float64(l.Length)/float64(c.unit)/2/10.402288194-1))
			}
		}
	}
}

// TestRoundGirth holds the girths of a round of radius 36 and of a cone to the
// arc.
func TestRoundGirth(t *testing.T) {
	o := roundOffsets(func(float64) float64 { return 36 })
	s, _ := Work(o, nil, DefaultRules())
	for _, g := range s.Stations {
		near(t, "quarter of a round", g.Girth.Inches(), 36*math.Pi/2, 36e-4)
	}
	o = roundOffsets(func(x float64) float64 { return 36 - x/10 })
	s, _ = Work(o, nil, DefaultRules())
	for _, g := range s.Stations {
		r := 36 - g.At.Inches()/10
		near(t, "quarter of a cone", g.Girth.Inches(), r*math.Pi/2, r*1e-4)
	}
}

// roundOffsets is a table of quarters of rounds of a radius that may change
// along the hull, axis at the height 36, by waterlines and buttocks, in inches.
func roundOffsets(radius func(x float64) float64) Offsets { return roundOffsetsEvery(4, radius) }

func roundOffsetsEvery(step float64, radius func(x float64) float64) Offsets {
	o := Offsets{Resolution: measure.Nanometre, Surface: OutsidePlanking, Form: measure.Form{Unit: measure.InInches, Notation: measure.Decimal}}
	for k := range 11 {
		o.Stations = append(o.Stations, Station{Name: fmt.Sprint(k), At: source.Is(measure.Inches(12 * float64(k)))})
	}
	line := func(name string, v View, role Role, at float64, f func(r float64) float64) {
		l := Line{Name: name, View: v, Role: role, At: source.Is(measure.Inches(at))}
		for k := range 11 {
			value := f(radius(12 * float64(k)))
			if math.IsNaN(value) {
				l.Values = append(l.Values, source.Reading[measure.Length]{State: source.Dash})
				continue
			}
			l.Values = append(l.Values, source.Is(measure.Inches(value)))
		}
		o.Lines = append(o.Lines, l)
	}
	line("keel", Height, Keel, 0, func(r float64) float64 { return 36 - r })
	line("deck", Height, Deck, 0, func(r float64) float64 { return 36 })
	line("deck", HalfBreadth, Deck, 0, func(r float64) float64 { return r })
	for z := 6 + 2*step; z < 36; z += step {
		line(fmt.Sprint("WL ", z), HalfBreadth, Waterline, z, func(r float64) float64 { return math.Sqrt(r*r - (36-z)*(36-z)) })
	}
	for y := step; y < 24; y += step {
		line(fmt.Sprint("buttock ", y), Height, Buttock, y, func(r float64) float64 { return 36 - math.Sqrt(r*r-y*y) })
	}
	return o
}

// chined is a table of a hull of planes, in inches: a bottom rising 1 in 4 from
// the keel, a side leaning out 1 in 5 and falling in aft by a taper.
func chined(taper float64) Offsets {
	o := Offsets{Resolution: measure.Nanometre, Surface: OutsidePlanking, Form: measure.Form{Unit: measure.InInches, Notation: measure.Decimal}}
	line := func(name string, v View, role Role, at float64, f func(x float64) float64) {
		l := Line{Name: name, View: v, Role: role, At: source.Is(measure.Inches(at))}
		for k := range 9 {
			l.Values = append(l.Values, source.Is(measure.Inches(f(12*float64(k)))))
		}
		o.Lines = append(o.Lines, l)
	}
	for k := range 9 {
		o.Stations = append(o.Stations, Station{Name: fmt.Sprint(k), At: source.Is(measure.Inches(12 * float64(k)))})
	}
	// The chine: z = y/4 on y = 30 - taper x + (z-10)/5.
	chine := func(x float64) float64 { return (30 - taper*x - 2) / (1 - 0.05) }
	line("keel", Height, Keel, 0, func(float64) float64 { return 0 })
	line("chine", Height, Chine, 0, func(x float64) float64 { return chine(x) / 4 })
	line("chine", HalfBreadth, Chine, 0, chine)
	line("deck", Height, Deck, 0, func(float64) float64 { return 40 })
	line("deck", HalfBreadth, Deck, 0, func(x float64) float64 { return 36 - taper*x })
	for z := 12.0; z < 40; z += 6 {
		line(fmt.Sprint("WL ", z), HalfBreadth, Waterline, z, func(x float64) float64 { return 30 - taper*x + (z-10)/5 })
	}
	return o
}

// An end of the girth that is left out since its figure is doubted is not said to be
// missing.
func TestGirthEndsDoubted(t *testing.T) {
	o := wigley(measure.Foot, measure.Eighth)
	for i := range o.Lines {
		if l := &o.Lines[i]; l.Role == Deck && l.View == HalfBreadth {
			l.Values[1].State, l.Values[1].Text = source.Blank, "0-9-0" // as Without leaves it
			for k := 2; k < 5; k++ {
				l.Values[k] = source.Reading[measure.Length]{} // never given
			}
		}
	}
	_, found := Work(o, nil, DefaultRules())
	var said []string
	for _, f := range found {
		if f.Kind == GirthTo {
			said = append(said, f.Text)
		}
	}
	if want := []string{"the deck is given and doubted at station 1 and left out: the girth there ends at the highest line", "the deck is not given in both views at 4 stations: their girths end at the highest line"}; !slices.Equal(said, want) {
		t.Errorf("%q", said)
	}
}
