package fair

import "math"

// Opinion is what is made of a value without looking at it, and how far that may
// be out, in steps.
type Opinion struct{ Value, Sd float64 }

// score is how far a value is off an opinion of it, in what it may be out.
func (o Opinion) score(y float64) float64 { return (y - o.Value) / o.Sd }

// together is two independent opinions as one, and whether they agree.
func together(a, b Opinion) (Opinion, bool) {
	wa, wb := 1/(a.Sd*a.Sd), 1/(b.Sd*b.Sd)
	both := Opinion{(a.Value*wa + b.Value*wb) / (wa + wb), 1 / math.Sqrt(wa+wb)}
	return both, math.Abs(a.Value-b.Value) <= 3*math.Hypot(a.Sd, b.Sd)
}

// weights are those of the polynomial through the places x at the place at.
func weights(x []float64, at float64, w []float64) {
	for i := range x {
		w[i] = 1
		for j := range x {
			if j != i {
				w[i] *= (at - x[j]) / (x[i] - x[j])
			}
		}
	}
}

// along is what a line's own values make of its k-th. The cubic through the two
// nearest on each side says the value; how far the cubics through the next sets
// of four differ from it says how much the line bends there beyond a cubic, or
// how little its own neighbours agree among themselves. That is the whole
// defence of the good neighbours of a bad value: their neighbours disagree.
func (l line) along(k int, scale float64, r Rules) (Opinion, bool) {
	l, k = l.piece(k)
	n := len(l.x) - 1 // others
	if n < 4 {
		return Opinion{}, false
	}
	from := max(0, min(k-2, n-4))
	var x, y, w, v [4]float64
	take := func(from int) {
		for i := range 4 {
			p := from + i
			if p >= k {
				p++
			}
			x[i], y[i] = l.x[p], l.y[p]
		}
	}
	take(from)
	weights(x[:], l.x[k], w[:])
	value, sum := 0.0, 1.0
	for i := range 4 {
		value += w[i] * y[i]
		sum += w[i] * w[i]
	}
	bend, any := math.Inf(1), false
	compare := func(shift int) {
		if from+shift < 0 || from+shift+4 > n {
			return
		}
		take(from + shift)
		weights(x[:], l.x[k], v[:])
		// The difference of the two cubics and how rounding grows in it.
		other, grow := 0.0, 0.0
		for i := range 4 {
			other += v[i] * y[i]
			d := v[i]
			if j := i + shift; j >= 0 && j < 4 {
				d -= w[j]
			}
			grow += d * d
		}
		for j := range 4 {
			if i := j - shift; i < 0 || i >= 4 {
				grow += w[j] * w[j]
			}
		}
		t := max(0, math.Abs(other-value)-r.Slack*math.Sqrt(grow)*scale)
		if !any {
			bend = t
		} else {
			bend = KT*max(bend, t) + (1-KT)*min(bend, t)
		}
		any = true
	}
	compare(-1)
	compare(1)
	if !any {
		bend = 0
	}
	o := Opinion{value, math.Hypot(math.Sqrt(sum)*scale, r.Bend*bend)}
	// A batten that only bends more and more through the place takes the value.
	if off := l.graded(k, scale) / (math.Sqrt(sum) * scale); off < math.Abs(o.score(l.y[k])) {
		o.Sd = max(o.Sd, math.Abs(l.y[k]-value)/max(off, 1))
	}
	return o, true
}

// graded is how far the k-th value must move for the bending of the line, its
// second differences, to grow or lessen steadily through the place; 0 where it
// does so as it is, but for rounding.
func (l line) graded(k int, scale float64) float64 {
	n := len(l.x)
	best := math.Inf(1)
	for _, sign := range []float64{1, -1} {
		lo, hi := math.Inf(-1), math.Inf(1)
		limit := func(a, b float64) { // a*y + b >= 0
			switch {
			case a > 0:
				lo = max(lo, -b/a)
			case a < 0:
				hi = min(hi, -b/a)
			case b < 0:
				lo, hi = 1, 0
			}
		}
		for m := max(0, k-3); m <= min(n-4, k+0); m++ {
			a, b, grow := l.third(m, k)
			limit(sign*a, sign*b+2*grow*scale)
		}
		// At an end it may not bend more than so many times its last bend.
		end := func(m, next int) {
			a, b := l.second(m, k)
			_, d := l.second(next, k)
			most := l.most * math.Abs(d)
			if d > 0 {
				limit(-a, most-b)
				limit(a, b)
			} else {
				limit(a, b+most)
				limit(-a, -b)
			}
		}
		if k == 0 && n > 3 && !l.loose[0] {
			end(1, 2)
		}
		if k == n-1 && n > 3 && !l.loose[1] {
			end(n-2, n-3)
		}
		if lo > hi {
			continue
		}
		y := l.y[k]
		best = min(best, max(0, lo-y, y-hi))
	}
	return best
}

// third is the third divided difference from the m-th place on as a line in the
// k-th value, and how rounding grows in it.
func (l line) third(m, k int) (a, b, grow float64) {
	for i := m; i < m+4; i++ {
		w := 1.0
		for j := m; j < m+4; j++ {
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

// second is the second divided difference about the m-th place as a line in the
// k-th value: a times that value and b.
func (l line) second(m, k int) (a, b float64) {
	for i := m - 1; i <= m+1; i++ {
		w := 1.0
		for j := m - 1; j <= m+1; j++ {
			if j != i {
				w /= l.x[i] - l.x[j]
			}
		}
		if i == k {
			a = w
		} else {
			b += w * l.y[i]
		}
	}
	return a, b
}

var KT = 1.0
