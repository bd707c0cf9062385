// Package fair judges rows of bare numbers: gaps, jumps, smoothness. It knows
// nothing of boats, units, cells or findings.
package fair

// Rules is how strict the judging is.
type Rules struct{}

// DefaultRules is what holds where nothing else is said.
func DefaultRules() Rules { return Rules{} }
