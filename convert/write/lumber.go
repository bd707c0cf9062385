package write

import (
	"fmt"
	"strings"

	"strakebook/calc/measure"
	"strakebook/calc/stock"
)

// mostStays is how many rows of the rack are named among those that stay.
const mostStays = 12

// stays is the counted boards that are not cut, in words: "4 of F3, 12 of F4".
func stays(all []stock.Stay) (boards int, which string) {
	var named []string
	for _, s := range all {
		boards += s.Count
		if len(named) < mostStays {
			named = append(named, fmt.Sprintf("%d of %s", s.Count, s.Name()))
		}
	}
	if n := len(all) - len(named); n > 0 {
		named = append(named, fmt.Sprintf("and of %d rows more", n))
	}
	return boards, strings.Join(named, ", ")
}

// longer is what a length beyond the mill's longest would save, in words.
func longer(in Input, l stock.Longer) string {
	u, b := in.units(), l.Board
	saves := fmt.Sprintf("would take up to %.0f board feet less", l.Saves)
	if in.Result.Plan.Summary.Priced {
		saves = fmt.Sprintf("would cost up to %.2f less, at the same price a foot", l.Saves)
	}
	return fmt.Sprintf("%s of %s %s long, in place of %s, %s", measuredAcross(b, u), b.Species, u.Long(l.Length), u.Long(b.Length.Value), saves)
}

// measuredAcross is a board's thickness and width.
func measuredAcross(b stock.Board, u measure.Style) string {
	return fmt.Sprintf("%s x %s", u.Small(b.Thickness.Value), u.Small(b.Width.Value))
}

// jsonStays is the counted boards that are not cut, a row of the rack each.
func jsonStays(all []stock.Stay) []object {
	var list []object
	for _, s := range all {
		list = append(list, object{"mark": s.Name(), "count": s.Count})
	}
	return list
}

// jsonLonger is what longer lengths at the mill would save.
func jsonLonger(all []stock.Longer) []object {
	var list []object
	for _, l := range all {
		list = append(list, object{"species": l.Board.Species, "thickness_mm": l.Board.Thickness.Value.Millimetres(), "width_mm": l.Board.Width.Value.Millimetres(), "length_mm": l.Length.Millimetres(), "saves": l.Saves})
	}
	return list
}
