package read

import (
	"strakebook/calc/measure"
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
	size := []string{"thickness", "width", "length", portLength, starboardLength, "count", "species", "slope", "from"}
	return []recordTable{
		{name: "strakes", fields: []string{"strake", "skin", "side", "count", "thickness", "width", "length", portLength, starboardLength, "species", "slope", "scarfrun", "start", "from", "to", "clear", "note"},
			need: []string{"strake"}, either: [][]string{size, {"thickness", "width", "length", portLength, starboardLength}}, least: 3, never: []string{"mark", "price", "footprice", "value", "station", "bevels", "girths"}, names: []string{"strake"}, titled: []string{"strake"}, read: (*reader).strakes},
		{name: "rack", fields: []string{"mark", "species", "thickness", "width", "length", "count", "price", "pricedby", "footprice", "runfoot", "runmetre", "cubicmetre", "thousand", "source", "bad", "badfrom", "badto", "delivered", "note"},
			need: []string{"length", "width"}, least: 4, never: []string{"strake", "skin", "value", "station", "piece"}, names: []string{"mark"}, titled: []string{"rack", "mark", "species"}, read: (*reader).rack},
		{name: "pieces", fields: []string{"piece", "species", "thickness", "width", "length", "count", "note"},
			need: []string{"length", "width"}, least: 4, never: []string{"strake", "skin", "value", "station", "price", "pricedby", "footprice", "runfoot", "runmetre", "cubicmetre", "thousand", "source", "bad", "badfrom", "badto", "delivered"}, names: []string{"piece"}, titled: []string{"pieces"}, read: (*reader).pieces},
		{name: "offsets", long: true, fields: []string{"station", "position", "line", "view", "value", "breadths", "heights", "waterline", "buttock", "note"},
			need: []string{"station"}, either: [][]string{{"line", "waterline", "buttock", "heights"}, {"value", "breadths", "heights"}}, least: 3, never: []string{"strake", "bevels", "girths"}, titled: []string{"offsets"}, read: (*reader).longOffsets},
		{name: "bevels", fields: []string{"strake", "edge", "side", "skin", "station", "bevels", "note"},
			need: []string{"strake", "station", "bevels"}, least: 3, never: []string{"girths"}, read: (*reader).longBevels},
		{name: "hung", fields: []string{"strake", "skin", "side", "station", "girths", "from", "corner", "note"},
			need: []string{"station", "girths"}, least: 3, read: (*reader).hung},
		{name: "gaps", fields: []string{"strake", "skin", "side", "station", "gapinside", "gapoutside", "note"},
			need: []string{"strake", "station", "gapinside"}, least: 3, never: []string{"girths", "bevels"}, read: (*reader).gaps},
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
	names   []name      // stations' names among the headings: widths by station
	size    int         // the column of sizes such as 1 x 6, 0 for none
	parts   map[int]int // columns of whole parts of an inch, as quarters: how many to the inch
	called  called      // what the last station named was called
}

// headRows is the most rows that headings stand in.
const headRows = 3

// lists finds every table of some kinds on a page and reads it.
func (r *reader) lists(p *page, kinds []recordTable) {
	for row := 1; row <= p.rows; row++ {
		if len(p.filled[0][row]) < 2 {
			continue
		}
		next := row
		for t := r.listAt(p, row, kinds); t != nil; t = r.listAt(p, row, kinds) { // and those beside it
			r.list(t)
			if next == row || t.last() < next {
				next = t.last()
			}
		}
		row = next
	}
}

// list reads one table whose headings have been found.
func (r *reader) list(t *records) {
	r.body(t)
	for col := range t.heads {
		for at := t.top; at <= t.head; at++ {
			r.useHead(t.page, at, col)
		}
	}
	t.page.tables++
	t.kind.read(r, t)
	r.columnsLeft(t)
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
