package bevel

import (
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// OfShutters lays out the sawing of shutters, the last planks of a skin, from the
// widths and bevels that their measured gaps ask for: both edges are sawn, and
// each has a schedule of its own.
func OfShutters(rows []hull.ShutterRow, strakes []hull.Strake, places []hull.Station, shape *hull.Shape, r Rules) ([]Schedule, finding.List) {
	var all []Schedule
	var found finding.List
	for len(rows) > 0 {
		n := 1
		for n < len(rows) && sameShutter(rows[0], rows[n]) {
			n++
		}
		b := shutterBevels(rows[:n], r)
		made, f := schedules(b, b.judge(r), shutterWidths(rows[:n], strakes), places, shape, r)
		for i := range made { // the gap as measured holds, not the hull
			for k := range made[i].Marks {
				made[i].Marks[k].Hull = source.Reading[measure.Angle]{}
			}
			made[i].Shutter = true
		}
		all, found = append(all, made...), append(found, f...)
		rows = rows[n:]
	}
	return all, found
}

func sameShutter(a, b hull.ShutterRow) bool {
	return a.Skin == b.Skin && a.Side == b.Side && strings.EqualFold(a.Strake, b.Strake)
}

// shutterBevels is the bevels of both edges of one shutter as a table.
func shutterBevels(rows []hull.ShutterRow, r Rules) Readings {
	b := Readings{Gauge: OffSquare, Straight: true, Resolution: r.Readout, Places: rows[0].Places, Cell: rows[0].Cell}
	for _, edge := range []Edge{Upper, Lower} {
		s := Seam{Strake: rows[0].Strake, Skin: rows[0].Skin, Side: rows[0].Side, Edge: edge, Cell: rows[0].Cell}
		for _, row := range rows {
			v := source.Is(row.Bevel)
			v.Cell = row.Cell
			s.Readings = append(s.Readings, v)
		}
		b.Seams = append(b.Seams, s)
	}
	for _, row := range rows {
		b.Stations = append(b.Stations, hull.Station{Name: row.Station, Cell: row.Cell})
	}
	return b
}

// shutterWidths is the list of strakes with the shutter's own widths by station.
func shutterWidths(rows []hull.ShutterRow, strakes []hull.Strake) []hull.Strake {
	plank, _ := hull.Listed(strakes, rows[0].Skin, rows[0].Strake, rows[0].Side)
	plank.Name, plank.Count = rows[0].Strake, source.Reading[int]{}
	plank.WidthAt, plank.Widths, plank.Outside = nil, nil, false
	for _, row := range rows {
		plank.WidthAt = append(plank.WidthAt, hull.Station{Name: row.Station})
		plank.Widths = append(plank.Widths, source.Is(row.Inside))
		plank.Width.Value = max(plank.Width.Value, row.Inside)
	}
	plank.Width.State = source.Given
	return append([]hull.Strake{plank}, strakes...)
}
