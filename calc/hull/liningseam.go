package hull

import (
	"fmt"
	"math"

	"strakebook/calc/measure"
)

// lining draws the seams through their places at the stations.
func (h *hull) lining(l *lined) Lining {
	out := Lining{Skin: l.skin, Side: l.side, On: l.on, By: l.by, From: l.from, First: l.first}
	if len(l.names) == 0 {
		return out
	}
	for j := range l.down {
		out.Seams = append(out.Seams, h.seam(l, j))
	}
	for j, name := range l.names {
		s := Lined{Name: name, Length: max(out.Seams[j].Length, out.Seams[j+1].Length)}
		for k := range h.x {
			upper, lower := l.down[j][k], l.down[j+1][k]
			switch {
			case math.IsNaN(upper) && !math.IsNaN(lower) && l.by == ByWidths:
				upper = 0 // it runs out at the sheer
			case math.IsNaN(lower) && !math.IsNaN(upper) && l.by == ByWidths:
				lower = l.girth[k] // it runs out at the rabbet
			}
			w := measure.Length(0)
			if !math.IsNaN(upper) && !math.IsNaN(lower) {
				w = measure.Inches(lower - upper)
			}
			s.Widths = append(s.Widths, w)
			s.Hollows = append(s.Hollows, l.hollow(k, upper, lower))
		}
		s.Back = h.r.back(s.Hollows)
		out.Strakes = append(out.Strakes, s)
	}
	last := l.down[len(l.down)-1]
	for k, girth := range l.girth {
		whole := girth
		if l.leaning != nil && h.leaning(k) {
			whole = l.leaning.length()
		}
		out.girths = append(out.girths, measure.Inches(whole))
		left := measure.Length(0)
		if !math.IsNaN(last[k]) {
			left = measure.Inches(girth - last[k])
		}
		if left < measure.SixtyFourth {
			left = 0 // a rounding
		}
		out.Left = append(out.Left, left)
	}
	if l.by == ByWidths {
		out.Tapers, out.Stealers = h.leftOver(l, h.r.SumWithin), h.leftOver(l, max(h.r.SumWithin, h.r.NarrowestPlank))
	}
	return out
}

// hollow is how far the section between two girths from the sheer lies outside
// the straight line between them, or inside it, below nothing.
func (l *lined) hollow(k int, upper, lower float64) measure.Length {
	c := l.sections[k]
	if c == nil || !(upper < lower) {
		return 0
	}
	at := func(girth float64) point { return c.at(c.place(c.length() - girth)) }
	a, b := at(lower), at(upper)
	way := b.minus(a)
	if way.length() < 1e-6 {
		return 0
	}
	way = way.unit()
	most := 0.0
	const parts = 8
	for i := 1; i < parts; i++ {
		p := at(upper + (lower-upper)*float64(i)/parts).minus(a)
		if d := p.y*way.z - p.z*way.y; math.Abs(d) > math.Abs(most) {
			most = d
		}
	}
	return measure.Inches(most)
}

// seam is one seam as a curve along the hull. Where it leaves the hull and comes
// back, as strips above the line they start on do, its longest run is the curve
// and its length that of all.
func (h *hull) seam(l *lined, j int) Seam {
	s := Seam{Name: seamName(l.names, j), Points: make([]SeamPoint, len(h.x))}
	l.loose = append(l.loose, 0)
	total := 0.0
	for _, run := range l.runs(j) {
		var points []point
		var at []int
		add := func(p point, k int) {
			if n := len(points); n == 0 || p.from(points[n-1]) > 1e-6 {
				points, at = append(points, p), append(at, k)
			} else if k >= 0 {
				at[n-1] = k
			}
		}
		if p, ok := h.end(l, j, run[0], -1); ok {
			add(p, -1)
		}
		for _, k := range run {
			p, girth := l.at(h, j, k)
			s.Points[k] = SeamPoint{Crosses: true, Out: measure.Inches(p.y), Up: measure.Inches(p.z), Girth: measure.Inches(girth)}
			s.Points[k].corner(p, l.outer, k)
			add(p, k)
		}
		if p, ok := h.end(l, j, run[len(run)-1], 1); ok {
			add(p, -1)
		}
		if len(points) < 2 {
			continue
		}
		c := newCurve(points, nil, math.Inf(1))
		total += c.length()
		if s.run == nil || c.length() > s.run.length() {
			s.run, s.at = c, at
		}
		for i, k := range at {
			if k >= 0 {
				s.Points[k].Along = measure.Inches(c.s[i])
			}
		}
	}
	s.Length, s.loose = measure.Inches(total), l.loose[j]
	return s
}

