package hull

import (
	"math"

	"strakebook/calc/measure"
)

// BoardBevel is one figure of the bevel board: how far the edge of the mould, at
// a line of the table, leans from square to the face on the station line.
type BoardBevel struct {
	Line    string
	Role    Role
	Station string
	Place   int           // of the station among all
	Face    string        // the face that stands on the station line: "fore", "after"
	Level   measure.Angle // in the plane of the waterline
	Square  measure.Angle // square to the mould's edge
}

// Word is the trade's word for the bevel: standing where the edge makes more
// than a right angle with the face, under where less.
func (b BoardBevel) Word() string {
	switch {
	case b.Square.Round(0.05) > 0:
		return "standing"
	case b.Square.Round(0.05) < 0:
		return "under"
	}
	return "square"
}

// board is the bevels at every line of the table, plus where they stand.
func (h *hull) board(n *net) []BoardBevel {
	if !h.placed {
		return nil
	}
	profile, deck := h.profile(), h.deck()
	widens := h.widens(n)
	var all []BoardBevel
	for i, p := range h.pairs {
		l := h.long(i, profile, deck)
		if l == nil {
			continue
		}
		for j, k := range l.stations {
			if k < 0 || h.sections[k].line == nil {
				continue
			}
			for _, up := range h.sections[k].upward(l.line.p[j], h.step) {
				b := h.boardBevel(outward(up.way, l.line.out[j]), k, widens)
				b.Line, b.Role = p.name+up.side, p.role
				all = append(all, b)
			}
		}
	}
	return all
}

// boardBevel is the bevels of a mould's edge where the surface is square to a
// direction.
func (h *hull) boardBevel(square point, k, widens int) BoardBevel {
	b := BoardBevel{Station: h.o.Stations[k].Name, Place: k, Face: "after",
		Square: measure.Radians(math.Asin(max(-1, min(1, square.dot(h.facing(k)))))),
		Level:  measure.Radians(math.Atan2(square.x, math.Abs(square.y)))}
	if h.r.MouldFace.fore(k, widens) {
		b.Face, b.Square, b.Level = "fore", -b.Square, -b.Level
	}
	return b
}

// upwards is a direction of a section at a place on it.
type upwards struct {
	way  point
	side string // of a corner: " below", " above"
}

// upward is the direction of a section at a place, or its two at a corner. There
// is none where the section does not pass through the place.
func (s section) upward(at point, step float64) []upwards {
	for i, c := range s.points {
		switch {
		case c.point != at:
		case i == len(s.points)-1:
			return []upwards{{way: s.line.in[i]}}
		case c.corner && i > 0:
			return []upwards{{s.line.in[i], " below"}, {s.line.out[i], " above"}}
		default:
			return []upwards{{way: s.line.out[i]}}
		}
	}
	best, least := 0.0, math.Inf(1)
	for _, f := range []func(point) float64{func(p point) float64 { return p.y - at.y }, func(p point) float64 { return p.z - at.z }} {
		for _, t := range s.line.crossings(f) {
			if d := s.line.at(t).from(at); d < least {
				best, least = t, d
			}
		}
	}
	if least > 4*step {
		return nil
	}
	return []upwards{{way: s.line.along(best)}}
}
