package hull

import (
	"math"
	"slices"

	"strakebook/calc/fair"
)

// How a section's bend at one station is held against that at the next ones.
// Measured on the hulls of the detection test.
const (
	bendSlack   = 2.5  // bends that differ by so many times what rounding explains agree
	bendDoubt   = 1.5  // how much of what they differ by beyond that is doubt
	bendShare   = 0.1  // share of the bend itself that is doubt
	onwardTimes = 1.4  // so many times the doubt of a half-breadth seen from one side alone: a hull is drawn in fast to its ends
	bendUnlike  = 0.35 // and so much more for each time that the section or the point's place on it differs
	fewShare    = 0.5  // and where there are too few moulds for a line to have a say
	fewMoulds   = 5
	worseSight  = 3    // a stencil of so many times the least doubt has no say
	leastSlope  = 0.25 // of a section to the direction of measuring, below which it tells nothing
)

// Opinion is what the section at a station makes of the figure of a line: where
// its point would lie if the section bent there as the sections beside it do. Of
// the stencils that can tell it is the one that has the least against the
// figure.
func (s *sight) Opinion(rows []fair.Row, scale float64, line, station int) (fair.Opinion, bool) {
	y := rows[line].Y[station]
	if !s.sees[line] || y == 0 && s.o.Lines[line].View == HalfBreadth {
		return fair.Opinion{}, false // a line at nothing may have ended before
	}
	if s.onStem(rows, line, station) {
		return fair.Opinion{}, false
	}
	var all [8]fair.Opinion
	n, least := 0, math.Inf(1)
	for _, st := range s.stencils(rows, line, station) {
		if o, ok := s.compare(rows, scale, line, station, st); ok {
			all[n] = o
			n++
			least = min(least, o.Sd)
		}
	}
	best, off := fair.Opinion{}, math.Inf(1)
	for _, o := range all[:n] {
		if z := math.Abs(y-o.Value) / o.Sd; o.Sd <= worseSight*least && z < off {
			best, off = o, z
		}
	}
	return best, n > 0
}

// onStem says that a half-breadth is its line's first or last and the same as one
// beside it on the section: the siding of the stem or sternpost, at which the
// section stands straight however those beside it bend.
func (s *sight) onStem(rows []fair.Row, line, station int) bool {
	given := rows[line].Given
	if s.breadth[line] < 0 || slices.Contains(given[:station], true) && slices.Contains(given[station+1:], true) {
		return false
	}
	for _, st := range s.stencils(rows, line, station) {
		for _, l := range st.lines[:st.n] {
			if s.breadth[l] >= 0 && rows[l].Y[station] == rows[line].Y[station] {
				return true
			}
		}
	}
	return false
}

// bow is how a line's point stands to a stencil's on one section.
type bow struct {
	off   float64 // how far the point is off their curve, in the direction it is measured in
	grow  float64 // how far rounding grows in that
	lever float64 // how far it would be off for a bend of one
	long  float64 // from the stencil's first point to its last
	part  float64 // of the way from the stencil's first point to its last it lies
	rank  int     // how many of the stencil's points lie before it
}

