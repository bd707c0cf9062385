package read

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// recordTable is a kind of table with headings and a record a row.
type recordTable struct {
	name   string
	fields []string   // meanings its columns may have
	need   []string   // those it must have
	either [][]string // of each of these, one at least
	least  int        // columns it must have at least
	long   bool       // a figure a row, of what a grid has by stations
	never  []string   // meanings that show it is another table
	names  []string   // headings such as "No." and "Name", which every list has, mean this first field here
	titled []string   // meanings in a caption that speak for it
	read   func(*reader, *records)
}

// recordTables is the kinds of table with headings, the settings and guides
// apart, in the order they are tried.
func recordTables() []recordTable {
	size := []string{"thickness", "width", "length", "count", "species", "slope", "from"}
	return []recordTable{
		{name: "strakes", fields: []string{"strake", "skin", "side", "count", "thickness", "width", "length", "species", "slope", "start", "from", "to", "clear", "note"},
			need: []string{"strake"}, either: [][]string{size, {"thickness", "width", "length"}}, least: 3, never: []string{"mark", "price", "footprice", "value", "station", "bevels", "girths"}, names: []string{"strake"}, titled: []string{"strake"}, read: (*reader).strakes},
		{name: "rack", fields: []string{"mark", "species", "thickness", "width", "length", "count", "price", "footprice", "source", "note"},
			need: []string{"length", "width"}, least: 4, never: []string{"strake", "skin", "value", "station"}, names: []string{"mark"}, titled: []string{"rack", "mark", "species"}, read: (*reader).rack},
		{name: "offsets", long: true, fields: []string{"station", "line", "view", "value", "breadths", "heights", "waterline", "buttock", "note"},
			need: []string{"station"}, either: [][]string{{"line", "waterline", "buttock", "heights"}, {"value", "breadths", "heights"}}, least: 3, never: []string{"strake", "bevels", "girths"}, titled: []string{"offsets"}, read: (*reader).longOffsets},
		{name: "bevels", fields: []string{"strake", "edge", "side", "skin", "station", "bevels", "note"},
			need: []string{"strake", "station", "bevels"}, least: 3, never: []string{"girths"}, read: (*reader).longBevels},
		{name: "hung", fields: []string{"strake", "skin", "side", "station", "girths", "from", "corner", "note"},
			need: []string{"station", "girths"}, least: 3, read: (*reader).hung},
		{name: "positions", long: true, fields: []string{"station", "position", "spacing", "note"},
			need: []string{"station"}, either: [][]string{{"position", "spacing"}}, least: 2, never: []string{"strake", "line", "breadths", "heights", "girths", "bevels"}, read: (*reader).longPositions},
	}
}

func settingsTable() recordTable {
	return recordTable{name: "settings", fields: []string{"setting", "value", "unit", "note"}, need: []string{"setting", "value"}, least: 2, names: []string{"setting"}, titled: []string{"setting"}, never: []string{"station", "strake", "line"}, read: (*reader).settings}
}

func guideTable() recordTable {
	return recordTable{name: "guide", fields: []string{"table", "sheet", "range", "station", "unit", "notation", "skip"}, need: []string{"table", "range"}, either: [][]string{{"skip", "notation"}}, least: 4, read: (*reader).guideSheet}
}

// records is one table of records found on a page.
type records struct {
	page    *page
	kind    recordTable
	head    int            // last row of the headings
	top     int            // first row of them
	cols    map[string]int // meaning -> column
	heads   map[int]string // every column's heading as written
	said    map[string]measure.Form
	rows    []int
	left    int
	right   int
	caption []string
	names   []name         // stations' names among the headings: widths by station
	above   map[string]int // the last row that gives a field, for ditto marks
}

// headRows is the most rows that headings stand in.
const headRows = 3

// lists finds every table of some kinds on a page and reads it.
func (r *reader) lists(p *page, kinds []recordTable) {
	for row := 1; row <= p.rows; row++ {
		if len(p.filled[0][row]) < 2 {
			continue
		}
		t := r.headed2(p, row, kinds)
		if t == nil {
			continue
		}
		r.body(t)
		for col := range t.heads {
			for at := t.top; at <= t.head; at++ {
				r.useHead(p, at, col)
			}
		}
		p.tables++
		t.kind.read(r, t)
		r.columnsLeft(t)
		row = t.last()
	}
}

// useHead ticks off a heading cell, and the merged one that covers it.
func (r *reader) useHead(p *page, row, col int) {
	p.use(row, col)
	if over, ok := p.covered[[2]int{row, col}]; ok {
		p.use(over[0], over[1])
	}
}

