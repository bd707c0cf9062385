package fair

import (
	"math"
	"slices"
)

// line is the given values of a row.
type line struct {
	at     []int // place of each in the row
	x, y   []float64
	corner []int
	ends   [2]float64
}

// usual is how many times the bend next to it the end of a row may bend it. On
// the fair hulls measured no waterline went beyond 6.
const usual = 8

func newLine(row Row) line {
	if len(row.X) != len(row.Y) || len(row.X) != len(row.Given) {
		panic("fair: a row's slices differ in length")
	}
	n := len(row.X)
	l := line{make([]int, 0, n), make([]float64, 0, n), make([]float64, 0, n), row.Corner, row.Ends}
	for i, ok := range row.Given {
		if ok {
			l.at, l.x, l.y = append(l.at, i), append(l.x, row.X[i]), append(l.y, row.Y[i])
		}
	}
	for i := range l.ends {
		if l.ends[i] == 0 {
			l.ends[i] = usual
		}
	}
	return l
}

// without is the line with its k-th value withdrawn.
func (l line) without(k int) line {
	l.at = slices.Delete(slices.Clone(l.at), k, k+1)
	l.x = slices.Delete(slices.Clone(l.x), k, k+1)
	l.y = slices.Delete(slices.Clone(l.y), k, k+1)
	return l
}

// index is which of the line's values stands at a place of the row, -1 for none.
func (l line) index(at int) int {
	if k, ok := slices.BinarySearch(l.at, at); ok {
		return k
	}
	return -1
}

// piece is the piece of the line between corners in which its k-th value lies,
// and which value of the piece it is. At a corner it may bend away at will.
func (l line) piece(k int) (line, int) {
	if len(l.corner) == 0 {
		return l, k
	}
	from, to := 0, len(l.at)
	for _, c := range l.corner {
		i, _ := slices.BinarySearch(l.at, c)
		switch {
		case i == len(l.at):
		case i <= k:
			from = max(from, i)
		default:
			to = min(to, i)
		}
	}
	p := line{l.at[from:to], l.x[from:to], l.y[from:to], nil, l.ends}
	if from > 0 {
		p.ends[0] = math.Inf(1)
	}
	if to < len(l.at) {
		p.ends[1] = math.Inf(1)
	}
	return p, k - from
}

// Weights leaves in w those of the polynomial through the places x at a place,
// one for each of x, which must all differ (Lagrange's form).
func Weights(x []float64, at float64, w []float64) {
	for i := range x {
		v := 1.0
		for j := range x {
			if j != i {
				v *= (at - x[j]) / (x[i] - x[j])
			}
		}
		w[i] = v
	}
}

// through is the polynomial through so many values about the k-th, which takes
// no part itself, the first of them the from-th of the others; also its places
// and weights.
func (l line) through(k, from, count int) (y float64, x, w [6]float64) {
	var v [6]float64
	for i := range count {
		p := from + i
		if p >= k {
			p++
		}
		x[i], v[i] = l.x[p], l.y[p]
	}
	Weights(x[:count], l.x[k], w[:count])
	for i := range count {
		y += w[i] * v[i]
	}
	return y, x, w
}

// about is the first of so many values nearest about the k-th, on both sides as
// far as there are.
func (l line) about(k, count int) int {
	return max(0, min(k-count/2, len(l.x)-1-count))
}

// leaveOut is what the polynomial through so many values about the k-th says of
// it, fewer where there are not so many, and how far a rounding of all of them
// grows in the difference.
func (l line) leaveOut(k, count int) (y, gauge float64) {
	count = min(count, len(l.x)-1)
	y, _, w := l.through(k, l.about(k, count), count)
	return y, growth(w[:count])
}

// growth is how far a rounding of a value and of those it is judged by grows in
// their difference.
func growth(w []float64) float64 {
	sum := 1.0
	for _, v := range w {
		sum += v * v
	}
	return math.Sqrt(sum)
}
