package read

import (
	"math"
	"regexp"
	"slices"
	"strings"
	"time"

	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// page is one sheet of one book as it is being read: what has been used of it is
// ticked off, so that nothing is passed over in silence.
type page struct {
	book    *sheet.Book
	sheet   *sheet.Sheet
	rows    int
	cols    int
	filled  [2][][]int            // the filled columns of each row, and the filled rows of each column
	used    map[[2]int]bool       // ticked off
	tables  int                   // read from it
	put     map[[2]int]sheet.Cell // in place of what the sheet holds
	covered map[[2]int][2]int     // cells under a merged one, and where its value is
	within  *sheet.Range          // what may be seen, where the guide says
	labels  map[[2]int]bool       // and labels of a table within that stand outside of it
	turned  bool                  // its rows are the sheet's columns
	hints   []hint                // the book's own names
	gone    map[int]bool          // columns of parts that were joined to those before them
	named   []source.Cell         // cells taken as settings by their names

	ones      map[string]sheet.One // its cells by what is beside them
	inMinutes bool                 // its words say that angles are in degrees and minutes
}

func newPage(b *sheet.Book, s *sheet.Sheet) *page {
	p := seen(b, s)
	p.mistyped()
	p.parted()
	p.signed()
	return p
}

// seen is a sheet as a page, before its cells are looked at.
func seen(b *sheet.Book, s *sheet.Sheet) *page {
	p := &page{book: b, sheet: s, used: map[[2]int]bool{}, put: map[[2]int]sheet.Cell{}, covered: map[[2]int][2]int{}, hints: hintsOf(b, s), gone: map[int]bool{}}
	for r, row := range s.Rows {
		for c, cell := range row {
			if !filled(cell) {
				continue
			}
			p.rows, p.cols = max(p.rows, r+1), max(p.cols, c+1)
		}
	}
	p.filled[0], p.filled[1] = make([][]int, p.rows+1), make([][]int, p.cols+1)
	for r, row := range s.Rows {
		for c, cell := range row {
			if filled(cell) {
				p.filled[0][r+1] = append(p.filled[0][r+1], c+1)
				p.filled[1][c+1] = append(p.filled[1][c+1], r+1)
			}
		}
	}
	for _, m := range s.Merged {
		p.merge(m)
	}
	return p
}

// merge notes the cells under a merged one. Merged blocks larger than any
// heading are decoration.
func (p *page) merge(m sheet.Range) {
	if (m.Bottom-m.Top+1)*(m.Right-m.Left+1) > 4096 {
		return
	}
	for row := m.Top; row <= m.Bottom; row++ {
		for col := m.Left; col <= m.Right; col++ {
			if row != m.Top || col != m.Left {
				p.covered[[2]int{row, col}] = [2]int{m.Top, m.Left}
			}
		}
	}
}

// mistyped makes dates of the texts that are dates as spreadsheets write them
// out to text files.
func (p *page) mistyped() {
	for r, cols := range p.filled[0] {
		for _, c := range cols {
			cell := p.sheet.At(r, c)
			if cell.Kind != sheet.Text || !isoDate.MatchString(cell.Text) {
				continue
			}
			if t, err := time.Parse("2006-01-02", strings.TrimSpace(cell.Text)[:10]); err == nil {
				cell.Kind, cell.Format = sheet.Date, "yyyy-mm-dd"
				cell.Number = math.Round(t.Sub(time.Date(1899, 12, 30, 0, 0, 0, 0, time.UTC)).Hours() / 24)
				p.put[[2]int{r, c}] = cell
			}
		}
	}
}

var isoDate = regexp.MustCompile(`^\s*\d{4}-\d{2}-\d{2}(T00:00:00)?\s*$`)

// at is a cell not yet used by a table.
func (p *page) at(row, col int) sheet.Cell {
	if w := p.within; w != nil && (row < w.Top || row > w.Bottom || col < w.Left || col > w.Right) && !p.labels[[2]int{row, col}] {
		return sheet.Cell{}
	}
	if p.used[[2]int{row, col}] {
		return sheet.Cell{}
	}
	return p.raw(row, col)
}

// raw is a cell whether or not it has been used.
func (p *page) raw(row, col int) sheet.Cell {
	if len(p.put) > 0 {
		if c, ok := p.put[[2]int{row, col}]; ok {
			return c
		}
	}
	return p.sheet.At(row, col)
}

// spread is a cell as a heading: under a merged cell it is what that holds.
func (p *page) spread(row, col int) sheet.Cell {
	if over, ok := p.covered[[2]int{row, col}]; ok {
		return p.raw(over[0], over[1])
	}
	return p.at(row, col)
}

func (p *page) use(row, col int) {
	p.used[[2]int{row, col}] = true
}

// useBlock ticks off every filled cell of a block.
func (p *page) useBlock(top, left, bottom, right int) {
	for row := max(1, top); row <= min(bottom, p.rows); row++ {
		for _, col := range p.filled[0][row] {
			if col >= left && col <= right {
				p.use(row, col)
			}
		}
	}
}

// cell is a place of the page as its values carry it.
func (p *page) cell(row, col int) source.Cell {
	if p.turned {
		row, col = col, row
	}
	return source.Cell{Book: p.book.Name, Sheet: p.sheet.Name, Row: row, Col: col}
}

// text is a cell's text as written; of a number as shown.
func text(c sheet.Cell) string { return strings.TrimSpace(c.Text) }

// filled says that a cell holds something.
func filled(c sheet.Cell) bool { return c.Kind != sheet.Empty || c.Formula != "" || c.Struck != "" }

// grid is a page looked at along its rows, or turned so that its columns are rows.
type grid struct {
	*page
	turned bool
}

func (g grid) size() (rows, cols int) {
	if g.turned {
		return g.cols, g.page.rows
	}
	return g.page.rows, g.cols
}

// swap is a place of the grid as a place of the page, and back.
func (g grid) swap(row, col int) (int, int) {
	if g.turned {
		return col, row
	}
	return row, col
}

func (g grid) see(row, col int) sheet.Cell { return g.at(g.swap(row, col)) }

func (g grid) title(row, col int) sheet.Cell { return g.spread(g.swap(row, col)) }

func (g grid) place(row, col int) source.Cell { return g.cell(g.swap(row, col)) }

func (g grid) tick(row, col int) { g.use(g.swap(row, col)) }

// along is the filled columns of a row of the grid.
func (g grid) along(row int) []int {
	lines := g.filled[0]
	if g.turned {
		lines = g.filled[1]
	}
	if row < 1 || row >= len(lines) {
		return nil
	}
	return lines[row]
}

// between is the filled columns of a row from one to another.
func (g grid) between(row, left, right int) []int {
	all := g.along(row)
	i, _ := slices.BinarySearch(all, left)
	j, _ := slices.BinarySearch(all, right+1)
	return all[i:j]
}

// area is a range of the grid as the sheet names it: "B3:W14".
func (g grid) area(top, left, bottom, right int) string {
	t, l := g.swap(top, left)
	b, r := g.swap(bottom, right)
	return g.cell(t, l).Ref() + ":" + g.cell(b, r).Ref()
}

// fill counts a blank cell as filled: a decision was put into it.
func (p *page) fill(row, col int) {
	if row < 1 || row > p.rows || col < 1 || col > p.cols {
		return // beyond what the sheet holds there is nothing to fill
	}
	insert := func(all []int, v int) []int {
		i, found := slices.BinarySearch(all, v)
		if found {
			return all
		}
		return slices.Insert(all, i, v)
	}
	p.filled[0][row] = insert(p.filled[0][row], col)
	p.filled[1][col] = insert(p.filled[1][col], row)
}

// joinedTo is the last of the columns that were joined to one.
func (p *page) joinedTo(col int) int {
	for p.gone[col+1] {
		col++
	}
	return col
}

// unfill takes a cell out of what is looked at: what it says has been taken in.
func (p *page) unfill(row, col int) {
	p.clear(row, col, 1)
	without := func(all []int, v int) []int {
		return slices.DeleteFunc(slices.Clone(all), func(n int) bool { return n == v })
	}
	p.filled[0][row], p.filled[1][col] = without(p.filled[0][row], col), without(p.filled[1][col], row)
}
