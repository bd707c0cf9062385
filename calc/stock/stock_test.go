package stock

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
	"strakebook/calc/scarf"
	"strakebook/calc/source"
)

func in(v float64) source.Reading[measure.Length] { return source.Is(measure.Inches(v)) }

func board(mark, species string, thick, wide, feet float64, count int) Board {
	b := Board{Mark: mark, Species: species, Thickness: in(thick), Width: in(wide), Length: in(12 * feet), Source: "mill"}
	if count > 0 {
		b.Count, b.Source = source.Is(count), "rack"
	}
	return b
}

// yard is a skin of strips ripped in lanes and a skin of planks.
func demoYard() ([]hull.Strake, []Board) {
	var strakes []hull.Strake
	strakes = append(strakes, hull.Strake{Name: "1-30", Skin: hull.Strips, Count: source.Is(30), Thickness: in(0.625), Width: in(1.5), Length: in(690), Species: "cedar"})
	for i := range 12 {
		strakes = append(strakes, hull.Strake{Name: fmt.Sprint(i + 1), Skin: hull.Planks, Thickness: in(1), Width: in(5), Length: in(680 - 3*float64(i)), Start: in(float64(i)), Species: "larch"})
	}
	var rack []Board
	for _, feet := range []float64{10, 12, 14, 16, 18, 20} {
		rack = append(rack, board(fmt.Sprintf("C%v", feet), "cedar", 2, 8, feet, 0), board(fmt.Sprintf("L%v", feet), "larch", 1.25, 6, feet, 0))
	}
	rack = append(rack, board("R1", "larch", 1.25, 8, 20, 3))
	return strakes, rack
}

func work(strakes []hull.Strake, rack []Board) ([]lay.Run, Plan, finding.List) {
	runs, plan, found, _ := told(strakes, rack)
	return runs, plan, found
}

// told works a job and says what whoever asked how far it is was told.
func told(strakes []hull.Strake, rack []Board) (runs []lay.Run, plan Plan, found finding.List, parts []float64) {
	r := DefaultRules()
	r.Tries = 300
	r.Told = func(part float64) { parts = append(parts, part) }
	runs, plan, found = Work(lay.Runs(strakes, scarf.DefaultRules()), rack, nil, lay.DefaultRules(), r)
	return runs, plan, found, parts
}

