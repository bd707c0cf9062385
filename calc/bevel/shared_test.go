package bevel

import (
	"math"
	"testing"

	"strakebook/calc/hull"
)

// Plain geometry: on a round in twelve planks each seam turns 7.5 degrees, and
// where its two edges share that, 3.75 is sawn of each (a quarter of a degree of
// readout aside).
func TestEdgesShare(t *testing.T) {
	shape, strakes := round(t)
	r := DefaultRules()
	r.Shared = true
	made, found := Computed(shape, strakes, nil, r)
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
	if r.SawnEdges() != hull.SawnShared {
		t.Error("the shapes do not share it")
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

// A plank turned over on the bench is the same plank: either face up, the blade
// set by Batten leaves the two faces as wide. The plane of the blade is laid out
// in TestBattenByConstruction; here the two ways are held to each other.
func TestEitherFaceUpGivesTheSamePlank(t *testing.T) {
	shape, strakes := round(t)
	up, down := DefaultRules(), DefaultRules()
	down.FaceUp = Inside
	a, _ := Computed(shape, strakes, nil, up)
	b, _ := Computed(shape, strakes, nil, down)
	for i := range a {
		for k, m := range a[i].Marks {
			n := b[i].Marks[k]
			// Width of the face on the bench: where the blade leaves the base, less or
			// more what it leans on the way down through batten and plank.
			lean := math.Tan(m.Set.Radians())
			thick, batten := a[i].Thickness.Inches(), up.Batten.Inches()
			outsideUp := m.Batten.Inches() + up.Offset.Inches() - lean*(batten+thick) // its inside face lies down
			insideUp := n.Batten.Inches() + down.Offset.Inches() + lean*batten        // its inside face lies up
			if m.Set != n.Set || m.At != n.At || math.Abs(outsideUp-insideUp) > 1e-6 || math.Abs(outsideUp-m.Width.Inches()) > 1e-6 {
				t.Fatalf("plank %s at %v: %v in and %v in for %v", a[i].Strake, m.At, outsideUp, insideUp, m.Width)
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
