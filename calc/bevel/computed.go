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
// the schedules there are; a strake that is among them is left on the side it is of. What
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
			side, wanted := unlifted(lifted, l, k.Name)
			if !wanted {
				continue
			}
			b := ofHull(shape, l, k.Name, side, r)
			if plank, ok := hull.Listed(strakes, l.Skin, k.Name, side); ok {
				for i := range b.Seams {
					b.Seams[i].Cell = plank.Cell
				}
			}
			made, f := schedules(b, b.believed(r), strakes, nil, shape, r)
			for i := range made {
				made[i].Computed, made[i].Unused = true, read(handed, l.Skin, k.Name, side)
				made[i].Step, made[i].Within = shape.Step, shape.Loose(made[i].breadth())
			}
			all, found = append(all, made...), append(found, f...)
		}
	}
	return all, found
}

// unlifted is the side of a strake, or both, that there is no schedule of; not wanted
// where there is none such.
func unlifted(lifted []Schedule, l hull.Lining, strake string) (side hull.Side, wanted bool) {
	if l.Side != hull.BothSides {
		return l.Side, !has(lifted, l.Skin, strake, l.Side)
	}
	port, starboard := has(lifted, l.Skin, strake, hull.Port), has(lifted, l.Skin, strake, hull.Starboard)
	switch {
	case port && starboard:
		return hull.BothSides, false
	case port:
		return hull.Starboard, true
	case starboard:
		return hull.Port, true
	}
	return hull.BothSides, true
}

// has says that there is a schedule of a strake on a side: its own, or one of both.
func has(all []Schedule, skin hull.Skin, strake string, side hull.Side) bool {
	return slices.ContainsFunc(all, func(s Schedule) bool {
		return strings.EqualFold(s.Strake, strake) && (s.Skin == skin || s.Skin == "" || skin == "") &&
			(s.Side == side || s.Side == hull.BothSides)
	})
}

// read says that some bevel of a strake was handed in of a side, or of both.
func read(handed []Readings, skin hull.Skin, strake string, side hull.Side) bool {
	for _, b := range handed {
		for _, s := range b.Seams {
			if strings.EqualFold(s.Strake, strake) && (s.Skin == skin || s.Skin == "") &&
				(s.Side == side || s.Side == hull.BothSides || side == hull.BothSides) &&
				slices.ContainsFunc(s.Readings, func(v source.Reading[measure.Angle]) bool { return v.OK() }) {
				return true
			}
		}
	}
	return false
}

// ofHull is one strake's bevels as the hull has them, as a table of its own: of the
// edge that is sawn, or of both.
func ofHull(shape *hull.Shape, l hull.Lining, strake string, side hull.Side, r Rules) Readings {
	b := Readings{Gauge: OffSquare, Resolution: r.Readout, Places: shape.Places}
	for _, g := range shape.Stations {
		b.Stations = append(b.Stations, hull.Station{Name: g.Name, At: source.Is(g.At)})
	}
	for _, edge := range r.edges() {
		s := Seam{Strake: strake, Skin: l.Skin, Side: side, Edge: edge}
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

// breadth is how wide a plank is on the whole, by its marks.
func (s Schedule) breadth() measure.Length {
	sum := measure.Length(0)
	for _, m := range s.Marks {
		sum += m.Width
	}
	return sum / measure.Length(max(1, len(s.Marks)))
}
