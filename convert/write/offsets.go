package write

import (
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// offsets is the table as read, in one notation, and below each line how far its
// figures lie off a fair line through them. Figures that a finding is about are
// marked.
func offsets(in Input) *page {
	u := in.units()
	p := table("Offsets", "offsets as read, and how far off fair", col("View", 12), col("Line", 12), col("Figures", 12))
	p.csv, p.keys = true, 3
	p.empty = "No offsets: a table of half-breadths and heights by station is needed."
	p.note("Off fair: as read less faired, in " + steps(u) + ", + where the figure is the greater. Marked figures have a line on the Warnings sheet.")
	doubt := doubts(in.Findings)
	i := 0
	for _, o := range in.Job.Offsets {
		for k := len(p.cols) - 3; k < len(o.Stations); k++ {
			p.add(col(o.Stations[k].Name, 8.5))
		}
		for _, l := range o.Lines {
			p.line(append([]sheet.Cell{text(l.View.String()), text(l.Name), text("as read")}, read(l, o.Form, doubt)...)...)
			if i < len(in.Result.Fair) && in.Result.Fair[i].Smallest > 0 {
				p.line(append([]sheet.Cell{text(l.View.String()), text(l.Name), text("off fair")}, offFair(in.Result.Fair[i], u)...)...)
			}
			i++
		}
	}
	return p
}

// steps is what departures are counted in.
func steps(u measure.Style) string {
	if u == measure.StyleMM {
		return "mm"
	}
	return "eighths of an inch"
}

// read is a line's figures in the table's own notation.
func read(l hull.Line, form measure.Form, doubt map[source.Cell]finding.Severity) []sheet.Cell {
	var all []sheet.Cell
	for _, v := range l.Values {
		c := sheet.Cell{Kind: sheet.Text, Text: v.Text, Style: sheet.Feet}
		if v.OK() {
			c.Text = form.Write(v.Value)
		}
		switch worst, found := doubt[v.Cell]; {
		case found && worst == finding.Error:
			c.Style = sheet.Wrong
		case found && worst == finding.Warning:
			c.Style = sheet.Unsure
		}
		all = append(all, c)
	}
	return all
}

// offFair is how far a line's figures lie off fair, a station each.
func offFair(f hull.LineReport, u measure.Style) []sheet.Cell {
	var all []sheet.Cell
	for i, d := range f.Departure {
		c := sheet.Cell{}
		switch {
		case i < len(f.Given) && !f.Given[i]:
		default:
			c = number(stepsOf(d, u), sheet.Departure)
		}
		all = append(all, c)
	}
	return all
}

// doubts is the worst that is said of each cell.
func doubts(l finding.List) map[source.Cell]finding.Severity {
	all := map[source.Cell]finding.Severity{}
	for _, f := range l {
		if worst, found := all[f.Cell]; f.Cell.Ref() != "" && (!found || f.Severity > worst) {
			all[f.Cell] = f.Severity
		}
	}
	return all
}
