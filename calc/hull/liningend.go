package hull

import "math"

// endLine is the line on which the strakes end at the bow or the stern: from the
// sheer down the stem to its heel. Line is nil where they end at the last
// section, as on a transom.
type endLine struct {
	line  *curve
	first int       // the station it starts at
	reach []float64 // by station: the share of it from the sheer down to the station's foot, 1 past the heel
}

// The stem ends and the keel begins where the profile rises less than this going
// out from the station: our choice.
const heel = 15 * math.Pi / 180

// An end is closed, on the middle line, where its breadth is less than this share
// of the hull's: our choice, half the siding of a stem.
const closed = 0.05

// endLine finds the line on which the strakes end: at the bow with a step of 1,
// at the stern of -1.
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
	points, at := h.downTo(k)
	for h.has(k+step) && len(h.sections[k+step].points) > 0 && (h.sections[k].line == nil || h.rising(k, k+step)) {
		k += step
		foot := h.sections[k].points[0].point
		if foot.from(points[len(points)-1]) < 1e-6 {
			break
		}
		points, at = append(points, foot), append(at, k)
	}
	if len(points) < 2 {
		return e
	}
	corner := make([]bool, len(points))
	for i := range at {
		corner[i] = at[i] == e.first && i > 0
	}
	e.line = newCurve(points, corner, h.step)
	for i, k := range at {
		if k >= 0 {
			e.reach[k] = e.line.s[i] / e.line.length()
		}
	}
	return e
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

// downTo is the points of a station's section from its head down, or its one
// point, and the station of the last of them.
func (h *hull) downTo(k int) (points []point, at []int) {
	s := h.sections[k].points
	for i := len(s) - 1; i >= 0; i-- {
		points, at = append(points, s[i].point), append(at, -1)
	}
	at[len(at)-1] = k
	return points, at
}

// rising says that the profile rises steeply from one station out to the next.
func (h *hull) rising(out, in int) bool {
	a, b := h.sections[out].points[0], h.sections[in].points[0]
	return math.Atan((a.z-b.z)/math.Abs(a.x-b.x)) > heel
}

// hood is the place at a share of the end line from the sheer down.
func (e endLine) hood(share float64) (point, bool) {
	if e.line == nil {
		return point{}, false
	}
	return e.line.at(e.line.place(share * e.line.length())), true
}
