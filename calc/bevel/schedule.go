package bevel

import (
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
	PerFoot  measure.Angle  // change from the mark before, a foot
	Faces    measure.Length // outside face wider by this much
	Batten   measure.Length // batten's edge from the fence line
	SetOut   measure.Length // batten beyond a parallel one: + out, - in
	Crossing bool           // the bevel passes through square between the mark before and this one
	Filled   bool           // no reading here: taken from the neighbours
}

// Schedule is what the sawyer is called for one edge of one strake on one side.
type Schedule struct {
	Strake    string
	Skin      hull.Skin
	Side      hull.Side
	Edge      Edge
	From      string // the station the marks are measured from
	Thickness measure.Length
	Width     measure.Length // on the inside face
	Depth     measure.Length // of blade needed at the steepest mark
	Computed  bool           // from the hull, none having been lifted
	AlongFrom string         // "given", "hull" or "station spacing"
	Marks     []Mark
	Cell      source.Cell
}
