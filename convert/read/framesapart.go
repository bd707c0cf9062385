package read

import (
	"cmp"
	"fmt"
	"slices"

	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// framesApart keeps what is given at frames from being taken for what the offsets
// have at the stations of the same numbers.
func (r *reader) framesApart() {
	base := r.callTables()
	if len(r.job.Offsets) == 0 || base == asFrame {
		r.plainFrames()
	}
	for i := range r.job.Strakes {
		s := &r.job.Strakes[i]
		s.From, s.To = r.ranTo(s.From, base), r.ranTo(s.To, base)
	}
	if len(r.job.Offsets) > 0 && !r.rules.Yard.FramesAreStations {
		asunder{r, base, map[string]bool{}}.all()
	}
}

// callTables gives every table the word for its stations, and is what those of the
// offsets are called.
func (r *reader) callTables() (base called) {
	for i := range r.job.Offsets {
		o := &r.job.Offsets[i]
		call := r.callOf(o.Stations)
		o.Places = call.places()
		if i == 0 || base == asNumber { // the hull is drawn from the first
			base = call
		}
	}
	for i := range r.job.Bevels {
		b := &r.job.Bevels[i]
		b.Places = cmp.Or(r.callOf(b.Stations), base).places()
	}
	for i := range r.job.Gaps {
		g := &r.job.Gaps[i]
		g.Places = cmp.Or(r.calls[g.Cell], base).places()
	}
	return base
}

// asunder tells what is given at places of another kind than the offsets' by its name.
type asunder struct {
	r     *reader
	base  called          // what the offsets' stations are called
	asked map[string]bool // tables that were asked about
}

// all renames what is given in every table but the offsets.
func (a asunder) all() {
	job := &a.r.job
	for i := range job.Bevels {
		b := &job.Bevels[i]
		along := !slices.ContainsFunc(b.Seams, func(s bevel.Seam) bool { return len(s.Along) == 0 })
		b.Stations = a.stations("bevels", b.Stations, along)
	}
	for i := range job.Seams {
		job.Seams[i].Stations = a.stations("marks", job.Seams[i].Stations, false)
	}
	for i := range job.Strakes {
		s := &job.Strakes[i]
		s.WidthAt = a.stations("widths", s.WidthAt, false)
	}
	for i := range job.Hung {
		h := &job.Hung[i]
		h.Station = a.station("girths as hung", h.Station, h.Cell)
	}
	for i := range job.Gaps {
		g := &job.Gaps[i]
		g.Station = a.station("gaps", g.Station, g.Cell)
	}
}

// stations is the stations of a table, those of another kind renamed, and asks where
// nothing places them: no position, and no distances along the edges.
func (a asunder) stations(what string, stations []hull.Station, along bool) []hull.Station {
	stations = slices.Clone(stations)
	for i, s := range stations {
		name, other := a.name(s.Name, s.Cell)
		if !other {
			continue
		}
		stations[i].Name = name
		if !s.At.OK() && !along && !a.r.at[name].OK() {
			a.ask(what, s.Cell, name)
		}
	}
	return stations
}

// station is the name of a row's station, and asks where it is of another kind.
func (a asunder) station(what, name string, at source.Cell) string {
	name, other := a.name(name, at)
	if other {
		a.ask(what, at, name)
	}
	return name
}

// name is the name of a station, and whether it is of another kind.
func (a asunder) name(name string, at source.Cell) (string, bool) {
	_, numbered := stationNumber(name)
	if c := a.r.calls[at]; numbered && c.otherThan(a.base) {
		return c.places().Apart(name), true
	}
	return name, false
}

// ask asks once a table where its places lie.
func (a asunder) ask(what string, at source.Cell, name string) {
	if a.asked[what] {
		return
	}
	a.asked[what] = true
	a.r.add(finding.Finding{Kind: FramesOpen, Cell: at, Reads: name,
		Text: fmt.Sprintf("the %s are given at %q and others, and the offsets at %ss: nothing says that these are the same places or where the ones lie, so none was laid out or held against the hull by its number", what, name, a.base.places())})
}

// ranTo is the name of the station that a strake runs from or to.
func (r *reader) ranTo(words string, base called) string {
	n, ok := r.nameIn(sheet.Cell{Kind: sheet.Text, Text: words})
	if !ok || !n.numbered {
		return words
	}
	if c := calledIn(words); c.otherThan(base) && len(r.job.Offsets) > 0 && !r.rules.Yard.FramesAreStations {
		return c.places().Apart(n.text)
	}
	return n.text
}

// plainFrames puts the positions of frames under their numbers alone, where all else
// goes by frames too.
func (r *reader) plainFrames() {
	for key, at := range r.at {
		name, framed := hull.AtFrames.Plain(key)
		if _, taken := r.at[name]; framed && !taken {
			delete(r.at, key)
			r.at[name] = at
		}
	}
}
