package read

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// readGrid reads one table of lines by stations as what it is, and ticks it off.
func (r *reader) readGrid(t *stationTable) {
	t.tables++
	r.fine(t)
	r.dittos(t)
	r.merged(t)
	switch t.kind {
	case "offsets":
		r.offsets(t)
	case "bevels":
		r.bevels(t)
	case "widths", "marks":
		r.marks(t)
	case "positions":
		r.placesOf(t)
	default:
		t.tables--
		r.kindAsked(t)
		return
	}
	t.done()
	r.pastEdge(t)
}

// pastEdge reports what goes on with a table just beyond the edge of the
// spreadsheet's own.
func (r *reader) pastEdge(t *stationTable) {
	edge, ok := t.edgeOf(t.head, t.left)
	if !ok {
		return
	}
	if t.over {
		r.overEdge(t.place(t.head, edge.Right+1), text(t.see(t.head, edge.Right+1)))
	}
	below := edge.Bottom + 1
	if figures, others, _ := t.count(below); figures > others && !r.sums(t, below) {
		r.overEdge(t.place(below, t.between(below, t.left, t.right)[0]), t.label(below))
	}
}

// done ticks off all of a table.
func (t *stationTable) done() {
	top, left, bottom, right := t.bounds()
	if t.others() {
		top, left = t.swap(t.head, t.left) // the labels are of the tables beside it too
	} else if len(t.group) > 1 && len(t.labels) > 0 {
		top, left = t.swap(t.head, t.labels[0])
	}
	t.useBlock(top, left, bottom, right)
	// Headings over the names and labels, merged or not, belong to it.
	for _, col := range t.labels {
		for row := t.head; row <= t.head+1; row++ {
			if over, ok := t.covered[pair(t.swap(row, col))]; ok {
				t.use(over[0], over[1])
			}
		}
	}
}

// stationsOf is the stations of a table with their positions where it has them,
// and their columns; and the columns of its own summaries.
func (r *reader) stationsOf(t *stationTable, form measure.Form) (stations []hull.Station, cols []int, sums []name) {
	known := map[int]name{}
	for _, n := range t.names {
		known[n.col] = n
	}
	for col := t.left; col <= t.right; col++ {
		n, ok := known[col]
		switch {
		case n.summary:
			sums = append(sums, n)
			continue
		case !ok && t.emptyColumn(col):
			continue
		case !ok:
			r.add(finding.Finding{Kind: StationUnnamed, Cell: t.place(t.head, col), Text: "figures stand in a column without a station's name"})
		}
		stations = append(stations, hull.Station{Name: n.text, Cell: t.place(t.head, col), Transom: n.transom})
		cols = append(cols, col)
	}
	r.callStations(t, cols)
	r.positionsOf(t, stations, cols, form)
	return stations, cols, sums
}

func (t *stationTable) emptyColumn(col int) bool {
	for _, row := range t.lines {
		if filled(t.see(row, col)) {
			return false
		}
	}
	return true
}

// cells is the cells of a line at some columns.
func (t *stationTable) cells(row int, cols []int) []sheet.Cell {
	all := make([]sheet.Cell, len(cols))
	for i, col := range cols {
		all[i] = t.see(row, col)
	}
	return all
}

// ownWords is what the headings of a table itself say: its corner, its rows of
// units, its title rows.
func (t *stationTable) ownWords() []string {
	var all []string
	for _, c := range t.corner() {
		all = append(all, text(c))
	}
	for _, row := range t.units {
		for _, col := range t.between(row, t.left, t.right) {
			all = append(all, text(t.see(row, col)))
			break
		}
	}
	return all
}

// part is lines of one table that are written alike: all of them, unless titles
// or labels within say units of their own.
type part struct {
	said measure.Form
	dec  decision
	rows []int
}

