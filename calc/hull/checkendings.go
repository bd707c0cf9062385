package hull

import (
	"fmt"

	"strakebook/calc/finding"
	"strakebook/calc/source"
)

// OffsetEnding is a waterline that ends before the profile says it does.
var OffsetEnding = &finding.Kind{
	Code: "offset-ending", Severity: finding.Warning, Title: "waterline ends short of the profile",
	Why:    "Where the profile lies below a waterline and the deck above it, the hull has width there: the figure was left out, or the profile or the waterline's height is wrong.",
	Remedy: "fill in the half-breadth, if only that of the stem, or check the profile's height there",
}

// endingSteps is how many of the table's steps the profile must lie below a
// waterline for it to be there. Our choice: twice the rounding of both.
const endingSteps = 2

// endings holds the stations past a waterline's first and last figure to the
// profile and the deck: between the two there must be one. A waterline that
// changed places with another is held to its own height, and nothing is said of a
// station that is wrong as a whole.
func (c checked) endings() finding.List {
	o := c.o
	keel := max(o.line(Height, Rabbet), o.line(Height, Keel))
	deck := o.line(Height, Deck)
	if keel < 0 || deck < 0 {
		return nil
	}
	var found finding.List
	for _, l := range o.Lines {
		if l.Role != Waterline || l.View != HalfBreadth || !l.At.OK() {
			continue
		}
		first, last := reach(l)
		for k, v := range l.Values {
			low, high := o.Lines[keel].Values[k], o.Lines[deck].Values[k]
			margin := endingSteps * o.Resolution
			switch {
			case first < 0 || k >= first && k <= last || v.State == source.Unread || o.Stations[k].Transom || c.touched(k):
			case !low.OK() || !high.OK() || low.Value+margin >= l.At.Value || high.Value-margin <= l.At.Value:
			default:
				found = append(found, finding.Finding{Kind: OffsetEnding, Cell: v.Cell, Reads: v.Text, Also: []source.Cell{low.Cell},
					Text: fmt.Sprintf("%s has no figure at %s, where the profile (%q) lies below it", l.words(), o.called(k), low.Text)})
			}
		}
	}
	return found
}

// reach is the first and the last station at which a line has a figure; -1 for
// none.
func reach(l Line) (first, last int) {
	first, last = -1, -1
	for k, v := range l.Values {
		if v.OK() {
			if first < 0 {
				first = k
			}
			last = k
		}
	}
	return first, last
}
