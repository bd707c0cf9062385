package hull

import "math"

// parallel is the section of a station on another surface of the planking: at
// each knot the distance between the surfaces over the cosine of the square
// bevel is laid in, square to the section, in the station's plane. In is below
// nothing for a surface farther out. It is nil where there is no section; out is
// false where none of it lies off the middle line, the planking being thicker than
// half the hull there.
//
// The curve is trimmed where it folds back on itself, at the middle line, and at
// the height of the deck, and drawn on where it falls short of them.
//
// Thick, where not nothing, is the thickness of a mould whose edge is left
// square, aft of the station line, or forward where below nothing: where its far
// face would stand proud the outline is laid in so much more.
func (h *hull) parallel(n *net, k int, in, thick float64) (c *curve, out bool) {
	if n == nil || len(n.knots[k]) == 0 {
		return nil, false
	}
	s := h.sections[k]
	var runs []*curve
	for r := range n.parts {
		p := apart(unfold(laidIn(n.knots[k][r*n.each:(r+1)*n.each], h.facing(k), in, thick)))
		if len(p) < 2 {
			continue
		}
		run := newCurve(p, nil, math.Inf(1))
		if len(runs) > 0 {
			runs[len(runs)-1], run = mitre(runs[len(runs)-1], run)
		}
		runs = append(runs, run)
	}
	if len(runs) == 0 {
		return nil, false
	}
	first, last := s.points[0], s.points[len(s.points)-1]
	if !reachesOut(runs) {
		return joined(runs), false
	}
	if first.y == 0 {
		runs[0] = runs[0].startAt(func(p point) float64 { return p.y }, in)
	}
	if s.toDeck {
		end := len(runs) - 1
		runs[end] = runs[end].endAt(func(p point) float64 { return p.z - last.z }, in)
	}
	return joined(runs), true
}

// reachesOut says that some of the curve lies off the middle line.
func reachesOut(runs []*curve) bool {
	for _, r := range runs {
		for _, p := range r.p {
			if p.y > 1e-6 {
				return true
			}
		}
	}
	return false
}

// laidIn is the knots of one run moved inward in the station's plane, which faces a
// direction aft.
func laidIn(knots []knot, facing point, in, thick float64) []point {
	p := make([]point, len(knots))
	for i, k := range knots {
		lean := k.square.dot(facing)
		out := k.square.minus(facing.times(lean))
		cos := max(0.1, out.length()) // beyond 84 degrees the section hardly says where the surface is
		// The surface falls in by the tangent of the square bevel going aft.
		proud := max(0, thick*lean/cos)
		p[i] = k.at.minus(out.unit().times(in/cos + proud))
	}
	return p
}

// unfold cuts out the loop that a parallel curve makes where it is laid in
// farther than the section's own radius.
func unfold(p []point) []point {
	for i := 0; i+1 < len(p); i++ {
		for j := len(p) - 2; j > i+1; j-- {
			if at, ok := cross(p[i], p[i+1], p[j], p[j+1]); ok {
				q := append(append([]point{}, p[:i+1]...), at)
				return unfold(append(q, p[j+1:]...))
			}
		}
	}
	return p
}

// cross is where two straight pieces in a station's plane cross.
func cross(a, b, c, d point) (point, bool) {
	r, s := b.minus(a), d.minus(c)
	den := r.y*s.z - r.z*s.y
	if den == 0 {
		return point{}, false
	}
	w := c.minus(a)
	u, v := (w.y*s.z-w.z*s.y)/den, (w.y*r.z-w.z*r.y)/den
	if u < 0 || u > 1 || v < 0 || v > 1 {
		return point{}, false
	}
	return a.plus(r.times(u)), true
}

// apart leaves out points too close to the one before for a curve.
func apart(p []point) []point {
	var q []point
	for i := range p {
		if len(q) == 0 || p[i].from(q[len(q)-1]) > 1e-6 {
			q = append(q, p[i])
		}
	}
	return q
}

