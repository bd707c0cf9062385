package stock

import (
	"cmp"
	"fmt"
	"slices"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
)

// answer gathers the plan from the parts of the yard.
type answer struct {
	shop  *shop
	runs  []lay.Run
	rack  []Board
	lanes []lane
	laid  []bool // by run
	bound money
	whole money // bound with the joints' cost
	plan  Plan
	begin map[string]Before // the plan to begin from, by the marks of its pieces; nil for none
	watch watch
}

// lane is one stick with the pieces cut along it.
type lane struct {
	stick  int
	pieces []key
}

// key is a piece: a run and a place along it.
type key struct{ run, place int }

func newAnswer(h *shop, runs []lay.Run, rack []Board) *answer {
	return &answer{shop: h, runs: runs, rack: rack, laid: make([]bool, len(runs))}
}

// solve lays the joints of one part and cuts its pieces.
func (a *answer) solve(p part, r Rules) {
	bound, sur := p.bound(0)
	whole, wholeSur := bound, sur
	if p.trueJoint > 0 {
		whole, wholeSur = p.bound(p.trueJoint)
	}
	a.bound += bound
	a.whole += whole
	a.longer(p)
	p.worth(wholeSur)
	s := newSearch(&p.yard)
	s.watch = &a.watch
	moves, starts := p.effort(r.Tries)
	a.watch.begin(p.moves(r.Tries))
	defer a.watch.finish()
	s.enough = int64(r.Tries) * looks * int64(max(8, len(p.timbers))) / 8
	var best layout
	var begun []*layout
	if l := (&layout{}); a.begin != nil && a.old(s, l, a.begin) {
		begun = append(begun, l)
	}
	if floor, ok := s.list(&best); ok {
		a.bound += max(0, floor-bound)
		a.whole += max(0, floor-bound)
		// Rounding the columns loses most where sticks of several lengths are to be
		// chosen among: the search may better it.
		if better := (layout{}); len(p.classes[p.timbers[0].class].opens) > 1 && best.total > floor+floor/1000 && s.best(&better, []*layout{&best}, moves, starts, floor+floor/1000) && better.total < best.total {
			best = better
		}
		for _, l := range begun {
			if p.keeps(l, &best) {
				best = *l
			}
		}
		a.take(p, &best)
		return
	}
	s.empty()
	if !s.best(&best, begun, moves, starts, whole+whole/1000) {
		a.alone(p)
		return
	}
	for _, l := range begun {
		if p.keeps(l, &best) {
			best = *l // the search weighs rules against cost, and joints a hair beyond theirs
		}
	}
	if best.broken == 0 {
		apart, turns := p.apart(p.stretches()), p.fewer((r.Tries-600)/40, 80_000) // a plan in a moment is not to wait for its bound
		raised := apart.raise(whole, best.total, p.trueJoint, wholeSur, turns)
		a.whole += raised - whole
		if p.trueJoint > 0 {
			raised = apart.raise(bound, best.spent, 0, sur, turns/4) // from the prices just found
		}
		a.bound += raised - bound
	}
	a.take(p, &best)
}

// best solves a part, and again from other starts while a rule is broken; a part
// of few timbers three times anyhow, as it takes little.
func (s *search) best(best *layout, begun []*layout, moves, starts int, enough money) bool {
	if !s.solve(best, begun, moves, starts, enough) {
		return false
	}
	few := len(s.timbers) >= 6 && len(s.timbers) <= 12
	for range 3 {
		if s.looked > s.enough || best.broken == 0 && (!few || best.total <= enough) {
			break
		}
		var other layout
		if s.solve(&other, begun, moves, starts, enough) && (other.broken < best.broken || other.broken == best.broken && other.total < best.total) {
			*best = other
		}
	}
	return true
}

// looks is how many steps of the grid may be looked at for each try of eight
// timbers: where rules cannot be kept a move looks at very many.
const looks = 130_000

// effort is how many moves and starts a part gets. One of few timbers gets more,
// as each takes little; one of very many, or of very many kinds of board, gets
// fewer, so that the time does not run away.
func (p *part) effort(tries int) (moves, starts int) {
	kinds, timbers := 1, len(p.timbers)
	for _, t := range p.timbers {
		kinds = max(kinds, len(p.classes[t.class].opens))
	}
	moves = max(20, tries*min(3*60, 60*60/timbers)/60/max(1, kinds/60))
	return moves, max(1, min(8, moves/400, 1000/timbers))
}

// moves is how many are made in all.
func (p *part) moves(tries int) int {
	moves, _ := p.effort(tries)
	return moves/2 + turns*(moves/bettering) + p.lasting(moves)
}

// take brings a layout of a part into the answer.
func (a *answer) take(p part, l *layout) {
	h := a.shop
	at := map[[2]int]int{}
	for i := range p.timbers {
		t, plan := &p.timbers[i], &l.plans[i]
		pool := h.classes[t.class].pool
		for copy, run := range t.runs {
			a.joint(run, plan.joints)
			for place := range len(plan.joints) + 1 {
				b := int(plan.bins[place*t.copies()+copy])
				if b < 0 {
					continue // the boards are used up
				}
				k, ok := at[[2]int{pool, b}]
				if !ok {
					k = len(a.lanes)
					at[[2]int{pool, b}] = k
					a.lanes = append(a.lanes, lane{stick: int(l.bins[pool][b].stick)})
				}
				a.lanes[k].pieces = append(a.lanes[k].pieces, key{run, place})
			}
		}
	}
}

func (a *answer) joint(run int, joints []int32) {
	a.laid[run] = true
	a.runs[run].Joints = nil
	for _, p := range joints {
		a.runs[run].Joints = append(a.runs[run].Joints, measure.Length(int64(p)*a.shop.grid))
	}
	a.runs[run].Cut()
}

