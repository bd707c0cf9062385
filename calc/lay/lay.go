// Package lay is the planker's trade: where the joints of each strake fall
// along and across a side, by rules that differ with the skin. It knows nothing
// of the boards the pieces are cut from beyond what a piece of a length costs.
package lay

import (
	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// Run is one strake on one side with its joints. A strake's name is its own:
// a row of the book that counts several is spread before it comes here.
type Run struct {
	hull.Strake
	Side   hull.Side        // Port or Starboard
	Order  int              // place in the skin from the sheer down, from one
	Length measure.Length   // along the strake, hood end to hood end
	Start  measure.Length   // of its fore end, from the same place as the stations
	Scarf  measure.Length   // run of its scarfs
	Joints []measure.Length // middles of scarfs, from the strake's fore end
	Pieces []measure.Length // long point to long point, fore to aft: one more than Joints
}
