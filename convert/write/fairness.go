package write

import "strakebook/convert/sheet"

// fairness is how fair each line of the table of offsets is.
func fairness(in Input) *page {
	p := table("Fairness", "how fair the lines are", col("View", 14), col("Line", 18), col("Roughness", 11), col("Largest departure", 12), col("At station", 11), col("Smallest fault seen", 14))
	p.empty = "No lines to judge: a table of offsets is needed."
	p.note("Roughness, the middle departure, and the largest are in the table's own smallest step. A fault smaller than the last column may go unseen.")
	i := 0
	for _, o := range in.Job.Offsets {
		for _, l := range o.Lines {
			if i < len(in.Result.Fair) && in.Result.Fair[i].Smallest > 0 {
				f := in.Result.Fair[i]
				p.line(text(l.View.String()), text(l.Name), number(f.Roughness, sheet.Ratio), number(f.Largest, sheet.Departure), text(f.Station),
					sheet.Cell{Kind: sheet.Text, Text: o.Form.Write(f.Smallest), Style: sheet.Feet})
			}
			i++
		}
	}
	return p
}
