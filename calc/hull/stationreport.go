package hull

import (
	"math"
	"slices"

	"strakebook/calc/finding"
)

// StationReport is how fair the lines are at one station of the table.
type StationReport struct {
	Station   string
	Lines     int     // that have a departure there
	Roughness float64 // middle departure, in the table's resolution
	Largest   float64 // in the table's resolution
	Line      string  // where the largest is
	Findings  int     // above a note at the station's figures or its head
}

// Stations is the report by station, of the same departures as that by line.
func (e Report) Stations(o Offsets) []StationReport {
	all := make([]StationReport, len(o.Stations))
	for k, s := range o.Stations {
		r := StationReport{Station: s.Name}
		var sizes []float64
		for _, l := range e.Lines {
			if k >= len(l.Given) || !l.Given[k] {
				continue
			}
			off := float64(l.Departure[k]) / float64(max(1, o.Resolution))
			sizes = append(sizes, math.Abs(off))
			if math.Abs(off) > math.Abs(r.Largest) {
				r.Largest, r.Line = off, l.View.String()+" of "+l.Line
			}
		}
		if r.Lines = len(sizes); r.Lines > 0 {
			slices.Sort(sizes)
			r.Roughness = sizes[len(sizes)/2]
		}
		all[k] = r
	}
	for _, f := range e.Found {
		if f.Severity == finding.Note {
			continue
		}
		if _, k, ok := o.find(f.Cell); ok {
			all[k].Findings++
		} else if k := o.station(f.Cell); k >= 0 {
			all[k].Findings++
		}
	}
	return all
}
