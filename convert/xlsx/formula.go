package xlsx

import (
	"regexp"
	"strings"

	"github.com/xuri/excelize/v2"

	"strakebook/convert/sheet"
)

// mostVisited is how many cells the formulas without a stored value may name in all
// for them to be worked out, each formula one more; the rest are left empty, and said.
const mostVisited = 200_000

// unsteady is the functions whose value is not the book's own: of the clock or of chance.
var unsteady = regexp.MustCompile(`(?i)\b(NOW|TODAY|RAND|RANDBETWEEN|RANDARRAY)\s*\(`)

// wholeLine is a whole column or row named in a formula, which takes the library minutes.
var wholeLine = regexp.MustCompile(`(?i)(^|[^A-Z0-9$])\$?[A-Z]{1,3}:\$?[A-Z]{1,3}\b|(^|[^A-Z0-9$])\$?[0-9]+:\$?[0-9]+\b`)

// formula reads a cell's formula, and works out its value where none was stored
// and it follows from the book alone.
func (b *builder) formula(out *sheet.Cell, name string, c *rawCell) error {
	out.Formula = c.formula
	at, err := excelize.CoordinatesToCellName(c.col, c.row)
	if err != nil {
		return err
	}
	if out.Formula == "" {
		if out.Formula, err = b.file.GetCellFormula(name, at); err != nil {
			return err
		}
	}
	if c.hasValue {
		return nil
	}
	out.NoValue = true
	if b.ours(name) {
		return nil // what is read of our own sheets is no formula
	}
	_, cells, away := names(out.Formula)
	if b.visited += 1 + cells + away*b.waiting(); b.visited > mostVisited || !b.steady() {
		return nil
	}
	text, err := b.file.CalcCellValue(name, at, excelize.Options{RawCellValue: true})
	switch {
	case strings.HasPrefix(text, "#"):
		out.Kind, out.Text = sheet.Fault, text
		return nil
	case err != nil || text == "":
		return nil // said by the reading stage: a formula never worked out
	}
	if v, ok := number(text); ok {
		var form format
		if c.style < len(b.formats) {
			form = b.formats[c.style]
		}
		out.Kind, out.Number, out.Text = sheet.Number, v, b.show(c.style, text, form)
		// What follows from this formula finds its value, and does not work it out again.
		if err := b.file.SetCellFloat(name, at, v, -1, 64); err != nil {
			return err
		}
		if form.code != "" {
			out.Kind = form.kind
		}
		if out.Kind == sheet.Date && b.date1904 {
			out.Number += days1904
		}
		return nil
	}
	out.Kind, out.Text = sheet.Text, text
	return nil
}

// cellsNamed is a cell or a block of cells that a formula names, and the mark of another
// sheet before it.
var cellsNamed = regexp.MustCompile(`(!?)\$?\b([A-Z]{1,3})\$?([0-9]{1,7})(?::\$?([A-Z]{1,3})\$?([0-9]{1,7}))?\b`)

// names is the blocks of its own sheet that a formula names, how many cells all that
// it names hold, and how many times it names another sheet.
func names(formula string) (own []sheet.Range, area, away int) {
	for _, m := range cellsNamed.FindAllStringSubmatch(formula, -1) {
		left, top, err := excelize.CellNameToCoordinates(m[2] + m[3])
		right, bottom := left, top
		if m[4] != "" && err == nil {
			right, bottom, err = excelize.CellNameToCoordinates(m[4] + m[5])
		}
		if err != nil {
			continue
		}
		r := sheet.Range{Top: min(top, bottom), Left: min(left, right), Bottom: max(top, bottom), Right: max(left, right)}
		area += (r.Right - r.Left + 1) * (r.Bottom - r.Top + 1)
		if m[1] == "" {
			own = append(own, r)
		} else {
			away++
		}
	}
	return own, area, away
}

// inOrder is the formulas of a sheet that have no stored value, each after those it
// names as far as that can be: the library works out again whatever a formula needs,
// and a long run of them from the foot up would keep it for ever.
func (b *builder) inOrder(name string, late []*rawCell) []*rawCell {
	if b.ours(name) || len(late) > mostVisited {
		return late
	}
	at := make(map[[2]int]*rawCell, len(late))
	for _, c := range late {
		at[[2]int{c.row, c.col}] = c
	}
	var order []*rawCell
	cost := 0
	var visit func(c *rawCell)
	visit = func(c *rawCell) {
		delete(at, [2]int{c.row, c.col})
		own, area, _ := names(b.text(name, c))
		if cost += area; cost <= mostVisited {
			for _, r := range own {
				for row := r.Top; row <= r.Bottom && len(at) > 0; row++ {
					for col := r.Left; col <= r.Right; col++ {
						if before := at[[2]int{row, col}]; before != nil {
							visit(before)
						}
					}
				}
			}
		}
		order = append(order, c)
	}
	for _, c := range late {
		if at[[2]int{c.row, c.col}] != nil {
			visit(c)
		}
	}
	return order
}

// text is a cell's formula; one shared with other cells the library writes out.
func (b *builder) text(name string, c *rawCell) string {
	at, err := excelize.CoordinatesToCellName(c.col, c.row)
	if err == nil && c.formula == "" {
		c.formula, _ = b.file.GetCellFormula(name, at)
	}
	return c.formula
}

// waiting is how many formulas of the book have no stored value, of which one that
// names another sheet may need every one.
func (b *builder) waiting() int {
	if b.unvalued == 0 {
		for _, g := range b.grids {
			for i := 0; g != nil && i < len(g.cells); i++ {
				if c := &g.cells[i]; c.hasFormula && !c.hasValue {
					b.unvalued++
				}
			}
		}
	}
	return b.unvalued
}

// steady says that nothing in the book depends on the clock or on chance, or
// takes in whole columns: the library works out again whatever a formula needs.
func (b *builder) steady() bool {
	if b.unsteady == nil {
		found := false
		for _, g := range b.grids {
			if g == nil {
				continue
			}
			for i := range g.cells {
				if f := g.cells[i].formula; f != "" && (unsteady.MatchString(f) || wholeLine.MatchString(f)) {
					found = true
				}
			}
		}
		b.unsteady = &found
	}
	return !*b.unsteady
}
