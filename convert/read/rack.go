package read

import (
	"fmt"
	"strings"

	"strakebook/calc/stock"
)

// rack reads a table of boards. A blank count stands for as many as are wanted;
// a blank species is that of the row above.
func (r *reader) rack(t *records) {
	table := t.found("rack")
	cols := r.lengths(t, &table, "thickness", "width", "length", "badfrom", "badto")
	species := ""
	r.pricesSaid(t, cols["length"].form.Unit)
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
