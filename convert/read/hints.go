package read

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// A book's own names are hints: what a block is called is a title over it, a
// spreadsheet's own table ends where it says, and a cell called as a setting is
// one.

// TableEdge is figures just beyond the edge of a spreadsheet's own table.
var TableEdge = &finding.Kind{
	Code: "table-edge", Severity: finding.Warning, Title: "figures just beyond the edge of a spreadsheet's own table",
	Why:    "The book draws the table's edge before them, so they were left; they may have been meant for it.",
	Remedy: "pull the table's corner over them where they belong to it, else leave a blank row or column between",
}

// hint is a name of the book, and its words.
type hint struct {
	sheet.Name
	words string // HalfBreadths as Half Breadths
}

// hintsOf is the builder's names that lie on a sheet, the smallest block first.
func hintsOf(b *sheet.Book, s *sheet.Sheet) []hint {
	var all []hint
	for _, n := range b.Names {
		if strings.EqualFold(n.Sheet, s.Name) && !strings.HasPrefix(n.Name, sheet.NamePrefix) {
			all = append(all, hint{n, nameWords(n.Name)})
		}
	}
	size := func(g sheet.Range) int { return (g.Bottom - g.Top + 1) * (g.Right - g.Left + 1) }
	slices.SortStableFunc(all, func(a, b hint) int { return size(a.Range) - size(b.Range) })
	return all
}

var (
	humps = regexp.MustCompile(`([a-z0-9])([A-Z])`)
	caps  = regexp.MustCompile(`([A-Z])([A-Z][a-z])`)
)

// nameWords is a name as words: HalfBreadths_mm as Half Breadths mm.
func nameWords(name string) string {
	t := strings.NewReplacer("_", " ", ".", " ").Replace(name)
	t = humps.ReplaceAllString(t, "$1 $2")
	return strings.Join(strings.Fields(caps.ReplaceAllString(t, "$1 $2")), " ")
}

// called is what the book's names say over a block: those of its first cell, and
// those that hold the half of it and more. Names of one line or column within it
// say nothing of the whole.
func (p *page) called(top, left, bottom, right int) []string {
	var all []string
	for _, h := range p.hints {
		rows := min(bottom, h.Range.Bottom) - max(top, h.Range.Top) + 1
		cols := min(right, h.Range.Right) - max(left, h.Range.Left) + 1
		if rows < 1 || cols < 1 {
			continue
		}
		row, col, one := h.cell()
		if one && row == top && col == left || !one && 2*rows >= bottom-top+1 && 2*cols > right-left+1 {
			all = append(all, h.words)
		}
	}
	return all
}

// calledSo is what the book's names say over a block, as show tells it.
func (p *page) calledSo(top, left, bottom, right int) []string {
	var all []string
	for _, words := range p.called(top, left, bottom, right) {
		all = append(all, fmt.Sprintf("the book calls it %q", words))
	}
	return all
}

// block is what the book calls the smallest block that holds a cell; "" for none.
func (p *page) block(row, col int) string {
	for _, h := range p.hints {
		if _, _, one := h.cell(); !one && h.holds(row, col) {
			return h.Name.Name
		}
	}
	return ""
}

func (h hint) holds(row, col int) bool {
	return row >= h.Range.Top && row <= h.Range.Bottom && col >= h.Range.Left && col <= h.Range.Right
}

// edge is where a table that has a cell in its headings must end: at the edges
// of the spreadsheet's own table around it. Ok is false where there is none.
func (p *page) edge(row, col int) (g sheet.Range, ok bool) {
	for _, h := range p.hints {
		if h.Table && h.holds(row, col) {
			return h.Range, true
		}
	}
	return sheet.Range{}, false
}

// edgeOf is the edge about a place of the grid.
func (g grid) edgeOf(row, col int) (sheet.Range, bool) {
	e, ok := g.edge(g.swap(row, col))
	if g.turned {
		e = sheet.Range{Top: e.Left, Left: e.Top, Bottom: e.Right, Right: e.Bottom}
	}
	return e, ok
}

// overEdge reports figures that follow a table just beyond its edge.
func (r *reader) overEdge(at source.Cell, reads string) {
	r.add(finding.Finding{Kind: TableEdge, Cell: at, Reads: reads, Text: "figures follow just beyond the edge of the spreadsheet's own table and were left"})
}

// namedSettings takes as settings the cells that the book names as one, where no
// table or line of settings gives it from that cell.
func (r *reader) namedSettings(p *page) {
	known := map[string]bool{}
	for _, s := range r.rules.Settings() {
		known[settingName(s.Name)] = true
	}
	for _, h := range p.hints {
		row, col, one := h.cell()
		c := p.raw(row, col)
		at := p.cell(row, col)
		switch name := settingName(h.words); {
		case !one || !filled(c) || name == "units" || name == "date" || name == "paper",
			slices.ContainsFunc(r.given, func(g givenSetting) bool { return g.valueAt == at }):
		case known[name]:
			g := givenSetting{name: name, value: settingText(c), nameAt: at, valueAt: at}
			if form, ok := bareUnit(text(p.raw(row, col+1))); ok && form.Unit != measure.NoUnit {
				g.unit = form.Unit.String()
			}
			r.given = append(r.given, g)
			p.named = append(p.named, at)
		}
	}
}

// cell is the one cell that a name stands for.
func (h hint) cell() (row, col int, one bool) {
	return h.Range.Top, h.Range.Left, h.Range.Top == h.Range.Bottom && h.Range.Left == h.Range.Right && !h.Table
}

// namedCells ticks off the cells taken as settings by their names, and asks of
// those that have the name of several settings and are no part of a table: a kerf
// may be of any saw.
func (r *reader) namedCells(p *page) {
	for _, at := range p.named {
		p.use(at.Row, at.Col)
		p.tables++
	}
	for _, h := range p.hints {
		row, col, one := h.cell()
		if !one || p.used[[2]int{row, col}] || !filled(p.raw(row, col)) {
			continue
		}
		if may := r.settingsEnding(settingName(h.words)); len(may) > 0 {
			p.use(row, col)
			p.tables++
			r.add(finding.Finding{Kind: SettingUnknown, Cell: p.cell(row, col), Reads: h.Name.Name, Suggests: strings.Join(may, "; "),
				Text: fmt.Sprintf("the book names this cell %q, and there is no setting of that name", h.Name.Name)})
		}
	}
}

// settingsEnding is the settings whose names end in some words.
func (r *reader) settingsEnding(words string) []string {
	var all []string
	for _, s := range r.rules.Settings() {
		if strings.HasSuffix(settingName(s.Name), " "+words) {
			all = append(all, s.Name)
		}
	}
	return all
}

// edgeBetween says that one of two columns of headings lies within a
// spreadsheet's own table, and the other does not.
func (p *page) edgeBetween(row, left, right int) bool {
	a, okA := p.edge(row, left)
	b, okB := p.edge(row, right)
	return okA != okB || a != b
}
