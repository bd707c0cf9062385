package lay

import (
	"slices"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// On is what the middles of joints fall on.
type On uint8

// What joints fall on.
const (
	OnGrid        On = iota // whole steps of the joint grid from the strake's fore end
	OnStations              // the stations of the offsets
	OnFrameSpaces           // the middles of the frame spaces
)

// Falls is what joints fall on, in a finding.
func (r Rules) Falls() string {
	switch r.On {
	case OnStations:
		return "stations"
	case OnFrameSpaces:
		return "the middles of frame spaces"
	}
	return "a grid of " + r.Units.Long(r.Grid)
}

// JointPlaces is joints that are to fall on places the book does not give.
var JointPlaces = &finding.Kind{
	Code: "joint-places", Severity: finding.Warning, Title: "no places given that joints are to fall on",
	Why:    "Joints are set to fall on stations or in the middles of frame spaces, and nothing says where those lie: the joint grid is kept to in their place.",
	Remedy: "give the stations their positions, or set \"frame spacing\"; or set \"joints on\" to grid",
}

// Place gives every run the places its joints may fall on, where those are not
// the steps of the grid. Stations lie as the runs' fore ends do, from one place,
// and frame spaces are counted from it.
func Place(runs []Run, stations []hull.Station, r *Rules) finding.List {
	var at []measure.Length
	switch {
	case r.On == OnGrid || len(runs) == 0:
		return nil
	case r.On == OnStations:
		for _, s := range stations {
			if s.At.OK() {
				at = append(at, s.At.Value)
			}
		}
	case r.Frames > 0:
		from, to := runs[0].Start, runs[0].Start
		for i := range runs {
			from, to = min(from, runs[i].Start), max(to, runs[i].Start+runs[i].Length)
		}
		for x := from/r.Frames*r.Frames - r.Frames/2; x < to && len(at) < mostPlaces; x += r.Frames {
			at = append(at, x)
		}
	}
	if len(at) == 0 {
		lacks := map[On]string{OnStations: "no station's position is given", OnFrameSpaces: "no frame spacing is set"}[r.On]
		found := finding.List{{Kind: JointPlaces, Text: "joints are to fall on " + r.Falls() + ", and " + lacks}}
		r.On = OnGrid
		return found
	}
	slices.Sort(at)
	at = slices.Compact(at)
	for i := range runs {
		run := &runs[i]
		run.Places = []measure.Length{}
		for _, x := range at {
			if x -= run.Start; x > 0 && x < run.Length {
				run.Places = append(run.Places, x)
			}
		}
	}
	return nil
}

// mostPlaces bounds the frame spaces of a hull, whatever spacing is set.
const mostPlaces = 10_000

// next is the first place at or beyond x that a joint of the run may fall on; its
// after end where there is none.
func (r *Run) next(x, grid measure.Length) measure.Length {
	if r.Places == nil {
		return (x + grid - 1) / grid * grid
	}
	if k, _ := slices.BinarySearch(r.Places, x); k < len(r.Places) {
		return r.Places[k]
	}
	return r.Length
}
