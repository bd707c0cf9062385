package read

import (
	"fmt"
	"slices"

	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// stationOf is the station that a row of a long list names: a blank is that of
// the row above.
func (r *reader) stationOf(t *records, row int, last *string) (string, bool) {
	c, at, _ := t.cell(row, "station")
	if c.Kind == sheet.Empty {
		r.calls[t.where(row)] = t.called
		return *last, *last != ""
	}
	r.call(at, c, t.heads[t.cols["station"]])
	t.called = r.calls[at]
	r.calls[t.where(row)] = t.called
	n, ok := r.stationName(c)
	if !ok || n.summary {
		n.text = text(c)
	}
	*last = n.text
	return n.text, n.text != ""
}

// named is what a row of a list tells of: a strake at a station. What a row leaves
// blank stands as in the row above.
type named struct {
	skin            hull.Skin
	strake, station string
	called          called
}

func (n named) words() string {
	return fmt.Sprintf("%s %s at %s", n.skin, n.strake, n.called.places().Named(n.station))
}

// names reads what a row tells of. It is false, and said, where no station is
// named yet.
func (r *reader) names(t *records, row int, at *named) bool {
	if _, ok := r.stationOf(t, row, &at.station); !ok {
		r.unnamed(t, row, "station")
		return false
	}
	at.called = t.called
	if s := t.text(row, "strake"); s != "" {
		at.strake = s
	}
	if s := skinOf(t.text(row, "skin")); s != "" {
		at.skin = s
	}
	return true
}

// longPositions reads a list of stations and where each lies.
func (r *reader) longPositions(t *records) {
	table := t.found("positions")
	field := "position"
	if _, ok := t.cols[field]; !ok {
		field = "spacing"
	}
	cols := r.lengths(t, &table, field)
	last := ""
	var names []string
	var places []source.Cell
	var all []source.Reading[measure.Length]
	for _, row := range t.rows {
		name, ok := r.stationOf(t, row, &last)
		if !ok {
			r.unnamed(t, row, "station")
			continue
		}
		names, places = append(names, name), append(places, t.where(row))
		all = append(all, r.length(t, row, field, cols, fmt.Sprintf("%s of %s", field, t.called.places().Named(name))))
	}
	r.tableRead()
	if field == "spacing" && !summed(all) {
		r.add(finding.Finding{Kind: SpacingOpen, Cell: t.page.cell(t.head, t.cols[field]), Text: "a spacing stands at every station: nothing says whether it is to the station before or the one after"})
		return
	}
	n := placing{cell: t.page.cell(t.head, t.cols[field]), label: t.heads[t.cols[field]], words: t.caption, page: t.page}
	for i, name := range names {
		r.place(name, places[i], all[i])
		n.stations = append(n.stations, hull.Station{Name: name, At: all[i], Cell: places[i], Transom: r.words.heading(name) == "transom"})
	}
	r.lay(n)
	table.Stations = len(names)
	r.tables = append(r.tables, table)
}

// hung reads a list of girths measured to edges hung.
func (r *reader) hung(t *records) {
	table := t.found("hung")
	cols := r.lengths(t, &table, "girths")
	at := named{skin: hull.Planks}
	words := ""
	for _, c := range append([]string{t.heads[t.cols["girths"]]}, t.caption...) {
		words += " " + c
		if s := r.skinIn(c); s != "" {
			at.skin = s
		}
	}
	fromSheer, fromRabbet := sheerText.MatchString(plainWords(words)), rabbetText.MatchString(plainWords(words))
	var asked []source.Cell
	for _, row := range t.rows {
		if !r.names(t, row, &at) {
			continue
		}
		h := hull.Hung{Skin: at.skin, Strake: at.strake, Side: sideOf(t.text(row, "side")), Station: at.station, Cell: t.where(row),
			Girth: r.length(t, row, "girths", cols, "girth of "+at.words())}
		from := plainWords(t.text(row, "from"))
		switch {
		case from == "rabbet" || from == "keel" || from == "" && fromRabbet && !fromSheer:
			h.From = hull.FromRabbet
		case from == "sheer" || from == "deck" || from == "" && fromSheer && !fromRabbet:
		default:
			asked = append(asked, h.Girth.Cell)
			continue
		}
		if r.words.heading(t.text(row, "corner")) == "outside" || plainWords(t.text(row, "corner")) == "outside" || t.text(row, "corner") == "" && outerText.MatchString(plainWords(words)) {
			h.Corner = hull.OutsideCorner
		}
		r.job.Hung = append(r.job.Hung, h)
	}
	r.tableRead()
	if len(asked) > 0 {
		r.add(finding.Finding{Kind: ConventionOpen, Cell: asked[0], Also: asked[1:], Text: "girths are given, and nothing says whether from the sheer or from the rabbet: they were left"})
	}
	r.tables = append(r.tables, table)
}

// longBevels reads bevels kept as a list: strake, edge, station, reading.
func (r *reader) longBevels(t *records) {
	b := bevel.Readings{Cell: t.page.cell(t.head, t.left)}
	want := bevel.Seam{Skin: r.captionSkin(t.caption)}
	table := t.found("bevels")
	about := append([]string{t.heads[t.cols["bevels"]]}, t.caption...)
	in := r.riseOf(about, t.page, b.Cell)
	last := ""
	var readings []measure.Angle
	for _, row := range t.rows {
		station, ok := r.stationOf(t, row, &last)
		r.longSeam(t, row, &want)
		if edge := t.text(row, "edge"); edge != "" {
			if _, ok := edgeNamed(edge); !ok && holdsAny(t.heads[t.cols["edge"]], "edge") {
				r.oddEdges[want.Cell] = edge
				r.edgeOdd(want)
				continue
			}
		}
		if !ok || want.Strake == "" {
			r.unnamed(t, row, "station")
			continue
		}
		k := slices.IndexFunc(b.Stations, func(s hull.Station) bool { return s.Name == station })
		if k < 0 {
			k = len(b.Stations)
			b.Stations = append(b.Stations, hull.Station{Name: station, Cell: t.page.cell(row, t.cols["station"])})
		}
		s := seamIn(&b, want)
		c, cell, _ := t.cell(row, "bevels")
		v := r.angle(c, cell, *s, in)
		s.Readings = slices.Concat(s.Readings, make([]source.Reading[measure.Angle], max(0, k+1-len(s.Readings))))
		if s.Readings[k].State != source.Blank {
			r.add(finding.Finding{Kind: ValueTwice, Cell: cell, Also: []source.Cell{s.Readings[k].Cell}, Reads: v.Text, Suggests: s.Readings[k].Text,
				Text: fmt.Sprintf("the bevel of %s %s at %s is given a second time", s.Skin, s.Strake, t.called.places().Named(station))})
			continue
		}
		s.Readings[k] = v
		table.Digest += v.Text + ";"
		if v.OK() {
			readings = append(readings, v.Value)
		}
	}
	for i := range b.Seams {
		s := &b.Seams[i]
		s.Readings = slices.Concat(s.Readings, make([]source.Reading[measure.Angle], len(b.Stations)-len(s.Readings)))
	}
	b.Gauge, b.InStation = r.gauge(about, t.page, b), r.inStation(about, t.page, b.Cell)
	if r.riseTold(in, &b); b.Rise == 0 {
		r.pointedBevels(t.page, &b)
	}
	b.Resolution = in.step(readings)
	table.Stations, table.Lines, table.Unit, table.Notation = len(b.Stations), len(b.Seams), "degrees", b.Gauge.String()
	r.tables = append(r.tables, table)
	r.job.Bevels = append(r.job.Bevels, b)
}

// longSeam is the seam that a row of a list of bevels is of: strake and skin are those
// of the row above where it gives none.
func (r *reader) longSeam(t *records, row int, of *bevel.Seam) {
	if s := t.text(row, "strake"); s != "" {
		of.Strake = s
	}
	if s := skinOf(t.text(row, "skin")); s != "" {
		of.Skin = s
	}
	of.Side = sideIn(t.caption)
	if s := t.text(row, "side"); s != "" {
		of.Side = sideOf(s)
	}
	of.Edge, _ = edgeNamed(t.text(row, "edge"))
	of.Cell = t.page.cell(row, t.cols["strake"])
}

// seamIn is a seam of a table of bevels, a new one where the table has none such.
func seamIn(b *bevel.Readings, want bevel.Seam) *bevel.Seam {
	for i := range b.Seams {
		if s := &b.Seams[i]; s.Strake == want.Strake && s.Skin == want.Skin && s.Side == want.Side && s.Edge == want.Edge {
			return s
		}
	}
	b.Seams = append(b.Seams, want)
	return &b.Seams[len(b.Seams)-1]
}
