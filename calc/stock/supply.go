package stock

import (
	"cmp"
	"slices"
)

// supply prices pieces by the boards that are left: what is counted is cheap as
// far as it goes.
type supply struct {
	yard  *yard   // counted boards dearer by what they are worth
	shelf []int   // of each kind of board, its place among those counted; -1 for others
	left  []int32 // of each counted kind, in sixteenths of a board
	known []map[int64][]share
}

// share is the part of a board that a piece takes, in sixteenths, and its price.
type share struct {
	shelf int
	takes int32
	price money
}

// supply reckons counted boards dearer by a part of what they are worth: else the
// first strakes would take the best of them for whatever they can save.
func (y *yard) supply() *supply {
	dear := *y
	dear.sticks = slices.Clone(y.sticks)
	for k := range dear.sticks {
		dear.sticks[k].cost += dear.sticks[k].rare * 7 / 10
	}
	b := &supply{yard: &dear, known: make([]map[int64][]share, len(y.classes))}
	for _, n := range y.counts {
		if n == unlimited {
			b.shelf = append(b.shelf, -1)
			continue
		}
		b.shelf = append(b.shelf, len(b.left))
		b.left = append(b.left, 16*min(n, 1<<20))
	}
	for i := range b.known {
		b.known[i] = map[int64][]share{}
	}
	return b
}

// shares is what a piece of a class may be cut from, the cheapest first, as far as
// one that there is always enough of.
func (b *supply) shares(class int, l int64) []share {
	if all, ok := b.known[class][l]; ok {
		return all
	}
	c := &b.yard.classes[class]
	var all []share
	for _, k := range c.opens {
		st := &b.yard.sticks[k]
		if price := b.yard.share(c, st, l); price < never {
			part := float64(price) / float64(max(1, st.cost)) * st.part
			all = append(all, share{b.shelf[b.yard.sizes[st.size].kind], max(1, int32(16*part)), price})
		}
	}
	slices.SortStableFunc(all, func(a, b share) int { return cmp.Compare(a.price, b.price) })
	if free := slices.IndexFunc(all, func(s share) bool { return s.shelf < 0 }); free >= 0 {
		all = all[:free+1]
	}
	b.known[class][l] = all
	return all
}

// choice is a way of making up a timber with what its pieces may be cut from.
type choice struct {
	joints []int32
	pieces [][]share
	least  money       // each piece from its cheapest board
	bars   [3][]uint64 // steps of the next timbers of its row where a joint would break a rule; nil until asked for
}

// choice is false where some piece has no board.
func (b *supply) choice(i int, joints []int32) (choice, bool) {
	t := &b.yard.timbers[i]
	ch := choice{joints: joints, least: b.yard.joint * money(len(joints)*t.copies())}
	l := laying{joints: joints}
	for j := range len(joints) + 1 {
		all := b.shares(t.class, b.yard.piece(t, &l, j))
		if len(all) == 0 {
			return ch, false
		}
		for range t.copies() {
			ch.pieces = append(ch.pieces, all)
			ch.least += all[0].price
		}
	}
	return ch, true
}

// price is what a choice comes to where so much of each shelf is used; what is used
// with it goes into then.
func (b *supply) price(ch *choice, used, then []int32) money {
	cost := ch.least
	copy(then, used)
	for _, all := range ch.pieces {
		for k := range all {
			sh := &all[k]
			if sh.shelf >= 0 {
				if then[sh.shelf]+sh.takes > b.left[sh.shelf] && k < len(all)-1 {
					continue
				}
				then[sh.shelf] += sh.takes
			}
			cost += sh.price - all[0].price
			break
		}
	}
	return cost
}
