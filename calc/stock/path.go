package stock

// node is a step a joint may fall on, with the least cost of the strake as far
// as it and the node before it on that way.
type node struct {
	cost money
	at   int32
	from int32
}

// path finds the joints of one timber where its pieces cost least now, by the
// shortest way from its fore end over the grid, and leaves them in s.way. Steps
// where a joint breaks a rule are left out, and taken at a price each where
// there is no way without. It is false where no chain of pieces reaches.
func (s *search) path(i int, sigma float64, breach money) bool {
	t := &s.timbers[i]
	c := &s.classes[t.class]
	s.offers(c, sigma, t.copies())
	s.way = s.way[:0]
	if t.given {
		return s.priceOf(t.length) < never
	}
	tab, ok := s.tables(t, c, sigma)
	if !ok {
		return s.priceOf(t.length) < never
	}
	s.blocks(i)
	if !s.cross(t, tab, 0) && !s.cross(t, tab, breach) {
		return false
	}
	return s.back(t, tab)
}

// tables is the prices now of a timber's pieces by grid steps between joints,
// before the first and after the last.
type tables struct {
	in, first, last []money
	whole           int // steps to the after end
}

func (s *search) tables(t *timber, c *class, sigma float64) (tables, bool) {
	tab, tail, ok := s.unpriced(t, c)
	if ok {
		s.priceTable(tab.in, c.scarf, c, sigma, false)
		s.priceTable(tab.first, c.scarf-c.scarf/2, c, sigma, true)
		s.priceTable(tab.last, tail+c.scarf/2, c, sigma, true)
	}
	return tab, ok
}

// unpriced is a timber's tables to be filled, in memory used over again, and what
// is left of its length past the last step of the grid; not ok where no piece is
// as long as a step or a scarf.
func (s *search) unpriced(t *timber, c *class) (tab tables, tail int64, ok bool) {
	tab.whole = int(t.length / s.grid)
	longest := c.longest - c.scarf/2
	if longest < s.grid || c.longest < c.scarf {
		return tab, 0, false
	}
	n := min(int(longest/s.grid), t.steps) + 2
	if len(s.prices) < 3*n {
		s.prices = make([]money, 3*n)
		s.rest = make([]money, n)
	}
	if len(s.rest) < n {
		s.rest = make([]money, n)
	}
	tab.in, tab.first, tab.last = s.prices[:n], s.prices[n:2*n], s.prices[2*n:3*n]
	return tab, t.length - int64(tab.whole)*s.grid, true
}

// cross fills s.nodes with every step that a chain of pieces reaches, each at
// its least cost; breach 0 keeps to steps that break no rule. It is false where
// the after end is not reached.
func (s *search) cross(t *timber, tab tables, breach money) bool {
	c := &s.classes[t.class]
	s.nodes, s.stack = s.nodes[:0], s.stack[:0]
	least := max(1, int((c.least-c.scarf+s.grid-1)/s.grid))
	firstLeast := int((c.least - (c.scarf - c.scarf/2) + s.grid - 1) / s.grid)
	pen, pull := s.pen[:t.steps+1], s.pull[:t.steps+1]
	from, to := max(1, int((t.zone+s.grid-1)/s.grid), 0), t.steps
	if t.length-t.zone < int64(to)*s.grid {
		to = int(floor(t.length-t.zone, s.grid))
	}
	in, each, copies := tab.in, s.joint, money(t.copies())
	s.looked += int64(max(0, to-from))
	hi, lo := 0, 0
	for p := from; p <= to; p++ {
		if breach == 0 && pen[p] > 0 || t.shut != nil && t.shut[p] {
			continue
		}
		best, before := never, int32(-1)
		if p >= firstLeast && p < len(tab.first) {
			best = tab.first[p]
		}
		// A step with a dearer way to it and farther than another is never the
		// better one to come from: a longer piece costs no less.
		for hi < len(s.nodes) && p-int(s.nodes[hi].at) >= least {
			nd := &s.nodes[hi]
			for len(s.stack) > lo && s.stack[len(s.stack)-1].cost >= nd.cost {
				s.stack = s.stack[:len(s.stack)-1]
			}
			s.stack = append(s.stack, node{nd.cost, nd.at, int32(hi)})
			hi++
		}
		for lo < len(s.stack) && p-int(s.stack[lo].at) >= len(in) {
			lo++
		}
		s.looked += int64(len(s.stack) - lo)
		near := never // the cheapest piece from any of them: that from the nearest
		if n := len(s.stack); n > lo {
			near = in[p-int(s.stack[n-1].at)]
		}
		for k := lo; k < len(s.stack); k++ {
			nd := &s.stack[k]
			if nd.cost+near >= best {
				break // they grow dearer, the nearer they are
			}
			if v := nd.cost + in[p-int(nd.at)]; v < best {
				best, before = v, nd.from
			}
		}
		if best >= never {
			continue
		}
		best += each + pull[p]
		if breach > 0 {
			best += breach * money(pen[p]) / (weight * copies)
		}
		s.nodes = append(s.nodes, node{best, int32(p), before})
	}
	if t.length <= c.longest && s.priceOf(t.length) < never {
		return true
	}
	for k := len(s.nodes) - 1; k >= 0; k-- {
		if s.after(t, tab, &s.nodes[k]) < never {
			return true
		}
	}
	return false
}

// after is what the last piece costs from a node; never where none may be.
func (s *search) after(t *timber, tab tables, nd *node) money {
	c := &s.classes[t.class]
	d := tab.whole - int(nd.at)
	if d >= len(tab.last) || t.length-int64(nd.at)*s.grid+c.scarf/2 < c.least {
		return never
	}
	return tab.last[d]
}

// back takes the cheapest way among s.nodes into s.way; no joint at all where
// one piece is no dearer.
func (s *search) back(t *timber, tab tables) bool {
	end, best := -1, never
	for k := range s.nodes {
		nd := &s.nodes[k]
		if l := s.after(t, tab, nd); l < never && nd.cost+l < best {
			best, end = nd.cost+l, k
		}
	}
	if c := &s.classes[t.class]; t.length <= c.longest {
		if v := s.priceOf(t.length); v < never && v <= best {
			return true
		}
	}
	s.trace(int32(end))
	return end >= 0
}

// trace puts the way to a node into s.way.
func (s *search) trace(k int32) {
	from := len(s.way)
	for ; k >= 0; k = s.nodes[k].from {
		s.way = append(s.way, s.nodes[k].at)
	}
	for a, b := from, len(s.way)-1; a < b; a, b = a+1, b-1 {
		s.way[a], s.way[b] = s.way[b], s.way[a]
	}
}
