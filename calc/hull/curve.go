package hull

import (
	"math"
	"sort"
)

// curve is a fair line through points: cubics over the length of the chords,
// smooth at every point but the corners. In and out are its directions arriving
// at and leaving each point; at a corner they differ.
type curve struct {
	t       []float64 // length of the chords up to each point
	p       []point
	in, out []point
	s       []float64 // true length up to each point
}

// newCurve draws the curve through two or more points, no two following ones
// alike. Corner marks the points at which it may turn sharply; nil for none.
// Tolerance is how far it may overshoot its neighbours where they show no
// greatest or least.
func newCurve(p []point, corner []bool, tolerance float64) *curve {
	n := len(p)
	c := &curve{t: make([]float64, n), p: p, in: make([]point, n), out: make([]point, n), s: make([]float64, n)}
	for i := 1; i < n; i++ {
		c.t[i] = c.t[i-1] + p[i].from(p[i-1])
	}
	for from := 0; from < n-1; {
		to := from + 1
		for to < n-1 && (corner == nil || !corner[to]) {
			to++
		}
		c.draw(from, to, tolerance)
		from = to
	}
	c.in[0], c.out[n-1] = c.out[0], c.in[n-1]
	for i := 1; i < n; i++ {
		c.s[i] = c.s[i-1] + c.lengthIn(i-1, c.t[i-1], c.t[i])
	}
	return c
}

// draw finds the directions at the points from one corner to the next.
func (c *curve) draw(from, to int, tolerance float64) {
	d := make([]point, to-from+1)
	v := make([]float64, to-from+1)
	t := c.t[from : to+1]
	for k, set := range []func(*point, float64){
		func(p *point, m float64) { p.x = m },
		func(p *point, m float64) { p.y = m },
		func(p *point, m float64) { p.z = m },
	} {
		for i := range v {
			v[i] = c.p[from+i].coordinate(k)
		}
		m := directions(t, v, c.flats(from, to, tolerance))
		calm(t, v, m, tolerance)
		for i := range d {
			set(&d[i], m[i])
		}
	}
	for i := range d {
		if from+i > from {
			c.in[from+i] = d[i]
		}
		if from+i < to {
			c.out[from+i] = d[i]
		}
	}
}

// flats says of each space between the points from one to another whether the
// curve is straight there: at the same distance out or at the same height, as
// along a wall side, a flat floor or a parallel body.
func (c *curve) flats(from, to int, tolerance float64) []bool {
	y, z := make([]float64, to-from+1), make([]float64, to-from+1)
	for i := range y {
		y[i], z[i] = c.p[from+i].y, c.p[from+i].z
	}
	out, up := level(y, tolerance), level(z, tolerance)
	flat := make([]bool, to-from)
	for i := from; i < to-1; i++ {
		a, b, e := c.p[i], c.p[i+1], c.p[i+2]
		straight := b.minus(a).cross(e.minus(b)).length() <= 1e-9*b.from(a)*e.from(b)
		k := i - from
		if straight && (out[k] && out[k+1] || up[k] && up[k+1]) {
			flat[k], flat[k+1] = true, true
		}
	}
	return flat
}

// level says of each space of a run of values whether it is level: four values
// or more alike, or three from which the next goes off by more than rounding, a
// few steps, would make it. Three alike may be the top of a round.
func level(v []float64, step float64) []bool {
	flat := make([]bool, max(0, len(v)-1))
	for from := 0; from < len(v); {
		to := from
		for to+1 < len(v) && v[to+1] == v[from] {
			to++
		}
		sudden := from > 0 && math.Abs(v[from-1]-v[from]) > 4*step || to+1 < len(v) && math.Abs(v[to+1]-v[to]) > 4*step
		if to-from >= 3 || to-from == 2 && (sudden || len(v) == 3) {
			for i := from; i < to; i++ {
				flat[i] = true
			}
		}
		from = to + 1
	}
	return flat
}

// span is the space between two points in which t lies.
func (c *curve) span(t float64) int {
	i := sort.SearchFloat64s(c.t, t) - 1
	return max(0, min(len(c.t)-2, i))
}

// at is the place on the curve at a length of chords t.
func (c *curve) at(t float64) point {
	i := c.span(t)
	h := c.t[i+1] - c.t[i]
	u := (t - c.t[i]) / h
	w := 1 - u
	return c.p[i].times(w * w * (1 + 2*u)).plus(c.out[i].times(h * u * w * w)).
		plus(c.p[i+1].times(u * u * (3 - 2*u))).minus(c.in[i+1].times(h * u * u * w))
}

