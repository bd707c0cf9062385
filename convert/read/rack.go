package read

import (
	"fmt"
	"strings"

	"strakebook/calc/measure"
	"strakebook/calc/stock"
)

// rack reads a table of boards. A blank count stands for as many as are wanted;
// a blank species is that of the row above.
func (r *reader) rack(t *records) {
	table := t.found("rack")
	cols := r.lengths(t, &table, "thickness", "width", "length", "badfrom", "badto")
	species := ""
	for _, row := range t.rows {
		mark := t.text(row, "mark")
		what := func(field string) string {
			name := mark
			if name == "" {
				name = fmt.Sprintf("in row %d", row)
			}
			return fmt.Sprintf("%s of board %s", field, name)
		}
		if s := t.text(row, "species"); s != "" {
			species = s
		}
		b := stock.Board{
			Mark: mark, Species: species, Source: t.text(row, "source"), Cell: t.where(row),
			Thickness: r.length(t, row, "thickness", cols, what("thickness")),
			Width:     r.length(t, row, "width", cols, what("width")),
			Length:    r.length(t, row, "length", cols, what("length")),
			Count:     r.count(t, row, "count", what("count")),
			Price:     r.number(t, row, "price", what("price")),
			Delivered: r.count(t, row, "delivered", what("count delivered")),
			Bad:       r.unusable(t, row, cols, what("stretch not to be used")),
		}
		r.priced(t, row, &b, what("price"))
		if b.Source == "" {
			b.Source = "rack"
			if b.Free() {
				b.Source = "mill"
			}
		}
		if strings.TrimSpace(b.Mark) == "" && !b.Thickness.OK() && !b.Width.OK() && !b.Length.OK() {
			continue
		}
		table.Digest += fmt.Sprint(b.Mark, b.Thickness.Value, b.Width.Value, b.Length.Value, b.Count.Value, b.Bad, ";")
		r.job.Rack = append(r.job.Rack, b)
	}
	r.tableRead()
	r.tables = append(r.tables, table)
}

// priced gives a board its price where that is not of the board itself: of a board
// foot, or of so much of its length.
func (r *reader) priced(t *records, row int, b *stock.Board, what string) {
	if b.Price.OK() {
		return
	}
	if p := r.number(t, row, "footprice", what); p.OK() {
		b.Price, b.PerFoot = p, true
		return
	}
	p, of := r.number(t, row, "runfoot", what), measure.Foot
	if !p.OK() {
		p, of = r.number(t, row, "runmetre", what), 1000*measure.Millimetre
	}
	if p.OK() && b.Length.OK() {
		p.Value *= float64(b.Length.Value) / float64(of)
		b.Price = p
	}
}
