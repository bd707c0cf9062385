package hull

import (
	"fmt"
	"math"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Gap is the opening left for the last plank of a skin, measured at a station.
type Gap struct {
	Skin    Skin
	Strake  string
	Side    Side
	Station string
	Places  Places                         // what the station is called
	Inside  source.Reading[measure.Length] // on the inside face
	Outside source.Reading[measure.Length]
	Cell    source.Cell
}

// ShutterRow is the width of the shutter at a station, on the inside face, and the
// bevel of both its edges.
type ShutterRow struct {
	Skin    Skin
	Strake  string
	Side    Side
	Station string
	Places  Places
	Inside  measure.Length
	Bevel   measure.Angle // of each edge, off square, plus where the outside is the wider
	Cell    source.Cell
}

// ShutterOpen is a shutter that cannot be worked out.
var ShutterOpen = &finding.Kind{
	Code: "shutter-open", Severity: finding.Warning, Title: "shutter not worked out",
	Why:    "The last plank takes up what is left on both faces, and both its edges are bevelled.",
	Remedy: "measure the gap on both faces at the station, and list the plank's thickness",
}

// Shutter works out the last plank from the gaps measured on both faces: neither
// edge is square, each takes half of what the outside is wider. The thickness is
// that of the strake in the list, and of what is worked of its back: the edges beside
// the gap are as thick until the planking is faired off.
func (s *Shape) Shutter(gaps []Gap, strakes []Strake) ([]ShutterRow, finding.List) {
	var all []ShutterRow
	var found finding.List
	for _, g := range gaps {
		plank, _ := Listed(strakes, g.Skin, g.Strake, g.Side)
		thick := plank.Thickness.Or(0)
		if !g.Inside.OK() || !g.Outside.OK() || thick <= 0 {
			what := "the gap is not given on both faces"
			if thick <= 0 {
				what = "its thickness is not listed"
			}
			found = append(found, finding.Finding{Kind: ShutterOpen, Cell: g.Cell, Reads: g.Strake,
				Text: fmt.Sprintf("shutter %s at %s is not worked out: %s", g.Strake, g.Places.Named(g.Station), what)})
			continue
		}
		back := s.BackOf(g.Skin, g.Strake, g.Side)
		thick += back.Worked - back.Rounded()
		spread := (g.Outside.Value - g.Inside.Value).Inches() / 2
		all = append(all, ShutterRow{Skin: g.Skin, Strake: g.Strake, Side: g.Side, Station: g.Station, Places: g.Places, Inside: g.Inside.Value,
			Bevel: measure.Radians(math.Atan(spread / thick.Inches())), Cell: g.Cell})
	}
	return all, found
}
