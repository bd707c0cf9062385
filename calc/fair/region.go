package fair

import "math"

// suspicious is how many doubts a value is off that is blamed for the unfairness
// about it. Measured, see DefaultRules.
const suspicious = 3.5

// regions is the stretches where a row is off its own curve by what no single
// value explains: neither a batten that bends more and more nor the rows near it
// do the same, and the second opinion has nothing to say for it. So many values
// at least must lie on either side.
func (t *table) regions(inside int) []Region {
	var all []Region
	for i, l := range t.lines {
		open := false
		for k := range l.at {
			if !t.unfair(i, k, inside) {
				open = false
				continue
			}
			from, to := l.at[max(0, k-1)], l.at[min(len(l.at)-1, k+1)]
			if open {
				all[len(all)-1].To = to
				continue
			}
			all = append(all, Region{i, from, to})
			open = true
		}
	}
	return all
}

// unfair says that a row is not fair about its k-th value, though that is not to
// blame.
func (t *table) unfair(row, k, inside int) bool {
	l := t.lines[row]
	at := l.at[k]
	says, ok := l.along(k, t.scale, t.rules.Least)
	if !ok || says.taken {
		return false
	}
	p, i := l.piece(k)
	if i < inside || i > len(p.x)-1-inside {
		return false // a corner needs a line on both sides of it
	}
	y, gauge := p.leaveOut(i, 4)
	off := math.Abs(p.y[i]-y) / gauge / t.scale
	if inside > 1 {
		// A line that bends ever otherwise, if smoothly, is no cubic and no corner.
		finer, grown := p.leaveOut(i, 6)
		off = min(off, math.Abs(p.y[i]-finer)/grown/t.scale)
	}
	if off < t.rules.Sure || off < 2*t.common(row, at) {
		return false
	}
	if t.second != nil {
		if o, ok := t.second.Opinion(t.rows, t.scale, row, at); ok && math.Abs(o.score(p.y[i])) < 2 && o.Sd < math.Abs(p.y[i]-y)/2 {
			return false
		}
	}
	return true
}

// culprit is the one value of a region that is off by what might be chance
// elsewhere, and without which the row is fair there.
func (t *table) culprit(g Region) (bad Spot, ok bool) {
	most := suspicious
	for at := g.From; at <= g.To; at++ {
		s := Spot{g.Row, at}
		if !t.rows[g.Row].Given[at] || math.Abs(t.z[g.Row][at]) < most {
			continue
		}
		t.give(s, false)
		clear := true
		for k, place := range t.lines[g.Row].at {
			clear = clear && (place < g.From-1 || place > g.To+1 || !t.unfair(g.Row, k, 1))
		}
		t.give(s, true)
		if clear {
			bad, ok, most = s, true, math.Abs(t.z[g.Row][at])
		}
	}
	return bad, ok
}
