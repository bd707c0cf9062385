package stock

import "slices"

// fair is the least that a piece of a length can add to the bill: a whole stick
// where nothing else would fit beside it, else its share of one. The prices of
// the pieces of any stick then never come to more than the stick, so that the
// least cost of a plan is known from them (a dual of the cutting problem).
// Counted says whether counted boards are reckoned with.
func (y *yard) fair(c *class, l int64, counted bool) money {
	best := never
	for _, k := range c.opens {
		if st := &y.sticks[k]; counted || y.counts[y.sizes[st.size].kind] == unlimited {
			best = min(best, y.share(c, st, l))
		}
	}
	return best
}

// share is the fair price of a piece from one stick.
func (y *yard) share(c *class, st *stick, l int64) money {
	switch u := st.hold - y.kerf; {
	case u < l:
		return never
	case u-y.kerf-l+c.shared < y.pools[c.pool].least:
		return st.cost
	default:
		return money(float64(st.cost) * (float64(l-c.shared) / float64(u-y.kerf)))
	}
}

// bound is the least that the boards can come to, each joint at its price, the
// rules between strakes left out: for every strake the cheapest chain of pieces
// at their fair prices. What is counted on the rack is reckoned with as if more
// could be had for so much more a board: every such surcharge gives a bound that
// holds, and the highest found is taken, with its surcharges.
func (y *yard) bound(each money) (best money, highest []money) {
	s := newSearch(y)
	best, sur := s.rough(each)
	highest = slices.Clone(sur)
	if sur == nil {
		return best, make([]money, len(y.counts))
	}
	// Towards the highest: a kind asked for more often than it is there gets
	// dearer, one that stays gets cheaper.
	reach, idle := 0.02, 0
	for range climbs {
		at, over := s.boundAt(each, sur, true)
		if at > best+best/level {
			idle = 0
		} else if idle++; idle == rest {
			return best, highest
		}
		if at > best {
			best, highest = at, slices.Clone(sur)
		} else {
			reach *= 0.8
		}
		norm := 0.0
		for _, g := range over {
			norm += float64(g * g)
		}
		if norm < 1e-9 {
			break
		}
		step := float64(float64(best)*(1+reach)-float64(at)) / norm
		for k := range sur {
			sur[k] = max(0, sur[k]+money(step*over[k]))
		}
	}
	return best, highest
}

// climbs is how often the surcharges are bettered at most; they rest after so
// many that raise the bound by less than so small a part of it.
const (
	climbs = 30
	rest   = 10
	level  = 20_000
)

// rough is the highest bound of a few surcharges, all kinds in like measure, and
// that surcharge; nil where nothing is counted.
func (s *search) rough(each money) (best money, sur []money) {
	counted := false
	for _, n := range s.counts {
		counted = counted || n != unlimited
	}
	best = -never
	for step := range money(5) {
		try := make([]money, len(s.counts))
		for k := range s.sizes {
			z := &s.sizes[k]
			if s.counts[z.kind] == unlimited {
				continue
			}
			board := money(0)
			for _, i := range z.sticks {
				board += s.sticks[i].rare * money(z.lanes)
			}
			try[z.kind] = max(try[z.kind], board*step/4)
		}
		at, _ := s.boundAt(each, try, false)
		if !counted {
			return max(0, at), nil
		}
		if at < best {
			break // the bound is a least of straight lines in the surcharge: once it falls it goes on falling
		}
		if at > best {
			best, sur = at, try
		}
	}
	return max(0, best), sur
}

