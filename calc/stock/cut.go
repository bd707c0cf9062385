package stock

import (
	"cmp"
	"fmt"
	"slices"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
)

// cut makes the pieces of every run and finds each its board, class by class,
// the longest pieces first.
func cut(runs []lay.Run, classes []class, of []int, rack []Board, r Rules, priced bool) (Plan, finding.List) {
	var p Plan
	var found finding.List
	byClass := make([][]int, len(classes))
	for i := range runs {
		for _, piece := range pieces(&runs[i]) {
			byClass[of[i]] = append(byClass[of[i]], len(p.Pieces))
			p.Pieces = append(p.Pieces, piece)
		}
	}
	left := make([]int, len(rack)) // boards of each row not yet cut
	for i, b := range rack {
		left[i] = b.Count.Value
	}
	cutOf := make([]int, len(rack)) // boards of each row cut so far
	for k := range classes {
		if len(rack) == 0 {
			break
		}
		todo := byClass[k]
		slices.SortStableFunc(todo, func(a, b int) int { return cmp.Compare(p.Pieces[b].Length, p.Pieces[a].Length) })
		lanes := fill(p.Pieces, todo, &classes[k], rack, left, r)
		saw(&p, lanes, rack, cutOf, r, priced)
		if n := unserved(p.Pieces, todo); n > 0 && len(classes[k].sticks) > 0 {
			found = append(found, finding.Finding{Kind: Out, Cell: p.Pieces[todo[0]].Cell,
				Text: fmt.Sprintf("%d pieces of %s %s in thick have no board: the counted boards are used up", n, classes[k].skin, measure.InchesText(classes[k].thick))})
		}
	}
	return p, found
}

func unserved(pieces []Piece, todo []int) int {
	n := 0
	for _, i := range todo {
		if pieces[i].Board < 0 {
			n++
		}
	}
	return n
}

// pieces is a run's pieces with their marks and ends.
func pieces(run *lay.Run) []Piece {
	all := make([]Piece, len(run.Pieces))
	for i, l := range run.Pieces {
		p := Piece{
			Mark:   mark(run, i+1),
			Strake: run.Name, Skin: run.Skin, Side: run.Side, Place: i + 1, Of: len(run.Pieces), Species: run.Species,
			Thickness: run.Thick, Width: run.Wide, Length: l, Scarf: run.Scarf, Fore: FeatherInside, Aft: FeatherOutside, Board: -1, Cell: run.Cell,
		}
		if run.Feather.OutsideFore() {
			p.Fore, p.Aft = FeatherOutside, FeatherInside
		}
		if i == 0 {
			p.Fore = Hood
		}
		if i == len(all)-1 {
			p.Aft = Hood
		}
		all[i] = p
	}
	return all
}

// mark is a piece's mark: S for strip, P for plank or the skin's own name, the
// strake, P or S for its side, and its place from the fore end. It does not
// change when another strake does.
func mark(run *lay.Run, place int) string {
	skin := string(run.Skin)
	switch run.Skin {
	case hull.Strips:
		skin = "S"
	case hull.Planks:
		skin = "P"
	}
	side := "S"
	if run.Side == hull.Port {
		side = "P"
	}
	return fmt.Sprintf("%s%s-%s-%d", skin, run.Name, side, place)
}

// lane is one lane of one board with the pieces cut along it.
type lane struct {
	stick  stick
	pieces []int
}

