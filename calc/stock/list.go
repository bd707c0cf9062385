package stock

import (
	"cmp"
	"slices"
)

// list cuts a part whose pieces are all given, of one form and one pool, by
// columns; false where it is not such a part. Floor is the least the sticks can
// come to.
func (s *search) list(to *layout) (floor money, ok bool) {
	class := s.timbers[0].class
	c := &s.classes[class]
	for i := range s.timbers {
		if t := &s.timbers[i]; !t.given || t.class != class || t.copies() != 1 || t.length > c.longest {
			return 0, false
		}
	}
	unit := int64(0)
	for i := range s.timbers {
		unit = common(unit, s.timbers[i].length+s.kerf)
	}
	far := c.longest + s.kerf
	unit = max(unit, (far+mostUnits-1)/mostUnits)
	up := func(l int64) int { return int((l + unit - 1) / unit) }
	by := make([]int, len(s.timbers)) // the longest first
	for i := range by {
		by[i] = i
	}
	slices.SortStableFunc(by, func(a, b int) int { return cmp.Compare(s.timbers[b].length, s.timbers[a].length) })
	cut := &cutter{}
	of := [][]int{} // timbers of each lot
	for _, i := range by {
		u := up(s.timbers[i].length + s.kerf)
		if n := len(cut.lots); n == 0 || cut.lots[n-1].units != u {
			cut.lots, of = append(cut.lots, lot{units: u}), append(of, nil)
		}
		cut.lots[len(cut.lots)-1].demand++
		of[len(of)-1] = append(of[len(of)-1], i)
	}
	for _, k := range c.opens {
		st := &s.sticks[k]
		z := &s.sizes[st.size]
		if len(z.sticks) > 1 {
			return 0, false
		}
		cut.holds, cut.costs = append(cut.holds, int(st.hold/unit)), append(cut.costs, float64(st.cost))
		left := -1
		if n := s.counts[z.kind]; n != unlimited {
			left = int(n) * z.lanes
		}
		cut.left = append(cut.left, left)
	}
	cols, bound, ok := cut.cut()
	if !ok {
		return 0, false
	}
	s.empty()
	for _, col := range cols {
		at := s.hole(c.pool)
		k := c.opens[col.kind]
		if !s.canOpen(k) {
			return 0, false
		}
		s.begin(k)
		s.bins[c.pool][at] = bin{stick: int32(k)}
		for n, q := range col.count {
			for range q {
				i := of[n][0]
				of[n] = of[n][1:]
				s.bins[c.pool][at].add(s.timbers[i].length+s.kerf, 0, c)
				s.plans[i].bins = append(s.plans[i].bins[:0], at)
				s.laid[i] = true
			}
		}
		s.mark(c.pool, at)
	}
	s.keep(to)
	return money(bound * (1 - 1e-9)), true
}

// common is the greatest length that divides both.
func common(a, b int64) int64 {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}
