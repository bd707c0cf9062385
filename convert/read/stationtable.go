package read

import (
	"slices"

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
	r.lay(t.placing(stations))
	return stations, cols, sums
}

// placing is where the stations of a table lie and what is said of them.
func (t *stationTable) placing(stations []hull.Station) placing {
	n := placing{cell: t.place(t.head, t.labelAt()), words: t.wordsAbout(), page: t.page, stations: stations}
	if row := t.position; row > 0 {
		n.cell, n.label = t.place(row, t.labelAt()), t.label(row)
	}
	return n
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
