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

// mostGiven is as many pieces as are taken of a builder's lists.
const mostGiven = 100_000

// counts is how many of each line are cut: none of one whose size or count is not
// known or beyond reason, nor of one that would bring them beyond the most.
func counts(list []Wanted) []int {
	all, sum := make([]int, len(list)), 0
	for i, w := range list {
		n := w.count()
		if w.fault(measure.StyleFeet) != "" || sum+n > mostGiven {
			continue
		}
		all[i] = n
		sum += n
	}
	return all
}

// count is how many of a line are asked for.
func (w Wanted) count() int {
	switch {
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
	cut := counts(list)
	for i, w := range list {
		fault := w.fault(r.Units)
		if fault == "" && cut[i] < w.count() {
			fault = fmt.Sprintf("is wanted %d times: with it the list comes to more than %d pieces", w.count(), mostGiven)
		}
		if fault != "" {
			found = append(found, finding.Finding{Kind: PieceSize, Cell: w.Cell, Text: fmt.Sprintf("piece %q %s", w.Mark, fault)})
		}
	}
	return found
}

// WantedRuns is the pieces of a list as runs of one piece each, to go through
// Work with the strakes or by themselves. Where several bear one mark they are
// numbered, in the order of the list.
func WantedRuns(list []Wanted) []lay.Run {
	cut, of, done := counts(list), map[string]int{}, map[string]int{}
	for i, w := range list {
		of[w.Mark] += cut[i]
	}
	var runs []lay.Run
	for i, w := range list {
		for range cut[i] {
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
