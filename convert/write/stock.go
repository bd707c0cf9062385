package write

import (
	"fmt"
	"strconv"
	"strings"

	"strakebook/calc/measure"
	"strakebook/calc/stock"
	"strakebook/convert/sheet"
)

// sticks is the stick each piece is cut from, by its line on the Stock sheet
// from one: a lane of a board is a stick.
func (in Input) sticks() []int {
	all := make([]int, len(in.Result.Plan.Pieces))
	before := 0
	for _, c := range in.Result.Plan.Cuts {
		for i, k := range c.Pieces {
			all[k] = before + c.Lane[i]
		}
		before += max(1, c.Lanes)
	}
	return all
}

// turned says of each piece whether it lies end for end on its stick.
func (in Input) turned() []bool {
	all := make([]bool, len(in.Result.Plan.Pieces))
	for _, c := range in.Result.Plan.Cuts {
		for i, k := range c.Pieces {
			all[k] = c.Turned[i]
		}
	}
	return all
}

// boards is every board cut, a stick a line: the board itself, or each lane it is
// ripped into.
func boards(in Input, list *page) *page {
	u := in.units()
	p := table("Stock", "boards and what is cut from them", col("Stick", 7), col("Board", 11), col("Lane", 8), col("Species", 13), col("Thickness, "+unit(u), 10), col("Width, "+unit(u), 8),
		col("Length, "+longUnit(u), 11), col("Drawn to scale, "+in.scaleWords(), 64), col("Used, "+longUnit(u), 11), col("Left, "+longUnit(u), 11), col("Still fits", 9), volumeColumn(u), col("Cost", 9))
	if u == measure.StyleFeet {
		for _, key := range []string{"Length", "Used", "Left"} {
			p.cols[p.index(key)-1].key += " text"
		}
		p.worked(col("Length, in", 10), col("Used, in", 10), col("Left, in", 10))
	} else {
		p.worked()
	}
	for _, c := range []column{col("From", 10), col("Pieces", 40), col("Lanes", 7), col("Across, "+unit(u), 9), col("Through, "+unit(u), 9), col("Price", 9)} {
		p.add(c)
	}
	if u == measure.StyleMM {
		p.add(col("Board feet", 9)) // prices and totals may go by it
	}
	p.wide, p.csv = true, true
	p.empty = "No boards: a table of boards (species, thickness, width, length, count) is needed."
	p.note("Drawn on the upper edge, outside face up: a bar where an end is square, a slant where it is scarfed, a cross where a " + in.places().String() + " lies, dots for what is left over. A piece's mark stands at its fore end where there is room.")
	if in.Result.Rules.Stock.ShareCuts {
		p.note("One slant between two pieces is one cut that serves the scarfs of both. A piece said to be turned (t where there is no room) lies end for end and inside face up, the same edge up: a half turn, by which its scarfs come out on their own faces. Its mark stands at its after end.")
	}
	p.note("Still fits follows the slopes, kerfs and allowances on the Settings sheet. Where a board no longer serves, or could serve better, run strakebook again: the pieces stay where they are until then. Boards with bad stretches (x) are not followed.")
	p.note("Across and Through are the widest and the thickest of the stick's pieces as the cut list has them, where the width is one for all pieces of a strake, Through with the hollow worked out of the back. A piece that needs less, as its note on the cut list says, may go on a narrower board or offcut.")
	d := in.drawer()
	var of []laneOf
	for _, c := range in.Result.Plan.Cuts {
		for lane := 1; lane <= max(1, c.Lanes); lane++ {
			of = append(of, laneOf{c, lane})
		}
	}
	p.lines(len(of), func(p *page, i int) []sheet.Cell { return stickLine(in, d, p, list, of[i].cut, of[i].lane, i+1) })
	return p
}

// laneOf is a stick: a lane of a board, from one.
type laneOf struct {
	cut  stock.Cut
	lane int
}

