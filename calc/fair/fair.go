// Package fair judges rows of bare numbers: which single value spoils the run
// of its row, and how smooth a row of readings is. It knows nothing of boats,
// units, cells or findings. Slices of unequal length are a programmer's
// mistake and panic.
package fair

// Row is one run of numbers at true spacing, in steps of its own resolution.
// X increases; Y means something only where Given.
type Row struct {
	X, Y   []float64
	Given  []bool
	Corner []int      // places before which the row has a corner: nothing is judged across it
	Ends   [2]float64 // how many times the bend next to it the first and the last value may bend the row; 0 for 8
	Above  bool       // nothing of the row is below nought
	Sides  [2][]int   // the rows that lie next to it on either side, the nearest first, all at levels of their own
	Level  float64    // at which it lies
	Near   []int      // the rows that should run much like it, the nearest first
}

// Rules is how strict the judging is.
type Rules struct {
	Alarm  float64 // a value so many times its doubt off what is made of it is flagged
	Sure   float64 // and so many times is sure
	PerRow int     // at most so many values are withdrawn from one row
	Least  int     // a row of fewer values is not judged along itself
	Floor  float64 // the scale is never taken below this, in steps
}

// DefaultRules is what was found best on hulls of our own formulas and on two
// published tables with seeded faults, and held to others kept apart: none of
// their 3,400 clean values is flagged. The figures are measured, not published.
func DefaultRules() Rules {
	return Rules{Alarm: 4.2, Sure: 6, PerRow: 2, Least: 6, Floor: 0.4}
}

// Opinion is what is made of a value without looking at it, and how far that may
// be out, in steps.
type Opinion struct{ Value, Sd float64 }

// Second gives another opinion of the values than their rows do, from whatever
// else is known of them. It is shown the rows with the values withdrawn so far
// not given.
type Second interface {
	// Opinion is what it makes of a row's value at a place; ok is false where it
	// makes nothing of it.
	Opinion(rows []Row, scale float64, row, at int) (o Opinion, ok bool)
	// Beside is the rows on whose values at the place that opinion rests.
	Beside(rows []Row, row, at int) []int
}

// Spot is one value: its row and its place there.
type Spot struct{ Row, At int }

// Flag is one value that is not believed.
type Flag struct {
	Spot
	Says  Opinion // what is made of it, the flagged values withdrawn
	Or    []Spot  // other values that would explain the alarm too
	Alone bool    // its row has no say in it, only the second opinion
}

// Region is a stretch of a row that no single value explains: not fair, or a
// corner.
type Region struct{ Row, From, To int }

// Judged is what there is to say about a table of rows.
type Judged struct {
	Scale   float64 // one for the whole table: a scale for each row lets one fault hide itself
	Flags   []Flag
	Regions []Region
	table   *table
}
