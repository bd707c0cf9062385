package read

import (
	"slices"
	"strings"

	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// guideSheet reads a guide kept as a sheet of the book. A guide given beside the
// book is read before it.
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

// skipped ticks off what the guide says to leave, before anything is looked for.
func (r *reader) skipped() {
	for _, g := range r.guide {
		if !skips(g) {
			continue
		}
		for _, p := range r.pages {
			if !strings.EqualFold(g.Sheet, p.sheet.Name) {
				continue
			}
			top, left, bottom, right, ok := corners(g.Range)
			if !ok {
				top, left, bottom, right = 1, 1, p.rows, p.cols
			}
			p.useBlock(top, left, bottom, right)
			p.tables++
			r.tables = append(r.tables, source.Table{Table: tableWord(g), Book: p.book.Name, Sheet: p.sheet.Name,
				Range: grid{page: p}.area(top, left, bottom, right), Skip: true})
		}
	}
}

// byGuide reads the tables that the guide gives a range and a kind, as it says,
// before any other is looked for.
func (r *reader) byGuide() {
	for i, g := range r.guide {
		kind := plainWords(g.Table)
		if skips(g) || len(unreadFields(g)) > 0 || kind == "settings" || kind == "guide" || kind == "" {
			continue
		}
		top, left, bottom, right, ok := corners(g.Range)
		if !ok {
			continue
		}
		for _, p := range r.pages {
			if !strings.EqualFold(g.Sheet, p.sheet.Name) {
				continue
			}
			r.now = &r.guide[i]
			p.within = &sheet.Range{Top: top, Left: left, Bottom: bottom, Right: right}
			r.readAs(p, kind, g)
			p.within, p.labels, r.now = nil, nil, nil
		}
	}
}

// readAs reads what lies in a page's range as one kind of table.
func (r *reader) readAs(p *page, kind string, g sheet.GuideRow) {
	before := len(r.tables)
	var lists []recordTable
	for _, k := range recordTables() {
		if k.name == kind {
			lists = append(lists, k)
		}
	}
	if kind == "offsets" {
		r.pairs(p)
	}
	r.lists(p, lists)
	if len(r.tables) > before || !slices.Contains([]string{"offsets", "bevels", "widths", "marks", "positions"}, kind) {
		return
	}
	ways := []bool{false, true}
	switch plainWords(g.Stations) {
	case "across":
		ways = []bool{false}
	case "down":
		ways = []bool{true}
	}
	r.grids(p, ways, kind)
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
