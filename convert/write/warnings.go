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
	p := table("Warnings", "warnings", col("No.", 6), col("How bad", 10), col("Where", 16), col("What", 44), col("Reads", 14), col("Suggests", 26), col("What to do", 38), col("Decision", 12), col("Code", 20))
	p.csv = true
	p.empty = "Nothing was found."
	p.note("Where links to the marked cell. In Decision write take for the first thing suggested, or a value of your own, and hand this book back.")
	for i, f := range in.Findings {
		where := sheet.Cell{Kind: sheet.Text, Text: f.Cell.String()}
		if ref := f.Cell.Ref(); ref != "" && in.carried(f.Cell.Sheet) {
			where.Link, where.Style = "'"+strings.ReplaceAll(f.Cell.Sheet, "'", "''")+"'!"+ref, sheet.LinkText
		}
		p.line(whole(i+1), text(f.Severity.String()), where, words(f.Text), words(f.Reads), words(f.Suggests), words(f.ToDo()), sheet.Cell{Style: sheet.Input}, words(f.Code))
	}
	if n := len(p.rows); n > 0 {
		p.drop = []sheet.DropDown{{Range: sheet.Range{Top: 2, Left: 8, Bottom: 1 + n, Right: 8}, Words: []string{"take"}}}
	}
	return p
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
