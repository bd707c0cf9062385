package stock

import (
	"fmt"
	"slices"

	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// shop is the yard with the ways back from it to the book.
type shop struct {
	yard
	needs []need
	named []string // species, by their numbers less one
	of    []int    // class of each run
	kinds [][]int  // rows of the rack of each kind of board
	first []int    // of those rows, the first
	sound [][]span // of each kind
}

// build makes the yard of the runs and the rack.
func build(runs []lay.Run, rack []Board, lr lay.Rules, r Rules, priced bool) *shop {
	h := &shop{}
	if lr.Grid <= 0 {
		lr.Grid = measure.Inch
	}
	h.grid, h.kerf, h.bay = int64(stepOf(runs, lr.Grid)), int64(r.CrossKerf), int64(lr.Frames)
	h.of = make([]int, len(runs))
	seen := map[need]int{}
	for i := range runs {
		n := needOf(&runs[i], lr, r)
		k, ok := seen[n]
		if !ok {
			k = len(h.needs)
			seen[n] = k
			h.needs = append(h.needs, n)
			h.classes = append(h.classes, class{form: form{int64(n.wide), int64(n.thick), h.species(n.species)}, scarf: int64(n.scarf), shared: int64(n.sharing(r)), least: int64(n.least)})
		}
		h.of[i] = k
	}
	h.tellApart()
	if len(rack) == 0 {
		rack = anyBoard(h.needs, r)
	}
	h.stack(rack, r, priced)
	h.offerSticks(rack, r)
	h.group()
	h.prefer()
	h.timber(runs, lr)
	dearest := money(0)
	for i := range h.sizes {
		dearest = max(dearest, h.sizes[i].cost)
	}
	h.trueJoint = inMoney(r.JointCost)
	h.joint = h.trueJoint + dearest/5000 // of equals, the fewest joints
	return h
}

// tellApart has no two slopes save alike by a shared cut, as one cut serves only
// scarfs of one slope: the later of them saves a hair less.
func (h *shop) tellApart() {
	slope := map[int64]float64{}
	for i := range h.classes {
		c := &h.classes[i]
		for c.shared > 0 && slope[c.shared] != 0 && slope[c.shared] != h.needs[i].slope {
			c.shared--
		}
		slope[c.shared] = h.needs[i].slope
	}
}

// species is the number of a species; 0 where none is named.
func (h *shop) species(name string) int32 {
	if name == "" {
		return 0
	}
	k := slices.Index(h.named, name)
	if k < 0 {
		k = len(h.named)
		h.named = append(h.named, name)
	}
	return int32(k + 1)
}

// anyBoard is what pieces are cut from where there is no rack: a board of the
// longest length for every need, dear as it is long.
func anyBoard(needs []need, r Rules) []Board {
	var all []Board
	for _, n := range needs {
		var b Board
		b.Species = n.species
		b.Thickness.Value, b.Width.Value, b.Length.Value = r.rough(n.thick), n.wide+r.Edging, r.Longest+r.EndTrim
		b.Thickness.State, b.Width.State, b.Length.State = source.Given, source.Given, source.Given
		all = append(all, b)
	}
	return all
}

// stack sorts the rack into kinds: boards that are alike in all but mark.
func (h *shop) stack(rack []Board, r Rules, priced bool) {
	seen := map[string]int{}
	for i, b := range rack {
		if !b.whole() || b.Length.Value > absurd || !b.Free() && b.Count.Value < 1 {
			continue
		}
		key := fmt.Sprint(species(b.Species), b.Thickness.Value, b.Width.Value, b.Length.Value, b.Bad, inMoney(b.Cost(r, priced)), b.Free())
		k, ok := seen[key]
		if !ok {
			k = len(h.kinds)
			seen[key] = k
			h.kinds, h.counts = append(h.kinds, nil), append(h.counts, 0)
			h.first, h.sound = append(h.first, i), append(h.sound, b.sound(r))
			h.sizes = append(h.sizes, size{kind: k, cost: max(1, inMoney(b.Cost(r, priced)))})
		}
		h.kinds[k] = append(h.kinds[k], i)
		if b.Free() {
			h.counts[k] = unlimited
		} else {
			h.counts[k] += int32(min(b.Count.Value, 1<<20))
		}
	}
}

// offerSticks rips every kind of board into as many lanes as each need wants.
func (h *shop) offerSticks(rack []Board, r Rules) {
	whole := h.sizes
	h.sizes = nil
	for k, z := range whole {
		b := rack[h.first[k]]
		var ways []int
		for _, n := range h.needs {
			if lanes := n.lanes(b, r); n.suits(b) && lanes > 0 && !slices.Contains(ways, lanes) {
				ways = append(ways, lanes)
			}
		}
		slices.Sort(ways)
		all := int64(0)
		for _, s := range h.sound[k] {
			all += s.to - s.from
		}
		for _, lanes := range ways {
			z := size{kind: k, lanes: lanes, cost: z.cost}
			wide := (int64(b.Width.Value-r.Edging) - int64(lanes-1)*int64(r.RipKerf)) / int64(lanes)
			for _, s := range h.sound[k] {
				z.sticks = append(z.sticks, len(h.sticks))
				part := float64(s.to-s.from) / float64(all) / float64(lanes)
				h.sticks = append(h.sticks, stick{size: len(h.sizes), hold: s.to - s.from + h.kerf, cost: max(1, money(float64(float64(z.cost)*part))), part: part, form: form{wide, int64(r.finishes(b.Thickness.Value)), h.species(species(b.Species))}})
			}
			h.sizes = append(h.sizes, z)
		}
	}
	for i := range h.classes {
		c, n := &h.classes[i], h.needs[i]
		for k := range h.sticks {
			st := &h.sticks[k]
			z := &h.sizes[st.size]
			b := rack[h.first[z.kind]]
			if n.suits(b) && n.lanes(b, r) == z.lanes && st.hold-h.kerf >= c.least {
				c.opens = append(c.opens, k)
				c.longest = max(c.longest, st.hold-h.kerf)
			}
		}
		slices.SortStableFunc(c.opens, func(a, b int) int { return int(max(-1, min(1, h.sticks[a].hold-h.sticks[b].hold))) })
	}
}

// group puts classes that compete for boards into one pool.
func (h *shop) group() {
	head := make([]int, len(h.classes))
	byKind := make([]int, len(h.kinds))
	for i := range byKind {
		byKind[i] = -1
	}
	root := func(i int) int {
		for head[i] != i {
			i = head[i]
		}
		return i
	}
	for i := range h.classes {
		head[i] = i
		for _, k := range h.classes[i].opens {
			kind := h.sizes[h.sticks[k].size].kind
			if byKind[kind] < 0 {
				byKind[kind] = i
			} else if a, b := root(byKind[kind]), root(i); a != b {
				head[max(a, b)] = min(a, b)
			}
		}
	}
	at := map[int]int{}
	for i := range h.classes {
		c, a := &h.classes[i], root(i)
		p, ok := at[a]
		if !ok {
			p = len(h.pools)
			at[a] = p
			h.pools = append(h.pools, pool{least: c.least})
		}
		c.pool = p
		h.pools[p].least = min(h.pools[p].least, c.least)
		h.pools[p].longest = max(h.pools[p].longest, c.longest)
		for _, k := range c.opens {
			if !slices.Contains(h.pools[p].sticks, k) {
				h.pools[p].sticks = append(h.pools[p].sticks, k)
			}
		}
	}
	for i := range h.pools {
		p := &h.pools[i]
		for n, k := range p.sticks {
			if rate := float64(h.sticks[k].cost) / float64(max(1, h.sticks[k].hold-2*h.kerf)); n == 0 || rate < p.rate {
				p.rate = rate
			}
		}
	}
}

// prefer leaves out of what a class opens the free sticks that another free one
// betters, and reckons what counted sticks are worth beyond their cost.
func (h *shop) prefer() {
	for i := range h.classes {
		c := &h.classes[i]
		free := func(k int) bool { return h.counts[h.sizes[h.sticks[k].size].kind] == unlimited }
		least := never
		var keep []int
		for _, k := range slices.Backward(c.opens) { // longest first
			if free(k) && h.sticks[k].cost >= least {
				continue
			}
			if free(k) {
				least = h.sticks[k].cost
			}
			keep = append(keep, k)
		}
		slices.Reverse(keep)
		c.opens = keep
		for _, k := range c.opens {
			st := &h.sticks[k]
			if free(k) {
				continue
			}
			if v := h.fair(c, st.hold-h.kerf, false); v < never {
				st.rare = max(st.rare, v-st.cost)
			}
		}
	}
}

// timber makes the strakes, each with its mirror where one is the other's.
func (h *shop) timber(runs []lay.Run, lr lay.Rules) {
	of := make([]int, len(runs))
	mirror := map[string]int{}
	for i := range runs {
		run := &runs[i]
		of[i] = -1
		if h.classes[h.of[i]].longest == 0 {
			continue
		}
		key := fmt.Sprint(run.Skin, "/", run.Name, "/", run.Order, h.of[i], run.Length, run.Start, run.Clear, run.Given)
		if k, ok := mirror[key]; ok && run.Side == hull.Port && !lr.Unlike && len(h.timbers[k].runs) == 1 && runs[h.timbers[k].runs[0]].Side == hull.Starboard {
			of[i] = k
			h.timbers[k].runs = append(h.timbers[k].runs, i)
			continue
		}
		of[i] = len(h.timbers)
		mirror[key] = of[i]
		t := timber{runs: []int{i}, class: h.of[i], length: int64(run.Length), start: int64(run.Start), zone: int64(lr.EndZone), given: run.Given}
		if run.Length > absurd {
			t.given = true
		} else {
			t.steps = int((t.length - 1) / h.grid)
			t.shut = h.shut(run.Places, t.steps)
		}
		for _, z := range run.Clear {
			t.clear = append(t.clear, span{int64(z.From), int64(z.To)})
		}
		h.timbers = append(h.timbers, t)
	}
	for i, all := range lay.Neighbours(runs, lr) {
		for _, n := range all {
			a, b := of[i], of[n.Of]
			if a < 0 || b < 0 || a == b {
				continue
			}
			if t := &h.timbers[a]; !slices.ContainsFunc(t.near, func(o near) bool { return o.of == b }) {
				t.near = append(t.near, near{b, int64(n.Apart), n.Bay})
			}
		}
	}
}

// finest is the finest step that joints on given places are planned by.
const finest = measure.Inch / 16

// stepOf is the step that joints are planned by: the grid, or where they fall on
// given places the longest step that comes to all of them, but for less than half
// of the finest.
func stepOf(runs []lay.Run, grid measure.Length) measure.Length {
	step, placed := int64(0), false
	for i := range runs {
		placed = placed || runs[i].Places != nil
		for _, x := range runs[i].Places {
			step = common(int64(x), step)
		}
	}
	switch {
	case !placed:
		return grid
	case step == 0:
		return measure.Inch // nowhere for a joint to fall
	}
	return max(measure.Length(step), finest)
}

// shut is the steps that no joint may fall on; nil where all may be.
func (h *shop) shut(places []measure.Length, steps int) []bool {
	if places == nil {
		return nil
	}
	shut := slices.Repeat([]bool{true}, steps+1)
	for _, x := range places {
		if p := (int64(x) + h.grid/2) / h.grid; p <= int64(steps) {
			shut[p] = false
		}
	}
	return shut
}

// absurd is longer than any strake or board: such figures are findings, and
// nothing is planned of them.
const absurd = 1000 * measure.Foot