// at is where a seam crosses a station, and the girth down to it along the section
// itself.
func (l *lined) at(h *hull, j, k int) (p point, girth float64) {
	c := l.sections[k]
	t := c.place(c.length() - l.down[j][k])
	if l.leaning != nil && h.leaning(k) {
		return l.leaning.at(t), l.leaning.length() - l.leaning.lengthTo(t)
	}
	return c.at(t), l.down[j][k]
}

// corner finds the outer corner of an edge sawn square: square off the inner one,
// on the outer face of the skin, in the station's plane.
func (s *SeamPoint) corner(inner point, outer []*curve, k int) {
	if outer == nil || outer[k] == nil {
		return
	}
	c := outer[k]
	s.outer, s.outerWhole = measure.Inches(c.length()-c.lengthTo(c.closestTo(inner))), measure.Inches(c.length())
	s.known = true
}

// runs is the stations a seam crosses, in unbroken runs; a station without a
// section breaks none.
func (l *lined) runs(j int) [][]int {
	var all [][]int
	open := false
	for k, d := range l.down[j] {
		switch {
		case l.sections[k] == nil:
		case math.IsNaN(d):
			open = false
		case open:
			all[len(all)-1] = append(all[len(all)-1], k)
		default:
			all, open = append(all, []int{k}), true
		}
	}
	return all
}

// end is where a seam runs out beyond its last station, going forward with a step
// of -1 or aft with 1: on the stem, along the rabbet, or at the sheer. It is not
// ok where it ends at the station or where is not known.
func (h *hull) end(l *lined, j, k, step int) (point, bool) {
	e := l.bow
	if step > 0 {
		e = l.stern
	}
	o := k + step
	for h.has(o) && l.sections[o] == nil && o != e.first {
		o += step // a station left empty ends nothing
	}
	if !h.has(o) {
		return point{}, false
	}
	if share, ok := l.shareBeyond(j, k, step); ok {
		ends := e.reach[k] > share && e.reach[o] < share || e.reach[k] >= share && l.sections[o] == nil && o == e.first
		if !e.closed || !ends {
			return point{}, false
		}
		return h.hood(l, e, share, k, o)
	}
	here, girth := l.down[j][k], l.girth[o]
	there := here
	if l.want != nil {
		there = l.want[j][o]
	}
	if l.sections[o] == nil {
		// On the stem itself, or between it and the station.
		if o != e.first || !h.closedAt(o) || len(h.sections[o].points) == 0 {
			return point{}, false
		}
		stem := h.sections[o]
		if stem.line != nil {
			girth = stem.line.length()
		}
		switch {
		case there <= girth && stem.line != nil, there <= 0:
			return h.onStem(l, o, there), true
		}
	}
	switch {
	case there >= girth && there-girth+l.girth[k]-here > 0:
		part, loose := h.usedUp(l, k, o, here, there, girth)
		l.loose[j] += loose
		return h.edgeAt(l, k, o, part, false)
	case there < 0:
		return h.edgeAt(l, k, o, here/(here-there), true)
	}
	return point{}, false
}

// edgeAt is the place on the rabbet, or the sheer, a part of the way from one
// station to the next.
func (h *hull) edgeAt(l *lined, k, o int, part float64, sheer bool) (point, bool) {
	line := l.edge(h, sheer)
	if line == nil {
		return point{}, false
	}
	x := h.x[k] + part*(h.x[o]-h.x[k])
	return line.nearest(point{x: x}, func(q point) float64 { return q.x - x })
}

// edge is the rabbet, or the sheer, on the skin's surface along the hull, to the
// very ends where they are known; nil where there is too little of it.
func (l *lined) edge(h *hull, sheer bool) *curve {
	which := 0
	if sheer {
		which = 1
	}
	if l.edges[which] != nil {
		return l.edges[which]
	}
	var p []point
	for i, c := range l.sections {
		if l.leaning != nil && h.leaning(i) {
			c = l.leaning
		}
		stem := h.sections[i].points
		end := (i == l.bow.first || i == l.stern.first) && len(stem) > 0 && h.closedAt(i)
		switch {
		case c != nil && sheer:
			p = append(p, c.p[len(c.p)-1])
		case c != nil:
			p = append(p, c.p[0])
		case end && sheer:
			p = append(p, stem[len(stem)-1].point)
		case end:
			p = append(p, stem[0].point)
		}
	}
	if len(p) < 2 {
		return nil
	}
	l.edges[which] = newCurve(p, nil, h.step)
	return l.edges[which]
}

// seamName is a seam's name: between the strakes above and below it.
func seamName(names []string, j int) string {
	switch {
	case j == 0:
		return "sheer"
	case j == len(names):
		return "below " + names[j-1]
	}
	return fmt.Sprintf("%s/%s", names[j-1], names[j])
}
