package write

import (
	"fmt"
	"strings"

	"strakebook/calc/hull"
	"strakebook/convert/sheet"
)

// corrected is the table of offsets with what was decided in place of what it
// reads: the figures changed are marked, and the lines they are on say what they
// were and at which revision they changed. It is there only where one was.
func corrected(in Input) *page {
	p := table("Offsets corrected", "offsets corrected", col("View", 12), col("Line", 16))
	p.csv, p.keys = true, 2
	changes := in.changes()
	if len(changes) == 0 {
		return p
	}
	widest := p.stationColumns(in.Result.Offsets)
	p.add(col("Changed", 40))
	p.add(col("Revision", 12))
	for i, o := range in.Result.Offsets {
		p.ownStations(i, in.Result.Offsets)
		p.line(positions(o)...)
		for _, l := range o.Lines {
			p.line(in.correctedLine(l, o, widest)...)
		}
	}
	p.note(in.revision())
	for _, d := range changes {
		p.note(fmt.Sprintf("Changed: %s at %s, %s for %s (%s).", d.Line, in.places().Named(d.Station), d.Now, d.Reads, d.Why))
	}
	return p
}

// changes is what was decided otherwise than as it reads.
func (in Input) changes() []hull.Decided {
	var all []hull.Decided
	for _, d := range in.Result.Decided {
		if d.Now != d.Reads {
			all = append(all, d)
		}
	}
	return all
}

// revision is what dates the corrected table: the date that the book's settings
// give, for the clock is never asked.
func (in Input) revision() string {
	if d := in.Result.Rules.Yard.Date; d != "" {
		return "Revision of " + d + ": the marked figures are changed from the table as read, as the builder decided. The rest is as read."
	}
	return "Revision without a date: give date on the Settings sheet. The marked figures are changed from the table as read, as the builder decided. The rest is as read."
}

// positions is where a table's stations stand.
func positions(o hull.Offsets) []sheet.Cell {
	all := []sheet.Cell{text(""), text("Position")}
	for _, s := range o.Stations {
		c := sheet.Cell{Kind: sheet.Text, Text: s.At.Text, Style: sheet.Feet}
		if s.At.OK() {
			c.Text = o.Form.Write(s.At.Value)
		}
		all = append(all, c)
	}
	return all
}

// correctedLine is a line's figures as they are used, and at its end what of them
// was changed.
func (in Input) correctedLine(l hull.Line, o hull.Offsets, widest int) []sheet.Cell {
	all := append([]sheet.Cell{text(l.View.String()), text(l.Name)}, read(l, o.Form, nil)...)
	var was []string
	for k, v := range l.Values {
		if d, ok := in.decidedOf(v.Cell); ok && d.Now != d.Reads {
			all[2+k].Style = sheet.Unsure
			was = append(was, fmt.Sprintf("%s: %s for %s", o.Stations[k].Name, d.Now, d.Reads))
		}
	}
	if len(was) == 0 {
		return all
	}
	all = append(all, make([]sheet.Cell, 2+widest-len(all))...)
	return append(all, words(strings.Join(was, "; ")), text(in.Result.Rules.Yard.Date))
}

// jsonCorrected is the figures of the offsets that were changed.
func jsonCorrected(in Input) []object {
	var list []object
	for _, d := range in.changes() {
		list = append(list, object{"book": d.Cell.Book, "sheet": d.Cell.Sheet, "cell": d.Cell.Ref(), "line": d.Line, "station": d.Station,
			"reads": d.Reads, "now": d.Now, "why": d.Why, "revision": in.Result.Rules.Yard.Date})
	}
	return list
}
