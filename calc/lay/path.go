package lay

import (
	"math"

	"strakebook/calc/measure"
)

// Price is what a piece of a length costs, +Inf where no board would serve.
type Price func(measure.Length) float64

// breach outweighs any saving of lumber.
const breach = 1e6

// Joint places the joints of one strake where its pieces cost least, by the
// shortest way from its fore end to its after end over the grid of places a
// joint may fall. Blocked says how many rules a joint at a place breaks: broken
// only where every way breaks one. Each is a price a joint costs. ok is false
// where no chain of pieces reaches from end to end.
func Joint(run *Run, r Rules, longest measure.Length, price Price, each float64, blocked func(measure.Length) int) (cost float64, ok bool) {
	least := r.Least(run.Skin)
	if run.Length <= longest && !math.IsInf(price(run.Length), 1) {
		// One piece without a joint breaks no rule, but may cost more than two.
		cost, ok = price(run.Length), true
		run.Joints = nil
	}
	n := int((run.Length - 1) / r.Grid)
	fore := run.Scarf - run.Scarf/2
	best, from := make([]float64, n+1), make([]int, n+1)
	for p := 1; p <= n; p++ {
		at := measure.Length(p) * r.Grid
		best[p], from[p] = math.Inf(1), -1
		if at < r.EndZone || run.Length-at < r.EndZone {
			continue
		}
		here := each + breach*float64(blocked(at))
		if l := at + fore; l >= least && l <= longest {
			best[p], from[p] = price(l)+here, 0
		}
		for q := p - int((longest-run.Scarf)/r.Grid); q < p; q++ {
			if q < 1 || math.IsInf(best[q], 1) {
				continue
			}
			l := at - measure.Length(q)*r.Grid + run.Scarf
			if l < least {
				break
			}
			if c := best[q] + price(l) + here; l <= longest && c < best[p] {
				best[p], from[p] = c, q
			}
		}
	}
	end := -1
	for p := 1; p <= n; p++ {
		l := run.Length - measure.Length(p)*r.Grid + run.Scarf/2
		if l < least || l > longest || math.IsInf(best[p], 1) {
			continue
		}
		if c := best[p] + price(l); !ok || c < cost {
			cost, ok, end = c, true, p
		}
	}
	if end >= 0 {
		run.Joints = nil
		for p := end; p > 0; p = from[p] {
			run.Joints = append([]measure.Length{measure.Length(p) * r.Grid}, run.Joints...)
		}
	}
	if ok {
		run.Cut()
	}
	return cost, ok
}
