package measure

// Form is how one table writes its lengths. It is decided for a whole table,
// never for a cell.
type Form struct {
	Unit         Unit // of a bare number
	Notation     Notation
	DecimalComma bool
}
