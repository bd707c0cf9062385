package bevel

import (
	"math"
	"strconv"
	"strings"

	"strakebook/calc/fair"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// judged is a table's bevels off square and what is odd among them.
type judged struct {
	readings fair.Readings
	odd      []map[int]fair.Odd // by seam and station
}

// judge looks for the readings of a table that lie off the run of their seam.
func (b Readings) judge(r Rules) judged {
	j := b.believed(r)
	j.readings.Beside = b.beside(j.readings)
	for _, o := range j.readings.OddReadings(r.Alarm) {
		j.odd[o.Row][o.At] = o
	}
	return j
}

// believed is a table's bevels off square with none of them held to be odd.
func (b Readings) believed(r Rules) judged {
	j := judged{readings: fair.Readings{X: b.spaced(), Resolution: float64(b.Resolution)}}
	for _, s := range b.Seams {
		y, given := b.values(s, r)
		j.readings.Y, j.readings.Given = append(j.readings.Y, y), append(j.readings.Given, given)
		j.odd = append(j.odd, map[int]fair.Odd{})
	}
	j.readings.Beside = make([][]int, len(b.Seams))
	return j
}

// faired is a seam as faired through its readings, the odd ones withdrawn.
func (j judged) faired(seam int) []float64 {
	var odd []int
	for k := range j.readings.X {
		if _, ok := j.odd[seam][k]; ok {
			odd = append(odd, k)
		}
	}
	return j.readings.Faired(seam, odd...)
}

// beside is, of each seam, those that should run much like it and do: the seams of
// the next strakes on its side, and its own on the other side.
func (b Readings) beside(read fair.Readings) [][]int {
	all := make([][]int, len(b.Seams))
	for i, s := range b.Seams {
		for k, o := range b.Seams {
			if k != i && o.Skin == s.Skin && o.Edge == s.Edge && (next(s, o, k-i) || across(s, o)) && alike(read, i, k) {
				all[i] = append(all[i], k)
			}
		}
	}
	return all
}

// unlike is how far two seams may lie apart and still be said to run alike, in
// degrees: our choice.
const unlike = 1

// alike says that two seams lie near each other at most stations.
func alike(read fair.Readings, i, k int) bool {
	near, n := 0, 0
	for c := range read.X {
		if read.Given[i][c] && read.Given[k][c] {
			n++
			if math.Abs(read.Y[i][c]-read.Y[k][c]) <= unlike {
				near++
			}
		}
	}
	return 2*near > n
}

// across says that two seams are one strake's on the two sides.
func across(s, o Seam) bool {
	return strings.EqualFold(s.Strake, o.Strake) && s.Side != o.Side && s.Side != hull.BothSides && o.Side != hull.BothSides
}

// next says that two seams of one side are of strakes that hang together: by
// their numbers, or next to each other in the table where they have none.
func next(s, o Seam, apart int) bool {
	if s.Side != o.Side {
		return false
	}
	a, errA := strconv.Atoi(s.Strake)
	b, errB := strconv.Atoi(o.Strake)
	if errA != nil || errB != nil {
		return apart == 1 || apart == -1
	}
	return a-b == 1 || b-a == 1
}

// likely is what an odd reading may have been meant to read, the likeliest
// first, and what the run of its seam says there.
func (b Readings) likely(s Seam, o fair.Odd, y []float64, given []bool, r Rules) string {
	tolerance := max(2*float64(b.Resolution), math.Abs(y[o.At]-o.Faired)/math.Abs(o.T)*3)
	fits := func(v float64) bool { return math.Abs(v-o.Faired) <= tolerance }
	var all []string
	add := func(v float64, why string) {
		if fits(v) {
			all = append(all, b.written(v, r)+" ("+why+")")
		}
	}
	v := y[o.At]
	add(-v, "the other hand")
	for _, slip := range []float64{v / 10, v * 10} { // as the gauge could have read it
		if steps := slip / float64(b.step()); v != 0 && math.Abs(steps-math.Round(steps)) < 1e-6 {
			add(slip, "the decimal point")
		}
	}
	for _, k := range []int{o.At - 1, o.At + 1} {
		if k >= 0 && k < len(y) && given[k] && math.Abs(y[k]-v) > tolerance && b.swapped(y, given, o.At, k) {
			add(y[k], "changed places with "+b.called(k))
		}
	}
	return strings.Join(append(all, "about "+b.written(o.Faired, r)), "; ")
}

// swapped says that a row is smoother with two of its readings exchanged: less
// than half as rough.
func (b Readings) swapped(y []float64, given []bool, i, k int) bool {
	turned := append([]float64{}, y...)
	turned[i], turned[k] = turned[k], turned[i]
	return rough(turned, given) < rough(y, given)/2
}

// rough is the sum of the squares of a row's second differences.
func rough(y []float64, given []bool) float64 {
	sum := 0.0
	for k := 1; k+1 < len(y); k++ {
		if given[k-1] && given[k] && given[k+1] {
			d := y[k-1] - 2*y[k] + y[k+1]
			sum += d * d
		}
	}
	return sum
}

// step is the smallest step a table is read in, where none was found.
func (b Readings) step() measure.Angle {
	if b.Resolution <= 0 {
		return 0.25
	}
	return b.Resolution
}