// stickLine is one stick's cells.
func stickLine(in Input, d *drawer, p, list *page, c stock.Cut, lane, stick int) []sheet.Cell {
	u, r := in.units(), in.Result.Rules.Stock
	s := onStick(in, c, lane)
	across, through := largest(in, c, s)
	both := func(key string, l measure.Length, formula string) (shown, figures []sheet.Cell) {
		cs := p.length(key, l, u, formula)
		if u != measure.StyleFeet {
			return cs, nil
		}
		return cs[:1], cs[1:]
	}
	takesFrom, overFrom := "", ""
	drawing, fits := sheet.Cell{}, text("fits")
	if !s.follows {
		drawing = d.standing(s, c)
	} else {
		takesFrom = d.takes(s, p, list)
		overFrom = fmt.Sprintf("%s-%s-%s", p.here("Length"), set("end trim"), p.here("Used"))
		drawing = d.drawn(s, p, list)
		fits = livef(fits, `IF(AND(%s>=-0.00001,INT((%s-%s+%s)/(%s+%s)+0.000001)>=%s,%s>=%s+%s-0.00001),"fits","does not fit")`, p.here("Left"),
			p.here("Width"), set("edge allowance"), set("rip kerf"), p.here("Across"), set("rip kerf"), p.here("Lanes"), p.here("Thickness"), p.here("Through"), dressing(p, u))
	}
	length, lengthIn := both("Length", c.Board.Length.Value, "")
	takes, takesIn := both("Used", s.used, takesFrom)
	over, overIn := both("Left", s.left, overFrom)
	feet, volume, cost, price := sheet.Cell{}, sheet.Cell{}, sheet.Cell{}, sheet.Cell{}
	if lane == 1 {
		feet = live(number(float64(c.Board.Feet(r)), sheet.Measure), boardFeet(p, u))
		volume = cubicMetres(p, c.Board.Thickness.Value, c.Board.Width.Value, c.Board.Length.Value)
		if in.Result.Plan.Summary.Priced {
			price = live(number(c.Board.Price.Value, sheet.Money), priceName(c.Row))
			cost = live(number(c.Cost, sheet.Money), p.here("Price"))
			if c.Board.PerFoot {
				cost.Formula += "*" + p.here("Board feet")
			}
		}
	}
	bulk, last := feet, []sheet.Cell(nil)
	if u == measure.StyleMM {
		bulk, last = volume, one(feet)
	}
	row := cells([]sheet.Cell{whole(stick), text(c.Mark), text(fmt.Sprintf("%d of %d", lane, max(1, c.Lanes))), text(c.Board.Species), small(c.Board.Thickness.Value, u), small(c.Board.Width.Value, u)},
		length, one(drawing), takes, over, []sheet.Cell{fits, bulk, cost}, lengthIn, takesIn, overIn,
		[]sheet.Cell{text(c.Board.Source), text(strings.Join(s.marks(in), ", ")), whole(max(1, c.Lanes)), small(across, u), small(through, u), price}, last)
	if lane == 1 {
		ruled(row)
	}
	return row
}

// dressing is what a board's rough thickness loses, by its own column.
func dressing(p *page, u measure.Style) string {
	loses := func(in float64) string {
		if u == measure.StyleMM {
			in *= 25.4
		}
		return strconv.FormatFloat(in, 'f', -1, 64)
	}
	by := set("dressing by")
	return fmt.Sprintf(`IF(%s="quarters",1,0)*IF(%s<=%s,%s,%s)+IF(%s="quarters",0,1)*%s`, by, p.here("Thickness"), loses(1.5+1e-6), loses(3./16), loses(0.25), by, set("dressing allowance"))
}

// largest is the widest and the thickest of what is cut from a stick, across its
// board and through it; of a lane left whole, of its board's other lanes.
func largest(in Input, c stock.Cut, s stick) (across, through measure.Length) {
	on := s.on
	if len(on) == 0 {
		on = c.Pieces
	}
	for _, k := range on {
		q := &in.Result.Plan.Pieces[k]
		a, t := in.Result.Rules.Stock.Across(q.Skin, q.Width, q.Dressed())
		across, through = max(across, a), max(through, t)
	}
	return across, through
}

// volumeColumn is how much wood a board is, as the yard measures it.
func volumeColumn(u measure.Style) column {
	if u == measure.StyleMM {
		return col("Volume, cubic m", 9)
	}
	return col("Board feet", 9)
}

// cubicMetres is a board's volume, by its own columns in millimetres.
func cubicMetres(p *page, thick, wide, long measure.Length) sheet.Cell {
	v := thick.Millimetres() * wide.Millimetres() * long.Millimetres() / 1e9
	return livef(sheet.Cell{Kind: sheet.Number, Number: v, Style: sheet.Measure, Format: "0.0000"}, "%s*%s*%s/1000000000", p.here("Thickness"), p.here("Width"), p.here("Length"))
}

// boardFeet is a board's measure by its own columns.
func boardFeet(p *page, u measure.Style) string {
	thick := "MAX(1," + inches(p.here("Thickness"), u) + ")"
	surface := inches(p.here("Width"), u) + "*" + inches(p.here("Length"), u) + "/144"
	return fmt.Sprintf(`IF(%s="yes",ROUND(%s-0.000000002,0),%s)*%s`, set("hardwood measure"), surface, surface, thick)
}
