package measure

// Form is how one table writes its lengths. It is decided for a whole table,
// never for a cell.
type Form struct {
	Unit         Unit // of a bare number
	Notation     Notation
	DecimalComma bool
}

// Metric says that bare numbers are of a metric unit.
func (f Form) Metric() bool {
	return f.Unit == InMillimetres || f.Unit == InCentimetres || f.Unit == InMetres
}

// Finest is what the form's rule is read to at the bench: a sixteenth of an inch
// or half a millimetre.
func (f Form) Finest() Length {
	if f.Metric() {
		return Millimetre / 2
	}
	return Sixteenth
}
