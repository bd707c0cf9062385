package hull

import (
	"math"

	"strakebook/calc/measure"
)

// Along is a station's place along a seam.
type Along struct {
	At    measure.Length // from the first of the stations asked for
	Drawn bool           // the seam was drawn through the station, or through others fore and aft of it
	Fills bool           // the station itself was not drawn: its place is along the seam at its distance aft
	// How much farther than the station spacing the seam would run at its end's own
	// angle, where the station lies beyond the seam as drawn and the spacing is used.
	Off measure.Length
}

// SeamAlong is how far each of the stations lies along an edge of a strake from the
// first of them: its upper edge or its lower. A station that could not be drawn, or
// that the offsets do not have and whose position is given, lies where the seam
// through the stations drawn passes it; one beyond the seam, as far beyond its end
// as the stations stand apart. It is not ok where the hull, the strake or a
// station's position is not known.
func (s *Shape) SeamAlong(skin Skin, strake string, side Side, upper bool, stations []Station) (all []Along, ok bool) {
	seam, ok := s.edge(skin, strake, side, upper)
	if !ok || seam.run == nil || len(stations) == 0 {
		return nil, false
	}
	for _, st := range stations {
		i := s.station(st.Name)
		switch {
		case i >= 0 && seam.Points[i].Crosses:
			all = append(all, Along{At: seam.Points[i].Along, Drawn: true})
		case i >= 0:
			all = append(all, seam.abreast(s.Stations[i].At.Inches()))
		case st.At.OK():
			all = append(all, seam.abreast(st.At.Value.Inches()))
		default:
			return nil, false
		}
	}
	first := all[0].At
	for i := range all {
		all[i].At -= first
	}
	return all, true
}

// abreast is the place along a seam so far aft.
func (s Seam) abreast(x float64) Along {
	c, last := s.run, len(s.run.p)-1
	fore, after := c.p[0], c.p[last]
	beyond := func(at, over float64, way point) Along {
		off := math.Abs(over) * (way.length()/max(1e-6, math.Abs(way.x)) - 1)
		return Along{At: measure.Inches(at + over), Off: measure.Inches(off)}
	}
	switch t := c.crossings(func(p point) float64 { return p.x - x }); {
	case len(t) > 0:
		return Along{At: measure.Inches(c.lengthTo(t[0])), Drawn: true, Fills: true}
	case x < fore.x:
		return beyond(0, x-fore.x, c.out[0])
	default:
		return beyond(c.length(), x-after.x, c.in[last])
	}
}
