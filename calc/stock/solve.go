package stock

import (
	"cmp"
	"slices"
)

// solve finds the least cost of one part of the yard that it can: of many starts
// the best bettered a little, then of all ways tried those that go together best, and
// the best plan of all bettered for long. Tries is how many moves the starts get in
// all; begun is starts of the caller's. It is false where not even one start reaches.
func (s *search) solve(best *layout, begun []*layout, tries, starts int, enough money) bool {
	var all []*layout
	for _, l := range begun {
		all = append(all, l.clone(s.yard))
	}
	all = append(all, s.starts(starts+len(begun))...)
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
	b := s.yard.supply()
	first := slices.MinFunc(all, func(a, b *layout) int { return cmp.Compare(a.at(forbidding*m.dear), b.at(forbidding*m.dear)) })
	for turn := range turns {
		l := &layout{}
		if first.broken == 0 && first.total <= enough+enough/nearly || s.looked > s.enough || !s.together(l, all, b, turn) {
			break
		}
		m.improve(l, tries/bettering, m.dear/5, enough)
		all = append(all, l)
		if l.at(forbidding*m.dear) >= first.at(forbidding*m.dear) {
			break
		}
		first = l
	}
	*best = *first
	m.improve(best, s.lasting(tries), m.dear/2, enough)
	return true
}

// starts is the best of very many quick starts: which stair the joints stand on
// decides the most, and bettering seldom leaves it.
func (s *search) starts(n int) (best []*layout) {
	breach := 4 * s.dear() // those that break rules are mended as they are bettered
	for range n * startsTried {
		if best != nil && s.looked > s.enough/8 {
			break
		}
		l := &layout{}
		if !s.start(l) {
			if best == nil {
				break
			}
			continue
		}
		k := len(best)
		for k > 0 && best[k-1].at(breach) > l.at(breach) {
			k--
		}
		if best = slices.Insert(best, k, l); len(best) > n {
			best = best[:n]
		}
	}
	return best
}

// startsTried is how many starts are made for each that is bettered.
const startsTried = 20

// forbidding is what a broken rule is reckoned at in the end, in what is dear.
const forbidding = 30

// turns is how often at most the ways tried are put together anew, with those that
// bettering the last plan of them found.
const turns = 3

// nearly is what part of its least possible cost a plan may be dearer and its parts
// are left as they are.
const nearly = 200

// bettering is what part of the moves of all starts such a plan gets.
const bettering = 20

// lasting is how many moves the best plan gets: the more timbers the more.
func (y *yard) lasting(tries int) int {
	return y.fewer(tries*max(12, min(60, len(y.timbers)))/12, 40_000)
}

// fewer is how many of n turns are taken where the timbers have more steps in all
// than so many, as each takes longer.
func (y *yard) fewer(n, steps int) int {
	all := 0
	for i := range y.timbers {
		all += y.timbers[i].steps * y.timbers[i].copies()
	}
	return n * steps / max(steps, all)
}
