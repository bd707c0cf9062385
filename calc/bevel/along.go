package bevel

import (
	"strings"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// The sources of distances along an edge.
const (
	given    = "given"
	fromHull = "hull"
	spaced   = "station spacing"
)

// along is how far each station lies along the edge from the first one read,
// and where that is known from: the row of distances, else the hull's own seam,
// else the station spacing; nil where it is not known.
func along(b Readings, s Seam, edge Edge, places []hull.Station, shape *hull.Shape, first, last int) ([]measure.Length, string) {
	if at := alongGiven(b, s, first, last); at != nil {
		return at, given
	}
	var names []string
	for _, st := range b.Stations[first : last+1] {
		names = append(names, st.Name)
	}
	if on, ok := shape.SeamAlong(s.Skin, s.Strake, s.Side, edge == Upper, names); ok && rising(on) {
		return append(make([]measure.Length, first), on...), fromHull
	}
	at := make([]measure.Length, last+1)
	for k := first; k <= last; k++ {
		p := place(b.Stations[k], places)
		if !p.OK() {
			return nil, ""
		}
		at[k] = p.Value
	}
	return from(at, first), spaced
}

// alongGiven is the row of distances the table gives for a seam; nil where it
// does not reach from the first reading to the last.
func alongGiven(b Readings, s Seam, first, last int) []measure.Length {
	if len(s.Along) != len(b.Stations) {
		return nil
	}
	at := make([]measure.Length, last+1)
	for k := first; k <= last; k++ {
		if !s.Along[k].OK() {
			return nil
		}
		at[k] = s.Along[k].Value
	}
	return from(at, first)
}

// from measures distances from the first; nil where they do not increase.
func from(at []measure.Length, first int) []measure.Length {
	start := at[first]
	for k := first; k < len(at); k++ {
		at[k] -= start
	}
	if !rising(at[first:]) {
		return nil
	}
	return at
}

func rising(at []measure.Length) bool {
	for k := 1; k < len(at); k++ {
		if at[k] <= at[k-1] {
			return false
		}
	}
	return true
}

// place is a station's position: its own, or that of its namesake in the offsets.
func place(s hull.Station, places []hull.Station) source.Reading[measure.Length] {
	if s.At.OK() {
		return s.At
	}
	for _, p := range places {
		if strings.EqualFold(p.Name, s.Name) {
			return p.At
		}
	}
	return s.At
}

// spaced is the table's own station positions in inches, or one apart where they
// are not all given in order.
func (b Readings) spaced() []float64 {
	x := make([]float64, len(b.Stations))
	ok := true
	for k, s := range b.Stations {
		x[k] = s.At.Value.Inches()
		ok = ok && s.At.OK() && (k == 0 || x[k] > x[k-1])
	}
	if !ok {
		for k := range x {
			x[k] = float64(k)
		}
	}
	return x
}
