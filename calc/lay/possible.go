package lay

import (
	"math/bits"
	"slices"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// Verdict is what is known of whether joints can be laid without breaking a
// rule.
type Verdict uint8

// The verdicts.
const (
	NotKnown   Verdict = iota // too many ways to try them all
	Possible                  // there is a way
	Impossible                // every way was tried
)

// effort bounds the ways tried: some tenths of a second's work.
const effort = 400_000_000

// Judge says whether the joints of a row of runs, neighbours from the sheer
// down, can be laid without breaking a rule, each run of pieces no longer than
// its longest. Every way of making up each run is tried against every way of the
// three before it; where those are too many, against fewer, which can still show
// that there is no way. Where there is none, last is the run by which all ways
// have come to an end.
func Judge(row []Run, longest []measure.Length, r Rules) (v Verdict, last int) {
	ways := make([][][]measure.Length, len(row))
	most := 0
	for i := range row {
		var all bool
		ways[i], all = chains(&row[i], longest[i], r)
		if !all {
			return NotKnown, 0
		}
		if len(ways[i]) == 0 {
			return Impossible, i
		}
		most = max(most, len(ways[i]))
	}
	back := 3
	work := func() float64 {
		w := float64((most + 63) / 64)
		for range back {
			w *= float64(most)
		}
		return w * float64(len(row))
	}
	for ; back > 1 && work() > effort; back-- {
	}
	if float64(most)*float64(most)*float64(back)*float64(len(row)) > effort/4 || work() > effort {
		return NotKnown, 0
	}
	whole := true // every rule was looked at
	for i, all := range Neighbours(row, r) {
		for _, n := range all {
			whole = whole && max(i-n.Of, n.Of-i) <= back
		}
	}
	if end := sweep(row, ways, back, r); end < len(row) {
		return Impossible, end
	}
	if whole {
		return Possible, 0
	}
	return NotKnown, 0
}

// most ways of making up one run that are listed.
const mostChains = 6000

// chains is every way of placing a run's joints by itself that could not leave
// one out: with one left out it breaks no more rules. All is false where there
// are too many.
func chains(run *Run, longest measure.Length, r Rules) (ways [][]measure.Length, all bool) {
	least := r.Least(run.Skin)
	if run.Given {
		return [][]measure.Length{nil}, true
	}
	if run.Length <= longest {
		return [][]measure.Length{nil}, true
	}
	half := run.Scarf / 2
	var joints []measure.Length
	// two is the length with which a piece would reach from the joint before last
	// to a place, less the place.
	var on func(from, lead, two measure.Length) bool
	on = func(from, lead, two measure.Length) bool {
		first := max(from+least-lead, r.EndZone, 1)
		for at := run.next(first, r.Grid); at-from+lead <= longest && at <= run.Length-r.EndZone && at < run.Length; at = run.next(at+1, r.Grid) {
			if len(joints) > 0 && at+two <= longest {
				continue // the last joint could be left out
			}
			if slices.ContainsFunc(run.Clear, func(z hull.Reach) bool { return at > z.From && at < z.To }) {
				continue
			}
			joints = append(joints, at)
			if l := run.Length - at + half; l >= least && l <= longest && run.Length-from+lead-run.Scarf+half > longest {
				ways = append(ways, slices.Clone(joints))
				if len(ways) > mostChains {
					return false
				}
			}
			if !on(at, run.Scarf, lead-from) {
				return false
			}
			joints = joints[:len(joints)-1]
		}
		return true
	}
	all = on(0, run.Scarf-half, 0)
	return ways, all
}

// sweep tries the ways of the runs in order and returns the first at which none
// is left that agrees with any of the ways of the runs so many back.
func sweep(row []Run, ways [][][]measure.Length, back int, r Rules) int {
	near := Neighbours(row, r)
	// agree[k][p] is the ways of run i that agree with way p of run i-1-k.
	agree := func(i, k int) [][]uint64 {
		j := i - 1 - k
		rule := slices.IndexFunc(near[i], func(n Neighbour) bool { return n.Of == j })
		all := make([][]uint64, len(ways[j]))
		for p := range all {
			set := newSet(len(ways[i]))
			for q := range ways[i] {
				if rule < 0 || apart(&row[i], ways[i][q], &row[j], ways[j][p], near[i][rule], r) {
					set[q/64] |= 1 << (q % 64)
				}
			}
			all[p] = set
		}
		return all
	}
	// open maps the ways of the runs before, as far back as is looked, to the
	// ways of this one that agree with some way of all the runs still before.
	open := map[[2]int32][]uint64{{-1, -1}: full(len(ways[0]))}
	for i := 1; i < len(row); i++ {
		with := make([][][]uint64, min(back, i))
		for k := range with {
			with[k] = agree(i, k)
		}
		next := map[[2]int32][]uint64{}
		any := false
		set := newSet(len(ways[i]))
		for key, now := range open {
			for p := range each(now) {
				copy(set, with[0][p])
				for k := 1; k < len(with); k++ {
					if q := key[2-k]; q >= 0 {
						and(set, with[k][q])
					}
				}
				if !some(set) {
					continue
				}
				any = true
				to := [2]int32{key[1], int32(p)}
				switch back {
				case 2:
					to[0] = -1
				case 1:
					to = [2]int32{-1, -1}
				}
				if old, ok := next[to]; ok {
					or(old, set)
				} else {
					next[to] = slices.Clone(set)
				}
			}
		}
		if !any {
			return i
		}
		open = next
	}
	return len(row)
}

// apart says that no joint of one way breaks a rule with one of another.
func apart(a *Run, x []measure.Length, b *Run, y []measure.Length, n Neighbour, r Rules) bool {
	for _, p := range x {
		for _, q := range y {
			u, v := a.Start+p, b.Start+q
			if (u-v).Abs() < n.Apart || n.Bay && bay(u, r.Frames) == bay(v, r.Frames) {
				return false
			}
		}
	}
	return true
}

func newSet(n int) []uint64 { return make([]uint64, (n+63)/64) }

func full(n int) []uint64 {
	s := newSet(n)
	for i := range n {
		s[i/64] |= 1 << (i % 64)
	}
	return s
}

func and(a, b []uint64) {
	for i := range a {
		a[i] &= b[i]
	}
}

func or(a, b []uint64) {
	for i := range a {
		a[i] |= b[i]
	}
}

func some(a []uint64) bool { return slices.ContainsFunc(a, func(w uint64) bool { return w != 0 }) }

// each is the members of a set in order.
func each(a []uint64) func(func(int) bool) {
	return func(yield func(int) bool) {
		for i, w := range a {
			for ; w != 0; w &= w - 1 {
				if !yield(i*64 + bits.TrailingZeros64(w)) {
					return
				}
			}
		}
	}
}
