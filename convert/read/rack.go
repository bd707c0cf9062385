package read

import (
	"cmp"
	"fmt"
	"strings"

	"strakebook/calc/stock"
)

// rack reads a table of boards, one a row or several by a tally of lengths. A blank
// count stands for as many as are wanted; a blank species is that of the row above.
func (r *reader) rack(t *records) {
	table := t.found("rack")
	cols := r.lengths(t, &table, "thickness", "width", "length", "badfrom", "badto")
	species := ""
	r.pricesOver(t)
	r.pricesSaid(t, cols["length"].form.Unit)
	rows := len(r.job.Rack) // that hold boards: of a tally a row has several
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
			Price:     r.number(t, row, "price", what("price")),
			Delivered: r.count(t, row, "delivered", what("count delivered")),
		}
		b.Bad, b.Unsure = r.unusable(t, row, cols, what("stretch not to be used"))
		before := len(r.job.Rack)
		for _, one := range r.lengthsOf(t, row, cols, what) {
			b := b
			b.Length, b.Count = one.length, one.count
			r.priced(t, row, &b, what("price"))
			if one.of > 0 && b.Delivered.Value == one.of {
				b.Delivered.Value = b.Count.Value
			}
			switch name := cmp.Or(mark, fmt.Sprintf("row %d", rows+1)); {
			case one.of > 0:
				b.Mark = name + " " + one.length.Text
			case rows < before: // the rack's own count of its rows is behind a tally's
				b.Mark = name
			}
			switch {
			case b.Source != "":
			case b.Free():
				b.Source = "mill"
			default:
				b.Source = "rack"
			}
			if strings.TrimSpace(mark) == "" && !b.Thickness.OK() && !b.Width.OK() && !b.Length.OK() {
				continue
			}
			table.Digest += fmt.Sprint(b.Mark, b.Thickness.Value, b.Width.Value, b.Length.Value, b.Count.Value, b.Bad, ";")
			r.job.Rack = append(r.job.Rack, b)
		}
		if len(r.job.Rack) > before {
			rows++
		}
	}
	r.tableRead()
	r.tables = append(r.tables, table)
}
