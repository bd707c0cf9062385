package stock

import (
	"fmt"
	"math"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
)

// Work places the joints of every run and finds the boards its pieces are cut
// from. It returns the runs with their joints, in the order they came.
func Work(runs []lay.Run, rack []Board, lr lay.Rules, r Rules) ([]lay.Run, Plan, finding.List) {
	priced := allPriced(rack)
	found := checkRack(rack, runs, r)
	if len(rack) == 0 && len(runs) > 0 {
		found = append(found, finding.Finding{Kind: NoRack, Text: fmt.Sprintf(
			"the book holds no boards: pieces are cut to %s at most and boards are not chosen", measure.FeetInchesText(r.Longest))})
	} else if len(rack) > 0 && !priced {
		found = append(found, finding.Finding{Kind: NoPrice, Cell: rack[0].Cell, Text: "some boards have no price: the least board feet are sought, not the least cost"})
	}
	out := append([]lay.Run{}, runs...)
	classes, of := classes(out, rack, lr, r, priced)
	found = append(found, noStock(out, classes, of, rack, r)...)
	bound := joints(out, classes, of, lr, r)
	found = append(found, unlaid(out, classes, of)...)
	found = append(found, lay.Check(out, lr)...)
	plan, unserved := cut(out, classes, of, rack, r, priced)
	found = append(found, unserved...)
	plan.Summary.Bound = bound
	plan.Order = order(plan.Cuts, r)
	summarize(&plan, r, priced)
	return out, plan, found
}

func allPriced(rack []Board) bool {
	for _, b := range rack {
		if !b.Price.OK() {
			return false
		}
	}
	return len(rack) > 0
}

// classes sorts the runs into classes that the same boards serve; of is each
// run's.
func classes(runs []lay.Run, rack []Board, lr lay.Rules, r Rules, priced bool) (all []class, of []int) {
	of = make([]int, len(runs))
	for i := range runs {
		c := classOf(&runs[i])
		of[i] = -1
		for k := range all {
			if all[k].same(c) {
				of[i] = k
			}
		}
		if of[i] < 0 {
			if len(rack) == 0 {
				c.free(r, lr.Least(c.skin))
			} else {
				c.offer(rack, r, priced, lr.Least(c.skin))
			}
			of[i] = len(all)
			all = append(all, c)
		}
	}
	return all, of
}

// free is a class where there is no rack: pieces to the longest length set, each
// as dear as it is long.
func (c *class) free(r Rules, least measure.Length) {
	c.longest, c.shorter = r.Longest, least
	c.prices = make([]float64, int(c.longest/measure.Inch)+2)
	for i := range c.prices {
		c.prices[i] = float64(i)
	}
}

// joints lays the joints of every run, strake by strake from the sheer down;
// port as starboard unless it is planned by itself. It returns the least the
// lumber can come to, the stagger left out.
func joints(runs []lay.Run, classes []class, of []int, lr lay.Rules, r Rules) (bound float64) {
	var laid [3][]*lay.Run // by side
	type alike struct {
		class  int
		length measure.Length
	}
	least := map[alike]float64{} // what a strake comes to by itself
	for i := range runs {
		run, c := &runs[i], &classes[of[i]]
		if c.longest == 0 {
			continue
		}
		price := c.price
		if _, done := least[alike{of[i], run.Length}]; !done {
			free := *run
			cost, _ := lay.Joint(&free, lr, c.longest, price, 0, func(measure.Length) int { return 0 })
			least[alike{of[i], run.Length}] = cost
		}
		bound += least[alike{of[i], run.Length}]
		if twin := twin(runs[:i], run); twin != nil && !lr.Unlike {
			run.Joints = append([]measure.Length{}, twin.Joints...)
			run.Cut()
		} else {
			near := near(laid[run.Side], run, lr)
			each := r.JointCost + 1e-3*c.price(c.longest)
			lay.Joint(run, lr, c.longest, price, each, func(at measure.Length) int {
				return lay.Breaks(run, at, near, lr)
			})
		}
		laid[run.Side] = append(laid[run.Side], run)
	}
	return bound
}

// twin is the starboard strake that a port strake is the mirror of.
func twin(before []lay.Run, run *lay.Run) *lay.Run {
	if run.Side != hull.Port {
		return nil
	}
	for i := range before {
		t := &before[i]
		if t.Side == hull.Starboard && t.Skin == run.Skin && t.Name == run.Name && t.Length == run.Length &&
			t.Order == run.Order && t.Thick == run.Thick && t.Wide == run.Wide && t.Scarf == run.Scarf {
			return t
		}
	}
	return nil
}

// near is the runs of a side already laid that a run's rules look at.
func near(laid []*lay.Run, run *lay.Run, lr lay.Rules) []*lay.Run {
	var all []*lay.Run
	for i := len(laid) - 1; i >= 0; i-- {
		o := laid[i]
		if (o.Skin == run.Skin && run.Order-o.Order <= lay.Reach) || (o.Skin != run.Skin && lr.SkinsClear > 0) {
			all = append(all, o)
		}
	}
	return all
}

// unlaid names the strakes that no chain of pieces makes up although boards of
// their size are there.
func unlaid(runs []lay.Run, classes []class, of []int) finding.List {
	var found finding.List
	for i := range runs {
		if run := &runs[i]; len(run.Pieces) == 0 && classes[of[i]].longest > 0 && run.Side != hull.Port {
			found = append(found, finding.Finding{Kind: lay.PieceShort, Cell: run.Cell,
				Text: fmt.Sprintf("%s %s of %s cannot be made up of pieces from %s to %s", run.Skin, run.Name, measure.FeetInchesText(run.Length),
					measure.FeetInchesText(classes[of[i]].shorter), measure.FeetInchesText(classes[of[i]].longest))})
		}
	}
	return found
}

func summarize(p *Plan, r Rules, priced bool) {
	s := &p.Summary
	s.Pieces, s.Boards, s.Priced = len(p.Pieces), len(p.Cuts), priced
	for _, piece := range p.Pieces {
		s.Used += piece.Length
		s.NetFeet += measure.BoardFeet(piece.Thickness.Inches() * piece.Width.Inches() * piece.Length.Feet() / 12)
		if piece.Board < 0 {
			s.Unserved++
		}
	}
	for _, c := range p.Cuts {
		s.Bought += c.Board.Length.Value
		s.BoardFeet += c.Board.Feet(r)
		s.Spent += c.Cost
	}
	if priced {
		s.Cost = s.Spent
	}
	if served := s.Unserved == 0; served && s.BoardFeet > 0 && s.NetFeet > 0 {
		s.WasteOfBought = 100 * float64(s.BoardFeet-s.NetFeet) / float64(s.BoardFeet)
		s.WasteOnNet = 100 * float64(s.BoardFeet-s.NetFeet) / float64(s.NetFeet)
	}
	if s.Unserved > 0 || len(p.Cuts) == 0 || math.IsInf(s.Bound, 0) {
		s.Bound = 0
	}
}
