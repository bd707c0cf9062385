package hull

import (
	"fmt"
	"math"
	"reflect"
	"testing"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// TestSpileRound spiles planks 1 in thick on the inside of a cylinder's planking,
// radius 36, eight to the quarter: straight, the hollow R - sqrt(R^2 - w^2/4), .173 in
// and so 3/16 that the board is the thicker, the outside face wider at the sawn edge by
// tan b over the whole of that board.
func TestSpileRound(t *testing.T) {
	o := roundOffsetsEvery(1, func(float64) float64 { return 36 })
	o.Surface = InsidePlanking
	list := []Strake{{Name: "1-8", Skin: Planks, Count: source.Is(8), Thickness: source.Is(measure.Inch)}}
	s, _ := Work(o, list, DefaultRules())
	all, found := s.Spile(list, SawnUpper, DefaultRules())
	if len(all) != 8 || len(found) != 0 {
		t.Fatalf("%d strakes, found %v", len(all), found)
	}
	chord := 72 * math.Sin(math.Pi/32)
	bevel := 2 * math.Asin(chord/72)
	for i, p := range all {
		near(t, "length", p.Length.Inches(), 120, 1e-3)
		near(t, "sny", p.Sny.Inches(), 0, 1e-3)
		near(t, "hollow", p.Hollow.Inches(), 36-math.Sqrt(36*36-chord*chord/4), 36e-4)
		near(t, "thickness", p.Thick.Inches(), 1.1875, 1e-6)
		near(t, "twist", float64(p.Twist), 0, 1e-3)
		near(t, "end", float64(p.Fore.Off), 0, 1e-3)
		want := chord // of the flat board; along the back 36 pi/16
		if i > 0 {    // the sheer's edge is square
			want += 1.1875 * math.Tan(bevel)
		}
		near(t, "board", p.Board.Inches(), want, 36e-4)
		near(t, "straight board", p.Straight.Inches(), want, 36e-4)
		if !p.Lies {
			t.Error("a straight plank does not lie")
		}
		if n := len(p.Ordinates); n != 11 { // stations are 12 in apart, as the even steps
			t.Errorf("%d ordinates", n)
		}
		for _, o := range p.Ordinates {
			near(t, "lower edge", o.Lower.Inches(), 0, 36e-4)
			near(t, "upper edge", o.Upper.Inches(), chord, 36e-4)
			near(t, "upper edge outside", o.UpperO.Inches(), want, 36e-4)
		}
	}
	// Sawn on the other edge, or on both for half, the faces part by the tangent there
	// but at the sheer and at the last plank's lower edge; of a back to be rounded the
	// corners lie the plank's own inch from the outside face.
	for _, c := range []struct {
		sawn         Sawn
		thick        float64
		upper, lower float64 // shares of the bevel
	}{{SawnLower, 1.1875, 0, 1}, {SawnShared, 1.1875, 0.5, 0.5}, {SawnUpper, 1, 1, 0}} {
		for k := range s.Linings[0].Strakes {
			if back := &s.Linings[0].Strakes[k].Back; c.thick == 1 {
				back.Hollow = -back.Hollow
			}
		}
		all, _ := s.Spile(list, c.sawn, DefaultRules())
		for i, p := range all {
			bevelU, bevelLo := c.upper*bevel, c.lower*bevel
			if i == 0 {
				bevelU = 0
			}
			if i == 7 {
				bevelLo = 0
			}
			up, low := c.thick*math.Tan(bevelU), c.thick*math.Tan(bevelLo)
			for k, o := range p.Ordinates {
				what := fmt.Sprintf("sawn %d, plank %s: ", c.sawn, p.Strake)
				near(t, what+"along the board", o.At.Inches(), 12*float64(k), 36e-4)
				near(t, what+"lower edge outside", o.LowerO.Inches(), 0, 36e-4)
				near(t, what+"lower edge", o.Lower.Inches(), low, 36e-4)
				near(t, what+"upper edge", o.Upper.Inches(), low+chord, 36e-4)
				near(t, what+"upper edge outside", o.UpperO.Inches(), low+chord+up, 36e-4)
				near(t, what+"bevel of the upper edge", o.BevelU.Radians(), bevelU, 1e-4)
				near(t, what+"bevel of the lower edge", o.BevelLo.Radians(), bevelLo, 1e-4)
			}
		}
	}
}

// flatSide is a hull of a flat floor and wall sides 30 in out, chine at 10 in, its
// sheer hanging by a parabola to 10 in lower amidships than at the ends.
func flatSide() Offsets {
	o := chined(0)
	for i, l := range o.Lines {
		for k := range l.Values {
			x := 12*float64(k)/48 - 1
			switch {
			case l.Role == Deck && l.View == Height:
				o.Lines[i].Values[k] = source.Is(measure.Inches(40 + 10*x*x))
			case l.View == HalfBreadth:
				o.Lines[i].Values[k] = source.Is(30 * measure.Inch)
			case l.Role == Chine:
				o.Lines[i].Values[k] = source.Is(10 * measure.Inch)
			}
		}
	}
	return o
}

// TestHangAndSny lays out the side of a flat-sided hull as one strake: its upper
// edge hangs 10 in, the board must cover both the hang and the depth, and no
// straight plank lies.
func TestHangAndSny(t *testing.T) {
	o := flatSide()
	marks := SeamMarks{Skin: Planks, Kind: MarkFromSheer, Stations: o.Stations}
	var down []source.Reading[measure.Length]
	for k := range o.Stations {
		x := 12*float64(k)/48 - 1
		down = append(down, source.Is(measure.Inches(30+10*x*x)))
	}
	marks.Seams = []SeamMark{{Strake: "side", Values: down}}
	list := []Strake{{Name: "side", Skin: Planks}}
	s, _ := Work(o, list, DefaultRules(), marks)
	all, found := s.Spile(list, SawnUpper, DefaultRules())
	if len(all) != 1 {
		t.Fatal("no strake")
	}
	p := all[0]
	near(t, "hang", p.Sny.Inches(), 10, 1e-2)
	near(t, "board", p.Board.Inches(), 40, 1e-2)
	near(t, "upper amidships", p.Ordinates[len(p.Ordinates)/2].Upper.Inches(), 30, 1e-2)
	for _, o := range p.Ordinates { // to the sheer as it is given, station by station
		if o.Station != "" {
			u := 12*float64(s.station(o.Station))/48 - 1
			near(t, "upper edge at station "+o.Station, o.Upper.Inches(), 30+10*u*u, 1e-2)
		}
	}
	if p.Lies || len(found) != 1 || found[0].Kind != SpileUnfit {
		t.Errorf("lies %v, found %v", p.Lies, found)
	}
	// The middle of the strake hangs 5 in 96: 4 w 5 / 96^2. Square to its run the
	// ends are a little narrower than their depth of 40.
	near(t, "straight board", p.Straight.Inches(), 40*math.Cos(math.Atan(2*5./48)), 0.1)
	near(t, "strain", p.Strain, 4*p.Straight.Inches()*5/96./96, 1e-4)
	near(t, "width that lies", p.LiesWidth.Inches(), p.Straight.Inches()*0.002/p.Strain, 1e-2)
	// A fourth of it bends a sixteenth as much.
	q, ok := p.Between(2, 3, p.Length.Times(0.375), p.Length.Times(0.625), DefaultRules())
	if !ok || q.Piece != 2 {
		t.Fatal("no piece")
	}
	near(t, "hang of a piece", q.Sny.Inches(), 10./16, 0.04)
	near(t, "along its own board", q.Ordinates[0].At.Inches(), 0, 1)
}

// TestJointsInPlan gets out to the sweep a strake that hangs as the sheer does, 40 +
// 10 u^2 up with u = x/48 - 1, and 5 in deep all along: where a piece ends at u its
// run slopes by 20 u/48, and so far is the joint cut off square to the board of a
// piece that is the same to both sides of midships, the upper corners the shorter.
func TestJointsInPlan(t *testing.T) {
	o := flatSide()
	marks := SeamMarks{Skin: Planks, Kind: MarkFromSheer, Stations: o.Stations, Seams: []SeamMark{{Strake: "Side"}}}
	for range o.Stations {
		marks.Seams[0].Values = append(marks.Seams[0].Values, source.Is(5*measure.Inch))
	}
	list := []Strake{{Name: "side", Skin: Planks, Thickness: source.Is(measure.Inch)}}
	s, _ := Work(o, list, DefaultRules(), marks)
	all, _ := s.Spile(list, SawnUpper, DefaultRules())
	whole := all[0]
	if whole.Thick != measure.Inch { // listed as "side", marked as "Side"
		t.Errorf("%v thick, listed as an inch", whole.Thick)
	}
	p, _ := whole.Between(2, 3, whole.Length.Times(0.25), whole.Length.Times(0.75), DefaultRules())
	long := p.Ordinates[len(p.Ordinates)-1].At - p.Ordinates[0].At
	slope := math.Atan(20./48*long.Inches()/96) * 180 / math.Pi
	near(t, "fore joint in plan", float64(p.Fore.Off), -slope, 0.1)
	near(t, "after joint in plan", float64(p.After.Off), -slope, 0.1)
	if !p.Fore.Joint || !p.After.Joint || whole.Fore.Joint || whole.After.Joint {
		t.Errorf("joints %v and %v", p.Fore, p.After)
	}
	// Between two pieces the boards meet at what the two joints are off square.
	fore, _ := whole.Between(1, 2, 0, whole.Length.Times(0.6), DefaultRules())
	after, _ := whole.Between(2, 2, whole.Length.Times(0.6), whole.Length, DefaultRules())
	near(t, "boards of two pieces", float64(fore.After.Off+after.Fore.Off), float64(boardWay(fore)-boardWay(after)), 0.1)
	if fore.Fore.Joint || after.After.Joint {
		t.Error("the strake's end is a joint")
	}
}

// TestSidesAlike lists the planks of a hull side by side: both sides' come out as
// those of a hull listed for both, shape, boards and ends.
func TestSidesAlike(t *testing.T) {
	o := tuned()[0].offsets()
	row := Strake{Name: "1-8", Skin: Planks, Count: source.Is(8), Thickness: source.Is(measure.Inch)}
	port, starboard := row, row
	port.Side, starboard.Side = Port, Starboard
	starboard.Count = source.Is(9) // one more, so that the sides are lined off apart
	starboard.Name = "1-9"
	spile := func(list ...Strake) []Spiled {
		s, _ := Work(o, list, DefaultRules())
		all, _ := s.Spile(list, SawnUpper, DefaultRules())
		return all
	}
	both, apart := spile(row), spile(starboard, port)
	if len(both) != 8 || len(apart) != 17 {
		t.Fatalf("%d and %d planks", len(both), len(apart))
	}
	for i, p := range apart[9:] {
		if p.Side != Port {
			t.Fatalf("plank %s is of the side %s", p.Strake, p.Side)
		}
		p.Side = both[i].Side
		if !reflect.DeepEqual(p, both[i]) {
			t.Errorf("plank %s to port is %+v, on both sides %+v", p.Strake, p, both[i])
		}
	}
}

// boardWay is the way a piece's board runs, in degrees going up aft. Those at the
// joint point the same way for two pieces cut from one laid-out strake.
func boardWay(p Spiled) measure.Angle {
	_, way, _ := narrowest(p.shape.outline())
	return measure.Radians(math.Atan2(way.y, way.x))
}

// TestSpileKeepsLengths says that on every hull the laid-out edges are as long as
// the seams, that a hull turned end for end gives the same boards, and that the
// board covers the plank at its widest.
func TestSpileKeepsLengths(t *testing.T) {
	list := planked()
	for _, f := range append(tuned(), held()...) {
		o := f.offsets()
		s, _ := Work(o, list, DefaultRules())
		all, _ := s.Spile(list, SawnUpper, DefaultRules())
		b, _ := Work(turned(o), list, DefaultRules())
		other, _ := b.Spile(list, SawnUpper, DefaultRules())
		if len(all) == 0 || len(all) != len(other) {
			t.Fatalf("%s: %d and %d strakes", f.name, len(all), len(other))
		}
		for i, p := range all {
			what := fmt.Sprintf("%s, %s %s", f.name, p.Skin, p.Strake)
			l, k, _ := s.StrakeOf(p.Skin, p.Strake, p.Side)
			for e, edge := range [][]flat{p.shape.upper, p.shape.lower} {
				sum := 0.0
				for i := 1; i < len(edge); i++ {
					sum += edge[i].minus(edge[i-1]).length()
				}
				near(t, what, sum, l.Seams[k+e].run.length(), 1e-4*sum)
			}
			if p.Board < p.Straight-measure.SixtyFourth*4 {
				t.Errorf("%s: board %v, plank %v", what, p.Board, p.Straight)
			}
			near(t, what+" board", other[i].Board.Inches(), p.Board.Inches(), 0.02*p.Board.Inches())
			near(t, what+" sny", other[i].Sny.Inches(), p.Sny.Inches(), 0.02*math.Abs(p.Sny.Inches())+0.05)
		}
	}
}

// TestHoodEnds looks at the ends of strakes of the Wigley hull, on its plumb stem:
// there its waterline at z makes atan((1 - (z/2)^2)/2) with the middle line.
func TestHoodEnds(t *testing.T) {
	list := []Strake{{Name: "1-24", Skin: Planks, Count: source.Is(24), Thickness: source.Is(measure.Inch)}}
	for _, c := range []struct {
		stations, levels int
		step             measure.Length
		within           float64
	}{{41, 17, measure.Nanometre, 0.1}, {21, 9, measure.Nanometre, 0.5}, {21, 9, measure.Eighth, 0.6}} {
		o := wigleyTable(measure.Foot, c.step, c.stations, c.levels)
		o.Surface = InsidePlanking
		s, _ := Work(o, list, DefaultRules())
		all, _ := s.Spile(list, SawnUpper, DefaultRules())
		worst := 0.0
		for i, p := range all {
			if !p.Fore.Stem || !p.After.Stem {
				t.Errorf("ends %v and %v", p.Fore, p.After)
			}
			z := (float64(i) + 0.5) / 12 // of the middle of the strake's end
			want := math.Atan((1-z*z/4)/2) * 180 / math.Pi
			worst = max(worst, math.Abs(float64(p.Fore.Meets)-want), math.Abs(float64(p.After.Meets)-want))
			near(t, "both ends alike", float64(p.Fore.Off-p.After.Off), 0, 0.001)
		}
		t.Logf("%d stations, step %v: out by %.3f", c.stations, c.step, worst)
		if worst > c.within {
			t.Errorf("%d stations, step %v: out by %.3f degrees", c.stations, c.step, worst)
		}
	}
}

// TestEndsOfAWedge cuts the ends of a hull of flat sides, a fifth of its length in
// half-breadth, level below and its sheer rising by a tenth going aft: one strake is
// its side, and the board lies along the sheer. Plain geometry.
func TestEndsOfAWedge(t *testing.T) {
	h := surfaceHull{480, func(float64) float64 { return 0 }, func(x float64) float64 { return 40 + x/10 }, func(x, _ float64) float64 { return x / 5 }}
	list := []Strake{{Name: "1", Skin: Planks, Count: source.Is(1)}}
	for _, c := range []struct{ step, within float64 }{{1e-5, 0.01}, {0.125, 0.6}} {
		o := tabled(h, 9, measure.Inches(c.step))
		o.Surface = InsidePlanking
		foot := o.Lines[2] // the deck's breadths, and the rabbet's too
		foot.Name, foot.Role, o.Lines[0].Role = "rabbet", Rabbet, Rabbet
		o.Lines = append(o.Lines, foot)
		s, _ := Work(o, list, DefaultRules())
		all, _ := s.Spile(list, SawnUpper, DefaultRules())
		if len(all) != 1 {
			t.Fatal("no strake")
		}
		p := all[0]
		side := math.Atan(0.2) * 180 / math.Pi
		sheer := math.Atan(0.1*math.Cos(math.Atan(0.2))) * 180 / math.Pi // along the side
		near(t, "fore end off square", float64(p.Fore.Off), -sheer, c.within)
		near(t, "after end off square", float64(p.After.Off), sheer, c.within)
		near(t, "stem to the middle line", float64(p.Fore.Meets), side, c.within)
		near(t, "after end to the station", float64(p.After.Meets), 90-side, c.within)
		near(t, "stem bevel, outside longer", float64(p.Fore.Bevel), 90-side, c.within)
		near(t, "after end bevel, outside longer", float64(p.After.Bevel), side, c.within)
		if !p.Fore.Stem || p.After.Stem {
			t.Errorf("ends on %v and %v", p.Fore, p.After)
		}
		near(t, "length", p.Length.Inches(), 480/math.Cos(math.Atan(0.2))/math.Cos(sheer*math.Pi/180), 0.01+c.step)
	}
}

// TestEndsOfACone cuts the ends of the planks of a cone on its end stations: narrowing
// 1 in 10 aft the outside face is the longer forward and the inside one aft, and
// widening the other way about. The eight planks are flats 11.25 degrees round, which
// slope by a tenth of the cosine of half of that. Plain geometry.
func TestEndsOfACone(t *testing.T) {
	list := []Strake{{Name: "1-8", Skin: Planks, Count: source.Is(8), Thickness: source.Is(measure.Inch)}}
	for _, slope := range []float64{-0.1, 0.1} {
		o := roundOffsets(func(x float64) float64 { return 30 + slope*(x-60) })
		o.Surface = InsidePlanking
		s, _ := Work(o, list, DefaultRules())
		all, _ := s.Spile(list, SawnUpper, DefaultRules())
		if len(all) != 8 {
			t.Fatalf("%d planks", len(all))
		}
		lean := math.Atan(slope*math.Cos(math.Pi/32)) * 180 / math.Pi
		for _, p := range all {
			what := fmt.Sprintf("slope %g, plank %s", slope, p.Strake)
			near(t, what+" fore", float64(p.Fore.Bevel), -lean, 0.05)
			near(t, what+" after", float64(p.After.Bevel), lean, 0.05)
		}
	}
}

// TestWithout draws a hull without the figures that are not believed: the section
// with a foot too much in it comes out as if it had been right.
func TestWithout(t *testing.T) {
	o := roundBilge("round bilge", 360, 58, 54, 13, measure.Eighth).offsets()
	clean, _ := Work(o, nil, DefaultRules())
	bad := o.Without(nil)
	line := -1
	for i, l := range bad.Lines {
		if l.Name == "WL 4" {
			line = i
		}
	}
	bad.Lines[line].Values = append([]source.Reading[measure.Length]{}, bad.Lines[line].Values...)
	bad.Lines[line].Values[6].Value += measure.Foot
	spoilt, _ := Work(bad, nil, DefaultRules())
	drawn, _ := Work(bad.Without(Examine(bad, DefaultRules()).Doubts), nil, DefaultRules())
	if d := spoilt.Stations[6].Girth - clean.Stations[6].Girth; d < 3*measure.Inch {
		t.Fatalf("a foot too much changes the girth by only %v", d)
	}
	near(t, "girth", drawn.Stations[6].Girth.Inches(), clean.Stations[6].Girth.Inches(), 0.1)
	if bad.Lines[line].Values[6].State != source.Given {
		t.Error("the table itself is changed")
	}
}

// TestShutter closes a gap of 4 in inside and 4 1/4 in outside with a plank an
// inch thick: each edge leans an eighth in the inch.
func TestShutter(t *testing.T) {
	list := []Strake{{Name: "14", Skin: Planks, Thickness: source.Is(measure.Inch)}}
	gap := Gap{Skin: Planks, Strake: "14", Station: "3", Inside: source.Is(4 * measure.Inch), Outside: source.Is(measure.Inches(4.25))}
	open := gap
	open.Outside.State = source.Blank
	rows, found := (*Shape)(nil).Shutter([]Gap{gap, open}, list)
	if len(rows) != 1 || len(found) != 1 || found[0].Kind != ShutterOpen {
		t.Fatalf("rows %v, found %v", rows, found)
	}
	near(t, "bevel", rows[0].Bevel.Tan(), 1./8, 1e-12)
	// The plank so sawn fills the gap: inside width and what both edges lean.
	near(t, "outside", (rows[0].Inside + measure.Inch.Times(2*rows[0].Bevel.Tan())).Inches(), 4.25, 1e-9)
	if _, found = (*Shape)(nil).Shutter([]Gap{gap}, nil); len(found) != 1 {
		t.Error("no thickness is not found")
	}
	// Of a back still to be hollowed by a quarter the edge is 1 1/4 in, of one to be
	// rounded the corners lie the plank's own inch from the outside face.
	for hollow, want := range map[measure.Length]float64{measure.Inch / 4: 1. / 10, -measure.Inch / 4: 1. / 8} {
		s := &Shape{Linings: []Lining{{Skin: Planks, Strakes: []Lined{{Name: "14", Back: Back{Hollow: hollow, Worked: measure.Inch / 4}}}}}}
		rows, _ = s.Shutter([]Gap{gap}, list)
		near(t, "bevel before the back is worked", rows[0].Bevel.Tan(), want, 1e-12)
	}
}

// TestBack works the deepest hollow or round of a plank, up to the next 64th, and lets
// be what the bedding takes up.
func TestBack(t *testing.T) {
	in := measure.Inches
	for _, c := range []struct {
		hollows         []measure.Length
		worked, rounded measure.Length
	}{
		{[]measure.Length{in(0.1), in(0.13), in(-0.05)}, 9 * measure.SixtyFourth, 0},
		{[]measure.Length{in(0.1), in(-0.13), in(0.05)}, 9 * measure.SixtyFourth, 9 * measure.SixtyFourth},
		{[]measure.Length{in(0.06), in(-0.05)}, 0, 0}, // under 1/16
		{nil, 0, 0},
	} {
		if b := DefaultRules().back(c.hollows); b.Worked != c.worked || b.Rounded() != c.rounded {
			t.Errorf("%v: %v worked, corners %v off; want %v and %v", c.hollows, b.Worked, b.Rounded(), c.worked, c.rounded)
		}
	}
}

// BenchmarkSpile is the cost of laying out every strake of a hull.
func BenchmarkSpile(b *testing.B) {
	for _, n := range [][2]int{{30, 30}, {30, 60}, {60, 60}} {
		o, list := benchHull(n[0], n[1])
		s, _ := Work(o, list, DefaultRules())
		b.Run(fmt.Sprintf("stations=%d/seams=%d", n[0], n[1]), func(b *testing.B) {
			for b.Loop() {
				s.Spile(list, SawnUpper, DefaultRules())
			}
		})
	}
}

// TestBreadthsOfACone holds the faces of eight planks of a quarter of a cone, radius
// 36 - x/10 over 120 in, to its side: pi/2 times 36 on the whole, less 6, along the
// slant of sqrt(1.01) 120.
func TestBreadthsOfACone(t *testing.T) {
	o := roundOffsetsEvery(1, func(x float64) float64 { return 36 - x/10 })
	o.Surface = InsidePlanking
	list := []Strake{{Name: "1-8", Skin: Planks, Count: source.Is(8), Thickness: source.Is(measure.Inch)}}
	s, _ := Work(o, list, DefaultRules())
	all, _ := s.Spile(list, SawnUpper, DefaultRules())
	area := 0.0
	for _, p := range all {
		b := p.Breadths(p.Length)
		if b[0].At != 0 || (b[len(b)-1].At-p.Length).Abs() > 1000 {
			t.Errorf("from %v to %v of %v", b[0].At, b[len(b)-1].At, p.Length)
		}
		area += MeanBreadth(b, 0, p.Length).Inches() * p.Length.Inches()
		whole, halves := MeanBreadth(b, 0, p.Length), (MeanBreadth(b, 0, p.Length/2)+MeanBreadth(b, p.Length/2, p.Length))/2
		near(t, "two halves", halves.Inches(), whole.Inches(), 1e-6)
		near(t, "fore end", BreadthAt(b, 0).Inches(), 36*math.Pi/16, 5e-3)
	}
	want := math.Pi / 2 * 30 * 120 * math.Sqrt(1.01)
	near(t, "the cone's side", area/want, 1, 5e-4)
}
