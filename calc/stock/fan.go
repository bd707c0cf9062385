package stock

import (
	"cmp"
	"slices"
)

// fan lays the timbers of a row together at the prices of now, keeping the
// cheapest few ways as far as each: what one strake leaves its neighbours shows
// only some strakes on.
type fan struct {
	levels [][]leaf
	arena  []int32
	place  []int // in the row, by timber; -1 for none
	next   []leaf
	seen   []uint64
	tips   []node
}

// leaf is one way of laying a row as far as one of its timbers.
type leaf struct {
	cost     money
	parent   int32
	from, to int32 // its joints in the arena
}

// ways kept as far as each timber, and how many grid steps two may differ by and
// count as one.
const (
	fanned = 8
	alike  = 6
)

// fanOut leaves the joints of the cheapest way found in s.plans.
func (s *search) fanOut(row []int, sigma float64, breach, noise money) bool {
	f := &s.fan
	if f.place == nil {
		f.place = make([]int, len(s.timbers))
		for i := range f.place {
			f.place[i] = -1
		}
	}
	for k, i := range row {
		f.place[i] = k
	}
	defer func() {
		for _, i := range row {
			f.place[i] = -1
		}
	}()
	for len(f.levels) < len(row) {
		f.levels = append(f.levels, nil)
	}
	f.arena = f.arena[:0]
	for d, i := range row {
		if !s.fanNext(row, d, i, sigma, breach, noise) {
			return false
		}
		f.keep(d)
	}
	k := int32(0)
	for d := len(row) - 1; d >= 0; d-- {
		l := f.levels[d][k]
		s.plans[row[d]].joints = append(s.plans[row[d]].joints[:0], f.arena[l.from:l.to]...)
		k = l.parent
	}
	return true
}

// fanNext lays one more timber of a row behind every way kept.
func (s *search) fanNext(row []int, d, i int, sigma float64, breach, noise money) bool {
	f := &s.fan
	t := &s.timbers[i]
	c := &s.classes[t.class]
	s.offers(c, sigma, t.copies())
	f.next = f.next[:0]
	before := []leaf{{parent: -1}}
	if d > 0 {
		before = f.levels[d-1]
	}
	tab, ok := s.tables(t, c, sigma)
	s.shake(i, noise)
	for k := range before {
		if !ok || t.given {
			if whole := s.priceOf(t.length); whole < never {
				at := int32(len(f.arena))
				f.next = append(f.next, leaf{before[k].cost + whole*money(t.copies()), int32(k), at, at})
			}
			continue
		}
		s.fanBlocks(i, d, int32(k), row)
		if s.cross(t, tab, 0) || s.cross(t, tab, breach) {
			s.branch(t, tab, before[k].cost, int32(k))
		}
	}
	slices.SortFunc(f.next, func(a, b leaf) int {
		return cmp.Or(cmp.Compare(a.cost, b.cost), cmp.Compare(a.parent, b.parent), cmp.Compare(a.from, b.from))
	})
	return len(f.next) > 0
}

// keep takes the cheapest ways that are not much alike.
func (f *fan) keep(d int) {
	f.levels[d], f.seen = f.levels[d][:0], f.seen[:0]
	for _, l := range f.next {
		if len(f.levels[d]) >= fanned {
			return
		}
		h := f.mark(l, d)
		if !slices.Contains(f.seen, h) {
			f.seen = append(f.seen, h)
			f.levels[d] = append(f.levels[d], l)
		}
	}
}

// mark is the same for ways whose last two timbers are laid much alike.
func (f *fan) mark(l leaf, d int) uint64 {
	h := uint64(14695981039346656037)
	for e := d; ; e-- {
		for _, p := range f.arena[l.from:l.to] {
			h = (h ^ (uint64(p)/alike + 1)) * 1099511628211
		}
		h *= 1099511628211
		if e == 0 || d-e == 1 {
			return h
		}
		l = f.levels[e-1][l.parent]
	}
}

// fanBlocks is blocks, with the row's timbers before i as way k lays them.
func (s *search) fanBlocks(i, d int, k int32, row []int) {
	f := &s.fan
	t := &s.timbers[i]
	s.blocks(i)
	for n := range t.near {
		o := &t.near[n]
		e := f.place[o.of]
		if e < 0 || e >= d {
			continue
		}
		at := k
		for lv := d - 1; lv > e; lv-- {
			at = f.levels[lv][at].parent
		}
		l := f.levels[e][at]
		for _, p := range f.arena[l.from:l.to] {
			s.blockBy(t, o, s.timbers[o.of].start+int64(p)*s.grid)
		}
	}
}

// branch adds the cheapest ways found by cross, each with another last joint;
// of a run of steps that cost the same, its two ends.
func (s *search) branch(t *timber, tab tables, cost money, parent int32) {
	f := &s.fan
	f.tips = f.tips[:0]
	before := node{-1, -9, -1}
	for k := range s.nodes {
		nd := &s.nodes[k]
		l := s.after(t, tab, nd)
		if l >= never {
			continue
		}
		v := node{nd.cost + l, nd.at, int32(k)}
		n := len(f.tips)
		if n > 1 && v.cost == before.cost && v.at == before.at+1 && f.tips[n-1].cost == v.cost && f.tips[n-2].cost == v.cost && f.tips[n-1].at == before.at {
			f.tips[n-1] = v
		} else {
			f.tips = append(f.tips, v)
		}
		before = v
	}
	if c := &s.classes[t.class]; t.length <= c.longest {
		if v := s.priceOf(t.length); v < never {
			f.tips = append(f.tips, node{v, 0, -1})
		}
	}
	for n := 0; n < len(f.tips) && n < fanned; n++ {
		for k := n + 1; k < len(f.tips); k++ { // the cheapest left: a few of many are wanted
			if a, b := &f.tips[k], &f.tips[n]; a.cost < b.cost || a.cost == b.cost && a.at < b.at {
				*a, *b = *b, *a
			}
		}
		from := int32(len(f.arena))
		s.way = s.way[:0]
		s.trace(f.tips[n].from)
		f.arena = append(f.arena, s.way...)
		f.next = append(f.next, leaf{cost + f.tips[n].cost*money(t.copies()), parent, from, int32(len(f.arena))})
	}
}