// along is the derivative of the curve by t; its length is near one.
func (c *curve) along(t float64) point { return c.alongIn(c.span(t), t) }

func (c *curve) alongIn(i int, t float64) point {
	h := c.t[i+1] - c.t[i]
	u := (t - c.t[i]) / h
	w := 1 - u
	return c.p[i+1].minus(c.p[i]).times(6 * u * w / h).
		plus(c.out[i].times(w * (1 - 3*u))).plus(c.in[i+1].times(u * (3*u - 2)))
}

// The five-point rule of Gauss and Legendre on 0 to 1 (Abramowitz and Stegun,
// Handbook of Mathematical Functions, table 25.4, from memory).
var (
	gaussAt     = [5]float64{0.04691007703066800, 0.23076534494715845, 0.5, 0.76923465505284155, 0.95308992296933200}
	gaussWeight = [5]float64{0.11846344252809454, 0.23931433524968324, 0.28444444444444444, 0.23931433524968324, 0.11846344252809454}
)

// lengthIn is the true length between two places in one space.
func (c *curve) lengthIn(i int, from, to float64) float64 {
	sum := 0.0
	for k, u := range gaussAt {
		sum += gaussWeight[k] * c.alongIn(i, from+u*(to-from)).length()
	}
	return sum * (to - from)
}

// length is the whole true length.
func (c *curve) length() float64 { return c.s[len(c.s)-1] }

// lengthTo is the true length from the first point up to t.
func (c *curve) lengthTo(t float64) float64 {
	i := c.span(t)
	return c.s[i] + c.lengthIn(i, c.t[i], t)
}

// place is the t at a true length from the first point.
func (c *curve) place(s float64) float64 {
	i := max(0, min(len(c.s)-2, sort.SearchFloat64s(c.s, s)-1))
	low, high := c.t[i], c.t[i+1]
	if s <= c.s[i] {
		return low
	}
	if s >= c.s[i+1] {
		return high
	}
	t := low + (high-low)*(s-c.s[i])/(c.s[i+1]-c.s[i])
	for range 20 {
		short := s - c.s[i] - c.lengthIn(i, c.t[i], t)
		if math.Abs(short) < 1e-9 {
			break
		}
		if short > 0 {
			low = t
		} else {
			high = t
		}
		t += short / c.alongIn(i, t).length()
		if t <= low || t >= high {
			t = (low + high) / 2
		}
	}
	return t
}

// crossings is every t at which a measure of place and curve comes to nothing,
// in order. The measure must be smooth; each space between points is looked
// through in eight parts.
func (c *curve) crossings(f func(point) float64) []float64 {
	var all []float64
	for i := range len(c.t) - 1 {
		c.crossingsIn(i, f, func(t float64) { all = append(all, t) })
	}
	return all
}

// crossingsIn is the crossings in one space, its end among them and its start only
// at the start of the curve.
func (c *curve) crossingsIn(i int, f func(point) float64, at func(t float64)) {
	const parts = 8
	a, fa := c.t[i], f(c.p[i])
	if fa == 0 && i == 0 {
		at(a)
	}
	for k := 1; k <= parts; k++ {
		b := c.t[i] + (c.t[i+1]-c.t[i])*float64(k)/parts
		p := c.p[i+1]
		if k < parts {
			p = c.at(b)
		}
		fb := f(p)
		switch {
		case fb == 0:
			at(b)
		case fa*fb < 0:
			at(c.root(f, a, b, fa, fb))
		}
		a, fa = b, fb
	}
}

// root closes in on a crossing between two places on either side of it, by the
// Illinois form of the rule of false position.
func (c *curve) root(f func(point) float64, a, b, fa, fb float64) float64 {
	side := 0
	t := a
	for range 60 {
		t = (fa*b - fb*a) / (fa - fb)
		ft := f(c.at(t))
		if ft == 0 || math.Abs(b-a) < 1e-11*(1+math.Abs(b)) {
			break
		}
		if ft*fb > 0 {
			b, fb = t, ft
			if side == -1 {
				fa /= 2
			}
			side = -1
		} else {
			a, fa = t, ft
			if side == 1 {
				fb /= 2
			}
			side = 1
		}
		if math.Abs(ft) < 1e-11 {
			break
		}
	}
	return t
}
