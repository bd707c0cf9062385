package hull

import (
	"fmt"
	"math"
	"testing"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// TestWigleyBevels holds the bevel board to the formulas of the Wigley hull:
// level bevel atan|y_x|, square bevel atan(|y_x| / sqrt(1 + y_z^2)).
func TestWigleyBevels(t *testing.T) {
	// The formulas against the table worked with them at x = 5, z = 1: level
	// 10.619655, square 7.789048.
	level, square := wigleyBevels(5, 1)
	near(t, "level", level, 10.619655, 1e-6)
	near(t, "square", square, 7.789048, 1e-6)
	for _, c := range []struct {
		unit, step measure.Length
		within     float64
	}{
		{measure.Metre, measure.Millimetre / 100, 0.02},
		{measure.Foot, measure.Eighth, 0.4},
	} {
		h := draw(wigley(c.unit, c.step), DefaultRules())
		worst, sum, count := 0.0, 0.0, 0
		worstLevel := 0.0
		for _, b := range h.board(h.newNet()) {
			if b.Role != Waterline && b.Role != Deck {
				continue
			}
			var k, wl int
			fmt.Sscan(b.Station, &k)
			z := 0.0
			if b.Role == Waterline {
				fmt.Sscanf(b.Line, "WL %d", &wl)
				z = 2 - float64(wl)/4
			}
			if k == 0 || k == 20 || wl == 0 && b.Role == Waterline {
				continue // inside the table
			}
			level, square := wigleyBevels(float64(k)-10, z)
			off := math.Abs(float64(b.Square) - square)
			worst, count, sum = max(worst, off), count+1, sum+off*off
			worstLevel = max(worstLevel, math.Abs(float64(b.Level)-level))
		}
		if count != 19*9 {
			t.Fatalf("%d bevels", count)
		}
		t.Logf("square bevels out by %.4f at worst, %.4f in the mean of squares, level by %.4f", worst, math.Sqrt(sum/float64(count)), worstLevel)
		if worst > c.within || worstLevel > c.within {
			t.Errorf("bevels are out by %.4f degrees square and %.4f level, more than %.4f", worst, worstLevel, c.within)
		}
	}
}

// wigleyBevels is the level and square bevel at x from midships and z down.
func wigleyBevels(x, z float64) (level, square float64) {
	yx := 2.5 * (2 * math.Abs(x) / 100) * (1 - z*z/4)
	yz := 2.5 * (1 - x*x/100) * (2 * z / 4)
	return math.Atan(yx) * 180 / math.Pi, math.Atan(yx/math.Hypot(1, yz)) * 180 / math.Pi
}

// TestParallel holds the deduction of the planking to a plane's, a cylinder's and
// a cone's own: on a round the radius less the thickness over the cosine of the
// slope of its side, where t sqrt(1 + y_x^2 + y_z^2) along the level is out by three
// eighths.
func TestParallel(t *testing.T) {
	const thick = 1.625
	for _, slope := range []float64{0, 0.1} {
		radius := func(x float64) float64 { return 36 - slope*x }
		h := draw(roundOffsets(radius), DefaultRules())
		n := h.newNet()
		first := 0.0
		for k := range h.o.Stations {
			r := radius(h.x[k])
			inner := r - thick*math.Hypot(1, slope)
			c, _ := h.parallel(n, k, thick, 0)
			for i := range 101 {
				p := c.at(c.t[len(c.t)-1] * float64(i) / 100)
				near(t, "radius inside", math.Hypot(p.y, 36-p.z), inner, 1./64)
			}
			near(t, "girth inside", c.length(), inner*math.Pi/2, inner*1e-4)
			for z := 8.0; z <= 32; z += 2 { // below the axis
				if z > inner {
					continue
				}
				q, ok := c.nearest(point{h.x[k], r, 36 - z}, func(p point) float64 { return p.z - (36 - z) })
				want := math.Sqrt(inner*inner - z*z)
				if !ok {
					t.Fatalf("no half-breadth at %v", z)
				}
				near(t, "half-breadth inside", q.y, want, 1./64)
				y := math.Sqrt(r*r - z*z)
				level := thick * math.Sqrt(1+(r*slope/y)*(r*slope/y)+z*z/(y*y))
				first = max(first, math.Abs(y-level-want))
			}
			out, _ := h.parallel(n, k, -thick, 0)
			near(t, "girth outside", out.length(), (r+thick*math.Hypot(1, slope))*math.Pi/2, r*1e-4)
		}
		if slope == 0 { // by hand at 32 below the axis: 16.492 - 1.625 x 36/16.492 against 12.556
			near(t, "first order along the level", first, 3./8, 1./64)
		}
	}
}

// TestParallelPlane lays planking into a flat-sided, hard-chined hull: a bottom
// rising 1 in 4 and a side leaning out 1 in 5, the same at every station but for
// a taper of 1 in 10.
func TestParallelPlane(t *testing.T) {
	o := chined(0.1)
	h := draw(o, DefaultRules())
	n := h.newNet()
	const thick = 1.0
	for k := range h.o.Stations {
		c, _ := h.parallel(n, k, thick, 0)
		// The planes by their squares: bottom z - y/4 = 0, side y - 30 + x/10 - (z-10)/5 = 0.
		bottom := point{0, -0.25, 1}.unit()
		side := point{0.1, 1, -0.2}.unit()
		for i := range 201 {
			p := c.at(c.t[len(c.t)-1] * float64(i) / 200)
			inBottom := p.dot(bottom) - 0
			inSide := -(p.minus(point{0, 30, 10}).dot(side))
			if math.Abs(min(inBottom, inSide)-thick) > 1./64 {
				t.Fatalf("%v lies %.4f inside the bottom and %.4f inside the side", p, inBottom, inSide)
			}
		}
		if len(c.corners()) != 1 {
			t.Errorf("%d corners", len(c.corners()))
		}
	}
}

// TestMouldFaces lays down moulds 3/4 in thick for a cone that narrows 1 in 10 aft,
// under an inch of planking. With bevelled edges the outline on the station line is
// the planking's inside, whichever face stands there. With square ones a mould
// that reaches aft of its line, fore face on it, is so much smaller as the cone falls
// in over its thickness; one that reaches forward is not. The cone is widest at
// station 0 and narrows from there: the standing face is the after one at all.
func TestMouldFaces(t *testing.T) {
	o := roundOffsets(func(x float64) float64 { return 36 - x/10 })
	list := []Strake{{Name: "1-8", Skin: Planks, Count: source.Is(8), Thickness: source.Is(measure.Inch)}}
	for _, c := range []struct {
		face    MouldFace
		square  bool
		proud   float64
		fore    bool
		stands  string
		degrees float64
	}{
		{FaceFore, false, 0, true, "under", -1},
		{FaceAfter, false, 0, false, "standing", 1},
		{FaceStanding, false, 0, false, "standing", 1},
		{FaceFore, true, 0.075, true, "under", -1},
		{FaceAfter, true, 0, false, "standing", 1},
		{FaceStanding, true, 0, false, "standing", 1},
	} {
		r := DefaultRules()
		r.MouldThickness, r.MouldFace, r.MouldSquare = 3*measure.Inch/4, c.face, c.square
		s, _ := Work(o, list, r)
		count := 0
		for _, m := range s.Moulds {
			if m.Surface != InsidePlanking || m.Role != Waterline {
				continue
			}
			radius, below := 36-1.2*float64(m.Place)-math.Hypot(1, 0.1)-c.proud, 36-m.At.Inches()
			near(t, fmt.Sprintf("%v square %v, %s at station %s", c.face, c.square, m.Line, m.Station), m.Offset.Inches(), math.Sqrt(radius*radius-below*below), 1./64)
			count++
		}
		if count != 66 {
			t.Fatalf("%d figures", count)
		}
		for _, b := range s.Board {
			if (b.Face == "fore") != c.fore || b.Word() != c.stands {
				t.Errorf("%v: %s at station %s has its %s face on the line and stands %s", c.face, b.Line, b.Station, b.Face, b.Word())
			}
			// The sign is the matter here; how near is TestWigleyBevels's.
			near(t, "square bevel", float64(b.Square), c.degrees*math.Atan(0.1)*180/math.Pi, 0.1)
		}
	}
}

// TestUpsideDown takes every height for the moulds down from the floor, 50 in from
// the base line, and leaves the breadths as they are.
func TestUpsideDown(t *testing.T) {
	o := barrel()
	r := DefaultRules()
	up, _ := Work(o, planked(), r)
	r.FloorToBase = 50 * measure.Inch
	down, _ := Work(o, planked(), r)
	if len(up.Moulds) == 0 || len(up.Moulds) != len(down.Moulds) {
		t.Fatalf("%d and %d figures", len(up.Moulds), len(down.Moulds))
	}
	heights, levels := 0, 0
	for i, a := range up.Moulds {
		b := down.Moulds[i]
		if a.View == Height {
			a.Offset = r.FloorToBase - a.Offset
			heights++
		}
		if a.Role == Waterline {
			a.At = r.FloorToBase - a.At
			levels++
		}
		if a != b {
			t.Errorf("%+v, want %+v", b, a)
		}
	}
	if heights == 0 || levels == 0 {
		t.Errorf("%d heights, %d breadths at a level", heights, levels)
	}
	// By hand, the deck: 60 above base is 10 beyond the floor; its planking ends at
	// the same height.
	for _, m := range down.Moulds {
		if m.Role == Deck && m.View == Height && m.Offset != -10*measure.Inch {
			t.Errorf("the deck lies %v from the floor", m.Offset)
		}
	}
}

// TestMouldsMeetAtTheMiddle lays planking of 1 in on straight sides that rise from a
// rabbet half an inch out, y = 1/2 + z/2: inside of it y = 1/2 + z/2 - sqrt(1 + 1/4),
// which meets its fellow at z = 1.236 in. No figure of the moulds lies past the
// middle, the rabbet's are of where they meet, and the waterline below has none.
func TestMouldsMeetAtTheMiddle(t *testing.T) {
	var o Offsets
	add := prism(&o)
	add(Line{Name: "rabbet", View: Height, Role: Rabbet}, 0)
	add(Line{Name: "rabbet", Role: Rabbet}, 0.5)
	add(Line{Name: "deck", View: Height, Role: Deck}, 24)
	add(Line{Name: "deck", Role: Deck}, 12.5)
	for _, z := range []float64{1, 6, 12, 18} {
		add(Line{Name: fmt.Sprint("WL ", z), Role: Waterline, At: source.Is(measure.Inches(z))}, 0.5+z/2)
	}
	s, _ := Work(o, []Strake{{Name: "1-4", Skin: Planks, Count: source.Is(4), Thickness: source.Is(measure.Inch)}}, DefaultRules())
	figures := map[string]float64{}
	for _, m := range s.Moulds {
		if m.View == HalfBreadth && m.Offset < 0 {
			t.Errorf("%s at station %s lies %v past the middle line", m.Line, m.Station, -m.Offset)
		}
		if m.Surface == InsidePlanking && m.Station == "2" {
			figures[fmt.Sprint(m.Line, " ", m.View)] = m.Offset.Inches()
		}
	}
	near(t, "rabbet's half-breadth", figures["rabbet half-breadth"], 0, 1e-9)
	near(t, "rabbet's height", figures["rabbet height"], 2*math.Sqrt(1.25)-1, 1e-3)
	near(t, "WL 6", figures["WL 6 half-breadth"], 3.5-math.Sqrt(1.25), 1e-3)
	if y, ok := figures["WL 1 half-breadth"]; ok {
		t.Errorf("the moulds have a half-breadth of %v at WL 1", y)
	}
}
