package stock

import (
	"cmp"
	"slices"
)

// ways is how many of the ways known of a timber are chosen among, and of all
// timbers together; links is how many links of a row are gone on from.
const (
	ways    = 600
	allWays = 60_000
	links   = 200_000
)

// together lays every row of timbers anew, of the ways tried before the cheapest
// that go together, and finds boards for all pieces, the longest first. It is false
// where none go together without breaking a rule for less than the dearest of the
// layouts known.
func (s *search) together(to *layout, known []*layout, b *supply, turn int) bool {
	used, then := make([]int32, len(b.left)), make([]int32, len(b.left))
	rows := s.yard.rows()
	s.empty()
	for k := range rows {
		row := rows[(k+turn)%len(rows)] // the one to choose first gets the best boards
		r := s.abreast(row, b)
		if r == nil {
			return false
		}
		best := never
		for _, l := range known {
			best = min(best, r.comesTo(l, used))
		}
		var picked []int
		for _, most := range []money{best, best + best/100, best + best/30} {
			if picked = r.choose(used, most); picked != nil {
				break
			}
		}
		if picked == nil {
			return false
		}
		for k, i := range row {
			ch := &r.choices[k][picked[k]]
			s.plans[i].joints = append(s.plans[i].joints[:0], ch.joints...)
			b.price(ch, used, then)
			used, then = then, used
		}
	}
	s.rare = 256
	if !s.cutAll(0.9) {
		return false
	}
	s.keep(to)
	return true
}

// rows is the timbers in rows whose joints keep clear of each other.
func (y *yard) rows() [][]int {
	var all [][]int
	for i := range y.timbers {
		if i > 0 && y.linked(i) {
			all[len(all)-1] = append(all[len(all)-1], i)
		} else {
			all = append(all, []int{i})
		}
	}
	return all
}

// abreast is a row of timbers to be laid together, and the choices of each, the cheapest first.
type abreast struct {
	*search
	*supply
	row     []int
	choices [][]choice
	used    [2][]int32 // boards used by the links of a timber and of the one before, by turns
	sorted  []link
	then    []int32 // what a choice would make of them, when only its price is asked
}

func (s *search) abreast(row []int, b *supply) *abreast {
	r := &abreast{search: s, supply: b, row: row, then: make([]int32, len(b.left))}
	most := max(20, min(ways, allWays/len(s.timbers)))
	for _, i := range row {
		var all []choice
		for _, joints := range s.tried.of(i) {
			if ch, ok := b.choice(i, joints); ok && s.clears(i, joints) {
				all = append(all, ch)
			}
		}
		slices.SortStableFunc(all, func(a, b choice) int { return cmp.Compare(a.least, b.least) })
		all = all[:min(len(all), most)]
		if len(all) == 0 {
			return nil
		}
		r.choices = append(r.choices, all)
	}
	return r
}

// bar is the steps of the timber d on from the k-th of the row where a joint would
// break a rule with those of the k-th as a choice has them.
func (r *abreast) bar(k int, c int32, d int) []uint64 {
	ch := &r.choices[k][c]
	if ch.bars[d-1] == nil {
		t := &r.timbers[r.row[k+d]]
		ch.bars[d-1] = make([]uint64, t.steps>>6+1)
		if n, ok := r.nearTo(r.row[k+d], r.row[k]); ok {
			for _, p := range ch.joints {
				for _, z := range r.shuts(&n, r.timbers[n.of].start+int64(p)*r.grid) {
					a, b := r.within(t, z.from-t.start, z.to-t.start)
					for ; a <= b; a++ {
						ch.bars[d-1][a>>6] |= 1 << (a & 63)
					}
				}
			}
		}
	}
	return ch.bars[d-1]
}

// clears says that joints keep clear of a timber's own stretches.
func (y *yard) clears(i int, joints []int32) bool {
	for _, z := range y.timbers[i].clear {
		for _, p := range joints {
			if at := int64(p) * y.grid; at > z.from && at < z.to {
				return false
			}
		}
	}
	return true
}

func barred(bar []uint64, joints []int32) bool {
	for _, p := range joints {
		if bar[p>>6]>>(p&63)&1 != 0 {
			return true
		}
	}
	return false
}

// comesTo is what the row comes to as a layout has it.
func (r *abreast) comesTo(l *layout, used []int32) (total money) {
	used = slices.Clone(used)
	then := slices.Clone(used)
	for _, i := range r.row {
		ch, ok := r.choice(i, l.plans[i].joints)
		if !ok {
			return never
		}
		total += r.price(&ch, used, then)
		used, then = then, used
	}
	return total
}

// link is a choice of one timber behind a choice of the one before it, with what
// the row comes to as far as it by the cheapest way, and the boards used on that.
type link struct {
	cost        money
	before, now int32 // choices
	back        int32 // link of the timber before
	used        int32 // where in the row's list the boards used begin
}

