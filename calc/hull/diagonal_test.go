package hull

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// diagonals adds to a hull's table two diagonals that run out from heights on the
// centre line, each as far as it stays on the hull.
func (h *formHull) diagonals(o Offsets, down measure.Angle, from ...float64) Offsets {
	cos, sin := math.Cos(down.Radians()), math.Sin(down.Radians())
	for n, at := range from {
		l := Line{Name: fmt.Sprintf("Diagonal %d", n+1), View: Diagonal, Role: DiagonalLine, At: source.Is(measure.Inches(at)), Down: source.Is(down),
			Cell: source.Cell{Sheet: "S", Row: len(o.Lines) + 2, Col: 1}}
		for k, u := range h.stations {
			v := source.Reading[measure.Length]{State: source.Dash, Text: "-", Cell: source.Cell{Sheet: "S", Row: len(o.Lines) + 2, Col: k + 2}}
			// Where the diagonal goes from inside the hull to outside it.
			lo, hi := 0.0, (at-h.profile(u))/sin
			if hi > 0 && at < h.sheer(u) {
				for range 50 {
					if m := (lo + hi) / 2; h.half(u, at-m*sin) > m*cos {
						lo = m
					} else {
						hi = m
					}
				}
				v.Value, v.State = measure.Inches(lo).Round(h.resolution), source.Given
				v.Text = o.Form.Write(v.Value)
			}
			l.Values = append(l.Values, v)
		}
		o.Lines = append(o.Lines, l)
	}
	return o
}

// Diagonals are held to the sections as waterlines and buttocks are: an inch too
// much on one is found, at its first and last stations too, where its own run
// says little.
func TestDiagonals(t *testing.T) {
	for _, h := range []*formHull{roundBilge("round bilge", 360, 58, 54, 13, measure.Eighth), doubleEnder("double-ender", 240, 34, 26, 21, measure.Eighth)} {
		clean := h.diagonals(h.offsets(), 40, 0.9*h.waters[len(h.waters)-1], 0.6*h.waters[len(h.waters)-1])
		if above := aboveNote(Examine(clean, DefaultRules()).Found); len(above) > 0 {
			t.Errorf("%s: untouched, and %v is found", h.name, above)
		}
		var seeded, found, ends, endsFound, wrongly int
		for i, l := range clean.Lines {
			if l.Role != DiagonalLine {
				continue
			}
			for k, v := range l.Values {
				if !v.OK() {
					continue
				}
				o := clone(clean)
				o.Lines[i].Values[k].Value += measure.Inch
				e := Examine(o, DefaultRules())
				is := slices.ContainsFunc(e.Doubts, func(d Doubt) bool { return d.Line == i && d.Station == k })
				seeded++
				if whereabouts(clean, place{i, k}) == "end" {
					ends++
					if is {
						endsFound++
					}
				}
				if is {
					found++
				} else {
					wrongly += len(e.Doubts)
				}
			}
		}
		if found < seeded-2 || endsFound < ends/2 || wrongly > 1 {
			t.Errorf("%s: %d of %d found, %d of %d at the ends, %d others named", h.name, found, seeded, endsFound, ends, wrongly)
		}
		t.Logf("%s: %d of %d found, %d of %d at the ends, %d others named", h.name, found, seeded, endsFound, ends, wrongly)
	}
}

// A quarter round of 36 in drawn from diagonals that run down at 30 degrees from the
// centre line, besides its deck and its rabbet, is as round: its girth is 18 pi.
func TestDrawnFromDiagonals(t *testing.T) {
	o := Offsets{Resolution: measure.SixtyFourth, Surface: InsidePlanking, Form: measure.Form{Unit: measure.InInches, Notation: measure.Decimal}}
	line := func(l Line, value float64) {
		for range 3 {
			l.Values = append(l.Values, source.Is(measure.Inches(value)))
		}
		o.Lines = append(o.Lines, l)
	}
	for k := range 3 {
		o.Stations = append(o.Stations, Station{Name: fmt.Sprint(k), At: source.Is(measure.Feet(float64(4 * k)))})
	}
	line(Line{Name: "deck", View: Height, Role: Deck}, 36)
	line(Line{Name: "deck", View: HalfBreadth, Role: Deck}, 36)
	line(Line{Name: "rabbet", View: Height, Role: Rabbet}, 0)
	sin, cos := math.Sincos(math.Pi / 6)
	for around := 10.0; around < 90; around += 10 {
		s, c := math.Sincos(around * math.Pi / 180)
		out := 36 * s / cos // along the diagonal
		line(Line{Name: fmt.Sprint("Diagonal ", around), View: Diagonal, Role: DiagonalLine, At: source.Is(measure.Inches(36*(1-c) + out*sin)), Down: source.Is(measure.Angle(30))}, out)
	}
	s, _ := Work(o, nil, DefaultRules())
	for _, g := range s.Stations {
		near(t, "girth", g.Girth.Inches(), 18*math.Pi, 0.02)
	}
}
