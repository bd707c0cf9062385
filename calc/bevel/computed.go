package bevel

import (
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Computed works out schedules from the hull for the planks whose bevels were not
// lifted: the whole turn of each seam goes on the edge that is sawn, or half of it
// on each of the two. Strips are edge-glued and are not sawn to a bevel. Lifted is
// the schedules there are; a strake that is among them, on either side, is left. What
// was handed in and is not among them is said on the schedule made in its stead.
func Computed(shape *hull.Shape, strakes []hull.Strake, lifted []Schedule, handed []Readings, r Rules) ([]Schedule, finding.List) {
	if shape == nil || !r.FromHull {
		return nil, nil
	}
	var all []Schedule
	var found finding.List
	for _, l := range shape.Linings {
		if l.Skin == hull.Strips {
			continue
		}
		for _, k := range l.Strakes {
			if has(lifted, l.Skin, k.Name) {
				continue
			}
			b := ofHull(shape, l, k.Name, r)
			if plank, ok := find(strakes, b.Seams[0]); ok {
				for i := range b.Seams {
					b.Seams[i].Cell = plank.Cell
				}
			}
			made, f := schedules(b, b.believed(r), strakes, nil, shape, r)
			for i := range made {
				made[i].Computed, made[i].Unused = true, read(handed, l.Skin, k.Name)
			}
			all, found = append(all, made...), append(found, f...)
		}
	}
	return all, found
}

func has(lifted []Schedule, skin hull.Skin, strake string) bool {
	for _, s := range lifted {
		if strings.EqualFold(s.Strake, strake) && (s.Skin == skin || s.Skin == "") {
			return true
		}
	}
	return false
}

// read says that some bevel of a strake was handed in.
func read(handed []Readings, skin hull.Skin, strake string) bool {
	for _, b := range handed {
		for _, s := range b.Seams {
			if strings.EqualFold(s.Strake, strake) && (s.Skin == skin || s.Skin == "") &&
				slices.ContainsFunc(s.Readings, func(v source.Reading[measure.Angle]) bool { return v.OK() }) {
				return true
			}
		}
	}
	return false
}

// ofHull is one strake's bevels as the hull has them, as a table of its own: of the
// edge that is sawn, or of both.
func ofHull(shape *hull.Shape, l hull.Lining, strake string, r Rules) Readings {
	b := Readings{Gauge: OffSquare, Resolution: r.Readout}
	for _, g := range shape.Stations {
		b.Stations = append(b.Stations, hull.Station{Name: g.Name, At: source.Is(g.At)})
	}
	for _, edge := range r.edges() {
		s := Seam{Strake: strake, Skin: l.Skin, Side: l.Side, Edge: edge}
		for _, g := range shape.Stations {
			read := source.Reading[measure.Angle]{State: source.Dash}
			if own, ok := r.own(shape, s, g.Name); ok {
				read = source.Is(own)
			}
			s.Readings = append(s.Readings, read)
		}
		b.Seams = append(b.Seams, s)
	}
	return b
}
