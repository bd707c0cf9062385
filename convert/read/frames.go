package read

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// Frames are built where the builder sets them, stations stand where the designer
// drew them: frame 4 is not station 4 unless the builder says so.

// called is what the words at a station's name call it.
type called uint8

const (
	asNumber called = iota // by its number alone
	asStation
	asFrame
)

// prefix is how a name of each kind is told from those of the offsets' kind.
func (c called) prefix() string { return map[called]string{asStation: "Sta ", asFrame: "Fr "}[c] }

// placesOf is the word that a table is told of in whose stations are so called.
func placesOf(c called) hull.Places {
	if c == asFrame {
		return hull.AtFrames
	}
	return hull.AtStations
}

// calledIn is what words call the stations under them.
func calledIn(words string) called {
	frame, station := false, false
	for _, w := range tokens(words) {
		switch w {
		case "fr", "frs", "frame", "frames":
			frame = true
		case "station", "stations", "sta", "stas", "stn", "stns", "mould", "moulds", "mold", "molds":
			station = true
		}
	}
	switch {
	case frame && !station:
		return asFrame
	case station && !frame:
		return asStation
	}
	return asNumber
}

// call notes what a station is called: by its own words, else by those over it.
func (r *reader) call(at source.Cell, c sheet.Cell, over ...string) {
	if c.Kind == sheet.Text {
		over = append([]string{c.Text}, over...)
	}
	for _, w := range over {
		if k := calledIn(w); k != asNumber {
			r.calls[at] = k
			return
		}
	}
}

// callStations notes what the stations of a table are called.
func (r *reader) callStations(t *stationTable, cols []int) {
	var over []string
	for _, c := range t.corner() {
		over = append(over, c.Text)
	}
	for up := 1; up <= min(2, t.head-1); up++ {
		if c := t.title(t.head-up, t.left); c.Kind == sheet.Text && len(tokens(c.Text)) <= 4 {
			over = append(over, c.Text)
		}
	}
	for _, col := range cols {
		r.call(t.place(t.head, col), t.see(t.head, col), over...)
	}
}

// callOf is what the numbered stations of a table are called, by the most of them.
func (r *reader) callOf(stations []hull.Station) called {
	n := map[called]int{}
	for _, s := range stations {
		if _, ok := stationNumber(s.Name); ok {
			n[r.calls[s.Cell]]++
		}
	}
	return slices.MaxFunc([]called{asNumber, asStation, asFrame}, func(a, b called) int { return n[a] - n[b] })
}

// otherThan says that stations of one kind are not known to be those of another.
func (c called) otherThan(base called) bool {
	return (c == asFrame) != (base == asFrame) && c != asNumber
}

// keyOf is the name that the positions of a list are kept under: that of a frame is
// kept apart.
func (r *reader) keyOf(name string, at source.Cell) string {
	if _, ok := stationNumber(name); ok && r.calls[at] == asFrame && !r.rules.Yard.FramesAreStations {
		return asFrame.prefix() + name
	}
	return name
}

// framesApart keeps what is given at frames from being taken for what the offsets
// have at the stations of the same numbers.
func (r *reader) framesApart() {
	base := asNumber
	for i := range r.job.Offsets {
		o := &r.job.Offsets[i]
		call := r.callOf(o.Stations)
		o.Places, base = placesOf(call), max(base, call)
	}
	for i := range r.job.Bevels {
		b := &r.job.Bevels[i]
		b.Places = placesOf(cmp.Or(r.callOf(b.Stations), base))
	}
	for i := range r.job.Gaps {
		g := &r.job.Gaps[i]
		g.Places = placesOf(cmp.Or(r.calls[g.Cell], base))
	}
	if len(r.job.Offsets) == 0 || base == asFrame {
		r.plainFrames()
	}
	for i := range r.job.Strakes {
		s := &r.job.Strakes[i]
		s.From, s.To = r.ranTo(s.From, base), r.ranTo(s.To, base)
	}
	if len(r.job.Offsets) == 0 || r.rules.Yard.FramesAreStations {
		return
	}
	apart := func(name string, at source.Cell) (string, bool) {
		_, numbered := stationNumber(name)
		if c := r.calls[at]; numbered && c.otherThan(base) {
			return c.prefix() + name, true
		}
		return name, false
	}
	asked := map[string]bool{}
	ask := func(what string, at source.Cell, name string) {
		if asked[what] {
			return
		}
		asked[what] = true
		r.add(finding.Finding{Kind: FramesOpen, Cell: at, Reads: name,
			Text: fmt.Sprintf("the %s are given at %q and others, and the offsets at %ss: nothing says that these are the same places or where the ones lie, so none was laid out or held against the hull by its number", what, name, placesOf(base))})
	}
	rename := func(what string, stations []hull.Station, along bool) []hull.Station {
		stations = slices.Clone(stations)
		for i, s := range stations {
			name, other := apart(s.Name, s.Cell)
			if !other {
				continue
			}
			stations[i].Name = name
			if !s.At.OK() && !along && !r.at[name].OK() {
				ask(what, s.Cell, name)
			}
		}
		return stations
	}
	for i := range r.job.Bevels {
		b := &r.job.Bevels[i]
		along := !slices.ContainsFunc(b.Seams, func(s bevel.Seam) bool { return len(s.Along) == 0 })
		b.Stations = rename("bevels", b.Stations, along)
	}
	for i := range r.job.Seams {
		r.job.Seams[i].Stations = rename("marks", r.job.Seams[i].Stations, false)
	}
	for i := range r.job.Strakes {
		s := &r.job.Strakes[i]
		s.WidthAt = rename("widths", s.WidthAt, false)
	}
	for i := range r.job.Hung {
		h := &r.job.Hung[i]
		if name, other := apart(h.Station, h.Cell); other {
			h.Station = name
			ask("girths as hung", h.Cell, name)
		}
	}
	for i := range r.job.Gaps {
		g := &r.job.Gaps[i]
		if name, other := apart(g.Station, g.Cell); other {
			g.Station = name
			ask("gaps", g.Cell, name)
		}
	}
}

// ranTo is the name of the station that a strake runs from or to.
func (r *reader) ranTo(words string, base called) string {
	n, ok := r.nameIn(sheet.Cell{Kind: sheet.Text, Text: words})
	if !ok || !n.numbered {
		return words
	}
	if c := calledIn(words); c.otherThan(base) && len(r.job.Offsets) > 0 && !r.rules.Yard.FramesAreStations {
		return c.prefix() + n.text
	}
	return n.text
}

// plainFrames puts the positions of frames under their numbers alone, where all else
// goes by frames too.
func (r *reader) plainFrames() {
	for key, at := range r.at {
		name, framed := strings.CutPrefix(key, asFrame.prefix())
		if _, taken := r.at[name]; framed && !taken {
			delete(r.at, key)
			r.at[name] = at
		}
	}
}

// ofFrames says that some stations are not those of the offsets, so that the
// spacing of the stations does not place them.
func ofFrames(stations []hull.Station) bool {
	return slices.ContainsFunc(stations, func(s hull.Station) bool {
		return strings.HasPrefix(s.Name, asFrame.prefix()) || strings.HasPrefix(s.Name, asStation.prefix())
	})
}
