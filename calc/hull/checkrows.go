package hull

import (
	"math"
	"slices"

	"strakebook/calc/fair"
)

// How many times the bend next to it the end of a line may bend it. A stem turns
// up as it likes; a line that ends on the profile between two stations bends the
// more the nearer it comes. From the hulls the checks are measured on, the
// greatest seen being 41 and 17.
const (
	stemBends    = 60
	profileBends = 24
)

// rows is the lines' values in steps of the table's resolution.
func (o Offsets) rows(x []float64) []fair.Row {
	rows := o.alone(x)
	near := o.near()
	for i := range rows {
		rows[i].Near = near[i]
	}
	o.beside(rows)
	return rows
}

// alone is the lines likewise, each by itself.
func (o Offsets) alone(x []float64) []fair.Row {
	rows := make([]fair.Row, len(o.Lines))
	for i := range rows {
		rows[i] = o.row(i, x)
	}
	return rows
}

// beside says of each waterline and buttock which two lie next to it on either side.
// The deck counts as the waterline above the highest.
func (o Offsets) beside(rows []fair.Row) {
	for _, role := range []Role{Waterline, Buttock} {
		var all []int
		var levels []float64
		for n, i := range o.family(role) {
			level := float64(n)
			if o.Lines[i].At.OK() {
				level = o.steps(o.Lines[i])
			}
			if n == 0 || level > levels[len(levels)-1] {
				all, levels = append(all, i), append(levels, level)
			}
		}
		if deck, n := o.line(HalfBreadth, Deck), len(all); role == Waterline && deck >= 0 && n > 1 {
			all, levels = append(all, deck), append(levels, 2*levels[n-1]-levels[n-2])
		}
		for n, i := range all {
			before := slices.Clone(all[max(0, n-2):n])
			slices.Reverse(before)
			rows[i].Level, rows[i].Sides = levels[n], [2][]int{before, all[n+1 : min(len(all), n+3)]}
		}
	}
}

// row is a line's values in steps of the table's resolution, with what cannot be
// judged left out: the transom, stations not in their order, impossible values,
// and runs of zeros at the ends of half-breadths, where the line is not there.
func (o Offsets) row(i int, x []float64) fair.Row {
	l := o.Lines[i]
	row := fair.Row{X: x, Y: make([]float64, len(x)), Given: make([]bool, len(x)), Above: l.View == HalfBreadth}
	first, last := ends(l)
	for k, v := range l.Values {
		if !v.OK() || o.Stations[k].Transom || k > 0 && x[k] <= x[k-1] {
			continue
		}
		if l.View == HalfBreadth && v.Value == 0 && !endZero(k, first, last, len(x)) {
			continue
		}
		if k > 0 && o.chineBetween(l, k) {
			row.Corner = append(row.Corner, k)
		}
		row.Y[k], row.Given[k] = float64(v.Value)/float64(max(1, o.Resolution)), !o.kept(v.Cell)
		if l.View == HalfBreadth {
			row.Y[k] = math.Abs(row.Y[k]) // a sign too many says nothing against the figure
		}
	}
	for side, inside := range [2]bool{first > 0, last < len(x)-1} {
		switch {
		case l.Role == Keel || l.Role == Rabbet:
			row.Ends[side] = stemBends
		case inside:
			row.Ends[side] = profileBends
		}
	}
	return row
}

// endZero says that a zero half-breadth at station k is where its line comes to
// nothing at the table's first or last station; any other zero is no value.
func endZero(k, first, last, n int) bool {
	return k == 0 && first == 1 || k == n-1 && last == n-2
}

// chineBetween says that a waterline or buttock crosses the chine between
// station k and the one before it, and so has a corner there.
func (o Offsets) chineBetween(l Line, k int) bool {
	if !l.At.OK() || l.Role != Waterline && l.Role != Buttock {
		return false
	}
	for _, c := range o.Lines {
		if c.Role == Chine && (c.View == Height) == (l.Role == Waterline) && c.Values[k].OK() && c.Values[k-1].OK() {
			return (c.Values[k-1].Value < l.At.Value) != (c.Values[k].Value < l.At.Value)
		}
	}
	return false
}

// runsLike is the lines that run much alike: half-breadths of waterlines and deck,
// buttocks, diagonals; 0 for a line that has no like.
func runsLike(l Line) int {
	switch {
	case l.View == HalfBreadth && (l.Role == Waterline || l.Role == Deck):
		return 1
	case l.Role == Buttock:
		return 2
	case l.Role == DiagonalLine:
		return 3
	}
	return 0
}

// near is, for each line, the nearest four of its family in the table's order.
func (o Offsets) near() [][]int {
	all := make([][]int, len(o.Lines))
	for i, l := range o.Lines {
		for d := 1; runsLike(l) != 0 && d < len(o.Lines) && len(all[i]) < 4; d++ {
			for _, j := range []int{i - d, i + d} {
				if j >= 0 && j < len(o.Lines) && runsLike(o.Lines[j]) == runsLike(l) && len(all[i]) < 4 {
					all[i] = append(all[i], j)
				}
			}
		}
	}
	return all
}