// offsets reads a table of offsets.
func (r *reader) offsets(t *stationTable) {
	// What heads the lines' own heights says their unit, and the figures' where
	// nothing else does.
	heads, own := r.heightHeads(t), t.ownWords()
	own = slices.DeleteFunc(own, func(w string) bool { return slices.Contains(heads, w) })
	said, two := r.formOf(t.page, own, append(slices.Clone(t.caption), heads...))
	forced, isForced := r.guideForm(t.page, t)
	if isForced {
		said, two = forced, false
	}
	lines := r.linesOf(t)
	_, cols, sums := quietly(r, func() ([]hull.Station, []int, []name) { return r.stationsOf(t, measure.Form{}) })
	if said == (measure.Form{}) && !two && t.ofMaxima(sums, lines, cols) {
		said = measure.Form{Unit: measure.Fractions}
	}
	parts := r.partsOf(t, lines, cols, said, two, isForced)
	main := parts[0]
	for _, p := range parts {
		if len(p.rows) > len(main.rows) {
			main = p
		}
	}
	table := t.found("offsets", main.dec)
	table.Mixed = len(parts) > 1
	o := hull.Offsets{Form: main.dec.form, Cell: t.place(t.head, t.labelAt())}
	open := main.dec.open || two && main.dec.unmarked && main.dec.form.Unit == measure.NoUnit && main.dec.form.Notation >= measure.InchesFractions
	if open {
		r.add(finding.Finding{Kind: UnitOpen, Cell: o.Cell, Text: "the offsets are numbers without a unit: nothing is measured from them"})
		o.Form.Unit = measure.Fractions
	}
	if main.dec.against != "" {
		r.add(finding.Finding{Kind: UnitAgainst, Cell: o.Cell, Reads: main.dec.against,
			Text: fmt.Sprintf("the heading says %s, and the figures are written in %s", main.dec.against, main.dec.form.Notation)})
	}
	o.Fractions = o.Form.Unit == measure.Fractions
	o.Surface = r.surfaceOf(t.wordsAbout(), t.page, o.Cell)
	stations, _, _ := r.stationsOf(t, o.Form)
	o.Stations = stations
	decimals := 0
	for _, p := range parts {
		if open {
			p.dec.form.Unit = measure.Fractions
		}
		for _, row := range p.rows {
			decimals = max(decimals, weigh(t.cells(row, cols)).decimal)
		}
	}
	asked := map[int]bool{}
	for i := range lines {
		l := &lines[i]
		p := parts[l.part]
		if p.dec.open && !open && !asked[l.part] {
			asked[l.part] = true
			r.add(finding.Finding{Kind: UnitOpen, Cell: l.line.Cell, Reads: l.line.Name, Text: fmt.Sprintf("%q and lines like it are numbers without a unit among others that have one", l.line.Name)})
		}
		if open {
			p.dec.form.Unit = measure.Fractions
		}
		l.line.At = r.level(l, t, p.dec.form)
		what := fmt.Sprintf("%s of %s", l.line.View, l.line.Name)
		for _, col := range cols {
			v := r.lengthAt(t.see(l.row, col), p.dec, t.place(l.row, col), what)
			if open && v.OK() && v.Value != 0 && r.scaled() {
				v.State = source.Unread // a unit that is open is not a fraction of the beam
			}
			l.line.Values = append(l.line.Values, v)
			table.Digest += v.Text + ";"
		}
	}
	r.chosen(lines)
	r.tableRead()
	r.levels(lines, t, o.Form)
	for _, s := range sums {
		r.maxima(t, s, lines, o)
	}
	for _, l := range lines {
		o.Lines = append(o.Lines, l.line)
	}
	r.viewsAsked(lines)
	o.Resolution = resolution(o.Form, decimals, given(o.Lines))
	r.textNumbers(t, cols, o.Form)
	table.Stations, table.Lines = len(o.Stations), len(o.Lines)
	r.tables = append(r.tables, table)
	r.keep(o, t.wordsOver)
}