// The checker below is written from the rules of the trade, not from the solver.
func TestPlanKeepsTheRules(t *testing.T) {
	strakes, rack := demoYard()
	runs, plan, found, parts := told(strakes, rack)
	if n := len(parts); n < 4 || !slices.IsSorted(parts) || parts[0] <= 0 || parts[n-1] != 1 {
		t.Errorf("the search told of itself %v", parts)
	}
	for _, f := range found {
		if f.Severity > finding.Note {
			t.Errorf("%s [%s]", f.Text, f.Code)
		}
	}
	if len(runs) != 84 {
		t.Fatalf("%d runs, want 84", len(runs))
	}
	for _, r := range runs {
		sum := measure.Length(0)
		for _, p := range r.Pieces {
			sum += p
		}
		if sum != r.Length+r.Scarf*measure.Length(len(r.Joints)) || len(r.Pieces) != len(r.Joints)+1 {
			t.Errorf("%s: pieces come to %v in for %v in and %d scarfs of %v in", r.Name, sum.Inches(), r.Length.Inches(), len(r.Joints), r.Scarf.Inches())
		}
	}
	for i, a := range runs {
		for _, b := range runs[i+1:] {
			if a.Side != b.Side || a.Skin != b.Skin {
				continue
			}
			for _, x := range a.Joints {
				for _, y := range b.Joints {
					d := math.Abs(x.Inches() + a.Start.Inches() - y.Inches() - b.Start.Inches())
					apart := b.Order - a.Order
					plank := a.Skin == hull.Planks
					if (plank && (apart == 1 && d < 48 || apart <= 3 && d < 12)) || (!plank && (apart == 1 && d < 24 || apart <= 2 && d < 4.375)) {
						t.Errorf("%s %s at %v and %s at %v", a.Skin, a.Name, x.Inches(), b.Name, y.Inches())
					}
				}
			}
		}
	}
	seen := map[string]bool{}
	for _, p := range plan.Pieces {
		if seen[p.Mark] {
			t.Errorf("mark %s twice", p.Mark)
		}
		seen[p.Mark] = true
	}
	cut := 0
	counted := map[string]int{}
	for _, c := range plan.Cuts {
		b := c.Board
		lane := map[int]float64{}
		for i, k := range c.Pieces {
			p := plan.Pieces[k]
			cut++
			if lane[c.Lane[i]] > 0 {
				lane[c.Lane[i]] += 0.125
			}
			lane[c.Lane[i]] += p.Length.Inches()
			if p.Species != b.Species {
				t.Errorf("%s of %s from %s", p.Mark, p.Species, b.Species)
			}
			thick, wide := p.Thickness.Inches(), p.Width.Inches()
			if p.Skin == hull.Strips {
				thick, wide = wide, thick
			}
			if b.Thickness.Value.Inches() < thick+0.125 {
				t.Errorf("%s from a board of %v in", p.Mark, b.Thickness.Value.Inches())
			}
			if n := float64(c.Lanes); n*wide+(n-1)*0.125+0.25 > b.Width.Value.Inches() {
				t.Errorf("%d lanes of %v in from %v in", c.Lanes, wide, b.Width.Value.Inches())
			}
		}
		for n, l := range lane {
			if n < 1 || n > c.Lanes || l > b.Length.Value.Inches()-4 {
				t.Errorf("%s lane %d of %d holds %v in of %v in", c.Mark, n, c.Lanes, l, b.Length.Value.Inches())
			}
		}
		if !b.Free() {
			counted[b.Mark]++
		}
	}
	if cut != len(plan.Pieces) {
		t.Errorf("%d of %d pieces cut", cut, len(plan.Pieces))
	}
	if counted["R1"] > 3 {
		t.Errorf("%d of 3 boards R1 cut", counted["R1"])
	}
	if s := plan.Summary; s.Bound <= 0 || s.Spent < s.Bound {
		t.Errorf("spent %v, which cannot be less than %v", s.Spent, s.Bound)
	}
}

// Outside feathers that point aft stand at the after ends of pieces, and so their fore
// ends have the feather inside; pointing forward it is the other way about. The strake's
// own ends are hood ends.
func TestEndsOfPieces(t *testing.T) {
	for point, want := range map[scarf.Feathers][2]End{scarf.PointAft: {FeatherInside, FeatherOutside}, scarf.PointForward: {FeatherOutside, FeatherInside}} {
		r := scarf.DefaultRules()
		r.Feathers = point
		run := lay.Runs([]hull.Strake{{Name: "1", Skin: hull.Planks, Thickness: in(1), Width: in(6), Length: in(360)}}, r)[0]
		run.Joints = []measure.Length{120 * measure.Inch, 240 * measure.Inch}
		run.Cut()
		p := pieces(&run)
		if p[0].Fore != Hood || p[0].Aft != want[1] || p[1].Fore != want[0] || p[1].Aft != want[1] || p[2].Fore != want[0] || p[2].Aft != Hood {
			t.Errorf("feathers %d: %v", point, p)
		}
		run.Scarf = 0 // of a slope or a nib that leaves none
		if p = pieces(&run); p[0].Fore != Hood || p[0].Aft != Butt || p[1].Fore != Butt || p[1].Aft != Butt || p[2].Aft != Hood {
			t.Errorf("without a run of scarfs: %v", p)
		}
	}
}

// Danforth and others, as in measure: here through the order. 80 boards of
// 1 1/2 x 6 in x 16 ft are 960 board feet.
func TestOrder(t *testing.T) {
	var cuts []Cut
	for range 80 {
		cuts = append(cuts, Cut{Board: board("x", "pine", 1.5, 6, 16, 0)})
	}
	lines := order(append(cuts, Cut{Board: board("r", "pine", 2, 6, 16, 1)}), nil, DefaultRules())
	if len(lines) != 1 || lines[0].Count != 80 || lines[0].Feet != 960 {
		t.Errorf("%+v", lines)
	}
	r := DefaultRules()
	r.Spares = 10
	if lines := order(cuts, nil, r); lines[0].Count != 88 {
		t.Errorf("with a tenth over: %d", lines[0].Count)
	}
	for _, c := range []struct {
		count   int
		percent float64
		want    int
	}{{100, 10, 10}, {30, 10, 3}, {7, 10, 1}, {50, 14, 7}, {50, 0.1, 1}, {1, 200, 2}} { // 100 x 1.1 is a hair more than 110 in binary
		if got := spares(c.count, c.percent); got != c.want {
			t.Errorf("%v per cent of %d: %d, want %d", c.percent, c.count, got, c.want)
		}
	}
}

