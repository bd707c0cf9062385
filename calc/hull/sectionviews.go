package hull

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// ViewsApart is two views of one point that do not agree.
var ViewsApart = &finding.Kind{
	Code: "views-apart", Severity: finding.Warning, Title: "two views do not agree",
	Why:    "Where a waterline crosses a buttock both views tell of one point of the hull; if they tell of two, one of the lines is wrong near there, and the mould cannot pass through both.",
	Remedy: "lay both lines down and see which is fair; ask the designer about the other",
}

// meeting is a place at which a waterline crosses a buttock, or either the deck.
type meeting struct {
	a, b  int     // the lines of the table
	x     float64 // where, along the hull
	apart float64 // square to the surface
	doubt float64 // what rounding and the curves between stations explain
}

// viewsApart finds the crossings at which two views tell of different points.
// They are compared square to the surface, so that a flat floor, where an eighth
// of height is a foot of breadth, does not alarm; each line is reported once, at
// its worst.
func (h *hull) viewsApart() finding.List {
	if !h.placed {
		return nil
	}
	all := slices.DeleteFunc(h.meetings(), func(m meeting) bool {
		return m.apart <= h.r.ViewsWithin*h.step+2*m.doubt
	})
	slices.SortStableFunc(all, func(a, b meeting) int { return cmp.Compare(b.apart, a.apart) })
	var found finding.List
	told := map[int]bool{}
	for _, m := range all {
		if told[m.a] || told[m.b] {
			continue
		}
		told[m.a], told[m.b] = true, true
		a, b := h.o.Lines[m.a], h.o.Lines[m.b]
		k := h.nearestStation(m.x)
		f := finding.Finding{Kind: ViewsApart, Cell: a.Values[k].Cell, Also: []source.Cell{b.Values[k].Cell}, Reads: a.Values[k].Text,
			Text: fmt.Sprintf("%s and %s are %s apart where they cross near %s", a.words(), b.words(),
				h.r.Units.As(h.o.Form, measure.Inches(m.apart).Round(h.o.Resolution)), h.o.called(k))}
		found = append(found, f)
	}
	return found
}

// nearestStation is the station nearest to a place.
func (h *hull) nearestStation(x float64) int {
	best := 0
	for k := range h.x {
		if math.Abs(h.x[k]-x) < math.Abs(h.x[best]-x) {
			best = k
		}
	}
	return best
}

// meetings is every crossing of a waterline and a buttock.
func (h *hull) meetings() []meeting {
	profile, deck := h.profile(), h.deck()
	var waters, buttocks []*long
	for i, p := range h.pairs {
		if p.role != Waterline && p.role != Buttock {
			continue
		}
		l := h.long(i, profile, deck)
		switch {
		case l == nil || len(l.stations) < 4:
		case p.role == Waterline:
			waters = append(waters, l)
		default:
			buttocks = append(buttocks, l)
		}
	}
	var all []meeting
	for _, w := range waters {
		for _, b := range buttocks {
			all = append(all, h.meet(w, b)...)
		}
	}
	return all
}

// meet compares a waterline and a buttock wherever the first lies as far out as
// the second, between the stations of both.
func (h *hull) meet(w, b *long) []meeting {
	out, up := b.line.p[0].y, w.line.p[0].z
	var all []meeting
	for _, t := range w.line.crossings(func(p point) float64 { return p.y - out }) {
		p := w.line.at(t)
		for _, u := range b.line.crossings(func(q point) float64 { return q.x - p.x }) {
			q := b.line.at(u)
			wl, bl := w.line.along(t), b.line.along(u)
			if w.atEnd(t) || b.atEnd(u) {
				continue // beyond the last station but one a curve says little
			}
			// The surface's slopes: dz/dx along the buttock, dy/dx along the waterline.
			if math.Abs(wl.x) < 1e-6 || math.Abs(bl.x) < 1e-6 {
				continue
			}
			yx, zx := wl.y/wl.x, bl.z/bl.x
			if yx == 0 {
				continue
			}
			zy := -zx / yx
			size := math.Sqrt(1 + zx*zx + zy*zy)
			m := meeting{a: h.pairs[w.pair].out, b: h.pairs[b.pair].up, x: p.x, apart: math.Abs(q.z-up) / size}
			m.doubt = (math.Abs(zy)*w.sway(t) + b.sway(u)) / size
			all = append(all, m)
		}
	}
	return all
}

// atEnd says that a place lies in the first or last space of the line.
func (l *long) atEnd(t float64) bool {
	i := l.line.span(t)
	return i == 0 || i == len(l.line.t)-2
}

// sway is how far a line may lie off between its stations: how far its curve does
// from the one that is drawn without the nearest station.
func (l *long) sway(t float64) float64 {
	i := l.line.span(t)
	if t-l.line.t[i] > l.line.t[i+1]-t {
		i++
	}
	if i == 0 || i == len(l.line.p)-1 {
		i = max(1, min(len(l.line.p)-2, i))
	}
	bare := append(append([]point{}, l.line.p[:i]...), l.line.p[i+1:]...)
	if len(bare) < 3 {
		return math.Inf(1)
	}
	c := newCurve(bare, nil, math.Inf(1))
	at := l.line.at(t)
	return c.at(c.closestTo(at)).from(at)
}
