package measure

import "fmt"

// Fault is what keeps a text from being a measure.
type Fault uint8

// The faults of a text.
const (
	NotRead     Fault = iota // not in the notation
	InchesOver               // inches above 11 with feet before them
	EighthsOver              // eighths above 7
	TwoWays                  // it can be read in two ways
	UnitOpen                 // a bare number where no unit is known
	TooFar                   // beyond what any hull measures
	DateSeen                 // a date: what a spreadsheet makes of 3-4-6
)

// ReadError is a text that could not be read: what it says and what was
// expected of it.
type ReadError struct {
	Text     string
	Fault    Fault
	Expected string
	Ways     []Length // of TwoWays
}

// Error is what was read and what was expected.
func (e *ReadError) Error() string { return fmt.Sprintf("reads %q: expected %s", e.Text, e.Expected) }

func notRead(text, expected string) error { return &ReadError{text, NotRead, expected, nil} }