// beyond is the place on a curve at t and the direction there. Where t lies outside
// it the curve is drawn on, bending as it does as far within its end: by the way it
// lies off the straight line there. Farther out than it is long it goes on straight.
func (c *curve) beyond(t float64) (at, way point) {
	last := len(c.t) - 1
	end, along := c.p[0], c.out[0]
	over := t
	switch {
	case t >= 0 && t <= c.t[last]:
		return c.at(t), c.along(t)
	case t > 0:
		end, along, over = c.p[last], c.in[last], t-c.t[last]
	}
	back := t - 2*over
	if back < 0 || back > c.t[last] {
		return end.plus(along.times(over)), along
	}
	return c.at(back).plus(along.times(2 * over)), along.times(2).minus(c.along(back))
}

// mitre joins two runs at a corner: cut off where they cross, drawn on
// where they do not. The first ends and the second starts at the joint.
func mitre(a, b *curve) (*curve, *curve) {
	t, u := a.t[len(a.t)-1], 0.0
	for range 30 {
		p, r := a.beyond(t)
		q, s := b.beyond(u)
		den := r.y*s.z - r.z*s.y
		if math.Abs(den) < 1e-6 {
			break // as good as one line: there is no corner to find
		}
		w := q.minus(p)
		dt, du := (w.y*s.z-w.z*s.y)/den, (w.y*r.z-w.z*r.y)/den
		t, u = t+dt, u+du
		if math.Abs(dt)+math.Abs(du) < 1e-10 {
			break
		}
	}
	p, _ := a.beyond(t)
	q, _ := b.beyond(u)
	if t <= 0 || u >= b.t[len(b.t)-1] || p.from(q) > 1e-6 {
		t, u = a.t[len(a.t)-1], 0 // they do not meet: the gap between them is bridged
	}
	return a.until(t), b.since(u)
}

// until is the curve from its start to t, drawn on where t lies beyond
// its end.
func (c *curve) until(t float64) *curve {
	t = max(t, c.t[1]/1000)
	n := len(c.t)
	for n > 1 && c.t[n-1] >= t-1e-6 {
		n--
	}
	at, _ := c.beyond(t)
	return newCurve(append(append([]point{}, c.p[:n]...), at), nil, math.Inf(1))
}

// since is the curve from t to its end, drawn on where t lies before
// its start.
func (c *curve) since(t float64) *curve {
	last := len(c.t) - 1
	t = min(t, c.t[last]-(c.t[last]-c.t[last-1])/1000)
	i := 0
	for i < len(c.t)-1 && c.t[i] <= t+1e-6 {
		i++
	}
	at, _ := c.beyond(t)
	return newCurve(append([]point{at}, c.p[i:]...), nil, math.Inf(1))
}

// startAt starts the curve where a measure comes to nothing: cut off, or drawn
// on as far as thrice the distance laid in.
func (c *curve) startAt(f func(point) float64, in float64) *curve {
	if cuts := c.crossings(f); len(cuts) > 0 {
		return c.since(cuts[len(cuts)-1])
	}
	if t, ok := c.reach(f, 0, -3*math.Abs(in)); ok {
		return c.since(t)
	}
	return c
}

// endAt is startAt for the curve's end.
func (c *curve) endAt(f func(point) float64, in float64) *curve {
	if cuts := c.crossings(f); len(cuts) > 0 {
		return c.until(cuts[len(cuts)-1])
	}
	if t, ok := c.reach(f, c.t[len(c.t)-1], 3*math.Abs(in)); ok {
		return c.until(t)
	}
	return c
}

// reach is the t beyond an end at which a measure comes to nothing, within a
// distance.
func (c *curve) reach(f func(point) float64, end, most float64) (float64, bool) {
	value := func(t float64) float64 { at, _ := c.beyond(t); return f(at) }
	a, b := end, end+most
	fa, fb := value(a), value(b)
	if fa*fb > 0 || fa == fb {
		return 0, false
	}
	for range 60 {
		if middle := (a + b) / 2; fa*value(middle) > 0 {
			a = middle
		} else {
			b = middle
		}
	}
	return b, true
}

// joined is runs that end where the next starts as one curve with corners.
func joined(runs []*curve) *curve {
	var p []point
	var corner []bool
	for i, r := range runs {
		q := r.p
		if i > 0 {
			corner[len(corner)-1] = true
			if q[0].from(p[len(p)-1]) < 1e-6 {
				q = q[1:]
			}
		}
		p = append(p, q...)
		for len(corner) < len(p) {
			corner = append(corner, false)
		}
	}
	return newCurve(p, corner, math.Inf(1))
}
