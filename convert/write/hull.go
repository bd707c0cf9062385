package write

import (
	"cmp"
	"fmt"
	"slices"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// hullSheet is what follows from the offsets: girths, and of every strake as
// lined off its length, where it runs from and to, and its width at each station.
func hullSheet(in Input) *page {
	u := in.units()
	p := table("Hull", "the hull: girths, lengths and widths", col("Of", 9), col("Strake", 11), col("Side", 10), col("Figure", 13),
		col("Length, "+longUnit(u), 12), col("Listed, "+longUnit(u), 12), col("Fore end at, "+longUnit(u), 12), col("After end at, "+longUnit(u), 12))
	p.csv = true
	p.opened = []string{"Under"}
	p.empty = "No hull: a table of offsets with two lines or more at each station is needed."
	s := in.Result.Hull
	if s == nil {
		return p
	}
	p.stations(s)
	at := s.Places.String()
	p.note("Computed shapes are for planning and checking. The hull on the stocks and the batten rule: measure before you cut. Scantlings are the designer's and the surveyor's.")
	p.note("Girths are of half the hull, square up the section in the " + at + "'s plane. Widths are in " + map[bool]string{true: "millimetres", false: "inches"}[u == measure.StyleMM] + ", on the surface named, from the sheer down. Lengths are those of the longer edge, with " + u.Long(in.Result.Rules.Hull.ExtraAtEnds) +
		" left on at each end; listed: as the list of strakes has it. Ends are placed as the " + at + "s are. Between " + at + "s, and where a " + at + " gives too little, figures follow a fair line through the others.")
	if slices.ContainsFunc(s.Linings, func(l hull.Lining) bool { return l.By == hull.ByWidths }) {
		p.note("Laid first, down: of strakes laid from a line, the girth from the sheer to the upper edge of the first of them. To taper and stealer: from where to where along the hull more is left below the last parallel strake than widths may be out by, and as much as the narrowest plank.")
	}
	p.aside(opens("Girths on the surface the offsets are to: " + s.Surface.String()))
	p.line(stationRow(s, "position", func(g hull.Girth) sheet.Cell { return long(g.At, u) })...)
	p.line(stationRow(s, "girth", func(g hull.Girth) sheet.Cell { return some(g.Girth, u, long) })...)
	p.line(stationRow(s, "from", func(g hull.Girth) sheet.Cell { return text(cmp.Or(g.From, g.Lacks)) })...)
	p.line(stationRow(s, "to", func(g hull.Girth) sheet.Cell { return text(g.To) })...)
	if len(s.Lines) > 0 {
		p.aside(opens("True lengths of the lines of the table"))
		for _, l := range s.Lines {
			p.line(text("line"), text(l.Name), text(""), text("true length"), long(l.Length, u), sheet.Cell{}, text(l.From), text(l.To))
		}
	}
	for i := range s.Linings {
		liningRows(in, p, &s.Linings[i])
	}
	return p
}

// stations adds a column for each station; a name that is taken is numbered. The
// first columns stand on every paper that the stations take.
func (p *page) stations(s *hull.Shape) {
	p.keys = min(len(p.cols), 4)
	times := map[string]int{}
	for _, g := range s.Stations {
		name := g.Name
		times[g.Name]++
		if n := times[g.Name]; n > 1 {
			name = fmt.Sprintf("%s (%d)", g.Name, n)
		}
		p.add(col(name, 9))
	}
}

// some is a length as a cell, blank where there is none.
func some(l measure.Length, u measure.Style, as func(measure.Length, measure.Style) sheet.Cell) sheet.Cell {
	if l <= 0 {
		return sheet.Cell{}
	}
	return as(l, u)
}

// stationRow is one figure of the hull at every station.
func stationRow(s *hull.Shape, figure string, of func(hull.Girth) sheet.Cell) []sheet.Cell {
	row := []sheet.Cell{text("hull"), {}, {}, text(figure), {}, {}, {}, {}}
	for _, g := range s.Stations {
		row = append(row, of(g))
	}
	return row
}

// liningRows is one skin as lined off.
func liningRows(in Input, p *page, l *hull.Lining) {
	u := in.units()
	if len(l.Strakes) == 0 {
		return
	}
	head := fmt.Sprintf("%s skin, %s: %d strakes a side, %s, on the surface %s", l.Skin, l.Side, len(l.Strakes), l.By, l.On)
	if l.By == hull.ByWidths && l.First < len(l.Strakes) {
		head += fmt.Sprintf("; the first, %s, along %s", l.Strakes[l.First].Name, cmp.Or(l.From, "the sheer"))
	}
	p.aside(opens(head))
	for k, strake := range l.Strakes {
		row := []sheet.Cell{text(string(l.Skin)), text(strake.Name), text(l.Side.String()), text("width"), some(strake.Length+extra(in, strake), u, long), {}, {}, {}}
		if s, _ := hull.Listed(in.Job.Strakes, l.Skin, strake.Name, l.Side); s.Length.OK() {
			row[5] = long(s.Length.Value, u)
		}
		if fore, after, ok := l.Ends(k); ok {
			row[6], row[7] = long(fore, u), long(after, u)
		}
		for _, w := range strake.Widths {
			row = append(row, some(fine(w, u), u, small))
		}
		p.line(row...)
	}
	firstRow(p, l, u)
	leftRows(p, l, u)
}

// firstRow is where on each mould the first of strakes that are laid from a line
// starts: the girth down from the sheer to its upper edge.
func firstRow(p *page, l *hull.Lining, u measure.Style) {
	if l.From == "" || l.First >= len(l.Strakes) {
		return
	}
	seam := l.Seams[l.First]
	row := []sheet.Cell{text(string(l.Skin)), text(l.Strakes[l.First].Name), text(l.Side.String()), text("laid first, down"), some(seam.Length, u, long), {}, {}, {}}
	for _, at := range seam.Points {
		c := sheet.Cell{}
		if at.Crosses {
			c = small(fine(at.Girth, u), u)
		}
		row = append(row, c)
	}
	p.line(row...)
}

// extra is what is left on at the ends of a strake whose length is known.
func extra(in Input, s hull.Lined) measure.Length {
	if s.Length == 0 {
		return 0
	}
	return 2 * in.Result.Rules.Hull.ExtraAtEnds
}

// leftRows is what remains below the last strake, where anything does, and the
// stretches of the hull on which strakes must taper for it and on which a stealer
// can be fitted.
func leftRows(p *page, l *hull.Lining, u measure.Style) {
	any := false
	row := []sheet.Cell{text(string(l.Skin)), {}, text(l.Side.String()), text("left below"), {}, {}, {}, {}}
	for _, left := range l.Left {
		any = any || left > 0
		row = append(row, some(fine(left, u), u, small))
	}
	if any {
		p.line(row...)
	}
	for _, r := range l.Tapers {
		p.line(text(string(l.Skin)), text(""), text(l.Side.String()), text("to taper"), long(r.To-r.From, u), sheet.Cell{}, long(r.From, u), long(r.To, u))
	}
	for _, r := range l.Stealers {
		p.line(text(string(l.Skin)), text(""), text(l.Side.String()), text("stealer"), long(r.To-r.From, u), sheet.Cell{}, long(r.From, u), long(r.To, u))
	}
}
