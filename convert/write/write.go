// Package write turns a job's result into sheets, JSON and plain tables. It
// knows sheets and the trades' nouns, but no file format.
package write

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/calc"
	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// Input is a job worked out, as every way of writing takes it.
type Input struct {
	Books    []*sheet.Book
	Job      calc.Job
	Result   calc.Result
	Tables   []source.Table
	Findings finding.List
	Taken    []string // names of sheets carried over whole
	Version  string
	Cut      bool // worked out, not only checked
}

// page is one of our sheets before it is a sheet: headings and rows.
type page struct {
	name, title string
	notes       []string // conventions and remarks between title and headings
	heads       []string
	widths      []float64
	rows        [][]sheet.Cell
	group       map[int]bool // rows that open a group: not part of the plain table
	empty       string       // what it says where it has no rows
	wide        bool         // landscape
	filter      bool
	drop        []sheet.DropDown
}

// pages is every sheet of the new book, in order.
func pages(in Input) []*page {
	all := []*page{
		cutList(in), millOrder(in), warnings(in), bevels(in), scarfs(in),
		joints(in), boards(in), offsets(in), settings(in), cautions(in),
	}
	return append([]*page{summary(in, all)}, all...)
}

// carried says that a sheet of the builder's is carried over into the new book.
func (in Input) carried(name string) bool { return slices.Contains(in.Taken, name) }

// Book is the new book's own sheets, and the marks on the builder's.
func Book(in Input) (*sheet.Book, []sheet.Mark) {
	book := &sheet.Book{}
	taken := map[string]bool{}
	for _, name := range in.Taken {
		taken[strings.ToLower(name)] = true
	}
	for i, p := range pages(in) {
		s := p.sheet(in)
		s.Name = free(taken, p.name)
		taken[strings.ToLower(s.Name)] = true
		book.Sheets = append(book.Sheets, s)
		book.Names = append(book.Names, sheet.Name{Name: fmt.Sprint(sheet.OursPrefix, i+1), Sheet: s.Name, Range: sheet.Range{Top: 1, Left: 1, Bottom: 1, Right: 1}})
	}
	return book, marks(in)
}

// free is the name wanted, or it with (checked) where the builder has such a sheet.
func free(taken map[string]bool, want string) string {
	name := want
	for n := 1; taken[strings.ToLower(name)]; n++ {
		name = want + " (checked)"
		if n > 1 {
			name = fmt.Sprintf("%s (checked %d)", want, n)
		}
	}
	return name
}

// sheet lays a page out: title, notes, headings, rows.
func (p *page) sheet(in Input) *sheet.Sheet {
	yard := in.Result.Rules.Yard
	s := &sheet.Sheet{Name: p.name}
	title := p.title
	if yard.Job != "" {
		title = yard.Job + ": " + title
	}
	s.Set(1, 1, sheet.Cell{Kind: sheet.Text, Text: title, Style: sheet.Title})
	row := 2
	for _, n := range p.notes {
		s.Set(row, 1, sheet.Cell{Kind: sheet.Text, Text: n})
		row++
	}
	for c, h := range p.heads {
		s.Set(row, c+1, sheet.Cell{Kind: sheet.Text, Text: h, Style: sheet.Heading})
	}
	s.Out = sheet.Layout{Widths: p.widths, HeadRow: row, Filter: p.filter && len(p.rows) > 0, Landscape: p.wide, A4: yard.Paper == calc.A4,
		Footer: strings.TrimSpace(yard.Job + "  " + yard.Date)}
	for _, cells := range p.rows {
		row++
		for c, cell := range cells {
			s.Set(row, c+1, cell)
		}
	}
	if len(p.rows) == 0 && p.empty != "" {
		s.Set(row+1, 1, sheet.Cell{Kind: sheet.Text, Text: p.empty})
	}
	s.Out.DropDown = p.drop
	return s
}

// Table is one table as plain rows, its headings first.
type Table struct {
	Name string
	Rows [][]string
}

// Tables is the tables that go out as text files, headed as the sheets are.
func Tables(in Input) []Table {
	var all []Table
	for _, p := range []*page{cutList(in), millOrder(in), warnings(in), bevels(in), scarfs(in), joints(in), boards(in), offsets(in)} {
		t := Table{Name: strings.ReplaceAll(strings.ToLower(p.name), " ", "-"), Rows: [][]string{p.heads}}
		for i, cells := range p.rows {
			if p.group[i] {
				continue
			}
			row := make([]string, len(p.heads))
			for c, cell := range cells {
				if c < len(row) {
					row[c] = plain(cell)
				}
			}
			t.Rows = append(t.Rows, row)
		}
		all = append(all, t)
	}
	return all
}

// plain is a cell in a text file: figures as decimals, and feet-inches-eighths as
// feet and inches, which no spreadsheet takes for a date.
func plain(c sheet.Cell) string {
	if c.Kind == sheet.Number {
		return strings.TrimSuffix(strings.TrimRight(fmt.Sprintf("%.4f", c.Number), "0"), ".")
	}
	if c.Style == sheet.Feet {
		if l, err := (measure.Form{Notation: measure.FeetInchesEighths}).Length(c.Text); err == nil {
			return measure.FeetInchesText(l)
		}
	}
	return c.Text
}

// What follows makes cells.

func text(s string) sheet.Cell  { return sheet.Cell{Kind: sheet.Text, Text: s} }
func words(s string) sheet.Cell { return sheet.Cell{Kind: sheet.Text, Text: s, Style: sheet.Words} }
func opens(s string) sheet.Cell { return sheet.Cell{Kind: sheet.Text, Text: s, Style: sheet.GroupHead} }

func number(v float64, style sheet.Style) sheet.Cell {
	return sheet.Cell{Kind: sheet.Number, Number: v, Style: style}
}

func whole(n int) sheet.Cell { return number(float64(n), sheet.Whole) }

// long is a length as one column has it: feet-inches-eighths, inches or mm.
func long(l measure.Length, style measure.Style) sheet.Cell {
	switch style {
	case measure.StyleInches:
		return number(l.Inches(), sheet.Inch)
	case measure.StyleMM:
		return number(l.Millimetres(), sheet.MM)
	}
	return sheet.Cell{Kind: sheet.Text, Text: measure.EighthsText(l), Style: sheet.Feet}
}

// small is a thickness or width: inches or mm.
func small(l measure.Length, style measure.Style) sheet.Cell {
	if style == measure.StyleMM {
		return number(l.Millimetres(), sheet.MM)
	}
	return number(l.Inches(), sheet.Inch)
}

// unit is what small lengths are in, and longUnit what long ones are.
func unit(style measure.Style) string {
	if style == measure.StyleMM {
		return "mm"
	}
	return "in"
}

func longUnit(style measure.Style) string {
	return [...]string{"ft-in-8ths", "in", "mm"}[style]
}
