package read

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// A list of strakes may give the two sides' lengths in a column each: Port length,
// Stbd length, or Length (P) and Length (S).

// The fields of those columns.
const (
	portLength      = "port length"
	starboardLength = "starboard length"
)

// sidedLength is the meaning of a heading, which may be the length of one side.
func (r *reader) sidedLength(meaning, heading string) string {
	if meaning != "" && meaning != "length" {
		return meaning
	}
	words := strings.Fields(strings.NewReplacer("(", " ", ")", " ", "[", " ", "]", " ", ".", " ", ",", " ").Replace(measure.Fold(heading)))
	k := slices.IndexFunc(words, func(w string) bool { return sideOf(w) != hull.BothSides })
	if k < 0 {
		return meaning
	}
	side := sideOf(words[k])
	if rest := strings.Join(slices.Delete(words, k, k+1), " "); r.words.heading(rest) != "length" {
		return meaning
	}
	return map[hull.Side]string{hull.Port: portLength, hull.Starboard: starboardLength}[side]
}

// unsided leaves out the length of one side where that of the other is not given:
// nothing says whether it holds for both.
func (t *records) unsided() {
	_, port := t.cols[portLength]
	_, starboard := t.cols[starboardLength]
	if port != starboard {
		delete(t.cols, portLength)
		delete(t.cols, starboardLength)
	}
}

// sided is a strake for each side where the list gives their lengths apart and
// they differ.
func (r *reader) sided(t *records, row int, cols map[string]column, s hull.Strake) []hull.Strake {
	if _, ok := t.cols[portLength]; !ok {
		return []hull.Strake{s}
	}
	what := func(side hull.Side) string { return fmt.Sprintf("%s length of %s %s", side, s.Skin, s.Name) }
	port, starboard := s, s
	port.Length = r.length(t, row, portLength, cols, what(hull.Port))
	starboard.Length = r.length(t, row, starboardLength, cols, what(hull.Starboard))
	own, other := port, starboard
	if s.Side == hull.Starboard {
		own, other = starboard, port
	}
	switch {
	case s.Side != hull.BothSides:
		if other.Length.OK() {
			r.add(finding.Finding{Kind: LineUnplaced, Cell: other.Length.Cell, Reads: other.Length.Text,
				Text: fmt.Sprintf("%s %s is of the %s side, and a length of the other stands beside it", s.Skin, s.Name, s.Side)})
		}
		return []hull.Strake{own}
	case port.Length.State == starboard.Length.State && port.Length.Value == starboard.Length.Value:
		return []hull.Strake{port}
	}
	port.Side, starboard.Side = hull.Port, hull.Starboard
	return []hull.Strake{port, starboard}
}
