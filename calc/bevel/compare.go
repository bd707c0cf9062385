package bevel

import (
	"fmt"
	"math"

	"strakebook/calc/fair"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// What the lifted bevels held against the hull's own find.
var (
	HullApart = &finding.Kind{
		Code: "bevel-hull", Severity: finding.Warning, Title: "lifted bevel not that of the hull",
		Why:    "The offsets say how much the planking turns at each seam; a bevel lifted otherwise is misread, or the seam does not run where it was lined off.",
		Remedy: "lift the bevel again; set \"lifted within\" if the hull is known to differ from its lines",
	}
	HullGross = &finding.Kind{
		Code: "bevel-hull-gross", Severity: finding.Warning, Title: "bevels far off those of the hull",
		Why:    "So much is no looseness of the lines: the reading, its sign, the edge or plane it was lifted by, or the offsets are wrong, and a plank sawn to the wrong one is lost.",
		Remedy: "lift the worst again; then see on which face the gauge's stock lay, along which edge and in which plane they were lifted, and where the station's mark stands; last the offsets",
	}
	HullStation = &finding.Kind{
		Code: "bevel-hull-station", Severity: finding.Note, Title: "bevels of one station not those of the hull",
		Why:    "Where most seams differ at one station, it is the station's offsets or its mark on the hull that is wrong, and not each bevel.",
		Remedy: "see what is said of the station's offsets, and check where its mark stands on the hull",
	}
	HullLoose = &finding.Kind{
		Code: "bevel-hull-loose", Severity: finding.Note, Title: "bevels beside one another not those of the hull",
		Why:    "Offsets to an eighth leave the hull's own bevels uncertain by half a degree; seams side by side that differ alike show the lines, not the gauge, to be loose there.",
		Remedy: "nothing, if the offsets there are only rounded; else ask the designer",
	}
)

// compared is one seam's lifted bevels less the hull's own, a station each.
type compared struct {
	diff  []float64
	known []bool
	hull  []float64
}

// withHull holds each lifted bevel against the hull's own at the seam. A station
// at which most seams differ is said once, and its bevels are let be; a seam that
// differs all along is said once; else each reading that differs from the hull as
// those beside it do not, and was not found odd in its own seam.
func withHull(b Readings, j judged, shape *hull.Shape, r Rules) finding.List {
	if shape == nil || r.HullWithin <= 0 {
		return nil
	}
	within := float64(r.HullWithin)
	seams := make([]compared, len(b.Seams))
	for i, s := range b.Seams {
		seams[i] = compare(b, s, j.readings.Y[i], j.readings.Given[i], shape, r)
	}
	found, let := stationsApart(b, seams, within)
	far := far{table: b, of: seams, beyond: grossly * within, rules: r}
	var shared []source.Cell
	for i, s := range b.Seams {
		c := seams[i]
		var d []float64
		for k := range c.diff {
			if c.known[k] && !let[k] {
				d = append(d, c.diff[k])
			}
		}
		if len(d) >= 4 && math.Abs(fair.Median(d)) > within {
			found = append(found, finding.Finding{Kind: HullApart, Cell: s.Cell,
				Text: fmt.Sprintf("the whole of %s lies off the hull's own bevels, by %s degrees in the middle", s.name(), measure.Angle(fair.Median(d)).Round(0.01).Write())})
			continue
		}
		for k := range c.diff {
			if c.known[k] && let[k] {
				far.see(i, k, j)
			}
			if _, odd := j.odd[i][k]; odd || !c.known[k] || let[k] || math.Abs(c.diff[k]) <= within {
				continue
			}
			v := s.Readings[k]
			if !alone(seams, i, j.readings.Beside[i], k, within) {
				shared = append(shared, v.Cell)
				far.see(i, k, j)
				continue
			}
			found = append(found, finding.Finding{Kind: HullApart, Cell: v.Cell, Reads: v.Text, Suggests: "about " + b.written(c.hull[k], r),
				Text: fmt.Sprintf("%s at %s reads %q and the hull as lined off turns %s there", s.name(), b.called(k), v.Text, b.hullsOwn(c.hull[k], r))})
		}
	}
	if len(shared) > 0 {
		found = append(found, finding.Finding{Kind: HullLoose, Cell: shared[0], Also: shared[1:],
			Text: fmt.Sprintf("%d bevels differ from the hull's own by more than %s degrees as those beside them do", len(shared), r.HullWithin.Write())})
	}
	return append(found, far.found()...)
}

// alone says that no seam beside one differs from the hull at a station as it
// does.
func alone(seams []compared, i int, beside []int, k int, within float64) bool {
	for _, o := range beside {
		if seams[o].known[k] && math.Abs(seams[o].diff[k]-seams[i].diff[k]) <= within {
			return false
		}
	}
	return true
}

// compare is one seam against the hull.
func compare(b Readings, s Seam, y []float64, given []bool, shape *hull.Shape, r Rules) compared {
	n := len(b.Stations)
	c := compared{diff: make([]float64, n), known: make([]bool, n), hull: make([]float64, n)}
	for k, st := range b.Stations {
		own, ok := r.own(shape, s, st.Name)
		if !ok || !given[k] {
			continue
		}
		v := measure.Angle(y[k])
		if b.Lifted(r) {
			p, _ := shape.EdgeAt(s.Skin, s.Strake, s.Side, r.edge(s) == Upper, st.Name)
			v = toSquare(v, p.Angle.Cos())
		}
		c.hull[k], c.diff[k], c.known[k] = float64(own), float64(v-own), true
	}
	return c
}

// own is the bevel of a seam's edge at a station as the hull is lined off; not ok
// where that is not known.
func (r Rules) own(shape *hull.Shape, s Seam, station string) (measure.Angle, bool) {
	p, ok := shape.EdgeAt(s.Skin, s.Strake, s.Side, r.edge(s) == Upper, station)
	return r.ofTurn(p.Bevel), ok && p.HasBevel
}

// edge is the edge of its plank that a seam was read along: where that is not said
// the one that is sawn.
func (r Rules) edge(s Seam) Edge {
	if s.Edge == EdgeUnstated {
		return r.Sawn
	}
	return s.Edge
}

// stationsApart finds the stations at which more than half of the seams differ, or
// a third and five of them, and says so; let is those and the stations next to
// them, to which the curves carry the fault.
func stationsApart(b Readings, seams []compared, within float64) (found finding.List, let []bool) {
	let = make([]bool, len(b.Stations))
	for k, st := range b.Stations {
		off, all := 0, 0
		for _, c := range seams {
			if c.known[k] {
				all++
				if math.Abs(c.diff[k]) > within {
					off++
				}
			}
		}
		if all < 4 || 2*off <= all && (3*off <= all || off < 5) {
			continue
		}
		found = append(found, finding.Finding{Kind: HullStation, Cell: st.Cell, Reads: st.Name,
			Text: fmt.Sprintf("at %s %d of %d seams were lifted otherwise than the hull turns", b.called(k), off, all)})
		for _, i := range []int{k - 1, k, k + 1} {
			if i >= 0 && i < len(let) {
				let[i] = true
			}
		}
	}
	return found, let
}

// toSquare turns a bevel lifted in the station plane into the one square to an
// edge that runs at an angle of this cosine to the fore-and-aft line.
func toSquare(b measure.Angle, cos float64) measure.Angle {
	return measure.Radians(math.Atan(b.Tan() / cos))
}
