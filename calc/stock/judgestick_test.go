package stock

import (
	"math"
	"slices"

	"strakebook/calc/lay"
	"strakebook/calc/measure"
)

// corner is a place on the side of a board: along it from its own end, and up
// from the face it lies on.
type corner struct{ along, up float64 }

// seen is the corners of a piece where it lies on its board, seen on its edge. Its
// own are by the trade's words: a feather on the outside face is longest there, and
// a nib is square. A turned piece has gone half round: end for end and face for face.
func seen(p *Piece, run *lay.Run, from measure.Length, turned bool) []corner {
	long, thick, scarf := float64(p.Length), float64(run.Thick), float64(run.Scarf)
	nib := max(0, (thick-scarf/run.Slope)/2)
	var all []corner
	end := func(e End, outside bool, tip, in float64) {
		if e == Hood {
			all = append(all, corner{tip, 0}, corner{tip, thick})
			return
		}
		ends := []corner{{tip, 0}, {tip, nib}, {tip + in*scarf, thick - nib}, {tip + in*scarf, thick}} // feather inside
		for _, c := range ends {
			if outside {
				c.up = thick - c.up
			}
			all = append(all, c)
		}
	}
	forward := run.Feather.OutsideFore()
	end(p.Fore, forward, 0, 1)
	end(p.Aft, !forward, long, -1)
	for i, c := range all {
		if turned {
			c = corner{long - c.along, thick - c.up}
		}
		c.along += float64(from)
		all[i] = c
	}
	return all
}

// parts is the widest cut of a lean that parts two pieces: along the board for each
// up, its width square to it; less than nothing where they lie one over the other.
func parts(x, y []corner, lean float64) float64 {
	most, least := math.Inf(-1), math.Inf(1)
	for _, c := range x {
		most = max(most, c.along-lean*c.up)
	}
	for _, c := range y {
		least = min(least, c.along-lean*c.up)
	}
	return (least - most) / math.Hypot(lean, 1)
}

// sticks: every piece as it is listed, where and which way round it lies, comes off
// by the saw: one square or slanted cut of the kerf parts it from the next. What is
// used and what is left come to the sound length, and no more.
func (j judge) sticks(k int) {
	j.t.Helper()
	c := &j.plan.Cuts[k]
	runs := map[int]*lay.Run{}
	n := 0
	for i := range j.runs {
		for range j.runs[i].Pieces {
			runs[n] = &j.runs[i]
			n++
		}
	}
	used, left := measure.Length(0), measure.Length(0)
	for _, s := range c.Board.sound(j.r) {
		within := func(i int) bool { return int64(c.From[i]) >= s.from && int64(c.From[i]) < s.to }
		taken := make([]measure.Length, c.Lanes)
		before := make([]int, c.Lanes)
		for i, n := range c.Pieces {
			if !within(i) {
				continue
			}
			p, lane := &j.plan.Pieces[n], c.Lane[i]-1
			from, to := c.From[i], c.From[i]+p.Length
			if int64(to) > s.to {
				j.fault("%s: %s runs on to %v, and the board is sound to %v", c.Mark, p.Mark, to.Inches(), measure.Length(s.to).Inches())
			}
			if b := before[lane] - 1; b >= 0 {
				x, y := &j.plan.Pieces[c.Pieces[b]], seen(p, runs[n], from, c.Turned[i])
				end := c.From[b] + x.Length
				widest, on := math.Inf(-1), seen(x, runs[c.Pieces[b]], c.From[b], c.Turned[b])
				for _, lean := range []float64{0, runs[n].Slope, -runs[n].Slope} {
					widest = max(widest, parts(on, y, lean))
				}
				if widest < float64(j.r.CrossKerf)-1 || from < end && !j.r.ShareCuts {
					j.fault("%s: %s and %s are %v apart for the saw", c.Mark, x.Mark, p.Mark, measure.Length(widest).Inches())
				}
				if over := end - from; over > 0 {
					used -= over
				}
				if c.Saved[i] != end+j.r.CrossKerf-from {
					j.fault("%s: %s is said to save %v", c.Mark, p.Mark, c.Saved[i].Inches())
				}
			} else if int64(from) != s.from || c.Saved[i] != 0 {
				j.fault("%s: %s begins at %v", c.Mark, p.Mark, from.Inches())
			}
			used += p.Length
			before[lane], taken[lane] = i+1, to-measure.Length(s.from)
		}
		left = max(left, measure.Length(s.to-s.from)-slices.Min(taken))
	}
	if used != c.Used || left != c.Left {
		j.fault("%s: used %v, said %v; left %v, said %v", c.Mark, used.Inches(), c.Used.Inches(), left.Inches(), c.Left.Inches())
	}
}
