package read

import (
	"slices"

	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// recordTable is a kind of table with a heading row and a record a row.
type recordTable struct {
	name   string
	fields []string // meanings its columns may have
	need   []string // those it must have
	least  int      // columns it must have at least
	never  []string // meanings that show it is another table
	read   func(*reader, *records)
}

var (
	strakesTable  = recordTable{name: "strakes", fields: []string{"strake", "skin", "side", "count", "thickness", "width", "length", "species", "slope", "start", "from", "to", "clear", "note"}, need: []string{"strake"}, least: 3, never: []string{"mark", "price", "footprice"}}
	rackTable     = recordTable{name: "rack", fields: []string{"mark", "species", "thickness", "width", "length", "count", "price", "footprice", "source", "note"}, need: []string{"length", "width"}, least: 4, never: []string{"strake", "skin"}}
	settingsTable = recordTable{name: "settings", fields: []string{"setting", "value", "unit", "note"}, need: []string{"setting", "value"}, least: 2}
	guideTable    = recordTable{name: "guide", fields: []string{"table", "sheet", "range", "station", "unit", "notation", "skip"}, need: []string{"table", "range", "skip"}, least: 4}
)

func init() {
	strakesTable.read = (*reader).strakes
	rackTable.read = (*reader).rack
	settingsTable.read = (*reader).settings
	guideTable.read = (*reader).guideSheet
}

// records is one table of records found on a page.
type records struct {
	page  *page
	head  int            // row of the headings
	cols  map[string]int // meaning -> column
	said  map[string]measure.Form
	rows  []int
	left  int
	right int
}

// records finds every table of a kind on a page and reads it.
func (r *reader) records(p *page, kind recordTable) {
	for row := 1; row <= p.rows; row++ {
		t := r.heading(p, row, kind)
		if t == nil {
			continue
		}
		r.body(t, kind)
		for _, col := range t.cols {
			p.use(t.head, col)
		}
		kind.read(r, t)
		last := t.head
		if n := len(t.rows); n > 0 {
			last = t.rows[n-1]
		}
		row = last
	}
}

// heading says whether a row is a table's headings.
func (r *reader) heading(p *page, row int, kind recordTable) *records {
	t := &records{page: p, head: row, cols: map[string]int{}, said: map[string]measure.Form{}}
	for col := 1; col <= p.cols; col++ {
		c := p.at(row, col)
		m := r.words.of(c)
		m = kind.sense(m, c, t.cols)
		if slices.Contains(kind.never, m) {
			return nil
		}
		if !slices.Contains(kind.fields, m) {
			continue
		}
		if _, twice := t.cols[m]; twice {
			continue
		}
		t.cols[m] = col
		if t.left == 0 {
			t.left = col
		}
		t.right = col
		if form, ok := saysUnit(c.Text); ok {
			t.said[m] = form
		}
	}
	if len(t.cols) < kind.least {
		return nil
	}
	for _, m := range kind.need {
		if _, ok := t.cols[m]; !ok {
			return nil
		}
	}
	return t
}

// sense settles words that mean different things at the head of different
// tables.
func (k recordTable) sense(m string, c sheet.Cell, have map[string]int) string {
	t := plainWords(c.Text)
	switch {
	case c.Kind != sheet.Text:
		return ""
	case k.name == "settings" && (t == "name" || t == "item" || t == "setting" || t == "settings"):
		return "setting"
	case k.name == "guide" && (t == "sheet" || t == "stations"):
		return map[string]string{"sheet": "sheet", "stations": "station"}[t]
	case k.name == "strakes" && m == "setting" && t == "name":
		return "strake"
	case k.name == "rack" && (t == "name" || t == "item"):
		return "mark"
	}
	return m
}

// body takes in the rows below the headings: to the second blank row, another
// heading row, or the end of the page. A unit row and repeated headings are
// ticked off and left.
func (r *reader) body(t *records, kind recordTable) {
	blank := 0
	for row := t.head + 1; row <= t.page.rows; row++ {
		filledCells, texts := 0, 0
		for _, col := range t.cols {
			if c := t.page.at(row, col); filled(c) && c.Kind != sheet.Empty || c.Formula != "" {
				filledCells++
				if c.Kind == sheet.Text {
					texts++
				}
			}
		}
		switch {
		case filledCells == 0:
			blank++
			if blank >= 2 {
				return
			}
			continue
		case r.anyHeading(t.page, row, t.left, t.right):
			if again := r.heading(t.page, row, kind); again == nil {
				return
			}
			for col := t.left; col <= t.right; col++ {
				t.page.use(row, col)
			}
			continue
		case r.unitRow(t, row):
			continue
		case filledCells == 1 && texts == 1 && len(t.cols) > 2 && blank > 0:
			return // a title of what comes next
		case r.words.of(t.page.at(row, t.left)) == "summary":
			for col := t.left; col <= t.right; col++ {
				t.page.use(row, col)
			}
			continue
		}
		blank = 0
		t.rows = append(t.rows, row)
		for _, col := range t.cols {
			t.page.use(row, col)
		}
	}
}

// anyHeading says that a row is the headings of some table.
func (r *reader) anyHeading(p *page, row, left, right int) bool {
	n := 0
	for col := left; col <= right; col++ {
		if m := r.words.of(p.at(row, col)); m != "" && m != "summary" {
			n++
		}
	}
	return n >= 3 || (n == 2 && right-left < 3)
}

// unitRow reads a row of units below the headings.
func (r *reader) unitRow(t *records, row int) bool {
	if row > t.head+2 {
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
		if c.Kind != sheet.Text || !ok {
			return false
		}
		units++
		said[m] = form
	}
	if units == 0 {
		return false
	}
	for m, col := range t.cols {
		t.page.use(row, col)
		if form, ok := said[m]; ok {
			t.said[m] = form
		}
	}
	return true
}

// text is one field of a record as written; "" where the table has no such column.
func (t *records) text(row int, field string) string {
	col, ok := t.cols[field]
	if !ok {
		return ""
	}
	return text(t.page.sheet.At(row, col))
}

// see is one field's cell and its place.
func (t *records) see(row int, field string) (sheet.Cell, source.Cell, bool) {
	col, ok := t.cols[field]
	if !ok {
		return sheet.Cell{}, source.Cell{}, false
	}
	return t.page.sheet.At(row, col), t.page.cell(row, col), true
}

// where is the record's own place: its first column.
func (t *records) where(row int) source.Cell { return t.page.cell(row, t.left) }

// column is every cell of a field.
func (t *records) column(field string) []sheet.Cell {
	var all []sheet.Cell
	for _, row := range t.rows {
		if c, _, ok := t.see(row, field); ok {
			all = append(all, c)
		}
	}
	return all
}

// found is the table as show prints it.
func (t *records) found(name string) source.Table {
	last := t.head
	if n := len(t.rows); n > 0 {
		last = t.rows[n-1]
	}
	g := grid{page: t.page}
	return source.Table{Table: name, Book: t.page.book.Name, Sheet: t.page.sheet.Name, Range: g.block(t.head, t.left, last, t.right), Lines: len(t.rows)}
}
