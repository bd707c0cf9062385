package measure

import "strings"

// Unit is the unit of a bare number.
type Unit uint8

// The units a table's numbers may be in. Fractions are pure numbers, as in a
// table of a series' parent hull; one whole is kept as one metre.
const (
	NoUnit Unit = iota // not known: a finding, never a guess
	InFeet
	InInches
	InMillimetres
	InCentimetres
	InMetres
	Fractions
)

// Length is what one of the unit comes to; zero for NoUnit.
func (u Unit) Length() Length {
	return [...]Length{0, Foot, Inch, Millimetre, Centimetre, Metre, Metre}[u]
}

// String is the unit's word: "inches", "mm"; "not known" for NoUnit.
func (u Unit) String() string {
	return [...]string{"not known", "feet", "inches", "mm", "cm", "m", "fractions"}[u]
}

// UnitNamed is the unit that a word or a mark names by itself, as in a column
// of units: "in", "inches", `"`, "mm". NoUnit for any other text.
func UnitNamed(word string) Unit {
	switch strings.Trim(strings.ToLower(Fold(word)), "()[] .") {
	case "ft", "foot", "feet", "'":
		return InFeet
	case "in", "ins", "inch", "inches", `"`:
		return InInches
	case "mm", "millimetre", "millimetres", "millimeter", "millimeters":
		return InMillimetres
	case "cm", "centimetre", "centimetres", "centimeter", "centimeters":
		return InCentimetres
	case "m", "metre", "metres", "meter", "meters":
		return InMetres
	}
	return NoUnit
}

// Notation is a way of writing a length.
type Notation uint8

// The notations a table may be written in.
const (
	NoNotation          Notation = iota
	FeetInchesEighths            // 3-4-6, 3-4-6+ (a sixteenth more), 3-4-6-
	OldPrint                     // 1-44: feet, then inches with the last digit eighths
	FeetInchesFractions          // 3' 4 3/4"
	InchesFractions              // 40 3/4
	Decimal                      // 40.75, or whole numbers, in the table's unit
)

// String is the notation's word as show and the guide print it.
func (n Notation) String() string {
	return [...]string{"", "feet-inches-eighths", "old print", "feet and inches", "inches and fractions", "decimal"}[n]
}
