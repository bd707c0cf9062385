package read

import (
	"strings"

	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// page is one sheet of one book as it is being read: what has been used of it is
// ticked off, so that nothing is passed over in silence.
type page struct {
	book  *sheet.Book
	sheet *sheet.Sheet
	rows  int
	cols  int
	used  map[[2]int]bool
}

func newPage(b *sheet.Book, s *sheet.Sheet) *page {
	p := &page{book: b, sheet: s, rows: len(s.Rows), used: map[[2]int]bool{}}
	for _, row := range s.Rows {
		p.cols = max(p.cols, len(row))
	}
	return p
}

// at is a cell not yet used by a table.
func (p *page) at(row, col int) sheet.Cell {
	if p.used[[2]int{row, col}] {
		return sheet.Cell{}
	}
	return p.sheet.At(row, col)
}

func (p *page) use(row, col int) { p.used[[2]int{row, col}] = true }

// cell is a place of the page as its values carry it.
func (p *page) cell(row, col int) source.Cell {
	return source.Cell{Book: p.book.Name, Sheet: p.sheet.Name, Row: row, Col: col}
}

// text is a cell's text as written; of a number as shown.
func text(c sheet.Cell) string { return strings.TrimSpace(c.Text) }

// filled says that a cell holds something that was not struck out.
func filled(c sheet.Cell) bool { return c.Kind != sheet.Empty || c.Formula != "" || c.Struck != "" }

// grid is a page looked at along its rows, or turned so that its columns are rows.
type grid struct {
	*page
	turned bool
}

func (g grid) size() (rows, cols int) {
	if g.turned {
		return g.cols, g.page.rows
	}
	return g.page.rows, g.cols
}

func (g grid) see(row, col int) sheet.Cell {
	if g.turned {
		row, col = col, row
	}
	return g.page.at(row, col)
}

func (g grid) place(row, col int) source.Cell {
	if g.turned {
		row, col = col, row
	}
	return g.page.cell(row, col)
}

func (g grid) tick(row, col int) {
	if g.turned {
		row, col = col, row
	}
	g.page.use(row, col)
}

// block is a range of the grid as the sheet names it: "B3:W14".
func (g grid) block(top, left, bottom, right int) string {
	return g.place(top, left).Ref() + ":" + g.place(bottom, right).Ref()
}
