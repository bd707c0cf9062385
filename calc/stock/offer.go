package stock

import (
	"math"
	"slices"
)

// offer is one way to have a piece no longer than room now: from a new stick,
// from one begun, or by taking a longer stick for what one begun holds.
type offer struct {
	room int64 // for a piece scarfed at both ends
	end  int64 // for a piece scarfed at one
	cost money
}

// offers gathers the ways to have one more piece of a class. Sigma is how far
// the worth of an offcut is reckoned with: 0 where nothing more will be cut.
func (s *search) offers(c *class, sigma float64, copies int) {
	p := &s.pools[c.pool]
	s.offered = s.offered[:0]
	s.opening(c)
	for _, k := range s.openings {
		t := &s.sticks[k]
		cost := t.cost + s.scarcity(t.rare)
		s.offered = append(s.offered, offer{t.hold - s.kerf, t.hold - s.kerf, cost})
		if copies == 2 { // the piece and its mirror from one stick
			s.offered = append(s.offered, offer{(t.hold-2*s.kerf+c.shared)/2 - 1, (t.hold-2*s.kerf+c.shared)/2 - 1, cost / 2})
		}
	}
	worth := sigma * p.rate
	bins := s.bins[c.pool]
	most := c.longest + s.kerf - c.least
	for i := s.roomy(c.pool, 0); i >= 0; i = s.roomy(c.pool, i+1) {
		b := &bins[i]
		if !c.agrees(b.species) {
			continue
		}
		two := b.with(s.kerf, c.shared, 2)
		if two > most+s.kerf {
			continue
		}
		one := b.with(s.kerf, c.shared, 1)
		st := &s.sticks[b.stick]
		spent := money(0)
		if over := st.hold - b.used() - s.kerf; over >= p.least {
			spent = money(worth * float64(over))
		}
		if st.hold-two >= c.least && st.serves(&c.form) {
			s.offered = append(s.offered, offer{st.hold - two, st.hold - one, spent})
		}
		ways, sure := s.instead(c, b)
		for _, k := range ways {
			t := &s.sticks[k]
			if t.hold <= st.hold || t.hold-two < c.least || !sure && !(t.serves(&b.form) && s.canOpen(k)) {
				continue
			}
			s.offered = append(s.offered, offer{t.hold - two, t.hold - one, t.cost - st.cost + s.scarcity(t.rare-st.rare) + spent})
		}
	}
}

// opening gathers the sticks of a class that may be begun now, by their length,
// but for those that a longer one costs less than: no piece is ever cheaper from
// them. Of a rack of thousands of boards some dozen are left.
func (s *search) opening(c *class) {
	s.openings = s.openings[:0]
	least := money(math.MaxInt64)
	for _, k := range slices.Backward(c.opens) {
		t := &s.sticks[k]
		if v := 256*t.cost + money(s.rare)*t.rare; v <= least && s.canOpen(k) {
			least = v
			s.openings = append(s.openings, k)
		}
	}
	slices.Reverse(s.openings)
}

// instead is the sticks that what a bin holds might be cut from in its stick's
// place; sure where every one of them is there and serves it.
func (s *search) instead(c *class, b *bin) (ways []int, sure bool) {
	if c.wide >= b.wide && c.thick >= b.thick && (b.species == 0 || b.species == c.species) {
		return s.openings, true
	}
	return c.opens, false
}

// priceTable fills tab with the least cost now of a piece of d grid steps and
// off more, for every d; never where none may be had. End is for pieces scarfed
// at one end.
func (s *search) priceTable(tab []money, off int64, c *class, sigma float64, end bool) {
	least := s.pools[c.pool].least
	worth := sigma * s.pools[c.pool].rate
	for i := range tab {
		tab[i] = never
	}
	put := func(t []money, l int64, cost money) {
		if l < 0 {
			return
		}
		d := min(int(l/s.grid), len(t)-1)
		t[d] = min(t[d], cost)
	}
	room := func(o *offer) int64 {
		if end {
			return o.end
		}
		return o.room
	}
	for i := range s.offered {
		o := &s.offered[i]
		put(tab, room(o)-off, o.cost)
	}
	running := never
	for d := len(tab) - 1; d >= 0; d-- {
		running = min(running, tab[d])
		tab[d] = running
	}
	if worth == 0 {
		return
	}
	rest := s.rest[:len(tab)]
	for i := range rest {
		rest[i] = never
	}
	for i := range s.offered {
		o := &s.offered[i]
		over := room(o) - s.kerf // less the piece: what is left after it
		put(rest, over-least-off, o.cost-money(worth*float64(over)))
	}
	running = never
	for d := len(tab) - 1; d >= 0; d-- {
		running = min(running, rest[d])
		if running < never {
			tab[d] = min(tab[d], running+money(worth*float64(int64(d)*s.grid+off)))
		}
	}
}

// priceOf is what one piece of a length without scarfs costs among the offers.
func (s *search) priceOf(l int64) money {
	best := never
	for i := range s.offered {
		if o := &s.offered[i]; min(o.room, o.end) >= l {
			best = min(best, o.cost)
		}
	}
	return best
}
