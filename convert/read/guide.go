package read

import (
	"strings"

	"strakebook/convert/sheet"
)

// guideSheet reads a guide kept as a sheet of the book.
func (r *reader) guideSheet(t *records) {
	r.tables = append(r.tables, t.found("guide"))
	for _, row := range t.rows {
		r.guide = append(r.guide, sheet.GuideRow{
			Table: t.text(row, "table"), Sheet: t.text(row, "sheet"), Range: t.text(row, "range"),
			Stations: t.text(row, "station"), Unit: t.text(row, "unit"), Notation: t.text(row, "notation"), Skip: t.text(row, "skip"),
		})
	}
}

// skips says that the guide leaves a table out.
func skips(g sheet.GuideRow) bool {
	switch plainWords(g.Skip) {
	case "yes", "y", "skip", "x", "true", "1":
		return true
	}
	return false
}

// guided ticks off what the guide says to leave, before anything is looked for.
func (r *reader) guided(p *page) {
	for _, g := range r.guide {
		if !strings.EqualFold(g.Sheet, p.sheet.Name) || !skips(g) {
			continue
		}
		top, left, bottom, right, ok := corners(g.Range)
		if !ok {
			top, left, bottom, right = 1, 1, p.rows, p.cols
		}
		for row := top; row <= min(bottom, p.rows); row++ {
			for col := left; col <= min(right, p.cols); col++ {
				p.use(row, col)
			}
		}
	}
}

// guideFor is what the guide says of the table whose range meets a block.
func (r *reader) guideFor(p *page, top, left, bottom, right int) (sheet.GuideRow, bool) {
	for _, g := range r.guide {
		if !strings.EqualFold(g.Sheet, p.sheet.Name) || skips(g) {
			continue
		}
		t, l, b, rt, ok := corners(g.Range)
		if !ok || (t <= bottom && b >= top && l <= right && rt >= left) {
			return g, true
		}
	}
	return sheet.GuideRow{}, false
}

// corners is a range such as B3:W14.
func corners(text string) (top, left, bottom, right int, ok bool) {
	from, to, two := strings.Cut(strings.ToUpper(strings.ReplaceAll(strings.TrimSpace(text), "$", "")), ":")
	if !two {
		to = from
	}
	left, top, okA := address(from)
	right, bottom, okB := address(to)
	return top, left, bottom, right, okA && okB && top <= bottom && left <= right
}

func address(ref string) (col, row int, ok bool) {
	i := 0
	for ; i < len(ref) && ref[i] >= 'A' && ref[i] <= 'Z'; i++ {
		col = col*26 + int(ref[i]-'A') + 1
	}
	for ; i < len(ref) && ref[i] >= '0' && ref[i] <= '9'; i++ {
		row = row*10 + int(ref[i]-'0')
		if row > 1<<21 {
			return 0, 0, false
		}
	}
	return col, row, i == len(ref) && col > 0 && row > 0 && col <= 16384
}
