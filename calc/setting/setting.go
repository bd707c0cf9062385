// Package setting describes one thing a yard may set: its name, what it means,
// where its default comes from and how it is read. Every trade lists its own
// beside its Rules. It knows nothing of the sheet or flag a value came from.
package setting

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"strakebook/calc/measure"
)

// Setting is one rule under its name on the Settings sheet.
type Setting struct {
	Name    string // lower case words: "plank scarf slope"
	Meaning string // one sentence
	Source  string // document and section, "common practice, no source", or "our choice"
	Value   Value
}

// Value reads and writes the rule a setting stands for. It is satisfied by
// pointers into a Rules value. What a value writes it reads back the same.
type Value interface {
	Set(text string) error // what is accepted is in the error's text
	String() string        // as the Settings sheet shows it, without its unit
	Unit() string          // "in", "degrees", "", ...
}

// SetIn sets the value from a text and the unit written beside it, as in the
// unit column of a Settings sheet; no unit is the setting's own. A length may be
// in any unit of length, and a mark in the text itself holds over the unit
// beside it. A unit that the setting cannot be in is refused.
func (s Setting) SetIn(text, unit string) error {
	if v, own := s.Value.(interface{ SetUnit(text, unit string) error }); own && strings.TrimSpace(unit) != "" {
		return v.SetUnit(text, unit)
	}
	beside := measure.UnitNamed(unit)
	_, isLength := s.Value.(length)
	switch {
	case strings.TrimSpace(unit) == "", sameUnit(unit, s.Value.Unit()):
		return s.Value.Set(text)
	case !isLength || beside == measure.NoUnit:
		return fmt.Errorf("reads %q in %q: expected %s", text, unit, inWords(s.Value.Unit()))
	case measure.MarkedUnit(text) != measure.NoUnit:
		return s.Value.Set(text)
	}
	return s.Value.(length).setIn(text, beside)
}

// Written is the value and its unit.
func (s Setting) Written() string { return strings.TrimSpace(s.Value.String() + " " + s.Value.Unit()) }

// Told is the value and its unit for a reader: a length in the figures that a rule
// has, in millimetres or in inches.
func (s Setting) Told(metric bool) string {
	l, ok := s.Value.(length)
	switch {
	case !ok:
		return s.Written()
	case metric:
		return strconv.FormatFloat(math.Round(l.p.Millimetres()*1000)/1000, 'f', -1, 64) + " mm"
	}
	return l.p.String()
}

// Words is the words the setting may be, for a list to choose from; nil where it
// is a quantity or free text.
func (s Setting) Words() []string {
	switch v := s.Value.(type) {
	case yesNo:
		return []string{"yes", "no"}
	case interface{ oneOf() []string }:
		return v.oneOf()
	}
	return nil
}

// sameUnit says that two words name one unit, or are the same words.
func sameUnit(a, b string) bool {
	a, b = unitWords(a), unitWords(b)
	if u := measure.UnitNamed(a); u != measure.NoUnit && u == measure.UnitNamed(b) {
		return true
	}
	return a == b
}

// unitWords is a unit's words with their shorter forms made one.
func unitWords(unit string) string {
	switch u := strings.Trim(strings.ToLower(measure.Fold(unit)), "()[] ."); u {
	case "deg", "degs", "degree", "°":
		return "degrees"
	case "%", "percent", "pct":
		return "per cent"
	case ":1", ": 1":
		return "to 1"
	default:
		return u
	}
}

func inWords(unit string) string {
	if unit == "" {
		return "no unit"
	}
	return "it in " + unit
}
