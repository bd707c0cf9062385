package sheet

// GuideRow is one line of a guide: where a table is and how it is to be read,
// over what would be found. Empty fields leave the finding to the program.
type GuideRow struct {
	Table    string
	Sheet    string
	Range    string
	Stations string // "across" or "down"
	Unit     string
	Notation string
	Skip     string // "yes" to leave the table
}