// choose takes one choice of each timber: the cheapest that break no rule with each
// other and come to no more than most together; nil where none do. Two choices
// beside each other are known by what the row comes to as far as them, at the
// cheapest of those before (R. Bellman's dynamic programming): a rule with the third
// before is looked at for that one only, and so are the boards used.
func (r *abreast) choose(used []int32, most money) []int {
	n := len(r.row)
	rest := make([]money, n+1)
	for k := n - 1; k >= 0; k-- {
		rest[k] = rest[k+1] + r.choices[k][0].least
	}
	levels := make([][]link, n)
	r.used[0] = r.used[0][:0]
	for c := range r.choices[0] {
		if cost := r.price(&r.choices[0][c], used, r.then); cost <= most-rest[1] {
			levels[0] = append(levels[0], link{cost, -1, int32(c), -1, r.note(0, c, used)})
		}
	}
	for k := 1; k < n; k++ {
		levels[k] = r.cheapest(r.extend(levels[:k], most-rest[k+1]))
		r.looked += int64(len(levels[k]))
	}
	if len(levels[n-1]) == 0 {
		return nil
	}
	at := slices.MinFunc(levels[n-1], func(a, b link) int { return cmp.Compare(a.cost, b.cost) })
	picked := make([]int, n)
	for k := n - 1; ; k-- {
		picked[k] = int(at.now)
		if k == 0 {
			return picked
		}
		at = levels[k-1][at.back]
	}
}

// cheapest leaves the cheapest links: the fewer the longer the row.
func (r *abreast) cheapest(all []link) []link {
	wide := links / len(r.row)
	if len(all) <= wide {
		return all
	}
	slices.SortFunc(all, func(a, b link) int {
		return cmp.Or(cmp.Compare(a.cost, b.cost), cmp.Compare(a.now, b.now), cmp.Compare(a.before, b.before))
	})
	return all[:wide]
}

// note adds the boards that a choice uses to those used before it, and says where
// they are noted.
func (r *abreast) note(k, c int, before []int32) int32 {
	list := &r.used[k&1]
	at := len(*list)
	*list = append(*list, before...)
	r.price(&r.choices[k][c], before, (*list)[at:])
	return int32(at)
}

// usedBy is the boards used by a link of a timber.
func (r *abreast) usedBy(k int, l *link) []int32 {
	return r.used[k&1][l.used : int(l.used)+len(r.left)]
}

// group sorts the links of a timber by its choices, and those of each by cost; it
// says where in the list each choice's end.
func (r *abreast) group(k int, all []link) (ends []int) {
	ends = make([]int, len(r.choices[k])+1)
	for i := range all {
		ends[all[i].now+1]++
	}
	for c := range r.choices[k] {
		ends[c+1] += ends[c]
	}
	r.sorted = append(r.sorted[:0], all...)
	for i := range r.sorted {
		at := &ends[r.sorted[i].now]
		all[*at] = r.sorted[i]
		*at++
	}
	from := 0
	for _, to := range ends {
		slices.SortFunc(all[from:to], func(a, b link) int { return cmp.Or(cmp.Compare(a.cost, b.cost), cmp.Compare(a.before, b.before)) })
		from = to
	}
	return ends[:len(ends)-1]
}

// extend links the choices of one timber more to those before, which it sorts.
func (r *abreast) extend(levels [][]link, most money) (all []link) {
	k := len(levels)
	before := levels[k-1]
	r.used[k&1] = r.used[k&1][:0]
	from := 0
	for _, to := range r.group(k-1, before) {
		if from == to {
			continue
		}
		bar := r.bar(k-1, before[from].now, 1)
		for c := range r.choices[k] {
			ch := &r.choices[k][c]
			if before[from].cost+ch.least > most {
				break
			}
			if barred(bar, ch.joints) {
				continue
			}
			best, back := never, -1
			for x, tried := from, 0; x < to && tried < 3 && before[x].cost+ch.least < min(best, most+1); x++ {
				b := &before[x]
				if k >= 2 && barred(r.bar(k-2, b.before, 2), ch.joints) ||
					k >= 3 && barred(r.bar(k-3, levels[k-2][b.back].before, 3), ch.joints) {
					continue
				}
				tried++
				if cost := b.cost + r.price(ch, r.usedBy(k-1, b), r.then); cost < best {
					best, back = cost, x
				}
			}
			if best <= most {
				b := &before[back]
				all = append(all, link{best, b.now, int32(c), int32(back), r.note(k, c, r.usedBy(k-1, b))})
			}
		}
		from = to
	}
	return all
}

// cutAll finds a bin for every piece of every timber, whose joints are all placed,
// the longest first.
func (s *search) cutAll(sigma float64) bool {
	type one struct {
		i, at  int
		length int64
	}
	var all []one
	for i := range s.timbers {
		t, p := &s.timbers[i], &s.plans[i]
		n := (len(p.joints) + 1) * t.copies()
		p.bins = slices.Grow(p.bins[:0], n)[:n]
		for at := range n {
			all = append(all, one{i, at, s.piece(t, p, at/t.copies())})
		}
	}
	slices.SortStableFunc(all, func(a, b one) int { return cmp.Compare(b.length, a.length) })
	for _, o := range all {
		t, p := &s.timbers[o.i], &s.plans[o.i]
		at := s.put(o.length, p.slants(o.at/t.copies()), &s.classes[t.class], sigma)
		if at < 0 {
			return false
		}
		p.bins[o.at] = at
	}
	for i := range s.timbers {
		s.broken += s.breaks(i)
		s.laid[i] = true
		s.joints += len(s.plans[i].joints) * s.timbers[i].copies()
	}
	return true
}
