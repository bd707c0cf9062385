package bevel

import (
	"fmt"

	"strakebook/calc/finding"
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
func (l laid) squared(y []float64, r Rules) finding.List {
	if !l.b.Lifted(r) {
		return nil
	}
	spacing := make([]measure.Length, len(l.at))
	known := l.from == AlongGiven
	for k := l.first; k <= l.last; k++ {
		p := place(l.b.Stations[k], l.places)
		known = known && p.OK()
		spacing[k] = p.Value
	}
	cos := make([]float64, len(l.at))
	for k := l.first; k <= l.last; k++ {
		if p, ok := l.shape.EdgeAt(l.s.Skin, l.s.Strake, l.s.Side, r.edge(l.s) == Upper, l.b.Stations[k].Name); ok {
			cos[k] = p.Angle.Cos()
			continue
		}
		fore, aft := max(l.first, k-1), min(l.last, k+1)
		cos[k] = min(1, float64(spacing[aft]-spacing[fore])/float64(l.at[aft]-l.at[fore]))
		if !known || cos[k] <= 0 {
			return finding.List{{Kind: Plane, Cell: l.s.Cell,
				Text: fmt.Sprintf("%s was lifted in the %s plane and its angle there is not known: the bevels are used as read", l.s.name(), l.b.Places)}}
		}
	}
	for k := l.first; k <= l.last; k++ {
		y[k] = float64(toSquare(measure.Angle(y[k]), cos[k]))
	}
	return nil
}
