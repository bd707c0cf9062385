package stock

import "math"

// stretches is places along the side, at even steps, from each of which no more
// than one joint of some strakes beside each other may fall within a reach: any
// two of them would break a rule.
type stretches struct {
	timbers []int
	from    int64 // of the first
	step    int64
	reach   int64
	price   []money // on each, put on every joint in it
	joints  []int   // found in each
}

// meet counts a joint in every stretch that it falls in.
func (w *stretches) meet(x int64) {
	for j := max(0, int(floor(x-w.reach-w.from, w.step))+1); j <= int(floor(x-w.from, w.step)); j++ {
		w.joints[j]++
	}
}

// put adds the price of every stretch to the first step of a timber in it, and
// takes it off at the first one past it.
func (w *stretches) put(t *timber, grid int64, on []money) {
	for j, price := range w.price {
		if price == 0 {
			continue
		}
		x := w.from + int64(j)*w.step - t.start
		if a, b := max(0, floor(x-1, grid)+1), floor(x+w.reach-1, grid)+1; b > 0 && a < int64(len(on)) {
			on[a] += price
			if b < int64(len(on)) {
				on[b] -= price
			}
		}
	}
}

// stretches lists them for every two, three and four strakes beside each other.
func (y *yard) stretches() []stretches {
	var all []stretches
	add := func(w stretches, to int64) {
		n := (to-w.from)/w.step + 2
		w.price, w.joints = make([]money, n), make([]int, n)
		all = append(all, w)
	}
	for i := range y.timbers {
		low, high := y.timbers[i].start, y.timbers[i].start+y.timbers[i].length
		reach, bay := int64(math.MaxInt64), y.bay > 0
		for k := 1; k <= 3 && i+k < len(y.timbers); k++ {
			t := &y.timbers[i+k]
			low, high = min(low, t.start), max(high, t.start+t.length)
			beside := true
			for j := i; j < i+k && beside; j++ {
				var n near
				n, beside = y.nearTo(i+k, j)
				reach, bay = min(reach, n.apart), bay && n.bay
			}
			if !beside {
				break
			}
			timbers := make([]int, 0, k+1)
			own := int64(math.MaxInt64) // two joints of one strake are never nearer than this
			for j := i; j <= i+k; j++ {
				c := &y.classes[y.timbers[j].class]
				timbers, own = append(timbers, j), min(own, c.least-c.scarf)
			}
			if r := min(reach, own); r > 0 {
				add(stretches{timbers: timbers, from: low - r, step: max(r/12, y.grid), reach: r}, high)
			}
			if bay && y.bay <= own && y.bay > reach {
				add(stretches{timbers: timbers, from: floor(low, y.bay) * y.bay, step: y.bay, reach: y.bay}, high)
			}
		}
	}
	return all
}

// nearTo is what keeps two timbers' joints clear of each other, if anything does.
func (y *yard) nearTo(i, of int) (near, bool) {
	for _, n := range y.timbers[i].near {
		if n.of == of {
			return n, true
		}
	}
	return near{}, false
}

// apart raises a bound by the rules between strakes. At any prices on the
// stretches the cheapest chains, every joint paying for those it falls in, less
// the prices themselves come to no more than any plan that keeps the rules; the
// prices go up where more than one joint falls and down where none does. High is
// what the plan found comes to, which no bound can be beyond.
func (y *yard) apart(all []stretches, low, high, each money, sur []money, turns int) money {
	if len(all) == 0 || low <= 0 || high-low < high/200 {
		return low
	}
	s := newSearch(y)
	dear := y.dearer(sur)
	s.yard, s.lists = &dear, make([]priceList, len(y.classes))
	in := make([][]int, len(y.timbers))
	for k := range all {
		for _, i := range all[k].timbers {
			in[i] = append(in[i], k)
		}
	}
	best, part := low, 1.0
	for idle := 0; turns > 0; turns-- {
		at := s.priced(all, in, each) - y.onRack(sur)
		if idle++; at > best {
			best, idle = at, 0
		} else if idle == 5 {
			part, idle = part/2, 0
		}
		square := 0
		for k := range all {
			for j, n := range all[k].joints {
				if n > 1 || all[k].price[j] > 0 {
					square += (n - 1) * (n - 1)
				}
			}
		}
		if square == 0 {
			break
		}
		step := part * (float64(max(0, high-at)) / float64(square))
		for k := range all {
			w := &all[k]
			for j, n := range w.joints {
				w.price[j] = max(0, w.price[j]+money(step*float64(n-1)))
			}
		}
	}
	return best
}

// priced is what the cheapest chains come to less the prices on stretches, whose
// joints are counted.
func (s *search) priced(all []stretches, in [][]int, each money) (total money) {
	for k := range all {
		for _, p := range all[k].price {
			total -= p
		}
		clear(all[k].joints)
	}
	for i := range s.timbers {
		t := &s.timbers[i]
		pull := s.pull[:t.steps+1]
		clear(pull)
		for _, k := range in[i] {
			all[k].put(t, s.grid, pull)
		}
		copies, sum := money(t.copies()), money(0)
		for p := range pull {
			sum += pull[p]
			pull[p] = sum / copies
		}
		cost := s.chain(t, each)
		if cost >= never {
			continue
		}
		total += cost * copies
		for _, k := range in[i] {
			for _, p := range s.way {
				all[k].meet(t.start + int64(p)*s.grid)
			}
		}
	}
	return total
}