// quietly runs a reading whose findings are for a later one to make.
func quietly[A, B, C any](r *reader, f func() (A, B, C)) (A, B, C) {
	found, bare, two, doubted, between, bared := r.found, r.bareCells, r.twoWays, r.doubted, r.between, r.bared
	a, b, c := f()
	r.found, r.bareCells, r.twoWays, r.doubted, r.between, r.bared = found, bare, two, doubted, between, bared
	return a, b, c
}

// scaled says that the book gives what a table of fractions is multiplied by.
func (r *reader) scaled() bool { return r.rules.Hull.HalfBeam > 0 && r.rules.Hull.Draft > 0 }

func given(lines []hull.Line) []measure.Length {
	var all []measure.Length
	for _, l := range lines {
		for _, v := range l.Values {
			if v.OK() {
				all = append(all, v.Value)
			}
		}
	}
	return all
}

// partsOf groups the lines by what their own labels and titles say of their
// unit, and settles how each group is written.
func (r *reader) partsOf(t *stationTable, lines []tableLine, cols []int, said measure.Form, two, forced bool) []part {
	var parts []part
	for i := range lines {
		l := &lines[i]
		own := said
		if l.said != (measure.Form{}) && !forced {
			own = l.said
		}
		k := slices.IndexFunc(parts, func(p part) bool { return p.said == own })
		if k < 0 {
			k = len(parts)
			parts = append(parts, part{said: own})
		}
		parts[k].rows = append(parts[k].rows, l.row)
		l.part = k
	}
	for k := range parts {
		p := &parts[k]
		var cells []sheet.Cell
		var rows [][]sheet.Cell
		for _, row := range p.rows {
			line := t.cells(row, cols)
			rows = append(rows, line)
			cells = append(cells, line...)
		}
		r.dayCounts(t, p.rows, cols, cells)
		e := weigh(cells)
		p.dec = r.formed(e, p.said, r.bare, true)
		p.dec.torn(e, two)
		p.dec.dates = datesOf(rows, p.dec.form)
		var places []source.Cell
		for _, row := range p.rows {
			for _, col := range cols {
				places = append(places, t.place(row, col))
			}
		}
		r.pointed(p.dec, "offsets", cells, places)
	}
	if len(parts) == 0 {
		parts = []part{{said: said}}
	}
	return parts
}

// found is the table as show prints it.
func (t *stationTable) found(kind string, d decision) source.Table {
	top, left, bottom, right := t.bounds()
	right = t.joinedTo(right)
	table := source.Table{Table: kind, Book: t.book.Name, Sheet: t.sheet.Name, Range: grid{page: t.page}.area(top, left, bottom, right),
		Unit: d.form.Unit.String(), Notation: d.form.Notation.String(), Evidence: slices.Clone(d.why)}
	switch d.form.Notation {
	case measure.FeetInchesEighths, measure.OldPrint, measure.FeetInchesFractions:
		if d.form.Unit == measure.NoUnit {
			table.Unit = "feet"
		}
	}
	table.Evidence = append(table.Evidence, "stations run "+map[bool]string{false: "across", true: "down"}[t.turned])
	table.Evidence = append(table.Evidence, t.calledSo(t.bounds())...)
	return table
}

// textNumbers notes the numbers that a table keeps as text.
func (r *reader) textNumbers(t *stationTable, cols []int, form measure.Form) {
	if form.Notation != measure.Decimal {
		return
	}
	var all []source.Cell
	texts, numbers := 0, 0
	for _, row := range t.lines {
		for _, col := range cols {
			switch c := t.see(row, col); {
			case c.Kind == sheet.Number:
				numbers++
			case c.Kind == sheet.Text && !measure.IsDash(c.Text) && measure.MarkedUnit(c.Text) == measure.NoUnit && !strings.Contains(c.Text, ","):
				all = append(all, t.place(row, col))
				texts++
			}
		}
	}
	if texts > 0 && numbers > 0 {
		r.add(finding.Finding{Kind: NumberAsText, Cell: all[0], Also: all[1:], Text: fmt.Sprintf("%s kept as text, at %s", plural(texts, "number is", "numbers are"), list(all))})
	}
}
