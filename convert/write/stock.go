package write

import (
	"fmt"
	"strings"

	"strakebook/convert/sheet"
)

// boards is every board cut and what comes off it.
func boards(in Input) *page {
	u := in.units()
	p := table("Stock", "boards and what is cut from them", col("Board", 14), col("From", 14), col("Species", 14), col("Thickness, "+unit(u), 10), col("Width, "+unit(u), 9),
		col("Length, "+longUnit(u), 12), col("Lanes", 7), col("Pieces", 60), col("Used, "+longUnit(u), 12), col("Longest left, "+longUnit(u), 12), col("Cost", 10))
	p.csv = true
	p.empty = "No boards: a table of boards (species, thickness, width, length, count) is needed."
	if s := in.Result.Plan.Summary; s.Boards > 0 {
		p.note(fmt.Sprintf("Waste: %.1f per cent of what is bought, or %.1f per cent to add to the net.", s.WasteOfBought, s.WasteOnNet))
	}
	for _, c := range in.Result.Plan.Cuts {
		var lanes []string
		for i, k := range c.Pieces {
			mark := in.Result.Plan.Pieces[k].Mark
			if i > 0 && c.Lane[i] == c.Lane[i-1] {
				lanes[len(lanes)-1] += ", " + mark
			} else {
				lanes = append(lanes, mark)
			}
		}
		p.line(text(c.Mark), text(c.Board.Source), text(c.Board.Species), small(c.Board.Thickness.Value, u), small(c.Board.Width.Value, u), long(c.Board.Length.Value, u),
			whole(c.Lanes), words(strings.Join(lanes, " | ")), long(c.Used, u), long(c.Left, u), number(c.Cost, sheet.Money))
	}
	return p
}
