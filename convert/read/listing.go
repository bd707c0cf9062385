package read

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Tables run from forward aft. One whose stations are listed from aft is taken from
// its other end, every figure with its station.

// listing is the stations of one table and how it is taken from its other end.
type listing struct {
	cell     source.Cell
	stations []hull.Station
	along    []measure.Length // distances along an edge, where they are given
	reverse  func()
}

// listings is every table of stations of the job.
func (r *reader) listings() []listing {
	var all []listing
	for i := range r.job.Offsets {
		o := &r.job.Offsets[i]
		all = append(all, listing{o.Cell, o.Stations, nil, func() {
			slices.Reverse(o.Stations)
			for k := range o.Lines {
				slices.Reverse(o.Lines[k].Values)
			}
		}})
	}
	for i := range r.job.Bevels {
		b := &r.job.Bevels[i]
		all = append(all, listing{b.Cell, b.Stations, r.alongOf(b), func() { turnBevels(b) }})
	}
	for i := range r.job.Seams {
		m := &r.job.Seams[i]
		all = append(all, listing{m.Cell, m.Stations, nil, func() {
			slices.Reverse(m.Stations)
			for k := range m.Seams {
				slices.Reverse(m.Seams[k].Values)
			}
		}})
	}
	return all
}

// alongOf is the first distances along an edge of some bevels that are said to be from
// an end of the boat.
func (r *reader) alongOf(b *bevel.Readings) []measure.Length {
	for _, s := range b.Seams {
		if len(s.Along) == 0 || !r.alongSaid[s.Along[0].Cell] {
			continue
		}
		if all := figures(s.Along); len(all) > 1 {
			return all
		}
	}
	return nil
}

// figures is those of some readings that were read.
func figures(readings []source.Reading[measure.Length]) (all []measure.Length) {
	for _, v := range readings {
		if v.OK() {
			all = append(all, v.Value)
		}
	}
	return all
}

// turnBevels takes bevels from the other end. Distances along an edge are from the
// foremost mark then too.
func turnBevels(b *bevel.Readings) {
	n := len(b.Stations)
	slices.Reverse(b.Stations)
	for i := range b.Seams {
		s := &b.Seams[i]
		slices.Reverse(s.Readings[:min(n, len(s.Readings))]) // those past the last station stand at none
		slices.Reverse(s.Along)
		fromFirst(s.Along)
	}
}

// fromFirst makes distances that fall along an edge, being from its after end,
// distances from its fore end.
func fromFirst(along []source.Reading[measure.Length]) {
	if trend(figures(along)) < 0 {
		fromOtherEnd(along)
	}
}

// fromOtherEnd measures distances from the farthest of them.
func fromOtherEnd(along []source.Reading[measure.Length]) {
	most := slices.Max(append(figures(along), 0))
	for i := range along {
		if along[i].OK() {
			along[i].Value = most - along[i].Value
		}
	}
}

// listedFromAft takes every table that is listed from aft from its other end: by the
// positions of its stations, else by what is said of their numbers or by their names,
// else as another table is.
func (r *reader) listedFromAft() {
	var open []listing
	order := map[string]float64{}
	for _, l := range r.listings() {
		turn, why := r.trendOf(l)
		if turn == 0 {
			open = append(open, l)
			continue
		}
		if turn < 0 {
			r.reverse(l, why)
		}
		for i, s := range l.stations {
			order[r.nameOf(s)] = float64(i)
		}
		if numbers := numbersOf(l.stations); trend(numbers) < 0 {
			top := slices.Max(numbers)
			if _, ok := stationNumber(l.stations[0].Name); !ok {
				top++ // FP before the highest number
			}
			r.forward = max(r.forward, top)
		}
	}
	for _, l := range open {
		var at []float64
		for _, s := range l.stations {
			if v, ok := order[r.nameOf(s)]; ok {
				at = append(at, v)
			}
		}
		turn, why := trend(at), "as another table"
		if turn == 0 && r.rules.Hull.StationSpacing > 0 {
			turn, why = trend(numbersOf(l.stations)), "their numbers counted from forward as yachts' are" // not uniform
		}
		if turn < 0 {
			r.reverse(l, why)
		}
	}
}

