package fair

import "math"

// How the neighbours of a value are weighed. Measured, see DefaultRules.
const (
	slack  = 1.0 // cubics that differ by so many times what rounding explains agree
	bend   = 0.6 // how much of what they differ by beyond that is doubt
	likely = 0.3 // of two such differences the lesser counts 1 - likely, the greater likely
)

// rowSays is what a row makes of one of its own values.
type rowSays struct {
	Opinion
	lo, hi float64 // where taken: a batten bending more and more would pass through any value between
	taken  bool    // the value is one that such a batten would pass through
}

// along is what a line's own values make of its k-th. The cubic through the two
// nearest on each side says the value; how far the cubics through the next four
// on either side differ from it says how much the line bends there beyond a
// cubic, or how little its own neighbours agree among themselves. That is the
// whole defence of the good neighbours of a bad value.
func (l line) along(k int, scale float64, least int) (says rowSays, ok bool) {
	l, k = l.piece(k)
	n := len(l.x) - 1
	if n+1 < least || n < 4 {
		return rowSays{}, false
	}
	from := l.about(k, 4)
	value, _, w := l.through(k, from, 4)
	doubt := growth(w[:4]) * scale
	says.Opinion = Opinion{value, math.Hypot(doubt, bend*l.disagree(k, from, value, w, scale))}
	says.lo, says.hi = l.graded(k, scale)
	// How far it is from what a batten would take, in what rounding explains.
	y := l.y[k]
	off := max(0, says.lo-y, y-says.hi) / doubt
	says.taken = says.lo <= says.hi && off <= 1
	if says.lo <= says.hi && off < math.Abs(says.score(y)) {
		says.Sd = max(says.Sd, math.Abs(y-value)/max(off, 1))
	}
	return says, true
}

// disagree is how far the cubics through the next four values on either side
// differ from the one about the k-th, beyond what rounding explains.
func (l line) disagree(k, from int, value float64, w [6]float64, scale float64) float64 {
	n := len(l.x) - 1
	var differ [2]float64
	count := 0
	for _, shift := range [2]int{-1, 1} {
		if from+shift < 0 || from+shift+4 > n {
			continue
		}
		other, _, v := l.through(k, from+shift, 4)
		// The two share three values: rounding grows by the difference of weights.
		sum := 0.0
		for i := -1; i <= 4; i++ {
			d := 0.0
			if i >= 0 && i < 4 {
				d = w[i]
			}
			if j := i - shift; j >= 0 && j < 4 {
				d -= v[j]
			}
			sum += d * d
		}
		differ[count] = max(0, math.Abs(other-value)-slack*math.Sqrt(sum)*scale)
		count++
	}
	if count < 2 {
		return differ[0] / bend // one comparison alone is doubted whole
	}
	return likely*max(differ[0], differ[1]) + (1-likely)*min(differ[0], differ[1])
}

// graded is the range of values for the k-th with which the bending of the line,
// its second differences, grows or lessens steadily through the place, as a
// batten's does towards an end, but for rounding; lo > hi where there is none.
// Of two ranges it is the one nearer to the value.
func (l line) graded(k int, scale float64) (lo, hi float64) {
	lo, hi = 1, 0
	nearest := math.Inf(1)
	for _, sign := range [2]float64{1, -1} {
		var r span
		r.lo, r.hi = math.Inf(-1), math.Inf(1)
		for m := max(0, k-3); m <= min(len(l.x)-4, k); m++ {
			a, b, grow := l.third(m, k)
			r.limit(sign*a, sign*b+2*grow*scale)
		}
		if k == 0 {
			l.endBend(&r, k, 1, 2, l.ends[0])
		}
		if n := len(l.x); k == n-1 {
			l.endBend(&r, k, n-2, n-3, l.ends[1])
		}
		if off := max(0, r.lo-l.y[k], l.y[k]-r.hi); r.lo <= r.hi && off < nearest {
			lo, hi, nearest = r.lo, r.hi, off
		}
	}
	return lo, hi
}

// endBend keeps the bend an end value makes to the side the line bends to, and
// to so many times the bend next to it.
func (l line) endBend(r *span, k, at, next int, most float64) {
	a, b := l.second(at, k)
	_, beside := l.second(next, k)
	sign := 1.0
	if beside < 0 {
		sign = -1
	}
	r.limit(sign*a, sign*b)
	if !math.IsInf(most, 1) {
		r.limit(-sign*a, most*sign*beside-sign*b)
	}
}

// span is a range of values.
type span struct{ lo, hi float64 }

// limit keeps the values y with a*y + b >= 0.
func (s *span) limit(a, b float64) {
	switch {
	case a > 0:
		s.lo = max(s.lo, -b/a)
	case a < 0:
		s.hi = min(s.hi, -b/a)
	case b < 0:
		s.lo, s.hi = 1, 0
	}
}

// second is the second divided difference about the m-th value as a line in the
// k-th: a times that value and b.
func (l line) second(m, k int) (a, b float64) {
	a, b, _ = l.divided(m-1, 3, k)
	return a, b
}

// third is the third divided difference from the m-th value on, likewise, and
// how rounding grows in it.
func (l line) third(m, k int) (a, b, grow float64) { return l.divided(m, 4, k) }

func (l line) divided(m, count, k int) (a, b, grow float64) {
	for i := m; i < m+count; i++ {
		w := 1.0
		for j := m; j < m+count; j++ {
			if j != i {
				w /= l.x[i] - l.x[j]
			}
		}
		grow += w * w
		if i == k {
			a = w
		} else {
			b += w * l.y[i]
		}
	}
	return a, b, math.Sqrt(grow)
}
