package read

import (
	"slices"

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

// places is the word in which what is so called is told of.
func (c called) places() hull.Places {
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

// otherPlaces says that one of two tables of offsets is given at frames and the other at
// stations, which nothing says are the same places.
func (r *reader) otherPlaces(a, b hull.Offsets) bool {
	x, y := r.callOf(a.Stations), r.callOf(b.Stations)
	return !r.rules.Yard.FramesAreStations && x.otherThan(y) && y.otherThan(x) && !samePlaces(a.Stations, b.Stations)
}

// samePlaces says that the stations of one table lie, by their positions, where those of
// the same names in another do.
func samePlaces(more, fewer []hull.Station) bool {
	if len(fewer) > len(more) {
		more, fewer = fewer, more
	}
	at, ok := among(more, fewer)
	for i := range at {
		x, y := more[at[i]].At, fewer[i].At
		ok = ok && x.OK() && y.OK() && x.Value == y.Value
	}
	return ok
}

// keyOf is the name that the positions of a list are kept under: that of a frame is
// kept apart.
func (r *reader) keyOf(name string, at source.Cell) string {
	if _, ok := stationNumber(name); ok && r.calls[at] == asFrame && !r.rules.Yard.FramesAreStations {
		return hull.AtFrames.Apart(name)
	}
	return name
}

// ofFrames says that some stations are not those of the offsets, so that the
// spacing of the stations does not place them.
func ofFrames(stations []hull.Station) bool {
	return slices.ContainsFunc(stations, func(s hull.Station) bool {
		_, framed := hull.AtFrames.Plain(s.Name)
		_, stationed := hull.AtStations.Plain(s.Name)
		return framed || stationed
	})
}
