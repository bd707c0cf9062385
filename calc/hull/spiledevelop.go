package hull

import (
	"cmp"
	"math"
	"slices"
)

// flat is a place on a developed strake, in inches: x aft, y towards the sheer.
type flat struct{ x, y float64 }

func (p flat) minus(q flat) flat     { return flat{p.x - q.x, p.y - q.y} }
func (p flat) plus(q flat) flat      { return flat{p.x + q.x, p.y + q.y} }
func (p flat) times(k float64) flat  { return flat{p.x * k, p.y * k} }
func (p flat) length() float64       { return math.Hypot(p.x, p.y) }
func (p flat) across(q flat) float64 { return p.x*q.y - p.y*q.x }

// rung is a pair of places, one on each edge of a strake.
type rung struct {
	upper, lower point
	s            [2]float64 // true length along the upper and the lower edge
	swell        float64    // the girth between them over the straight distance, 1 or a little more
}

// rungs pairs the places of two edges: at the stations both cross, and at even
// parts between; before the first such station and after the last, each edge by
// equal parts of what is left of it.
func rungs(upper, lower *curve, parts int) []rung {
	type mark struct{ t, u float64 }
	marks := []mark{{0, 0}}
	j := 1
	for i := 1; i < len(upper.p)-1; i++ {
		x := upper.p[i].x
		for j < len(lower.p)-1 && lower.p[j].x < x-1e-6 {
			j++
		}
		if j < len(lower.p)-1 && lower.p[j].x < x+1e-6 {
			marks = append(marks, mark{upper.t[i], lower.t[j]})
		}
	}
	marks = append(marks, mark{upper.t[len(upper.t)-1], lower.t[len(lower.t)-1]})
	var all []rung
	for i := 1; i < len(marks); i++ {
		a, b := marks[i-1], marks[i]
		su, sl := upper.lengthTo(a.t), lower.lengthTo(a.u)
		du, dl := upper.lengthTo(b.t)-su, lower.lengthTo(b.u)-sl
		for k := range parts + 1 {
			if k == 0 && i > 1 {
				continue
			}
			part := float64(k) / float64(parts)
			r := rung{s: [2]float64{su + part*du, sl + part*dl}, swell: 1}
			r.upper, r.lower = upper.at(upper.place(r.s[0])), lower.at(lower.place(r.s[1]))
			all = append(all, r)
		}
	}
	return all
}

// develop lays the strip between two edges out flat, rung by rung, each the two
// triangles between it and the one before, with the lengths along both edges and
// across kept. The first rung stands square up from the origin.
func develop(rungs []rung) (upper, lower []flat) {
	wide := rungs[0].upper.from(rungs[0].lower) * rungs[0].swell
	u, l := flat{0, wide}, flat{0, 0}
	upper, lower = []flat{u}, []flat{l}
	for i := 1; i < len(rungs); i++ {
		a, b := rungs[i-1], rungs[i]
		across := b.upper.from(b.lower)
		before := a.upper.from(a.lower)
		whole := across * b.swell
		// The girth is longer than the straight distance, and so is a diagonal by as
		// much of it as runs across. A twisted strip comes out a little different by
		// the one diagonal and by the other: the mean is the same from both ends.
		du, dl := b.s[0]-a.s[0], b.s[1]-a.s[1]
		up := math.Sqrt(math.Max(0, square2(b.upper.from(a.lower))+square2(whole)-square2(across)))
		down := math.Sqrt(math.Max(0, square2(b.lower.from(a.upper))+square2(before*a.swell)-square2(before)))
		u1 := apex(l, u, up, du)
		l1 := apex(l, u1, dl, whole)
		l2 := apex(l, u, dl, down)
		u2 := apex(l2, u, whole, du)
		u, l = u1.plus(u2).times(0.5), l1.plus(l2).times(0.5)
		upper, lower = append(upper, u), append(lower, l)
	}
	return upper, lower
}

func square2(v float64) float64 { return v * v }

// apex is the third corner of a triangle on the base from p to q, at the distance
// a from p and b from q, on the right of the way from p to q: aft of a rung.
func apex(p, q flat, a, b float64) flat {
	base := q.minus(p)
	d := base.length()
	if d < 1e-9 { // both edges come to one point: straight on
		return flat{p.x + a, p.y}
	}
	x := (a*a - b*b + d*d) / (2 * d)
	y := math.Sqrt(math.Max(0, a*a-x*x))
	along := base.times(1 / d)
	return p.plus(along.times(x)).plus(flat{along.y, -along.x}.times(y))
}

// narrowest is the narrowest straight strip that encloses places on a flat: its
// width, and the direction of its edges and a place on the lower one.
func narrowest(places []flat) (width float64, way, edge flat) {
	hull := outline(places)
	if len(hull) < 3 {
		return 0, flat{1, 0}, places[0]
	}
	width = math.Inf(1)
	for i := range hull {
		a, b := hull[i], hull[(i+1)%len(hull)]
		side := b.minus(a)
		if side.length() < 1e-9 {
			continue
		}
		side = side.times(1 / side.length())
		far := 0.0
		for _, p := range hull {
			far = max(far, side.across(p.minus(a)))
		}
		if far < width {
			width, way, edge = far, side, a
		}
	}
	if way.x < 0 { // the side found is the upper one
		way = way.times(-1)
		edge = edge.plus(flat{way.y, -way.x}.times(width))
	}
	return width, way, edge
}

// outline is the corners of the smallest figure without hollows around places,
// counted leftward.
func outline(places []flat) []flat {
	p := append([]flat{}, places...)
	slices.SortStableFunc(p, func(a, b flat) int { return cmp.Or(cmp.Compare(a.x, b.x), cmp.Compare(a.y, b.y)) })
	half := func(p []flat) []flat {
		var h []flat
		for _, q := range p {
			for len(h) >= 2 && h[len(h)-1].minus(h[len(h)-2]).across(q.minus(h[len(h)-2])) <= 0 {
				h = h[:len(h)-1]
			}
			h = append(h, q)
		}
		return h
	}
	lower := half(p)
	slices.Reverse(p)
	upper := half(p)
	return append(lower[:len(lower)-1], upper[:len(upper)-1]...)
}
