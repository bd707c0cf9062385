package stock

import "math/bits"

// bin is a stick begun: a lane that pieces are cut from. One with no pieces is a
// hole to be used again.
type bin struct {
	stick   int32
	count   int32
	scarfed int32 // pieces with a scarfed end
	slants  int32 // scarfed ends of its pieces
	sum     int64 // of its pieces, each with a kerf
	form          // of its pieces together
	shared  int64 // saved by each slanted cut that two pieces share
}

// used is what a bin's pieces take, slanted cuts shared where the yard shares
// them: pieces stand in one row, or in rows between hood ends.
func (b *bin) used() int64 { return b.with(0, 0, 0) }

// with is what a bin takes with one piece more.
func (b *bin) with(need, shared int64, slants int32) int64 {
	if need == 0 {
		if b.shared == 0 {
			return b.sum
		}
		return b.sum - b.shared*int64(max(0, min(b.scarfed-1, b.slants/2)))
	}
	if b.count == 0 || b.shared == 0 || shared != b.shared {
		return b.sum + need
	}
	scarfed := b.scarfed
	if slants > 0 {
		scarfed++
	}
	return b.sum + need - b.shared*int64(max(0, min(scarfed-1, (b.slants+slants)/2)))
}

// lumber is the boards begun: what changes while the search goes on.
type lumber struct {
	bins   [][]bin // by pool
	holes  [][]int32
	room   [][]uint64 // by pool, a bit for each bin that can take another piece
	open   []int32    // sticks begun, by stick
	boards []int32    // by size
	taken  []int32    // boards, by kind
	spent  money      // on whole boards
}

func newLumber(y *yard) lumber {
	return lumber{
		bins: make([][]bin, len(y.pools)), holes: make([][]int32, len(y.pools)), room: make([][]uint64, len(y.pools)),
		open: make([]int32, len(y.sticks)), boards: make([]int32, len(y.sizes)), taken: make([]int32, len(y.counts)),
	}
}

// copyTo makes to the same, keeping its memory.
func (l *lumber) copyTo(to *lumber) {
	for i := range l.bins {
		to.bins[i] = append(to.bins[i][:0], l.bins[i]...)
		to.holes[i] = append(to.holes[i][:0], l.holes[i]...)
		to.room[i] = append(to.room[i][:0], l.room[i]...)
	}
	copy(to.open, l.open)
	copy(to.boards, l.boards)
	copy(to.taken, l.taken)
	to.spent = l.spent
}

// canOpen says that one more of a stick may be had.
func (s *search) canOpen(k int) bool {
	z := &s.sizes[s.sticks[k].size]
	return s.open[k] < s.boards[s.sticks[k].size]*int32(z.lanes) || s.taken[z.kind] < s.counts[z.kind]
}

// begin opens a stick, and a board where no lane of one begun is left.
func (s *search) begin(k int) {
	i := s.sticks[k].size
	z := &s.sizes[i]
	s.open[k]++
	if s.open[k] > s.boards[i]*int32(z.lanes) {
		s.boards[i]++
		s.taken[z.kind]++
		s.spent += z.cost
	}
}

// end closes a stick, and its board where no lane of it is used any more.
func (s *search) end(k int) {
	i := s.sticks[k].size
	z := &s.sizes[i]
	s.open[k]--
	most := int32(0)
	for _, o := range z.sticks {
		most = max(most, (s.open[o]+int32(z.lanes)-1)/int32(z.lanes))
	}
	if d := s.boards[i] - most; d > 0 {
		s.boards[i] = most
		s.taken[z.kind] -= d
		s.spent -= money(d) * z.cost
	}
}

