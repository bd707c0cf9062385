// Package scarf is the joiner's trade: the geometry of a plain glued scarf, the
// table of scarfs a job needs and the cuts at each saw. It knows nothing of
// where along the strakes the joints fall, nor of boards.
package scarf

import (
	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// Row is one line of the scarf table: all the scarfs of one skin, thickness
// and slope.
type Row struct {
	Skin      hull.Skin
	Thickness measure.Length
	Width     measure.Length // the greatest, for the glue area
	Slope     float64        // n of n to 1
	Run       measure.Length // along the plank, nib included
	Angle     measure.Angle  // of the fence: atan(1/n)
	Face      measure.Length // along the cut
	GlueArea  float64        // square inches, both faces counted once
	Joints    int
	ForeCuts  int            // on the fore-end saw
	AfterCuts int            // on the after-end saw
	Gap       measure.Length // at the feather for each 0.1 degree by which the fences differ
}
