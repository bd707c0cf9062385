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
	from, to := x-n.apart, x+n.apart
	if n.apart > 0 {
		s.block(t, from-t.start, to-t.start, x-t.start, weight)
	}
	if !n.bay {
		return
	}
	// The bay holds its fore end and not its after end. What is too near anyhow
	// does not count again.
	b := floor(x, s.bay)
	fore, aft := b*s.bay-1, (b+1)*s.bay
	if n.apart == 0 {
		s.block(t, fore-t.start, aft-t.start, x-t.start, weight)
		return
	}
	if fore < from {
		s.block(t, fore-t.start, min(from+1, aft)-t.start, x-t.start, weight)
	}
	if aft > to {
		s.block(t, max(to-1, fore)-t.start, aft-t.start, x-t.start, weight)
	}
}

// block adds to the steps strictly between two places along a timber, and more
// to those nearer to x.
func (s *search) block(t *timber, from, to, x int64, by int32) {
	if to <= from {
		return
	}
	a, b := max(int(floor(from, s.grid))+1, 0), min(int(floor(to-1, s.grid)), t.steps)
	pen := s.pen
	reach := max(1, max(to-x, x-from))
	fall := s.grid * (weight / 2) << 16 / reach
	mid := int(floor(x, s.grid))
	for p := a; p <= b; p++ {
		pen[p] += by + int32(max(0, (weight/2)<<16-int64(max(p-mid, mid-p))*fall)>>16)
	}
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
