package read

import "strakebook/calc/hull"

// gaps reads a list of the openings left for the last planks, a station a row,
// measured on both faces. A strake named once stands for the rows below it.
func (r *reader) gaps(t *records) {
	table := t.found("gaps")
	cols := r.lengths(t, &table, "gapinside", "gapoutside")
	at := named{skin: hull.Planks}
	for _, row := range t.rows {
		if !r.names(t, row, &at) {
			continue
		}
		what := "gap of " + at.words()
		r.job.Gaps = append(r.job.Gaps, hull.Gap{Skin: at.skin, Strake: at.strake, Side: sideOf(t.text(row, "side")), Station: at.station, Cell: t.where(row),
			Inside: r.length(t, row, "gapinside", cols, what+" on the inside face"), Outside: r.length(t, row, "gapoutside", cols, what+" on the outside face")})
	}
	r.tableRead()
	r.tables = append(r.tables, table)
}
