package stock

// part is timbers that share neither boards nor rules with any others, as a
// yard of their own.
type part struct {
	yard
	of []int // its timbers in the whole yard
}

// parts takes the yard apart.
func (h *shop) parts() []part {
	head := make([]int, len(h.timbers))
	root := func(i int) int {
		for head[i] != i {
			i = head[i]
		}
		return i
	}
	join := func(a, b int) {
		if a, b = root(a), root(b); a != b {
			head[max(a, b)] = min(a, b)
		}
	}
	first := map[int]int{} // timber of each pool
	for i := range h.timbers {
		head[i] = i
		p := h.classes[h.timbers[i].class].pool
		if k, ok := first[p]; ok {
			join(k, i)
		} else {
			first[p] = i
		}
		for _, n := range h.timbers[i].near {
			if n.of < i {
				join(n.of, i)
			}
		}
	}
	at := map[int]int{}
	place := make([]int, len(h.timbers))
	var all []part
	for i := range h.timbers {
		k, ok := at[root(i)]
		if !ok {
			k = len(all)
			at[root(i)] = k
			p := part{yard: h.yard}
			p.timbers = nil
			all = append(all, p)
		}
		place[i] = len(all[k].timbers)
		all[k].timbers = append(all[k].timbers, h.timbers[i])
		all[k].of = append(all[k].of, i)
	}
	for k := range all {
		used := map[int]bool{}
		for i := range all[k].timbers {
			t := &all[k].timbers[i]
			used[h.classes[t.class].pool] = true
			t.near = append([]near{}, t.near...)
			for n := range t.near {
				t.near[n].of = place[t.near[n].of]
			}
		}
		all[k].onlyKinds(used)
	}
	return all
}

// onlyKinds leaves the counts of the kinds of other pools at unlimited, so that
// a bound does not reckon with boards the part has no use for.
func (p *part) onlyKinds(used map[int]bool) {
	counts := make([]int32, len(p.counts))
	for i := range counts {
		counts[i] = unlimited
	}
	for i := range p.pools {
		if !used[i] {
			continue
		}
		for _, k := range p.pools[i].sticks {
			kind := p.sizes[p.sticks[k].size].kind
			counts[kind] = p.counts[kind]
		}
	}
	p.counts = counts
}
