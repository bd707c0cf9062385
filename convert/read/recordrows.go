package read

import (
	"fmt"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// body takes in the rows below the headings: to the third blank row, the headings
// or names of another table, or the end of the page. A row of units and repeated
// headings are ticked off and left.
func (r *reader) body(t *records) {
	blank, last := 0, t.page.rows
	if w := t.page.within; w != nil {
		last = min(last, w.Bottom)
	}
	edge, edged := t.page.edge(t.head, t.left)
	if edged {
		defer r.pastRows(t, edge.Bottom+1)
		last = min(last, edge.Bottom)
	}
	for row := t.head + 1; row <= last; row++ {
		cells, texts := 0, 0
		for _, col := range t.page.filled[0][row] {
			if col < t.left || col > t.right || t.page.used[[2]int{row, col}] {
				continue
			}
			cells++
			if t.page.raw(row, col).Kind == sheet.Text {
				texts++
			}
		}
		switch {
		case cells == 0:
			if blank++; blank > gapRows {
				return
			}
			continue
		case r.anyHeading(t, row):
			if again := r.heading(t.page, row, row, t.kind); again == nil || len(again.cols) != len(t.cols) || again.left != t.left {
				return
			}
			t.page.useBlock(row, t.left, row, t.right)
			continue
		case r.unitRow(t, row):
			continue
		case blank > 0 && t.kind.long && t.keyed(row) && !r.station(t, row):
			return // another table
		case cells == 1 && texts == 1 && len(t.cols) > 2 && (blank > 0 || !t.keyed(row)):
			if blank > 0 && r.titles(t.first(row)) || r.anyHeadingBelow(t, row) {
				return // a title of what comes next
			}
			if !t.keyed(row) {
				continue // a remark, or a title within
			}
		case r.summaryRow(t, row):
			continue
		}
		blank = 0
		t.rows = append(t.rows, row)
		for _, col := range t.cols {
			t.page.use(row, col)
		}
	}
}

// pastRows takes the table's own sums just below the edge of the spreadsheet's own
// table, and reports a record there.
func (r *reader) pastRows(t *records, row int) {
	switch {
	case row > t.page.rows || r.anyHeading(t, row) || r.summaryRow(t, row):
	case t.keyed(row) && len(grid{page: t.page}.between(row, t.left, t.right)) > 1:
		r.overEdge(t.page.cell(row, t.left), text(t.page.at(row, t.left)))
	}
}

// keyed says that a row fills the column that names its record.
func (t *records) keyed(row int) bool {
	if len(t.kind.need) == 0 {
		return true
	}
	col, ok := t.cols[t.kind.need[0]]
	return ok && filled(t.page.at(row, col))
}

// station says that a row of a list begins with the name of a station.
func (r *reader) station(t *records, row int) bool {
	_, ok := r.stationName(t.page.at(row, t.cols["station"]))
	return ok
}

// first is the first text of a row within the table.
func (t *records) first(row int) string {
	for _, col := range t.page.filled[0][row] {
		if c := t.page.at(row, col); col >= t.left && col <= t.right && c.Kind == sheet.Text {
			return c.Text
		}
	}
	return ""
}

// anyHeadingBelow says that one of the next rows is the headings of some table.
func (r *reader) anyHeadingBelow(t *records, row int) bool {
	for next := row + 1; next <= min(row+3, t.page.rows); next++ {
		if r.anyHeading(t, next) || r.stations(grid{page: t.page}, next) != nil && !t.keyed(next) {
			return true
		}
	}
	return false
}

// anyHeading says that a row is the headings of some table.
func (r *reader) anyHeading(t *records, row int) bool {
	n, cells := 0, 0
	for _, col := range t.page.filled[0][row] {
		if col < t.left || col > t.right {
			continue
		}
		cells++
		c := t.page.at(row, col)
		if c.Kind == sheet.Number || c.Kind == sheet.Text && len(measure.Notations(c.Text)) > 0 {
			return false // headings hold no figures
		}
		if m := r.words.of(c); m != "" && m != "summary" && m != "transom" {
			n++
		}
	}
	return n >= 3 && 2*n >= cells || n == 2 && cells == 2 && len(t.cols) < 4
}

// summaryRow ticks off a row of the table's own sums.
func (r *reader) summaryRow(t *records, row int) bool {
	for _, col := range t.page.filled[0][row] {
		if c := t.page.at(row, col); col >= t.left && col <= t.right && c.Kind == sheet.Text {
			if m, _ := r.words.first(c.Text); m != "summary" || len(tokens(c.Text)) > 3 {
				return false
			}
			var left []source.Cell
			for _, at := range (grid{page: t.page}).between(row, t.left, t.right) {
				if at != col && filled(t.page.at(row, at)) {
					left = append(left, t.page.cell(row, at))
				}
			}
			t.page.useBlock(row, t.left, row, t.right)
			r.add(finding.Finding{Kind: SummaryLeft, Cell: t.page.cell(row, col), Also: left, Text: fmt.Sprintf("%q is the table's own summary and no row of it", text(c))})
			return true
		}
	}
	return false
}

// unitRow reads a row of units below the headings.
func (r *reader) unitRow(t *records, row int) bool {
	if row > t.head+2 || len(t.rows) > 0 {
		return false
	}
	said := map[string]measure.Form{}
	units := 0
	for m, col := range t.cols {
		c := t.page.at(row, col)
		if c.Kind == sheet.Empty {
			continue
		}
		form, ok := bareUnit(c.Text)
		if c.Kind != sheet.Text || !ok || measure.IsDash(c.Text) {
			return false
		}
		units++
		said[m] = form
	}
	if units == 0 {
		return false
	}
	for i, n := range t.names { // widths by station have units of their own
		if form, ok := bareUnit(t.page.at(row, n.col).Text); ok && i == 0 {
			t.said["widths"] = form
		}
		t.page.use(row, n.col)
	}
	for m, col := range t.cols {
		t.page.use(row, col)
		if form, ok := said[m]; ok {
			t.said[m] = form
		}
	}
	return true
}
