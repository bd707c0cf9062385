package fair

import (
	"math"
	"testing"
)

// parabola is a fair row of n places rounded to whole steps, like a waterline.
func parabola(n int) Row {
	row := Row{X: make([]float64, n), Y: make([]float64, n), Given: make([]bool, n)}
	for i := range n {
		x := 2*float64(i)/float64(n-1) - 1
		row.X[i], row.Y[i], row.Given[i] = float64(i)*24, math.Round(200*(1-x*x)), true
	}
	return row
}

func TestJudgeNamesTheBadValue(t *testing.T) {
	for at := 2; at < 13; at++ {
		rows := []Row{parabola(15), parabola(15), parabola(15)}
		rows[1].Y[at] += 12
		j := Judge(rows, DefaultRules(), nil)
		if len(j.Flags) != 1 || j.Flags[0].Row != 1 || j.Flags[0].At != at || len(j.Regions) != 0 {
			t.Errorf("12 steps off at %d: %+v", at, j)
			continue
		}
		if f := j.Flags[0]; math.Abs(f.Says.Value-parabola(15).Y[at]) > 2 {
			t.Errorf("faired %v, was %v", f.Says.Value, parabola(15).Y[at])
		}
	}
	if j := Judge([]Row{parabola(15), parabola(9)}, DefaultRules(), nil); len(j.Flags)+len(j.Regions) != 0 {
		t.Errorf("fair rows gave %+v", j)
	}
}

// Plain algebra: at even spacing the cubic through the two neighbours each side
// has weights -1/6, 2/3, 2/3, -1/6, so rounding grows sqrt(1+34/36) = 1.394;
// 2.092 next to the end, 8.367 at the end.
func TestGrowthOfRounding(t *testing.T) {
	_, g, _ := Departures(parabola(9))
	for at, want := range map[int]float64{0: 8.367, 1: 2.092, 4: 1.394, 7: 2.092, 8: 8.367} {
		if math.Abs(g[at]-want) > 0.001 {
			t.Errorf("at %d rounding grows %.4f, want %v", at, g[at], want)
		}
	}
}

func TestCornerIsARegion(t *testing.T) {
	row := parabola(15)
	for i := range row.Y {
		row.Y[i] = 100 + 40*max(0, float64(i)-7.4)
	}
	if j := Judge([]Row{row}, DefaultRules(), nil); len(j.Flags) != 0 || len(j.Regions) == 0 {
		t.Errorf("a corner gave %+v", j)
	}
}

func TestStudentised(t *testing.T) {
	y := make([]float64, 16)
	given := make([]bool, 16)
	for i := range y {
		y[i], given[i] = -2+0.35*float64(i), true
	}
	if _, tt := Studentised(y, given, 0.25); peakAbs(tt) > 1e-6 {
		t.Errorf("a straight progression through zero scores %v", peakAbs(tt))
	}
	y[7] += 2
	_, tt := Studentised(y, given, 0.25)
	if math.Abs(tt[7]) < 3.5 || peakAbs(tt) != math.Abs(tt[7]) {
		t.Errorf("2 degrees off scores %v of %v", tt[7], tt)
	}
	given[7] = false
	if faired, _ := Studentised(y, given, 0.25); math.Abs(faired[7]-(-2+0.35*7)) > 1e-9 {
		t.Errorf("a gap in a straight run is faired to %v", faired[7])
	}
}

func peakAbs(v []float64) float64 {
	most := 0.0
	for _, x := range v {
		most = max(most, math.Abs(x))
	}
	return most
}

func TestValleys(t *testing.T) {
	row := Row{X: []float64{0, 1, 2, 3, 4}, Y: []float64{1, 5, 3, 6, 2}, Given: []bool{true, true, true, true, true}}
	if v := Valleys(row, 0); len(v) != 1 || v[0].At != 2 || v[0].Depth != 2 {
		t.Errorf("got %+v", v)
	}
	if v := Valleys(parabola(9), 0); len(v) != 0 {
		t.Errorf("a fair row gave %+v", v)
	}
}
