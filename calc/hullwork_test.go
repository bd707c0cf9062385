package calc

import (
	"fmt"
	"math"
	"testing"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// wigleyJob is a job of the hull y = 30 (1-(2x/L)^2)(1-(d/24)^2) in, 240 in long
// and 24 deep, and six planks of which the list gives the thickness alone.
func wigleyJob() Job {
	o := hull.Offsets{Resolution: measure.Millimetre / 100, Surface: hull.InsidePlanking, Form: measure.Form{Unit: measure.InInches, Notation: measure.Decimal}}
	for k := range 21 {
		o.Stations = append(o.Stations, hull.Station{Name: fmt.Sprint(k), At: source.Is(measure.Inches(12 * float64(k)))})
	}
	add := func(l hull.Line, f func(u float64) float64) {
		for k := range 21 {
			l.Values = append(l.Values, source.Is(measure.Inches(f(float64(k)/10-1)).Round(o.Resolution)))
		}
		o.Lines = append(o.Lines, l)
	}
	half := func(z float64) func(u float64) float64 {
		return func(u float64) float64 { return 30 * (1 - u*u) * (1 - (24-z)*(24-z)/576) }
	}
	add(hull.Line{Name: "keel", View: hull.Height, Role: hull.Keel}, func(float64) float64 { return 0 })
	add(hull.Line{Name: "deck", View: hull.Height, Role: hull.Deck}, func(float64) float64 { return 24 })
	add(hull.Line{Name: "deck", Role: hull.Deck}, half(24))
	for z := 3.0; z < 24; z += 3 {
		add(hull.Line{Name: fmt.Sprint("WL ", z), Role: hull.Waterline, At: source.Is(measure.Inches(z))}, half(z))
	}
	j := Job{Offsets: []hull.Offsets{o}, Rules: DefaultRules()}
	for i := range 6 {
		j.Strakes = append(j.Strakes, hull.Strake{Name: fmt.Sprint(i + 1), Skin: hull.Planks, Thickness: source.Is(3 * measure.Inch / 4), Cell: source.Cell{Row: i + 2, Col: 1}})
	}
	return j
}

// TestHullFeedsTheWork says that lengths and widths the list lacks come from the
// hull, and are what joints and pieces are worked from.
func TestHullFeedsTheWork(t *testing.T) {
	j := wigleyJob()
	j.Rules.Hull.ExtraAtEnds = 2 * measure.Inch
	j.Rules.Hull.EdgeStrain, j.Rules.Bevel.Turn, j.Rules.Bevel.Tilt = 0.02, 5, 45 // six wide planks on a short hull are sprung and turned more than a yard would
	r, found := Work(j)
	for _, f := range found {
		if f.Severity > finding.Note {
			t.Errorf("%s: %s", f.Code, f.Text)
		}
	}
	if len(r.Runs) != 12 {
		t.Fatalf("%d runs", len(r.Runs))
	}
	// The sheer's true length from the closed form of the parabola y = 30 (1-u^2)
	// over 240: s + 0.5 asinh, with tan of the angle at the ends 4 B / (2 L) = 0.5.
	const slope = 0.5
	half := 120 * (math.Sqrt(1+slope*slope) + math.Asinh(slope)/slope) / 2
	for _, run := range r.Runs {
		sum := measure.Length(0)
		for _, p := range run.Pieces {
			sum += p
		}
		if sum-measure.Length(len(run.Joints))*run.Scarf != run.Length {
			t.Errorf("%s: pieces less scarfs come to %v, not %v", run.Name, sum-measure.Length(len(run.Joints))*run.Scarf, run.Length)
		}
		if run.Name == "1" && math.Abs(run.Length.Inches()-2*half-4) > 0.13 { // rounded up to an eighth
			t.Errorf("the sheer strake is %v, want %.3f in and 2 in at each end", run.Length, 2*half)
		}
		// A sixth of the girth amidships, by quadrature 40.2177: 12 x 3.351475.
		if math.Abs(run.Face.Inches()-12*3.351474862/6) > 1./8 || run.Wide < run.Face {
			t.Errorf("%s is %v wide, its board %v", run.Name, run.Face, run.Wide)
		}
	}
}

// TestTypedOrComputed goes by the length typed, and by the hull's where that is
// set; either way the two are held to each other.
func TestTypedOrComputed(t *testing.T) {
	for _, c := range []struct {
		way  hull.Lengths
		want float64
	}{{hull.LengthsTyped, 230}, {hull.LengthsComputed, 249.75}} {
		j := wigleyJob()
		j.Strakes[0].Length = source.Is(230 * measure.Inch)
		j.Rules.Hull.Lengths = c.way
		r, found := Work(j)
		n := 0
		for _, f := range found {
			if f.Code == "strake-run" {
				n++
			}
		}
		if n != 1 {
			t.Errorf("%s: told of %d times", c.way, n)
		}
		if got := r.Runs[0].Length.Inches(); math.Abs(got-c.want) > 0.13 {
			t.Errorf("%s: %v in long, want %v", c.way, got, c.want)
		}
	}
}
