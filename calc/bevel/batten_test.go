package bevel

import (
	"math"
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// The plank lies on the bench in space: x along its free edge, y across it, z up
// from the bench. Nothing here is worked by the formulas of the code: the blade is
// a plane that starts square to the saw's base and is turned about the line where
// it leaves it, and the faces are planes that it meets.

type vec [3]float64

func (a vec) minus(b vec) vec     { return vec{a[0] - b[0], a[1] - b[1], a[2] - b[2]} }
func (a vec) plus(b vec) vec      { return vec{a[0] + b[0], a[1] + b[1], a[2] + b[2]} }
func (a vec) times(k float64) vec { return vec{a[0] * k, a[1] * k, a[2] * k} }
func (a vec) dot(b vec) float64   { return a[0]*b[0] + a[1]*b[1] + a[2]*b[2] }
func (a vec) cross(b vec) vec {
	return vec{a[1]*b[2] - a[2]*b[1], a[2]*b[0] - a[0]*b[2], a[0]*b[1] - a[1]*b[0]}
}
func (a vec) unit() vec           { return a.times(1 / math.Sqrt(a.dot(a))) }
func (a vec) angle(b vec) float64 { return math.Acos(a.unit().dot(b.unit())) * 180 / math.Pi }
func (a vec) off(p, way vec) float64 { // distance from the line through p
	d := a.minus(p).cross(way.unit())
	return math.Sqrt(d.dot(d))
}

// turned is a direction turned about an axis by so many degrees (Rodrigues).
func (a vec) turned(axis vec, degrees float64) vec {
	s, c := math.Sincos(degrees * math.Pi / 180)
	axis = axis.unit()
	return a.times(c).plus(axis.cross(a).times(s)).plus(axis.times(axis.dot(a) * (1 - c)))
}

// plane is a plane through a place, square to a direction.
type plane struct{ p, square vec }

// meet is where three planes meet.
func meet(a, b, c plane) vec {
	bc, ca, ab := b.square.cross(c.square), c.square.cross(a.square), a.square.cross(b.square)
	sum := bc.times(a.p.dot(a.square)).plus(ca.times(b.p.dot(b.square))).plus(ab.times(c.p.dot(c.square)))
	return sum.times(1 / a.square.dot(bc))
}

// sawn is a plank that has been through the saw, at the place abreast of x = 0.
type sawn struct {
	inside, outside float64 // widths of its faces
	gauge           float64 // the edge to the inside face, measured through the wood
	blade           float64 // of blade below the base
}

// saw cuts a plank with the batten's edge so far from its free edge at x = 0 and
// going out by so much an inch, the blade set to a bevel by the rules' hand.
func saw(edge, taper, thick float64, set measure.Angle, r Rules) sawn {
	base := thick + r.Batten.Inches()
	along := vec{1, taper, 0}.unit()
	across := vec{-taper, 1, 0}.unit()
	leaves := vec{0, edge, base}.plus(across.times(r.Offset.Inches()))
	// Turned about the way the saw goes: leaning in under the plank the blade's lower
	// end comes nearer to the free edge.
	lean := math.Abs(float64(set))
	switch r.Lean(set) {
	case "in under":
		lean = -lean
	case "square":
		lean = 0
	}
	down := vec{0, 0, -1}.turned(along, lean)
	blade := plane{leaves, along.cross(down)}
	bench, top := plane{vec{}, vec{0, 0, 1}}, plane{vec{0, 0, thick}, vec{0, 0, 1}}
	abreast := plane{vec{}, vec{1, 0, 0}}
	low, high := meet(blade, bench, abreast), meet(blade, top, abreast)
	free := vec{1, 0, 0}
	s := sawn{outside: high.off(vec{0, 0, thick}, free), inside: low.off(vec{}, free), blade: low.off(leaves, along)}
	into, edgeUp := across.times(-1), high.minus(low)
	edgeUp = edgeUp.minus(along.times(edgeUp.dot(along))) // square to the cut
	s.gauge = edgeUp.angle(into)
	if r.FaceUp == Inside {
		s.inside, s.outside = s.outside, s.inside
		s.gauge = edgeUp.times(-1).angle(into)
	}
	return s
}

// TestBattenByConstruction saws planks in space by the batten's width the code
// gives: the inside face comes out at the width wanted, a gauge with its stock on
// the inside face reads 90 and the bevel, and the blade reaches the bench with the
// spare to spare. Either face up.
func TestBattenByConstruction(t *testing.T) {
	near := func(what string, got, want, within float64) {
		t.Helper()
		if math.Abs(got-want) > within {
			t.Errorf("%s: %v, want %v", what, got, want)
		}
	}
	for _, up := range []Face{Outside, Inside} {
		for _, batten := range []float64{0, 0.75} {
			for _, b := range []measure.Angle{-6, -1.5, 0, 2, 4, 9} {
				r := DefaultRules()
				r.FaceUp, r.Batten = up, measure.Inches(batten)
				const thick, want = 1.25, 5.0
				edge := Batten(measure.Inches(want), measure.Inches(thick), b, r).Inches()
				s := saw(edge, 0, thick, b, r)
				near("inside face", s.inside, want, 1e-6)
				near("gauge", s.gauge, 90+float64(b), 1e-6)
				if wider := s.outside > s.inside+1e-9; wider != (b > 0) {
					t.Errorf("up %d, bevel %v: outside face wider is %v", up, b, wider)
				}
				near("blade", s.blade, (Depth(measure.Inches(thick), b, r) - r.DepthSpare).Inches(), 1e-6)
				// Where the plank narrows by 3 in in 10 ft the saw goes aslant of the free
				// edge: the bevel is as true, the width within a thousandth.
				s = saw(edge, -0.025, thick, b, r)
				near("inside face of a taper", s.inside, want, 0.001)
				near("gauge on a taper", s.gauge, 90+float64(b), 1e-6)
			}
		}
	}
}

// TestBattenBeforeTheBackIsWorked saws boards .844 in thick for planks of .625 in: of
// a back still to be hollowed the corners of the inside face lie on the board's own
// and come out at the width wanted, of one to be rounded .219 in off it.
func TestBattenBeforeTheBackIsWorked(t *testing.T) {
	const board, want, worked = 0.844, 5.375, 0.219
	for _, up := range []Face{Outside, Inside} {
		for _, off := range []float64{0, worked} {
			r := DefaultRules()
			r.FaceUp, r.Batten = up, measure.Inches(0.75)
			p := Schedule{Thickness: measure.Inches(board), Worked: measure.Inches(worked), Rounded: measure.Inches(off)}
			for _, b := range []measure.Angle{-9, 4, 19} {
				s := saw(p.edge(measure.Inches(want), b, r).Inches(), 0, board, b, r)
				if got := s.inside + off*b.Tan(); math.Abs(got-want) > 1e-6 {
					t.Errorf("up %d, bevel %v, corners %v off: %v wide, want %v", up, b, off, got, want)
				}
			}
		}
	}
}

// TestSetOutByConstruction saws a twisting plank by a parallel batten: it comes
// out narrow by what the marks say the batten must be set out, and wide by what
// they say it must be set in. The batten is right half way from -2 to 6, at 2.
func TestSetOutByConstruction(t *testing.T) {
	for _, up := range []Face{Outside, Inside} {
		r := DefaultRules()
		r.FaceUp, r.Batten = up, measure.Inches(0.75)
		made, _ := Schedules(table(-2, -0.5, 1, 3, 4.5, 6), plank(1, 5), nil, nil, r)
		s := made[0]
		if s.Parallel != 2 {
			t.Errorf("parallel at %v, want 2", s.Parallel)
		}
		parallel := Batten(s.Width, s.Thickness, s.Parallel, r).Inches()
		moved := 0.0
		for _, m := range s.Marks {
			got := saw(parallel, 0, s.Thickness.Inches(), m.Set, r)
			if short := m.Width.Inches() - got.inside; math.Abs(short-m.SetOut.Inches()) > 1e-6 {
				t.Errorf("at %v: narrow by %v, set out %v", m.At, short, m.SetOut)
			}
			moved = max(moved, math.Abs(m.SetOut.Inches()))
		}
		if moved < 0.05 {
			t.Errorf("nothing to set out: %v", moved)
		}
	}
}

// TestBattenByStation lists a plank's widths at the first, the middle and the last
// station only, and in no one figure: it has its batten and its blade all the same,
// at each of these by the width listed there, and between by those as drawn on.
func TestBattenByStation(t *testing.T) {
	r := DefaultRules()
	one := plank(1, 0)[0]
	one.Width = source.Reading[measure.Length]{}
	want := map[string]float64{"A": 4, "C": 6, "E": 5}
	for _, at := range []string{"A", "C", "E"} {
		one.WidthAt = append(one.WidthAt, hull.Station{Name: at})
		one.Widths = append(one.Widths, source.Is(measure.Inches(want[at])))
	}
	made, _ := Schedules(table(1, 2, 3, 4, 5), []hull.Strake{one}, nil, nil, r)
	if s := made[0]; s.Width != 6*measure.Inch || s.widthFrom != byStation || s.Depth != Depth(s.Thickness, s.Steepest, r) {
		t.Errorf("width %v %s, blade %v", s.Width, s.widthFrom, s.Depth)
	}
	for _, m := range made[0].Marks {
		if w := want[m.Station]; w > 0 && m.Width != measure.Inches(w) || m.Width < 4*measure.Inch || m.Width > 6*measure.Inch {
			t.Errorf("at %v, station %q: %v wide", m.At, m.Station, m.Width)
		}
		if m.Batten != Batten(m.Width, made[0].Thickness, m.Set, r) {
			t.Errorf("at %v: batten %v", m.At, m.Batten)
		}
	}
	// On a hull lined off by widths at three stations the plank is as wide between
	// them as it is drawn.
	o, strakes := roundOf(9, 12)
	for i := range strakes {
		strakes[i].Width = source.Reading[measure.Length]{}
		for _, k := range []int{0, 4, 8} { // a quarter round of 36 in, an arc each
			strakes[i].WidthAt = append(strakes[i].WidthAt, o.Stations[k])
			strakes[i].Widths = append(strakes[i].Widths, source.Is(measure.Inches(36*math.Pi/2/12)))
		}
	}
	shape, _ := hull.Work(o, strakes, hull.DefaultRules())
	made, _ = Computed(shape, strakes, nil, nil, r)
	if len(made) != 11 {
		t.Fatalf("%d cards", len(made))
	}
	for _, s := range made {
		if s.Depth <= 0 || s.widthFrom != linedOff {
			t.Errorf("plank %s: widths %s, blade %v", s.Strake, s.widthFrom, s.Depth)
		}
		for _, m := range s.Marks {
			if math.Abs(m.Width.Inches()-36*math.Pi/2/12) > 0.02 || m.Batten <= 0 {
				t.Errorf("plank %s at %v: %v wide, batten %v", s.Strake, m.At, m.Width, m.Batten)
			}
		}
	}
}
