package write

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/measure"
	"strakebook/calc/stock"
	"strakebook/convert/sheet"
)

// millOrder is what to send for, on one page: by volume where the yard works in
// millimetres, else by board feet.
func millOrder(in Input) *page {
	u, told := in.units(), in.delivered()
	p := table("Mill order", "mill order", orderColumns(u, told)...)
	p.worked(col("Planned", 9))
	if u == measure.StyleMM {
		p.add(col("Board feet each", 10))
		p.add(col("Board feet", 11))
	}
	p.wide, p.csv, p.onePage = true, true, true
	p.empty = "Nothing to order: give mill lengths in the table of boards, with their count left blank."
	measured := "Board feet: thickness under 1 in counts as 1 in."
	switch {
	case u == measure.StyleMM:
		measured = "Volume by the rough size."
	case in.Result.Rules.Stock.Hardwood:
		measured = "Board feet by surface measure to the whole foot, times thickness."
	}
	p.note("Rough sizes. " + measured + " The count takes in the spares that are set.")
	total := 0.0
	for _, l := range in.Result.Plan.Order {
		shown, unprinted := orderBulk(p, l, u)
		total += shown[1].Number
		p.line(cells([]sheet.Cell{livef(whole(l.Count), "%s+MAX(0,ROUNDUP(%s*%s/100-0.000000001,0))", p.here("Planned"), p.here("Planned"), set("spares")), text(l.Species), small(l.Thickness, u), small(l.Width, u)},
			p.length("Length", l.Length, u, ""),
			one(text(size(l, u))), shown,
			delivery(p, l, told),
			[]sheet.Cell{words(strings.TrimSpace(l.Source + " " + l.Note)), whole(planned(in, l))}, unprinted)...)
	}
	orderTotal(p, total, u)
	return p
}

// bulkHead heads what an order is measured by.
func bulkHead(u measure.Style) string {
	if u == measure.StyleMM {
		return "Volume"
	}
	return "Board feet"
}

func orderColumns(u measure.Style, told bool) []column {
	bulk := []column{col("Board feet each", 10), col("Board feet", 11)}
	if u == measure.StyleMM {
		bulk = []column{col("Volume each, cubic m", 10), col("Volume, cubic m", 11)}
	}
	var came []column
	if told {
		came = []column{col("Delivered", 10), col("Short or over", 12)}
	}
	return slices.Concat([]column{col("Count", 8), col("Species", 16), col("Thickness, "+unit(u), 10), col("Width, "+unit(u), 9)},
		lengths("Length", u, 11), []column{col("Size", 24)}, bulk, came, []column{col("Note", 18)})
}

// orderBulk is how much a line of the order comes to, each and all together: what is
// printed, and board feet beside it where that is a volume.
func orderBulk(p *page, l stock.OrderLine, u measure.Style) (shown, unprinted []sheet.Cell) {
	feet := []sheet.Cell{live(number(float64(l.EachFeet), sheet.Measure), boardFeet(p, u)), live(number(float64(l.Feet), sheet.Measure), orderFeet(p, u))}
	if u != measure.StyleMM {
		return feet, nil
	}
	each := cubicMetres(p, l.Thickness, l.Width, l.Length)
	all := each
	all.Number *= float64(l.Count)
	return []sheet.Cell{each, livef(all, "%s*%s", p.here("Volume each"), p.here("Count"))}, feet
}

// orderTotal is the line below the order that sums it up.
func orderTotal(p *page, total float64, u measure.Style) {
	n, bulk := p.count(), bulkHead(u)
	if n == 0 {
		return
	}
	sum := livef(number(total, sheet.Measure), "SUM(%s:%s)", p.at(bulk, 0), p.at(bulk, n-1))
	if u == measure.StyleMM {
		sum.Format = "0.0000"
	}
	row := make([]sheet.Cell, p.index(bulk))
	row[1], row[len(row)-1] = text("Total"), sum
	ruled(row)
	p.aside(row...)
}

// delivered says that the book tells of boards to be ordered how many have come.
func (in Input) delivered() bool {
	return slices.ContainsFunc(in.Job.Rack, func(b stock.Board) bool { return b.Free() && b.Delivered.OK() })
}

// delivery is what has come of a line, and how that stands to what is ordered.
func delivery(p *page, l stock.OrderLine, told bool) []sheet.Cell {
	if !told {
		return nil
	}
	stands := "all here"
	switch over := l.Delivered - l.Count; {
	case over < 0:
		stands = fmt.Sprintf("%d short", -over)
	case over > 0:
		stands = fmt.Sprintf("%d over", over)
	}
	ordered, came := p.here("Count"), p.here("Delivered")
	return []sheet.Cell{whole(l.Delivered), livef(text(stands), `IF(%s<%s,(%s-%s)&" short",IF(%s>%s,(%s-%s)&" over","all here"))`, came, ordered, ordered, came, came, ordered, came, ordered)}
}

// size is a board's rough size as a mill writes it, in fractions.
func size(l stock.OrderLine, u measure.Style) string {
	if u == measure.StyleMM {
		return fmt.Sprintf("%.0f x %.0f x %.0f", l.Thickness.Millimetres(), l.Width.Millimetres(), l.Length.Millimetres())
	}
	return fmt.Sprintf("%s x %s x %s", measure.InchesText(l.Thickness), measure.InchesText(l.Width), measure.FeetInchesText(l.Length))
}

// planned is how many boards of a line are cut, without the spares.
func planned(in Input, l stock.OrderLine) int {
	n := 0
	for _, c := range in.Result.Plan.Cuts {
		b := c.Board
		if b.Free() && l.Species == b.Species && l.Thickness == b.Thickness.Value && l.Width == b.Width.Value && l.Length == b.Length.Value && l.Source == b.Source {
			n++
		}
	}
	if s := in.Result.Rules.Stock.Spares; s == 0 || n == 0 {
		return l.Count
	}
	return n
}

// orderFeet is a line's board feet; hardwood exactly on the half foot counts down
// and up in turn.
func orderFeet(p *page, u measure.Style) string {
	each, count := p.here("Board feet each"), p.here("Count")
	surface := inches(p.here("Width"), u) + "*" + inches(p.here("Length"), u) + "/144"
	return fmt.Sprintf(`%s*%s+IF(%s="yes",1,0)*(ROUND(%s+0.000000002,0)-ROUND(%s-0.000000002,0))*MAX(1,%s)*INT(%s/2)`,
		each, count, set("hardwood measure"), surface, surface, inches(p.here("Thickness"), u), count)
}
