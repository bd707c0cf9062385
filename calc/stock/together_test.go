package stock

import (
	"math"
	"testing"

	"strakebook/calc/lay"
)

// Of the ways known of three strakes beside each other the cheapest that go
// together are chosen: held to every one of their combinations, the rules taken from
// the file of the instance.
func TestChooseIsCheapest(t *testing.T) {
	in := open(t, "B36_s6")
	j := in.job(1)
	p := build(append([]lay.Run{}, j.runs...), j.rack, j.lr, j.r, true).parts()[0]
	s := newSearch(&p.yard)
	s.enough, s.tried = math.MaxInt64, p.makeups()
	m := &improver{search: s, dear: s.dear(), kept: newLumber(s.yard)}
	for range 4 {
		var l layout
		if !s.start(&l) {
			t.Fatal("no start")
		}
		m.improve(&l, 40, m.dear, 0)
	}
	r := s.abreast([]int{0, 1, 2}, p.supply())
	for k := range r.choices {
		r.choices[k] = r.choices[k][:min(40, len(r.choices[k]))]
	}
	x := func(k int, ch *choice, n int) float64 {
		return in.Strakes[p.timbers[k].runs[0]].Start + float64(ch.joints[n])
	}
	clash := func(a, b int, ca, cb *choice, apart float64) bool {
		for n := range ca.joints {
			for o := range cb.joints {
				xa, xb := x(a, ca, n), x(b, cb, o)
				if math.Abs(xa-xb) < apart || math.Floor(xa/in.Frames) == math.Floor(xb/in.Frames) {
					return true
				}
			}
		}
		return false
	}
	least, tight := never, 0
	for a := range r.choices[0] {
		for b := range r.choices[1] {
			ca, cb := &r.choices[0][a], &r.choices[1][b]
			if clash(0, 1, ca, cb, in.Adjacent) {
				tight++
				continue
			}
			for c := range r.choices[2] {
				cc := &r.choices[2][c]
				if sum := ca.least + cb.least + cc.least; sum < least && !clash(1, 2, cb, cc, in.Adjacent) && !clash(0, 2, ca, cc, in.Between) {
					least = sum
				}
			}
		}
	}
	if least == never || tight == 0 {
		t.Fatalf("a test that tells nothing: %d clash", tight)
	}
	picked := r.choose(nil, never/2)
	if picked == nil {
		t.Fatal("none chosen")
	}
	sum := money(0)
	for k, c := range picked {
		sum += r.choices[k][c].least
	}
	if sum != least {
		t.Errorf("chosen for %.2f, the cheapest is %.2f", sum.value(), least.value())
	}
	if r.choose(nil, least-1) != nil {
		t.Errorf("found for less than %.2f", least.value())
	}
}
