package read

import (
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// sheetNamed is a new sheet.
func (l *laidOut) sheetNamed(name string) *sheet.Sheet {
	s := &sheet.Sheet{Name: name}
	l.book.Sheets = append(l.book.Sheets, s)
	return s
}

// board is a table being laid out on a sheet, seen with its stations across.
type board struct {
	sheet     *sheet.Sheet
	top, left int
	turned    bool
}

// place is a place of the table as one of the sheet.
func (b board) place(row, col int) (int, int) {
	if b.turned {
		row, col = col, row
	}
	return b.top + row, b.left + col
}

func (b board) set(row, col int, c sheet.Cell) {
	r, k := b.place(row, col)
	b.sheet.Set(r, k, c)
}

func (b board) cell(row, col int) source.Cell {
	r, k := b.place(row, col)
	return source.Cell{Book: "yard.xlsx", Sheet: b.sheet.Name, Row: r, Col: k}
}

// merge joins cells of one row or column of the table.
func (b board) merge(row, col, toRow, toCol int) {
	t, l := b.place(row, col)
	u, r := b.place(toRow, toCol)
	if t != u || l != r {
		b.sheet.Merged = append(b.sheet.Merged, sheet.Range{Top: t, Left: l, Bottom: u, Right: r})
	}
}
