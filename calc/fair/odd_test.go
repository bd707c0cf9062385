package fair

import (
	"math"
	"slices"
	"testing"
)

func whole(n int) []bool {
	all := make([]bool, n)
	for i := range all {
		all[i] = true
	}
	return all
}

// Third differences are nothing on any parabola, at any spacing: a parabola is its
// own faired run, and a reading withdrawn from it is given back.
func TestParabolaIsFair(t *testing.T) {
	x := []float64{0, 0.5, 1, 1.5, 2, 3, 4, 5.25, 6, 7}
	y := make([]float64, len(x))
	for i, v := range x {
		y[i] = 1 - 2*v + 0.3*v*v
	}
	r := Readings{X: x, Y: [][]float64{y}, Given: [][]bool{whole(len(x))}, Resolution: 0.25}
	for _, out := range [][]int{nil, {0}, {4, 5}, {9}} {
		spoilt := slices.Clone(y)
		for _, k := range out {
			spoilt[k] = 99
		}
		r.Y[0] = spoilt
		for i, v := range r.Faired(0, out...) {
			if math.Abs(v-y[i]) > 1e-9 {
				t.Errorf("%v withdrawn: %v at %v, want %v", out, v, x[i], y[i])
			}
		}
	}
}

// At even places the smoother is the one of plain third differences.
func TestFairedAtEvenPlaces(t *testing.T) {
	y := []float64{0, 0.5, 1, 1.75, 2.5, 3, 3.5, 4, 4.25, 4.5, 4.5}
	x := make([]float64, len(y))
	for i := range x {
		x[i] = 48 * float64(i)
	}
	want, _ := Studentised(y, whole(len(y)), 0.25)
	for i, v := range (Readings{X: x, Y: [][]float64{y}, Given: [][]bool{whole(len(y))}}).Faired(0) {
		if math.Abs(v-want[i]) > 1e-9 {
			t.Errorf("at %v: %v, want %v", x[i], v, want[i])
		}
	}
}

func TestOddReadings(t *testing.T) {
	row := func(add float64, change ...int) []float64 {
		y := []float64{-0.5, -0.25, 0.5, 1.25, 1.75, 2.5, 2.75, 3.25, 3.5, 3.5, 3.5, 3.25}
		for _, k := range change {
			y[k] += add
		}
		return y
	}
	test := func(name string, want [][2]int, rows [][]float64, beside [][]int) {
		t.Helper()
		r := Readings{Y: rows, Beside: beside, Resolution: 0.25}
		for i := range rows[0] {
			r.X = append(r.X, float64(i))
		}
		for range rows {
			r.Given = append(r.Given, whole(len(r.X)))
		}
		var got [][2]int
		for _, o := range r.OddReadings(4.5) {
			got = append(got, [2]int{o.Row, o.At})
		}
		if !slices.Equal(got, want) {
			t.Errorf("%s: %v, want %v", name, got, want)
		}
	}
	test("clean", nil, [][]float64{row(0)}, nil)
	test("one inside", [][2]int{{0, 5}}, [][]float64{row(2, 5)}, nil)
	test("two apart", [][2]int{{0, 2}, {0, 8}}, [][]float64{row(2, 2, 8)}, nil)
	three := [][]int{{1}, {0, 2}, {1}}
	test("at the end, seen from beside", [][2]int{{1, 0}}, [][]float64{row(0), row(1.5, 0), row(0)}, three)
	test("shared by all three", nil, [][]float64{row(2, 5), row(2, 5), row(2, 5)}, three)
	test("too few", nil, [][]float64{{0, 9, 0, 0, 0}}, nil)
}