func TestWhyNot(t *testing.T) {
	test := func(want string, rack ...Board) {
		t.Helper()
		strakes := []hull.Strake{{Name: "1", Skin: hull.Planks, Thickness: in(1), Width: in(5), Length: in(600), Species: "larch"}}
		_, plan, found := work(strakes, rack)
		var codes []string
		for _, f := range found {
			codes = append(codes, f.Code)
		}
		if got := strings.Join(codes, " "); !strings.Contains(got, want) {
			t.Errorf("want %s, got %s", want, got)
		}
		if len(plan.Pieces) == 0 && strings.Contains(want, "stock-none") {
			t.Error("without a rack there are no pieces")
		}
	}
	test("stock-none")
	test("stock-species", board("a", "cedar", 2, 8, 16, 0))
	test("stock-thin", board("a", "larch", 1, 8, 16, 0))
	test("stock-no-thick", board("a", "larch", 1, 8, 16, 0))
	test("stock-narrow", board("a", "larch", 2, 4, 16, 0))
	test("stock-no-wide", board("a", "larch", 2, 4, 16, 0))
	test("stock-no-long", board("a", "larch", 2, 8, 6, 0))
	test("piece-chain", board("a", "larch", 2, 8, 6.5, 0))
	test("stock-out", board("a", "larch", 2, 8, 16, 2))
	test("stock-unused", board("a", "larch", 2, 8, 16, 0), board("b", "teak", 2, 8, 16, 0))
	test("stock-incomplete", board("a", "larch", 2, 8, 16, 0), Board{Mark: "b"})
	dashed, unread, unsure := board("a", "larch", 2, 8, 16, 0), board("b", "larch", 2, 8, 16, 0), board("c", "larch", 2, 8, 16, 0)
	dashed.Count.State, unread.Count.State, unsure.Unsure = source.Dash, source.Unread, true
	test("stock-incomplete", dashed, board("b", "larch", 2, 8, 16, 0))
	for _, idle := range [][]Board{{dashed}, {unread}, {unsure}, {dashed, unread, unsure, board("d", "teak", 2, 8, 16, 0)}} {
		test("stock-no-long", idle...)
	}
}

// What is hollowed out of the back is of the stock's thickness, and said to be where
// that is why boards lack: 1 in and a hollow of 1/4 in, dressed from 1 3/8 in.
func TestWhyNotForTheHollow(t *testing.T) {
	for want, rack := range map[string][]Board{
		"plank 1 needs stock of 1 3/8 in, of which 1/4 in is hollowed out of its back, and none is so thick":                                     {board("a", "larch", 1.25, 8, 16, 0)},
		"2 pieces of plank 1 in thick, with 1/4 in hollowed out of the back, have no board: the counted boards of 1 3/8 in and more are used up": {board("a", "larch", 1.25, 8, 16, 9), board("b", "larch", 1.5, 8, 16, 2)},
	} {
		runs := lay.Runs([]hull.Strake{{Name: "1", Skin: hull.Planks, Thickness: in(1), Width: in(5), Length: in(320), Species: "larch"}}, scarf.DefaultRules())
		for i := range runs {
			runs[i].Hollow = measure.Inch / 4
		}
		_, _, found := Work(runs, rack, nil, lay.DefaultRules(), DefaultRules())
		var said []string
		for _, f := range found {
			said = append(said, f.Text)
		}
		if !slices.Contains(said, want) {
			t.Errorf("said %q, want %q", said, want)
		}
	}
}

func BenchmarkWork(b *testing.B) {
	strakes, rack := demoYard()
	strakes[0].Name, strakes[0].Count = "1-90", source.Is(90)
	for b.Loop() {
		work(strakes, rack)
	}
}
