// Package bevel is the sawyer's trade: the bevels lifted off the hull, the
// checks on them, and the schedule by which each plank's edge is sawn. It knows
// nothing of joints and boards.
package bevel

import (
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Edge is an edge of a plank as it hangs.
type Edge uint8

// The two edges, and that the book does not say.
const (
	EdgeUnstated Edge = iota
	Upper
	Lower
)

// String is the edge's word.
func (e Edge) String() string { return [...]string{"not stated", "upper", "lower"}[e] }

// Gauge says what the readings' numbers stand for.
type Gauge uint8

// The three ways of reading, and that the book does not say.
const (
	GaugeUnstated Gauge = iota
	OffSquare           // degrees off square, + where the outside face is the wider
	OnInside            // stock of the gauge on the inside face: 90 + b
	OnOutside           // stock on the outside face: 90 - b
)

// String is the gauge's words.
func (g Gauge) String() string {
	return [...]string{"not stated", "off square", "gauge on the inside face", "gauge on the outside face"}[g]
}

// Seam is the readings along one edge of one strake.
type Seam struct {
	Strake   string
	Skin     hull.Skin
	Side     hull.Side
	Edge     Edge
	Along    []source.Reading[measure.Length] // where given: distance along the edge from the first mark, a station each
	Readings []source.Reading[measure.Angle]  // as written, a station each
	Cell     source.Cell                      // of its label
}

// Readings is one table of bevels.
type Readings struct {
	Stations   []hull.Station
	Places     hull.Places // what they are called
	Seams      []Seam
	Gauge      Gauge
	InStation  bool          // lifted in the station plane instead of square to the edge
	Rise       float64       // the tangent of a bevel written as 1, in a table of rises; 0: it is in degrees
	Straight   bool          // widths are straight across, corner to corner: of gaps
	Resolution measure.Angle // the gauge's smallest step, from the readings
	Cell       source.Cell
}

// called is one of the table's stations in words: "station 4".
func (b Readings) called(k int) string { return b.Places.Named(b.Stations[k].Name) }
