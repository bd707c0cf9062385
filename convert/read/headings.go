package read

import (
	"cmp"
	"slices"
	"strings"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// listAt is the table whose headings begin in a row, in that row alone or
// in it and those below, as the kind that most of its headings fit; nil for none.
func (r *reader) listAt(p *page, row int, kinds []recordTable) *records {
	var best *records
	rivals := 0
	for depth := 1; depth <= headRows; depth++ {
		if depth > 1 && !p.wordsOnly(row+depth-1) {
			break
		}
		for _, kind := range kinds {
			t := r.heading(p, row, row+depth-1, kind)
			switch {
			case t == nil:
			case best == nil || len(t.cols) > len(best.cols):
				best, rivals = t, 0
			case len(t.cols) == len(best.cols) && t.head == best.head:
				rivals++
				if r.captioned(t) > r.captioned(best) {
					best, rivals = t, 0
				} else if r.captioned(t) < r.captioned(best) {
					rivals--
				}
			}
		}
	}
	if rivals > 0 && best != nil && best.unsure() {
		return nil // said with the cells left over
	}
	if best != nil && len(kinds) > 1 && (best.kind.name == "rack" || best.kind.name == "pieces") {
		return r.rackOrPieces(best)
	}
	return best
}

// unsure says that nothing but common words as "No." make a table what it is.
func (t *records) unsure() bool {
	return len(t.kind.names) > 0 && t.kind.name != "settings" && t.heads[t.cols[t.kind.names[0]]] != "" && commonName(t.heads[t.cols[t.kind.names[0]]])
}

// captioned is how much the words above speak for a table's kind.
func (r *reader) captioned(t *records) int {
	n := 0
	for _, c := range t.caption {
		if r.words.has(c, t.kind.titled...) {
			n++
		}
	}
	return n
}

// commonName says that a heading is one that any list may have.
func commonName(heading string) bool {
	switch plainWords(heading) {
	case "no", "name", "item", "number", "":
		return true
	}
	return false
}

// heading says whether some rows are the headings of a kind of table.
func (r *reader) heading(p *page, top, bottom int, kind recordTable) *records {
	t := &records{page: p, kind: kind, top: top, head: bottom, cols: map[string]int{}, heads: map[int]string{}, said: map[string]measure.Form{}}
	last, common, size := 0, []int(nil), 0
	for _, col := range r.headColumns(p, top, bottom) {
		if last > 0 && (col > last+3 || p.edgeBetween(bottom, last, col)) {
			if len(t.cols) >= kind.least {
				break // another table stands beside this one
			}
			t.cols, t.heads, t.said, t.names, t.left, common, size = map[string]int{}, map[int]string{}, map[string]measure.Form{}, nil, 0, nil, 0
		}
		if last > 0 && col > last+1 && len(t.cols) >= kind.least && t.complete() && (kind.long || r.beside(t, p.spread(bottom, col))) {
			break // what stands beside it
		}
		last = col
		whole, nearest := r.headWords(t, col)
		if whole == "" {
			continue
		}
		t.heads[col] = whole
		if kind.long && r.namesLine(nearest) {
			return nil // a table of stations, a line a column
		}
		if commonName(whole) {
			common = append(common, col)
			continue
		}
		m := r.sidedLength(kind.sense(r.meaningOf(whole, nearest), whole), whole)
		if m == "size" && size == 0 && slices.Contains(kind.fields, "thickness") {
			size = col
		}
		if slices.Contains(kind.never, m) {
			return nil
		}
		if !slices.Contains(kind.fields, m) {
			continue
		}
		if _, twice := t.cols[m]; twice {
			if kind.long && m != "note" {
				return nil
			}
			continue
		}
		t.holds(m, col, whole, nearest)
	}
	if size > 0 {
		r.sized(t, size)
	}
	t.unsided()
	r.commonNames(t, common)
	if len(t.cols) < kind.least || !t.complete() {
		return nil
	}
	if t.ofStations() || top < bottom && !r.addsBelow(t) || kind.long && r.linesBelow(p, bottom+1) {
		return nil
	}
	t.bounded()
	t.caption = r.above(p, top, t.left, bottom+1, t.right)
	return t
}

// headWords is what heads a column: all of it, one row after another, and the row
// nearest to the figures. A station's name there is kept.
func (r *reader) headWords(t *records, col int) (whole, nearest string) {
	for row := t.top; row <= t.head; row++ {
		c := t.page.spread(row, col)
		if t.top == t.head {
			c = t.page.at(row, col)
		}
		if c.Kind == sheet.Text && text(c) != nearest {
			nearest = text(c)
			whole = strings.TrimSpace(whole + " " + nearest)
		}
		if n, ok := r.widthHead(c); ok && row == t.head && (n.numbered || n.transom) {
			n.col = col
			t.names = append(t.names, n)
		}
	}
	return whole, nearest
}

// meaningOf is what a heading means: as a whole, else by its last row, else by the
// rows above that.
func (r *reader) meaningOf(whole, nearest string) string {
	return cmp.Or(r.words.heading(whole), r.words.heading(nearest), r.words.heading(strings.TrimSpace(strings.TrimSuffix(whole, nearest))))
}

// holds notes which column a field stands in, and the unit that its heading says.
func (t *records) holds(field string, col int, whole, nearest string) {
	t.cols[field] = col
	if t.left == 0 {
		t.left = col
	}
	t.right = max(t.right, col)
	if form, ok := headUnit(whole); ok {
		t.said[field] = form
	} else if form, ok := headUnit(nearest); ok {
		t.said[field] = form
	}
}

// ofStations says that so many headings are stations' names that this is a table of
// stations and no list; too few to be widths by station are left.
func (t *records) ofStations() bool {
	two := len(t.names) == 2 && t.names[0].ofWidth && t.names[1].ofWidth
	few := len(t.names) < fewestNames
	switch {
	case few && !two:
		t.names = nil
	case t.kind.name != "strakes" && !few:
		return true
	case t.kind.name != "strakes":
		t.names = nil
	}
	return false
}

// bounded ends a list at its last heading, known or not, and leaves those of what
// stands beside it.
func (t *records) bounded() {
	for t.heads[t.right+1] != "" {
		t.right++ // headings not known, of the same table
	}
	for col := range t.heads {
		if col > t.right || col < t.left && t.heads[col+1] == "" {
			delete(t.heads, col)
		}
	}
}

// complete says that a table has the columns its kind must have.
func (t *records) complete() bool {
	for _, m := range t.kind.need {
		if _, ok := t.cols[m]; !ok {
			return false
		}
	}
	for _, some := range t.kind.either {
		if !slices.ContainsFunc(some, func(m string) bool { _, ok := t.cols[m]; return ok }) {
			return false
		}
	}
	return true
}

// commonNames settles the headings that any list may have, as "No." and "Name":
// the first names the records where nothing else does; a number that does not
// count the rows is how many there are.
func (r *reader) commonNames(t *records, cols []int) {
	take := func(m string, col int) {
		t.cols[m] = col
		if t.left == 0 || col < t.left {
			t.left = col
		}
		t.right = max(t.right, col)
	}
	for _, col := range cols {
		key := ""
		if len(t.kind.names) > 0 {
			key = t.kind.names[0]
		}
		m := r.words.heading(t.heads[col])
		if _, have := t.cols[key]; key != "" && !have {
			take(key, col)
		} else if _, have := t.cols[m]; !have && slices.Contains(t.kind.fields, m) && !t.serial(col) {
			take(m, col)
		}
	}
}

// serial says that a column numbers its rows 1, 2, 3.
func (t *records) serial(col int) bool {
	n := 0.0
	for row := t.head + 1; row <= t.page.rows; row++ {
		c := t.page.at(row, col)
		if c.Kind != sheet.Number {
			if n > 0 && !filled(c) {
				break
			}
			continue
		}
		if n++; c.Number != n {
			return false
		}
	}
	return n > 1
}

// sense settles words that mean different things at the head of different
// tables.
func (k recordTable) sense(m, heading string) string {
	t := plainWords(heading)
	switch {
	case k.name == "pieces" && m == "mark" && !slices.Contains(tokens(heading), "board"):
		return "piece"
	case k.name == "settings" && (t == "setting" || t == "settings"):
		return "setting"
	case k.name == "guide" && t == "sheet":
		return "sheet"
	case k.name == "offsets" && (m == "count" || m == "offsets") && t != "no":
		return "value"
	}
	return m
}
