package read

import (
	"strings"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// captionRows is how many rows above a table may be its caption.
const captionRows = 6

// entitle gives a table the words above it, the nearest first, then what the book
// calls it and the sheet's own name: they say what it is and how it is written.
func (r *reader) entitle(p *page, t *stationTable) {
	top, left, bottom, right := t.bounds()
	t.caption, t.titles = r.above(p, top, left, bottom, right), len(r.written(p, top, left, right))
}

// above is the words over a block of a page, the nearest first: those that begin
// over its columns, up to figures or to three blank rows. What the book calls the
// block comes after them, and the sheet's name last.
func (r *reader) above(p *page, top, left, bottom, right int) []string {
	return append(append(r.written(p, top, left, right), p.called(top, left, bottom, right)...), p.sheet.Name)
}

// written is the words that stand over a block.
func (r *reader) written(p *page, top, left, right int) []string {
	var all []string
	blank := 0
	for row := top - 1; row >= 1 && row >= top-captionRows && blank < 3; row-- {
		var near, beside []string
		for _, col := range p.filled[0][row] {
			c := p.raw(row, col)
			if c.Kind == sheet.Number || c.Kind == sheet.Date || c.Kind == sheet.Text && p.used[[2]int{row, col}] && figure(c.Text) {
				if col >= left && col <= right {
					return all
				}
				continue
			}
			switch {
			case c.Kind != sheet.Text:
			case col >= left-1 && col <= right:
				near = append(near, text(c))
			case col < left:
				beside = append(beside, text(c))
			}
		}
		if len(near) == 0 && !r.tableBeside(p, row, left) {
			near = beside
		}
		if len(near) == 0 {
			blank++
			continue
		}
		blank = 0
		all = append(all, strings.Join(near, " "))
	}
	return all
}

// tableBeside says that a row to the left of a column belongs to a table, so
// that its words are not a caption for what stands to the right.
func (r *reader) tableBeside(p *page, row, left int) bool {
	for _, col := range p.filled[0][row] {
		if col < left && (p.used[[2]int{row, col}] || p.raw(row, col).Kind == sheet.Number) {
			return true
		}
	}
	return false
}

// bounds is the corners of a table on the sheet, its labels and names included.
func (t *stationTable) bounds() (top, left, bottom, right int) {
	l := t.left
	if len(t.labels) > 0 && t.first() == t.left {
		l = t.labels[0]
	}
	last := t.head
	for _, rows := range [][]int{t.lines, {t.position, t.spacing}, t.units, t.again} {
		for _, row := range rows {
			last = max(last, row)
		}
	}
	top, left = t.swap(t.head, l)
	bottom, right = t.swap(last, t.right)
	return top, left, bottom, right
}

// sheetWords is every sentence of a page that stands outside of its tables: its
// remarks, and the titles that stand over tables.
func (p *page) sheetWords() (remarks, titles []string) {
	for row := 1; row <= p.rows; row++ {
		for _, col := range p.filled[0][row] {
			switch c := p.raw(row, col); {
			case c.Kind != sheet.Text || p.used[[2]int{row, col}] || figure(c.Text) || len(tokens(c.Text)) < 2:
			case p.titles(row, col):
				titles = append(titles, text(c))
			default:
				remarks = append(remarks, text(c))
			}
		}
	}
	return remarks, titles
}

// titles says that what stands at a place is a title: a table begins below it, and
// none ends nearer above it.
func (p *page) titles(row, col int) bool {
	far := captionRows + 1
	up, down := far, far
	for n := far - 1; n >= 1; n-- {
		if p.rowOfTable(row-n, col) {
			up = n
		}
		if p.rowOfTable(row+n, col) {
			down = n
		}
	}
	return down < far && down <= up
}

// rowOfTable says that a row holds three cells or more from a column on.
func (p *page) rowOfTable(row, col int) bool {
	if row < 1 || row > p.rows {
		return false
	}
	return len(grid{page: p}.between(row, col, min(col+5, p.cols))) >= 3
}

// formOf is what a table's words say of its unit: its own heading before its
// caption, the nearest line of that first, then what a sheet says of all its
// figures. Open is true where the words that should settle it name two units.
func (r *reader) formOf(p *page, own []string, caption []string) (form measure.Form, open bool) {
	for _, words := range [][]string{own, caption} {
		for _, t := range words {
			f, ok, two := says(t)
			if two {
				return measure.Form{}, true
			}
			if ok {
				return f, false
			}
		}
	}
	remarks, titles := p.sheetWords()
	for _, t := range append(remarks, titles...) {
		if f, ok, two := says(t); ok && !two && ofAll(t) {
			return f, false
		}
	}
	return measure.Form{}, false
}

// ofAll says that a remark is about every figure of its sheet.
func ofAll(t string) bool {
	t = " " + strings.Join(tokens(t), " ") + " "
	for _, w := range []string{" all dimensions ", " all measurements ", " all figures ", " all lengths ", " dimensions in ", " dimensions are ", " measurements in ", " measurements are ", " all in ", " units ", " lengths in ", " figures are in ", " figures in "} {
		if strings.Contains(t, w) {
			return true
		}
	}
	return false
}