// fill cuts the pieces, longest first, from lanes of the rack: each lane starts
// with the longest piece left and takes the stick that its filling makes
// cheapest for the length it gives. Boards are taken from left as they are begun.
func fill(all []Piece, todo []int, c *class, rack []Board, left []int, r Rules) []lane {
	var lanes []lane
	spare := make([]int, len(rack)) // lanes of a begun board still whole
	rest := slices.Clone(todo)
	for len(rest) > 0 {
		best, bestAt := lane{}, 0.0
		var taken []int
		for _, s := range c.sticks {
			if all[rest[0]].Length > s.usable || (spare[s.row] == 0 && !rack[s.row].Free() && left[s.row] == 0) {
				continue
			}
			got, used := along(all, rest, s.usable, r)
			at := s.cost / used.Inches()
			if spare[s.row] > 0 {
				at *= 1 - 1e-6 // of equals, finish the board begun
			}
			if best.pieces == nil || at < bestAt {
				best, bestAt, taken = lane{stick: s}, at, got
				for _, i := range got {
					best.pieces = append(best.pieces, rest[i])
				}
			}
		}
		if best.pieces == nil {
			rest = rest[1:] // no board for this one: it stays unserved
			continue
		}
		row := best.stick.row
		if spare[row] == 0 {
			spare[row] = best.stick.lanes
			left[row]--
		}
		spare[row]--
		lanes = append(lanes, best)
		for i := len(taken) - 1; i >= 0; i-- {
			rest = slices.Delete(rest, taken[i], taken[i]+1)
		}
	}
	return lanes
}

// along is which of the pieces, longest first, are cut from one lane: the first,
// and then each that still fits, the filling that leaves least of those begun
// by any second piece.
func along(all []Piece, rest []int, usable measure.Length, r Rules) (got []int, used measure.Length) {
	first := all[rest[0]].Length
	got, used = []int{0}, first
	last := measure.Length(-1)
	tries := 0
	for second := 1; second < len(rest) && tries < 24; second++ {
		l := all[rest[second]].Length
		if l == last || first+r.CrossKerf+l > usable {
			continue // the same as one tried, or too long
		}
		last = l
		tries++
		try, sum, with := []int{0}, first, first
		for i := second; i < len(rest); i++ {
			l := all[rest[i]].Length
			if with+r.CrossKerf+l <= usable {
				try, sum, with = append(try, i), sum+l, with+r.CrossKerf+l
			}
		}
		if sum > used {
			got, used = try, sum
		}
	}
	return got, used
}

// saw puts lanes side by side into boards, row by row of the rack in the order
// they were filled.
func saw(p *Plan, lanes []lane, rack []Board, cutOf []int, r Rules, priced bool) {
	open := map[int]int{} // row of the rack -> index of its board not yet full
	for _, l := range lanes {
		b := rack[l.stick.row]
		at, begun := open[l.stick.row]
		if !begun {
			cutOf[l.stick.row]++
			at = len(p.Cuts)
			p.Cuts = append(p.Cuts, Cut{Mark: boardMark(b, l.stick.row, cutOf[l.stick.row]), Board: b, Lanes: l.stick.lanes, Cost: b.Cost(r, priced)})
			open[l.stick.row] = at
		}
		c := &p.Cuts[at]
		number := 1
		if n := len(c.Lane); n > 0 {
			number = c.Lane[n-1] + 1
		}
		run := measure.Length(0)
		for i, k := range l.pieces {
			c.Pieces, c.Lane = append(c.Pieces, k), append(c.Lane, number)
			p.Pieces[k].Board = at
			run += p.Pieces[k].Length
			if i > 0 {
				run += r.CrossKerf
			}
		}
		for _, k := range l.pieces {
			c.Used += p.Pieces[k].Length
		}
		c.Left = max(c.Left, l.stick.usable-run)
		if number == c.Lanes {
			delete(open, l.stick.row)
		}
	}
	for _, at := range open {
		p.Cuts[at].Left = p.Cuts[at].Board.Length.Value - r.EndTrim // a whole lane over
	}
}

// boardMark is one board's own mark: the rack's, numbered where it stands for
// several.
func boardMark(b Board, row, n int) string {
	name := b.Mark
	if name == "" {
		name = fmt.Sprintf("row %d", row+1)
	}
	if b.Count.OK() && b.Count.Value == 1 {
		return name
	}
	return fmt.Sprintf("%s/%d", name, n)
}