// put cuts a piece from where it costs least now and returns its bin; -1 where
// no stick will give it. Sigma is how far an offcut's worth is reckoned with.
func (s *search) put(l int64, slants int32, c *class, sigma float64) int32 {
	p := &s.pools[c.pool]
	worth := sigma * p.rate
	value := func(over int64) money {
		if over >= p.least {
			return money(worth * float64(over))
		}
		return 0
	}
	need := l + s.kerf
	best, tie, at, to := never, int64(0), int32(-1), int32(-1)
	offer := func(cost money, over int64, b, k int32) {
		if cost < best || cost == best && over < tie {
			best, tie, at, to = cost, over, b, k
		}
	}
	s.opening(c)
	bins := s.bins[c.pool]
	top := c.longest + s.kerf
	for i := s.roomy(c.pool, 0); i >= 0; i = s.roomy(c.pool, i+1) {
		b := &bins[i]
		then := b.sum + need
		if b.shared > 0 {
			then = b.with(need, c.shared, slants)
		}
		if then > top || !c.agrees(b.species) {
			continue
		}
		st := &s.sticks[b.stick]
		spent := value(st.hold - b.used() - s.kerf)
		if st.hold >= then && st.serves(&c.form) {
			over := st.hold - then
			offer(spent-value(over-s.kerf), over, int32(i), b.stick)
		}
		ways, sure := s.instead(c, b)
		for _, k := range ways {
			t := &s.sticks[k]
			if t.hold <= st.hold || t.hold < then || !sure && !(t.serves(&b.form) && s.canOpen(k)) {
				continue
			}
			over := t.hold - then
			offer(t.cost-st.cost+s.scarcity(t.rare-st.rare)+spent-value(over-s.kerf), over, int32(i), int32(k))
		}
	}
	for _, k := range s.openings {
		if t := &s.sticks[k]; t.hold >= need {
			offer(t.cost+s.scarcity(t.rare)-value(t.hold-need-s.kerf), t.hold-need, -1, int32(k))
		}
	}
	if to < 0 {
		return -1
	}
	if at < 0 {
		at = s.hole(c.pool)
		s.begin(int(to))
		s.bins[c.pool][at] = bin{stick: to, shared: c.shared}
	}
	b := &s.bins[c.pool][at]
	if b.stick != to {
		s.begin(int(to))
		s.end(int(b.stick))
		b.stick = to
	}
	b.add(need, slants, c)
	s.mark(c.pool, at)
	return at
}

// roomy is the first bin from i on that can take another piece; -1 for none.
func (s *search) roomy(pool, i int) int {
	words := s.room[pool]
	for w := i >> 6; w < len(words); w++ {
		word := words[w]
		if w == i>>6 {
			word &= ^uint64(0) << (i & 63)
		}
		if word != 0 {
			return w<<6 + bits.TrailingZeros64(word)
		}
	}
	return -1
}

// mark notes whether a bin can take another piece.
func (s *search) mark(pool int, at int32) {
	p, b := &s.pools[pool], &s.bins[pool][at]
	for len(s.room[pool]) <= int(at>>6) {
		s.room[pool] = append(s.room[pool], 0)
	}
	if bit := uint64(1) << (at & 63); b.count > 0 && b.used()+p.least-b.shared <= p.longest {
		s.room[pool][at>>6] |= bit
	} else {
		s.room[pool][at>>6] &^= bit
	}
}

// add puts a piece into a bin.
func (b *bin) add(need int64, slants int32, c *class) {
	b.count++
	b.slants += slants
	if slants > 0 {
		b.scarfed++
	}
	b.sum += need
	b.cover(&c.form)
	if b.shared != c.shared {
		b.shared = 0 // one cut serves only scarfs that are alike
	}
}

// hole is the place of a bin not in use.
func (s *search) hole(pool int) int32 {
	if n := len(s.holes[pool]); n > 0 {
		h := s.holes[pool][n-1]
		s.holes[pool] = s.holes[pool][:n-1]
		return h
	}
	s.bins[pool] = append(s.bins[pool], bin{})
	return int32(len(s.bins[pool]) - 1)
}

// take gives a piece back and lets its stick shrink to the least dear that
// holds the rest.
func (s *search) take(l int64, slants, at int32, c *class) {
	b := &s.bins[c.pool][at]
	b.count--
	b.slants -= slants
	if slants > 0 {
		b.scarfed--
	}
	b.sum -= l + s.kerf
	if b.count == 0 {
		s.end(int(b.stick))
		*b = bin{}
		s.holes[c.pool] = append(s.holes[c.pool], at)
		s.mark(c.pool, at)
		return
	}
	s.mark(c.pool, at)
	best, to := s.sticks[b.stick].cost, int(b.stick)
	used := b.used()
	for _, k := range s.pools[c.pool].sticks {
		t := &s.sticks[k]
		if t.cost < best && t.hold >= used && t.serves(&b.form) && s.canOpen(k) {
			best, to = t.cost, k
		}
	}
	if to != int(b.stick) {
		s.begin(to)
		s.end(int(b.stick))
		b.stick = int32(to)
	}
}