// bowAt is how a line's point stands to a stencil's at a station; ok is false
// where one of them is not there, where the section has a corner among them or
// one of them has come to nothing, and where the section is so steep to the
// direction of measuring that it tells nothing.
func (s *sight) bowAt(rows []fair.Row, line, station int, st stencil) (b bow, ok bool) {
	y, z, ok := s.at(rows, line, station)
	if !ok {
		return b, false
	}
	n := st.n
	var ys, zs [4]float64
	for i, l := range st.lines[:n] {
		if ys[i], zs[i], ok = s.at(rows, l, station); !ok {
			return b, false
		}
	}
	if s.corner(rows, station, st, zs[:n], z) || s.ended(st, ys[:n]) {
		return b, false
	}
	// The chord of the stencil is the axis; out is square to it.
	ay, az := ys[n-1]-ys[0], zs[n-1]-zs[0]
	long := math.Hypot(ay, az)
	if long == 0 {
		return b, false
	}
	ay, az = ay/long, az/long
	var along, out [4]float64
	for i := range n {
		along[i], out[i] = (ys[i]-ys[0])*ay+(zs[i]-zs[0])*az, (zs[i]-zs[0])*ay-(ys[i]-ys[0])*az
	}
	pa, po := (y-ys[0])*ay+(z-zs[0])*az, (z-zs[0])*ay-(y-ys[0])*az
	va, vo := ay, -az // a step outwards
	if s.o.Lines[line].View == Height {
		va, vo = az, ay // a step upwards
	} else if d := s.slant[line]; d[0] != 0 {
		va, vo = d[0]*ay-d[1]*az, -d[1]*ay-d[0]*az // a step along the diagonal
	}
	moved, slope, ok := meet(along[:n], out[:n], pa, po, va, vo, 4*long)
	if !ok {
		return b, false
	}
	turn := vo - slope*va
	b.long, b.part = long, (pa-po*va/vo)/long
	pa += moved * va
	var w [4]float64
	fair.Weights(along[:n], pa, w[:n])
	sum := 0.0
	b.off, b.lever = -moved, 1/turn
	for i := range n {
		sum += w[i] * w[i]
		b.lever *= pa - along[i]
		if along[i] < pa {
			b.rank++
		}
	}
	b.grow = math.Sqrt(1 + sum/(turn*turn))
	return b, math.Abs(b.lever) > 1e-9
}

// meet is how far a point must move in a direction to meet the polynomial
// through others, and the slope of that there, by Newton's steps; ok is false
// where they all but run side by side.
func meet(x, y []float64, px, py, vx, vy, most float64) (moved, slope float64, ok bool) {
	for range 8 {
		value := 0.0
		value, slope = polynomial(x, y, px+moved*vx)
		turn := vy - slope*vx
		if math.Abs(turn) < leastSlope {
			return 0, 0, false
		}
		step := (py + moved*vy - value) / turn
		moved -= step
		if math.Abs(step) < 1e-3 {
			break
		}
		if math.Abs(moved) > most {
			return 0, 0, false
		}
	}
	_, slope = polynomial(x, y, px+moved*vx)
	return moved, slope, math.Abs(vy-slope*vx) >= leastSlope/2
}

// chineGiven says that the table gives the chine a point on a section.
func (s *sight) chineGiven(station int) bool {
	y, z := s.breadth[s.chine], s.height[s.chine]
	return s.o.Lines[y].Values[station].OK() && s.o.Lines[z].Values[station].OK()
}

// corner says that the section has its chine inside a stencil.
func (s *sight) corner(rows []fair.Row, station int, st stencil, zs []float64, z float64) bool {
	if s.chine < 0 {
		return false
	}
	for i, l := range st.lines[:st.n] {
		if l == s.chine {
			return i > 0 && i < st.n-1 || i == 0 && z < zs[0] || i == st.n-1 && z > zs[st.n-1]
		}
	}
	_, c, ok := s.at(rows, s.chine, station)
	if !ok && s.chineGiven(station) {
		return true // its figure is withdrawn: it may be anywhere
	}
	return ok && c > min(z, slices.Min(zs)) && c < max(z, slices.Max(zs))
}

// ended says that some of a stencil's lines have come to nothing and others have
// not: where a line has ended its nothing says little of the section.
func (s *sight) ended(st stencil, ys []float64) bool {
	none, some := false, false
	for i, l := range st.lines[:st.n] {
		if s.breadth[l] >= 0 {
			none, some = none || ys[i] == 0, some || ys[i] != 0
		}
	}
	return none && some
}

// polynomial is the polynomial through the points at a place, and its slope, by
// Newton's divided differences.
func polynomial(x, y []float64, at float64) (value, slope float64) {
	var c [4]float64
	n := copy(c[:], y)
	for d := 1; d < n; d++ {
		for i := n - 1; i >= d; i-- {
			c[i] = (c[i] - c[i-1]) / (x[i] - x[i-d])
		}
	}
	for i := n - 1; i >= 0; i-- {
		slope = slope*(at-x[i]) + value
		value = value*(at-x[i]) + c[i]
	}
	return value, slope
}

// seen is the bend of a section as a station beside shows it: what it would put
// the point off by, and how far that may be out by rounding.
type seen struct{ x, off, noise, long, part float64 }

