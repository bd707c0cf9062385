package stock

import (
	"math"
	"strings"

	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
)

// need is what a run asks of a board: pieces of equal need are served alike.
type need struct {
	species     string // in small letters, without spaces about it
	skin        hull.Skin
	thick, wide measure.Length // in a board's thickness and width
	scarf       measure.Length
	nibs        measure.Length // what the slope of the scarf would run on across its two nibs
	slope       float64
	least       measure.Length
}

func needOf(run *lay.Run, lr lay.Rules, r Rules) need {
	n := need{species: species(run.Species), skin: run.Skin, scarf: run.Scarf, slope: run.Slope, least: lr.Least(run.Skin)}
	n.wide, n.thick = r.Across(run.Skin, run.Wide, run.Through())
	if n.scarf > 0 {
		n.nibs = max(0, run.Through().Times(run.Slope)-run.Scarf)
	}
	if run.Given {
		n.scarf, n.nibs, n.slope, n.least = 0, 0, 0, measure.Inch
	}
	return n
}

func species(s string) string { return strings.ToLower(strings.TrimSpace(s)) }

// Across is a size, wide and through as it hangs, across its board and through it.
// Strips are ripped off the edge of a board, whose thickness becomes their width,
// unless the yard rips them flat. Nothing is kept to dress the two faces that are
// ripped: they are listed as they leave the saw.
func (r Rules) Across(skin hull.Skin, wide, through measure.Length) (across, thick measure.Length) {
	if skin == hull.Strips && !r.StripsFlat {
		return through, wide
	}
	return wide, through
}

// suits says that a board's species serves: where either names none, any does.
func (n need) suits(b Board) bool {
	s := species(b.Species)
	return n.species == "" || s == "" || n.species == s
}

// lanes is how many of a need lie side by side in a board; 0 where it is too
// thin or too narrow.
func (n need) lanes(b Board, r Rules) int {
	if r.finishes(b.Thickness.Value) < n.thick || b.Width.Value < n.wide+r.Edging {
		return 0
	}
	return int((b.Width.Value - r.Edging + r.RipKerf) / (n.wide + r.RipKerf))
}

// sharing is what two pieces save that share one slanted cut: the run of the
// scarf, less what the kerf on the slant takes beyond a square one, and less the
// nibs' run, as the cut must pass clear of the shoulder that each nib beds on.
func (n need) sharing(r Rules) measure.Length {
	if !r.ShareCuts || n.scarf == 0 {
		return 0
	}
	kerf := measure.Length(math.Ceil(float64(r.CrossKerf) * math.Sqrt(n.slope*n.slope+1)))
	return max(0, n.scarf-n.nibs-kerf+r.CrossKerf)
}

// sound is the stretches of a board that pieces may be cut from, in order: its
// length without the end trim and the bad stretches.
func (b Board) sound(r Rules) []span {
	from, to := int64(r.EndTrim/2), int64(b.Length.Value-(r.EndTrim-r.EndTrim/2))
	var all []span
	for _, bad := range b.Bad { // in order: readers sort them
		if cut := min(int64(bad.From), to); cut > from {
			all = append(all, span{from, cut})
		}
		from = max(from, int64(bad.To))
	}
	if to > from {
		all = append(all, span{from, to})
	}
	return all
}
