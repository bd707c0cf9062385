package write

import (
	"fmt"
	"slices"

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
	p.stationColumns(in.Job.Offsets)
	i := 0
	for n, o := range in.Job.Offsets {
		p.ownStations(n, in.Job.Offsets)
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

// stationColumns adds a column for each station, headed by those of the first
// table.
func (p *page) stationColumns(tables []hull.Offsets) (widest int) {
	for n, o := range tables {
		for ; widest < len(o.Stations); widest++ {
			name := o.Stations[widest].Name
			if n > 0 {
				name = fmt.Sprint("column ", widest+1)
			}
			p.add(col(name, 8.5))
		}
	}
	return widest
}

// ownStations heads the lines of a later table with its own stations, where they
// are not those that the lines above stand under.
func (p *page) ownStations(n int, tables []hull.Offsets) {
	same := func(a, b hull.Station) bool { return a.Name == b.Name }
	if n == 0 || slices.EqualFunc(tables[n].Stations, tables[n-1].Stations, same) {
		return
	}
	all := make([]sheet.Cell, p.keys)
	all[1] = text(stationHeads[tables[n].Places])
	for _, s := range tables[n].Stations {
		all = append(all, text(s.Name))
	}
	p.line(all...)
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
