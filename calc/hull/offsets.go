// Package hull is the loftsman's trade: stations, the table of offsets and its
// lines, the sections and girths that follow from them, and the strakes that
// run along the hull. It knows nothing of bevels, scarfs or boards.
package hull

import (
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Station is one station, mould or section of the hull. Stations count from
// the bow aft unless the book says otherwise.
type Station struct {
	Name    string                         // as headed: "0", "3 1/2", "X", "Transom"
	At      source.Reading[measure.Length] // from the named perpendicular, increasing aft
	Transom bool                           // the last one, raked or not: left out of fairness
	Cell    source.Cell
}

// View is the direction in which a line's offsets are measured.
type View uint8

// The three views of a table of offsets.
const (
	HalfBreadth View = iota // out from the centre line
	Height                  // up from the base line
	Diagonal                // along the diagonal's own plane
)

// String is the view's word.
func (v View) String() string { return [...]string{"half-breadth", "height", "diagonal"}[v] }

// Role is what a line of the table is.
type Role uint8

// The roles of a line. Deck and sheer are one; so are keel and profile. A
// chine, deck or rabbet has a line in each of two views.
const (
	OtherLine Role = iota
	Waterline      // half-breadths at the height At
	Buttock        // heights at the distance out At
	Deck
	Rabbet
	Keel
	Chine
	DiagonalLine
)

// String is the role's word.
func (r Role) String() string {
	return [...]string{"line", "waterline", "buttock", "deck", "rabbet", "keel", "chine", "diagonal"}[r]
}

// Line is one line of the table: a value for each of the table's stations.
type Line struct {
	Name   string // as labelled: "WL 2", "Sheer"
	View   View
	Role   Role
	At     source.Reading[measure.Length] // a waterline's height above base, a buttock's distance out, the height at which a diagonal leaves the centre line
	Down   source.Reading[measure.Angle]  // of a diagonal: how far below level it runs out
	Unread string                         // of a diagonal: what of the words about it is not understood
	Values []source.Reading[measure.Length]
	Cell   source.Cell // of its label
}

// Surface is the surface of the hull that figures are measured to.
type Surface uint8

// The three surfaces, and that the book does not say.
const (
	SurfaceUnstated Surface = iota
	OutsidePlanking
	BetweenSkins
	InsidePlanking // inside of the strips, on the moulds
)

// String is the surface's words.
func (s Surface) String() string {
	return [...]string{"not stated", "outside of planking", "between the skins", "inside of planking"}[s]
}

// Offsets is the designer's table: every line has one value a station.
type Offsets struct {
	Stations   []Station
	Lines      []Line
	Resolution measure.Length // the table's smallest step: an eighth, a sixteenth, a millimetre
	Step       measure.Length // what all its figures are multiples of, where that is coarser
	Form       measure.Form   // as written, for quoting back
	Places     Places         // what its stations are called
	Fractions  bool           // a parent hull's pure numbers: one whole is one metre
	Surface    Surface
	Kept       []source.Cell // figures the builder lets stand whatever the checks make of them
	Cell       source.Cell   // its top left corner
}

// To is the surface that the table's figures are to: as it says itself, else as the
// rules do.
func (o Offsets) To(r Rules) Surface {
	if o.Surface != SurfaceUnstated {
		return o.Surface
	}
	return r.OffsetsTo
}
