package stock

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"strakebook/calc/measure"
)

// order is the boards to be sent for: those not counted on the rack, added up by
// species, thickness, width and length, with the spares asked for; beside them
// what the rack says was delivered, wanted or not.
func order(cuts []Cut, rack []Board, r Rules) []OrderLine {
	var lines []OrderLine
	of := func(b Board) *OrderLine {
		i := slices.IndexFunc(lines, func(l OrderLine) bool {
			return l.Species == b.Species && l.Thickness == b.Thickness.Value && l.Width == b.Width.Value && l.Length == b.Length.Value && l.Source == b.Source
		})
		if i < 0 {
			i = len(lines)
			lines = append(lines, OrderLine{Species: b.Species, Thickness: b.Thickness.Value, Width: b.Width.Value, Length: b.Length.Value, Source: b.Source})
		}
		return &lines[i]
	}
	for _, c := range cuts {
		if c.Board.Free() {
			l := of(c.Board)
			l.Count++
			l.Cost += c.Cost
		}
	}
	for _, b := range rack {
		if b.Free() && b.whole() && b.Delivered.OK() && b.Delivered.Value >= 0 {
			of(b).Delivered += b.Delivered.Value
		}
	}
	for i := range lines {
		l := &lines[i]
		if r.Spares > 0 && l.Count > 0 {
			planned := l.Count
			l.Count = planned + spares(planned, r.Spares)
			l.Cost *= float64(l.Count) / float64(planned)
		}
		l.EachFeet = measure.Board(l.Thickness, l.Width, l.Length)
		l.Feet = l.EachFeet * measure.BoardFeet(l.Count)
		if r.Hardwood {
			l.EachFeet = measure.HardwoodBoard(l.Thickness, l.Width, l.Length, true)
			// Boards exactly on the half are read down and up in turn.
			up := measure.HardwoodBoard(l.Thickness, l.Width, l.Length, false)
			l.Feet = l.EachFeet*measure.BoardFeet(l.Count-l.Count/2) + up*measure.BoardFeet(l.Count/2)
		}
	}
	slices.SortStableFunc(lines, func(a, b OrderLine) int {
		return cmp.Or(strings.Compare(a.Species, b.Species), cmp.Compare(a.Thickness, b.Thickness),
			cmp.Compare(a.Width, b.Width), cmp.Compare(a.Length, b.Length))
	})
	return lines
}

// spares is how many boards more a percentage of a count comes to, rounded up;
// the noise of a decimal fraction in binary does not make another board.
func spares(count int, percent float64) int {
	return int(math.Ceil(float64(count)*percent/100 - 1e-9))
}
