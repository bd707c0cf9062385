package lay

import "strakebook/calc/measure"

// Neighbour is another run whose joints a run's joints must keep clear of.
type Neighbour struct {
	Of    int            // index of the other run
	Apart measure.Length // joints nearer than this break the rule
	Rule  string         // in words
	Bay   bool           // joints of the two may not share a frame bay either
}

// Neighbours is, for every run, the runs its rules look at: those of its skin
// and side so many places away as the rules reach, and, where the skins are to
// be clear of each other, the runs of the other skins that it lies over or
// under.
func Neighbours(runs []Run, r Rules) [][]Neighbour {
	all := make([][]Neighbour, len(runs))
	link := func(i, j int, n Neighbour) {
		n.Of = j
		all[i] = append(all[i], n)
		n.Of = i
		all[j] = append(all[j], n)
	}
	for i := range runs {
		a := &runs[i]
		for j := i + 1; j < len(runs); j++ {
			b := &runs[j]
			if a.Given || b.Given || a.Side != b.Side {
				continue
			}
			if a.Skin != b.Skin {
				if r.SkinsClear > 0 && a.Down < b.Down+b.Face && b.Down < a.Down+a.Face {
					link(i, j, Neighbour{Apart: r.SkinsClear, Rule: "joints of the two skins at least " + r.Units.Long(r.SkinsClear) + " apart"})
				}
				continue
			}
			places := b.Order - a.Order
			if places > Reach {
				continue
			}
			apart, rule := r.Apart(a.Skin, places, max(a.Scarf, b.Scarf))
			if bay := r.SameBay(a.Skin, places); apart > 0 || bay {
				link(i, j, Neighbour{Apart: apart, Rule: rule, Bay: bay})
			}
		}
	}
	return all
}
