package read

import (
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// found is one table of lines by stations, seen so that its stations run across.
type stationTable struct {
	grid
	head        int // row of the station names
	left, right int // first and last column of them
	labels      []int
	lines       []int          // rows of figures
	position    int            // row of station positions, 0 for none
	blocks      map[int]string // what the title rows within say of the lines below
	caption     string
	score       float64
}

// grids finds every table of lines by stations on a page, whichever way its
// stations run, and reads it.
func (r *reader) grids(p *page) {
	for {
		best := stationTable{}
		for _, turned := range []bool{false, true} {
			g := grid{p, turned}
			rows, _ := g.size()
			for row := 1; row <= rows; row++ {
				if t, ok := r.stations(g, row); ok && (best.page == nil || t.score > best.score || t.score == best.score && t.head < best.head) {
					best = t
				}
			}
		}
		if best.page == nil {
			return
		}
		r.readGrid(best)
	}
}

var stationText = regexp.MustCompile(`^(?:st(?:a|n)?\.?|station|mould|mold|fr(?:ame)?\.?|sec(?:tion)?\.?|no\.?|#)? ?(\d+(?:\.\d+)?(?: 1/2)?)$`)

// stationName is a cell as the name of a station, and its number where it has
// one; ok is false where it cannot be a station's name.
func (r *reader) stationName(c sheet.Cell) (name string, number float64, numbered, ok bool) {
	switch c.Kind {
	case sheet.Number:
		return text(c), c.Number, true, c.Number >= -100 && c.Number <= 1000
	case sheet.Text:
		t := strings.ToLower(measure.Fold(c.Text))
		if m := stationText.FindStringSubmatch(t); m != nil {
			return stationWord(m[1]), numberOf(m[1]), true, true
		}
		switch strings.Trim(t, ".") {
		case "x", "fp", "f.p", "ap", "a.p", "bow", "stem", "midship", "mid", "m", "⊗", "xx", "amidships":
			return text(c), 0, false, true
		}
		if r.words.of(c) == "transom" {
			return text(c), 0, false, true
		}
	}
	return "", 0, false, false
}

func stationWord(t string) string { return strings.TrimSpace(t) }

func numberOf(t string) float64 {
	whole, half, mixed := strings.Cut(t, " ")
	v, _ := strconv.ParseFloat(whole, 64)
	if mixed && half == "1/2" {
		v += 0.5
	}
	return v
}

// stations says whether a row of the grid is a table's station names.
func (r *reader) stations(g grid, row int) (stationTable, bool) {
	_, cols := g.size()
	best := stationTable{}
	for col := 1; col <= cols; col++ {
		if _, _, _, ok := r.stationName(g.see(row, col)); !ok {
			continue
		}
		end, blank := col, 0
		for c := col + 1; c <= cols && blank <= 1; c++ {
			if _, _, _, ok := r.stationName(g.see(row, c)); ok {
				end, blank = c, 0
			} else if g.see(row, c).Kind == sheet.Empty {
				blank++
			} else {
				break
			}
		}
		t := stationTable{grid: g, head: row, left: col, right: end, blocks: map[int]string{}}
		if r.fits(&t) && t.score > best.score {
			best = t
		}
		col = end
	}
	return best, best.page != nil
}

// fits says whether a run of names heads a table, and how surely.
func (r *reader) fits(t *stationTable) bool {
	var numbers []float64
	names := 0
	for col := t.left; col <= t.right; col++ {
		if _, v, numbered, ok := r.stationName(t.see(t.head, col)); ok {
			names++
			if numbered {
				numbers = append(numbers, v)
			}
		}
	}
	if names < 3 {
		return false
	}
	corner, cornerWord := t.left-1, ""
	for ; corner >= 1 && corner >= t.left-4; corner-- {
		if c := t.see(t.head, corner); c.Kind == sheet.Text {
			if m := r.words.of(c); cornerWord == "" || m == "station" {
				cornerWord = m
			}
		}
	}
	even := evenness(numbers)
	worded := 0
	for col := t.left; col <= t.right; col++ {
		if c := t.see(t.head, col); c.Kind == sheet.Text {
			worded++
		}
	}
	said := cornerWord == "station" || r.aboveSays(t, "station") || worded*2 > names
	if !said && (len(numbers) < 4 || even < 0.6) {
		return false
	}
	r.below(t)
	if len(t.lines) < 1 || !said && len(t.lines) < 2 {
		return false
	}
	labelled := 0
	for _, row := range t.lines {
		if m := r.lineMeaning(t.label(row)); m != "" {
			labelled++
		}
	}
	t.caption = r.caption(t.page, t.capRow(), t.capCol())
	t.score = 3*even + 3*float64(labelled)/float64(len(t.lines)) + min(float64(names), 40)/40
	if said {
		t.score += 2
	}
	return true
}

// capRow and capCol are the top left corner of the table on the sheet.
func (t *stationTable) capRow() int {
	if t.turned {
		return t.left
	}
	return t.head
}

func (t *stationTable) capCol() int {
	if t.turned {
		return t.head
	}
	return t.left
}

// evenness is the share of steps between names that are the commonest step.
func evenness(v []float64) float64 {
	if len(v) < 2 {
		return 0
	}
	steps := map[float64]int{}
	most := 0
	for i := 1; i < len(v); i++ {
		d := math.Round((v[i]-v[i-1])*1000) / 1000
		if d <= 0 {
			continue
		}
		steps[d]++
		if (d == 1 || d == 0.5 || d == 2) && steps[d] > most {
			most = steps[d]
		}
	}
	share := float64(most) / float64(len(v)-1)
	for _, n := range steps {
		share = max(share, 0.7*float64(n)/float64(len(v)-1))
	}
	return share
}

// aboveSays says that the row before the names has a heading of a meaning, as a
// merged heading over the stations.
func (r *reader) aboveSays(t *stationTable, meaning string) bool {
	for col := max(1, t.left-1); col <= t.right; col++ {
		if r.words.of(t.see(t.head-1, col)) == meaning {
			return true
		}
	}
	return false
}

// below takes in the rows of figures under the names: to the second blank row or
// the names of another table.
func (r *reader) below(t *stationTable) {
	rows, _ := t.size()
	blank := 0
	for row := t.head + 1; row <= rows; row++ {
		figures, others := 0, 0
		for col := t.left; col <= t.right; col++ {
			c := t.see(row, col)
			switch {
			case c.Kind == sheet.Empty && c.Formula == "":
			case c.Kind == sheet.Text && !figure(c):
				others++
			default:
				figures++
			}
		}
		label := t.label(row)
		switch {
		case figures == 0 && others == 0 && label == "":
			blank++
			if blank >= 2 && !r.goesOn(t, row) {
				return
			}
			continue
		case figures == 0 && others > 0 && r.unitsOnly(t, row):
			continue
		case figures == 0 && len(t.lines) > 0 && blank > 0 && r.words.has(label, "offsets", "bevels", "strake", "station") && r.block(label) == "":
			return // the title of what comes next
		case figures == 0:
			if b := r.block(label); b != "" {
				t.blocks[row] = b
			} else if others > 1 {
				return
			}
			blank = 0
			continue
		case others > figures:
			return
		case blank > 0 && r.sameNames(t, row):
			continue // the names repeated
		case blank > 0 && label == "" && len(t.lines) > 0:
			return
		case r.words.of(sheet.Cell{Kind: sheet.Text, Text: label}) == "position":
			t.position = row
			blank = 0
			continue
		}
		blank = 0
		t.lines = append(t.lines, row)
	}
}

// goesOn says that after two blank rows a block's title follows next, and the
// table with it.
func (r *reader) goesOn(t *stationTable, row int) bool {
	return r.block(t.label(row+1)) != "" && len(t.lines) > 0
}

// figure says that a text may be a figure of a table.
func figure(c sheet.Cell) bool {
	if measure.IsDash(c.Text) || len(measure.Notations(c.Text)) > 0 {
		return true
	}
	if _, err := measure.ParseAngle(c.Text); err == nil {
		return true
	}
	return strings.ContainsAny(c.Text, "0123456789'\"") && len(measure.Fold(c.Text)) <= 14 || c.Text == "?"
}

func (r *reader) unitsOnly(t *stationTable, row int) bool {
	for col := t.left; col <= t.right; col++ {
		if c := t.see(row, col); c.Kind == sheet.Text {
			if _, ok := bareUnit(c.Text); !ok {
				return false
			}
		}
	}
	return true
}

func (r *reader) sameNames(t *stationTable, row int) bool {
	for col := t.left; col <= t.right; col++ {
		if text(t.see(row, col)) != text(t.see(t.head, col)) {
			return false
		}
	}
	return true
}

// block is the view that a title row within the table gives the lines below it.
func (r *reader) block(label string) string {
	if m, rest := r.words.first(label); (m == "breadths" || m == "heights" || m == "diagonal") && (rest == "" || len(strings.Fields(rest)) > 1 && !strings.ContainsAny(rest, "0123456789")) {
		return m
	}
	return ""
}

// label is the words before the figures of a row, all its label cells together.
func (t *stationTable) label(row int) string {
	var all []string
	for _, col := range t.labelCols() {
		if c := t.see(row, col); c.Kind == sheet.Text || c.Kind == sheet.Number {
			all = append(all, text(c))
		}
	}
	return strings.Join(all, " ")
}

// labelCols is the columns before the figures, up to an empty one.
func (t *stationTable) labelCols() []int {
	if t.labels != nil {
		return t.labels
	}
	rows, _ := t.size()
	for col := t.left - 1; col >= 1 && col >= t.left-5; col-- {
		used := 0
		for row := t.head; row <= min(rows, t.head+80); row++ {
			if t.see(row, col).Kind != sheet.Empty {
				used++
			}
		}
		if used < 2 {
			break
		}
		t.labels = append(t.labels, col)
	}
	slices.Reverse(t.labels)
	if t.labels == nil {
		t.labels = []int{}
	}
	return t.labels
}

// lineMeaning is what a line's label makes it, "" where it says nothing.
func (r *reader) lineMeaning(label string) string {
	for _, m := range []string{"rabbet", "keel", "chine", "diagonal", "buttock", "waterline", "sheer", "deck", "breadths", "heights", "strake", "edge", "position", "along"} {
		if r.words.has(label, m) {
			return m
		}
	}
	return ""
}

// caption is the words above a table, and the sheet's own name, which say what
// it is and how it is written. They are used as its title.
func (r *reader) caption(p *page, row, col int) string {
	all := []string{p.sheet.Name}
	blank := 0
	for up := row - 1; up >= 1 && up >= row-6 && blank < 3; up-- {
		n := 0
		for c := 1; c <= p.cols; c++ {
			cell := p.at(up, c)
			if cell.Kind == sheet.Text {
				all = append(all, text(cell))
				n++
			}
			if cell.Kind == sheet.Number {
				return strings.Join(all, "\n")
			}
		}
		if n == 0 {
			blank++
		}
	}
	return strings.Join(all, "\n")
}
