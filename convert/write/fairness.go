package write

import (
	"cmp"
	"math"
	"slices"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// fairness is how fair the lines of the tables of offsets are, and how fair they
// are at each station, the worst first of both: that which most is found in, then
// that with the largest departure.
func fairness(in Input) *page {
	u := in.units()
	p := table("Fairness", "how fair the lines are", col("View", 14), col("Line or "+in.places().String(), 18), col("Roughness, "+steps(u), 12), col("Largest departure, "+steps(u), 12), col("At", 24), col("Findings", 9), col("Smallest fault seen", 14))
	p.empty = "No lines to judge: a table of offsets is needed."
	p.note("The worst first. Roughness is the middle departure from fair; + where the figure is the greater. A fault smaller than the last column may go unseen.")
	line, station := 0, 0
	for _, o := range in.Result.Offsets {
		lines := slices.Clone(in.Result.Fair[line:][:len(o.Lines)])
		stations := slices.Clone(in.Result.Stations[station:][:len(o.Stations)])
		line, station = line+len(o.Lines), station+len(o.Stations)
		slices.SortStableFunc(lines, func(a, b hull.LineReport) int { return worse(a.Findings, b.Findings, a.Largest, b.Largest) })
		slices.SortStableFunc(stations, func(a, b hull.StationReport) int { return worse(a.Findings, b.Findings, a.Largest, b.Largest) })
		step := stepsOf(max(1, o.Resolution), u)
		for _, f := range lines {
			if f.Smallest > 0 || f.Findings > 0 {
				p.line(append(fairLine(f.View.String(), f.Line, f.Smallest > 0, f.Roughness*step, f.Largest*step, f.Station, f.Findings), smallest(f, o.Form))...)
			}
		}
		for _, s := range stations {
			if s.Lines > 0 || s.Findings > 0 {
				p.line(fairLine(o.Places.String(), s.Station, s.Lines > 0, s.Roughness*step, s.Largest*step, s.Line, s.Findings)...)
			}
		}
	}
	return p
}

// worse puts the worse of two reports first.
func worse(foundA, foundB int, largestA, largestB float64) int {
	return cmp.Or(cmp.Compare(foundB, foundA), cmp.Compare(math.Abs(largestB), math.Abs(largestA)))
}

// fairLine is the cells that a line and a station have alike. One that is too
// short to be judged along itself has findings alone.
func fairLine(view, name string, judged bool, roughness, largest float64, at string, findings int) []sheet.Cell {
	all := []sheet.Cell{text(view), text(name), {}, {}, {}, whole(findings)}
	if judged {
		all[2], all[3], all[4] = number(roughness, sheet.Ratio), number(largest, sheet.Departure), text(at)
	}
	return all
}

// smallest is the smallest fault that would have been seen inside a line.
func smallest(f hull.LineReport, form measure.Form) sheet.Cell {
	if f.Smallest == 0 {
		return sheet.Cell{}
	}
	return sheet.Cell{Kind: sheet.Text, Text: form.Write(f.Smallest), Style: sheet.Feet}
}
