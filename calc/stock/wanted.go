package stock

import (
	"fmt"

	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Wanted is a line of a builder's own list of pieces, with no joints to choose.
type Wanted struct {
	Mark                     string
	Species                  string
	Thickness, Width, Length measure.Length // finished
	Count                    int
	Cell                     source.Cell
}

// WantedRuns is the pieces of a list as runs of one piece each, to go through
// Work with the strakes or by themselves.
func WantedRuns(list []Wanted) []lay.Run {
	var runs []lay.Run
	for _, w := range list {
		for n := range w.Count {
			run := lay.Run{Thick: w.Thickness, Wide: w.Width, Face: w.Width, Length: w.Length, Given: true}
			run.Strake = hull.Strake{Name: w.Mark, Skin: "piece", Species: w.Species, Cell: w.Cell}
			if w.Count > 1 {
				run.Name = fmt.Sprintf("%s-%d", w.Mark, n+1)
			}
			if w.Thickness > 0 && w.Width > 0 && w.Length > 0 {
				runs = append(runs, run)
			}
		}
	}
	return runs
}
