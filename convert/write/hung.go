package write

import (
	"fmt"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// hung is how the work as hung stands against its lining-off lines, and how wide
// the next planks must be to bring it back.
func hung(in Input) *page {
	u := in.units()
	p := table("As hung", "as hung: ahead of and behind the lining-off lines", col("Skin", 8), col("Strake hung", 9), col("Side", 11), col(in.stationHead(), 9), col("Measured from", 10), col("To corner", 9),
		col("Girth, "+longUnit(u), 12), col("Line, "+longUnit(u), 12), col("Off, "+unit(u), 9), col("Stands", 10), col("Back after", 8))
	most := 0
	for _, r := range in.Result.Hung {
		most = max(most, len(r.Next))
	}
	for i := range most {
		p.add(col(fmt.Sprintf("Next %d", i+1), 8))
		p.add(col(fmt.Sprintf("Width %d, %s", i+1, unit(u)), 9))
		p.add(col(fmt.Sprintf("Set out %d, %s", i+1, unit(u)), 9))
	}
	p.csv = true
	p.empty = "Nothing as hung: a table of girths measured to the edges hung is needed."
	p.note("Ahead: farther from the sheer than the line. Set out: the batten set out, + for a plank wider than lined off, - in. Back after: so many planks until the work is on its line again. Measure again after every plank: the hull on the stocks rules.")
	for _, r := range in.Result.Hung {
		row := []sheet.Cell{text(string(r.Skin)), text(r.Strake), text(r.Side.String()), text(r.Station), text(r.From.String()), text(r.Corner.String()),
			long(r.Measured, u), long(fine(r.Wanted, u), u), small(fine(r.Ahead, u), u), text(stands(r.Ahead)), whole(r.Back)}
		for _, n := range r.Next {
			row = append(row, text(n.Strake), small(fine(n.Width, u), u), small(fine(n.SetOut, u), u))
		}
		p.line(row...)
	}
	return p
}

// stands is the word for how far the work is off.
func stands(ahead measure.Length) string {
	switch ahead = ahead.Round(measure.SixtyFourth); {
	case ahead > 0:
		return "ahead"
	case ahead < 0:
		return "behind"
	}
	return "on the line"
}
