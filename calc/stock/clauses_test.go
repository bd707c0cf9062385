package stock

import (
	"fmt"
	"math"
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
	"strakebook/calc/scarf"
	"strakebook/calc/source"
)

// five planks of 29 ft, an inch thick and 6 in wide.
func fivePlanks() (all []hull.Strake) {
	for _, name := range []string{"1", "2", "3", "4", "5"} {
		all = append(all, hull.Strake{Name: name, Skin: hull.Planks, Thickness: in(1), Width: in(6), Length: in(29 * 12), Species: "pine"})
	}
	return all
}

// A piece's mark is of its own strake, side and place: no other strake taken out,
// or put in before it, makes it mean another piece.
func TestMarksStay(t *testing.T) {
	rack := []Board{board("a", "pine", 1.25, 7, 16, 0)}
	strakes := fivePlanks()
	extra := strakes[0]
	extra.Name = "1a"
	type place struct {
		strake string
		side   hull.Side
		place  int
	}
	means := map[string]place{}
	for _, list := range [][]hull.Strake{strakes, append(strakes[:1:1], strakes[2:]...), append([]hull.Strake{extra}, strakes...)} {
		_, p, _ := work(list, rack)
		if len(p.Pieces) < 4*len(list) {
			t.Errorf("%d pieces", len(p.Pieces))
		}
		for _, q := range p.Pieces {
			here := place{q.Strake, q.Side, q.Place}
			if was, ok := means[q.Mark]; ok && was != here {
				t.Errorf("%s is %+v in one list and %+v in another", q.Mark, was, here)
			}
			means[q.Mark] = here
		}
	}
}

// One slanted cut shared by two pieces takes less of the boards than two, and the
// pieces lie on them as the saw can cut them.
func TestSharedCut(t *testing.T) {
	strakes, _ := demoYard()
	lr, spent := lay.DefaultRules(), map[bool]float64{}
	rack := []Board{board("a", "larch", 1.25, 6, 20, 0), board("b", "larch", 1.25, 6, 16, 0)}
	for _, way := range []struct {
		share bool
		nib   measure.Length
	}{{true, measure.Inch / 16}, {false, 0}, {true, 0}} {
		share, r, sr := way.share, DefaultRules(), scarf.DefaultRules()
		r.ShareCuts, r.Tries, sr.Nib = share, 100, way.nib
		runs, p, found := Work(lay.Runs(strakes[1:], sr), rack, nil, lr, r)
		judge{t: t, runs: runs, rack: rack, plan: p, lr: lr, r: r}.all(found)
		shared := 0
		for _, c := range p.Cuts {
			for i := 1; i < len(c.Pieces); i++ {
				if c.From[i] < c.From[i-1]+p.Pieces[c.Pieces[i-1]].Length {
					shared++
				}
			}
		}
		if share != (shared > 0) {
			t.Errorf("shared %v: %d cuts are", share, shared)
		}
		spent[share] = p.Summary.Spent
	}
	if spent[true] >= spent[false] {
		t.Errorf("%v board feet with shared cuts, %v without", spent[true], spent[false])
	}
}

// Two scarfs as long as each other but of different slopes share no cut: 12:1 on an
// inch and 8:1 on an inch and a half run 12 in both.
func TestOneSlopeACut(t *testing.T) {
	var strakes []hull.Strake
	for i, thick := range []float64{1, 1.5} {
		strakes = append(strakes, hull.Strake{Name: fmt.Sprint(i + 1), Skin: hull.Planks, Thickness: in(thick), Width: in(6), Length: in(25 * 12), Species: "pine", Slope: source.Is(12 / thick)})
	}
	rack := []Board{board("a", "pine", 2, 7, 17, 0)}
	lr, r := lay.DefaultRules(), DefaultRules()
	r.ShareCuts, r.CrossKerf, lr.PlankNeighbours, lr.PlankBetween = true, 0, 0, 0
	runs, p, found := Work(lay.Runs(strakes, scarf.DefaultRules()), rack, nil, lr, r)
	judge{t: t, runs: runs, rack: rack, plan: p, lr: lr, r: r}.all(found)
	shared := 0
	for _, c := range p.Cuts {
		for i, k := range c.Pieces {
			if c.Saved[i] > 0 {
				shared++
				if a, b := p.Pieces[c.Pieces[i-1]], p.Pieces[k]; a.Thickness != b.Thickness {
					t.Errorf("%s and %s share a cut", a.Mark, b.Mark)
				}
			}
		}
	}
	if shared == 0 {
		t.Error("no cut is shared")
	}
}

