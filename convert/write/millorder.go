package write

import (
	"strings"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// millOrder is what to send for, on one page.
func millOrder(in Input) *page {
	u := in.units()
	p := table("Mill order", "mill order", col("Count", 8), col("Species", 17), col("Thickness, "+unit(u), 11), col("Width, "+unit(u), 10), col("Length, "+longUnit(u), 12),
		col("Board feet each", 11), col("Board feet", 12), col("Note", 26))
	p.csv = true
	p.empty = "Nothing to order: give mill lengths in the table of boards, with their count left blank."
	if in.Result.Rules.Stock.Hardwood {
		p.note("Rough sizes. Board feet by surface measure to the whole foot, times thickness.")
	} else {
		p.note("Rough sizes. Board feet: thickness under 1 in counts as 1 in.")
	}
	total := measure.BoardFeet(0)
	for _, l := range in.Result.Plan.Order {
		total += l.Feet
		p.line(whole(l.Count), text(l.Species), small(l.Thickness, u), small(l.Width, u), long(l.Length, u),
			number(float64(l.EachFeet), sheet.Measure), number(float64(l.Feet), sheet.Measure), words(strings.TrimSpace(l.Source+" "+l.Note)))
	}
	if p.lines() > 0 {
		p.aside(sheet.Cell{}, opens("Total"), sheet.Cell{}, sheet.Cell{}, sheet.Cell{}, sheet.Cell{}, number(float64(total), sheet.Measure))
	}
	return p
}
