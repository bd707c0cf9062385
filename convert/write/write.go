// Package write turns a job's result into sheets, JSON and plain tables. It
// knows sheets and the trades' nouns, but no file format.
package write

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/calc"
	"strakebook/calc/finding"
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

// pages is every sheet of the new book, in order. A sheet is added by its line
// here.
func pages(in Input) []*page {
	list := cutList(in)
	sticks, cards, drawn, jointed := boards(in, list), bevels(in), figures(in), joints(in)
	all := []*page{
		pictures(in, drawn, jointed),
		list,
		millOrder(in),
		warnings(in),
		queries(in),
		cards,
		curves(in, cards),
		scarfs(in),
		jointed,
		sticks,
		offsets(in),
		corrected(in),
		fairness(in),
		hullSheet(in),
		moulds(in),
		bevelBoard(in),
		spiling(in),
		ordinates(in),
		settings(in),
		cautions(in),
		drawn,
	}
	if len(in.Result.Hung) > 0 {
		all = slices.Insert(all, len(all)-2, hung(in))
	}
	first := summary(in, all, list, sticks) // which names those that are left out
	all = slices.DeleteFunc(all, func(p *page) bool { return len(p.rows) == 0 && !slices.Contains(always, p.called) })
	return append([]*page{first}, all...)
}

// always is the sheets that every book has: where there is nothing on one it says
// what it would need.
var always = []string{"Cut list", "Mill order", "Warnings", "Bevels", "Scarfs", "Joints", "Stock", "Offsets", "Settings", "Cautions"}

// carried says that a sheet of the builder's is carried over into the new book.
func (in Input) carried(name string) bool { return slices.Contains(in.Taken, name) }

// Laid is the sheets of the new book laid out, to go out as a workbook and as text
// files.
type Laid struct {
	in    Input
	pages []*page
}

// Lay lays the new book's sheets out.
func Lay(in Input) *Laid { return &Laid{in, pages(in)} }

// Book is the new book's own sheets, and the marks on the builder's.
func (l *Laid) Book() (*sheet.Book, []sheet.Mark) {
	in := l.in
	book := &sheet.Book{}
	taken := slices.Clone(in.Taken)
	var called []string // in formulas, and as the sheet came to be called
	for i, p := range l.pages {
		s := p.sheet(in)
		s.Name = sheet.FreeName(taken, p.called)
		taken = append(taken, s.Name)
		called = append(called, "{"+p.called+"}", "'"+strings.ReplaceAll(s.Name, "'", "''")+"'")
		book.Sheets = append(book.Sheets, s)
		book.Names = append(book.Names, sheet.Name{Name: fmt.Sprint(sheet.OursPrefix, i+1), Sheet: s.Name, Range: sheet.Range{Top: 1, Left: 1, Bottom: 1, Right: 1}})
		for _, n := range p.names {
			n.Sheet = s.Name
			book.Names = append(book.Names, n)
		}
	}
	name := strings.NewReplacer(called...)
	sheetOf := map[string]string{}
	for i := 0; i < len(called); i += 2 {
		sheetOf[strings.Trim(called[i], "{}")] = book.Sheets[i/2].Name
	}
	for _, s := range book.Sheets {
		for _, c := range s.Out.Charts {
			for l := range c.Lines {
				c.Lines[l].Sheet = sheetOf[c.Lines[l].Sheet]
			}
		}
		for _, row := range s.Rows {
			named(row, name)
		}
		for i := range s.Out.Later {
			made := s.Out.Later[i].Make
			s.Out.Later[i].Make = func(i int) []sheet.Cell { return named(made(i), name) }
		}
	}
	return book, marks(in)
}

// named is a row whose formulas name the sheets as they came to be called.
func named(row []sheet.Cell, name *strings.Replacer) []sheet.Cell {
	for c := range row {
		if f := row[c].Formula; strings.Contains(f, "{") {
			row[c].Formula = name.Replace(f)
		}
	}
	return row
}