// Rips and cross cuts take kerfs of their own: three lanes of 2 in want 6 1/4 in of
// width with a rip of 1/8 in, and a quarter for the edges; two pieces of 4 ft want
// 8 ft and a cross cut. By hand.
func TestKerfs(t *testing.T) {
	list := []Wanted{{Mark: "a", Species: "pine", Thickness: in(1), Width: in(2), Length: in(48), Count: source.Is(6)}}
	for _, c := range []struct {
		wide, long float64
		rip, cross float64
		boards     int
		what       string
	}{
		{6.5, 96.125, 0.125, 0.125, 1, "just wide and long enough"},
		{6.4, 96.125, 0.125, 0.125, 2, "a tenth too narrow for three lanes"},
		{6.5, 96.125, 0.25, 0.125, 2, "a thicker rip saw"},
		{6.5, 96, 0.125, 0.125, 2, "an eighth too short for two pieces"},
		{6.5, 96, 0.125, 0, 1, "no kerf across"},
	} {
		r := DefaultRules()
		r.EndTrim, r.RipKerf, r.CrossKerf = 0, measure.Inches(c.rip), measure.Inches(c.cross)
		_, p, _ := Work(WantedRuns(list), []Board{board("b", "pine", 1.125, c.wide, c.long/12, 0)}, nil, lay.DefaultRules(), r)
		if len(p.Cuts) != c.boards || p.Summary.Unserved > 0 {
			t.Errorf("%s: %d boards, want %d", c.what, len(p.Cuts), c.boards)
		}
	}
}

// The least cost is sought by what each board costs, or its board feet do.
func TestPrices(t *testing.T) {
	list := []Wanted{{Mark: "a", Species: "pine", Thickness: in(1), Width: in(6), Length: in(120), Count: source.Is(3)}}
	short, long := board("s", "pine", 1.25, 8, 12, 0), board("l", "pine", 1.25, 8, 32, 0)
	for _, c := range []struct {
		short, long float64
		perFoot     bool
		boards      int
		cost        float64
	}{
		{30, 89, false, 1, 89}, // three of 30 come to 90
		{30, 91, false, 3, 90},
		{2, 2, true, 1, 2 * 1.25 * 8 * 32 / 12}, // 26 2/3 board feet against thirty
		{2, 2.5, true, 3, 2 * 30},
	} {
		short.Price, long.Price = source.Is(c.short), source.Is(c.long)
		short.PerFoot, long.PerFoot = c.perFoot, c.perFoot
		_, p, _ := Work(WantedRuns(list), []Board{short, long}, nil, lay.DefaultRules(), DefaultRules())
		if len(p.Cuts) != c.boards || math.Abs(p.Summary.Cost-c.cost) > 1e-6 {
			t.Errorf("at %v and %v: %d boards for %v, want %d for %v", c.short, c.long, len(p.Cuts), p.Summary.Cost, c.boards, c.cost)
		}
	}
}

