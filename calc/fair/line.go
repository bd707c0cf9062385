package fair

import (
	"math"
	"slices"
)

// line is the given values of a row.
type line struct {
	at     []int // place of each in the row
	x, y   []float64
	corner []int // places of the row before which it has a corner
	loose  [2]bool
	most   float64
}

func newLine(row Row) line {
	if len(row.X) != len(row.Y) || len(row.X) != len(row.Given) {
		panic("fair: a row's slices differ in length")
	}
	l := line{corner: row.Corner, loose: row.Loose, most: 8}
	for i, ok := range row.Given {
		if ok {
			l.at, l.x, l.y = append(l.at, i), append(l.x, row.X[i]), append(l.y, row.Y[i])
		}
	}
	return l
}

// without is the line with its k-th value withdrawn.
func (l line) without(k int) line {
	w := line{make([]int, 0, len(l.at)), make([]float64, 0, len(l.at)), make([]float64, 0, len(l.at)), l.corner, l.loose, l.most}
	for i := range l.at {
		if i != k {
			w.at, w.x, w.y = append(w.at, l.at[i]), append(w.x, l.x[i]), append(w.y, l.y[i])
		}
	}
	return w
}

// place is how many of the line's values lie before x.
func (l line) place(x float64) int {
	n := 0
	for n < len(l.x) && l.x[n] < x {
		n++
	}
	return n
}

// fit is the cubic through the two nearest values on each side of x, of which
// n lie before it (one and three, or none and four, at an end), and how far a
// rounding of all five grows in the difference.
func (l line) fit(x float64, n int) (y, gauge float64) {
	most := min(4, len(l.x))
	from := max(0, min(n-2, len(l.x)-most))
	sum := 1.0
	for i := from; i < from+most; i++ {
		w := 1.0
		for j := from; j < from+most; j++ {
			if j != i {
				w *= (x - l.x[j]) / (l.x[i] - l.x[j])
			}
		}
		y += w * l.y[i]
		sum += w * w
	}
	return y, math.Sqrt(sum)
}

// residual is how far the k-th value lies from the cubic through its
// neighbours, freed of how much that cubic magnifies rounding.
func (l line) residual(k int) float64 {
	y, gauge := l.leaveOut(k)
	return (l.y[k] - y) / gauge
}

// leaveOut is the fit at the k-th value through its neighbours alone.
func (l line) leaveOut(k int) (y, gauge float64) {
	var near line
	left := max(0, min(k-2, len(l.x)-5))
	for i := left; i < min(len(l.x), left+5); i++ {
		if i != k {
			near.x, near.y = append(near.x, l.x[i]), append(near.y, l.y[i])
		}
	}
	return near.fit(l.x[k], near.place(l.x[k]))
}

// scores is every residual in scales.
func (l line) scores(scale float64) []float64 {
	z := make([]float64, len(l.at))
	for k := range z {
		z[k] = l.residual(k) / scale
	}
	return z
}

// Departures is, for each place of a row, how far its value lies from the cubic
// through its neighbours and the growth of rounding in that; ok is false where
// there is no value or fewer than five.
func Departures(row Row) (off, gauge []float64, ok []bool) {
	l := newLine(row)
	off, gauge, ok = make([]float64, len(row.X)), make([]float64, len(row.X)), make([]bool, len(row.X))
	if len(l.at) < 5 {
		return off, gauge, ok
	}
	for k, at := range l.at {
		y, g := l.leaveOut(k)
		off[at], gauge[at], ok[at] = l.y[k]-y, g, true
	}
	return off, gauge, ok
}

// Fill is what the cubic through the nearest given values says at a place of
// the row; ok is false with fewer than four given, or none on one side.
func Fill(row Row, at int) (y float64, ok bool) {
	l := newLine(row)
	n := l.place(row.X[at])
	if len(l.x) < 4 || n == 0 || n == len(l.x) {
		return 0, false
	}
	for k, have := range l.at {
		if have == at {
			l = l.without(k)
			break
		}
	}
	if len(l.x) < 4 {
		return 0, false
	}
	y, _ = l.fit(row.X[at], l.place(row.X[at]))
	return y, true
}

// piece is the piece of the line between corners in which its k-th value lies,
// and which value of the piece it is.
func (l line) piece(k int) (line, int) {
	from, to := 0, len(l.at)
	for _, c := range l.corner {
		i := slices.IndexFunc(l.at, func(at int) bool { return at >= c })
		switch {
		case i < 0:
		case i <= k:
			from = max(from, i)
		default:
			to = min(to, i)
		}
	}
	loose := [2]bool{l.loose[0] || from > 0, l.loose[1] || to < len(l.at)}
	return line{l.at[from:to], l.x[from:to], l.y[from:to], nil, loose, l.most}, k - from
}

// through is the polynomial through so many values nearest about the k-th, which
// takes no part, and the growth of rounding in the difference.
func (l line) through(k, count int) (y, gauge float64) {
	piece, k := l.piece(k)
	l = piece
	n := len(l.x) - 1
	count = min(count, n)
	from := max(0, min(k-count/2, n-count))
	sum := 1.0
	for i := from; i < from+count; i++ {
		w := 1.0
		for j := from; j < from+count; j++ {
			if j != i {
				w *= (l.x[k] - l.other(k, j)) / (l.other(k, i) - l.other(k, j))
			}
		}
		if i >= k {
			y += w * l.y[i+1]
		} else {
			y += w * l.y[i]
		}
		sum += w * w
	}
	return y, math.Sqrt(sum)
}

// other is where the i-th value lies when the k-th is not counted.
func (l line) other(k, i int) float64 {
	if i >= k {
		i++
	}
	return l.x[i]
}
