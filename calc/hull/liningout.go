package hull

import (
	"math"

	"strakebook/calc/measure"
)

// usedUp is what part of the way from station k out to o an edge has gone where
// it comes to the end of the girth: here and there are how far down it is at the
// two, girth is the whole at o. Between two sections the girth is that of the fair
// line through all of them: the strips at a hull's fullest run out so finely that
// a straight line between two girths would end them feet too soon. Loose is how far
// along the hull a step of the table in the girth moves the place.
func (h *hull) usedUp(l *lined, k, o int, here, there, girth float64) (part float64, loose measure.Length) {
	part = (l.girth[k] - here) / (there - girth + l.girth[k] - here)
	slope := (there - girth + l.girth[k] - here) / math.Abs(h.x[o]-h.x[k])
	if c := l.girths(h); c != nil && l.sections[o] != nil {
		gone := func(x float64) float64 { return (x - h.x[k]) / (h.x[o] - h.x[k]) }
		first := math.Inf(1)
		for _, t := range c.crossings(func(q point) float64 { return q.y - here - gone(q.x)*(there-here) }) {
			if at := gone(c.at(t).x); at >= 0 && at < min(1, first) {
				first = at
				way := c.along(t)
				slope = math.Abs(way.y/way.x - (there-here)/(h.x[o]-h.x[k]))
			}
		}
		if !math.IsInf(first, 1) {
			part = first
		}
	}
	return part, measure.Inches(min(math.Abs(h.x[o]-h.x[k]), h.step/max(slope, 1e-9)))
}

// girths is the fair line of the girths along the hull; nil where there are too
// few.
func (l *lined) girths(h *hull) *curve {
	if l.fair != nil {
		return l.fair
	}
	var p []point
	for k, girth := range l.girth {
		if l.sections[k] != nil {
			p = append(p, point{x: h.x[k], y: girth})
		}
	}
	if len(p) < 2 {
		return nil
	}
	l.fair = newCurve(p, nil, h.step)
	return l.fair
}
