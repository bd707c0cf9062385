package measure

// Style is how lengths are written on the way out: the builder's own by
// default, or what --units asks for. All that is said of a length is said by it.
type Style uint8

// The three styles of --units.
const (
	StyleFeet   Style = iota // feet-inches-eighths text beside decimal inches
	StyleInches              // decimal inches
	StyleMM                  // millimetres
)

// String is the style's word on the command line.
func (s Style) String() string { return [...]string{"feet", "inches", "mm"}[s] }

// Long writes a long length for a reader: 16' 3", 195 in or 4953 mm.
func (s Style) Long(l Length) string {
	if s == StyleFeet {
		return FeetInchesText(l)
	}
	return s.Small(l)
}

// Small writes a thickness or a width for a reader: 1 1/2 in, 1.5 in or 38.1 mm.
func (s Style) Small(l Length) string {
	switch s {
	case StyleFeet:
		return InchesText(l) + " in"
	case StyleMM:
		return tidy(l.Millimetres(), 1) + " mm"
	}
	return l.String()
}

// As writes a length for a reader of a table: as the table is written, or in the
// style where that is of another kind, so that all that is said of a book is in one
// notation.
func (s Style) As(form Form, l Length) string {
	own := form.style()
	if form.Unit == Fractions || s == own || s == StyleFeet && own == StyleInches {
		return form.say(l)
	}
	return s.Long(l)
}

// style is the style that a form is of.
func (f Form) style() Style {
	switch {
	case f.Metric():
		return StyleMM
	case f.Notation == FeetInchesEighths || f.Notation == OldPrint || f.Notation == FeetInchesFractions:
		return StyleFeet
	}
	return StyleInches
}

// say writes a length as Write does, with the unit of a bare number after it: what
// is said to a reader who does not see the table's heading.
func (f Form) say(l Length) string {
	switch f.Notation {
	case FeetInchesEighths, OldPrint, FeetInchesFractions:
		return f.Write(l)
	}
	switch f.Unit {
	case Fractions:
		return f.Write(l)
	case NoUnit, InInches:
		return f.Write(l) + " in"
	case InFeet:
		return f.Write(l) + " ft"
	}
	return f.Write(l) + " " + f.Unit.String()
}
