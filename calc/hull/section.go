package hull

import (
	"cmp"
	"slices"

	"strakebook/calc/measure"
)

// section is the outline of half the hull at one station, from the rabbet up to
// the deck, in inches.
type section struct {
	points  []crossed
	line    *curve // nil where there are too few points
	from    Role   // of the line it starts from: Rabbet or Keel, else any
	toDeck  bool
	outside int // figures above the deck or below the rabbet, left out
}

// crossed is one point of a section and the line of the table it lies on.
type crossed struct {
	point
	pair   int
	role   Role
	corner bool
}

// section draws the curve through the points of a station.
func (t *table) section(k int) section {
	s := t.gather(k)
	if len(s.points) >= 2 {
		s.draw(t.step)
	}
	return s
}

// gather finds the points of every line that crosses a station and sets them in
// order from the rabbet up.
func (t *table) gather(k int) section {
	s := section{}
	foot, head := t.foot(k), t.head(k)
	for i, p := range t.pairs {
		at, ok := t.place(p, k)
		if !ok || p.role == Deck || p.role == Rabbet || p.role == Keel {
			continue
		}
		c := crossed{point: at, pair: i, role: p.role, corner: p.role == Chine}
		switch {
		case head != nil && at.z > head.z+t.step || foot != nil && at.z < foot.z-t.step:
			if at.y > 0 {
				s.outside++
			}
			continue
		case foot != nil && at.y <= foot.y && at.z <= foot.z+t.step:
			continue
		}
		s.points = append(s.points, c)
	}
	if foot == nil {
		s.points = append(s.points, t.lowest(k, s.points)...)
	}
	s.order()
	if foot != nil {
		s.from = foot.role
		s.points = append([]crossed{*foot}, s.points...)
	}
	if head != nil {
		s.toDeck = true
		s.points = append(s.points, *head)
	}
	s.thin(t)
	return s
}

// foot is where the rabbet, else the keel, crosses a station; nil where neither
// does.
func (t *table) foot(k int) *crossed {
	for _, role := range []Role{Rabbet, Keel} {
		for i, p := range t.pairs {
			if at, ok := t.place(p, k); ok && p.role == role && p.up >= 0 {
				return &crossed{point: at, pair: i, role: role}
			}
		}
	}
	return nil
}

// head is where the deck crosses a station; nil where it does not.
func (t *table) head(k int) *crossed {
	for i, p := range t.pairs {
		if at, ok := t.place(p, k); ok && p.role == Deck {
			return &crossed{point: at, pair: i, role: Deck}
		}
	}
	return nil
}

// lowest is where the hull comes down to the middle at a station whose keel is
// not given: the highest waterline of no breadth below the others.
func (t *table) lowest(k int, above []crossed) []crossed {
	var foot []crossed
	for i, p := range t.pairs {
		if p.role != Waterline || t.ok[p.out][k] || !t.o.Lines[p.out].Values[k].OK() || t.o.Lines[p.out].Values[k].Value != 0 {
			continue
		}
		z := t.o.Lines[p.out].At.Value.Inches()
		c := crossed{point: point{x: t.x[k] + t.leans(k, z), z: z}, pair: i, role: Waterline}
		below := len(above) > 0
		for _, a := range above {
			below = below && c.z < a.z
		}
		if below && (foot == nil || c.z > foot[0].z) {
			foot = []crossed{c}
		}
	}
	return foot
}

// order sets the points from the rabbet up: outward and upward to where the
// section is widest, and from there upward even where it falls in again.
func (s *section) order() {
	var wide point
	for i, p := range s.points {
		if i == 0 || p.y > wide.y || p.y == wide.y && p.z < wide.z {
			wide = p.point
		}
	}
	slices.SortStableFunc(s.points, func(a, b crossed) int {
		above, other := a.z > wide.z, b.z > wide.z
		switch {
		case above != other:
			return cmp.Compare(a.z, b.z)
		case above:
			return cmp.Compare(a.z-a.y, b.z-b.y)
		}
		return cmp.Or(cmp.Compare(a.y+a.z, b.y+b.z), cmp.Compare(a.z, b.z))
	})
}

// thin leaves out points that lie so close together that the table's rounding
// would bend the curve between them, closer than twenty-four of its steps or half
// the mean space (our choice, measured: of the demo yard's 467 lifted bevels 14
// then lie half a degree off the hull, at forty 19 and at sixteen 29): of two the
// one whose line crosses the section less squarely.
func (s *section) thin(t *table) {
	size := 0.0
	for i := 1; i < len(s.points); i++ {
		size += s.points[i].from(s.points[i-1].point)
	}
	close := max(3*t.step, min(24*t.step, size/float64(2*len(s.points))))
	for i := 1; i < len(s.points); {
		if s.points[i].from(s.points[i-1].point) >= close {
			i++
			continue
		}
		drop := s.lesser(i)
		if drop < 0 {
			i++
			continue
		}
		s.points = slices.Delete(s.points, drop, drop+1)
		i = max(1, i-1)
	}
}

// lesser is which of points i-1 and i is to be left out.
func (s *section) lesser(i int) int {
	rank := func(k int) float64 {
		p := s.points[k]
		if p.role != Waterline && p.role != Buttock && p.role != DiagonalLine {
			return 2 // deck, rabbet and chine stay
		}
		a, b := s.points[max(0, k-1)], s.points[min(len(s.points)-1, k+1)]
		way := b.minus(a.point)
		if way.length() == 0 {
			return 0
		}
		way = way.unit()
		switch p.role {
		case Waterline: // measured level: the more upright the section, the squarer
			return way.z * way.z
		case Buttock:
			return way.y * way.y
		}
		return 1
	}
	a, b := rank(i-1), rank(i)
	switch {
	case a == 2 && b == 2:
		if s.points[i].from(s.points[i-1].point) > 0 {
			return -1
		}
		return i - 1
	case a < b:
		return i - 1
	}
	return i
}

// draw draws the curve through the points.
func (s *section) draw(step float64) {
	p := make([]point, len(s.points))
	corner := make([]bool, len(s.points))
	for i, c := range s.points {
		p[i], corner[i] = c.point, c.corner
	}
	s.line = newCurve(p, corner, step)
}

// drawn is points close together along the section, for a body plan.
func (s *section) drawn() []Point {
	const parts = 8
	var all []Point
	for i := range len(s.line.t) - 1 {
		for j := range parts {
			p := s.line.at(s.line.t[i] + (s.line.t[i+1]-s.line.t[i])*float64(j)/parts)
			all = append(all, Point{Out: measure.Inches(p.y), Up: measure.Inches(p.z)})
		}
	}
	last := s.line.p[len(s.line.p)-1]
	return append(all, Point{Out: measure.Inches(last.y), Up: measure.Inches(last.z)})
}
