package stock

import "slices"

// improver takes timbers out and lays them again.
type improver struct {
	*search
	dear   money
	kept   lumber
	out    []int
	was    []laying
	byFan  bool
	closed bool // a whole row is re-laid along a lattice
}

// stall ends a search that betters the plan by less than so small a part of it
// in some hundred moves.
const stall = 2000

// improve makes so many moves from the best plan so far and leaves the best it
// comes to in it. Heat is how much dearer a plan it may pass through at first.
func (m *improver) improve(best *layout, moves int, heat money, enough money) {
	s := m.search
	s.restore(best)
	bestTotal, bestUseful := best.total+never/1024*money(best.broken), best.useful
	useful := best.useful
	lap, before := max(500+5*len(s.plans), moves/3), never
	for n := range moves {
		s.watch.moved()
		if s.looked > s.enough {
			return
		}
		if best.broken == 0 && (n%lap == 0 && before-best.total < best.total/stall || best.total <= enough) {
			return
		}
		if n%lap == 0 {
			before = best.total
		}
		left := moves - n
		breach := m.dear * 5
		for k := 1; k <= 8; k++ { // 5 to 200 joints, in nine steps
			if n*9 >= k*moves {
				breach += breach * 58 / 100
			}
		}
		threshold := heat * money(left) / money(moves)
		cost := s.cost(breach)
		m.choose()
		joints, broken := m.lift()
		if m.again(breach) {
			for _, i := range m.out {
				s.tried.add(i, s.plans[i].joints)
			}
			now := s.cost(breach)
			u := int64(-1)
			if now == cost {
				u = s.useful()
			}
			if now < cost || now == cost && u >= useful || now < cost+s.part(threshold) {
				if u < 0 {
					u = s.useful()
				}
				useful = u
				if all := s.cost(0) + never/1024*money(s.broken); all < bestTotal || all == bestTotal && u > bestUseful {
					bestTotal, bestUseful = all, u
					s.keep(best)
				}
				continue
			}
		}
		m.putBack(joints, broken)
	}
}

// lift takes the chosen timbers out, keeping what was.
func (m *improver) lift() (joints, broken int) {
	s := m.search
	s.lumber.copyTo(&m.kept)
	joints, broken = s.joints, s.broken
	for len(m.was) < len(m.out) {
		m.was = append(m.was, laying{})
	}
	for k, i := range m.out {
		m.was[k].copyFrom(&s.plans[i])
		s.lift(i)
	}
	return joints, broken
}

func (m *improver) putBack(joints, broken int) {
	s := m.search
	m.kept.copyTo(&s.lumber)
	s.joints, s.broken = joints, broken
	for k, i := range m.out {
		s.plans[i].copyFrom(&m.was[k])
		s.laid[i] = true
	}
}

// again lays the chosen timbers anew: together by a fan, or one by one.
func (m *improver) again(breach money) bool {
	s := m.search
	sigma := 0.4 + 0.6*float64(s.random(1024))/1024
	noise := money(0)
	s.rare = int64(128 + s.random(257))
	if s.random(3) > 0 {
		noise = m.dear / 100 << s.random(6)
		if s.broken > 0 {
			noise *= 3
		}
	}
	s.lattice = lattice{}
	if m.closed {
		s.stair(4 * m.dear)
	}
	defer func() { s.lattice = lattice{} }()
	if m.byFan {
		if !s.fanOut(m.out, sigma, breach, noise) {
			return false
		}
		for _, i := range m.out {
			if !s.cut(i, sigma) {
				return false
			}
		}
		return true
	}
	for k, i := range m.out {
		if k == len(m.out)-1 {
			sigma = 0
		}
		s.shake(i, noise)
		if !s.lay(i, sigma, breach) {
			return false
		}
	}
	return true
}

// choose picks the timbers to take out.
func (m *improver) choose() {
	s := m.search
	m.out, m.byFan, m.closed = m.out[:0], false, false
	if n := s.random(64); s.broken > 0 && n < 16 || s.broken == 0 && n < 6 {
		m.chooseRow()
		return
	}
	if s.broken > 0 && s.random(2) == 0 {
		i := m.inBreach()
		m.add(i)
		for _, o := range s.timbers[i].near {
			if s.random(2) == 0 {
				m.add(o.of)
			}
		}
	}
	i := s.random(len(s.plans))
	switch s.random(3) {
	case 0: // any of one class
		m.add(i)
		for range s.random(4) {
			if j := s.random(len(s.plans)); s.timbers[j].class == s.timbers[i].class {
				m.add(j)
			}
		}
	case 1:
		m.boardMates(i)
	default: // side by side
		for k := range 1 + s.random(5) {
			m.add(i + k)
		}
	}
	for k := len(m.out) - 1; k > 0; k-- {
		j := s.random(k + 1)
		m.out[k], m.out[j] = m.out[j], m.out[k]
	}
}

func (m *improver) add(i int) {
	if i >= 0 && i < len(m.plans) && !slices.Contains(m.out, i) {
		m.out = append(m.out, i)
	}
}

// chooseRow picks neighbours that are laid again together, about a broken rule
// where there is one; and now and then a long run of them, along a lattice.
func (m *improver) chooseRow() {
	s := m.search
	k := s.random(len(s.plans))
	if s.broken > 0 {
		k = m.inBreach()
	}
	long := 3 + s.random(6)
	m.byFan = true
	if s.broken > 0 && s.random(4) == 0 {
		long, m.closed, m.byFan = 6+s.random(len(s.plans)), true, s.random(2) == 0
	}
	k -= s.random(min(long, 8))
	for i := max(k, 0); i < k+long && i < len(s.plans); i++ {
		if len(m.out) > 0 && !s.linked(i) {
			break
		}
		m.add(i)
	}
	if s.random(2) == 0 {
		slices.Reverse(m.out)
	}
}

// inBreach is a timber that breaks a rule, if any does.
func (m *improver) inBreach() int {
	k := m.random(len(m.plans))
	for range m.plans {
		if m.breaks(k) > 0 {
			return k
		}
		k = (k + 1) % len(m.plans)
	}
	return k
}

// boardMates adds a timber and those cut from a board with one of its pieces.
func (m *improver) boardMates(i int) {
	s := m.search
	m.add(i)
	b := s.plans[i].bins
	at := b[s.random(len(b))]
	pool := s.classes[s.timbers[i].class].pool
	for j := range s.plans {
		if s.classes[s.timbers[j].class].pool == pool && slices.Contains(s.plans[j].bins, at) {
			m.add(j)
		}
	}
}
