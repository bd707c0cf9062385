package write

import (
	"fmt"
	"strings"

	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// spiling is every plank laid out flat, a line each: the board it takes by either
// way of working, how far it is sprung, and how its ends are cut.
func spiling(in Input) *page {
	u := in.units()
	p := table("Spiling", "planks laid out flat", col("Skin", 8), col("Strake", 9), col("Side", 11), col("Piece", 7), col("Length, "+longUnit(u), 12), col("Sny, "+unit(u), 9),
		col("Board to the sweep, "+unit(u), 11), col("Board sprung, "+unit(u), 11), col("Width planned, "+unit(u), 10), col("Lies sprung", 9), col("Widest that lies, "+unit(u), 11), col("Edgewise strain", 10),
		col("Hollow of back, "+unit(u), 10), col("Thickness needed, "+unit(u), 11), col("Twist, degrees", 9),
		col("Fore end off square, degrees", 11), col("Fore end bevel, degrees", 11), col("After end off square, degrees", 11), col("After end bevel, degrees", 11), col("Ends on", 18))
	p.csv = true
	p.empty = "No spiled shapes: a table of offsets and a list of strakes are needed."
	if len(in.Result.Spiled) == 0 {
		return p
	}
	p.note("Sny: how far the upper edge leaves the straight line between its ends, + where it hangs towards the keel. Board to the sweep: the narrowest straight board that covers both faces; sprung: a straight-edged one, sprung edgewise into its place.")
	p.note(fmt.Sprintf("Edgewise strain: 4 w s / l^2 of the worst stretch, of the whole strake, its halves and its middle half, w its width and s the spring in the length l of that stretch: it does not follow from the sny and the length of the whole. At most %g by the setting \"edgewise strain\". Planks are got out %s: the setting \"planks got out\".", in.Result.Rules.Hull.EdgeStrain, in.Result.Rules.Hull.Planking))
	p.note("Hollow of back: + to be worked out of it, - the back rounded; from the setting \"hollow from\" on it is in the thickness needed, rounded up as on Stock: the board is dressed to that, scarfed and sawn, and its back worked last. Ends off square: to the board's edge, + where the upper corner is the longer. Bevel of an end: off square through the thickness, + where the outside face is the longer, - where the inside is, to lie on the middle line's plane at the stem or post, elsewhere on the " + in.places().String() + "'s plane or the transom. At the inside corner the wood is 90 + it; the plank stands to that plane at 90 - it. A joint of pieces got out to the sweep is cut square to the plank's run, and so off square to its board.")
	p.note("Width planned: of the boards its pieces are planned on, as on the cut list: the widest that any piece of the strake could need where its joints fall otherwise.")
	p.note("Computed shapes are for planning. The hull on the stocks and the spiling batten rule: try the batten in its place before the plank is marked, and leave the hood ends long to be fitted.")
	runs := in.runs()
	for _, s := range in.Result.Spiled {
		if s.Skin != hull.Strips {
			p.line(spiledLine(s, u, in.places(), widthPlanned(runs, s, u))...)
		}
	}
	return p
}

// widthPlanned is the width of board that a plank or piece is planned on; blank where its
// strake is not listed.
func widthPlanned(runs map[runKey]lay.Run, s hull.Spiled, u measure.Style) sheet.Cell {
	side := s.Side
	if side == hull.BothSides {
		side = hull.Starboard
	}
	if run, ok := runs[keyOf(s.Skin, s.Strake, side)]; ok {
		return small(run.Wide, u)
	}
	return sheet.Cell{}
}

// spiledLine is one plank or piece.
func spiledLine(s hull.Spiled, u measure.Style, places hull.Places, planned sheet.Cell) []sheet.Cell {
	thick, widest := sheet.Cell{}, sheet.Cell{}
	if s.Thick > 0 {
		thick = small(s.Thick, u)
	}
	lies := "no"
	if s.Lies {
		lies = "yes"
	}
	if s.LiesWidth > 0 && s.LiesWidth < 100*measure.Inch {
		widest = small(s.LiesWidth, u)
	}
	degrees := func(a measure.Angle) sheet.Cell { return number(float64(a.Round(0.05)), sheet.Degrees) }
	bevel := func(e hull.EndCut) sheet.Cell {
		if e.Joint {
			return sheet.Cell{}
		}
		return degrees(e.Bevel)
	}
	return []sheet.Cell{text(string(s.Skin)), text(s.Strake), text(s.Side.String()), pieceOf(s), long(s.Length, u), small(s.Sny, u), small(s.Board, u), small(s.Straight, u),
		planned, text(lies), widest, {Kind: sheet.Number, Number: s.Strain, Format: "0.00000"}, small(s.Hollow, u), thick, degrees(s.Twist),
		degrees(s.Fore.Off), bevel(s.Fore), degrees(s.After.Off), bevel(s.After), text(endsOn(s, places))}
}

// pieceOf is a piece's place from the fore end, or that it is the whole plank.
func pieceOf(s hull.Spiled) sheet.Cell {
	if s.Piece > 0 {
		return whole(s.Piece)
	}
	return text("whole")
}

// endsOn is what a plank's two ends land on.
func endsOn(s hull.Spiled, places hull.Places) string {
	at := func(e hull.EndCut) string {
		switch {
		case e.Joint:
			return "joint"
		case e.Stem:
			return "middle line"
		}
		return places.String()
	}
	return at(s.Fore) + ", " + at(s.After)
}

// ordinates is the shape of every plank, a card each on paper of its own: both
// edges on both faces, up from the lower edge of its board.
func ordinates(in Input) *page {
	u := in.units()
	p := table("Ordinates", "shapes of planks", col("Strake", 9), col("Side", 11), col("Piece", 7), col(in.stationHead(), 9))
	for _, c := range lengths("At", u, 12) {
		p.add(c)
	}
	for _, c := range []string{"Lower edge inside", "Upper edge inside", "Lower edge outside", "Upper edge outside"} {
		p.add(col(c+", "+unit(u), 11))
	}
	p.add(col("Bevel of upper edge, degrees", 11))
	p.add(col("Bevel of lower edge, degrees", 11))
	p.csv, p.wide = true, false
	p.opened = []string{"Card", "Card says"}
	p.empty = "No shapes: a table of offsets and a list of strakes are needed."
	if len(in.Result.Spiled) > 0 {
		p.note("At: along the board from its fore end. Heights are up from the lower edge of the board. Bevels are off square, + where the outside face is the wider, before they are rounded to the saw's readout. The outside edges are those of the board as dressed, its back not yet hollowed, and the inside ones lie straight across it; of a back to be rounded the inside edges are its corners when that is done.")
		p.note("Computed shapes are for planning: try a spiling batten in its place before the plank is marked, and leave the hood ends long to be fitted.")
	}
	for _, s := range in.Result.Spiled {
		if s.Skin == hull.Strips {
			continue
		}
		if len(p.rows) > 0 {
			p.breaks = append(p.breaks, len(p.rows)+1)
		}
		p.aside(sheet.Cell{Kind: sheet.Text, Text: shapeName(s), Style: sheet.Title})
		p.aside(text(shapeFigures(s, u)))
		for _, o := range s.Ordinates {
			p.line(cells([]sheet.Cell{text(s.Strake), text(s.Side.String()), pieceOf(s), text(o.Station)}, p.length("At", o.At, u, ""),
				[]sheet.Cell{small(o.Lower, u), small(o.Upper, u), small(o.LowerO, u), small(o.UpperO, u),
					number(float64(o.BevelU.Round(0.05)), sheet.Degrees), number(float64(o.BevelLo.Round(0.05)), sheet.Degrees)})...)
		}
	}
	return p
}

// shapeName names a card.
func shapeName(s hull.Spiled) string {
	name := fmt.Sprintf("%s, %s", strings.TrimSpace(fmt.Sprintf("%s %s", s.Skin, s.Strake)), s.Side)
	if s.Piece > 0 {
		name += fmt.Sprintf(": piece %d", s.Piece)
	}
	return name
}

// shapeFigures is a card's own figures.
func shapeFigures(s hull.Spiled, u measure.Style) string {
	in := func(l measure.Length) string {
		if u == measure.StyleMM {
			return fmt.Sprintf("%.1f mm", l.Millimetres())
		}
		return fmt.Sprintf("%.3f in", l.Inches())
	}
	text := fmt.Sprintf("Board %s wide, or %s straight and sprung; %s; sny %s; hollow of back %s", in(s.Board), in(s.Straight), thickness(s, in), in(s.Sny), in(s.Hollow))
	if !s.Lies {
		text += "; a straight edge will not lie"
	}
	return text + "."
}

// thickness is the thickness that a shape is drawn for: how far its outside edges
// stand off its inside ones.
func thickness(s hull.Spiled, in func(measure.Length) string) string {
	switch apart := s.Thick - s.Rounded(); {
	case s.Thick == 0:
		return "no thickness listed, the outside edges as the inside ones"
	case apart != s.Thick:
		return fmt.Sprintf("%s thick as dressed, %s with its back rounded", in(s.Thick), in(apart))
	}
	return in(s.Thick) + " thick as dressed"
}

// jsonSpiled is the planks and strips laid out flat.
func jsonSpiled(all []hull.Spiled) []object {
	var list []object
	for _, s := range all {
		o := object{"skin": s.Skin, "strake": s.Strake, "side": s.Side.String(), "piece": s.Piece, "length_mm": mm(s.Length), "sny_mm": mm(s.Sny), "board_width_mm": mm(s.Board), "straight_width_mm": mm(s.Straight),
			"hollow_mm": mm(s.Hollow), "twist_deg": thousandth(float64(s.Twist)), "strain": s.Strain, "lies": s.Lies}
		if s.Thick > 0 {
			o["thickness_mm"] = mm(s.Thick)
		}
		for name, e := range map[string]hull.EndCut{"fore": s.Fore, "after": s.After} {
			o[name] = object{"off_deg": thousandth(float64(e.Off)), "meets_deg": thousandth(float64(e.Meets)), "bevel_deg": thousandth(float64(e.Bevel)), "stem": e.Stem, "joint": e.Joint}
		}
		if s.Skin != hull.Strips {
			var at []object
			for _, p := range s.Ordinates {
				at = append(at, object{"at_mm": mm(p.At), "station": p.Station, "lower_mm": mm(p.Lower), "upper_mm": mm(p.Upper), "lower_outside_mm": mm(p.LowerO), "upper_outside_mm": mm(p.UpperO)})
			}
			o["ordinates"] = at
		}
		list = append(list, o)
	}
	return list
}
