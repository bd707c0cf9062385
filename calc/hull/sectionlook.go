package hull

import (
	"math"
	"slices"
	"sort"

	"strakebook/calc/fair"
	"strakebook/calc/measure"
)

// sections is the table as its sections see it: at each station the points at
// which its lines cross the section, in steps of the table's resolution.
type sections struct {
	o     Offsets
	rows  []fair.Row
	chine int
	hold  [][2]int  // of each line: the line of its breadth, the line of its height; -1 where fixed
	fixed []float64 // the fixed one's steps
	on    []bool
}

func newSections(o Offsets, rows []fair.Row) *sections {
	s := &sections{o: o, rows: rows}
	find := func(view View, roles ...Role) int {
		for _, role := range roles {
			for i, l := range o.Lines {
				if l.View == view && l.Role == role {
					return i
				}
			}
		}
		return -1
	}
	deckY, deckZ := find(HalfBreadth, Deck), find(Height, Deck)
	chineY, chineZ := find(HalfBreadth, Chine), find(Height, Chine)
	keel := find(Height, Rabbet, Keel)
	s.chine = -1
	if chineZ >= 0 {
		s.chine = chineY
	}
	n := 0
	step := float64(max(1, o.Resolution))
	for i, l := range o.Lines {
		hold, fixed, on := [2]int{-1, -1}, 0.0, false
		switch {
		case l.View == HalfBreadth && l.Role == Waterline:
			hold[0], on = i, true
			fixed = float64(l.At.Value) / step
			if !l.At.OK() {
				fixed, on = 0, false
			}
			n++
		case l.View == Height && l.Role == Buttock && l.At.OK():
			hold[1], on = i, true
			fixed = float64(l.At.Value) / step
		case i == deckY && deckZ >= 0:
			hold, on = [2]int{deckY, deckZ}, true
		case i == deckZ && deckY >= 0:
			hold, on = [2]int{deckY, deckZ}, false
		case i == chineY && chineZ >= 0:
			hold, on = [2]int{chineY, chineZ}, true
		case i == chineZ && chineY >= 0:
			hold, on = [2]int{chineY, chineZ}, false
		case i == keel:
			hold, on = [2]int{-1, i}, true // seen by the others, not seeing
		}
		s.hold = append(s.hold, hold)
		s.fixed = append(s.fixed, fixed)
		s.on = append(s.on, on)
	}
	return s
}

// point is where a line crosses the section at a station; ok is false where it
// does not, or its figure is withdrawn.
func (s *sections) point(rows []fair.Row, line, station int) (y, z float64, ok bool) {
	y, z = s.fixed[line], s.fixed[line]
	if i := s.hold[line][0]; i >= 0 {
		if !rows[i].Given[station] {
			return 0, 0, false
		}
		y = rows[i].Y[station]
	}
	if i := s.hold[line][1]; i >= 0 {
		if !rows[i].Given[station] {
			return 0, 0, false
		}
		z = rows[i].Y[station]
	}
	return y, z, true
}

type crossing struct {
	line int
	y, z float64
}

// look is what the section at a station makes of the figure of a line, seen
// against the sections beside it.
func (s *sections) Opinion(rows []fair.Row, scale float64, line, at int) (fair.Opinion, bool) {
	if role := s.o.Lines[line].Role; !s.on[line] || role == Keel || role == Rabbet {
		return fair.Opinion{}, false
	}
	if rows[line].Y[at] == 0 && s.o.Lines[line].View == HalfBreadth {
		return fair.Opinion{}, false // the line may have ended before
	}
	var all []fair.Opinion
	least := math.Inf(1)
	for _, st := range s.stencils(rows, line, at) {
		if o, ok := s.compare(rows, scale, line, at, st); ok {
			all = append(all, o)
			least = min(least, o.Sd)
		}
	}
	if len(all) == 0 {
		return fair.Opinion{}, false
	}
	y := rows[line].Y[at]
	best, kind := all[0], math.Inf(1)
	for _, o := range all {
		if z := math.Abs(y-o.Value) / o.Sd; o.Sd <= KS*least && z < kind {
			best, kind = o, z
		}
	}
	return best, true
}

var KS = 3.0

// Beside is the lines on which the section's opinion of a figure rests.
func (s *sections) Beside(rows []fair.Row, line, at int) []int {
	if !s.on[line] {
		return nil
	}
	var all []int
	for _, st := range s.stencils(rows, line, at) {
		for _, l := range st {
			for _, h := range s.hold[l] {
				if h >= 0 && h != line && !slices.Contains(all, h) {
					all = append(all, h)
				}
			}
		}
	}
	slices.Sort(all)
	return all
}

