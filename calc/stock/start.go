package stock

// lattice is a stair of places that joints are drawn to, each timber's a step on
// from its neighbour's; strength is the price of standing a metre off it.
type lattice struct {
	period, step, phase int64
	strength            money
}

// shake draws a timber's joints to the lattice, and by chance elsewhere.
func (s *search) shake(i int, noise money) {
	t := &s.timbers[i]
	pull := s.pull[:t.steps+1]
	l := &s.lattice
	if l.strength == 0 && noise == 0 {
		clear(pull)
		return
	}
	if l.strength > 0 {
		x := t.start - l.step*int64(i) - l.phase
		x -= floor(x, l.period) * l.period
		for p := range pull {
			pull[p] = l.strength * money(min(x, l.period-x)>>10) / (1_000_000_000 >> 10)
			if x += s.grid; x >= l.period {
				x -= l.period
			}
		}
	} else {
		clear(pull)
	}
	if noise > 0 {
		chance := uint64(0)
		for p := range pull {
			if p%6 == 0 { // ten of its bits a step
				chance = s.next()
			}
			pull[p] += noise * money(chance>>54) / 1024
			chance <<= 10
		}
	}
}

// linked says that a timber's joints keep clear of those of the one before it.
func (y *yard) linked(i int) bool {
	_, ok := y.nearTo(i, i-1)
	return ok
}

// spread is the farthest that the rules of neighbours look along the strake.
func (y *yard) spread() int64 {
	far := int64(0)
	for i := range y.timbers {
		for _, o := range y.timbers[i].near {
			far = max(far, o.apart, y.bay)
		}
	}
	return far
}

// stair chooses a lattice by chance, its period a stick's length less a scarf.
func (s *search) stair(most money) {
	s.lattice = lattice{}
	far := s.spread()
	if far == 0 || most == 0 {
		return
	}
	c := &s.classes[s.random(len(s.classes))]
	if len(c.opens) == 0 {
		return
	}
	period := int64(0)
	for range 8 {
		period = s.sticks[c.opens[s.random(len(c.opens))]].hold - s.kerf - c.scarf
		if 2*period >= 5*far {
			break
		}
	}
	if period <= far {
		return
	}
	steps := [...]int64{far, -far, period / 3, -period / 3, (period + s.bay) / 3, (period + far) / 2}
	s.lattice = lattice{period: period, step: steps[s.random(len(steps))], phase: s.part2(period), strength: 1 + s.part(most)}
}

// part2 is a random part of a length, in 1/1024.
func (s *search) part2(l int64) int64 { return l / 1024 * int64(s.random(1024)) }

// start lays every timber in turn, with a lattice and noise by chance.
func (s *search) start(to *layout) bool {
	s.empty()
	s.stair(4 * s.dear())
	s.rare = int64(128 + s.random(257))
	noise := s.dear() * money(3+s.random(28)) / 100
	defer func() { s.lattice = lattice{} }()
	for i := range s.timbers {
		s.shake(i, noise)
		if !s.lay(i, 0.9, forbidding*s.dear()) {
			return false
		}
	}
	s.keep(to)
	return true
}

// dear is an amount of money to measure others by: what a joint may cost or, if
// more, about what an eighth of a board does.
func (y *yard) dear() money {
	most := money(0)
	for i := range y.classes {
		for _, k := range y.classes[i].opens {
			most = max(most, y.sticks[k].cost)
		}
	}
	return max(y.joint, most/8, 1)
}
