package hull

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"strakebook/calc/fair"
)

const (
	valleyDeep = 2 // of the table's steps: so deep a hollow rounding does not make
	endLeast   = 5 // in a row of so many values its end standing too high is likelier than a low one inside
)

// hollow is a place at which half-breadths that should rise to one greatest and
// fall, along a line or up a section, do not.
type hollow struct {
	blame            []fair.Spot // the values that alone may be wrong: the low one, or one of the high
	low, left, right fair.Spot
	depth            float64
}

// valleys is the half-breadths that make hollows along their lines or up their
// sections, the values already found bad left out. Of the values that a hollow
// may be laid to it is the one that another hollow may be laid to as well: that
// one along the line and one up the section tell of one figure.
func (c checked) valleys() []Doubt {
	open := append(c.hollowsAlong(), c.hollowsUp()...)
	slices.SortStableFunc(open, func(a, b hollow) int { return cmp.Compare(b.depth, a.depth) })
	var all []Doubt
	for len(open) > 0 {
		bad, h := c.blamed(open)
		all = append(all, c.valley(bad, h))
		open = slices.DeleteFunc(open, func(o hollow) bool { return slices.Contains(o.blame, bad) })
	}
	return all
}

// blamed is the value that most hollows may be laid to, and the deepest of them. Of
// two of one hollow it is the one that more speaks against, the other withdrawn.
func (c checked) blamed(open []hollow) (bad fair.Spot, of hollow) {
	most := 0
	for _, h := range open {
		for n, s := range h.blame {
			votes := 0
			for _, o := range open {
				if slices.Contains(o.blame, s) {
					votes++
				}
			}
			more := votes > most
			if votes == most && slices.Contains(h.blame[:n], bad) {
				x, y, ok := c.against(s, bad)
				more = ok && x > y
			}
			if more {
				bad, of, most = s, h, votes
			}
		}
	}
	return bad, of
}

// hollowsAlong is the hollows along each line of half-breadths.
func (c checked) hollowsAlong() []hollow {
	var all []hollow
	for i, l := range c.o.Lines {
		if l.View != HalfBreadth {
			continue
		}
		row := fair.Row{X: c.rows[i].X, Y: c.rows[i].Y, Given: make([]bool, len(c.x))}
		for k := range row.Given {
			row.Given[k] = c.stands(i, k)
		}
		all = append(all, hollows(row, func(k int) fair.Spot { return fair.Spot{Row: i, At: k} })...)
	}
	return all
}

// hollowsUp is the hollows up each section, from waterline to waterline.
func (c checked) hollowsUp() []hollow {
	family := c.o.family(Waterline)
	var all []hollow
	for k := range c.x {
		row := fair.Row{X: make([]float64, len(family)), Y: make([]float64, len(family)), Given: make([]bool, len(family))}
		for n, i := range family {
			row.X[n], row.Y[n], row.Given[n] = float64(n), c.rows[i].Y[k], c.stands(i, k)
		}
		all = append(all, hollows(row, func(n int) fair.Spot { return fair.Spot{Row: family[n], At: k} })...)
	}
	return all
}

// stands says that a value is given and nothing is said against it yet.
func (c checked) stands(line, station int) bool {
	s := fair.Spot{Row: line, At: station}
	return c.rows[line].Given[station] && !c.withdrawn[s] && !c.partners[s] && !c.touched(station)
}

// hollows is those of one row. A high value is to blame as well as the low one
// where the row rises and falls once without it.
func hollows(row fair.Row, spot func(int) fair.Spot) []hollow {
	var all []hollow
	given := 0
	for _, ok := range row.Given {
		if ok {
			given++
		}
	}
	for _, v := range fair.Valleys(row, valleyDeep) {
		h := hollow{blame: []fair.Spot{spot(v.At)}, low: spot(v.At), left: spot(v.Left), right: spot(v.Right), depth: v.Depth}
		for _, peak := range []int{v.Left, v.Right} {
			bare := row
			bare.Given = slices.Clone(row.Given)
			bare.Given[peak] = false
			switch {
			case len(fair.Valleys(bare, valleyDeep)) > 0:
			case given >= endLeast && (!slices.Contains(row.Given[:peak], true) || !slices.Contains(row.Given[peak+1:], true)):
				h.blame = append([]fair.Spot{spot(peak)}, h.blame...)
			default:
				h.blame = append(h.blame, spot(peak))
			}
		}
		all = append(all, h)
	}
	return all
}

// valley is the doubt of a value that makes a hollow, with the readings that would
// fill it.
func (c checked) valley(bad fair.Spot, h hollow) Doubt {
	d := Doubt{Kind: OffsetValley, Line: bad.Row, Station: bad.At, Reads: c.o.Lines[bad.Row].Values[bad.At]}
	reads := fmt.Sprintf("%s at %s reads %q", c.o.Lines[bad.Row].words(), c.o.called(bad.At), d.Reads.Text)
	lo, hi := c.value(h.left), c.value(h.right)
	if bad == h.low {
		d.Text = fmt.Sprintf("%s, below both %s and %s", reads, c.named(h.left, bad), c.named(h.right, bad))
	} else {
		d.Text = fmt.Sprintf("%s and leaves a hollow at %s", reads, c.named(h.low, bad))
		lo, hi = c.value(h.low)/2, c.value(h.low)
	}
	c.propose(&d, fair.Opinion{Value: (lo + hi) / 2, Sd: math.Max(math.Abs(hi-lo)/6, 1)})
	return d
}

// named is a value as it is told of beside another: by its station on the same
// line, by its line on the same section.
func (c checked) named(s, beside fair.Spot) string {
	name := c.o.called(s.At)
	if s.Row != beside.Row {
		name = c.o.Lines[s.Row].Name
	}
	return fmt.Sprintf("%s (%q)", name, c.o.Lines[s.Row].Values[s.At].Text)
}
