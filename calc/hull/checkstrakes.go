package hull

import (
	"fmt"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// CheckStrakes says what a list of strakes lacks and what in it is unlikely.
// Strakes that one row stands for are spoken of once.
func CheckStrakes(strakes []Strake, r Rules) finding.List {
	var found finding.List
	type key struct {
		skin Skin
		name string
		side Side
	}
	seen := map[key]Strake{}
	for i, s := range strakes {
		again := i > 0 && s.Cell == strakes[i-1].Cell && s.Cell.Row > 0
		for _, side := range []Side{BothSides, Port, Starboard} {
			if first, twice := seen[key{s.Skin, strings.ToLower(s.Name), side}]; twice && (first.Cell != s.Cell || s.Cell.Row == 0) && (side == s.Side || side == BothSides || s.Side == BothSides) {
				found = append(found, finding.Finding{Kind: StrakeRepeated, Cell: s.Cell, Also: []source.Cell{first.Cell},
					Reads: s.Name, Text: fmt.Sprintf("%s %q is named twice", s.Skin, s.Name)})
				break
			}
		}
		seen[key{s.Skin, strings.ToLower(s.Name), s.Side}] = s
		if !again {
			found = append(found, checkStrake(s, r.Units)...)
		}
	}
	return found
}

func checkStrake(s Strake, u measure.Style) finding.List {
	var found finding.List
	lacks := func(kind *finding.Kind, r source.Reading[measure.Length], what string) {
		if r.OK() || r.State == source.Unread {
			return // given, or already reported where it was read
		}
		cell := r.Cell
		if cell.Row == 0 {
			cell = s.Cell
		}
		found = append(found, finding.Finding{Kind: kind, Cell: cell, Text: fmt.Sprintf("%s %q has no %s", s.Skin, s.Name, what)})
	}
	lacks(StrakeNoThickness, s.Thickness, "thickness")
	if len(s.Widths) == 0 {
		lacks(StrakeNoWidth, s.Width, "width")
	}
	if s.From == "" || s.To == "" {
		lacks(StrakeNoLength, s.Length, "length")
	}
	odd := func(r source.Reading[measure.Length], what string, least, most measure.Length) {
		if r.OK() && (r.Value < least || r.Value > most) {
			found = append(found, finding.Finding{Kind: StrakeOdd, Cell: r.Cell, Reads: r.Text,
				Text:     fmt.Sprintf("%s %q has a %s of %q, %s", s.Skin, s.Name, what, r.Text, u.Small(r.Value)),
				Suggests: fmt.Sprintf("from %s to %s", u.Small(least), u.Small(most))})
		}
	}
	odd(s.Thickness, "thickness", measure.Inch/8, 6*measure.Inch)
	odd(s.Width, "width", measure.Inch/4, 24*measure.Inch)
	odd(s.Length, "length", measure.Foot, 500*measure.Foot)
	return found
}
