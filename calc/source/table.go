package source

// Table is what one table of the builder's books was found to be, and how it
// was understood: what show prints and the guide holds.
type Table struct {
	Table    string // "offsets", "bevels", "strakes", "rack", "settings", ...
	Book     string
	Sheet    string
	Range    string // "B3:W14"
	Stations int
	Lines    int
	Unit     string
	Notation string
	Mixed    bool     // its lines are in several units, or one of them in none that is known
	Evidence []string // why it was read so, a clause each
	Skip     bool     // the guide says to leave it
	Digest   string   // of its figures, to know a copy by
}
