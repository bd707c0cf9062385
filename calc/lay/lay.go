// Package lay is the planker's trade: where the joints of each strake fall
// along and across a side, by rules that differ with the skin. It knows nothing
// of the boards the pieces are cut from beyond what a piece of a length costs.
package lay

import (
	"strconv"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/scarf"
)

// Run is one strake on one side with its joints.
type Run struct {
	hull.Strake
	Side    hull.Side        // Port or Starboard
	Order   int              // place in the skin and side from the sheer down, from one
	Thick   measure.Length   // finished
	Hollow  measure.Length   // worked of its back: its board is so much the thicker
	Wide    measure.Length   // that a board must cover: the wider face at its widest
	Length  measure.Length   // along the strake, hood end to hood end
	Start   measure.Length   // of its fore end, from the same place as the stations
	Slope   float64          // of its scarfs, n to 1
	Scarf   measure.Length   // run of its scarfs, through its boards as dressed
	Feather scarf.Feathers   // the way its outside feathers point
	Face    measure.Length   // width on the inside face, where greatest
	Breadth []hull.Breadth   // of the inside face from end to end by the hull; nil where only the greatest is known
	Down    measure.Length   // from the top of the skin to the top of the run, by the widths of those above
	Given   bool             // one piece as the builder gives it: no joints to choose, no neighbours
	Places  []measure.Length // that its joints may fall on, from its fore end; nil for the steps of the grid
	Joints  []measure.Length // middles of scarfs, from the strake's fore end
	Pieces  []measure.Length // long point to long point, fore to aft: one more than Joints
}

// Through is how thick the run's boards are dressed: they are scarfed and sawn at this,
// and the back is worked afterwards.
func (r *Run) Through() measure.Length { return r.Thick + r.Hollow }

// Runs spreads the list of strakes into single strakes, starboard before port
// in each skin, in the order of the list: from the sheer down. Strakes without
// thickness, width or length are left out; hull.CheckStrakes names them.
func Runs(strakes []hull.Strake, sr scarf.Rules) []Run {
	var all []Run
	var skins []hull.Skin
	seen := map[hull.Skin]bool{}
	for _, s := range strakes {
		if !seen[s.Skin] {
			seen[s.Skin] = true
			skins = append(skins, s.Skin)
		}
	}
	for _, skin := range skins {
		for _, side := range []hull.Side{hull.Starboard, hull.Port} {
			order, down := 0, measure.Length(0)
			for _, s := range strakes {
				if s.Skin != skin || (s.Side != hull.BothSides && s.Side != side) {
					continue
				}
				width := s.Widest()
				whole := s.Thickness.OK() && s.Thickness.Value > 0 && width > 0 && s.Length.OK() && s.Length.Value > 0
				for _, name := range s.Names() {
					order++ // a strake left out still lies between its neighbours
					down += width
					if !whole {
						continue
					}
					one := s
					one.Name = name
					slope := sr.Slope(skin, s.Slope)
					all = append(all, Run{
						Strake: one, Side: side, Order: order,
						Thick: s.Thickness.Value, Wide: width, Length: s.Length.Value, Start: s.Start.Value,
						Slope: slope, Scarf: scarf.Run(s.Thickness.Value, slope, sr.Nib), Feather: sr.Feathers,
						Face: width, Down: down - width,
					})
				}
			}
		}
	}
	return all
}

// Mean is how wide a run is on the whole between two places along it: by the hull,
// or its greatest width where the hull does not give it.
func (r *Run) Mean(from, to measure.Length) measure.Length {
	if len(r.Breadth) == 0 {
		return r.most()
	}
	return hull.MeanBreadth(r.Breadth, from, to)
}

// Across is how wide a run is at a place along it, as Mean is.
func (r *Run) Across(at measure.Length) measure.Length {
	if len(r.Breadth) == 0 {
		return r.most()
	}
	return hull.BreadthAt(r.Breadth, at)
}

// most is a run's greatest width on the inside face; of a piece that is given, its
// own.
func (r *Run) most() measure.Length {
	if r.Given {
		return r.Wide
	}
	return r.Face
}

// Cut fills in a run's pieces from its joints.
func (r *Run) Cut() {
	r.Pieces = make([]measure.Length, 0, len(r.Joints)+1)
	last, half := measure.Length(0), measure.Length(0)
	for _, j := range r.Joints {
		r.Pieces = append(r.Pieces, j-last+half+r.Scarf-r.Scarf/2)
		last, half = j, r.Scarf/2
	}
	r.Pieces = append(r.Pieces, r.Length-last+half)
}

func number(n int) string {
	words := [...]string{"no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"}
	if n >= 0 && n < len(words) {
		return words[n]
	}
	return strconv.Itoa(n)
}
