package write

import (
	"iter"
	"slices"
	"strings"

	"strakebook/calc"
	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// page is one of our sheets before it is a sheet: a table headed on the sheet's
// first row, with its remarks below it.
//
// A sheet is added by a function that makes its page of the result, in a file of
// its own, and by its line in pages:
//
//	func moulds(in Input) *page {
//		u := in.units()
//		p := table("Moulds", "moulds to cut", col("Line", 16), col("Station", 9), col("Half-breadth, "+longUnit(u), 13))
//		p.note("To the face of the mould that stands on the station line.")
//		p.empty = "No moulds: a table of offsets is needed."
//		for _, m := range in.Result.Moulds {
//			p.line(text(m.Line), text(m.Station), long(m.Half, u))
//		}
//		return p
//	}
//
// text, words (wrapped), long and small (lengths as the yard writes them), whole
// and number make the cells; a cell left as sheet.Cell{} is blank.
type page struct {
	called  string   // the sheet's name
	title   string   // at the head of every page printed, after the name of the job
	cols    []column // the headings, on the first row
	rows    [][]sheet.Cell
	later   []sheet.Later // those of the rows that are made as they are written, rows counted from one
	before  int           // how many rows stand before rows, where a later line is being made
	asides  map[int]bool  // rows that are no line of the table: headings of groups, totals
	notes   []string      // conventions and remarks, below the table
	empty   string        // what it says where it has no rows
	csv     bool          // goes out as a text file too, under its own name
	opened  []string      // there, the columns of what the headings of its groups say: the title, and the rest
	wide    bool          // printed across the paper
	cards   bool          // read across a shop
	onePage bool          // printed on one sheet of paper, however long
	hidden  bool
	prints  int // so many columns are printed; 0 for all
	keys    int // the first columns, repeated where the others take several papers
	drop    []sheet.DropDown
	names   []sheet.Name // of its cells, for formulas
	charts  []sheet.Chart
	heights map[int]float64 // of rows of the sheet, in points
	breaks  []int           // a new sheet of paper after each of these rows of the sheet
	groups  []sheet.Range   // the lines of each card, as rows of the sheet
}

// column is a heading, how many letters wide its column is, and the name by which
// formulas know it: the heading without its unit.
type column struct {
	head  string
	width float64
	key   string
}

func col(head string, width float64) column {
	key, _, _ := strings.Cut(head, ", ")
	return column{head, width, key}
}

// lengths is the columns of a length: inches or millimetres, and before them the
// same as feet-inches-eighths where the yard writes so.
func lengths(head string, u measure.Style, width float64) []column {
	if u == measure.StyleFeet {
		return []column{{head + ", " + longUnit(u), width, head + " text"}, {head + ", in", width - 1, head}}
	}
	return []column{{head + ", " + unit(u), width, head}}
}

// table is a page without rows. It is printed across the paper where its columns
// would come out small down it.
func table(name, title string, cols ...column) *page {
	p := &page{called: name, title: title, asides: map[int]bool{}}
	for _, c := range cols {
		p.add(c)
	}
	return p
}

// add is one more column to the right.
func (p *page) add(c column) {
	p.cols = append(p.cols, c)
	p.wide = across(p.cols) > downPaper
}

// worked ends the columns that are printed: those added from here on hold what
// formulas take from.
func (p *page) worked(cols ...column) {
	p.prints = len(p.cols)
	wide := p.wide
	for _, c := range cols {
		p.add(c)
	}
	p.wide = wide
}

// line is one line of the table.
func (p *page) line(cells ...sheet.Cell) { p.rows = append(p.rows, cells) }

// few is how many rows of a page are made at once: beyond them lines are made as
// they are written, twice over, and never held all together.
var few = 3000

// lines is lines of the table that may be made when they are written. What makes
// them may ask the page for here and at, and changes nothing.
func (p *page) lines(count int, make func(p *page, i int) []sheet.Cell) {
	if p.next()+count <= few {
		for i := range count {
			p.line(make(p, i)...)
		}
		return
	}
	first := p.next()
	p.later = append(p.later, sheet.Later{Row: first + 1, Count: count, Make: func(i int) []sheet.Cell {
		making := *p
		making.before, making.rows = first+i, nil
		return make(&making, i)
	}})
	p.rows = append(p.rows, slices.Repeat([][]sheet.Cell{nil}, count)...)
}

// each is every row, counted from one.
func (p *page) each() iter.Seq2[int, []sheet.Cell] {
	return (&sheet.Sheet{Rows: p.rows, Out: sheet.Layout{Later: p.later}}).Each()
}

// next is the row that is being made, counted from nought.
func (p *page) next() int { return p.before + len(p.rows) }

// aside is a row that is no line of the table: it opens a group of lines, or adds
// them up. It does not go out as text.
func (p *page) aside(cells ...sheet.Cell) {
	p.asides[p.next()] = true
	if n := len(cells); n > 0 && cells[n-1].Style == sheet.Entry { // it may lie over what is to its right
		cells[n-1].Style = sheet.Across
	}
	p.rows = append(p.rows, cells)
}

// note is a remark below the table.
func (p *page) note(remark string) { p.notes = append(p.notes, remark) }

// count is how many rows are lines of the table.
func (p *page) count() int { return len(p.rows) - len(p.asides) }

// sheet lays a page out: headings, rows, remarks.
func (p *page) sheet(in Input) *sheet.Sheet {
	yard := in.Result.Rules.Yard
	s := &sheet.Sheet{Name: p.called, Hidden: p.hidden || len(p.rows) == 0 && p.called != "Warnings"} // of what there is nothing the Summary tells
	var widths []float64
	wider, heads := p.stretch(), sheet.Heading
	if p.cards {
		heads = sheet.CardHead
	}
	for i, c := range p.cols {
		s.Set(1, i+1, sheet.Cell{Kind: sheet.Text, Text: c.head, Style: heads})
		widths = append(widths, c.width*wider)
	}
	s.Out = sheet.Layout{Widths: widths, HeadRow: 1, Landscape: p.wide, A4: yard.Paper == calc.A4, DropDown: p.drop, RowBreaks: p.breaks, Charts: p.charts, Heights: p.heights,
		PrintCols: p.prints, PagesWide: p.papers(), KeyCols: p.keys, OnePage: p.onePage, Header: headed(yard.Job, p.title), Footer: strings.TrimSpace(yard.Job + "  " + yard.Date)}
	if s.Hidden {
		s.Out.PrintCols = 0 // a sheet with an area to print is printed, hidden or not
	}
	s.Rows = slices.Grow(s.Rows, len(p.rows)+len(p.notes)+3)
	for i, cells := range p.rows {
		s.Rows = append(s.Rows, cells)
		if !p.asides[i] {
			s.Out.FilterTo = i + 2
		}
	}
	for _, l := range p.later {
		l.Row++ // below the headings
		s.Out.Later = append(s.Out.Later, l)
	}
	if len(p.rows) == 0 && p.empty != "" {
		p.across(s, 2, sheet.Cell{Kind: sheet.Text, Text: p.empty, Style: sheet.Gone})
	}
	for i, n := range p.notes {
		if len(p.rows) == 0 && p.empty != "" {
			break // remarks on a table that is not there
		}
		p.across(s, max(len(p.rows), 1)+3+i, sheet.Cell{Kind: sheet.Text, Text: n, Style: sheet.Remark})
	}
	return s
}

// across lays a cell over all the columns of a row that come on the first paper,
// but for those that come on the others too, where it would be cut short.
func (p *page) across(s *sheet.Sheet, row int, c sheet.Cell) {
	from, to := 1, p.onFirstPaper()
	if p.papers() > 1 {
		from += p.keys
	}
	s.Set(row, from, c)
	if to > from {
		s.Merged = append(s.Merged, sheet.Range{Top: row, Left: from, Bottom: row, Right: to})
	}
}

func headed(job, title string) string {
	if job == "" {
		return strings.ToUpper(title[:1]) + title[1:]
	}
	return job + ": " + title
}
