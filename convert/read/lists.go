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
}

func (n named) words() string { return fmt.Sprintf("%s %s at station %s", n.skin, n.strake, n.station) }

// names reads what a row tells of. It is false, and said, where no station is
// named yet.
func (r *reader) names(t *records, row int, at *named) bool {
	if _, ok := r.stationOf(t, row, &at.station); !ok {
		r.unnamed(t, row, "station")
		return false
	}
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
		all = append(all, r.length(t, row, field, cols, fmt.Sprintf("%s of station %s", field, name)))
	}
	r.tableRead()
	if field == "spacing" && !summed(all) {
		r.add(finding.Finding{Kind: SpacingOpen, Cell: t.page.cell(t.head, t.cols[field]), Text: "a spacing stands at every station: nothing says whether it is to the station before or the one after"})
		return
	}
	for i, name := range names {
		r.place(name, places[i], all[i])
	}
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
	skin := hull.Planks
	for _, c := range t.caption {
		if s := r.skinIn(c); s != "" {
			skin = s
			break
		}
	}
	table := t.found("bevels")
	at := map[string]int{}
	last, strake := "", ""
	var readings []measure.Angle
	for _, row := range t.rows {
		station, ok := r.stationOf(t, row, &last)
		if s := t.text(row, "strake"); s != "" {
			strake = s
		}
		if !ok || strake == "" {
			r.unnamed(t, row, "station")
			continue
		}
		if s := skinOf(t.text(row, "skin")); s != "" {
			skin = s
		}
		side := sideIn(t.caption)
		if s := t.text(row, "side"); s != "" {
			side = sideOf(s)
		}
		k, known := at[station]
		if !known {
			k = len(b.Stations)
			at[station] = k
			b.Stations = append(b.Stations, hull.Station{Name: station, Cell: t.page.cell(row, t.cols["station"])})
		}
		want := bevel.Seam{Strake: strake, Skin: skin, Side: side, Edge: edgeIn(t.text(row, "edge")), Cell: t.page.cell(row, t.cols["strake"])}
		i := slices.IndexFunc(b.Seams, func(s bevel.Seam) bool {
			return s.Strake == want.Strake && s.Skin == want.Skin && s.Side == want.Side && s.Edge == want.Edge
		})
		if i < 0 {
			i = len(b.Seams)
			b.Seams = append(b.Seams, want)
		}
		s := &b.Seams[i]
		c, cell, _ := t.cell(row, "bevels")
		v := r.angle(c, cell, *s)
		for len(s.Readings) <= k {
			s.Readings = append(s.Readings, source.Reading[measure.Angle]{})
		}
		if s.Readings[k].State != source.Blank {
			r.add(finding.Finding{Kind: ValueTwice, Cell: cell, Also: []source.Cell{s.Readings[k].Cell}, Reads: v.Text, Suggests: s.Readings[k].Text,
				Text: fmt.Sprintf("the bevel of %s %s at station %s is given a second time", s.Skin, s.Strake, station)})
			continue
		}
		s.Readings[k] = v
		table.Digest += v.Text + ";"
		if v.OK() {
			readings = append(readings, v.Value)
		}
	}
	for i := range b.Seams {
		for len(b.Seams[i].Readings) < len(b.Stations) {
			b.Seams[i].Readings = append(b.Seams[i].Readings, source.Reading[measure.Angle]{})
		}
	}
	b.Gauge, b.InStation = r.gauge(t.caption, t.page, b), r.inStation(t.caption, t.page, b.Cell)
	r.pointedBevels(t.page, &b)
	b.Resolution = step(readings)
	table.Stations, table.Lines, table.Unit, table.Notation = len(b.Stations), len(b.Seams), "degrees", b.Gauge.String()
	r.tables = append(r.tables, table)
	r.job.Bevels = append(r.job.Bevels, b)
}
