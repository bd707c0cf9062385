package read

import (
	"math"
	"slices"
	"strings"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// stationTable is one table of lines by stations, seen so that its stations run
// across.
type stationTable struct {
	grid
	head        int // row of the stations' names
	left, right int // first and last column of them
	names       []name
	labels      []int          // columns of labels, from the left
	lines       []int          // rows of figures
	units       []int          // rows of units
	again       []int          // rows where the names are repeated
	position    int            // row of station positions, 0 for none
	spacing     int            // row of spacings, 0 for none
	blocks      map[int]string // title rows within: their words
	said        bool           // something says that these are stations
	group       []int          // the first columns of the tables that stand side by side under its labels, its own among them
	caption     []string       // the words above it, the nearest first
	titles      int            // how many of them stand on the sheet; the rest are names
	over        bool           // its names go on beyond the edge of the spreadsheet's own table
	score       float64
	kind        string // "offsets", "bevels", "widths" or "marks"; "" where it is not known
}

// fewestNames is the fewest stations a table is known by.
const fewestNames = 3

// rival is how much likelier one way of reading a block must be than the other.
const rival = 0.75

// grids finds every table of lines by stations that can be seen on a page,
// whichever way its stations run, and reads it. Turned says which ways are looked
// along; force is what the guide has it be.
func (r *reader) grids(p *page, ways []bool, force string) {
	for {
		best := r.likeliest(p, ways)
		if best == nil {
			return
		}
		r.entitle(p, best)
		if force == "" {
			r.classify(best)
			if other := r.otherWay(best, ways); other != nil && !r.headedStrakes(best) {
				if !r.headedStrakes(other) {
					r.layoutAsked(best, other)
					continue
				}
				best = other
				r.entitle(p, best)
				r.classify(best)
			}
		} else {
			best.kind = force
		}
		r.readGrid(best)
	}
}

// likeliest is the table on a page that is surest; nil for none.
func (r *reader) likeliest(p *page, ways []bool) *stationTable {
	var best *stationTable
	for _, turned := range ways {
		g := grid{p, turned}
		rows, _ := g.size()
		for row := 1; row <= rows; row++ {
			if len(g.along(row)) < fewestNames-1 {
				continue
			}
			if t := r.stations(g, row); t != nil && (best == nil || t.score > best.score || t.score == best.score && t.turned == best.turned && t.head < best.head) {
				best = t
			}
		}
	}
	return best
}

// otherWay is a table that holds the same figures with lines and stations
// changed about, and is nearly as likely.
func (r *reader) otherWay(t *stationTable, ways []bool) *stationTable {
	if len(ways) < 2 {
		return nil
	}
	g := grid{t.page, !t.turned}
	for _, col := range t.labels {
		other := r.stations(g, col)
		if other == nil || other.score < t.score-rival || len(other.lines) == 0 {
			continue
		}
		if other.left <= t.lines[len(t.lines)-1] && other.right >= t.lines[0] {
			return other
		}
	}
	return nil
}

// headedStrakes says that the column of a table's labels is headed as strakes, so
// that the numbers down it are those and the ones across are stations.
func (r *reader) headedStrakes(t *stationTable) bool {
	return !t.turned && slices.ContainsFunc(t.corner(), func(c sheet.Cell) bool { return r.words.has(c.Text, "strake") && !r.words.has(c.Text, "station") })
}

// stations is the likeliest table whose stations' names stand in a row of the
// grid; nil for none.
func (r *reader) stations(g grid, row int) *stationTable {
	var best *stationTable
	cols := g.along(row)
	for i := 0; i < len(cols); {
		t, next := r.run(g, row, cols, i)
		if t != nil && r.fits(t) && (best == nil || t.score > best.score) {
			best = t
		}
		i = max(next, i+1)
	}
	return best
}

// run is the names that follow one another from the i-th filled column of a row,
// and the index of the next column to look from. Two columns at most may be
// blank between names, and only where the numbers go on across them.
func (r *reader) run(g grid, row int, cols []int, i int) (*stationTable, int) {
	n, ok := r.stationName(g.see(row, cols[i]))
	if !ok || n.summary {
		return nil, i + 1
	}
	n.col = cols[i]
	t := &stationTable{grid: g, head: row, names: []name{n}, blocks: map[int]string{}}
	edge, edged := g.edgeOf(row, cols[i])
	for i++; i < len(cols); i++ {
		n, ok := r.stationName(g.see(row, cols[i]))
		if edged && cols[i] > edge.Right {
			t.over = ok && cols[i] == edge.Right+1 && goesOn(t.names, n)
			break
		}
		last := t.names[len(t.names)-1]
		gap := g.gap(last.col, cols[i])
		if !ok && r.misnamed(t, row, cols, i) {
			continue // figures under a word that names no station: said when they are read
		}
		if !ok || gap > 2 || last.summary || gap > 0 && !goesOn(t.names, n) {
			break
		}
		n.col = cols[i]
		t.names = append(t.names, n)
	}
	i -= t.alone()
	t.left, t.right = t.names[0].col, t.names[len(t.names)-1].col
	t.group = r.group(t)
	t.showLabels()
	return t, i
}

// gap is how many columns lie between two, but for those joined to the ones before
// them.
func (g grid) gap(left, right int) int {
	n := 0
	for col := left + 1; col < right; col++ {
		if g.turned || !g.gone[col] {
			n++
		}
	}
	return n
}

// misnamed says that the i-th filled column of a row of names has another word in
// place of a name: the names before and after it go on across it.
func (r *reader) misnamed(t *stationTable, row int, cols []int, i int) bool {
	before := numberedBefore(t.names)
	if before < 0 || cols[i] != t.names[len(t.names)-1].col+1 {
		return false
	}
	last, next, at := t.names[before], name{}, 0
	for k := i + 1; k < len(cols) && k <= i+2 && !next.numbered; k++ {
		n, ok := r.stationName(t.see(row, cols[k]))
		if !ok || cols[k] != cols[k-1]+1 {
			return false
		}
		next, at = n, k
	}
	if !next.numbered || next.worded != last.worded {
		return false
	}
	step := 1.0
	if k := numberedBefore(t.names[:before]); k >= 0 {
		step = last.number - t.names[k].number
	}
	after := step // stations stand closer at the ends of many a hull
	if at+1 < len(cols) {
		if m, ok := r.stationName(t.see(row, cols[at+1])); ok && m.numbered && cols[at+1] == cols[at]+1 {
			after = m.number - next.number
		}
	}
	n, gap := float64(cols[at]-last.col), next.number-last.number
	return gap == n*step || gap == n*after || n == 2 && gap == step+after
}

// numberedBefore is the last of some names that is a number; -1 for none.
func numberedBefore(names []name) int {
	for k := len(names) - 1; k >= 0; k-- {
		if names[k].numbered {
			return k
		}
	}
	return -1
}

// ofFigures is how many of the columns of labels hold figures as a table's do.
func (t *stationTable) ofFigures() int {
	n := 0
	for _, col := range t.labels {
		figures, others := 0, 0
		for _, row := range t.lines {
			switch c := t.see(row, col); {
			case c.Kind == sheet.Number && c.Number != math.Trunc(c.Number), c.Kind == sheet.Date,
				c.Kind == sheet.Text && len(measure.Notations(c.Text)) > 0 && strings.ContainsAny(c.Text, "-/.,'"):
				figures++
			case filled(c) && c.Kind == sheet.Text:
				others++
			}
		}
		if figures > others && 2*figures > len(t.lines) {
			n++
		}
	}
	return n
}

// goesOn says that a name follows those before it across a gap.
func goesOn(names []name, n name) bool {
	if !n.numbered {
		return true
	}
	for i := len(names) - 1; i >= 0; i-- {
		if names[i].numbered {
			return n.number > names[i].number || len(names) > 1 && names[0].numbered && names[0].number > names[i].number
		}
	}
	return true
}

// far is a row or column beyond every sheet.
const far = math.MaxInt32
