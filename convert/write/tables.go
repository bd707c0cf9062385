package write

import (
	"fmt"
	"strings"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// Table is one table as plain rows, its headings first.
type Table struct {
	Name string
	Rows [][]string
}

// Tables is the tables that go out as text files, headed as the sheets are.
// Totals and headings of groups are left out: they are no lines of a table.
func Tables(in Input) []Table {
	var all []Table
	for _, p := range pages(in) {
		if p.csv {
			all = append(all, p.table())
		}
	}
	return all
}

// table is a page as plain rows.
func (p *page) table() Table {
	heads := make([]string, len(p.cols))
	for i, c := range p.cols {
		heads[i] = c.head
	}
	t := Table{Name: strings.ReplaceAll(strings.ToLower(p.called), " ", "-"), Rows: [][]string{heads}}
	for i, cells := range p.rows {
		if p.asides[i] {
			continue
		}
		row := make([]string, len(heads))
		for c, cell := range cells {
			if c < len(row) {
				row[c] = plain(cell)
			}
		}
		t.Rows = append(t.Rows, row)
	}
	return t
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
