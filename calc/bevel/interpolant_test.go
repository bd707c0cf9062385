package bevel

import (
	"math"
	"slices"
	"testing"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// SOURCE: scipy 1.10.1, PchipInterpolator, on readings at even stations and at
// stations with half stations at the bow. A unit of x is a foot here, and the
// marks stand every 3 in so that one falls at each of the places.
func TestMonotoneInterpolant(t *testing.T) {
	test := func(x, y []float64, want map[float64]float64) {
		t.Helper()
		b := table(y...)
		for k := range b.Stations {
			b.Stations[k].At = source.Is(measure.Feet(x[k]))
		}
		r := DefaultRules()
		r.Step = 3 * measure.Inch
		s, _ := Schedules(b, plank(1, 5), nil, nil, r)
		for at, v := range want {
			i := slices.IndexFunc(s[0].Marks, func(m Mark) bool { return m.At == measure.Feet(at) })
			if i < 0 {
				t.Errorf("no mark at %v ft", at)
			} else if got := float64(s[0].Marks[i].Between); math.Abs(got-v) > 1e-6 {
				t.Errorf("at %v ft: %v, want %v", at, got, v)
			}
		}
	}
	test([]float64{0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10}, []float64{0, 0.5, 1, 1.75, 2.5, 3, 3.5, 4, 4.25, 4.5, 4.5},
		map[float64]float64{0.5: 0.25, 1.25: 0.620313, 2.5: 1.35625, 3.75: 2.333594, 7.5: 4.135417, 9.75: 4.5})
	test([]float64{0, 0.5, 1, 1.5, 2, 3, 4, 5, 6, 7, 8, 8.5, 9}, []float64{12, 10.5, 9.25, 8, 7, 5.5, 4, 3, 2.25, 1.75, 1.5, 1.25, 1.25},
		map[float64]float64{0.25: 11.217330, 0.75: 9.860795, 1.75: 7.469982, 2.5: 6.219758, 6.5: 1.966667, 8.25: 1.353365})
	test([]float64{0, 1, 3}, []float64{1, 2, 1.5}, map[float64]float64{0.5: 1.677083, 2: 1.9375, 2.5: 1.789062})
	test([]float64{0, 1}, []float64{1, 2}, map[float64]float64{0.5: 1.5}) // two readings: a straight line
}

// A step that falls on a station's mark is that mark; the rest are whole steps
// from the first.
func TestStepsFromTheFirstMark(t *testing.T) {
	b := table(0, 1, 2)
	b.Stations[1].At = source.Is(measure.Inches(36.25))
	b.Stations[2].At = source.Is(measure.Inches(70))
	s, _ := Schedules(b, plank(1, 5), nil, nil, DefaultRules())
	var got []float64
	for _, m := range s[0].Marks {
		got = append(got, m.At.Inches())
	}
	if want := []float64{0, 12, 24, 36.25, 48, 60, 70}; !slices.Equal(got, want) {
		t.Errorf("marks at %v, want %v", got, want)
	}
}

// A gap is filled alike in the bevels read and the bevels faired, with few
// readings as with many.
func TestGapFilledBetweenItsNeighbours(t *testing.T) {
	for _, y := range [][]float64{{1, 1.5, math.NaN(), 2.5}, {0, 0.5, 1, 1.5, math.NaN(), 2.5, 3, 3.5}} {
		s, _ := Schedules(table(y...), plank(1, 5), nil, nil, DefaultRules())
		for _, m := range s[0].Marks {
			if m.Filled && (math.Abs(float64(m.Between)-2) > 0.1 || math.Abs(float64(m.Faired)-2) > 0.1) {
				t.Errorf("%v: filled with %v, faired %v", y, m.Between, m.Faired)
			}
		}
	}
}
