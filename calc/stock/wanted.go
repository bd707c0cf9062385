package stock

import (
	"fmt"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Wanted is a line of a builder's own list of pieces, with no joints to choose.
type Wanted struct {
	Mark                     string
	Species                  string
	Thickness, Width, Length source.Reading[measure.Length] // finished
	Count                    source.Reading[int]            // blank: one
	Cell                     source.Cell
}

// GivenPiece is the skin of pieces that are given and belong to no strake.
const GivenPiece hull.Skin = "piece"

// PieceSize is a piece of the builder's list that cannot be cut as it is given.
var PieceSize = &finding.Kind{
	Code: "piece-size", Severity: finding.Error, Title: "piece without a size that can be cut",
	Why:    "A piece of unknown thickness, width or length, or of one beyond reason, cannot be laid on a board.",
	Remedy: "write its finished size; it is left out until then",
}

// count is how many of a line are wanted; none of one whose size or count is not
// known or beyond reason.
func (w Wanted) count() int {
	switch {
	case w.fault(measure.StyleFeet) != "":
		return 0
	case w.Count.OK():
		return w.Count.Value
	case w.Count.State == source.Blank:
		return 1
	}
	return 0
}

// fault is what keeps a line from being cut; "" for nothing.
func (w Wanted) fault(u measure.Style) string {
	for _, size := range []struct {
		name, odd string
		of        source.Reading[measure.Length]
		most      measure.Length
		write     func(measure.Length) string
	}{
		{"thickness", "thick", w.Thickness, 4 * measure.Foot, u.Small},
		{"width", "wide", w.Width, 20 * measure.Foot, u.Small},
		{"length", "long", w.Length, 300 * measure.Foot, u.Long},
	} {
		switch v := size.of; {
		case v.State == source.Unread:
			return "has no " + size.name + " that could be read"
		case !v.OK() || v.Value == 0:
			return "has no " + size.name
		case v.Value < 0 || v.Value > size.most:
			return "is " + size.write(v.Value) + " " + size.odd
		}
	}
	return ""
}

// CheckWanted says which lines of a builder's list cannot be cut.
func CheckWanted(list []Wanted, r Rules) finding.List {
	var found finding.List
	for _, w := range list {
		if fault := w.fault(r.Units); fault != "" {
			found = append(found, finding.Finding{Kind: PieceSize, Cell: w.Cell, Text: fmt.Sprintf("piece %q %s", w.Mark, fault)})
		}
	}
	return found
}

// WantedRuns is the pieces of a list as runs of one piece each, to go through
// Work with the strakes or by themselves. Where several bear one mark they are
// numbered, in the order of the list.
func WantedRuns(list []Wanted) []lay.Run {
	of, done := map[string]int{}, map[string]int{}
	for _, w := range list {
		of[w.Mark] += w.count()
	}
	var runs []lay.Run
	for _, w := range list {
		for range w.count() {
			run := lay.Run{Thick: w.Thickness.Value, Wide: w.Width.Value, Face: w.Width.Value, Length: w.Length.Value, Given: true}
			run.Strake = hull.Strake{Name: w.Mark, Skin: GivenPiece, Species: w.Species, Cell: w.Cell}
			if of[w.Mark] > 1 {
				done[w.Mark]++
				run.Name = fmt.Sprintf("%s-%d", w.Mark, done[w.Mark])
			}
			runs = append(runs, run)
		}
	}
	return runs
}
