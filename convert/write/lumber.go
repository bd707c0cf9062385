package write

import (
	"fmt"
	"strings"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// cutList is every piece, in the order of the work, with its board.
func cutList(in Input) *page {
	u := in.Result.Rules.Yard.Units
	p := &page{name: "Cut list", title: "cut list", wide: true, group: map[int]bool{}, filter: true,
		notes:  []string{"Lengths are long point to long point, both scarfs included. Blanks are cross-cut square, then scarfed."},
		heads:  []string{"Mark", "Skin", "Strake", "Side", "Piece", "Species", "Thickness, " + unit(u), "Width, " + unit(u), "Length, " + longUnit(u), "Fore end", "After end", "Board", "Note"},
		widths: []float64{13, 9, 9, 11, 9, 14, 10, 9, 12, 21, 21, 13, 24},
		empty:  "No pieces: a list of strakes with thickness, width and length is needed."}
	for _, q := range in.Result.Plan.Pieces {
		board, note := "", ""
		if q.Board >= 0 {
			board = in.Result.Plan.Cuts[q.Board].Mark
		} else if len(in.Job.Rack) > 0 {
			note = "no board was found"
		}
		p.rows = append(p.rows, []sheet.Cell{text(q.Mark), text(string(q.Skin)), text(q.Strake), text(q.Side.String()),
			text(fmt.Sprintf("%d of %d", q.Place, q.Of)), text(q.Species), small(q.Thickness, u), small(q.Width, u), long(q.Length, u),
			text(q.Fore.String()), text(q.Aft.String()), text(board), text(note)})
	}
	return p
}

// millOrder is what to send for, on one page.
func millOrder(in Input) *page {
	u := in.Result.Rules.Yard.Units
	p := &page{name: "Mill order", title: "mill order", filter: false,
		notes:  []string{"Rough sizes. Board feet: thickness under 1 in counts as 1 in."},
		heads:  []string{"Count", "Species", "Thickness, " + unit(u), "Width, " + unit(u), "Length, " + longUnit(u), "Board feet each", "Board feet", "Note"},
		widths: []float64{8, 16, 11, 10, 12, 11, 12, 24},
		empty:  "Nothing to order: give mill lengths in the table of boards, with their count left blank."}
	if in.Result.Rules.Stock.Hardwood {
		p.notes[0] = "Rough sizes. Board feet by surface measure to the whole foot, times thickness."
	}
	total := measure.BoardFeet(0)
	for _, l := range in.Result.Plan.Order {
		total += l.Feet
		p.rows = append(p.rows, []sheet.Cell{whole(l.Count), text(l.Species), small(l.Thickness, u), small(l.Width, u), long(l.Length, u),
			number(float64(l.EachFeet), sheet.Measure), number(float64(l.Feet), sheet.Measure), text(strings.TrimSpace(l.Source + " " + l.Note))})
	}
	if len(p.rows) > 0 {
		p.rows = append(p.rows, []sheet.Cell{{}, opens("Total"), {}, {}, {}, {}, number(float64(total), sheet.Measure)})
	}
	return p
}

// scarfs is what each saw cuts.
func scarfs(in Input) *page {
	u := in.Result.Rules.Yard.Units
	p := &page{name: "Scarfs", title: "scarfs", wide: true,
		notes: []string{"Outside feathers as set: every piece is the same parallelogram, and a port piece is a starboard piece turned end for end.",
			fmt.Sprintf("Gap: at the feather, for each %s degree by which the two saws' fences differ.", in.Result.Rules.Scarf.FenceError.Write())},
		heads:  []string{"Skin", "Thickness, " + unit(u), "Slope, to 1", "Run, " + unit(u), "Fence, degrees", "Rise over run", "Cut face, " + unit(u), "Glue area a joint, sq in", "Joints", "Fore-end saw cuts", "After-end saw cuts", "Gap, " + unit(u)},
		widths: []float64{10, 11, 9, 10, 10, 11, 11, 13, 9, 11, 11, 10},
		empty:  "No scarfs: a list of strakes with thickness, width and length is needed."}
	for _, r := range in.Result.Scarfs {
		gap := number(r.Gap.Inches(), sheet.Inch)
		if u == measure.StyleMM {
			gap = number(r.Gap.Millimetres(), sheet.Inch)
		}
		p.rows = append(p.rows, []sheet.Cell{text(string(r.Skin)), small(r.Thickness, u), number(r.Slope, sheet.Ratio), small(r.Run, u), number(float64(r.Angle), sheet.Ratio),
			text(fmt.Sprintf("1 in %g", r.Slope)), small(r.Face, u), number(r.GlueArea, sheet.Measure), whole(r.Joints), whole(r.ForeCuts), whole(r.AfterCuts), gap})
	}
	return p
}

// joints is where the middle of each scarf falls, a strake a row.
func joints(in Input) *page {
	u := in.Result.Rules.Yard.Units
	most := 0
	for _, r := range in.Result.Runs {
		most = max(most, len(r.Joints))
	}
	p := &page{name: "Joints", title: "joints along the strakes", wide: true, filter: true,
		notes:  []string{"A joint's place is the middle of its scarf, from the strake's fore end. Strakes count from the sheer down."},
		heads:  []string{"Skin", "Strake", "Side", "Length, " + longUnit(u), "Pieces"},
		widths: []float64{9, 10, 11, 13, 8},
		empty:  "No joints: a list of strakes with thickness, width and length is needed."}
	for i := range most {
		p.heads = append(p.heads, fmt.Sprintf("Joint %d, %s", i+1, longUnit(u)))
		p.widths = append(p.widths, 12)
	}
	for _, r := range in.Result.Runs {
		row := []sheet.Cell{text(string(r.Skin)), text(r.Name), text(r.Side.String()), long(r.Length, u), whole(len(r.Pieces))}
		for _, j := range r.Joints {
			row = append(row, long(j, u))
		}
		p.rows = append(p.rows, row)
	}
	return p
}

// boards is every board cut and what comes off it.
func boards(in Input) *page {
	u := in.Result.Rules.Yard.Units
	s := in.Result.Plan.Summary
	p := &page{name: "Stock", title: "boards and what is cut from them", wide: true, filter: true,
		heads:  []string{"Board", "From", "Species", "Thickness, " + unit(u), "Width, " + unit(u), "Length, " + longUnit(u), "Lanes", "Pieces", "Used, " + longUnit(u), "Longest left, " + longUnit(u), "Cost"},
		widths: []float64{14, 14, 14, 10, 9, 12, 7, 60, 12, 12, 10},
		empty:  "No boards: a table of boards (species, thickness, width, length, count) is needed."}
	if s.Boards > 0 {
		p.notes = append(p.notes, fmt.Sprintf("Waste: %.1f per cent of what is bought, or %.1f per cent to add to the net.", s.WasteOfBought, s.WasteOnNet))
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
		p.rows = append(p.rows, []sheet.Cell{text(c.Mark), text(c.Board.Source), text(c.Board.Species), small(c.Board.Thickness.Value, u), small(c.Board.Width.Value, u), long(c.Board.Length.Value, u),
			whole(c.Lanes), words(strings.Join(lanes, " | ")), long(c.Used, u), long(c.Left, u), number(c.Cost, sheet.Money)})
	}
	return p
}
