// Package sheet is a spreadsheet as plain values: books, sheets, cells. The
// file packages fill and write it, the stages read and make it. It knows no
// file format and nothing of boats.
package sheet

import "strings"

// Kind is what a cell holds.
type Kind uint8

// The kinds of cell.
const (
	Empty Kind = iota
	Number
	Text
	Bool
	Fault // an error value such as #REF!
	Date  // a number shown as a date: perhaps a measurement the spreadsheet took for one
	Time  // a number shown as a time of day or a span
)

// Cell is one cell: what is stored and what is shown, which are not the same.
type Cell struct {
	Kind    Kind
	Number  float64 // as stored: Number, Date (days since the epoch, 1900 system), Time, Bool (0 or 1)
	Text    string  // the text of a text cell; of any other, as it is shown, for quoting only
	Format  string  // number format code, "" for general
	Formula string  // without its equals sign
	NoValue bool    // a formula whose result was never stored; Number or Text was computed, or Kind is Empty
	Struck  string  // text that is struck out, and so withdrawn; not in Text
	Note    string  // the note or comment on it

	// On the way out only.
	Style Style
	Rule  bool   // a line above it: something else begins
	Link  string // "'Sheet'!C7" in the same book
}

// Sheet is one sheet. Rows and Cols count from one; see At.
type Sheet struct {
	Name       string
	Hidden     bool
	Rows       [][]Cell // ragged: Rows[r-1][c-1]
	Merged     []Range
	HiddenRows map[int]bool
	HiddenCols map[int]bool

	Out Layout // on the way out only
}

// At is the cell at a row and column counted from one; an empty cell outside
// of what is filled.
func (s *Sheet) At(row, col int) Cell {
	if row < 1 || row > len(s.Rows) || col < 1 || col > len(s.Rows[row-1]) {
		return Cell{}
	}
	return s.Rows[row-1][col-1]
}

// Set puts a cell at a row and column counted from one, growing the sheet.
func (s *Sheet) Set(row, col int, c Cell) {
	for len(s.Rows) < row {
		s.Rows = append(s.Rows, nil)
	}
	r := s.Rows[row-1]
	for len(r) < col {
		r = append(r, Cell{})
	}
	r[col-1] = c
	s.Rows[row-1] = r
}

// Range is a block of cells, corners included, counted from one.
type Range struct{ Top, Left, Bottom, Right int }

// OursPrefix begins the defined names by which the sheets we write are known
// when a book of ours is read back: each names a cell of one of them.
const OursPrefix = NamePrefix + "sheet_"

// NamePrefix begins every defined name of ours, those that formulas take among
// them.
const NamePrefix = "strakebook_"

// Name is a defined name or a table of the book: a hint where something is.
type Name struct {
	Name, Sheet string
	Range       Range
	Table       bool // a spreadsheet's own table, with its headings
}

// Book is one workbook, or one text file as a book of one sheet.
type Book struct {
	Path   string // as given on the command line
	Name   string // the file's own name, as findings show it
	Sheets []*Sheet
	Names  []Name
	Kind   string // "xlsx", "xlsm", "csv", ...
	Data   []byte // the file as it is, to carry its sheets over from
}

// Ours says that a sheet of the book is one of those we write.
func (b *Book) Ours(name string) bool {
	for _, n := range b.Names {
		if n.Sheet == name && strings.HasPrefix(n.Name, OursPrefix) {
			return true
		}
	}
	return false
}

// Theirs is the sheets of the book but for those we write.
func (b *Book) Theirs() []*Sheet {
	var all []*Sheet
	for _, s := range b.Sheets {
		if !b.Ours(s.Name) {
			all = append(all, s)
		}
	}
	return all
}
