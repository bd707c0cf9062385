package convert

import (
	"path"
	"strings"
	"time"

	"strakebook/convert/csv"
	"strakebook/convert/sheet"
	"strakebook/templates"
)

// Demo is the demo yard's book, as its builder keeps it, faults and all.
func Demo() *sheet.Book { return carried("demo.xlsx", "demo", templates.Demo) }

// Starter is a book to begin from, filled with examples.
func Starter() *sheet.Book { return carried("starter.xlsx", "starter", templates.Starter) }

// carried is a book that the program carries with it. Its text is part of the
// program, so that a fault in it is a programmer's and panics.
func carried(name, folder string, sheets []string) *sheet.Book {
	b := &sheet.Book{Path: name, Name: name, Kind: "xlsx"}
	for _, title := range sheets {
		text, err := templates.Books.ReadFile(path.Join(folder, title+".csv"))
		if err != nil {
			panic("convert: " + err.Error())
		}
		one, err := csv.Read(title+".csv", text)
		if err != nil {
			panic("convert: " + err.Error())
		}
		s := one.Sheets[0]
		for r := range s.Rows {
			for c := range s.Rows[r] {
				s.Rows[r][c] = dated(s.Rows[r][c])
			}
		}
		b.Sheets = append(b.Sheets, s)
	}
	return b
}

// dated is a cell, turned into a date where it stands for one that a spreadsheet
// took for a date.
func dated(c sheet.Cell) sheet.Cell {
	day, ok := strings.CutPrefix(c.Text, templates.DatePrefix)
	if !ok || c.Kind != sheet.Text {
		return c
	}
	t, err := time.Parse(time.DateOnly, day)
	if err != nil {
		panic("convert: " + err.Error())
	}
	zero := time.Date(1899, 12, 30, 0, 0, 0, 0, time.UTC)
	return sheet.Cell{Kind: sheet.Date, Number: t.Sub(zero).Hours() / 24, Text: day, Format: "yyyy-mm-dd"}
}
