package read

import (
	"slices"
	"strings"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// wordsOnly says that a row holds texts alone, as rows of headings do.
func (p *page) wordsOnly(row int) bool {
	if row > p.rows {
		return false
	}
	any := false
	for _, col := range p.filled[0][row] {
		c := p.at(row, col)
		if c.Kind == sheet.Empty {
			continue
		}
		if c.Kind != sheet.Text || len(measure.Notations(c.Text)) > 0 {
			return false
		}
		any = true
	}
	return any
}

// headColumns is the columns in which some rows hold a heading, merged ones
// included.
func (r *reader) headColumns(p *page, top, bottom int) []int {
	var all []int
	for row := top; row <= bottom; row++ {
		if row > p.rows {
			break
		}
		for _, col := range p.filled[0][row] {
			if !p.used[[2]int{row, col}] { // those of a table beside, read before
				all = append(all, col)
			}
		}
	}
	if top < bottom {
		for at, over := range p.covered {
			if over[0] >= top && at[0] <= bottom && at[0] >= top && at[1] != over[1] && !p.used[over] {
				all = append(all, at[1])
			}
		}
	}
	slices.Sort(all)
	return slices.Compact(all)
}

// namesLine says that a heading is one line of the hull by its name: WL 6, deck.
func (r *reader) namesLine(heading string) bool {
	switch r.lineMeaning(heading) {
	case "":
		return false
	case "waterline", "buttock", "breadths", "heights":
		return r.words.heading(heading) == "" && strings.ContainsAny(unlevelledUnits(heading), "0123456789")
	}
	return true
}

// linesBelow says that a row names lines of the hull and holds nothing else: what
// stands over it are the titles of a table of stations.
func (r *reader) linesBelow(p *page, row int) bool {
	n := 0
	if !p.wordsOnly(row) {
		return false
	}
	for _, col := range p.filled[0][row] {
		if r.namesLine(text(p.at(row, col))) {
			n++
		}
	}
	return n >= 2 && 2*n > len(p.filled[0][row])
}

// unlevelledUnits is a heading without what it says of its unit, whose figures
// name no line: (1/8 in.).
func unlevelledUnits(heading string) string {
	return strings.ReplaceAll(inBrackets.ReplaceAllString(strings.ToLower(measure.Fold(heading)), " "), "8ths", "")
}

// addsBelow says that the last row of the headings holds headings, and not the
// first record or units.
func (r *reader) addsBelow(t *records) bool {
	n := 0
	for _, col := range t.cols {
		c := t.page.at(t.head, col)
		if c.Kind != sheet.Text {
			continue
		}
		if _, unit := bareUnit(c.Text); unit || figure(c.Text) {
			return false
		}
		if r.words.heading(c.Text) != "" || r.words.heading(t.heads[col]) != "" {
			n++
		}
	}
	return n > 0
}

// beside says that what follows a blank column is no heading of a table: its
// kind has none such, or it has it already.
func (r *reader) beside(t *records, c sheet.Cell) bool {
	m := r.words.of(c)
	_, twice := t.cols[m]
	return m == "" || twice || slices.Contains(t.kind.never, m)
}
