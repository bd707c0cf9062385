package sheet

import "iter"

// Style is what a cell is for; how that looks is decided in one file of xlsx.
type Style uint8

// The purposes of a cell on the sheets we write.
const (
	Plain      Style = iota
	Title            // the sheet's title line
	Heading          // of a column
	GroupHead        // a line that opens a group of rows
	Words            // running text, wrapped
	Feet             // feet-inches-eighths text, right-aligned
	Inch             // decimal inches, three places
	MM               // millimetres, one place
	Degrees          // signed, two places
	Whole            // counts
	Measure          // board feet, one place
	Money            // two places
	Percent          // per cent of a hundred, one place
	Ratio            // slopes and rates, three places
	Input            // a value the yard may change
	Unsure           // doubtful: marked
	Wrong            // an error: marked
	Gone             // not worked out
	Caution          // a caution's text
	Large            // to be called out across a shop
	LinkText         // a link
	Departure        // signed, one place
	Remark           // below a table, wrapped
	Entry            // a word or two, with air before them
	Given            // a figure as it is given, without a form of its own
	Fine             // a small length, four places
	Stick            // drawn with letters of one width
	Called           // words to be called out across a shop
	Across           // a line of words that lies over the cells to its right
	CardHead         // of a column of cards that are read across a shop
	CardLine         // a line of words on such a card, over the cells to its right
	CardDoubt        // such a line, of a doubt
	CardFigure       // a figure beside those to be called out
	Doubt            // words of a doubt, to be seen before the figures beside them
)

// Layout is how a sheet we write is laid out and printed.
type Layout struct {
	Widths    []float64 // of columns, in characters; 0 for the standard
	HeadRow   int       // the row of headings: frozen down to here, repeated in print, filtered
	FilterTo  int       // the last row of the table that is filtered; 0 for none
	PrintCols int       // so many columns are printed; 0 for all
	PagesWide int       // sheets of paper side by side; 0 for one
	KeyCols   int       // columns repeated on each of them
	OnePage   bool      // all of it on one sheet of paper
	Landscape bool
	A4        bool   // else letter
	Header    string // printed at the head of every page
	Footer    string
	DropDown  []DropDown
	RowBreaks []int           // a page break after each of these rows
	Heights   map[int]float64 // of rows, in points, where they are not their text's
	Charts    []Chart
	Later     []Later // in order
}

// Later is rows that are made only as they are written, so that a sheet of many
// thousand is never whole in memory. They may be made more than once. The sheet's
// own Rows are empty there.
type Later struct {
	Row, Count int
	Make       func(i int) []Cell // of the rows, counted from nought
}

// Each is every row of a sheet with its number, those among them that are made
// later.
func (s *Sheet) Each() iter.Seq2[int, []Cell] {
	return func(yield func(int, []Cell) bool) {
		later := s.Out.Later
		for i, cells := range s.Rows {
			row := i + 1
			for len(later) > 0 && row >= later[0].Row+later[0].Count {
				later = later[1:]
			}
			if len(later) > 0 && row >= later[0].Row {
				cells = later[0].Make(row - later[0].Row)
			}
			if !yield(row, cells) {
				return
			}
		}
	}
}

// DropDown is a list of words a cell range may hold.
type DropDown struct {
	Range Range
	Words []string
}

// Mark is a cell of the builder's own sheets to be marked and noted.
type Mark struct {
	Sheet    string
	Row, Col int
	Style    Style // Unsure or Wrong
	Note     string
}