// stencils are sets of lines whose points lie about the line's on the section.
func (s *sections) stencils(rows []fair.Row, line, at int) [][]int {
	var others []crossing
	for i := range s.o.Lines {
		if i == line || !s.on[i] {
			continue
		}
		if y, z, ok := s.point(rows, i, at); ok {
			others = append(others, crossing{i, y, z})
		}
	}
	slices.SortStableFunc(others, func(a, b crossing) int {
		switch d := a.y + a.z - b.y - b.z; {
		case d < 0:
			return -1
		case d > 0:
			return 1
		}
		return 0
	})
	y, z, _ := s.point(rows, line, at)
	var p int
	role := s.o.Lines[line].Role
	switch {
	case role == Keel || role == Rabbet:
		p = 0
	case role == Buttock:
		p = sort.Search(len(others), func(i int) bool { return others[i].y >= y })
		for i, c := range others {
			if c.y >= y {
				p = i
				break
			}
		}
	case role == Chine:
		return nil
	default:
		p = len(others)
		for i, c := range others {
			if c.z >= z {
				p = i
				break
			}
		}
	}
	var all [][]int
	pick := func(from, to int) {
		if from < 0 || to > len(others) {
			return
		}
		var st []int
		for _, c := range others[from:to] {
			st = append(st, c.line)
		}
		all = append(all, st)
	}
	pick(p-1, p+1)
	pick(p-2, p+2)
	skip := func(i, j int) {
		if i >= 0 && j < len(others) {
			all = append(all, []int{others[i].line, others[j].line})
		}
	}
	skip(p-2, p)
	skip(p-1, p+1)
	if p < 1 {
		pick(p, p+2)
		pick(p, p+3)
	}
	if p > len(others)-1 {
		pick(p-2, p)
		pick(p-3, p)
	}
	return all
}

// depart is how far a line's point at a station lies off the polynomial through
// the stencil's, in the direction it is measured in, and how rounding grows in
// it.
func (s *sections) depart(rows []fair.Row, line, at int, stencil []int) (d, grow, lever float64, rank int, ok bool) {
	y, z, ok := s.point(rows, line, at)
	if !ok {
		return 0, 0, 0, 0, false
	}
	n := len(stencil)
	var ys, zs [4]float64
	for i, l := range stencil {
		if ys[i], zs[i], ok = s.point(rows, l, at); !ok {
			return 0, 0, 0, 0, false
		}
	}
	if s.bent(rows, line, at, stencil, zs[:n], z) || s.ended(stencil, ys[:n]) {
		return 0, 0, 0, 0, false
	}
	// The chord of the stencil is the local axis.
	ay, az := ys[n-1]-ys[0], zs[n-1]-zs[0]
	long := math.Hypot(ay, az)
	if long == 0 {
		return 0, 0, 0, 0, false
	}
	ay, az = ay/long, az/long
	vertical := s.o.Lines[line].View == Height
	var along, out [4]float64
	for i := range n {
		along[i] = (ys[i]-ys[0])*ay + (zs[i]-zs[0])*az
		out[i] = -(ys[i]-ys[0])*az + (zs[i]-zs[0])*ay
	}
	// Newton's steps in the direction of the view from the point to the curve.
	// Its place among the stencil's points must be the same at every station.
	pa, po := (y-ys[0])*ay+(z-zs[0])*az, -(y-ys[0])*az+(z-zs[0])*ay
	va, vo := ay, -az // a step outwards
	if vertical {
		va, vo = az, ay
	}
	moved := 0.0
	for range 8 {
		value, slope := poly(along[:n], out[:n], pa+moved*va)
		f := po + moved*vo - value
		df := vo - slope*va
		if math.Abs(df) < 0.25 {
			return 0, 0, 0, 0, false
		}
		step := f / df
		moved -= step
		if math.Abs(step) < 1e-3 {
			break
		}
		if math.Abs(moved) > 4*long {
			return 0, 0, 0, 0, false
		}
	}
	_, slope := poly(along[:n], out[:n], pa+moved*va)
	rank = 0
	for i := range n {
		if along[i] < pa+moved*va {
			rank++
		}
	}
	df := vo - slope*va
	sum := 0.0
	var w [4]float64
	lagrange(along[:n], pa+moved*va, w[:n])
	for i := range n {
		sum += w[i] * w[i]
	}
	lever = 1 / df
	for i := range n {
		lever *= pa + moved*va - along[i]
	}
	return -moved, math.Sqrt(1 + sum/(df*df)), lever, rank, true
}

