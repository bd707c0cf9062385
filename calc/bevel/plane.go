package bevel

import (
	"fmt"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// Plane is bevels lifted in the station plane that cannot be turned square to
// the edge.
var Plane = &finding.Kind{
	Code: "bevel-plane", Severity: finding.Warning, Title: "bevels lifted in the station plane",
	Why:    "A bevel lifted in the station's plane is less than the one square to the edge wherever the plank runs at an angle to the middle line; the saw tilts square to the edge.",
	Remedy: "give distances along the edge and the stations' positions, so that the plank's angle is known, or lift square to the edge",
}

// Lifted says that the table's bevels were lifted in the station plane.
func (b Readings) Lifted(r Rules) bool { return b.InStation || r.InStation }

// squared turns bevels lifted in the station plane into bevels square to the
// edge: tan b / cos a, where a is the angle of the edge to the fore-and-aft line.
// The angle is the hull's own at the seam, or follows from the distances along the
// edge against the stations'.
func squared(b Readings, s Seam, y []float64, at []measure.Length, from AlongFrom, places []hull.Station, shape *hull.Shape, first, last int, r Rules) finding.List {
	if !b.Lifted(r) {
		return nil
	}
	spacing := make([]measure.Length, len(at))
	known := from == AlongGiven
	for k := first; k <= last; k++ {
		p := place(b.Stations[k], places)
		known = known && p.OK()
		spacing[k] = p.Value
	}
	cos := make([]float64, len(at))
	for k := first; k <= last; k++ {
		if p, ok := shape.EdgeAt(s.Skin, s.Strake, s.Side, r.edge(s) == Upper, b.Stations[k].Name); ok {
			cos[k] = p.Angle.Cos()
			continue
		}
		fore, aft := max(first, k-1), min(last, k+1)
		cos[k] = min(1, float64(spacing[aft]-spacing[fore])/float64(at[aft]-at[fore]))
		if !known || cos[k] <= 0 {
			return finding.List{{Kind: Plane, Cell: s.Cell,
				Text: fmt.Sprintf("%s was lifted in the %s plane and its angle there is not known: the bevels are used as read", s.name(), b.Places)}}
		}
	}
	for k := first; k <= last; k++ {
		y[k] = float64(toSquare(measure.Angle(y[k]), cos[k]))
	}
	return nil
}