// reverse takes a table from its other end, and tells why where its stations'
// positions do not show it.
func (r *reader) reverse(l listing, why string) {
	first, last := l.stations[0].Name, l.stations[len(l.stations)-1].Name
	l.reverse()
	r.turned = true
	if why != "" {
		r.add(finding.Finding{Kind: ConventionRead, Cell: l.cell, Text: fmt.Sprintf("the stations %q to %q are read as listed from aft, %s", first, last, why)})
	}
}

func (r *reader) nameOf(s hull.Station) string {
	return strings.ToLower(r.keyOf(s.Name, s.Cell))
}

// trendOf is 1 for a table that is known to be listed from forward, -1 from aft, and
// what says so where positions do not.
func (r *reader) trendOf(l listing) (turn int, why string) {
	var at []measure.Length
	for _, s := range l.stations {
		if v, ok := r.lies(s); ok {
			at = append(at, v)
		}
	}
	if len(at) > 1 {
		return trend(at), ""
	}
	n, ok := r.layOf(l)
	if !ok || len(l.stations) < 2 {
		return 0, ""
	}
	said, numbers := n.saidOver(), trend(numbersOf(l.stations))
	switch said.numbered {
	case originTwo:
		r.add(finding.Finding{Kind: PositionOpen, Cell: l.cell, Reads: said.by, Text: "the words over the stations say that they are numbered from both ends"})
		r.placeAsked = true
		return 0, ""
	case fromFore:
		turn = numbers
	case fromAft:
		turn = -numbers
	}
	if turn != 0 {
		return turn, fmt.Sprintf("as %q says", said.by)
	}
	switch byEnds(evenly(l.stations)) {
	case fromAft:
		return -1, "by those names"
	case fromFore:
		return 1, ""
	}
	return trend(l.along), "by the distances along their edges"
}

// evenly is stations as if they lay a step apart as they are listed.
func evenly(stations []hull.Station) []hull.Station {
	all := slices.Clone(stations)
	for i := range all {
		all[i].At = source.Is(measure.Length(i))
	}
	return all
}

// numbersOf is the numbers of those stations that have one.
func numbersOf(stations []hull.Station) []float64 {
	var all []float64
	for _, s := range stations {
		if v, ok := stationNumber(s.Name); ok {
			all = append(all, v)
		}
	}
	return all
}

// lies is where a station lies by its own table, else by another.
func (r *reader) lies(s hull.Station) (measure.Length, bool) {
	if s.At.OK() {
		return s.At.Value, true
	}
	if at, ok := r.at[r.keyOf(s.Name, s.Cell)]; ok {
		return at.Value, true
	}
	for _, n := range r.placings {
		if t, ok := r.namesake(s, n.placed()); ok {
			return t.At.Value, true
		}
	}
	return 0, false
}

// layOf is the placing that the stations of a table were read with.
func (r *reader) layOf(l listing) (placing, bool) {
	for _, n := range r.placings {
		for _, s := range n.stations {
			if len(l.stations) > 0 && s.Cell == l.stations[0].Cell {
				return n, true
			}
		}
	}
	return placing{}, false
}

// strakesTurned puts the stations that strakes run between in their order where a book
// that goes from aft has the after one first, and asks where strakes begin that are
// given a place of their own among stations measured from aft.
func (r *reader) strakesTurned() {
	measured := slices.ContainsFunc(r.placings, func(n placing) bool { return n.done })
	for i := range r.job.Strakes {
		s := &r.job.Strakes[i]
		if r.turned && len(r.job.Offsets) > 0 {
			at := func(name string) int {
				return slices.IndexFunc(r.job.Offsets[0].Stations, func(t hull.Station) bool { return strings.EqualFold(t.Name, name) })
			}
			if from, to := at(s.From), at(s.To); to >= 0 && from > to {
				s.From, s.To = s.To, s.From
			}
		}
		if measured && s.Start.OK() {
			r.add(finding.Finding{Kind: PositionOpen, Cell: s.Start.Cell, Reads: s.Start.Text,
				Text: fmt.Sprintf("the start of %s %s is given as %q among stations measured from aft: nothing says from which end it is", s.Skin, s.Name, s.Start.Text),
				Do:   "leave it blank to have it worked out, or give all positions from forward"})
			s.Start = source.Reading[measure.Length]{State: source.Unread, Text: s.Start.Text, Cell: s.Start.Cell}
		}
	}
}
