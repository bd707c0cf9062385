package sheet

import "fmt"

// Refused is a file that is not read or written, and the way out.
type Refused struct {
	Doing string // "open", "write"
	Path  string
	Cause string // lower case, no full stop
	Hint  string // what to do, in the imperative
	Err   error  // what the system said, where it said something
}

// Error is the file and the cause.
func (r *Refused) Error() string {
	if r.Err != nil {
		return fmt.Sprintf("%s %s: %s: %v", r.Doing, r.Path, r.Cause, r.Err)
	}
	return fmt.Sprintf("%s %s: %s", r.Doing, r.Path, r.Cause)
}

// Unwrap is what the system said.
func (r *Refused) Unwrap() error { return r.Err }
