package bevel

import (
	"math"
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// Plain geometry: on a round in twelve planks each seam turns 7.5 degrees, and
// where its two edges share that, 3.75 is sawn of each (a quarter of a degree of
// readout aside).
func TestEdgesShare(t *testing.T) {
	shape, strakes := round(t)
	r := DefaultRules()
	r.Shared = true
	made, found := Computed(shape, strakes, nil, nil, r)
	// The sheer's upper edge and the last plank's lower one meet no plank.
	if len(made) != 12*2-2 || len(found) != 0 {
		t.Fatalf("%d schedules, %v", len(made), found)
	}
	for _, s := range made {
		for _, m := range s.Marks {
			if math.Abs(float64(m.Between)-3.75) > 0.05 || m.Set != 3.75 {
				t.Errorf("plank %s %s edge at %v: %v", s.Strake, s.Edge, m.At, m.Between)
			}
		}
	}
	lower := DefaultRules()
	lower.Sawn = Lower
	if r.SawnEdges() != hull.SawnShared || DefaultRules().SawnEdges() != hull.SawnUpper || lower.SawnEdges() != hull.SawnLower {
		t.Error("the shapes are not sawn on the edges of the cards")
	}
	// Lifted as half the turn they agree with the hull.
	b := onRound(func(rows [][]float64) {
		for i := range rows {
			for k := range rows[i] {
				rows[i][k] = 3.75
			}
		}
	})
	if _, found := Schedules(b, strakes, nil, shape, r); len(found) != 0 {
		t.Errorf("%v", found)
	}
}

// A plank turned over on the bench is the same plank: sawn in space either face up,
// by the batten and the tilt its card gives, both its faces come out as wide.
func TestEitherFaceUpGivesTheSamePlank(t *testing.T) {
	shape, strakes := round(t)
	up, down := DefaultRules(), DefaultRules()
	up.Batten, down.Batten = measure.Inch/2, measure.Inch/2
	down.FaceUp = Inside
	a, _ := Computed(shape, strakes, nil, nil, up)
	b, _ := Computed(shape, strakes, nil, nil, down)
	for i := range a {
		for k, m := range a[i].Marks {
			n := b[i].Marks[k]
			one := saw(m.Batten.Inches(), 0, a[i].Thickness.Inches(), m.Set, up)
			other := saw(n.Batten.Inches(), 0, b[i].Thickness.Inches(), n.Set, down)
			if m.At != n.At || math.Abs(one.inside-other.inside) > 1e-6 || math.Abs(one.outside-other.outside) > 1e-6 || math.Abs(one.inside-m.Width.Inches()) > 1e-6 {
				t.Fatalf("plank %s at %v: %v and %v for %v", a[i].Strake, m.At, one, other, m.Width)
			}
		}
	}
}

// A schedule of 60 planks at 30 stations, with battens, as a yard with a big hull
// has it.
func BenchmarkSchedules60x30(b *testing.B) {
	rows := make([][]float64, 60)
	for i := range rows {
		for k := range 30 {
			rows[i] = append(rows[i], math.Round(4*(3+2*math.Sin(float64(k)/9+float64(i)/20)))/4)
		}
	}
	read := sheet(rows)
	for b.Loop() {
		s, _ := Schedules(read, nil, nil, nil, DefaultRules())
		Guides(s, DefaultRules())
	}
}
