package write

import (
	"fmt"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// warnings is every finding, the worst first.
func warnings(in Input) *page {
	p := table("Warnings", "warnings", col("No.", 5), col("How bad", 9), col("Where", 14), col("What", 38), col("Reads", 12), col("Suggests", 23), col("What to do", 34), col("Decision", 14), col("Code", 17), col("Row and column", 17))
	p.csv = true
	p.empty = "Nothing was found."
	p.note("Where links to the marked cell. In Decision write take for the first thing suggested, keep to let it stand, undo to take back what you decided before, or a value of your own, and hand this book back.")
	ones := map[*sheet.Sheet]map[string]sheet.One{}
	for i, f := range in.Findings {
		where := in.linked(text(f.Cell.String()), f.Cell)
		p.line(whole(i+1), text(f.Severity.String()), where, words(f.Text), words(f.Reads), words(f.Suggests), words(f.ToDo()), decision(f), words(f.Code), words(in.beside(f.Cell, ones)))
	}
	if n := len(p.rows); n > 0 {
		p.drop = []sheet.DropDown{{Range: sheet.Range{Top: 2, Left: 8, Bottom: 1 + n, Right: 8}, Words: []string{"take", "keep"}}}
	}
	return p
}

// decision is where the builder writes what he decides of a finding, with what
// holds already.
func decision(f finding.Finding) sheet.Cell {
	if f.Decision == "" {
		return sheet.Cell{Style: sheet.Input}
	}
	c := words(f.Decision)
	c.Style = sheet.Input
	return c
}

// beside is the row and column of a cell of the builder's, in his own words: by them a
// decision finds its place again, or is known to have lost it. Ones is the cells of the
// sheets looked at.
func (in Input) beside(c source.Cell, ones map[*sheet.Sheet]map[string]sheet.One) string {
	for _, b := range in.Books {
		for _, s := range b.Sheets {
			if b.Name == c.Book && s.Name == c.Sheet && c.Row > 0 {
				if _, seen := ones[s]; !seen {
					ones[s] = s.Ones()
				}
				return sheet.OneOf(s.Beside(c.Row, c.Col), ones[s])
			}
		}
	}
	return ""
}

// linked is a cell that leads to a cell of the builder's, where that is carried
// over.
func (in Input) linked(c sheet.Cell, to source.Cell) sheet.Cell {
	if ref := to.Ref(); ref != "" && in.carried(to.Sheet) && (len(in.Books) == 0 || to.Book == in.Books[0].Name) {
		c.Link, c.Style = "'"+strings.ReplaceAll(to.Sheet, "'", "''")+"'!"+ref, sheet.LinkText
	}
	return c
}

// marks is the cells of the carried sheets to be marked, one mark a cell.
func marks(in Input) []sheet.Mark {
	at := map[source.Cell]int{}
	var all []sheet.Mark
	for _, f := range in.Findings {
		if f.Severity == finding.Note || f.Cell.Ref() == "" || !in.carried(f.Cell.Sheet) || (len(in.Books) > 0 && f.Cell.Book != in.Books[0].Name) {
			continue
		}
		note := fmt.Sprintf("%s: %s", f.Severity, f.Text)
		if f.Suggests != "" {
			note += "\nSuggests: " + f.Suggests
		}
		note += "\nTo do: " + f.ToDo()
		if i, twice := at[f.Cell]; twice {
			all[i].Note += "\n" + note
			continue
		}
		style := sheet.Unsure
		if f.Severity == finding.Error {
			style = sheet.Wrong
		}
		at[f.Cell] = len(all)
		all = append(all, sheet.Mark{Sheet: f.Cell.Sheet, Row: f.Cell.Row, Col: f.Cell.Col, Style: style, Note: note})
	}
	return all
}
