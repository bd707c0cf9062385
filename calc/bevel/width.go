package bevel

import (
	"slices"
	"strings"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// The sources of a plank's width along its edge.
const (
	listed    = "listed"
	byStation = "listed by station"
	linedOff  = "lined off"
)

// widths is the width wanted along the edge on the inside face, and where it is
// known from: the list where it gives a width at every station, else the hull as
// lined off, else the list's widths at some stations, else the strake's one width.
// A hull not lined off by the widths listed is no word against these.
func (l laid) widths(plank hull.Strake) (func(measure.Length) measure.Length, string) {
	x, w, have := make([]float64, l.last+1), make([]float64, l.last+1), make([]bool, l.last+1)
	for k := l.first; k <= l.last; k++ {
		x[k] = l.at[k].Inches()
		for i, st := range plank.WidthAt {
			if strings.EqualFold(st.Name, l.b.Stations[k].Name) && i < len(plank.Widths) && plank.Widths[i].OK() {
				w[k], have[k] = plank.Widths[i].Value.Inches(), true
			}
		}
	}
	ends := have[l.first] && have[l.last]
	all := !slices.Contains(have[l.first:], false)
	lined, by, ok := l.linedWidths()
	switch {
	case ends && (all || !ok || by != hull.ByMarks):
		return run(x, w, have, byStation)
	case ok:
		for k := l.first; k <= l.last; k++ {
			w[k], have[k] = lined[k-l.first].Inches(), lined[k-l.first] > 0
		}
		return run(x, w, have, linedOff)
	}
	return func(measure.Length) measure.Length { return plank.Width.Value }, listed
}

func run(x, w []float64, have []bool, how string) (func(measure.Length) measure.Length, string) {
	c := curve(x, w, have)
	return func(l measure.Length) measure.Length { return measure.Inches(c.Predict(l.Inches())) }, how
}

// linedWidths is a strake's widths as the hull is lined off, where it crosses the
// stations of the first reading and the last; 0 at one between that was not drawn.
func (l laid) linedWidths() (all []measure.Length, by hull.Method, ok bool) {
	lining, place, ok := l.shape.StrakeOf(l.s.Skin, l.s.Strake, l.s.Side)
	if !ok {
		return nil, 0, false
	}
	by, widths := lining.By, lining.Strakes[place].Widths
	for k, st := range l.b.Stations[l.first : l.last+1] {
		w, drawn := measure.Length(0), false
		for i, g := range l.shape.Stations {
			if strings.EqualFold(g.Name, st.Name) && i < len(widths) {
				w, drawn = widths[i], g.Lacks == ""
			}
		}
		if w <= 0 && (drawn || k == 0 || l.first+k == l.last) {
			return nil, by, false
		}
		all = append(all, w)
	}
	return all, by, true
}

// flat is the widths of a plank whose back is worked when it is sawn, straight across
// from corner to corner: along the back as it will be they are a little more.
func (l laid) flat() func(measure.Length) measure.Length {
	x, over, all := make([]float64, l.last+1), make([]float64, l.last+1), make([]bool, l.last+1)
	for k := l.first; k <= l.last; k++ {
		x[k], all[k] = l.at[k].Inches(), true
		over[k] = l.shape.Flat(l.s.Skin, l.s.Strake, l.s.Side, l.b.Stations[k].Name)
	}
	c, along := curve(x, over, all), l.width
	return func(at measure.Length) measure.Length { return along(at).Times(c.Predict(at.Inches())) }
}
