package hull

import (
	"fmt"
	"math"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
)

// GarboardOpen is a garboard whose bevel to the rabbet is not worked out.
var GarboardOpen = &finding.Kind{
	Code: "garboard-open", Severity: finding.Note, Title: "garboard's bevel to the rabbet not worked out",
	Why:    "The garboard lies against the side of the keel, which stands half the keel's siding out from the middle line.",
	Remedy: "add the half-breadths of the rabbet, or lift the bevel on the keel",
}

// Garboard is how the plank next to the keel meets it at a station, in the plane
// square to the rabbet. A rabbet cut square to the plank takes a square edge;
// where none is cut the edge lies against the keel's side and is bevelled to it.
type Garboard struct {
	Strake   string
	Place    int            // of the station
	ToKeel   measure.Angle  // between the plank and the keel's side, through the wood of the keel's corner: 90 on a flat floor
	Edge     measure.Angle  // of an edge against the keel's side, off square, plus where the outside face is the wider
	Depth    measure.Length // of the rabbet into the keel, to the inner corner of a square edge
	Bearding measure.Length // from the rabbet line to where the inside face leaves the keel; both 0 where no thickness is listed
}

// garboards finds how the last strake of a skin of planks meets the keel, and
// says so where the offsets do not give what it takes.
func (h *hull) garboards(l *Lining, strakes []Strake) finding.List {
	n := len(l.Strakes)
	if n == 0 || l.Skin == Strips || l.Seams[n].run == nil || l.Seams[n-1].run == nil {
		return nil
	}
	thick := thickOf(l, n-1, strakes).Inches()
	ends, sided := 0, 0
	run := l.Seams[n].run
	for i, at := range run.p {
		k := l.Seams[n].at[i]
		if k < 0 || l.Left[k] > 0 || h.sections[k].from == OtherLine || h.closedAt(k) {
			continue
		}
		ends++
		if !h.siding(k) {
			continue
		}
		sided++
		along := run.out[i].unit()
		up, ok := square(l.Seams[n-1].run, at, along, h.leaning(k))
		if !ok || up.from(at) == 0 {
			continue
		}
		l.Garboards = append(l.Garboards, garboard(l.Strakes[n-1].Name, k, up.minus(at), along, thick))
	}
	if ends == 0 || sided > 0 {
		return nil
	}
	return finding.List{{Kind: GarboardOpen, Cell: h.o.Cell,
		Text: fmt.Sprintf("how %s %s meets the keel is not worked out: the rabbet has no half-breadths, or none off the middle line", l.Skin, l.Strakes[n-1].Name)}}
}

// siding says that the breadth of the rabbet, half the keel's siding, is given at
// a station.
func (h *hull) siding(k int) bool {
	for _, p := range h.pairs {
		if (p.role == Rabbet || p.role == Keel) && p.out >= 0 && p.up >= 0 && h.ok[p.out][k] && h.ok[p.up][k] && h.v[p.out][k] > 0 {
			return true
		}
	}
	return false
}

// garboard is the plank that rises from the rabbet by up, across it, where the
// rabbet runs along.
func garboard(strake string, k int, up, along point, thick float64) Garboard {
	// The keel's side stands on the rabbet as upright as it can.
	out := point{y: 1}
	out = out.minus(along.times(along.y)).unit()
	side := along.cross(out)
	angle := math.Atan2(up.dot(out), up.dot(side))
	g := Garboard{Strake: strake, Place: k, ToKeel: measure.Radians(angle), Edge: 90 - measure.Radians(angle)}
	if sin := math.Sin(angle); thick > 0 && sin > 0.02 { // flatter on the keel than a degree there is no bearding line
		g.Depth, g.Bearding = measure.Inches(thick*math.Cos(angle)), measure.Inches(thick/sin)
	}
	return g
}