// boundAt is the bound with counted boards dearer by so much each, and, where
// asked, how many more boards of each kind the chains would take than there are.
func (s *search) boundAt(each money, sur []money, usage bool) (total money, over []float64) {
	y := s.yard.dearer(sur)
	own := s.yard
	s.yard, s.lists = &y, make([]priceList, len(y.classes))
	defer func() { s.yard = own }()
	total -= y.onRack(sur)
	over = make([]float64, len(y.counts))
	for k, n := range y.counts {
		if n != unlimited {
			over[k] -= float64(n)
		}
	}
	type alike struct {
		class         int
		length, clear int64
		given         bool
		start         int64 // where its joints fall on given places
	}
	known := map[alike]int{}
	var costs []money
	var uses [][]float64
	for i := range y.timbers {
		t := &y.timbers[i]
		key := alike{t.class, t.length, int64(len(t.clear)) * int64(i+1), t.given, 0}
		if t.shut != nil {
			key.start = t.start
		}
		n, ok := known[key]
		if !ok {
			n = len(costs)
			known[key] = n
			costs = append(costs, s.alone(t, each))
			var use []float64
			if usage && costs[n] < never {
				use = s.takes(t)
			}
			uses = append(uses, use)
		}
		if costs[n] >= never {
			continue
		}
		total += costs[n] * money(t.copies())
		for k, u := range uses[n] {
			over[k] += float64(u * float64(t.copies()))
		}
	}
	for k, n := range y.counts {
		if n == unlimited {
			over[k] = 0
		}
	}
	return total, over
}

// dearer is the yard with counted boards dearer by so much each.
func (y *yard) dearer(sur []money) yard {
	more := *y
	more.sticks = append([]stick{}, y.sticks...)
	for k := range more.sticks {
		st := &more.sticks[k]
		if m := sur[y.sizes[st.size].kind]; m > 0 {
			st.cost += money(float64(m) * st.part)
		}
	}
	return more
}

// worth notes what counted sticks are worth beyond their cost, by the surcharges of
// the highest bound.
func (p *part) worth(sur []money) {
	p.sticks = slices.Clone(p.sticks)
	for k := range p.sticks {
		st := &p.sticks[k]
		st.rare = money(float64(sur[p.sizes[st.size].kind]) * st.part)
	}
}

// onRack is what surcharges come to on all the boards that are counted.
func (y *yard) onRack(sur []money) (total money) {
	for k, n := range y.counts {
		if n != unlimited {
			total += sur[k] * money(n)
		}
	}
	return total
}

// takes is how many boards of each kind, in fractions, the chain that alone
// found last for a timber takes.
func (s *search) takes(t *timber) []float64 {
	c := &s.classes[t.class]
	use := make([]float64, len(s.counts))
	at, scarf := int64(0), int64(0)
	piece := func(to, more int64) {
		l := (to - at + scarf + more) / inch * inch
		best, least := -1, never
		for _, k := range c.opens {
			if v := s.share(c, &s.sticks[k], l); v < least {
				best, least = k, v
			}
		}
		if best >= 0 {
			st := &s.sticks[best]
			z := &s.sizes[st.size]
			use[z.kind] += float64(float64(least)/float64(max(1, st.cost))) * st.part
		}
		at = to
	}
	for _, p := range s.way {
		piece(int64(p)*s.grid, c.scarf-c.scarf/2)
		scarf = c.scarf / 2
	}
	piece(t.length, 0)
	return use
}

// alone is the least a timber comes to at fair prices, its own stretches kept
// clear where that can be.
func (s *search) alone(t *timber, each money) money {
	clear(s.pull)
	return s.chain(t, each)
}

// chain is alone with a price on each step besides, in s.pull; it leaves the
// joints in s.way.
func (s *search) chain(t *timber, each money) money {
	c := &s.classes[t.class]
	best := never
	s.way = s.way[:0]
	if t.length <= c.longest {
		best = s.fair(c, t.length, true)
	}
	tab, tail, ok := s.unpriced(t, c)
	if t.given || !ok {
		return best
	}
	list := s.priceList(t.class)
	for d := range tab.in {
		l := int64(d) * s.grid
		tab.in[d] = list.at(l + c.scarf)
		tab.first[d] = list.at(l + c.scarf - c.scarf/2)
		tab.last[d] = list.at(l + tail + c.scarf/2)
	}
	clear(s.pen)
	for _, z := range t.clear {
		s.block(t, z.from, z.to, 0, weight)
	}
	s.offered = s.offered[:0]
	joint := s.joint
	s.joint = each
	defer func() { s.joint = joint }()
	if !s.cross(t, tab, 0) {
		clear(s.pen)
		s.cross(t, tab, 0)
	}
	end := int32(-1)
	for k := range s.nodes {
		if l := s.after(t, tab, &s.nodes[k]); l < never && s.nodes[k].cost+l < best {
			best, end = s.nodes[k].cost+l, int32(k)
		}
	}
	s.trace(end)
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
