package write

import (
	"fmt"
	"slices"

	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
	"strakebook/calc/scarf"
	"strakebook/calc/stock"
	"strakebook/convert/sheet"
)

// scarfs is what each saw cuts.
func scarfs(in Input) *page {
	u := in.units()
	p := table("Scarfs", "scarfs", col("Skin", 9), col("Thickness, "+unit(u), 10), col("Slope, to 1", 8), col("Run, "+unit(u), 9), col("Fence, degrees", 10), col("Rise over run", 10),
		col("Cut face, "+unit(u), 10), col("Widest, "+unit(u), 9), col("Glue area a joint, sq "+unit(u), 11), col("Joints", 8), col("Fore-end saw cuts", 10), col("After-end saw cuts", 10), col("Gap, "+unit(u), 9), col("Fore-end saw, in order", 21), col("After-end saw, in order", 21))
	p.worked(col("Made with, to 1", 9))
	p.csv = true
	p.empty = "No scarfs: a list of strakes with thickness, width and length is needed."
	p.note("One saw stands at each end of the shop, both fences alike: a board goes through the fore-end saw, then on to the after-end saw, in the order of the cut list, and is not turned.")
	p.note("In order: the first and the last piece that each saw cuts at this fence, in the order of the cut list. Rows are in the order in which the fences are set.")
	p.note("Outside feathers as set: every piece is the same parallelogram, and a port piece is a starboard piece turned end for end. The pieces at a strake's ends get one cut.")
	p.note("Thickness: of the boards as dressed, the wood that is worked of a plank's back included: boards are scarfed before that is done.")
	p.note("Gap: how far a scarf stands open at the feather when the two fences differ by the fence difference on the Settings sheet.")
	nibs := func() string { return fmt.Sprintf("MAX(0,%s-2*%s)", p.here("Thickness"), set("scarf nib")) }
	p.note("A slope in a box may be changed here, for this skin and thickness alone, to see what the pieces come to. To have it worked out, write it on the Settings sheet or beside the strakes, and hand this book back.")
	runs := in.runs()
	for i, r := range in.Result.Scarfs {
		p.name(slopeName(i), "Slope")
		n := live(number(r.Slope, sheet.Input), in.slopeFrom(r))
		gap := small(r.Gap, u)
		gap.Style = sheet.Fine
		glue, area := number(r.GlueArea, sheet.Measure), fmt.Sprintf("%s*%s", p.here("Widest"), p.here("Cut face"))
		if u == measure.StyleMM {
			glue.Number = r.Width.Millimetres() * r.Face.Millimetres()
		}
		p.line(text(string(r.Skin)), small(r.Thickness, u), n, livef(small(r.Run, u), "%s*%s", p.here("Slope"), nibs()),
			livef(number(float64(r.Angle), sheet.Ratio), "DEGREES(ATAN(1/%s))", p.here("Slope")), livef(text(fmt.Sprintf("1 in %g", r.Slope)), `"1 in "&%s`, p.here("Slope")),
			livef(small(r.Face, u), "%s*SQRT(%s^2+1)", nibs(), p.here("Slope")), small(r.Width, u), live(glue, area),
			whole(r.Joints), whole(r.Joints), whole(r.Joints), livef(gap, "%s*ABS(TAN(RADIANS(%s)))", p.here("Cut face"), set("fence difference")),
			text(in.sawnInOrder(runs, r, func(q stock.Piece) stock.End { return q.Fore })), text(in.sawnInOrder(runs, r, func(q stock.Piece) stock.End { return q.Aft })), number(r.Slope, sheet.Ratio))
	}
	return p
}

// sawnInOrder is the first and the last piece that a saw cuts at a row's fence.
func (in Input) sawnInOrder(runs map[runKey]lay.Run, r scarf.Row, at func(stock.Piece) stock.End) string {
	first, last := "", ""
	for _, q := range in.Result.Plan.Pieces {
		if at(q) == stock.Hood || at(q) == stock.Butt || !scarfedAs(runs[keyOf(q.Skin, q.Strake, q.Side)], r) {
			continue
		}
		if last = q.Mark; first == "" {
			first = last
		}
	}
	if first == last {
		return first
	}
	return first + " to " + last
}

// slopeFrom is the setting that a row's slope follows; "" where strakes have
// their own.
func (in Input) slopeFrom(r scarf.Row) string {
	of := func(run lay.Run) bool { return scarfedAs(run, r) }
	own := func(run lay.Run) bool { return of(run) && run.Strake.Slope.OK() }
	switch {
	case slices.ContainsFunc(in.Result.Runs, own):
		return ""
	case r.Skin == hull.Strips:
		return set("strip scarf slope")
	}
	return set("plank scarf slope")
}

func scarfedAs(run lay.Run, r scarf.Row) bool {
	return run.Skin == r.Skin && run.Through() == r.Thickness && run.Slope == r.Slope
}

// slope is a run's scarf slope as formulas take it: from its row of the Scarfs
// sheet, where it may be changed.
func slope(in Input, run lay.Run) string {
	i := slices.IndexFunc(in.Result.Scarfs, func(r scarf.Row) bool { return scarfedAs(run, r) })
	if i < 0 {
		return figure(run.Slope)
	}
	return slopeName(i)
}

func slopeName(row int) string { return fmt.Sprint(sheet.NamePrefix, "slope_", row+1) }