// alone lays the timbers of a part one by one where they cannot all be served:
// joints as if there were boards enough, and boards as far as the counted ones
// go.
func (a *answer) alone(p part) {
	s := newSearch(&p.yard)
	more := p.yard
	more.counts = slices.Repeat([]int32{unlimited}, len(p.counts))
	some := p
	some.timbers = nil
	l := layout{lumber: newLumber(&p.yard)}
	for i := range p.timbers {
		t := &p.timbers[i]
		s.shake(i, 0)
		if !s.lay(i, 0.9, 10*s.dear()) {
			s.yard = &more
			ok := s.path(i, 0.9, 10*s.dear())
			s.yard = &p.yard
			if !ok {
				continue
			}
			plan := &s.plans[i]
			plan.joints, plan.bins = append(plan.joints[:0], s.way...), plan.bins[:0]
			for j := range len(plan.joints) + 1 {
				for range t.copies() {
					plan.bins = append(plan.bins, s.put(s.piece(t, plan, j), plan.slants(j), &s.classes[t.class], 0))
				}
			}
			s.laid[i] = true
		}
		some.timbers, l.plans = append(some.timbers, *t), append(l.plans, s.plans[i])
	}
	s.lumber.copyTo(&l.lumber)
	a.take(some, &l)
}

// left says that boards are there for a run, and no chain of pieces makes it up.
func (a *answer) left(i int) bool { return !a.laid[i] && a.shop.classes[a.shop.of[i]].longest > 0 }

// unlaid names the strakes that no chain of pieces makes up although boards of
// their size are there.
func (a *answer) unlaid(lr lay.Rules) finding.List {
	u, with := lr.Units, ""
	if lr.On != lay.OnGrid {
		with = " with joints on " + lr.Falls()
	}
	var found finding.List
	for i := range a.runs {
		c := &a.shop.classes[a.shop.of[i]]
		if run := &a.runs[i]; a.left(i) && (run.Side != hull.Port || run.Strake.Side == hull.Port) {
			if run.Given {
				found = append(found, finding.Finding{Kind: NoLong, Cell: run.Cell, Do: "offer a longer board, or a sounder one: a piece that is given is cut whole",
					Text: fmt.Sprintf("%s %s is %s long, and the most that a board of its size gives in one piece is %s", run.Skin, run.Name, u.Long(run.Length), u.Long(measure.Length(c.longest)))})
				continue
			}
			found = append(found, finding.Finding{Kind: lay.PieceShort, Cell: run.Cell,
				Text: fmt.Sprintf("%s %s of %s cannot be made up of pieces from %s to %s%s", run.Skin, run.Name, u.Long(run.Length),
					u.Long(measure.Length(c.least)), u.Long(measure.Length(c.longest)), with)})
		}
	}
	return found
}

// cut makes the pieces and puts the lanes side by side into boards.
func (a *answer) cut(r Rules, priced bool) {
	p := &a.plan
	at := make([]int, len(a.runs))
	for i := range a.runs {
		at[i] = len(p.Pieces)
		p.Pieces = append(p.Pieces, pieces(&a.runs[i])...)
	}
	if len(a.rack) == 0 {
		return
	}
	for i := range a.lanes {
		l := &a.lanes[i]
		slices.SortStableFunc(l.pieces, func(x, y key) int { return cmp.Compare(at[x.run]+x.place, at[y.run]+y.place) })
	}
	slices.SortStableFunc(a.lanes, func(x, y lane) int {
		return cmp.Compare(at[x.pieces[0].run]+x.pieces[0].place, at[y.pieces[0].run]+y.pieces[0].place)
	})
	w := sawyer{shop: a.shop, rack: a.rack, rules: r, priced: priced, plan: p, open: map[int]int{}, taken: make([]int, len(a.shop.kinds))}
	for i := range a.lanes {
		w.saw(&a.lanes[i], at)
	}
	w.finish()
}

// unserved says how many pieces of each need have no board though boards would
// serve them, and how thick these must be where the hollow of the back asks for it.
func (a *answer) unserved(r Rules) finding.List {
	var found finding.List
	type group struct {
		n     int
		first *Piece
	}
	var all []group
	seen := map[int]int{}
	k := 0
	for i := range a.runs {
		for range a.runs[i].Pieces {
			p := &a.plan.Pieces[k]
			k++
			if p.Board >= 0 || len(a.rack) == 0 || len(a.shop.classes[a.shop.of[i]].opens) == 0 {
				continue
			}
			g, ok := seen[a.shop.of[i]]
			if !ok {
				g = len(all)
				seen[a.shop.of[i]] = g
				all = append(all, group{first: p})
			}
			all[g].n++
		}
	}
	for _, g := range all {
		f := finding.Finding{Kind: Out, Cell: g.first.Cell,
			Text: fmt.Sprintf("%d pieces of %s %s thick have no board: the counted boards are used up", g.n, g.first.Skin, r.Units.Small(g.first.Thickness))}
		if h := g.first.Hollow; h > 0 {
			f.Text = fmt.Sprintf("%d pieces of %s %s thick, with %s hollowed out of the back, have no board: the counted boards of %s and more are used up", g.n, g.first.Skin,
				r.Units.Small(g.first.Thickness), r.Units.Small(h), r.Units.Small(r.rough(g.first.Thickness+h)))
			f.Do = "add boards so thick, or line off narrower planks, which are hollowed less"
		}
		found = append(found, f)
	}
	return found
}

// longest is the longest piece that the stock gives each run.
func (a *answer) longest() []measure.Length {
	all := make([]measure.Length, len(a.runs))
	for i := range all {
		all[i] = measure.Length(a.shop.classes[a.shop.of[i]].longest)
	}
	return all
}
