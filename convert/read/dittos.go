package read

import (
	"fmt"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// dittos puts in place of the ditto marks among a table's figures the figures that
// stand above them on the sheet. Where the figures bear inch marks, a mark alone
// may be what is left of one: it is left to be asked.
func (r *reader) dittos(t *stationTable) {
	var at []source.Cell
	for _, row := range t.lines {
		for _, col := range t.between(row, t.left, t.right) {
			switch c := t.see(row, col); {
			case c.Kind != sheet.Text:
			case measure.IsDitto(c.Text):
				at = append(at, t.place(row, col))
			case strings.Contains(measure.Fold(c.Text), `"`):
				return
			}
		}
	}
	n := 0
	for _, cell := range at {
		if r.undo(t, cell.Row, cell.Col) {
			n++
		}
	}
	if n > 0 {
		r.add(finding.Finding{Kind: ConventionRead, Cell: at[0], Also: at[1:],
			Text: fmt.Sprintf("%s read as the figures above them", plural(n, "ditto mark is", "ditto marks are"))})
	}
}

// undo puts the figure above in place of one ditto mark; not ok where none stands
// there.
func (r *reader) undo(t *stationTable, row, col int) bool {
	top, left, _, _ := t.bounds()
	for up := row - 1; up > top && (up > t.head || t.turned) && col >= left; up-- {
		c := t.raw(up, col)
		switch {
		case c.Kind == sheet.Text && measure.IsDitto(c.Text):
		case c.Kind == sheet.Number || c.Kind == sheet.Text && figure(c.Text):
			t.put[[2]int{row, col}] = sheet.Cell{Kind: c.Kind, Number: c.Number, Text: c.Text, Format: c.Format}
			return true
		default:
			return false
		}
	}
	return false
}

// merged reports the places under figures merged over several stations or lines:
// nothing says whether the figure holds for them too.
func (r *reader) merged(t *stationTable) {
	var under []source.Cell
	first := source.Cell{}
	for _, row := range t.lines {
		for col := t.left; col <= t.right; col++ {
			over, ok := t.covered[pair(t.swap(row, col))]
			if !ok {
				continue
			}
			top, left := t.swap(over[0], over[1])
			if c := t.see(top, left); top > t.head && left >= t.left && (c.Kind == sheet.Number || c.Kind == sheet.Text && figure(c.Text)) {
				under = append(under, t.place(row, col))
				first = t.place(top, left)
			}
		}
	}
	if len(under) > 0 {
		r.add(finding.Finding{Kind: LengthUnread, Cell: under[0], Also: append(under[1:], first),
			Text: fmt.Sprintf("%s under a merged figure: nothing says whether it holds there too", plural(len(under), "place lies", "places lie"))})
	}
}
