package hull

import (
	"math"

	"gonum.org/v1/gonum/interp"
)

// endLine is how the strakes end at the bow or the stern where the hull comes to
// the middle line: on the stem and the forefoot, one after another. Their widths
// taper evenly from the heel to the stem as if the sections went on down to the
// heel's depth, and each ends where the real section is used up.
type endLine struct {
	closed bool // false where the strakes end at the last section, as on a transom
	first  int  // the station at the very end
	reach  []float64
	depth  float64 // of the stem, from its head to its heel
	// The girths as they are and as they would go on, by place along the hull.
	real, whole interp.FritschButland
}

// The stem ends and the keel begins where the profile rises less than this from one
// station out to the next: our choice, more than a keel's drag or rocker, along which
// the garboard follows the rabbet. With the heel higher up the seams in equal shares
// turn suddenly there: of fifteen hulls by formula they lie as much as 2.1 in off a
// batten at 15 degrees, 1.2 at eight, .9 at five.
const heel = 8 * math.Pi / 180

// An end is closed, on the middle line, where its breadth is less than this share
// of the hull's: our choice, half the siding of a stem.
const closed = 0.05

// endLine finds how the strakes end: at the bow with a step of 1, at the stern
// of -1.
func (h *hull) endLine(l *lined, step int) endLine {
	e := endLine{reach: make([]float64, len(h.x))}
	for k := range e.reach {
		e.reach[k] = 1
	}
	k := 0
	if step < 0 {
		k = len(h.x) - 1
	}
	for h.has(k) && len(h.sections[k].points) == 0 {
		k += step
	}
	if !h.has(k) || !h.closedAt(k) {
		return e
	}
	e.first = k
	for h.has(k+step) && len(h.sections[k+step].points) > 0 && (l.girth[k] == 0 || h.rising(k, k+step)) {
		k += step
	}
	if k == e.first { // the stem is plumb and stands on the last station
		if stem := h.sections[k].line; stem != nil {
			e.closed, e.depth = true, stem.length()
		}
		return e
	}
	head := h.sections[e.first].points
	e.depth = head[len(head)-1].z - h.sections[k].points[0].z
	return h.taper(e, l, k, step)
}

// taper draws the girths, as they are and as they would go on, from an end line's
// heel station on.
func (h *hull) taper(e endLine, l *lined, heel, step int) endLine {
	var x, real, whole []float64
	wx := []float64{h.x[e.first]}
	whole = append(whole, e.depth)
	for k := e.first; h.has(k); k += step {
		girth := l.girth[k]
		if k == e.first && h.sections[k].line != nil {
			girth = h.sections[k].line.length()
		}
		if girth == 0 && k != e.first {
			continue
		}
		x, real = append(x, h.x[k]), append(real, girth)
		if (k-heel)*step >= 0 {
			wx, whole = append(wx, h.x[k]), append(whole, girth)
		}
	}
	if e.depth <= 0 || len(x) < 2 || len(wx) < 2 {
		return e
	}
	if step < 0 {
		turn(x, real)
		turn(wx, whole)
	}
	if !increasing(x) || e.real.Fit(x, real) != nil || e.whole.Fit(wx, whole) != nil {
		return e
	}
	e.closed = true
	for k := e.first; k != heel; k += step {
		e.reach[k] = min(1, e.real.Predict(h.x[k])/e.whole.Predict(h.x[k]))
	}
	return e
}

// turn sets values that run forward in the order that runs aft.
func turn(rows ...[]float64) {
	for _, v := range rows {
		for i, j := 0, len(v)-1; i < j; i, j = i+1, j-1 {
			v[i], v[j] = v[j], v[i]
		}
	}
}

// has says that there is such a station.
func (h *hull) has(k int) bool { return k >= 0 && k < len(h.x) }

// closedAt says that the hull comes to the middle line at a station.
func (h *hull) closedAt(k int) bool {
	wide, whole := 0.0, 0.0
	for i, s := range h.sections {
		for _, p := range s.points {
			whole = max(whole, p.y)
			if i == k {
				wide = max(wide, p.y)
			}
		}
	}
	return wide <= closed*whole
}

// rising says that the profile rises steeply from one station out to the next.
func (h *hull) rising(out, in int) bool {
	a, b := h.sections[out].points[0], h.sections[in].points[0]
	return math.Atan((a.z-b.z)/math.Abs(a.x-b.x)) > heel
}

// hood is where the seam at a share of the girth ends between station k and the
// one outside it.
func (h *hull) hood(l *lined, e endLine, share float64, k, out int) (point, bool) {
	if out == e.first && share <= e.reach[out] {
		return h.onStem(l, out, share*e.depth), true
	}
	a, b := h.x[out], h.x[k]
	for range 50 {
		x := (a + b) / 2
		if share*e.whole.Predict(x) > e.real.Predict(x) {
			a = x
		} else {
			b = x
		}
	}
	return h.edgeAt(l, k, out, (b-h.x[k])/(h.x[out]-h.x[k]), false)
}

// onStem is the place on the stem that stands on a station, so far down from its
// head. Planking is drawn on to the station beyond the middle line, as its outside
// reaches it.
func (h *hull) onStem(l *lined, k int, down float64) point {
	stem := h.sections[k]
	if stem.line == nil {
		return stem.points[len(stem.points)-1].point
	}
	c, part := stem.line, min(1, max(0, down/stem.line.length()))
	if l.beyond != nil && l.beyond[k] != nil {
		c = l.beyond[k]
	}
	return c.at(c.place(c.length() * (1 - part)))
}
