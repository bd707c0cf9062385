package bevel

import (
	"fmt"
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// guided is the battens for planks read so, all an inch thick and 5 in wide.
func guided(rows ...[]float64) []Guide {
	b := sheet(rows)
	var strakes []hull.Strake
	for _, s := range b.Seams {
		strakes = append(strakes, hull.Strake{Name: s.Strake, Skin: s.Skin, Thickness: source.Is(measure.Inch), Width: source.Is(5 * measure.Inch)})
	}
	r := DefaultRules()
	s, _ := Schedules(b, strakes, nil, nil, r)
	return Guides(s, r)
}

// A batten serves planks that want it alike or a whole shift apart; what it is
// made to leaves no plank more than the tolerance out.
func TestOneBattenForSeveralPlanks(t *testing.T) {
	flat := []float64{2, 2, 2, 2, 2, 2, 2}
	steeper := []float64{4, 4, 4, 4, 4, 4, 4}                    // 1 in thick: tan 4 - tan 2 = .0350 in out all along
	twisting := []float64{0, 2, 4, 6, 8, 10, 12}                 // tan 12 - tan 0 = .213 in across the plank
	twistingMore := []float64{0.25, 2, 4, 6.25, 8.25, 10, 12.25} // within a quarter of a degree of it
	got := guided(flat, steeper, twisting, twistingMore)
	if len(got) != 2 || len(got[0].Planks) != 2 || len(got[1].Planks) != 2 {
		t.Fatalf("%+v", got)
	}
	if shift := got[0].Planks[1].Shift.Inches(); shift < 0.0349 || shift > 0.0351 {
		t.Errorf("shifted by %v in, want .0350", shift)
	}
	// Of 2 degrees all along, and one that goes from 0 to 4, the batten is .035 in out to
	// either side at the ends: it serves unshifted, a thirty-second to share.
	if got := guided(flat, []float64{0, 2, 2, 2, 2, 2, 4}); len(got) != 1 || got[0].Planks[1].Shift.Abs() > measure.Inch/1000 {
		t.Errorf("to either side: %+v", got)
	}
	r := DefaultRules()
	rows := map[string][]float64{"4": twisting, "5": twistingMore}
	for _, p := range got[1].Planks {
		for k, e := range got[1].Edges {
			want := Batten(5*measure.Inch, measure.Inch, measure.Angle(rows[p.Strake][k]), r)
			if off := (e.From + p.Shift - want).Abs(); off > r.BattenWithin || off > got[1].Off {
				t.Errorf("plank %s at station %d is %v off", p.Strake, k, off)
			}
		}
	}
}

// With no tolerance every plank that bends otherwise has its own batten.
func TestNoToleranceNoSharing(t *testing.T) {
	var strakes []hull.Strake
	b := sheet([][]float64{{0, 1, 2, 3}, {0, 1, 2, 3.25}, {0, 1, 2, 3.25}})
	for _, s := range b.Seams {
		strakes = append(strakes, hull.Strake{Name: s.Strake, Skin: s.Skin, Thickness: source.Is(measure.Inch), Width: source.Is(5 * measure.Inch)})
	}
	r := DefaultRules()
	r.BattenWithin = 0
	s, _ := Schedules(b, strakes, nil, nil, r)
	got := fmt.Sprint()
	for _, g := range Guides(s, r) {
		got += fmt.Sprint(len(g.Planks), " ")
	}
	if got != "1 2 " {
		t.Errorf("planks a batten: %s", got)
	}
}
