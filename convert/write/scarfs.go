package write

import (
	"fmt"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// scarfs is what each saw cuts.
func scarfs(in Input) *page {
	u := in.units()
	p := table("Scarfs", "scarfs", col("Skin", 10), col("Thickness, "+unit(u), 11), col("Slope, to 1", 9), col("Run, "+unit(u), 10), col("Fence, degrees", 10), col("Rise over run", 11),
		col("Cut face, "+unit(u), 11), col("Glue area a joint, sq in", 13), col("Joints", 9), col("Fore-end saw cuts", 11), col("After-end saw cuts", 11), col("Gap, "+unit(u), 10))
	p.csv = true
	p.empty = "No scarfs: a list of strakes with thickness, width and length is needed."
	p.note("Outside feathers as set: every piece is the same parallelogram, and a port piece is a starboard piece turned end for end.")
	p.note(fmt.Sprintf("Gap: at the feather, for each %s degree by which the two saws' fences differ.", in.Result.Rules.Scarf.FenceError.Write()))
	for _, r := range in.Result.Scarfs {
		gap := number(r.Gap.Inches(), sheet.Inch)
		if u == measure.StyleMM {
			gap = number(r.Gap.Millimetres(), sheet.Inch)
		}
		p.line(text(string(r.Skin)), small(r.Thickness, u), number(r.Slope, sheet.Ratio), small(r.Run, u), number(float64(r.Angle), sheet.Ratio), text(fmt.Sprintf("1 in %g", r.Slope)),
			small(r.Face, u), number(r.GlueArea, sheet.Measure), whole(r.Joints), whole(r.ForeCuts), whole(r.AfterCuts), gap)
	}
	return p
}
