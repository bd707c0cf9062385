package hull

import (
	"math"
	"slices"

	"strakebook/calc/fair"
)

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
