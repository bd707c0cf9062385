package hull

import (
	"slices"

	"strakebook/calc/measure"
)

// long is a line of the table drawn along the hull.
type long struct {
	pair     int
	line     *curve
	stations []int  // of each point of the curve, -1 for an end found from the profile and for a knuckle
	from, to string // where it starts and ends
}

// profile is the rabbet, else the keel, drawn along the hull; nil where the
// table has fewer than two heights of it.
func (t *table) profile() *long {
	for _, role := range []Role{Rabbet, Keel} {
		for i, p := range t.pairs {
			if p.role == role && p.up >= 0 {
				if l := t.long(i, nil, nil); l != nil {
					return l
				}
			}
		}
	}
	return nil
}

// deck is the deck or sheer drawn along the hull; nil where it is not given in
// both views.
func (t *table) deck() *long {
	for i, p := range t.pairs {
		if p.role == Deck && p.up >= 0 && p.out >= 0 {
			return t.long(i, nil, nil)
		}
	}
	return nil
}

// long draws a line along the hull through every station it crosses, as far as
// the first run of stations goes without a break. Profile and deck, where not
// nil, are where waterlines and buttocks end between stations.
func (t *table) long(i int, profile, deck *long) *long {
	p := t.pairs[i]
	var points []point
	var stations []int
	for k := range t.x {
		at, ok := t.place(p, k)
		if ok {
			points, stations = append(points, at), append(stations, k)
		}
	}
	if len(points) == 0 {
		return nil
	}
	l := &long{pair: i, from: t.o.Stations[stations[0]].Name, to: t.o.Stations[stations[len(stations)-1]].Name}
	if at, ok := t.meets(p, points[0], stations[0], -1, profile, deck); ok {
		points, stations, l.from = append([]point{at}, points...), append([]int{-1}, stations...), "profile"
		if p.role == Buttock {
			l.from = "deck"
		}
	}
	last := len(points) - 1
	if at, ok := t.meets(p, points[last], stations[last], 1, profile, deck); ok {
		points, stations, l.to = append(points, at), append(stations, -1), "profile"
		if p.role == Buttock {
			l.to = "deck"
		}
	}
	if len(points) < 2 {
		return nil
	}
	points, stations, corner := t.knuckles(p, points, stations)
	l.line, l.stations = newCurve(points, corner, t.step), stations
	return l
}

// knuckles sets the points at which a waterline or buttock crosses a chine among
// its own: it turns sharply there.
func (t *table) knuckles(p pair, points []point, stations []int) ([]point, []int, []bool) {
	corner := make([]bool, len(points))
	if p.role != Waterline && p.role != Buttock {
		return points, stations, corner
	}
	f := func(q point) float64 { return q.z - points[0].z }
	if p.role == Buttock {
		f = func(q point) float64 { return q.y - points[0].y }
	}
	for i, c := range t.pairs {
		if c.role != Chine || c.out < 0 || c.up < 0 {
			continue
		}
		chine := t.long(i, nil, nil)
		if chine == nil {
			continue
		}
		for _, u := range chine.line.crossings(f) {
			q := chine.line.at(u)
			j := 0
			for j < len(points) && points[j].x < q.x {
				j++
			}
			switch {
			case j == 0 || j == len(points):
			case q.from(points[j]) < t.step:
				corner[j] = true
			case q.from(points[j-1]) < t.step:
				corner[j-1] = true
			default:
				points = slices.Insert(points, j, q)
				stations = slices.Insert(stations, j, -1)
				corner = slices.Insert(corner, j, true)
			}
		}
	}
	return points, stations, corner
}

// meets is where a waterline runs out on the profile, or a buttock at the deck,
// between its last station and the next; ok is false where it does not.
func (t *table) meets(p pair, end point, k, step int, profile, deck *long) (at point, ok bool) {
	next := k + step
	if next < 0 || next >= len(t.x) {
		return point{}, false
	}
	bound, f := profile, func(q point) float64 { return q.z - end.z }
	switch {
	case p.role == Waterline && profile != nil && end.y > 0:
	case p.role == Buttock && deck != nil:
		bound, f = deck, func(q point) float64 { return q.y - end.y }
	default:
		return point{}, false
	}
	for _, c := range bound.line.crossings(f) {
		q := bound.line.at(c)
		if (q.x-end.x)*float64(step) > 0 && (q.x-t.x[next])*float64(step) <= 0 {
			return q, true
		}
	}
	return point{}, false
}

// lengths is the true length of every line of the table; none where the
// stations' places are not known.
func (t *table) lengths() []LineLength {
	if !t.placed {
		return nil
	}
	profile, deck := t.profile(), t.deck()
	var all []LineLength
	for i, p := range t.pairs {
		if (p.role == Deck || p.role == Chine) && (p.out < 0 || p.up < 0) {
			continue // of one view only: it has no length in space
		}
		l := t.long(i, profile, deck)
		if l == nil {
			continue
		}
		all = append(all, LineLength{Name: p.name, Role: p.role, Length: measure.Inches(l.line.length()), From: l.from, To: l.to})
	}
	return all
}
