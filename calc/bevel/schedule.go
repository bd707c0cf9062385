package bevel

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Mark is one place on the batten at which the saw's tilt is called out.
type Mark struct {
	At           measure.Length // along the sawn edge from the schedule's first station mark
	Station      string         // "" between stations
	Read         source.Reading[measure.Angle]
	Hull         source.Reading[measure.Angle] // what the hull as lined off turns here, off square
	Between      measure.Angle                 // by the monotone interpolant through the readings, off square
	Faired       measure.Angle                 // by the smoother
	Set          measure.Angle                 // what is sawn, to the saw's readout, signed
	Tilt         measure.Angle                 // what the saw's scale must show for it, after any trial cut
	PerFoot      measure.Angle                 // change from the mark before, a foot
	Faces        measure.Length                // outside face wider by this much, at the saw
	Width        measure.Length                // wanted here on the inside face
	Batten       measure.Length                // width from the free edge to the batten's edge
	SetOut       measure.Length                // batten beyond a parallel one: + out, - in
	Crossing     bool                          // from here aft the blade leans to the other hand
	CrossingBack bool                          // from here forward it does
	Filled       bool                          // no reading here: taken from the neighbours
	Unseen       bool                          // the station could not be drawn: its place is along the seam through those that were
	Doubt        Doubt
}

// Schedule is what the sawyer is called for one edge of one strake.
type Schedule struct {
	Strake    string
	Skin      hull.Skin
	Side      hull.Side
	Edge      Edge
	Places    hull.Places    // what its stations are called
	From      string         // the station the marks are measured from
	To        string         // the last station read
	Thickness measure.Length // at the saw
	Listed    measure.Length // of the plank when it is done
	Worked    measure.Length // of its back, when it is sawn
	LetBe     measure.Length // how far the flat of its back stands off the hull's round, where that is not worked: below nothing where its edges bear
	Less      measure.Length // the most that widths straight across its board are less than along the back as it will be
	Rounded   measure.Length // how far off the board's inside face its inside corners then lie, to which widths are
	Width     measure.Length // on the inside face, as listed in one figure; else the greatest of the marks
	Outside   bool           // the width is listed on the outside face: that of the marks is less by what the faces differ
	widthFrom string         // of the marks: "listed", "listed by station" or "lined off"
	Parallel  measure.Angle  // the bevel at which a parallel batten is right, of the marks that are sure
	Depth     measure.Length // of blade needed at the steepest mark
	Steepest  measure.Angle  // of Set, without its sign
	Computed  bool           // from the hull, none having been lifted that could be laid out
	Step      measure.Length // of the table they are computed from,
	Within    measure.Angle  // and about how far out that alone may put them
	Unused    bool           // bevels were handed in for it all the same
	AsOther   bool           // its bevels were lifted, or its gap measured, on the other side only: this is that side mirrored
	Shutter   bool           // from a measured gap
	Doubt     string         // what is found of the whole seam that leaves it in doubt; "" for nothing
	AlongFrom AlongFrom
	Past      []string       // stations past the hull's seam as drawn: their marks are by the station spacing from its end
	PastOff   measure.Length // how far out those marks may be, at the angle the seam ends at
	Marks     []Mark
	Cell      source.Cell
}

// Schedules works out what is sawn along every seam of a table. Strakes give
// thickness and width; places give the stations' positions and shape, which may
// be nil, the distances along the edge where the table gives none. Nothing is
// said beyond a seam's first and last reading.
func Schedules(b Readings, strakes []hull.Strake, places []hull.Station, shape *hull.Shape, r Rules) ([]Schedule, finding.List) {
	if b.open(r) {
		return nil, nil // asked for by Check
	}
	j := b.judge(r)
	all, found := schedules(b, j, strakes, places, shape, r)
	return all, append(found, withHull(b, j, shape, r)...)
}

