package read

import (
	"fmt"
	"slices"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// entry is one figure of a long list of offsets.
type entry struct {
	station string
	line    tableLine
	value   source.Reading[measure.Length]
}

// longOffsets reads offsets kept as one long list: station, line, value; or as
// sections: station, half-breadth, height.
func (r *reader) longOffsets(t *records) {
	_, named := t.cols["line"]
	_, level := t.cols["waterline"]
	_, buttock := t.cols["buttock"]
	_, out := t.cols["breadths"]
	_, up := t.cols["heights"]
	if out && up && !named && !level && !buttock {
		r.longPairs(t)
		return
	}
	table := t.found("offsets")
	value := "value"
	switch {
	case out:
		value = "breadths"
	case up && (named || buttock):
		value = "heights"
	}
	fields := []string{value, "waterline", "buttock", "position"}
	if up && value != "heights" {
		fields = append(fields, "heights")
	}
	cols := r.lengths(t, &table, fields...)
	r.listedFrom(t, cols)
	o := hull.Offsets{Form: cols[value].form, Cell: t.page.cell(t.head, t.left)}
	o.Fractions = o.Form.Unit == measure.Fractions
	o.Surface = r.surfaceOf(t.caption, t.page, o.Cell)
	var all []entry
	var stations []hull.Station
	last, line := "", ""
	for _, row := range t.rows {
		station, ok := r.stationOf(t, row, &last)
		if !ok {
			r.unnamed(t, row, "station")
			continue
		}
		if !slices.ContainsFunc(stations, func(s hull.Station) bool { return s.Name == station }) {
			stations = append(stations, hull.Station{Name: station, Cell: t.page.cell(row, t.cols["station"]), Transom: r.words.heading(station) == "transom"})
		}
		r.placeIn(t, row, cols, station)
		for _, e := range r.entries(t, row, value, cols, &line) {
			e.station = station
			all = append(all, e)
		}
	}
	r.tableRead()
	r.listLay(t, o.Cell, stations)
	r.gather(&o, inOrder(stations), all)
	for _, e := range all {
		table.Digest += e.value.Text + ";"
	}
	o.Resolution = resolution(o.Form, cols[value].places, given(o.Lines))
	table.Stations, table.Lines = len(o.Stations), len(o.Lines)
	r.tables = append(r.tables, table)
	r.keep(o, func(hull.Line) []string { return t.caption })
}

// listLay notes where the stations of a list lie, and what is said of them.
func (r *reader) listLay(t *records, at source.Cell, stations []hull.Station) {
	n := placing{cell: at, words: t.caption, page: t.page, stations: slices.Clone(stations)}
	if col, ok := t.cols["position"]; ok {
		n.cell, n.label = t.page.cell(t.head, col), t.heads[col]
		for i, s := range stations {
			n.stations[i].At = r.at[r.keyOf(s.Name, s.Cell)]
		}
	}
	r.lay(n)
}

// placeIn keeps where a station lies, where a long list of offsets says it too.
func (r *reader) placeIn(t *records, row int, cols map[string]column, station string) {
	if _, ok := t.cols["position"]; ok {
		r.place(station, t.where(row), r.length(t, row, "position", cols, "position of "+t.called.places().Named(station)))
	}
}

// entries is the figures that one row of a long list gives.
func (r *reader) entries(t *records, row int, value string, cols map[string]column, line *string) []entry {
	label, role, at := t.text(row, "line"), hull.OtherLine, source.Reading[measure.Length]{}
	_, place, _ := t.cell(row, "line")
	switch {
	case label != "":
	case t.text(row, "waterline") != "":
		role, place = hull.Waterline, t.page.cell(row, t.cols["waterline"])
		at = r.length(t, row, "waterline", cols, "height of a waterline")
		label = "WL " + t.text(row, "waterline")
	case t.text(row, "buttock") != "":
		role, place = hull.Buttock, t.page.cell(row, t.cols["buttock"])
		at = r.length(t, row, "buttock", cols, "distance of a buttock")
		label = "Buttock " + t.text(row, "buttock")
	case value == "value" && t.text(row, "heights") != "":
		role, place = hull.Waterline, t.page.cell(row, t.cols["heights"])
		at = r.length(t, row, "heights", cols, "height of a waterline")
		label = "WL " + t.text(row, "heights")
	case *line != "":
		label = *line
	}
	*line = label
	l := tableLine{row: row, line: hull.Line{Name: label, Cell: place}}
	view := t.text(row, "view")
	if role == hull.OtherLine {
		r.sense(&l, view, t.stand(value))
		r.placed(&l, t.stand(value), cols[value].form)
	} else {
		l.line.Role, l.line.At = role, at
		if role == hull.Buttock {
			l.line.View = hull.Height
		}
	}
	what := fmt.Sprintf("%s of %s", l.line.View, label)
	all := []entry{{line: l, value: r.length(t, row, value, cols, what)}}
	if _, two := t.cols["heights"]; two && value == "breadths" && l.line.Role != hull.Waterline {
		h := l
		h.line.View, h.open = hull.Height, false
		if h.line.Role == hull.OtherLine && l.open {
			l.open = false
		}
		all = append(all, entry{line: h, value: r.length(t, row, "heights", cols, "height of "+label)})
	}
	return all
}

// stand is a list as far as the reading of labels asks about the table they
// stand in: its heading for the figures is its caption.
func (t *records) stand(value string) *stationTable {
	return &stationTable{grid: grid{page: t.page}, caption: append([]string{t.heads[t.cols[value]]}, t.caption...), left: 1}
}

// inOrder is stations by their numbers, where every one has a number.
func inOrder(stations []hull.Station) []hull.Station {
	for _, s := range stations {
		if _, ok := stationNumber(s.Name); !ok && !s.Transom {
			return stations
		}
	}
	slices.SortStableFunc(stations, func(a, b hull.Station) int {
		switch {
		case a.Transom != b.Transom && a.Transom:
			return 1
		case a.Transom != b.Transom:
			return -1
		}
		x, _ := stationNumber(a.Name)
		y, _ := stationNumber(b.Name)
		switch {
		case x < y:
			return -1
		case x > y:
			return 1
		}
		return 0
	})
	return stations
}

// gather makes lines by stations of the figures of a list.
func (r *reader) gather(o *hull.Offsets, stations []hull.Station, all []entry) {
	o.Stations = stations
	at := map[string]int{}
	for i, s := range stations {
		at[s.Name] = i
	}
	var lines []tableLine
	index := map[string]int{}
	for _, e := range all {
		key := fmt.Sprint(e.line.line.View, "|", e.line.line.Role, "|", e.line.line.Name)
		i, known := index[key]
		if !known {
			i = len(lines)
			index[key] = i
			e.line.line.Values = make([]source.Reading[measure.Length], len(stations))
			lines = append(lines, e.line)
		}
		v := &lines[i].line.Values[at[e.station]]
		if v.State != source.Blank {
			r.add(finding.Finding{Kind: ValueTwice, Cell: e.value.Cell, Also: []source.Cell{v.Cell}, Reads: e.value.Text, Suggests: v.Text,
				Text: fmt.Sprintf("%s of %s at station %s is given a second time", e.line.line.View, e.line.line.Name, e.station)})
			continue
		}
		*v = e.value
	}
	r.levels(lines, &stationTable{grid: grid{page: &page{sheet: &sheet.Sheet{}}}}, o.Form)
	r.viewsAsked(lines)
	for _, l := range lines {
		o.Lines = append(o.Lines, l.line)
	}
}
