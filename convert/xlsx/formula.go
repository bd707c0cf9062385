package xlsx

import (
	"regexp"
	"strings"

	"github.com/xuri/excelize/v2"

	"strakebook/convert/sheet"
)

// mostComputed is how many formulas without a stored value are worked out; the
// rest are left empty, and said.
const mostComputed = 20_000

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
	if b.computed++; b.computed > mostComputed || !b.steady() {
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
