package bevel

import (
	"fmt"
	"math"
	"strings"

	"gonum.org/v1/gonum/interp"

	"strakebook/calc/fair"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Mark is one place on the batten at which the saw's tilt is called out.
type Mark struct {
	At       measure.Length // along the sawn edge from the schedule's first station mark
	Station  string         // "" between stations
	Read     source.Reading[measure.Angle]
	Between  measure.Angle  // by the monotone interpolant through the readings, off square
	Faired   measure.Angle  // by the smoother
	Set      measure.Angle  // what is sawn, to the saw's readout, signed
	Tilt     measure.Angle  // what the saw's scale must show for it, after any trial cut
	PerFoot  measure.Angle  // change from the mark before, a foot
	Faces    measure.Length // outside face wider by this much
	Width    measure.Length // wanted here on the inside face
	Batten   measure.Length // width from the free edge to the batten's edge
	SetOut   measure.Length // batten beyond a parallel one: + out, - in
	Crossing bool           // the bevel passes through square between the mark before and this one
	Filled   bool           // no reading here: taken from the neighbours
}

// Schedule is what the sawyer is called for one edge of one strake.
type Schedule struct {
	Strake    string
	Skin      hull.Skin
	Side      hull.Side
	Edge      Edge
	From      string // the station the marks are measured from
	To        string // the last station read
	Thickness measure.Length
	Width     measure.Length // on the inside face
	Parallel  measure.Angle  // the bevel at which a parallel batten is right
	Depth     measure.Length // of blade needed at the steepest mark
	Steepest  measure.Angle  // of Set, without its sign
	Computed  bool           // from the hull, none having been lifted
	AlongFrom string         // "given", "hull" or "station spacing"
	Marks     []Mark
	Cell      source.Cell
}

// Schedules works out what is sawn along every seam of a table. Strakes give
// thickness and width; places give the stations' positions. Nothing is said
// beyond a seam's first and last reading.
func Schedules(b Readings, strakes []hull.Strake, places []hull.Station, r Rules) ([]Schedule, finding.List) {
	var all []Schedule
	var found finding.List
	if b.open(r) {
		return nil, nil // asked for by Check
	}
	spacing := false
	for _, s := range b.Seams {
		y, given := b.values(s, r)
		first, last := span(given)
		if first >= last {
			continue // one reading makes no run; its lack is found by Check
		}
		at, from := along(b, s, places, first, last)
		if at == nil {
			found = append(found, finding.Finding{Kind: Unplaced, Cell: s.Cell,
				Text: fmt.Sprintf("%s cannot be laid out: its stations have no positions", s.name())})
			continue
		}
		spacing = spacing || from == spaced
		found = append(found, squared(b, s, y, at, from, places, first, last, r)...)
		plank, known := find(strakes, s)
		if !known {
			found = append(found, finding.Finding{Kind: StrakeUnknown, Cell: s.Cell, Reads: s.Strake,
				Text: fmt.Sprintf("%s has bevels but is not in the list of strakes", s.name())})
		}
		sched := newSchedule(b, s, plank, first, last, from, r)
		sched.Marks = marks(b, s, y, given, at, first, last, plank, r)
		sched.batten(r)
		found = append(found, sched.turns(s, r)...)
		all = append(all, sched)
	}
	if spacing {
		found = append(found, finding.Finding{Kind: AlongOpen, Cell: b.Cell,
			Text: "no distances along the edge are given: marks are laid out by the station spacing"})
	}
	return all, found
}

// The sources of distances along an edge.
const (
	given  = "given"
	spaced = "station spacing"
)

func newSchedule(b Readings, s Seam, plank hull.Strake, first, last int, from string, r Rules) Schedule {
	edge := s.Edge
	if edge == EdgeUnstated {
		edge = r.Sawn
	}
	return Schedule{Strake: s.Strake, Skin: s.Skin, Side: s.Side, Edge: edge,
		From: b.Stations[first].Name, To: b.Stations[last].Name,
		Thickness: plank.Thickness.Value, Width: plank.Width.Value, AlongFrom: from, Cell: s.Cell}
}

// find is the strake a seam belongs to.
func find(strakes []hull.Strake, s Seam) (hull.Strake, bool) {
	for _, k := range strakes {
		if strings.EqualFold(k.Name, s.Strake) && (s.Skin == "" || k.Skin == s.Skin) &&
			(s.Side == hull.BothSides || k.Side == hull.BothSides || k.Side == s.Side) {
			return k, true
		}
	}
	return hull.Strake{}, false
}

// along is how far each station lies along the edge from the first one read,
// and where that is known from; nil where it is not.
func along(b Readings, s Seam, places []hull.Station, first, last int) ([]measure.Length, string) {
	at := make([]measure.Length, len(b.Stations))
	if len(s.Along) == len(b.Stations) {
		whole := true
		for k := first; k <= last; k++ {
			whole = whole && s.Along[k].OK() && (k == first || s.Along[k].Value > s.Along[k-1].Value)
		}
		if whole {
			for k := first; k <= last; k++ {
				at[k] = s.Along[k].Value - s.Along[first].Value
			}
			return at, given
		}
	}
	for k := first; k <= last; k++ {
		p := place(b.Stations[k], places)
		if !p.OK() {
			return nil, ""
		}
		at[k] = p.Value
	}
	start := at[first]
	for k := first; k <= last; k++ {
		at[k] -= start
		if k > first && at[k] <= at[k-1] {
			return nil, ""
		}
	}
	return at, spaced
}

// place is a station's position: its own, or that of its namesake in the offsets.
func place(s hull.Station, places []hull.Station) source.Reading[measure.Length] {
	if s.At.OK() {
		return s.At
	}
	for _, p := range places {
		if strings.EqualFold(p.Name, s.Name) {
			return p.At
		}
	}
	return s.At
}

// marks lays out the stations and the even steps between them, each step
// measured from the station before it.
func marks(b Readings, s Seam, y []float64, given []bool, at []measure.Length, first, last int, plank hull.Strake, r Rules) []Mark {
	read := curve(at, y, given, first, last)
	smooth, _ := fair.Studentised(y, given, float64(b.Resolution))
	every := make([]bool, len(given))
	for k := first; k <= last; k++ {
		every[k] = true
	}
	faired := curve(at, smooth, every, first, last)
	width := widths(plank, b.Stations, at, first, last)
	var all []Mark
	add := func(l measure.Length, station string, v source.Reading[measure.Angle], filled bool) {
		m := Mark{At: l, Station: station, Read: v, Filled: filled, Width: width(l),
			Between: measure.Angle(read.Predict(l.Inches())), Faired: measure.Angle(faired.Predict(l.Inches()))}
		sawn := m.Between
		if r.SawFaired {
			sawn = m.Faired
		}
		m.Set = sawn.Round(r.Readout)
		m.Tilt = r.tilt(m.Set)
		m.Faces = plank.Thickness.Value.Times(m.Set.Tan())
		if len(all) > 0 {
			before := all[len(all)-1]
			m.PerFoot = (m.Between - before.Between) / measure.Angle((m.At - before.At).Feet())
			m.Crossing = before.Set*m.Set < 0 || (before.Set == 0 && crossed(all, m.Set))
		}
		all = append(all, m)
	}
	for k := first; k <= last; k++ {
		add(at[k], b.Stations[k].Name, s.Readings[k], !given[k])
		if k < last {
			for step := at[k] + r.Step; step < at[k+1]-r.Step/4; step += r.Step {
				add(step, "", source.Reading[measure.Angle]{}, false)
			}
		}
	}
	return all
}

// crossed says that the last bevel that was not square had the other hand.
func crossed(before []Mark, set measure.Angle) bool {
	for i := len(before) - 1; i >= 0; i-- {
		if before[i].Set != 0 {
			return before[i].Set*set < 0
		}
	}
	return false
}

// curve is the monotone interpolant of Fritsch and Butland (1984) through what
// is given: no overshoot is sawn.
func curve(at []measure.Length, y []float64, given []bool, first, last int) *interp.FritschButland {
	var xs, ys []float64
	for k := first; k <= last; k++ {
		if given[k] {
			xs, ys = append(xs, at[k].Inches()), append(ys, y[k])
		}
	}
	var c interp.FritschButland
	if err := c.Fit(xs, ys); err != nil {
		panic("bevel: " + err.Error()) // two readings at increasing places always fit
	}
	return &c
}

// widths is the width wanted along the edge: by station where the list gives
// widths so, else the strake's one width.
func widths(plank hull.Strake, stations []hull.Station, at []measure.Length, first, last int) func(measure.Length) measure.Length {
	var xs, ys []float64
	for k := first; k <= last; k++ {
		for i, s := range plank.WidthAt {
			if strings.EqualFold(s.Name, stations[k].Name) && plank.Widths[i].OK() {
				xs, ys = append(xs, at[k].Inches()), append(ys, plank.Widths[i].Value.Inches())
			}
		}
	}
	if len(xs) < 2 {
		return func(measure.Length) measure.Length { return plank.Width.Value }
	}
	var c interp.FritschButland
	if err := c.Fit(xs, ys); err != nil {
		return func(measure.Length) measure.Length { return plank.Width.Value }
	}
	return func(l measure.Length) measure.Length { return measure.Inches(c.Predict(l.Inches())) }
}

// turns finds the marks between which the bevel changes too fast, the worst of
// each seam.
func (s Schedule) turns(seam Seam, r Rules) finding.List {
	worst := -1
	for i, m := range s.Marks {
		if math.Abs(float64(m.PerFoot)) > float64(r.Turn) && (worst < 0 || math.Abs(float64(m.PerFoot)) > math.Abs(float64(s.Marks[worst].PerFoot))) {
			worst = i
		}
	}
	if worst < 0 {
		return nil
	}
	m := s.Marks[worst]
	station := m.Station
	for i := worst; station == ""; i-- {
		station = s.Marks[i].Station
	}
	return finding.List{{Kind: Turned, Cell: seam.Cell,
		Text: fmt.Sprintf("%s changes by %s degrees a foot near station %s, more than %s", seam.name(), m.PerFoot.Write(), station, r.Turn.Write())}}
}
