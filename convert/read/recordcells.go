package read

import (
	"fmt"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// cell is one field's cell and its place: a ditto mark is the cell above.
func (t *records) cell(row int, field string) (sheet.Cell, source.Cell, bool) {
	col, ok := t.cols[field]
	if !ok {
		return sheet.Cell{}, source.Cell{}, false
	}
	c := t.page.raw(row, col)
	if c.Kind == sheet.Text && measure.IsDitto(c.Text) {
		for above := row - 1; above > t.head; above-- {
			if a := t.page.raw(above, col); filled(a) && !(a.Kind == sheet.Text && measure.IsDitto(a.Text)) {
				c = a
				break
			}
		}
	}
	if over, under := t.page.covered[[2]int{row, col}]; under && over[1] == col {
		c = t.page.raw(over[0], over[1]) // one cell merged over the rows it holds for
	}
	if col == t.size {
		c = t.ofSize(c, field)
	}
	if n := t.parts[col]; n > 0 {
		c = ofParts(c, n)
	}
	return c, t.page.cell(row, col), true
}

// text is one field of a record as written; "" where the table has no such column.
func (t *records) text(row int, field string) string {
	c, _, _ := t.cell(row, field)
	if c.Kind == sheet.Number {
		return plainNumber(c.Number)
	}
	return text(c)
}

// where is the record's own place: its first column.
func (t *records) where(row int) source.Cell { return t.page.cell(row, t.left) }

// column is every cell of a field and its place.
func (t *records) column(field string) (cells []sheet.Cell, places []source.Cell) {
	for _, row := range t.rows {
		if c, at, ok := t.cell(row, field); ok {
			cells, places = append(cells, c), append(places, at)
		}
	}
	return cells, places
}

// found is the table as show prints it.
func (t *records) found(name string) source.Table {
	g := grid{page: t.page}
	right := t.right
	for _, n := range t.names {
		right = max(right, n.col)
	}
	right = t.page.joinedTo(right)
	return source.Table{Table: name, Book: t.page.book.Name, Sheet: t.page.sheet.Name, Range: g.area(t.top, t.left, t.last(), right), Lines: len(t.rows),
		Evidence: t.page.calledSo(t.top, t.left, t.last(), right)}
}

// columnsLeft notes the columns of a table whose headings are not known here.
func (r *reader) columnsLeft(t *records) {
	known := map[int]bool{}
	for _, col := range t.cols {
		known[col] = true
	}
	for _, n := range t.names {
		known[n.col] = true
	}
	var left, unread []string
	var cells, asked []source.Cell
	for col := t.left; col <= t.right; col++ {
		if known[col] {
			continue
		}
		any := false
		for row := t.head + 1; row <= t.last(); row++ {
			if filled(t.page.at(row, col)) {
				any = true
				t.page.use(row, col)
			}
		}
		if any && r.namesKnown(t, t.heads[col]) {
			unread, asked = append(unread, fmt.Sprintf("%q", t.heads[col])), append(asked, t.page.cell(t.head, col))
		} else if any {
			left = append(left, fmt.Sprintf("%q", t.heads[col]))
			cells = append(cells, t.page.cell(t.head, col))
		}
	}
	if len(unread) > 0 {
		r.add(finding.Finding{Kind: ColumnUnread, Cell: asked[0], Also: asked[1:],
			Text: fmt.Sprintf("%s not read: %s", plural(len(unread), fmt.Sprintf("column of the %s was", t.kind.name), fmt.Sprintf("columns of the %s were", t.kind.name)), strings.Join(unread, ", "))})
	}
	if len(left) > 0 {
		r.add(finding.Finding{Kind: ColumnUnused, Cell: cells[0], Also: cells[1:],
			Text: fmt.Sprintf("%s not known here and left: %s", plural(len(left), fmt.Sprintf("column of the %s is", t.kind.name), fmt.Sprintf("columns of the %s are", t.kind.name)), strings.Join(left, ", "))})
	}
}
