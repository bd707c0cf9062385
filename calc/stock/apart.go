package stock

import (
	"math"
	"slices"
)

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

// apart is a bound being raised by the rules between strakes: what every joint pays
// for the stretches it falls in, and every counted board beyond its cost.
type apart struct {
	*search
	own  *yard // without surcharges
	all  []stretches
	in   [][]int // of each timber, the stretches that hold it
	like []int   // of each timber, the first of its shape
	sur  []money // on each kind of board
	over []float64
	last []chained
}

// chained is the cheapest chain found last for a timber, at its prices on each step.
type chained struct {
	pull   []money
	cost   money
	joints []int32
	takes  []float64
}

func (y *yard) apart(all []stretches) *apart {
	a := &apart{search: newSearch(y), own: y, all: all, in: make([][]int, len(y.timbers)), like: y.likes(),
		over: make([]float64, len(y.counts)), last: make([]chained, len(y.timbers))}
	for k := range all {
		for _, i := range all[k].timbers {
			a.in[i] = append(a.in[i], k)
		}
	}
	return a
}

// raise is the highest bound that it comes to in so many turns, from the prices it
// has and surcharges on counted boards. At any of them the cheapest chains, every
// joint and board paying its price, less the prices themselves come to no more than
// any plan that keeps the rules; prices go up where more than one joint falls or more
// boards are taken than there are, and down where none does or some stay. High is
// what the plan found comes to, which no bound can be beyond.
func (a *apart) raise(low, high, each money, sur []money, turns int) money {
	if len(a.all) == 0 || low <= 0 || high-low < high/200 {
		return low
	}
	a.sur = slices.Clone(sur)
	best, part := low, 1.0
	for idle := 0; turns > 0; turns-- {
		at := a.priced(each)
		if idle++; at > best {
			best, idle = at, 0
		} else if idle == 5 {
			part, idle = part/2, 0
		}
		square := a.square()
		if square == 0 {
			break
		}
		a.step(part * (float64(max(0, high-at)) / square))
	}
	return best
}

// square is how far in all the chains are from what is allowed, squared.
func (a *apart) square() (sum float64) {
	for k := range a.all {
		w := &a.all[k]
		for j, n := range w.joints {
			if n > 1 || w.price[j] > 0 {
				sum += float64((n - 1) * (n - 1))
			}
		}
	}
	for k, n := range a.over {
		if n > 0 || a.sur[k] > 0 {
			sum += float64(n * n)
		}
	}
	return sum
}

// step changes every price by how far the chains are from what is allowed there.
func (a *apart) step(by float64) {
	for k := range a.all {
		w := &a.all[k]
		for j, n := range w.joints {
			w.price[j] = max(0, w.price[j]+money(by*float64(n-1)))
		}
	}
	for k, n := range a.over {
		a.sur[k] = max(0, a.sur[k]+money(by*n))
	}
}

// priced is what the cheapest chains come to less the prices on stretches, whose
// joints are counted, and less the surcharges, whose boards are.
func (a *apart) priced(each money) (total money) {
	dear := a.own.dearer(a.sur)
	a.yard, a.lists = &dear, make([]priceList, len(a.classes))
	total = -a.own.onRack(a.sur)
	for k, n := range a.counts {
		a.over[k] = -float64(n)
	}
	for k := range a.all {
		for _, p := range a.all[k].price {
			total -= p
		}
		clear(a.all[k].joints)
	}
	for i := range a.timbers {
		t := &a.timbers[i]
		ch := a.cheapest(i, each)
		if ch.cost >= never {
			continue
		}
		total += ch.cost * money(t.copies())
		for k, n := range ch.takes {
			a.over[k] += float64(n * float64(t.copies()))
		}
		for _, k := range a.in[i] {
			for _, p := range ch.joints {
				a.all[k].meet(t.start + int64(p)*a.grid)
			}
		}
	}
	for k, n := range a.counts {
		if n == unlimited {
			a.over[k] = 0
		}
	}
	return total
}

// cheapest is the cheapest chain of a timber. What was just found for one of its
// shape, port's for starboard's, stands where the prices on its steps are the same.
func (a *apart) cheapest(i int, each money) *chained {
	t := &a.timbers[i]
	pull := a.pull[:t.steps+1]
	clear(pull)
	for _, k := range a.in[i] {
		a.all[k].put(t, a.grid, pull)
	}
	copies, sum := money(t.copies()), money(0)
	for p := range pull {
		sum += pull[p]
		pull[p] = sum / copies
	}
	if f := a.like[i]; f < i && slices.Equal(pull, a.last[f].pull) {
		return &a.last[f]
	}
	ch := &a.last[i]
	ch.pull = append(ch.pull[:0], pull...)
	ch.cost = a.chain(t, each)
	ch.joints = append(ch.joints[:0], a.way...)
	if ch.takes = nil; ch.cost < never {
		ch.takes = a.takes(t)
	}
	return ch
}
