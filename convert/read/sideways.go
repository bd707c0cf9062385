package read

import (
	"strakebook/convert/sheet"
)

// A list may lie on its side: a column of headings, and a strake or a board a
// column. It is read as any other list from a page turned over.

// fewestRecords is the fewest strakes or boards of a list on its side.
const fewestRecords = 2

// fewestAside is the fewest headings that a list on its side is looked for by.
const fewestAside = 3

// sideways reads the strakes and boards of a page that lie on their side.
func (r *reader) sideways(p *page) {
	if r.headedAside(p) {
		r.aside(p, asideTables(recordTables()), fewestRecords)
	}
}

// settingsAside reads settings whose names stand in a row, and their values in the
// row below.
func (r *reader) settingsAside(p *page) {
	for col := 1; col <= p.cols; col++ {
		for _, row := range p.filled[1][col] {
			if r.words.of(p.at(row, col)) == "setting" && r.words.of(p.at(row+1, col)) == "value" {
				r.aside(p, []recordTable{settingsTable()}, 1)
				return
			}
		}
	}
}

// aside reads the lists of some kinds that lie on their side, of some records at
// least.
func (r *reader) aside(p *page, kinds []recordTable, least int) {
	q := p.turn()
	for row := 1; row <= q.rows; row++ {
		t := r.listAt(q, row, kinds)
		if t == nil || t.recordsBelow() < least {
			continue
		}
		t.caption = r.above(p, t.left, t.top, t.right, t.head)
		r.list(t)
		row = t.last()
	}
	for at := range q.used {
		p.use(at[1], at[0])
	}
	p.tables += q.tables
}

// asideTables is the kinds of list read on their side, those that a record a row
// makes; what names a record must be there, and two of them at least, so that a
// boat's particulars are not taken for a board.
func asideTables(kinds []recordTable) []recordTable {
	var all []recordTable
	for _, k := range kinds {
		if k.name != "strakes" && k.name != "rack" && k.name != "pieces" {
			continue
		}
		k.need = append([]string{k.names[0]}, k.need...)
		k.never = append([]string{"offsets", "waterline", "buttock", "heights", "breadths"}, k.never...)
		k.names = nil // "No." may head anything
		all = append(all, k)
	}
	return all
}

// recordsBelow is how many rows below the headings name a record.
func (t *records) recordsBelow() int {
	n := 0
	for row := t.head + 1; row <= t.page.rows; row++ {
		if t.keyed(row) {
			n++
		}
	}
	return n
}

// headedAside says that some column of a page holds the headings of a list, and
// what it holds has not been read.
func (r *reader) headedAside(p *page) bool {
	for col := 1; col <= p.cols; col++ {
		fields, named := map[string]bool{}, false
		for _, row := range p.filled[1][col] {
			c := p.at(row, col)
			if c.Kind != sheet.Text || len(c.Text) > 40 {
				continue
			}
			switch m := r.words.heading(c.Text); m {
			case "strake", "mark", "piece":
				named = true
				fields[m] = true
			case "thickness", "width", "length", "species", "count", "skin", "side":
				fields[m] = true
			}
		}
		if named && len(fields) >= fewestAside {
			return true
		}
	}
	return false
}

// turn is a page with its rows as columns. Its places are those of the page.
func (p *page) turn() *page {
	s := &sheet.Sheet{Name: p.sheet.Name}
	for row := p.rows; row >= 1; row-- {
		if len(p.filled[0][row]) < 2 {
			continue // a title or a remark, which heads no column
		}
		for _, col := range p.filled[0][row] {
			s.Set(col, row, p.raw(row, col))
		}
	}
	for _, m := range p.sheet.Merged {
		s.Merged = append(s.Merged, sheet.Range{Top: m.Left, Left: m.Top, Bottom: m.Right, Right: m.Bottom})
	}
	q := seen(p.book, s)
	q.turned = true
	for i := range q.hints {
		g := &q.hints[i].Range
		g.Top, g.Left, g.Bottom, g.Right = g.Left, g.Top, g.Right, g.Bottom
	}
	for at := range p.used {
		q.use(at[1], at[0])
	}
	return q
}