// Hardwood by surface measure: 1 1/2 x 7 in x 11 ft is 6 5/12 sq ft, read as 6,
// times 1 1/2: 9 board feet a board where softwood has 9 5/8 (American Hardwood
// Export Council, as in measure). Exactly on the half foot boards are read down
// and up in turn: 1 x 6 in x 13 ft is 6 1/2 sq ft, so three come to 6 + 7 + 6.
func TestHardwoodOrder(t *testing.T) {
	r := DefaultRules()
	r.Hardwood = true
	cut := Cut{Board: board("x", "oak", 1.5, 7, 11, 0)}
	half := Cut{Board: board("y", "oak", 1, 6, 13, 0)}
	lines := order([]Cut{cut, cut, half, half, half}, nil, r)
	if len(lines) != 2 || lines[1].Feet != 18 || lines[0].Feet != 19 {
		t.Errorf("%+v", lines)
	}
	if lines := order([]Cut{cut, cut}, nil, DefaultRules()); lines[0].Feet != 19.25 {
		t.Errorf("softwood: %+v", lines)
	}
}

// From boards that give 27 ft 8 in every plank of 29 ft wants a scarf; from boards
// two feet longer none does. The saving named is one that is there, but for what
// the plan in hand is above the least possible.
func TestLonger(t *testing.T) {
	mill := board("a", "pine", 1.25, 7, 28, 0)
	mill.Price = source.Is(28.0)
	_, p, _ := work(fivePlanks(), []Board{mill})
	if len(p.Longer) == 0 {
		t.Fatal("nothing is said of longer boards, with which no plank wants a scarf")
	}
	for _, l := range p.Longer {
		long := mill
		long.Length, long.Price = source.Is(l.Length), source.Is(l.Length.Feet())
		_, q, _ := work(fivePlanks(), []Board{mill, long})
		if saved := p.Summary.Spent - q.Summary.Spent; l.Saves <= 0 || saved <= 0 || l.Saves > saved+p.Summary.Spent-p.Summary.Bound+1e-6 {
			t.Errorf("%v ft: said to save %v, saves %v", l.Length.Feet(), l.Saves, saved)
		}
	}
}

// Rough hardwood surfaced on two sides, as the tables of engineeringtoolbox and
// woodbin have it; and back: the least rough thickness that comes to each.
func TestQuarters(t *testing.T) {
	r := DefaultRules()
	r.DressBy = ByQuarters
	for _, c := range [][2]float64{{0.375, 0.1875}, {0.5, 0.3125}, {0.625, 0.4375}, {0.75, 0.5625}, {1, 0.8125}, {1.25, 1.0625}, {1.5, 1.3125}, {1.75, 1.5}, {2, 1.75}, {3, 2.75}, {3.5, 3.25}, {4, 3.75}} {
		rough, finished := measure.Inches(c[0]), measure.Inches(c[1])
		if got := r.finishes(rough); got != finished {
			t.Errorf("%v in dresses to %v, want %v", c[0], got.Inches(), c[1])
		}
		if got := r.rough(finished); r.finishes(got) < finished || got > rough {
			t.Errorf("%v in wants %v rough, and %v serves", c[1], got.Inches(), c[0])
		}
	}
	if r.rough(measure.Inches(1.4)) != measure.Inches(1.65) || r.finishes(measure.Inches(1.65)) != measure.Inches(1.4) {
		t.Error("between 6/4 and the next quarter")
	}
}

// Strips from boards paid for, several lanes to a board: the least they could
// come to is no more than what they come to.
func TestBoundOfBoardsPaidFor(t *testing.T) {
	strips := []hull.Strake{{Name: "1-20", Skin: hull.Strips, Count: source.Is(20), Thickness: in(0.75), Width: in(1.25), Length: in(306), Species: "larch"}}
	paid, mill := board("K3", "larch", 1.5, 6, 10, 8), board("K1", "larch", 1.5, 6, 14, 0)
	paid.Price, mill.Price = source.Is(0.0), source.Is(21.6)
	_, plan, _ := work(strips, []Board{mill, paid})
	if s := plan.Summary; s.Unserved > 0 || s.Spent <= 0 || s.Bound <= 0 || s.Bound > s.Spent {
		t.Errorf("%d pieces without a board, spent %.2f, which cannot be less than %.2f", s.Unserved, s.Spent, s.Bound)
	}
}