// last is the table's last row.
func (t *records) last() int {
	if n := len(t.rows); n > 0 {
		return max(t.head, t.rows[n-1])
	}
	return t.head
}

// headed2 is the table whose headings begin in a row, in that row alone or
// in it and those below, as the kind that most of its headings fit; nil for none.
func (r *reader) headed2(p *page, row int, kinds []recordTable) *records {
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

// wordsOnly says that a row holds texts alone, as rows of headings do.
func (p *page) wordsOnly(row int) bool {
	if row > p.rows {
		return false
	}
	any := false
	for _, col := range p.filled[0][row] {
		c := p.at(row, col)
		if c.Kind == sheet.Empty {
			continue
		}
		if c.Kind != sheet.Text || len(measure.Notations(c.Text)) > 0 {
			return false
		}
		any = true
	}
	return any
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
	t := &records{page: p, kind: kind, top: top, head: bottom, cols: map[string]int{}, heads: map[int]string{}, said: map[string]measure.Form{}, above: map[string]int{}}
	last, common := 0, []int(nil)
	for _, col := range r.headColumns(p, top, bottom) {
		if last > 0 && col > last+3 {
			if len(t.cols) >= kind.least {
				break // another table stands beside this one
			}
			t.cols, t.heads, t.said, t.names, t.left, common = map[string]int{}, map[int]string{}, map[string]measure.Form{}, nil, 0, nil
		}
		if last > 0 && col > last+1 && len(t.cols) >= kind.least && t.complete() && (kind.long || r.words.of(p.spread(bottom, col)) == "") {
			break // what stands beside it
		}
		last = col
		whole, nearest := "", ""
		for row := top; row <= bottom; row++ {
			c := p.spread(row, col)
			if row == bottom && top == bottom {
				c = p.at(row, col)
			}
			if c.Kind == sheet.Text && text(c) != nearest {
				nearest = text(c)
				whole = strings.TrimSpace(whole + " " + nearest)
			}
			if n, ok := r.stationName(c); ok && row == bottom && (n.numbered || n.transom) {
				n.col = col
				t.names = append(t.names, n)
			}
		}
		if whole == "" {
			continue
		}
		t.heads[col] = whole
		if kind.long && r.namesLine(nearest) {
			return nil // a table of stations, a line a column
		}
		m := r.words.heading(whole)
		if m == "" && top < bottom {
			if m = r.words.heading(nearest); m == "" {
				m = r.words.heading(strings.TrimSpace(strings.TrimSuffix(whole, nearest)))
			}
		}
		if commonName(whole) {
			common = append(common, col)
			continue
		}
		m = kind.sense(m, whole)
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
		t.cols[m] = col
		if t.left == 0 {
			t.left = col
		}
		t.right = max(t.right, col)
		if form, ok := headUnit(whole); ok {
			t.said[m] = form
		} else if form, ok := headUnit(nearest); ok {
			t.said[m] = form
		}
	}
	r.commonNames(t, common)
	if len(t.cols) < kind.least || !t.complete() {
		return nil
	}
	if len(t.names) > 0 && (len(t.names) < fewestNames || kind.name != "strakes") {
		if len(t.names) >= fewestNames {
			return nil // a table of stations
		}
		t.names = nil
	}
	if top < bottom && !r.addsBelow(t) {
		return nil
	}
	for t.heads[t.right+1] != "" {
		t.right++ // headings not known, of the same table
	}
	for col := range t.heads {
		if col > t.right || col < t.left && t.heads[col+1] == "" {
			delete(t.heads, col) // what stands beside it
		}
	}
	t.caption = r.above(p, top, t.left, t.right)
	return t
}

// namesLine says that a heading is one line of the hull by its name: WL 6, deck.
func (r *reader) namesLine(heading string) bool {
	switch r.lineMeaning(heading) {
	case "":
		return false
	case "waterline", "buttock", "breadths", "heights":
		return r.words.heading(heading) == "" && strings.ContainsAny(unlevelledUnits(heading), "0123456789")
	}
	return true
}

// unlevelledUnits is a heading without what it says of its unit, whose figures
// name no line: (1/8 in.).
func unlevelledUnits(heading string) string {
	return strings.ReplaceAll(inBrackets.ReplaceAllString(strings.ToLower(measure.Fold(heading)), " "), "8ths", "")
}

// addsBelow says that the last row of the headings holds headings, and not the
// first record or units.
func (r *reader) addsBelow(t *records) bool {
	n := 0
	for _, col := range t.cols {
		c := t.page.at(t.head, col)
		if c.Kind != sheet.Text {
			continue
		}
		if _, unit := bareUnit(c.Text); unit || figure(c.Text) {
			return false
		}
		if r.words.heading(c.Text) != "" || r.words.heading(t.heads[col]) != "" {
			n++
		}
	}
	return n > 0
}

// headColumns is the columns in which some rows hold a heading, merged ones
// included.
func (r *reader) headColumns(p *page, top, bottom int) []int {
	var all []int
	for row := top; row <= bottom; row++ {
		if row > p.rows {
			break
		}
		for _, col := range p.filled[0][row] {
			all = append(all, col)
		}
	}
	if top < bottom {
		for at, over := range p.covered {
			if over[0] >= top && at[0] <= bottom && at[0] >= top && at[1] != over[1] {
				all = append(all, at[1])
			}
		}
	}
	slices.Sort(all)
	return slices.Compact(all)
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
	case k.name == "settings" && (t == "setting" || t == "settings"):
		return "setting"
	case k.name == "guide" && t == "sheet":
		return "sheet"
	case k.name == "offsets" && (m == "count" || m == "offsets") && t != "no":
		return "value"
	}
	return m
}

