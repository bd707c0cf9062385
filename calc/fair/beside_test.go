package fair

import (
	"math"
	"slices"
	"testing"
)

// Rows that all turn at one place hide there a value that is off a little, as long
// as each is judged by itself: what sets it apart from those beside it shows it.
func TestRowsBesideShowWhatATurnHides(t *testing.T) {
	surface := func(beside bool) []Row {
		rows := make([]Row, 6)
		for i := range rows {
			for x := range 15 {
				y := 10*float64(i) + 3*float64(x) + 40*math.Tanh(float64(x-7)/1.5)
				rows[i].X, rows[i].Y, rows[i].Given = append(rows[i].X, float64(x)), append(rows[i].Y, math.Round(y)), append(rows[i].Given, true)
			}
			rows[i].Level = float64(i)
			for j := i - 1; beside && j >= max(0, i-2); j-- {
				rows[i].Sides[0] = append(rows[i].Sides[0], j)
			}
			for j := i + 1; beside && j < min(len(rows), i+3); j++ {
				rows[i].Sides[1] = append(rows[i].Sides[1], j)
			}
		}
		return rows
	}
	if j := Judge(surface(true), DefaultRules(), nil); len(j.Flags) > 0 {
		t.Errorf("a sound surface: %+v", j.Flags)
	}
	for _, c := range []struct {
		beside bool
		want   []Spot
	}{{false, nil}, {true, []Spot{{2, 7}}}} {
		rows := surface(c.beside)
		rows[2].Y[7] += 6
		if got := spots(Judge(rows, DefaultRules(), nil)); !slices.Equal(got, c.want) {
			t.Errorf("rows beside it known %v: %v, want %v", c.beside, got, c.want)
		}
	}
}
