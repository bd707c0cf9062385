package bevel

import (
	"strings"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// AlongFrom is where distances along an edge are known from.
type AlongFrom uint8

// The three sources.
const (
	AlongGiven  AlongFrom = iota // the row of distances
	AlongHull                    // the hull's own seam
	AlongSpaced                  // how far apart the stations stand
)

// Distances is where those along the edge are known from, in words.
func (s Schedule) Distances() string {
	return [...]string{"given", "hull", s.Places.String() + " spacing"}[s.AlongFrom]
}

// way is how far each station lies along an edge from the first one read, and where
// that is known from.
type way struct {
	at    []measure.Length // nil where it is not known
	from  AlongFrom
	fills []bool         // stations not drawn, whose places are along the seam between those that are
	past  []string       // stations past the seam as drawn, at the spacing from its end
	off   measure.Length // how far out the marks may be for those at the most
}

// along finds the way along an edge: by the row of distances, else by the hull's own
// seam, else by the station spacing.
func (l laid) along(r Rules) way {
	if at := l.alongGiven(); at != nil {
		return way{at: at, from: AlongGiven}
	}
	if w, ok := l.alongHull(r); ok {
		return w
	}
	at := make([]measure.Length, l.last+1)
	for k := l.first; k <= l.last; k++ {
		p := place(l.b.Stations[k], l.places)
		if !p.OK() {
			return way{}
		}
		at[k] = p.Value
	}
	return way{at: from(at, l.first), from: AlongSpaced}
}

// alongHull is the way along the hull's own seam. A station the offsets do not have
// lies by its position in the lists of positions, which are measured from where the
// offsets' are, and not by one of the table's own.
func (l laid) alongHull(r Rules) (way, bool) {
	var stations []hull.Station
	for _, st := range l.b.Stations[l.first : l.last+1] {
		stations = append(stations, hull.Station{Name: st.Name, At: place(hull.Station{Name: st.Name}, l.places)})
	}
	on, ok := l.shape.SeamAlong(l.s.Skin, l.s.Strake, l.s.Side, r.edge(l.s) == Upper, stations)
	if !ok {
		return way{}, false
	}
	w := way{from: AlongHull, at: make([]measure.Length, l.last+1), fills: make([]bool, l.last+1)}
	drawn := 0
	for i, a := range on {
		w.at[l.first+i], w.fills[l.first+i] = a.At, a.Fills
		if a.Drawn {
			drawn++
			continue
		}
		w.past = append(w.past, stations[i].Name)
		w.off = max(w.off, a.Off)
	}
	return w, drawn > 0 && rising(w.at[l.first:])
}

// alongGiven is the row of distances the table gives for a seam; nil where it
// does not reach from the first reading to the last.
func (l laid) alongGiven() []measure.Length {
	if len(l.s.Along) != len(l.b.Stations) {
		return nil
	}
	at := make([]measure.Length, l.last+1)
	for k := l.first; k <= l.last; k++ {
		if !l.s.Along[k].OK() {
			return nil
		}
		at[k] = l.s.Along[k].Value
	}
	return from(at, l.first)
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