// body takes in the rows below the headings: to the third blank row, the headings
// or names of another table, or the end of the page. A row of units and repeated
// headings are ticked off and left.
func (r *reader) body(t *records) {
	blank := 0
	for row := t.head + 1; row <= t.page.rows; row++ {
		cells, texts := 0, 0
		for _, col := range t.page.filled[0][row] {
			if col < t.left || col > t.right || t.page.used[[2]int{row, col}] {
				continue
			}
			cells++
			if t.page.raw(row, col).Kind == sheet.Text {
				texts++
			}
		}
		switch {
		case cells == 0:
			if blank++; blank > gapRows {
				return
			}
			continue
		case r.anyHeading(t, row):
			if again := r.heading(t.page, row, row, t.kind); again == nil || len(again.cols) != len(t.cols) || again.left != t.left {
				return
			}
			t.page.useBlock(row, t.left, row, t.right)
			continue
		case r.unitRow(t, row):
			continue
		case blank > 0 && t.kind.long && t.keyed(row) && !r.station(t, row):
			return // another table
		case cells == 1 && texts == 1 && len(t.cols) > 2 && (blank > 0 || !t.keyed(row)):
			if blank > 0 && r.titles(t.first(row)) || r.anyHeadingBelow(t, row) {
				return // a title of what comes next
			}
			if !t.keyed(row) {
				continue // a remark, or a title within
			}
		case r.summaryRow(t, row):
			continue
		}
		blank = 0
		t.rows = append(t.rows, row)
		for _, col := range t.cols {
			t.page.use(row, col)
		}
	}
}

// keyed says that a row fills the column that names its record.
func (t *records) keyed(row int) bool {
	if len(t.kind.need) == 0 {
		return true
	}
	col, ok := t.cols[t.kind.need[0]]
	return ok && filled(t.page.at(row, col))
}

// station says that a row of a list begins with the name of a station.
func (r *reader) station(t *records, row int) bool {
	_, ok := r.stationName(t.page.at(row, t.cols["station"]))
	return ok
}

// first is the first text of a row within the table.
func (t *records) first(row int) string {
	for _, col := range t.page.filled[0][row] {
		if c := t.page.at(row, col); col >= t.left && col <= t.right && c.Kind == sheet.Text {
			return c.Text
		}
	}
	return ""
}

// anyHeadingBelow says that one of the next rows is the headings of some table.
func (r *reader) anyHeadingBelow(t *records, row int) bool {
	for next := row + 1; next <= min(row+3, t.page.rows); next++ {
		if r.anyHeading(t, next) || r.stations(grid{page: t.page}, next) != nil && !t.keyed(next) {
			return true
		}
	}
	return false
}

// anyHeading says that a row is the headings of some table.
func (r *reader) anyHeading(t *records, row int) bool {
	n, cells := 0, 0
	for _, col := range t.page.filled[0][row] {
		if col < t.left || col > t.right {
			continue
		}
		cells++
		c := t.page.at(row, col)
		if c.Kind == sheet.Number || c.Kind == sheet.Text && len(measure.Notations(c.Text)) > 0 {
			return false // headings hold no figures
		}
		if m := r.words.of(c); m != "" && m != "summary" && m != "transom" {
			n++
		}
	}
	return n >= 3 && 2*n >= cells || n == 2 && cells == 2 && len(t.cols) < 4
}

