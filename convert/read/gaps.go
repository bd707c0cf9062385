package read

import (
	"fmt"

	"strakebook/calc/hull"
)

// gaps reads a list of the openings left for the last planks, a station a row,
// measured on both faces. A strake named once stands for the rows below it.
func (r *reader) gaps(t *records) {
	table := t.found("gaps")
	cols := r.lengths(t, &table, "gapinside", "gapoutside")
	last, strake, skin := "", "", hull.Planks
	for _, row := range t.rows {
		station, ok := r.stationOf(t, row, &last)
		if !ok {
			r.unnamed(t, row, "station")
			continue
		}
		if s := t.text(row, "strake"); s != "" {
			strake = s
		}
		if s := skinOf(t.text(row, "skin")); s != "" {
			skin = s
		}
		what := fmt.Sprintf("gap of %s %s at station %s", skin, strake, station)
		r.job.Gaps = append(r.job.Gaps, hull.Gap{Skin: skin, Strake: strake, Side: sideOf(t.text(row, "side")), Station: station, Cell: t.where(row),
			Inside: r.length(t, row, "gapinside", cols, what+" on the inside face"), Outside: r.length(t, row, "gapoutside", cols, what+" on the outside face")})
	}
	r.tableRead()
	r.tables = append(r.tables, table)
}
