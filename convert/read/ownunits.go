package read

import (
	"slices"
	"strings"

	"strakebook/calc/measure"
)

// ownUnits is how the builder's own tables write lengths, by which the new book
// goes where nothing is set: millimetres where most of their lines are metric,
// else feet where any table has feet, else inches.
func (r *reader) ownUnits() measure.Style {
	metric, other, feet := 0, 0, false
	for _, t := range r.tables {
		if t.Skip {
			continue
		}
		units := strings.FieldsFunc(t.Unit+" "+t.Notation, func(c rune) bool { return strings.ContainsRune(" ;-", c) })
		has := func(some ...string) bool {
			return slices.ContainsFunc(some, func(u string) bool { return slices.Contains(units, u) })
		}
		switch {
		case has("mm", "cm", "m"):
			metric += t.Lines
		case has("feet", "old"):
			other, feet = other+t.Lines, true
		case has("inches"):
			other += t.Lines
		}
	}
	switch {
	case metric > other:
		return measure.StyleMM
	case other > 0 && !feet:
		return measure.StyleInches
	}
	return measure.StyleFeet
}
