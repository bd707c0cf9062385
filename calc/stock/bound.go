package stock

// fair is the least that a piece of a length can add to the bill: a whole stick
// where nothing else would fit beside it, else its share of one. The prices of
// the pieces of any stick then never come to more than the stick, so that the
// least cost of a plan is known from them (a dual of the cutting problem).
// Counted says whether counted boards are reckoned with.
func (y *yard) fair(c *class, l int64, counted bool) money {
	best := never
	least := y.pools[c.pool].least
	for _, k := range c.opens {
		st := &y.sticks[k]
		u := st.hold - y.kerf
		switch {
		case u < l || !counted && y.counts[y.sizes[st.size].kind] != unlimited:
		case u-y.kerf-l+c.shared < least:
			best = min(best, st.cost)
		default:
			best = min(best, money(float64(st.cost)*(float64(l-c.shared)/float64(u-y.kerf))))
		}
	}
	return best
}

// bound is the least that the boards can come to, each joint at its price, the
// rules between strakes left out: for every strake the cheapest chain of pieces
// at their fair prices. What is counted on the rack is reckoned with as if more
// could be had for so much more a board, in a few steps, and the highest of the
// bounds taken; all of them hold.
func (y *yard) bound(each money) money {
	s := newSearch(y)
	best := money(0)
	counted := false
	for _, n := range y.counts {
		counted = counted || n != unlimited
	}
	for step := range money(5) {
		if best = max(best, s.boundAt(each, step, 4)); !counted {
			break
		}
	}
	return best
}

// boundAt is the bound with counted boards dearer by step in of of their rarity.
func (s *search) boundAt(each, step, of money) money {
	y := *s.yard
	y.sticks = append([]stick{}, y.sticks...)
	gain := make([]money, len(y.counts)) // of one more board of a kind
	for k := range y.sizes {
		z := &y.sizes[k]
		if y.counts[z.kind] == unlimited {
			continue
		}
		board := money(0)
		for _, i := range z.sticks {
			st := &y.sticks[i]
			more := st.rare * step / of
			st.cost += more
			board += more * money(z.lanes)
		}
		gain[z.kind] = max(gain[z.kind], board)
	}
	own := s.yard
	s.yard, s.lists = &y, make([]priceList, len(y.classes))
	defer func() { s.yard = own }()
	total := money(0)
	for k, n := range y.counts {
		if n != unlimited {
			total -= gain[k] * money(n)
		}
	}
	type alike struct {
		class         int
		length, clear int64
		given         bool
	}
	known := map[alike]money{}
	for i := range y.timbers {
		t := &y.timbers[i]
		key := alike{t.class, t.length, int64(len(t.clear)) * int64(i+1), t.given}
		v, ok := known[key]
		if !ok {
			v = s.alone(t, each)
			known[key] = v
		}
		if v >= never {
			continue
		}
		total += v * money(t.copies())
	}
	return total
}

// alone is the least a timber comes to at fair prices, its own stretches kept
// clear where that can be.
func (s *search) alone(t *timber, each money) money {
	c := &s.classes[t.class]
	best := never
	if t.length <= c.longest {
		best = s.fair(c, t.length, true)
	}
	longest := c.longest - c.scarf/2
	if t.given || longest < s.grid || c.longest < c.scarf {
		return best
	}
	list := s.priceList(t.class)
	n := min(int(longest/s.grid), t.steps) + 2
	tab := tables{make([]money, n), make([]money, n), make([]money, n), int(t.length / s.grid)}
	tail := t.length - int64(tab.whole)*s.grid
	for d := range n {
		l := int64(d) * s.grid
		tab.in[d] = list.at(l + c.scarf)
		tab.first[d] = list.at(l + c.scarf - c.scarf/2)
		tab.last[d] = list.at(l + tail + c.scarf/2)
	}
	clear(s.pen)
	for _, z := range t.clear {
		s.block(t, z.from, z.to, 0, weight)
	}
	clear(s.pull)
	s.offered = s.offered[:0]
	joint := s.joint
	s.joint = each
	defer func() { s.joint = joint }()
	if !s.cross(t, tab, 0) {
		clear(s.pen)
		s.cross(t, tab, 0)
	}
	for k := range s.nodes {
		if l := s.after(t, tab, &s.nodes[k]); l < never {
			best = min(best, s.nodes[k].cost+l)
		}
	}
	return best
}

// priceList is the fair prices of a class's pieces by the inch, each length
// taken down to a whole inch: no dearer than the true ones, so the bound holds.
type priceList []money

const inch = 25_400_000

func (s *search) priceList(class int) priceList {
	if s.lists[class] == nil {
		c := &s.classes[class]
		list := make(priceList, c.longest/inch+1)
		for i := range list {
			list[i] = s.fair(c, int64(i)*inch, true)
		}
		s.lists[class] = list
	}
	return s.lists[class]
}

func (p priceList) at(l int64) money {
	if i := l / inch; i < int64(len(p)) {
		return p[i]
	}
	return never
}