// bent says that the section has its chine inside a stencil at a station.
func (s *sections) bent(rows []fair.Row, line, at int, stencil []int, zs []float64, z float64) bool {
	if s.chine < 0 {
		return false
	}
	n := len(stencil)
	for i, l := range stencil {
		if l == s.chine {
			return i > 0 && i < n-1 || i == 0 && z < zs[0] || i == n-1 && z > zs[n-1]
		}
	}
	_, c, ok := s.point(rows, s.chine, at)
	return ok && c > min(z, slices.Min(zs)) && c < max(z, slices.Max(zs))
}

// ended says that some of a stencil's lines have come to nothing and others have
// not: where a line has ended its nothing says little of the section.
func (s *sections) ended(stencil []int, ys []float64) bool {
	none, some := false, false
	for i, l := range stencil {
		if s.hold[l][0] >= 0 {
			none, some = none || ys[i] == 0, some || ys[i] != 0
		}
	}
	return none && some
}

func lagrange(x []float64, at float64, w []float64) {
	for i := range x {
		w[i] = 1
		for j := range x {
			if j != i {
				w[i] *= (at - x[j]) / (x[i] - x[j])
			}
		}
	}
}

// poly is the polynomial through the points and its slope.
func poly(x, y []float64, at float64) (value, slope float64) {
	var w [4]float64
	lagrange(x, at, w[:len(x)])
	for i := range x {
		value += w[i] * y[i]
	}
	const h = 1e-3
	lagrange(x, at+h, w[:len(x)])
	next := 0.0
	for i := range x {
		next += w[i] * y[i]
	}
	return value, (next - value) / h
}

// compare is the line's departure from the stencil at a station against its
// departures at the stations beside it, as the bending of the section: the
// departure over the lever it has there.
func (s *sections) compare(rows []fair.Row, scale float64, line, at int, stencil []int) (fair.Opinion, bool) {
	e, grow, lever, rank, ok := s.depart(rows, line, at, stencil)
	if !ok {
		return fair.Opinion{}, false
	}
	type seen struct{ x, bend, noise float64 }
	look := func(step int) (all []seen) {
		for k := at + step; k >= 0 && k < len(s.o.Stations) && len(all) < 2; k += step {
			d, g, l, same, ok := s.depart(rows, line, k, stencil)
			if !ok || same != rank || math.Abs(l) < 1e-9 {
				break
			}
			all = append(all, seen{rows[line].X[k], d / l * lever, g / math.Abs(l) * math.Abs(lever)})
		}
		return all
	}
	before, after := look(-1), look(1)
	x := rows[line].X[at]
	var want, noise, bend float64
	slack := func(d, noise float64) float64 { return max(0, math.Abs(d)-2.5*noise*scale) }
	switch {
	case len(before) >= 1 && len(after) >= 1:
		// Straight between the sections on both sides; how much it is not, by those
		// beyond.
		mean := func(a, b seen) (v, product, noise float64) {
			p, q := x-a.x, b.x-x
			return (a.bend*q + b.bend*p) / (p + q), p * q, math.Hypot(a.noise*q, b.noise*p) / (p + q)
		}
		near, p, n := mean(before[0], after[0])
		want, noise = near, n
		if len(before) == 2 || len(after) == 2 {
			far, q, m := mean(before[len(before)-1], after[len(after)-1])
			bend = slack(near-far, math.Hypot(m, n)) * p / (q - p)
		} else {
			bend = slack(before[0].bend-after[0].bend, math.Hypot(before[0].noise, after[0].noise)) / 2
		}
	case len(before) == 2:
		want, noise = before[0].bend, before[0].noise
		bend = slack(before[0].bend-before[1].bend, math.Hypot(before[0].noise, before[1].noise)) * (x - before[0].x) / (before[0].x - before[1].x)
	case len(after) == 2:
		want, noise = after[0].bend, after[0].noise
		bend = slack(after[0].bend-after[1].bend, math.Hypot(after[0].noise, after[1].noise)) * (after[0].x - x) / (after[1].x - after[0].x)
	default:
		return fair.Opinion{}, false
	}
	y := rows[line].Y[at]
	return fair.Opinion{Value: y - (e - want), Sd: math.Hypot(math.Hypot(grow, noise)*scale, math.Hypot(KB*bend, KL*want))}, true
}

var KB, KL = 1.5, 0.1

var _ = measure.Inch
