package hull

import (
	"strakebook/calc/finding"
	"strakebook/calc/setting"
)

// Rules is what a yard may set about this trade.
type Rules struct{}

// DefaultRules is what holds where the book and the command line say nothing.
func DefaultRules() Rules { return Rules{} }

// Settings lists the rules under the names the Settings sheet gives them.
func (r *Rules) Settings() []setting.Setting { return nil }

// Kinds is every kind of finding this trade makes.
func Kinds() []*finding.Kind { return nil }
