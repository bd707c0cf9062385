package write

import (
	"fmt"
	"math"
	"strings"

	"strakebook/calc/hull"
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

// boards is every board cut, a stick a line: the board itself, or each lane it is
// ripped into.
func boards(in Input, list *page) *page {
	u := in.units()
	p := table("Stock", "boards and what is cut from them", col("Stick", 7), col("Board", 11), col("Lane", 8), col("Species", 13), col("Thickness, "+unit(u), 10), col("Width, "+unit(u), 8),
		col("Length, "+longUnit(u), 11), col("Drawn to scale, "+scaleWords(u), 60), col("Used, "+longUnit(u), 11), col("Left, "+longUnit(u), 11), col("Still fits", 9), col("Board feet", 9), col("Cost", 9))
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
	p.wide, p.csv = true, true
	p.empty = "No boards: a table of boards (species, thickness, width, length, count) is needed."
	p.note("A bar stands where the saw goes; dots are left over. A piece's mark stands at its fore end where there is room.")
	p.note("Still fits follows the slopes, kerfs and allowances on the Settings sheet. Where a board no longer serves, or could serve better, run strakebook again: the pieces stay where they are until then.")
	stick := 0
	for _, c := range in.Result.Plan.Cuts {
		for lane := 1; lane <= max(1, c.Lanes); lane++ {
			stick++
			p.line(stickLine(in, p, list, c, lane, stick)...)
		}
	}
	return p
}

// stickLine is one stick's cells.
func stickLine(in Input, p, list *page, c stock.Cut, lane, stick int) []sheet.Cell {
	u, r := in.units(), in.Result.Rules.Stock
	var on []int
	for i, k := range c.Pieces {
		if c.Lane[i] == lane {
			on = append(on, k)
		}
	}
	all := in.Result.Plan.Pieces
	used, marks := measure.Length(0), []string{}
	for i, k := range on {
		used += all[k].Length
		marks = append(marks, all[k].Mark)
		if i > 0 {
			used += r.CrossKerf
		}
	}
	left := c.Board.Length.Value - r.EndTrim - used
	across, through := measure.Length(0), measure.Length(0)
	if len(c.Pieces) > 0 {
		across, through = faces(all[c.Pieces[0]], r)
	}
	saws := ""
	if n := len(on) - 1; n > 0 {
		saws = fmt.Sprintf("+%d*%s", n, set("cross-cut kerf"))
	}
	both := func(key string, l measure.Length, formula string) (shown, figures []sheet.Cell) {
		cs := p.length(key, l, u, formula)
		if u != measure.StyleFeet {
			return cs, nil
		}
		return cs[:1], cs[1:]
	}
	length, lengthIn := both("Length", c.Board.Length.Value, "")
	takes, takesIn := both("Used", used, fmt.Sprintf("SUMIFS(%s,%s,%s)%s", list.span("Length"), list.span("Stick"), p.here("Stick"), saws))
	over, overIn := both("Left", left, fmt.Sprintf("%s-%s-%s", p.here("Length"), set("end trim"), p.here("Used")))
	fits := livef(text("fits"), `IF(AND(%s>=-0.00001,INT((%s-%s+%s)/(%s+%s)+0.000001)>=%s,%s>=%s+%s-0.00001),"fits","does not fit")`, p.here("Left"),
		p.here("Width"), set("edge allowance"), set("rip kerf"), p.here("Across"), set("rip kerf"), p.here("Lanes"), p.here("Thickness"), p.here("Through"), set("dressing allowance"))
	feet, cost, price := sheet.Cell{}, sheet.Cell{}, sheet.Cell{}
	if lane == 1 {
		feet = live(number(float64(c.Board.Feet(r)), sheet.Measure), boardFeet(p, u))
		if in.Result.Plan.Summary.Priced {
			price = live(number(c.Board.Price.Value, sheet.Money), in.priceOf(c.Board))
			cost = live(number(c.Cost, sheet.Money), p.here("Price"))
			if c.Board.PerFoot {
				cost.Formula += "*" + p.here("Board feet")
			}
		}
	}
	row := cells([]sheet.Cell{whole(stick), text(c.Mark), text(fmt.Sprintf("%d of %d", lane, max(1, c.Lanes))), text(c.Board.Species), small(c.Board.Thickness.Value, u), small(c.Board.Width.Value, u)},
		length, one(drawn(in, p, list, on, left)), takes, over, []sheet.Cell{fits, feet, cost}, lengthIn, takesIn, overIn,
		[]sheet.Cell{text(c.Board.Source), text(strings.Join(marks, ", ")), whole(max(1, c.Lanes)), small(across, u), small(through, u), price})
	if lane == 1 {
		ruled(row)
	}
	return row
}

// faces is a piece's size across its board and through it: a strip is ripped off
// the board's edge, whose thickness becomes its width, unless set otherwise.
func faces(q stock.Piece, r stock.Rules) (across, through measure.Length) {
	if q.Skin == hull.Strips && !r.StripsFlat {
		return q.Thickness, q.Width
	}
	return q.Width, q.Thickness
}

// boardFeet is a board's measure by its own columns.
func boardFeet(p *page, u measure.Style) string {
	thick := "MAX(1," + inches(p.here("Thickness"), u) + ")"
	surface := inches(p.here("Width"), u) + "*" + inches(p.here("Length"), u) + "/144"
	return fmt.Sprintf(`IF(%s="yes",ROUND(%s-0.000000002,0),%s)*%s`, set("hardwood measure"), surface, surface, thick)
}

// scale is how much of a stick one letter of its drawing stands for.
func scale(u measure.Style) (float64, measure.Length) {
	if u == measure.StyleMM {
		return 100, 100 * measure.Millimetre
	}
	return 4, 4 * measure.Inch
}

func scaleWords(u measure.Style) string {
	if u == measure.StyleMM {
		return "a letter 100 mm"
	}
	return "a letter 4 in"
}

// drawn is a stick drawn to scale: each piece its length in letters with its mark
// at the fore end, a bar at each cut, dots for what is left.
func drawn(in Input, p, list *page, on []int, left measure.Length) sheet.Cell {
	u := in.units()
	each, of := scale(u)
	letters := func(l measure.Length) int { return int(math.Round(float64(l) / float64(of))) }
	shown, formula := "|", `"|"`
	for _, k := range on {
		q := in.Result.Plan.Pieces[k]
		shown += firstLetters(q.Mark+strings.Repeat("-", 199), max(1, letters(q.Length)-1)) + "|"
		row := fmt.Sprintf("MATCH(%d,%s,0)", k+1, list.span("No."))
		formula += fmt.Sprintf(`&LEFT(INDEX(%s,%s)&REPT("-",199),MAX(1,ROUND(INDEX(%s,%s)/%v,0)-1))&"|"`, list.span("Mark"), row, list.span("Length"), row, each)
	}
	if n := letters(left) - 1; n > 0 {
		shown += strings.Repeat(".", n) + "|"
	}
	formula += fmt.Sprintf(`&IF(ROUND(%s/%v,0)>1,REPT(".",ROUND(%s/%v,0)-1)&"|","")`, p.here("Left"), each, p.here("Left"), each)
	return livef(sheet.Cell{Kind: sheet.Text, Text: shown, Style: sheet.Stick}, "%s", formula)
}

func firstLetters(s string, n int) string {
	r := []rune(s)
	return string(r[:min(n, len(r))])
}
