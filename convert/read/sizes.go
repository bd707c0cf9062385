package read

import (
	"fmt"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// Lists of planks and boards often give their size in one column: 1 x 6, or
// 25 x 150 x 4200. Each field is read from its part of the cell.

// sizeParts is the parts of a size: two or three; nil where a text is none. Inches
// or millimetres after the last are of those before it too; feet and metres are of
// a length alone.
func sizeParts(t string) []string {
	low := strings.ToLower(measure.Fold(t))
	parts := strings.FieldsFunc(strings.NewReplacer("×", "x", "*", "x", " by ", "x").Replace(low), func(c rune) bool { return c == 'x' })
	if len(parts) < 2 || len(parts) > 3 {
		return nil
	}
	unit := measure.NoUnit
	for i := len(parts) - 1; i >= 0; i-- {
		p := strings.TrimSpace(parts[i])
		if len(measure.Notations(p)) == 0 && measure.MarkedUnit(p) == measure.NoUnit {
			return nil
		}
		switch u := measure.MarkedUnit(p); {
		case u == measure.InFeet || u == measure.InMetres:
		case u != measure.NoUnit:
			unit = u
		case unit != measure.NoUnit:
			p += " " + unitMark(unit)
		}
		parts[i] = p
	}
	return parts
}

// sized takes a column of sizes for the columns of thickness and width, where the
// list has none, and for the length where its sizes have three parts.
func (r *reader) sized(t *records, col int) {
	for _, m := range []string{"thickness", "width"} {
		if _, have := t.cols[m]; have {
			return
		}
	}
	parts := 0
	for row := t.head + 1; row <= t.page.rows; row++ {
		parts = max(parts, len(sizeParts(text(t.page.at(row, col)))))
	}
	if parts < 2 {
		return
	}
	t.size = col
	t.cols["thickness"], t.cols["width"] = col, col
	form, said := headUnit(t.heads[col])
	if said {
		t.said["thickness"], t.said["width"] = form, form
	}
	if _, have := t.cols["length"]; !have && parts == 3 {
		t.cols["length"] = col
		if form.Unit >= measure.InMillimetres {
			t.said["length"] = form
		}
	}
	if t.left == 0 || col < t.left {
		t.left = col
	}
	t.right = max(t.right, col)
}

// ofSize is the part of a size that a field is: the smaller of the first two is
// the thickness, but where the heading names their order.
func (t *records) ofSize(c sheet.Cell, field string) sheet.Cell {
	parts := sizeParts(text(c))
	switch {
	case !filled(c) || c.Kind == sheet.Text && (measure.IsDash(c.Text) || measure.IsDitto(c.Text)):
		return c
	case len(parts) == 0:
		return sheet.Cell{Kind: sheet.Fault, Text: text(c)}
	}
	k := map[string]int{"thickness": 0, "width": 1, "length": 2}[field]
	if k == 2 && len(parts) == 2 {
		return sheet.Cell{}
	}
	first, errA := measure.ParseLength(parts[0], measure.InInches)
	second, errB := measure.ParseLength(parts[1], measure.InInches)
	if head := tokens(t.heads[t.size]); k < 2 && (widthFirst(head) || !thicknessFirst(head) && errA == nil && errB == nil && first > second) {
		k = 1 - k
	}
	return sheet.Cell{Kind: sheet.Text, Text: parts[k]}
}

func thicknessFirst(head []string) bool { return len(head) > 0 && strings.HasPrefix(head[0], "t") }

func widthFirst(head []string) bool { return len(head) > 0 && strings.HasPrefix(head[0], "w") }

// sizesSaid tells how the sizes of a list were read.
func (r *reader) sizesSaid(t *records) {
	if t.size == 0 {
		return
	}
	for _, row := range t.rows {
		c := t.page.raw(row, t.size)
		if len(sizeParts(text(c))) == 0 {
			continue
		}
		thick, width := text(t.ofSize(c, "thickness")), text(t.ofSize(c, "width"))
		r.add(finding.Finding{Kind: ConventionRead, Cell: t.page.cell(t.head, t.size),
			Text: fmt.Sprintf("the sizes are read as they stand, %q as %s thick and %s wide: lumber sold dressed by such a name is less", text(c), thick, width)})
		return
	}
}
