package stock

import (
	"cmp"
	"slices"
)

// solve finds the least cost of one part of the yard that it can: many starts
// bettered a little, then of all ways tried those that go together best, and the
// best plan of all bettered for long. Tries is how many moves the starts get in all;
// begun is starts of the caller's. It is false where not even one start reaches.
func (s *search) solve(best *layout, begun []*layout, tries, starts int, enough money) bool {
	var all []*layout
	for _, l := range begun {
		all = append(all, l.clone(s.yard))
		starts++
	}
	for range starts {
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
	if s.tried == nil {
		s.tried = s.yard.makeups()
	}
	m := &improver{search: s, dear: s.dear(), kept: newLumber(s.yard)}
	for _, l := range all {
		for i := range l.plans {
			s.tried.add(i, l.plans[i].joints)
		}
		m.improve(l, tries/2/len(all), m.dear, enough)
	}
	rank := func(l *layout) money { return l.total + 4*m.dear*money(l.broken)/weight }
	b := s.yard.supply()
	first := slices.MinFunc(all, func(a, b *layout) int { return cmp.Compare(rank(a), rank(b)) })
	for turn := range turns {
		l := &layout{}
		if first.broken == 0 && first.total <= enough+enough/nearly || s.looked > s.enough || !s.together(l, all, b, turn) {
			break
		}
		m.improve(l, tries/bettering, m.dear/5, enough)
		all = append(all, l)
		if rank(l) >= rank(first) {
			break
		}
		first = l
	}
	*best = *first
	m.improve(best, s.lasting(tries), m.dear/2, enough)
	return true
}

// turns is how often at most the ways tried are put together anew, with those that
// bettering the last plan of them found.
const turns = 3

// nearly is what part of its least possible cost a plan may be dearer and its parts
// are left as they are.
const nearly = 200

// bettering is what part of the moves of all starts such a plan gets.
const bettering = 20

// lasting is how many moves the best plan gets: the more timbers the more, but for
// long ones, of which each move takes longer.
func (y *yard) lasting(tries int) int {
	steps := 0
	for i := range y.timbers {
		steps += y.timbers[i].steps * y.timbers[i].copies()
	}
	return tries * max(12, min(60, len(y.timbers))) / 12 * 40_000 / max(40_000, steps)
}
