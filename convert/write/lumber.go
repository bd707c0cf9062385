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

// passedOver says why boards that would serve stay where mill boards are bought, and
// what a yard that owns them does; "" where there are none.
func passedOver(all []stock.Stay, priced bool) string {
	var would []stock.Stay
	for _, s := range all {
		if s.Would {
			would = append(would, s)
		}
	}
	if len(would) == 0 {
		return ""
	}
	which := "all"
	if len(would) < len(all) {
		_, which = stays(would)
	}
	if !priced {
		return fmt.Sprintf("; %s would serve for pieces cut from mill boards: without prices the rack's board feet count as the mill's do, so price boards that are paid for at 0 and the others as they cost", which)
	}
	return fmt.Sprintf("; %s would serve for pieces cut from mill boards, and stay because they count at their price as the mill's do: price boards that are paid for at 0", which)
}

// boardMeasure is how much lumber is cut, in words.
func boardMeasure(in Input) string {
	feet := fmt.Sprintf("%.0f board feet", float64(in.Result.Plan.Summary.BoardFeet))
	if in.units() == measure.StyleMM {
		return fmt.Sprintf("%.2f cubic m, %s", cubicBought(in), feet)
	}
	return feet
}

// cubicBought is the boards cut in cubic metres, as they measure.
func cubicBought(in Input) float64 {
	sum := 0.0
	for _, c := range in.Result.Plan.Cuts {
		b := c.Board
		sum += b.Thickness.Value.Millimetres() * b.Width.Value.Millimetres() * b.Length.Value.Millimetres()
	}
	return sum / 1e9
}

// longer is what a length beyond the mill's longest would save, in words.
func longer(in Input, l stock.Longer) string {
	u, b := in.units(), l.Board
	saves := fmt.Sprintf("would take up to %.1f board feet less", l.Saves)
	if u == measure.StyleMM {
		saves = fmt.Sprintf("would take up to %.3f cubic m less", l.Saves*cubicMetre/12)
	}
	if in.Result.Plan.Summary.Priced {
		by := map[bool]string{true: "metre", false: "foot"}[u == measure.StyleMM]
		saves = fmt.Sprintf("would cost up to %.2f less, at the same price a %s", l.Saves, by)
	}
	of := ""
	if b.Species != "" {
		of = " of " + b.Species
	}
	return fmt.Sprintf("%s%s %s long, in place of %s, %s", measuredAcross(b, u), of, u.Long(l.Length), u.Long(b.Length.Value), saves)
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