// summaryRow ticks off a row of the table's own sums.
func (r *reader) summaryRow(t *records, row int) bool {
	for _, col := range t.page.filled[0][row] {
		if c := t.page.at(row, col); col >= t.left && col <= t.right && c.Kind == sheet.Text {
			if m, _ := r.words.first(c.Text); m != "summary" || len(tokens(c.Text)) > 3 {
				return false
			}
			t.page.useBlock(row, t.left, row, t.right)
			r.add(finding.Finding{Kind: SummaryLeft, Cell: t.page.cell(row, col), Text: fmt.Sprintf("%q is the table's own summary and no row of it", text(c))})
			return true
		}
	}
	return false
}

// unitRow reads a row of units below the headings.
func (r *reader) unitRow(t *records, row int) bool {
	if row > t.head+2 || len(t.rows) > 0 {
		return false
	}
	said := map[string]measure.Form{}
	units := 0
	for m, col := range t.cols {
		c := t.page.at(row, col)
		if c.Kind == sheet.Empty {
			continue
		}
		form, ok := bareUnit(c.Text)
		if c.Kind != sheet.Text || !ok || measure.IsDash(c.Text) {
			return false
		}
		units++
		said[m] = form
	}
	if units == 0 {
		return false
	}
	for m, col := range t.cols {
		t.page.use(row, col)
		if form, ok := said[m]; ok {
			t.said[m] = form
		}
	}
	return true
}

// cell is one field's cell and its place: a ditto mark is the cell above.
func (t *records) cell(row int, field string) (sheet.Cell, source.Cell, bool) {
	col, ok := t.cols[field]
	if !ok {
		return sheet.Cell{}, source.Cell{}, false
	}
	c := t.page.raw(row, col)
	if c.Kind == sheet.Text && measure.IsDitto(c.Text) {
		for above := row - 1; above > t.head; above-- {
			if a := t.page.raw(above, col); filled(a) && !(a.Kind == sheet.Text && measure.IsDitto(a.Text)) {
				c = a
				break
			}
		}
	}
	if over, under := t.page.covered[[2]int{row, col}]; under && over[1] == col {
		c = t.page.raw(over[0], over[1]) // one cell merged over the rows it holds for
	}
	return c, t.page.cell(row, col), true
}

// text is one field of a record as written; "" where the table has no such column.
func (t *records) text(row int, field string) string {
	c, _, _ := t.cell(row, field)
	if c.Kind == sheet.Number {
		return plainNumber(c.Number)
	}
	return text(c)
}

// where is the record's own place: its first column.
func (t *records) where(row int) source.Cell { return t.page.cell(row, t.left) }

// column is every cell of a field.
func (t *records) column(field string) []sheet.Cell {
	var all []sheet.Cell
	for _, row := range t.rows {
		if c, _, ok := t.cell(row, field); ok {
			all = append(all, c)
		}
	}
	return all
}

// found is the table as show prints it.
func (t *records) found(name string) source.Table {
	g := grid{page: t.page}
	right := t.right
	for _, n := range t.names {
		right = max(right, n.col)
	}
	return source.Table{Table: name, Book: t.page.book.Name, Sheet: t.page.sheet.Name, Range: g.block(t.top, t.left, t.last(), right), Lines: len(t.rows)}
}

// columnsLeft notes the columns of a table whose headings are not known here.
func (r *reader) columnsLeft(t *records) {
	known := map[int]bool{}
	for _, col := range t.cols {
		known[col] = true
	}
	for _, n := range t.names {
		known[n.col] = true
	}
	var left []string
	var cells []source.Cell
	for col := t.left; col <= t.right; col++ {
		if known[col] {
			continue
		}
		any := false
		for row := t.head + 1; row <= t.last(); row++ {
			if filled(t.page.at(row, col)) {
				any = true
				t.page.use(row, col)
			}
		}
		if any {
			left = append(left, fmt.Sprintf("%q", t.heads[col]))
			cells = append(cells, t.page.cell(t.head, col))
		}
	}
	if len(left) > 0 {
		r.add(finding.Finding{Kind: ColumnUnused, Cell: cells[0], Also: cells[1:],
			Text: fmt.Sprintf("%s not known here and left: %s", plural(len(left), fmt.Sprintf("column of the %s is", t.kind.name), fmt.Sprintf("columns of the %s are", t.kind.name)), strings.Join(left, ", "))})
	}
}