// compare is what the figure would be if the section bent about it as the
// sections at the stations beside it do.
func (s *sight) compare(rows []fair.Row, scale float64, line, station int, st stencil) (fair.Opinion, bool) {
	here, ok := s.bowAt(rows, line, station, st)
	if !ok {
		return fair.Opinion{}, false
	}
	var before, after [2]seen
	nb := s.look(rows, line, station, -1, st, here, &before)
	na := s.look(rows, line, station, 1, st, here, &after)
	x := rows[line].X[station]
	var want seen
	var doubt float64
	switch {
	case nb > 0 && na > 0:
		want, doubt = middle(x, before[:nb], after[:na], scale)
	case nb == 2:
		want, doubt = onward(x, before, scale)
	case na == 2:
		want, doubt = onward(x, after, scale)
	default:
		return fair.Opinion{}, false
	}
	if len(s.o.Stations) <= fewMoulds {
		for _, b := range slices.Concat(before[:nb], after[:na]) {
			doubt = max(doubt, fewShare*math.Abs(b.off))
		}
	}
	times := 1.0
	if (nb == 0 || na == 0) && s.o.Lines[line].View == HalfBreadth {
		times = onwardTimes
	}
	return fair.Opinion{Value: rows[line].Y[station] - (here.off - want.off),
		Sd: times * math.Hypot(math.Hypot(here.grow, want.noise)*scale, math.Hypot(bendDoubt*doubt, (bendShare+s.unlike(st, here, want))*want.off))}, true
}

// unlike is how much of the bend is doubt because the section is not of the size it
// has at the stations beside, or the point lies elsewhere along its stencil: a
// section drawn in to the ends keeps its shape rather than its bend, and above the
// keel it may turn the more sharply the nearer to it.
func (s *sight) unlike(st stencil, here bow, there seen) float64 {
	times := ratio(here.long, there.long)
	if l := st.lines[0]; s.height[l] >= 0 && s.breadth[l] < 0 && s.o.Lines[l].Role != Buttock {
		times *= ratio(here.part, there.part)
	}
	return bendUnlike * (times - 1)
}

// ratio is how many times the greater of two shares or lengths is the lesser.
func ratio(a, b float64) float64 {
	near, far := min(a, b), max(a, b)
	return far / math.Max(near, 0.01*far)
}

// look gathers the bend at the next two stations on one side, as long as the
// points lie in the same order there.
func (s *sight) look(rows []fair.Row, line, station, step int, st stencil, here bow, all *[2]seen) (n int) {
	for k := station + step; k >= 0 && k < len(s.o.Stations) && n < 2; k += step {
		b, ok := s.bowAt(rows, line, k, st)
		if !ok || b.rank != here.rank {
			break
		}
		all[n] = seen{rows[line].X[k], b.off / b.lever * here.lever, b.grow * math.Abs(here.lever/b.lever), b.long, b.part}
		n++
	}
	return n
}

// middle is the bend midway between the nearest stations on both sides, and how
// far it may be out as those beyond them show it.
func middle(x float64, before, after []seen, scale float64) (want seen, doubt float64) {
	near, p := levelAt(x, before[0], after[0])
	if len(before)+len(after) == 2 {
		return near, differ(before[0], after[0], scale) / 2
	}
	far, q := levelAt(x, before[len(before)-1], after[len(after)-1])
	return near, differ(near, far, scale) * p / (q - p)
}

// levelAt is the bend at x on the straight line between two stations', and the
// product of the distances to them.
func levelAt(x float64, a, b seen) (at seen, product float64) {
	p, q := x-a.x, b.x-x
	return seen{x, (a.off*q + b.off*p) / (p + q), math.Hypot(a.noise*q, b.noise*p) / (p + q), (a.long*q + b.long*p) / (p + q), (a.part*q + b.part*p) / (p + q)}, p * q
}

// onward is the bend past the last station: that of the last, and in doubt by as
// much as it changes to the one before for the distance.
func onward(x float64, side [2]seen, scale float64) (want seen, doubt float64) {
	return side[0], differ(side[0], side[1], scale) * math.Abs((x-side[0].x)/(side[0].x-side[1].x))
}

// differ is how far two bends differ beyond what rounding explains.
func differ(a, b seen, scale float64) float64 {
	return max(0, math.Abs(a.off-b.off)-bendSlack*math.Hypot(a.noise, b.noise)*scale)
}
