package stock

import (
	"cmp"
	"slices"
)

// solve finds the least cost of one part of the yard that it can: many starts
// bettered a little, and the best half of them more, again and again. Tries is
// how many moves in all; begun is starts of the caller's. It is false
// where not even one start reaches.
func (s *search) solve(best *layout, begun []*layout, tries, starts int, enough money) bool {
	var all []*layout
	for _, l := range begun {
		all = append(all, l.clone(s.yard))
		starts++
	}
	for range starts * max(1, min(8, 250/len(s.timbers))) {
		l := &layout{}
		if s.start(l, 6) {
			all = append(all, l)
		} else if len(all) == 0 {
			break
		}
	}
	if len(all) == 0 {
		return false
	}
	m := &improver{search: s, dear: s.dear(), kept: newLumber(s.yard)}
	rank := func(l *layout) money { return l.total + 4*m.dear*money(l.broken)/weight }
	slices.SortStableFunc(all, func(a, b *layout) int { return cmp.Compare(rank(a), rank(b)) })
	all = all[:min(len(all), starts)]
	stages := 0
	for n := len(all); n > 0; n /= 2 {
		stages++
	}
	heat := m.dear
	for n := len(all); n > 0; n /= 2 {
		slices.SortStableFunc(all, func(a, b *layout) int { return cmp.Compare(rank(a), rank(b)) })
		all = all[:n]
		for _, l := range all {
			m.improve(l, tries/stages/n, heat, enough)
		}
		heat /= 2
	}
	*best = *all[0]
	return true
}