func schedules(b Readings, j judged, strakes []hull.Strake, places []hull.Station, shape *hull.Shape, r Rules) ([]Schedule, finding.List) {
	var all []Schedule
	var found finding.List
	var unplaced []Seam
	for i, s := range b.Seams {
		l := laid{b: b, s: s, places: places, shape: shape, y: slices.Clone(j.readings.Y[i]), given: j.readings.Given[i]}
		l.first, l.last = span(l.given)
		if l.first >= l.last {
			continue // one reading makes no run; its lack is found by Check
		}
		if l.way = l.along(r); l.at == nil {
			unplaced = append(unplaced, s)
			continue
		}
		l.smooth = j.faired(i)
		found = append(found, l.squared(l.y, r)...)
		l.squared(l.smooth, r)
		plank, known := hull.Listed(strakes, s.Skin, s.Strake, s.Side)
		if !known {
			found = append(found, finding.Finding{Kind: StrakeUnknown, Cell: s.Cell, Reads: s.Strake,
				Text: fmt.Sprintf("%s has bevels but is not in the list of strakes", s.name())})
		}
		sched := l.schedule(plank, r)
		found = append(found, sched.turns(s, r)...)
		all = append(all, sched)
	}
	return all, append(found, notPlaced(b, unplaced, places)...)
}

// schedule is what is sawn of a plank along a seam that is placed.
func (l laid) schedule(plank hull.Strake, r Rules) Schedule {
	b, s := l.b, l.s
	back := l.shape.BackOf(s.Skin, s.Strake, s.Side)
	sched := Schedule{Strake: s.Strake, Skin: s.Skin, Side: s.Side, Edge: r.edge(s), Places: b.Places,
		From: b.Stations[l.first].Name, To: b.Stations[l.last].Name, Cell: s.Cell,
		Thickness: r.thickness(plank, back), Listed: plank.Thickness.Value, Worked: back.Worked, Rounded: back.Rounded(),
		Width: plank.Width.Value, AlongFrom: l.from, Past: l.past, PastOff: l.off}
	if back.Worked == 0 {
		sched.LetBe = back.Hollow
	}
	l.width, sched.widthFrom = l.widths(plank)
	round := l.width
	if back.Worked > 0 && !b.Straight {
		l.width, sched.Width = l.flat(), 0
	}
	if sched.Outside = plank.Outside; sched.Outside {
		sched.Width = 0
	}
	sched.Marks = l.marks(r)
	for i := range sched.Marks {
		m := &sched.Marks[i]
		m.Faces = (sched.Thickness - sched.Rounded).Times(m.Set.Tan())
		sched.Less = max(sched.Less, round(m.At)-m.Width)
		if sched.Outside {
			m.Width -= m.Faces // of the edge sawn: the other is square
		}
	}
	sched.widest()
	sched.batten(r)
	return sched
}

// notPlaced tells of the seams whose stations have no positions, once for a table.
func notPlaced(b Readings, seams []Seam, places []hull.Station) finding.List {
	if len(seams) == 0 {
		return nil
	}
	var lacking []string
	for _, s := range b.Stations {
		if !place(s, places).OK() {
			lacking = append(lacking, s.Name)
		}
	}
	why, rest := fmt.Sprintf("no positions are given of %ss %s", b.Places, strings.Join(lacking, ", ")), "give their positions too, or a row of distances along the edge"
	switch len(lacking) {
	case 0:
		rest = "put the positions in order, or give a row of distances along the edge"
		why = fmt.Sprintf("the positions of their %ss are not in order", b.Places)
	case len(b.Stations):
		why, rest = fmt.Sprintf("the %ss have no positions", b.Places), ""
	}
	f := finding.Finding{Kind: Unplaced, Cell: seams[0].Cell, Do: rest, Text: fmt.Sprintf("%s cannot be laid out: %s", seams[0].name(), why)}
	if n := len(seams); n > 1 {
		f.Text = fmt.Sprintf("%s and %d more cannot be laid out: %s", seams[0].name(), n-1, why)
		for _, s := range seams[1:] {
			f.Also = append(f.Also, s.Cell)
		}
	}
	return finding.List{f}
}
