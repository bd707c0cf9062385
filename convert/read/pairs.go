package read

import (
	"fmt"
	"slices"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// sectionPoint is one point of a section given as a half-breadth and a height.
type sectionPoint struct {
	station string
	out, up source.Reading[measure.Length]
}

// longPairs reads sections kept as a list: station, half-breadth, height.
func (r *reader) longPairs(t *records) {
	table := t.found("offsets")
	cols := r.lengths(t, &table, "breadths", "heights", "position")
	r.listedFrom(t, cols)
	o := hull.Offsets{Form: cols["breadths"].form, Cell: t.page.cell(t.head, t.left)}
	o.Surface = r.surfaceOf(t.caption, t.page, o.Cell)
	var points []sectionPoint
	last := ""
	for _, row := range t.rows {
		station, ok := r.stationOf(t, row, &last)
		if !ok {
			r.unnamed(t, row, "station")
			continue
		}
		if !slices.ContainsFunc(o.Stations, func(s hull.Station) bool { return s.Name == station }) {
			o.Stations = append(o.Stations, hull.Station{Name: station, Cell: t.page.cell(row, t.cols["station"]), Transom: r.words.heading(station) == "transom"})
		}
		r.placeIn(t, row, cols, station)
		points = append(points, sectionPoint{station,
			r.length(t, row, "breadths", cols, "half-breadth at station "+station),
			r.length(t, row, "heights", cols, "height at station "+station)})
	}
	r.tableRead()
	r.listLay(t, o.Cell, o.Stations)
	if line, role, ok := r.titled(t.caption[:len(t.caption)-1]); ok && len(points) == len(o.Stations) {
		r.oneLine(o, table, points, line, role)
		return
	}
	r.sections(o, table, points, max(cols["breadths"].places, cols["heights"].places))
}

// oneLine makes offsets of a list with one point a station whose title names the line
// that runs through them: its half-breadths and its heights.
func (r *reader) oneLine(o hull.Offsets, table source.Table, points []sectionPoint, name string, role hull.Role) {
	out := hull.Line{Name: name + ": half-breadth", Role: role, View: hull.HalfBreadth, Cell: points[0].out.Cell}
	up := hull.Line{Name: name + ": height", Role: role, View: hull.Height, Cell: points[0].up.Cell}
	for _, p := range points {
		out.Values, up.Values = append(out.Values, p.out), append(up.Values, p.up)
		table.Digest += p.out.Text + "," + p.up.Text + ";"
	}
	o.Lines = []hull.Line{out, up}
	o.Fractions = o.Form.Unit == measure.Fractions
	o.Resolution = resolution(o.Form, 0, given(o.Lines))
	table.Stations, table.Lines = len(o.Stations), len(o.Lines)
	r.tables = append(r.tables, table)
	r.job.Offsets = append(r.job.Offsets, o)
}

// sections makes offsets of sections given point by point: heights that most
// stations share are waterlines, any other point is a line of its own.
func (r *reader) sections(o hull.Offsets, table source.Table, points []sectionPoint, decimals int) {
	at := map[string]int{}
	for i, s := range o.Stations {
		at[s.Name] = i
	}
	lines := map[measure.Length]int{}
	for _, h := range sharedHeights(points, len(o.Stations)) {
		lines[h] = len(o.Lines)
		l := hull.Line{Role: hull.Waterline, Values: make([]source.Reading[measure.Length], len(o.Stations))}
		o.Lines = append(o.Lines, l)
	}
	n := map[string]int{}
	for _, p := range points {
		n[p.station]++
		table.Digest += p.out.Text + "," + p.up.Text + ";"
		if !p.up.OK() {
			if p.out.OK() {
				r.add(finding.Finding{Kind: LineUnplaced, Cell: p.out.Cell, Reads: p.out.Text, Text: fmt.Sprintf("a half-breadth at station %s has no height beside it and was left", p.station)})
			}
			continue
		}
		i, ok := lines[p.up.Value]
		if ok && o.Lines[i].Values[at[p.station]].State != source.Blank {
			ok = false // two half-breadths at one height, as on a flat
		}
		if !ok {
			i = len(o.Lines)
			o.Lines = append(o.Lines, hull.Line{Name: fmt.Sprintf("point %d of station %s", n[p.station], p.station), Role: hull.Waterline, Values: make([]source.Reading[measure.Length], len(o.Stations))})
		}
		l := &o.Lines[i]
		l.Values[at[p.station]] = p.out
		if !l.At.OK() {
			l.At, l.Cell = p.up, p.up.Cell
		}
		if l.Name == "" {
			l.Name = "height " + p.up.Text
		}
	}
	o.Fractions = o.Form.Unit == measure.Fractions
	o.Resolution = resolution(o.Form, decimals, given(o.Lines))
	table.Stations, table.Lines = len(o.Stations), len(o.Lines)
	r.tables = append(r.tables, table)
	r.job.Offsets = append(r.job.Offsets, o)
}

// sharedHeights is the heights at which three stations in five or more have a point,
// from the lowest up.
func sharedHeights(points []sectionPoint, stations int) []measure.Length {
	at := map[measure.Length]map[string]bool{}
	for _, p := range points {
		if !p.up.OK() {
			continue
		}
		if at[p.up.Value] == nil {
			at[p.up.Value] = map[string]bool{}
		}
		at[p.up.Value][p.station] = true
	}
	var heights []measure.Length
	for h, named := range at {
		if 5*len(named) >= 3*stations {
			heights = append(heights, h)
		}
	}
	slices.Sort(heights)
	return heights
}

// pairBlock is one section's two columns.
type pairBlock struct {
	head    int
	out, up int // their columns
	station name
	at      source.Cell
	rows    []int
}

// pairs finds sections given as two columns each, half-breadth and height, under
// their station's name: side by side, or one below the other.
func (r *reader) pairs(p *page) {
	var blocks []pairBlock
	for row := 2; row <= p.rows; row++ {
		cols := p.filled[0][row]
		for i := 0; i+1 < len(cols); i++ {
			a, b := cols[i], cols[i+1]
			if b != a+1 {
				continue
			}
			first, second := r.axis(p.at(row, a)), r.axis(p.at(row, b))
			if first == "" || second == "" || first == second {
				continue
			}
			n, at, ok := r.over(p, row, a, b)
			if !ok {
				continue
			}
			k := pairBlock{head: row, out: a, up: b, station: n, at: at}
			if first == "heights" {
				k.out, k.up = b, a
			}
			for down := row + 1; down <= p.rows && (number(p.at(down, a)) || number(p.at(down, b))); down++ {
				k.rows = append(k.rows, down)
			}
			if len(k.rows) > 1 {
				blocks = append(blocks, k)
			}
			i++
		}
	}
	if len(blocks) >= 2 {
		r.readPairs(p, blocks)
	}
}

// axis is which of the two a heading over a column of a section is.
func (r *reader) axis(c sheet.Cell) string {
	switch m := r.words.of(c); {
	case m == "breadths" || m == "heights":
		return m
	case c.Kind == sheet.Text && plainWords(c.Text) == "y":
		return "breadths"
	case c.Kind == sheet.Text && plainWords(c.Text) == "z":
		return "heights"
	}
	return ""
}

// over is the station named over two columns, merged over both or in one of them.
func (r *reader) over(p *page, row, a, b int) (name, source.Cell, bool) {
	for up := row - 1; up >= 1 && up >= row-2; up-- {
		for _, col := range []int{a, b} {
			c := p.spread(up, col)
			if c.Kind == sheet.Empty {
				continue
			}
			n, ok := r.stationName(c)
			if ok && !n.summary && (n.numbered || n.transom || n.worded) {
				return n, p.cell(up, col), true
			}
			return name{}, source.Cell{}, false
		}
	}
	return name{}, source.Cell{}, false
}

// number says that a cell holds a figure.
func number(c sheet.Cell) bool {
	return filled(c) && (c.Kind != sheet.Text || figure(c.Text))
}

// readPairs reads sections found as blocks of two columns.
func (r *reader) readPairs(p *page, blocks []pairBlock) {
	first, last := blocks[0], blocks[len(blocks)-1]
	caption := r.above(p, max(1, first.at.Row), min(first.out, first.up), max(1, first.at.Row)+1, max(last.out, last.up))
	said, _ := r.formOf(p, nil, caption)
	var cells []sheet.Cell
	for _, k := range blocks {
		for _, row := range k.rows {
			cells = append(cells, p.at(row, k.out), p.at(row, k.up))
		}
		for _, col := range []int{k.out, k.up} {
			if form, ok := headUnit(text(p.at(k.head, col))); ok {
				said = form
			}
		}
	}
	d := r.formed(weigh(cells), said, r.bare, true)
	o := hull.Offsets{Form: d.form, Cell: first.at}
	if d.open {
		r.add(finding.Finding{Kind: UnitOpen, Cell: o.Cell, Text: "the sections are numbers without a unit"})
	}
	o.Surface = r.surfaceOf(caption, p, o.Cell)
	var points []sectionPoint
	top, left, bottom, right := far, far, 0, 0
	for _, k := range blocks {
		if !slices.ContainsFunc(o.Stations, func(s hull.Station) bool { return s.Name == k.station.text }) {
			o.Stations = append(o.Stations, hull.Station{Name: k.station.text, Cell: k.at, Transom: k.station.transom})
		}
		for _, row := range k.rows {
			points = append(points, sectionPoint{k.station.text,
				r.lengthAt(p.at(row, k.out), d, p.cell(row, k.out), "half-breadth at station "+k.station.text),
				r.lengthAt(p.at(row, k.up), d, p.cell(row, k.up), "height at station "+k.station.text)})
		}
		top, left = min(top, k.at.Row), min(left, k.out, k.up)
		bottom, right = max(bottom, k.rows[len(k.rows)-1]), max(right, k.out, k.up)
	}
	r.tableRead()
	for _, k := range blocks {
		p.useBlock(k.at.Row, min(k.out, k.up), k.rows[len(k.rows)-1], max(k.out, k.up))
	}
	p.tables++
	table := source.Table{Table: "offsets", Book: p.book.Name, Sheet: p.sheet.Name, Range: grid{page: p}.area(top, left, bottom, right),
		Unit: d.form.Unit.String(), Notation: d.form.Notation.String(), Evidence: append(slices.Clone(d.why), "sections as half-breadth and height")}
	r.sections(o, table, points, weigh(cells).decimal)
}
