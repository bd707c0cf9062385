package hull

import (
	"math"

	"gonum.org/v1/gonum/mat"
)

// directions is the slope of a fair run of values at each of its places: that
// of the cubic spline with not-a-knot ends, drawn afresh between flats. Flat
// says of each space whether the run is straight there; where a curve leaves a
// flat its slope is the flat's.
func directions(t, v []float64, flat []bool) []float64 {
	m := make([]float64, len(t))
	for from := 0; from < len(t)-1; {
		if flat[from] {
			for ; from < len(t)-1 && flat[from]; from++ {
			}
			continue
		}
		to := from
		for to < len(t)-1 && !flat[to] {
			to++
		}
		// One more point of the flat on either side steadies the curve's end.
		a, b := from, to
		if from > 0 {
			a--
		}
		if to < len(t)-1 {
			b++
		}
		copy(m[a:b+1], slopes(t[a:b+1], v[a:b+1]))
		from = to
	}
	for i, straight := range flat {
		if straight {
			d := (v[i+1] - v[i]) / (t[i+1] - t[i])
			m[i], m[i+1] = d, d
		}
	}
	return m
}

// slopes is the slope at each place of the cubic spline with not-a-knot ends
// through the values: a straight line through two, a parabola through three.
// Places increase.
func slopes(t, v []float64) []float64 {
	n := len(t)
	m := make([]float64, n)
	switch n {
	case 2:
		m[0] = (v[1] - v[0]) / (t[1] - t[0])
		m[1] = m[0]
		return m
	case 3:
		d0, d1 := (v[1]-v[0])/(t[1]-t[0]), (v[2]-v[1])/(t[2]-t[1])
		bend := (d1 - d0) / (t[2] - t[0])
		m[0], m[1], m[2] = d0-bend*(t[1]-t[0]), d0+bend*(t[1]-t[0]), d1+bend*(t[2]-t[1])
		return m
	}
	if solved := notAKnot(t, v); solved != nil {
		return solved
	}
	return straight(t, v) // places so uneven that the equations cannot be solved
}

// notAKnot solves for the slopes at four places or more: at each place inside the
// second derivatives of its two cubics are alike, and at the first and last of
// these the third ones too (de Boor, A Practical Guide to Splines, chapter IV,
// from memory). The cost grows with the places; nil where they cannot be solved.
func notAKnot(t, v []float64) []float64 {
	n := len(t)
	h, d := make([]float64, n-1), make([]float64, n-1)
	for i := range h {
		h[i] = t[i+1] - t[i]
		d[i] = (v[i+1] - v[i]) / h[i]
	}
	below, on, above, b := make([]float64, n-1), make([]float64, n), make([]float64, n-1), make([]float64, n)
	for i := 1; i < n-1; i++ {
		below[i-1], on[i], above[i] = h[i], 2*(h[i-1]+h[i]), h[i-1]
		b[i] = 3 * (h[i]*d[i-1] + h[i-1]*d[i])
	}
	two := h[0] + h[1]
	on[0], above[0] = h[1], two
	b[0] = ((h[0]+2*two)*h[1]*d[0] + h[0]*h[0]*d[1]) / two
	two = h[n-2] + h[n-3]
	on[n-1], below[n-2] = h[n-3], two
	b[n-1] = (h[n-2]*h[n-2]*d[n-3] + (h[n-2]+2*two)*h[n-3]*d[n-2]) / two
	var m mat.VecDense
	if err := mat.NewTridiag(n, below, on, above).SolveVecTo(&m, false, mat.NewVecDense(n, b)); err != nil {
		return nil
	}
	return m.RawVector().Data
}

// straight is the slopes of the broken line through the values, halved between
// its two sides at each place.
func straight(t, v []float64) []float64 {
	m := make([]float64, len(t))
	for i := range m {
		a, b := max(0, i-1), min(len(t)-1, i+1)
		m[i] = (v[b] - v[a]) / (t[b] - t[a])
	}
	return m
}

// calm takes out of the slopes what would carry the run past its neighbours by
// more than a tolerance where these show no greatest or least: a spline through
// a sudden bend swings on the other side of it.
func calm(t, v, m []float64, tolerance float64) {
	for i := range len(t) - 1 {
		h := t[i+1] - t[i]
		if v[i] == v[i+1] || peaks(v, i) || rounds(t, v, m, i) {
			continue
		}
		if overshoot(v[i], v[i+1], m[i]*h, m[i+1]*h) <= tolerance {
			continue
		}
		d := (v[i+1] - v[i]) / h
		m[i], m[i+1] = within(m[i], d), within(m[i+1], d)
	}
}

// peaks says that a place at either end of the space is a greatest or least among
// its neighbours.
func peaks(v []float64, i int) bool {
	at := func(k int) bool {
		return k > 0 && k < len(v)-1 && (v[k]-v[k-1])*(v[k+1]-v[k]) < 0
	}
	return at(i) || at(i+1)
}

// rounds says that the run bends one way right through the space and at both its
// ends, as over a greatest breadth between two levels: what it passes beyond its
// neighbours by is no swing.
func rounds(t, v, m []float64, i int) bool {
	h := t[i+1] - t[i]
	d := (v[i+1] - v[i]) / h
	first, last := (6*d-4*m[i]-2*m[i+1])/h, (2*m[i]+4*m[i+1]-6*d)/h
	if first*last <= 0 {
		return false
	}
	for _, k := range []int{i, i + 1} {
		if k == 0 || k == len(v)-1 {
			continue
		}
		before, after := (v[k]-v[k-1])/(t[k]-t[k-1]), (v[k+1]-v[k])/(t[k+1]-t[k])
		if before == 0 || after == 0 || (after-before)*first <= 0 {
			return false
		}
	}
	return true
}

// within is a slope brought between nothing and three times that of its space,
// where a cubic neither rises past nor falls back (Fritsch and Carlson 1980,
// from memory).
func within(m, d float64) float64 {
	if m*d <= 0 {
		return 0
	}
	if math.Abs(m) > 3*math.Abs(d) {
		return 3 * d
	}
	return m
}

// overshoot is how far a cubic of unit width with end values a and b and end
// slopes p and q passes beyond them.
func overshoot(a, b, p, q float64) float64 {
	// The derivative is p + 2 c u + 3 e u^2.
	e := p + q - 2*(b-a)
	c := 3*(b-a) - 2*p - q
	most := 0.0
	look := func(u float64) {
		if u > 0 && u < 1 {
			y := a + u*(p+u*(c+u*e))
			most = max(most, y-max(a, b), min(a, b)-y)
		}
	}
	if math.Abs(e) < 1e-15 {
		if c != 0 {
			look(-p / (2 * c))
		}
		return most
	}
	if root := c*c - 3*e*p; root >= 0 {
		root = math.Sqrt(root)
		look((-c + root) / (3 * e))
		look((-c - root) / (3 * e))
	}
	return most
}
