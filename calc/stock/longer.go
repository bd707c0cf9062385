package stock

import (
	"fmt"
	"slices"

	"strakebook/calc/measure"
)

// Longer is what a length beyond the longest the mill offers would save: how
// far the least the lumber can come to would fall, at the same price a foot.
type Longer struct {
	Board  Board          // the mill's longest of its size
	Length measure.Length // the length asked about
	Saves  float64        // in the money of Spent
}

// Stay is boards of one row of the rack that are not cut.
type Stay struct {
	Row   int // of the rack
	Board Board
	Count int
	Would bool // serve for a piece that is cut from a mill's board
}

// Name is what the rack calls the boards.
func (s Stay) Name() string {
	if s.Board.Mark != "" {
		return s.Board.Mark
	}
	return fmt.Sprintf("row %d", s.Row+1)
}

// longerBy is how much longer a length at the mill might be: two feet, or 600 mm
// where the mill saws to round metric lengths.
func longerBy(l measure.Length) measure.Length {
	if l%(50*measure.Millimetre) == 0 && l%measure.Inch != 0 {
		return 600 * measure.Millimetre
	}
	return 2 * measure.Foot
}

// longer asks what one such step and two more than the mill's longest of each size
// would save, by the bound. What is less than plans are commonly above their bound is
// not named: no plan need show it.
func (a *answer) longer(p part) {
	if len(a.rack) == 0 {
		return
	}
	bound, sur := newSearch(&p.yard).rough(0)
	if sur == nil {
		sur = make([]money, len(p.counts))
	}
	seen := map[int]bool{}
	for _, t := range p.timbers {
		seen[t.class] = true
	}
	for class := range p.classes {
		if !seen[class] {
			continue
		}
		c := &p.classes[class]
		best := -1
		for _, k := range c.opens {
			if p.counts[p.sizes[p.sticks[k].size].kind] == unlimited && (best < 0 || p.sticks[k].hold > p.sticks[best].hold) {
				best = k
			}
		}
		if best < 0 {
			continue
		}
		row := a.shop.first[p.sizes[p.sticks[best].size].kind]
		if slices.ContainsFunc(a.plan.Longer, func(l Longer) bool { return l.Board.Cell == a.rack[row].Cell && l.Board.Mark == a.rack[row].Mark }) {
			continue
		}
		step := longerBy(a.rack[row].Length.Value)
		for by := step; by <= 2*step; by += step {
			more := p.yard
			st := p.sticks[best]
			whole := int64(a.rack[row].Length.Value)
			st.cost = money(float64(st.cost) * (float64(whole+int64(by)) / float64(whole)))
			st.hold += int64(by)
			more.sticks = append(slices.Clone(p.sticks), st)
			more.classes = slices.Clone(p.classes)
			mc := &more.classes[class]
			mc.opens = append(slices.Clone(mc.opens), len(p.sticks))
			mc.longest = max(mc.longest, st.hold-p.kerf)
			// At one and the same surcharge: it answers most questions, and where it
			// promises nothing no other need be tried.
			least, _ := newSearch(&more).boundAt(0, sur, false)
			if bound-least > bound/nearly {
				least, _ = newSearch(&more).rough(0)
			}
			if saves := bound - least; saves > bound/nearly {
				a.plan.Longer = append(a.plan.Longer, Longer{Board: a.rack[row], Length: a.rack[row].Length.Value + by, Saves: saves.value()})
			}
		}
	}
}

// stays is the counted boards that are not cut, in the order of the rack.
func (a *answer) stays(r Rules) {
	used := make([]int, len(a.rack))
	for _, c := range a.plan.Cuts {
		used[c.Row]++
	}
	for i, b := range a.rack {
		if n := b.Count.Value - used[i]; !b.Free() && n > 0 && b.whole() {
			a.plan.Stay = append(a.plan.Stay, Stay{Row: i, Board: b, Count: n, Would: a.would(b, r)})
		}
	}
}

// would says that a board would serve for some piece that is cut from a mill's.
func (a *answer) would(b Board, r Rules) bool {
	longest := int64(0)
	for _, s := range b.sound(r) {
		longest = max(longest, s.to-s.from)
	}
	k := 0
	for i := range a.runs {
		n := a.shop.needs[a.shop.of[i]]
		serves := n.suits(b) && n.lanes(b, r) > 0
		for range a.runs[i].Pieces {
			p := &a.plan.Pieces[k]
			k++
			if serves && p.Board >= 0 && a.rack[a.plan.Cuts[p.Board].Row].Free() && int64(p.Length) <= longest {
				return true
			}
		}
	}
	return false
}
