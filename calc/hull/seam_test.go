package hull

import (
	"fmt"
	"math"
	"testing"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// TestRoundSeams holds the turn at a seam on a round to 2 asin(w/2R), w the
// planks' width on the chord: R 36 in quarters of eight and of eleven planks.
func TestRoundSeams(t *testing.T) {
	for _, n := range []int{8, 11} {
		s, _ := Work(roundOffsetsEvery(1, func(float64) float64 { return 36 }), []Strake{{Name: "P", Skin: Planks, Count: source.Is(n)}}, DefaultRules())
		w := 2 * 36 * math.Sin(math.Pi/4/float64(n))
		want := 2 * math.Asin(w/72) * 180 / math.Pi
		for j, seam := range s.Linings[0].Seams {
			for k, p := range seam.Points {
				if inner := j > 0 && j < n; inner != p.HasBevel {
					t.Fatalf("seam %d at station %d: %v", j, k, p.HasBevel)
				}
				if p.HasBevel {
					near(t, "turn", float64(p.Bevel), want, 0.0057) // 1e-4 of a radian
				}
			}
		}
	}
	// On a cone the planks taper as the radius does: the turn is the same all along
	// but that the plane is square to the seam, not to the axis.
	s, _ := Work(roundOffsetsEvery(1, func(x float64) float64 { return 36 - x/10 }), []Strake{{Name: "P", Skin: Planks, Count: source.Is(8)}}, DefaultRules())
	first := s.Linings[0].Seams[4].Points[3].Bevel
	for k := 1; k < 10; k++ {
		near(t, "turn along a cone", float64(s.Linings[0].Seams[4].Points[k].Bevel), float64(first), 0.005)
	}
}

// TestLoose turns a seam by a step of an eighth over a plank of 5 in: atan(1/40).
func TestLoose(t *testing.T) {
	near(t, "by an eighth", float64((&Shape{Step: measure.Eighth}).Loose(5*measure.Inch)), math.Atan(1./40)*180/math.Pi, 1e-9)
}

// TestTurnsOfTheTable holds the turn between planks of widths w and v, chords of a
// round of radius R, to asin(w/2R) + asin(v/2R).
func TestTurnsOfTheTable(t *testing.T) {
	for _, c := range []struct{ r, above, below, turn float64 }{
		{12, 3, 3, 14.361512}, {24, 4, 4, 9.560384}, {36, 5, 5, 7.964157}, {48, 6, 6, 7.166643}, {60, 3.5, 3.5, 3.342728},
		{18, 2.5, 2.5, 7.964157}, {300, 100, 100, 19.188136}, {24, 4, 5, 10.759349},
	} {
		got := turnOnRound(func(float64) (r, above, below float64) { return c.r, c.above, c.below }, 100)
		near(t, fmt.Sprint("turn on ", c.r), got(5), c.turn, 1e-4*c.turn)
	}
	// A cone whose radius goes from 30 to 20 as the planks go from 5 to 3 wide, so long
	// that square to its axis is square to its seams: half of the turn at each tenth.
	got := turnOnRound(func(part float64) (r, above, below float64) { return 30 - 10*part, 5 - 2*part, 5 - 2*part }, 1e4)
	// At its very ends the plane square to the seam passes clear of the other two.
	for i, want := range []float64{4.747149, 4.711748, 4.673726, 4.632783, 4.588566, 4.540667, 4.488607, 4.431819, 4.369627} {
		near(t, "half turn along the cone", got(i+1)/2, want, 1e-4*want)
	}
}

// turnOnRound is the turn at the tenths of a seam at the side of a round, by the
// radius and the widths of the planks above and below at a part of its length.
func turnOnRound(at func(part float64) (r, above, below float64), length float64) func(tenth int) float64 {
	edge := func(up float64) *curve {
		return formulaCurve(10, func(part float64) point {
			r, above, below := at(part)
			width := above
			if up < 0 {
				width = below
			}
			s, c := math.Sincos(2 * up * math.Asin(width/2/r))
			return point{length * part, r * c, r * s}
		})
	}
	above, middle, below := edge(1), edge(0), edge(-1)
	return func(tenth int) float64 {
		angle, _ := seamTurn(above, below, middle.p[tenth], middle.out[tenth].unit(), false)
		return angle * 180 / math.Pi
	}
}

// surfaceHull is a hull of a formula for the reference: the half-breadth at x
// and height z between foot and head.
type surfaceHull struct {
	length     float64
	foot, head func(x float64) float64
	half       func(x, z float64) float64
}

// seamAt is where the seam at a share of the girth from the sheer crosses x, by a
// sum over short pieces.
func (h surfaceHull) seamAt(x, share float64) point {
	const n = 2000
	foot, head := h.foot(x), h.head(x)
	z := func(i int) float64 { // closer together at the foot, where the floor is flat
		u := float64(i) / n
		return foot + (head-foot)*u*u
	}
	var s [n + 1]float64
	y, at := h.half(x, foot), foot
	for i := 1; i <= n; i++ {
		v := h.half(x, z(i))
		s[i] = s[i-1] + math.Hypot(v-y, z(i)-at)
		y, at = v, z(i)
	}
	want := (1 - share) * s[n]
	low, high := 0, n
	for high-low > 1 {
		if mid := (low + high) / 2; s[mid] < want {
			low = mid
		} else {
			high = mid
		}
	}
	part := (want - s[low]) / (s[high] - s[low])
	up := z(low) + part*(z(high)-z(low))
	return point{x, h.half(x, up), up}
}

// reference is the turn at seam j of n at x by the same construction on the hull
// of the formula: seams through 401 stations, straight between them.
type reference struct {
	n     int
	seams [][]point
	h     surfaceHull
}

func newReference(h surfaceHull, n int) reference {
	r := reference{n: n, h: h}
	for j := range n + 1 {
		var p []point
		for i := range 401 {
			p = append(p, h.seamAt(h.length*float64(i)/400, float64(j)/float64(n)))
		}
		r.seams = append(r.seams, p)
	}
	return r
}

func (r reference) turn(j int, x float64) (float64, bool) {
	const d = 1e-3
	p := r.h.seamAt(x, float64(j)/float64(r.n))
	share := float64(j) / float64(r.n)
	along := r.h.seamAt(x+d*r.h.length, share).minus(r.h.seamAt(x-d*r.h.length, share)).unit()
	meet := func(line []point) (point, bool) {
		best, ok, least := point{}, false, math.Inf(1)
		for i := 1; i < len(line); i++ {
			a, b := line[i-1].minus(p).dot(along), line[i].minus(p).dot(along)
			if a*b <= 0 && a != b {
				q := line[i-1].plus(line[i].minus(line[i-1]).times(a / (a - b)))
				if d := q.from(p); d < least {
					best, ok, least = q, true, d
				}
			}
		}
		return best, ok
	}
	up, okUp := meet(r.seams[j-1])
	down, okDown := meet(r.seams[j+1])
	if !okUp || !okDown {
		return 0, false
	}
	a, b := up.minus(p), p.minus(down)
	angle := math.Acos(a.dot(b)/a.length()/b.length()) * 180 / math.Pi
	// Rounded where the seam lies outside the chord from plank to plank: its normal
	// there by the formula.
	const e = 1e-4
	ny := point{-(r.h.half(x+e, p.z) - r.h.half(x-e, p.z)) / (2 * e), 1, -(r.h.half(x, p.z+e) - r.h.half(x, p.z-e)) / (2 * e)}
	if p.minus(up.plus(down).times(0.5)).dot(ny) < 0 {
		angle = -angle
	}
	return angle, true
}

// TestSeamsAgainstFormulas holds the computed seam bevels of hulls of formulas to
// the dense reference: within 0.1 degree from a table in hundredths of a
// millimetre and 0.5 degree from one in eighths. An eighth falls otherwise on a hull
// a little larger, whose bevels are the same: of eight such tables it is told how
// many bevels lie farther off.
func TestSeamsAgainstFormulas(t *testing.T) {
	for _, c := range []struct {
		name      string
		h         surfaceHull
		n         int // strakes
		rows      int // waterlines of the table and its keel
		inEighths float64
		beyond    int // of the eight tables' bevels, half a degree
	}{
		{"wigley", surfaceHull{240, func(float64) float64 { return 0 }, func(float64) float64 { return 24 },
			func(x, z float64) float64 { return 12 * wigleyHalf(x/12-10, 2-z/12) }}, 6, 9, 0.5, 8},
		{"full body", fullBody(), 12, 13, 0.5, 0},
		{"easy bilge", easyBilge(), 8, 13, 0.5, 0},
		// Where a section bends two ways in the breadth of a few planks the eighths
		// themselves hide more (TestEighthsHideADegree): this one misses the half degree
		// and is held to what was measured.
		{"hollow garboard", hollowGarboard(), 10, 13, 0.58, 32},
	} {
		ref := newReference(c.h, c.n)
		want := make([][]float64, c.n) // by seam and station
		for j := 1; j < c.n; j++ {
			for k := range 21 {
				v, ok := ref.turn(j, c.h.length*float64(k)/20)
				if !ok {
					v = math.NaN()
				}
				want[j] = append(want[j], v)
			}
		}
		fine := seamsOff(tabled(c.h, c.rows, measure.Millimetre/100), want)
		t.Logf("%s, hundredths of a millimetre: %v", c.name, fine)
		if fine.worst > 0.1 || fine.count < 4*c.n {
			t.Errorf("%s: %v from hundredths of a millimetre", c.name, fine)
		}
		beyond := 0
		for _, size := range []float64{1, 0.97, 0.98, 0.99, 1.01, 1.02, 1.03, 1.04} {
			off := seamsOff(tabled(c.h.sized(size), c.rows, measure.Eighth), want)
			t.Logf("%s %.2f times the size, eighths: %v", c.name, size, off)
			if off.loose > 0 {
				t.Errorf("%s %.2f times the size: %d bevels from eighths are out by more than a step over the breadth", c.name, size, off.loose)
			}
			if beyond += off.beyond; size == 1 && off.worst > c.inEighths {
				t.Errorf("%s: %v from eighths, more than %v", c.name, off, c.inEighths)
			}
		}
		if beyond > c.beyond {
			t.Errorf("%s: of eight tables in eighths %d bevels lie half a degree off, before %d", c.name, beyond, c.beyond)
		}
	}
}

// sized is the hull of another size.
func (h surfaceHull) sized(by float64) surfaceHull {
	return surfaceHull{h.length * by, func(x float64) float64 { return by * h.foot(x/by) }, func(x float64) float64 { return by * h.head(x/by) },
		func(x, z float64) float64 { return by * h.half(x/by, z/by) }}
}

// seamsOffs is how far a table's computed bevels lie off: how many there are, the
// worst, and how many lie more than half a degree off.
type seamsOffs struct {
	count, beyond, loose int // loose: farther off than Loose says
	worst, square        float64
	where                string
}

func (s seamsOffs) String() string {
	return fmt.Sprintf("%d bevels out by %.3f at worst (%s), %.3f in the mean of squares, %d by more than half a degree", s.count, s.worst, s.where, math.Sqrt(s.square/float64(s.count)), s.beyond)
}

// seamsOff holds the computed bevels of a table to what they should be, by seam and
// station; the ends of the hull are left out.
func seamsOff(o Offsets, want [][]float64) seamsOffs {
	s, _ := Work(o, []Strake{{Name: "P", Skin: Planks, Count: source.Is(len(want))}}, DefaultRules())
	var off seamsOffs
	for j := 1; j < len(want); j++ {
		points := s.Linings[0].Seams[j].Points
		for k := 1; k < len(points)-1; k++ {
			if !points[k].HasBevel || math.IsNaN(want[j][k]) {
				continue
			}
			d := math.Abs(float64(points[k].Bevel) - want[j][k])
			if d > off.worst {
				off.worst, off.where = d, fmt.Sprintf("seam %d at station %d, %.2f for %.2f", j, k, points[k].Bevel, want[j][k])
			}
			if d > 0.5 {
				off.beyond++
			}
			breadth := (s.Linings[0].Strakes[j-1].Widths[k] + s.Linings[0].Strakes[j].Widths[k]) / 2
			if d > float64(s.Loose(breadth)) {
				off.loose++
			}
			off.count, off.square = off.count+1, off.square+d*d
		}
	}
	return off
}

// hollowGarboard is a yacht of 30 ft by formula: hollow at the keel, rounded
// above, plumb at both ends.
func hollowGarboard() surfaceHull {
	return surfaceHull{360, func(float64) float64 { return 0 }, func(x float64) float64 { return 54 + 8*math.Pow(x/180-1, 2) },
		func(x, z float64) float64 {
			u := x/180 - 1
			top := 54 + 8*u*u
			v := z / top
			return 52 * (1 - u*u) * (0.35*v*v*(3-2*v) + 0.65*math.Sin(v*math.Pi/2)*math.Sin(v*math.Pi/2))
		}}
}

// easyBilge is a yacht of 35 ft by formula, of rising floor and easy bilge.
func easyBilge() surfaceHull {
	return surfaceHull{420, func(float64) float64 { return 0 }, func(x float64) float64 { return 60 + 9*math.Pow(x/210-1, 2) },
		func(x, z float64) float64 {
			u := x/210 - 1
			v := z / (60 + 9*u*u)
			return 58 * (1 - u*u) * (1 - 0.15*u) * math.Sin(1.4*v) / math.Sin(1.4)
		}}
}

// fullBody is a work boat of 40 ft by formula, rounded all the way.
func fullBody() surfaceHull {
	return surfaceHull{480, func(float64) float64 { return 0 }, func(x float64) float64 { return 72 + 10*math.Pow(x/240-1, 2) },
		func(x, z float64) float64 {
			u := x/240 - 1
			v := z / (72 + 10*u*u)
			return 78 * (1 - math.Pow(u, 4)) * v * (2.2 - 1.2*v)
		}}
}

// tabled is a hull of a formula as a table of 21 stations, its keel, so many even
// waterlines and its deck.
func tabled(h surfaceHull, rows int, step measure.Length) Offsets {
	o := Offsets{Resolution: step, Surface: OutsidePlanking, Form: measure.Form{Unit: measure.InInches, Notation: measure.Decimal}}
	const n = 21
	for k := range n {
		o.Stations = append(o.Stations, Station{Name: fmt.Sprint(k), At: source.Is(measure.Inches(h.length * float64(k) / (n - 1)))})
	}
	line := func(name string, v View, role Role, at float64, f func(x float64) (float64, bool)) {
		l := Line{Name: name, View: v, Role: role, At: source.Is(measure.Inches(at))}
		for k := range n {
			value, ok := f(h.length * float64(k) / (n - 1))
			r := source.Is(measure.Inches(value).Round(step))
			if !ok {
				r.State = source.Dash
			}
			l.Values = append(l.Values, r)
		}
		o.Lines = append(o.Lines, l)
	}
	line("keel", Height, Keel, 0, func(x float64) (float64, bool) { return h.foot(x), true })
	line("deck", Height, Deck, 0, func(x float64) (float64, bool) { return h.head(x), true })
	line("deck", HalfBreadth, Deck, 0, func(x float64) (float64, bool) { return h.half(x, h.head(x)), true })
	least := h.head(h.length / 2)
	for i := 1; i < rows; i++ {
		z := least * float64(i) / float64(rows)
		line(fmt.Sprint("WL ", i), HalfBreadth, Waterline, z, func(x float64) (float64, bool) { return h.half(x, z), z <= h.head(x) })
	}
	return o
}
