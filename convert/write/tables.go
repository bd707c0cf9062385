package write

import (
	"fmt"
	"iter"
	"strings"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// Table is one table as plain rows, its headings first, each made as it is asked
// for.
type Table struct {
	Name string
	Rows iter.Seq[[]string]
}

// Tables is the tables that go out as text files, headed as the sheets are but for
// lengths in feet and inches.
// Totals and headings of groups are left out: they are no lines of a table. What only
// such a heading says stands in columns after the others, where the page has them.
func (l *Laid) Tables() []Table {
	var all []Table
	for _, p := range l.pages {
		if p.csv {
			all = append(all, Table{Name: strings.ReplaceAll(strings.ToLower(p.called), " ", "-"), Rows: p.plainRows()})
		}
	}
	return all
}

// plainRows is a page as plain rows.
func (p *page) plainRows() iter.Seq[[]string] {
	return func(yield func([]string) bool) {
		heads := make([]string, len(p.cols))
		for i, c := range p.cols {
			heads[i] = c.head
			if inEighths(c) {
				heads[i] = strings.TrimSuffix(c.head, longUnit(measure.StyleFeet)) + "ft and in"
			}
		}
		if !yield(append(heads, p.opened...)) {
			return
		}
		group := heading{}
		for row, line := range p.each() {
			if p.asides[row-1] {
				group.add(line)
				continue
			}
			fields := make([]string, len(heads), len(heads)+len(p.opened))
			for c := range min(len(line), len(fields)) {
				fields[c] = plain(line[c], inEighths(p.cols[c]))
			}
			if !yield(append(fields, group.columns(len(p.opened))...)) {
				return
			}
		}
	}
}

// heading is what opens a group of lines: its title, and what else it says.
type heading struct{ title, says string }

// add takes in a row of a heading.
func (h *heading) add(row []sheet.Cell) {
	var words []string
	for _, c := range row {
		if w := plain(c, false); w != "" {
			words = append(words, w)
		}
	}
	text := strings.Join(words, " ")
	switch {
	case len(row) > 0 && (row[0].Style == sheet.Title || row[0].Style == sheet.GroupHead):
		h.title, h.says = text, ""
	case text != "":
		h.says = strings.TrimSpace(h.says + " " + text)
	}
}

// columns is the title, on every line of its group, and what else it says, on the first.
func (h *heading) columns(count int) []string {
	all := []string{h.title, h.says}[:count]
	h.says = ""
	return all
}

// inEighths says that a column is of feet-inches-eighths, which go out as feet and
// inches.
func inEighths(c column) bool { return strings.HasSuffix(c.head, longUnit(measure.StyleFeet)) }

// plain is a cell in a text file: figures as decimals, and feet-inches-eighths,
// which stand under their heading or in cells for them, marked ones among these,
// as feet and inches, which no spreadsheet takes for a date.
func plain(c sheet.Cell, eighths bool) string {
	if c.Kind == sheet.Number {
		return strings.TrimSuffix(strings.TrimRight(fmt.Sprintf("%.4f", c.Number), "0"), ".")
	}
	if eighths || c.Style == sheet.Feet || c.Style == sheet.Unsure || c.Style == sheet.Wrong {
		if l, err := (measure.Form{Notation: measure.FeetInchesEighths}).Length(c.Text); err == nil {
			return measure.FeetInchesText(l)
		}
	}
	return c.Text
}
