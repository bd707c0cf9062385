package read

import (
	"fmt"
	"strings"

	"strakebook/calc"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// leftovers notes what of a page no table used: a sheet without any, and figures
// outside of them. Words outside of tables are titles and remarks.
func (r *reader) leftovers(p *page) {
	whole := source.Cell{Book: p.book.Name, Sheet: p.sheet.Name}
	any, figures := false, []source.Cell{}
	computed := []source.Cell{}
	for row := 1; row <= p.rows; row++ {
		for col := 1; col <= p.cols; col++ {
			c := p.sheet.At(row, col)
			if !filled(c) {
				continue
			}
			any = true
			if c.NoValue && c.Kind != sheet.Empty && p.used[[2]int{row, col}] {
				computed = append(computed, p.cell(row, col))
			}
			if !p.used[[2]int{row, col}] && c.Kind != sheet.Text {
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
	if len(p.used) == 0 {
		r.add(finding.Finding{Kind: SheetUnused, Cell: whole, Text: "no table known here was found on the sheet"})
		return
	}
	if len(figures) > 0 {
		r.add(finding.Finding{Kind: CellsUnused, Cell: figures[0], Also: figures[1:], Text: fmt.Sprintf("%s outside of any table, at %s", plural(len(figures), "figure lies", "figures lie"), list(figures))})
	}
	if len(computed) > 0 {
		r.add(finding.Finding{Kind: FormulaUnworked, Cell: computed[0], Also: computed[1:], Text: fmt.Sprintf("%s no result in the file and worked out here, at %s", plural(len(computed), "formula had", "formulas had"), list(computed))})
	}
	hidden := false
	for at := range p.used {
		hidden = hidden || p.sheet.HiddenRows[at[0]] || p.sheet.HiddenCols[at[1]]
	}
	if hidden {
		r.add(finding.Finding{Kind: RowsHidden, Cell: whole, Text: "a table on the sheet has hidden rows or columns"})
	}
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

// scaled turns tables of fractions into lengths where Settings give the half
// beam; else they stay pure numbers, good for fairness alone.
func (r *reader) scaled() {
	beam := r.rules.Hull.HalfBeam
	for i := range r.job.Offsets {
		o := &r.job.Offsets[i]
		if !o.Fractions || beam == 0 {
			continue
		}
		scale := beam.Feet() / measure.Metre.Feet()
		for k := range o.Lines {
			l := &o.Lines[k]
			if l.View != hull.HalfBreadth {
				continue
			}
			for v := range l.Values {
				l.Values[v].Value = l.Values[v].Value.Times(scale)
			}
		}
		o.Resolution = max(1, o.Resolution.Times(scale))
	}
}

// back takes from a sheet of ours the decisions that the builder wrote on it.
func (r *reader) back(p *page) {
	head, cols := 0, map[string]int{}
	for row := 1; row <= min(p.rows, 10) && head == 0; row++ {
		for col := 1; col <= p.cols; col++ {
			switch t := text(p.sheet.At(row, col)); t {
			case "Where", "Decision", "Code":
				cols[t] = col
			}
		}
		if len(cols) == 3 {
			head = row
		}
	}
	if head == 0 {
		return
	}
	for row := head + 1; row <= p.rows; row++ {
		decision := text(p.sheet.At(row, cols["Decision"]))
		name, ref, ok := cutLast(text(p.sheet.At(row, cols["Where"])), "!")
		col, line, fine := address(ref)
		if decision == "" || !ok || !fine {
			continue
		}
		d := calc.Decision{Cell: source.Cell{Book: p.book.Name, Sheet: name, Row: line, Col: col}, Code: text(p.sheet.At(row, cols["Code"]))}
		if strings.EqualFold(decision, "take") {
			d.Take = true
		} else {
			d.Value = decision
		}
		r.job.Decisions = append(r.job.Decisions, d)
	}
}

func cutLast(s, sep string) (before, after string, found bool) {
	i := strings.LastIndex(s, sep)
	if i < 0 {
		return s, "", false
	}
	return s[:i], s[i+len(sep):], true
}
