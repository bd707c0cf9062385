package write

import (
	"fmt"

	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/stock"
	"strakebook/convert/sheet"
)

// Lines is the few figures that matter, for the Summary sheet and the terminal.
func Lines(in Input) [][2]string {
	var all [][2]string
	add := func(what, figure string, args ...any) {
		all = append(all, [2]string{what, fmt.Sprintf(figure, args...)})
	}
	for _, t := range in.Tables {
		if t.Skip {
			add("Left out", "%s at %s!%s, as the guide says", t.Table, t.Sheet, t.Range)
			continue
		}
		add("Read", "%s at %s!%s, %d lines", t.Table, t.Sheet, t.Range, t.Lines)
	}
	add("Findings", "%s", in.Findings.Tally())
	s := in.Result.Plan.Summary
	if s.Pieces > 0 {
		joints, strakes, given, uncut := 0, 0, 0, 0
		for _, r := range in.Result.Runs {
			joints += len(r.Joints)
			if len(r.Pieces) == 0 {
				uncut++
			}
			if r.Given {
				given++
			} else {
				strakes++
			}
		}
		if strakes > 0 {
			add("Strakes", "%d, of %d pieces with %d scarfs", strakes, s.Pieces-given, joints)
		}
		if uncut > 0 {
			add("Not cut", "%d strakes are in no pieces, for the reason that Warnings gives: no figure of boards counts them", uncut)
		}
		if given > 0 {
			add("Pieces given", "%d, cut square", given)
		}
	}
	if s.Unserved > 0 && len(in.Job.Rack) > 0 {
		add("No board", "for %d of the %d pieces, %s in all: board feet, waste and cost are of the others", s.Unserved, s.Pieces, in.units().Long(s.Lacking))
	}
	if s.Boards > 0 {
		add("Boards", "%d, %s; %.1f per cent of it waste (%.1f per cent on the net)", s.Boards, boardMeasure(in), s.WasteOfBought, s.WasteOnNet)
		if s.Bound > 0 {
			add("Least possible", "the lumber is within %.1f per cent of the least it could be", 100*(s.Spent-s.Bound)/s.Bound)
		}
		for _, l := range in.Result.Plan.Longer {
			add("A longer length", "%s", longer(in, l))
		}
		if n, which := stays(in.Result.Plan.Stay); n > 0 {
			add("Stay on the rack", "%d boards: %s%s", n, which, passedOver(in.Result.Plan.Stay, s.Priced))
		}
	}
	if n := len(in.Result.Bevels); n > 0 {
		add("Bevels", "%d edges to saw%s", n, unused(in.Result.Bevels))
	}
	if in.Result.Hull != nil {
		add("Hull", "%d %ss drawn from the offsets", len(in.Result.Hull.Stations), in.Result.Hull.Places)
	}
	return all
}

// summary is the few figures that matter, what to look at first, and which of the
// other sheets hold nothing.
func summary(in Input, others []*page, list, sticks *page) *page {
	p := table("Summary", "summary", col("What", 25), col("Figure", 16), col("Particulars", 53))
	p.note("Lines in words, here and on every sheet, are as worked out when this book was made; figures follow the boxes of the Settings sheet. Hand this book back to have the words follow too.")
	for _, l := range Lines(in) {
		p.line(text(l[0]), sheet.Cell{}, words(l[1]))
	}
	lumber(in, p, list, sticks)
	skins(in, p, list)
	for i, f := range in.Findings {
		if i == 5 || f.Severity == finding.Note {
			break
		}
		p.line(text("Look at first"), in.linked(text(f.Cell.String()), f.Cell), words(f.Text))
	}
	for _, q := range others {
		if len(q.rows) == 0 && q.empty != "" && q.called != "Warnings" && q.called != "Figures" {
			p.line(text("Left out"), sheet.Cell{}, words(q.called+": "+q.empty))
		}
	}
	return p
}

// lumber is what the boards come to, following the settings.
func lumber(in Input, p, list, sticks *page) {
	s := in.Result.Plan.Summary
	if s.Boards == 0 {
		return
	}
	p.line(text("Sticks that no longer fit"), livef(whole(0), `COUNTIF(%s,"does not fit")`, sticks.span("Still fits")), words("after a change of the settings in this book; nought as worked out"))
	p.line(text("Board feet bought"), livef(number(float64(s.BoardFeet), sheet.Measure), "SUM(%s)", sticks.span("Board feet")), words("of all boards cut, rack and mill"))
	bought, net := p.at("Figure", len(p.rows)-1), p.at("Figure", len(p.rows))
	p.line(text("Board feet in the pieces"), livef(number(float64(s.NetFeet), sheet.Measure), "SUM(%s)", list.span("Board feet")), words(placed(s)+"by their own thickness, greatest width and length"))
	p.line(text("Waste, per cent bought"), livef(number(s.WasteOfBought, sheet.Percent), "100*(%s-%s)/%s", bought, net, bought), words("of what is bought"))
	p.line(text("Waste, per cent on the net"), livef(number(s.WasteOnNet, sheet.Percent), "100*(%s-%s)/%s", bought, net, net), words("to add to what is in the pieces"))
	if in.units() == measure.StyleMM {
		p.line(text("Lumber bought, cubic m"), number(cubicBought(in), sheet.Fine), words("of all boards cut, by their own thickness, width and length"))
	}
	if s.Priced {
		p.line(text("Cost"), livef(number(s.Cost, sheet.Money), "SUM(%s)", sticks.span("Cost")), words("of all boards cut, at the prices on the Settings sheet"))
	}
}

// unused is what is said of schedules worked out from the hull though bevels were
// handed in for them.
func unused(all []bevel.Schedule) string {
	n := 0
	for _, s := range all {
		if s.Unused {
			n++
		}
	}
	if n == 0 {
		return ""
	}
	return fmt.Sprintf(", %d of them worked out from the hull though bevels were handed in: those could not be laid out, see Warnings", n)
}

// placed says which pieces the net is of, where not all have a board.
func placed(s stock.Summary) string {
	if s.Unserved == 0 {
		return ""
	}
	return fmt.Sprintf("of the %d pieces that have a board, ", s.Pieces-s.Unserved)
}
