package stock

import (
	"slices"
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// eased is a job with a rule loosened or a board added: nothing that kept the old
// rules breaks the new ones.
var eased = []struct {
	what string
	do   func(runs []lay.Run, rack []Board, lr *lay.Rules, r *Rules) []Board
}{
	{"nothing", func(_ []lay.Run, rack []Board, _ *lay.Rules, _ *Rules) []Board { return rack }},
	{"shorter pieces", func(_ []lay.Run, rack []Board, lr *lay.Rules, _ *Rules) []Board {
		lr.LeastPlank, lr.LeastStrip = lr.LeastPlank*3/4, lr.LeastStrip*3/4
		return rack
	}},
	{"no end zones", func(_ []lay.Run, rack []Board, lr *lay.Rules, _ *Rules) []Board { lr.EndZone = 0; return rack }},
	{"skins on their own", func(_ []lay.Run, rack []Board, lr *lay.Rules, _ *Rules) []Board { lr.SkinsClear = 0; return rack }},
	{"joints anywhere", func(runs []lay.Run, rack []Board, _ *lay.Rules, _ *Rules) []Board {
		for i := range runs {
			runs[i].Clear = nil
		}
		return rack
	}},
	{"port by itself", func(_ []lay.Run, rack []Board, lr *lay.Rules, _ *Rules) []Board { lr.Unlike = true; return rack }},
	{"neighbours nearer", func(_ []lay.Run, rack []Board, lr *lay.Rules, _ *Rules) []Board {
		lr.PlankNeighbours, lr.StripNeighbours = lr.PlankNeighbours-measure.Foot, lr.StripNeighbours-measure.Foot/2
		return rack
	}},
	{"fewer between", func(_ []lay.Run, rack []Board, lr *lay.Rules, _ *Rules) []Board {
		lr.PlankBetween, lr.StripBetween = lr.PlankBetween-1, lr.StripBetween-1
		return rack
	}},
	{"a finer grid", func(_ []lay.Run, rack []Board, lr *lay.Rules, _ *Rules) []Board { lr.Grid /= 2; return rack }},
	{"less to dress", func(_ []lay.Run, rack []Board, _ *lay.Rules, r *Rules) []Board {
		r.Dressing, r.Edging, r.EndTrim, r.RipKerf = 0, 0, r.EndTrim/2, r.RipKerf/2
		return rack
	}},
	{"slanted cuts shared", func(_ []lay.Run, rack []Board, _ *lay.Rules, r *Rules) []Board { r.ShareCuts = true; return rack }},
	{"joints for nothing", func(_ []lay.Run, rack []Board, _ *lay.Rules, r *Rules) []Board { r.JointCost = 0; return rack }},
	{"as many as wanted", func(_ []lay.Run, rack []Board, _ *lay.Rules, _ *Rules) []Board {
		rack = append([]Board{}, rack...)
		for i := range rack {
			rack[i].Count = source.Reading[int]{}
		}
		return rack
	}},
	{"a thinner kerf", func(_ []lay.Run, rack []Board, _ *lay.Rules, r *Rules) []Board { r.CrossKerf /= 2; return rack }},
	{"a board more", func(_ []lay.Run, rack []Board, _ *lay.Rules, _ *Rules) []Board {
		rack = append([]Board{}, rack...)
		for i := range rack {
			if !rack[i].Free() {
				rack[i].Count = source.Is(rack[i].Count.Value + 1)
			}
		}
		return rack
	}},
	{"a longer mill length", func(_ []lay.Run, rack []Board, _ *lay.Rules, _ *Rules) []Board {
		more := rack[0]
		more.Mark, more.Length, more.Bad = "new", source.Is(rack[0].Length.Value+2*measure.Foot), nil
		more.Count = source.Reading[int]{}
		return append(append([]Board{}, rack...), more)
	}},
}

// From the old plan, a rule loosened or a board added never raises the cost, and
// the old plan itself is not made worse.
func TestEasedIsNoDearer(t *testing.T) {
	books, tried := 2, 0
	if *figures {
		books = 50
	}
	for seed := 1; tried < books*len(eased) && seed < 8*books; seed++ {
		strakes, rack, lr, r := randomBook(uint64(seed))
		laid := func(lr lay.Rules) []lay.Run {
			runs := lay.Runs(strakes, scarfRules(seed))
			lay.Place(runs, nil, &lr)
			if seed%3 == 0 {
				runs = append(runs, WantedRuns(randomList(uint64(seed)))...)
			}
			return runs
		}
		runs, plan, _ := Work(laid(lr), rack, nil, lr, r)
		if len(lay.Check(runs, lr)) > 0 || plan.Summary.Unserved > 0 || slices.ContainsFunc(runs, func(r lay.Run) bool { return len(r.Pieces) == 0 }) {
			continue // not a whole plan
		}
		before := asBefore(plan, runs)
		for _, e := range eased {
			tried++
			lr, r, again := lr, r, laid(lr)
			rack := e.do(again, rack, &lr, &r)
			was := plan.Summary.Spent + r.JointCost*float64(plan.Summary.Joints)
			r.Tries = 40 // little is found anew: the old plan must carry it
			made, eased, found := Work(again, rack, before, lr, r)
			judge{t, made, rack, eased, lr, r, nil}.all(found)
			if len(lay.Check(made, lr)) > 0 || eased.Summary.Unserved > 0 || eased.Summary.Total > was*(1+1e-9) {
				t.Errorf("seed %d, %s: %v, and %v before; %d rules broken, %d pieces unserved", seed, e.what, eased.Summary.Total, was, len(lay.Check(made, lr)), eased.Summary.Unserved)
			}
			if e.what == "nothing" && eased.Summary.Total == was && eased.Summary.Joints == plan.Summary.Joints && !slices.EqualFunc(made, runs, func(a, b lay.Run) bool { return slices.Equal(a.Joints, b.Joints) }) {
				t.Errorf("seed %d: joints are moved for nothing", seed)
			}
		}
	}
	t.Logf("%d changes", tried)
	if tried < books*len(eased) {
		t.Errorf("only %d changes of %d books tried", tried, books)
	}
}

// asBefore is a plan's pieces, for another to begin from; runs are those it was
// made of.
func asBefore(p Plan, runs []lay.Run) []Before {
	all := make([]Before, 0, len(p.Pieces))
	for i := range runs {
		for k := range runs[i].Pieces {
			q := &p.Pieces[len(all)]
			b := Before{Mark: q.Mark, Of: q.Of}
			if k < len(runs[i].Joints) {
				b.Joint = runs[i].Joints[k]
			}
			all = append(all, b)
		}
	}
	stick := 0
	for _, c := range p.Cuts {
		for i, k := range c.Pieces {
			if i == 0 || c.Lane[i] != c.Lane[i-1] || c.From[i] < c.From[i-1] || parted(c, i) {
				stick++
			}
			all[k].Board, all[k].Stick = c.Mark, stick
		}
	}
	return all
}

// parted says that a bad stretch lies between a piece and the one before it.
func parted(c Cut, i int) bool {
	return slices.ContainsFunc(c.Board.Bad, func(b hull.Reach) bool { return c.From[i-1] < b.To && b.To <= c.From[i] })
}
