package stock

// weight is what one broken rule counts; a stretch to be kept clear counts
// more, and the nearer two joints are the more they count, up to half as much
// again.
const (
	weight     = 16
	zoneWeight = 10 * weight
)

// blocks counts, for every step, the rules that a joint there would break
// against the timbers already laid and the stretches kept clear.
func (s *search) blocks(i int) {
	t := &s.timbers[i]
	clear(s.pen[:t.steps+1])
	for _, z := range t.clear {
		s.block(t, z.from, z.to, (z.from+z.to)/2, zoneWeight)
	}
	for k := range t.near {
		n := &t.near[k]
		if !s.laid[n.of] {
			continue
		}
		start := s.timbers[n.of].start
		for _, p := range s.plans[n.of].joints {
			s.blockBy(t, n, start+int64(p)*s.grid)
		}
	}
}

// blockBy counts the steps of t where a joint would break a rule with one at x,
// from the place the stations are measured from.
func (s *search) blockBy(t *timber, n *near, x int64) {
	for _, z := range s.shuts(n, x) {
		s.block(t, z.from-t.start, z.to-t.start, x-t.start, weight)
	}
}

// shuts is the stretches of the side that a joint at x keeps another clear of: so
// far to both sides of it, and of its bay, which holds its fore end and not its
// after end, what is not too near anyhow.
func (y *yard) shuts(n *near, x int64) (all [3]span) {
	from, to := x-n.apart, x+n.apart
	if n.apart > 0 {
		all[0] = span{from, to}
	}
	if !n.bay {
		return all
	}
	b := floor(x, y.bay)
	fore, aft := b*y.bay-1, (b+1)*y.bay
	if n.apart == 0 {
		all[0] = span{fore, aft}
		return all
	}
	if fore < from {
		all[1] = span{fore, min(from+1, aft)}
	}
	if aft > to {
		all[2] = span{max(to-1, fore), aft}
	}
	return all
}

// block adds to the steps strictly between two places along a timber, and more
// to those nearer to x.
func (s *search) block(t *timber, from, to, x int64, by int32) {
	a, b := s.within(t, from, to)
	pen := s.pen
	reach := max(1, max(to-x, x-from))
	fall := s.grid * (weight / 2) << 16 / reach
	mid := int(floor(x, s.grid))
	for p := a; p <= b; p++ {
		pen[p] += by + int32(max(0, (weight/2)<<16-int64(max(p-mid, mid-p))*fall)>>16)
	}
}

// within is the first and the last step strictly between two places along a timber.
func (y *yard) within(t *timber, from, to int64) (a, b int) {
	if to <= from {
		return 0, -1
	}
	return max(int(floor(from, y.grid))+1, 0), min(int(floor(to-1, y.grid)), t.steps)
}

// nearer is how much more than its weight a rule broken at a distance counts.
func nearer(d, reach int64) int {
	return int((weight / 2) * (reach - max(d, -d)) / max(1, reach))
}

// breaks is how much a timber's joints break the rules against those laid.
func (s *search) breaks(i int) int {
	t := &s.timbers[i]
	n := 0
	for _, p := range s.plans[i].joints {
		at := int64(p) * s.grid
		for _, z := range t.clear {
			if at > z.from && at < z.to {
				n += zoneWeight + nearer(at-(z.from+z.to)/2, (z.to-z.from)/2)
			}
		}
		x := at + t.start
		for k := range t.near {
			o := &t.near[k]
			if !s.laid[o.of] {
				continue
			}
			start := s.timbers[o.of].start
			for _, q := range s.plans[o.of].joints {
				other := start + int64(q)*s.grid
				if d := x - other; d < o.apart && -d < o.apart {
					n += weight + nearer(d, o.apart)
				} else if o.bay && floor(x, s.bay) == floor(other, s.bay) {
					n += weight
				}
			}
		}
	}
	return n
}
