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
