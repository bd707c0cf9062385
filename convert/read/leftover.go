package read

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// mostNamed is the most cells that a note of cells left over names one by one.
const mostNamed = 50

// leftovers notes what of a page no table used: a sheet without any, and figures
// outside of them. Words outside of tables are titles and remarks.
func (r *reader) leftovers(p *page) {
	whole := source.Cell{Book: p.book.Name, Sheet: p.sheet.Name}
	var figures, computed, noted []source.Cell
	any, hidden := false, false
	for row := 1; row <= p.rows; row++ {
		for _, col := range p.filled[0][row] {
			c, used := p.raw(row, col), p.used[[2]int{row, col}]
			any = true
			if used && c.NoValue && c.Kind != sheet.Empty {
				computed = append(computed, p.cell(row, col))
			}
			if used && c.Note != "" && (c.Kind != sheet.Text || figure(c.Text)) {
				noted = append(noted, p.cell(row, col))
			}
			hidden = hidden || used && (p.sheet.HiddenRows[row] || p.sheet.HiddenCols[col])
			if !used && (c.Kind != sheet.Text || figure(c.Text) || r.lone(c)) {
				figures = append(figures, p.cell(row, col))
			}
		}
	}
	if !any {
		return
	}
	if p.sheet.Hidden {
		r.add(finding.Finding{Kind: SheetHidden, Cell: whole, Text: "the sheet is hidden"})
	}
	if p.tables == 0 {
		text := "no table known here was found on the sheet"
		if n := len(figures); n > 0 {
			text += ": " + plural(n, "figure on it was", "figures on it were") + " left, at " + blocks(figures)
		}
		r.add(finding.Finding{Kind: SheetUnused, Cell: whole, Text: text})
		return
	}
	if at, many := largest(figures); many {
		r.add(finding.Finding{Kind: TableUnknown, Cell: at, Text: "figures like those of a table were left, at " + blocks(figures)})
	} else if len(figures) > 0 {
		r.add(finding.Finding{Kind: CellsUnused, Cell: figures[0], Also: figures[1:min(len(figures), mostNamed)],
			Text: fmt.Sprintf("%s outside of any table, at %s", plural(len(figures), "figure lies", "figures lie"), blocks(figures))})
	}
	if len(computed) > 0 {
		r.add(finding.Finding{Kind: FormulaUnworked, Cell: computed[0], Also: computed[1:], Text: fmt.Sprintf("%s no result in the file: worked out here, at %s", plural(len(computed), "formula had", "formulas had"), list(computed))})
	}
	if len(noted) > 0 {
		r.add(finding.Finding{Kind: NotesUnread, Cell: noted[0], Also: noted[1:], Text: fmt.Sprintf("%s beside them that were not read, at %s", plural(len(noted), "figure has notes", "figures have notes"), list(noted))})
	}
	if hidden {
		r.add(finding.Finding{Kind: RowsHidden, Cell: whole, Text: "a table on the sheet has hidden rows or columns: they were read like the others"})
	}
}

// lone says that a text is the name of a station by its number, and no remark.
func (r *reader) lone(c sheet.Cell) bool {
	n, ok := r.stationName(c)
	return ok && n.numbered && n.worded
}

func plural(n int, one, many string) string {
	if n == 1 {
		return "one " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}

// list is the addresses of some cells, five at most.
func list(cells []source.Cell) string {
	var refs []string
	for i, c := range cells {
		if i == 5 {
			refs = append(refs, "...")
			break
		}
		refs = append(refs, c.Ref())
	}
	return strings.Join(refs, ", ")
}

// block is a run of cells beside and below one another.
type block struct{ top, left, bottom, right int }

// largest is where the largest block of some cells begins; many is true where it
// is large enough to be a table: sixteen figures in four rows and columns or more.
func largest(cells []source.Cell) (at source.Cell, many bool) {
	for _, b := range blocksOf(cells) {
		n := 0
		for _, c := range cells {
			if c.Row >= b.top && c.Row <= b.bottom && c.Col >= b.left && c.Col <= b.right {
				if n++; n == 1 {
					at = c
				}
			}
		}
		if n >= 16 && b.bottom-b.top >= 3 && b.right-b.left >= 3 {
			return at, true
		}
	}
	return at, false
}

// blocks is the places of some cells, those of one sheet in order of its rows,
// as blocks that hold them all.
func blocks(cells []source.Cell) string {
	all := blocksOf(cells)
	var refs []string
	for i, b := range all {
		if i == 8 {
			refs = append(refs, fmt.Sprintf("and %s more", plural(len(all)-i, "place", "places")))
			break
		}
		from, to := source.Cell{Row: b.top, Col: b.left}.Ref(), source.Cell{Row: b.bottom, Col: b.right}.Ref()
		if from != to {
			from += ":" + to
		}
		refs = append(refs, from)
	}
	return strings.Join(refs, ", ")
}

// blocksOf is some cells, in order of their rows, as blocks that hold them all.
func blocksOf(cells []source.Cell) []block {
	var all []block
	for _, c := range cells {
		k := slices.IndexFunc(all, func(b block) bool {
			return c.Row >= b.top && c.Row <= b.bottom+1 && c.Col >= b.left-1 && c.Col <= b.right+1
		})
		if k < 0 {
			all = append(all, block{c.Row, c.Col, c.Row, c.Col})
			continue
		}
		b := &all[k]
		b.bottom, b.left, b.right = max(b.bottom, c.Row), min(b.left, c.Col), max(b.right, c.Col)
	}
	return all
}
