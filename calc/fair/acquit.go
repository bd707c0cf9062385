package fair

import (
	"math"
	"slices"
)

// acquit gives back for good the values that in the end are off by little: another
// was to blame for the alarm, and is looked for without them.
func (t *table) acquit(flags []Flag) []Flag {
	for {
		n := len(flags)
		flags = slices.DeleteFunc(flags, func(f Flag) bool {
			if math.Abs(t.alone(f.Spot)) >= suspicious {
				return false
			}
			t.sound[f.Spot] = true
			t.withdraw(f.Spot, true)
			return true
		})
		if len(flags) == n {
			return flags
		}
		flags = t.prune(t.flag(flags))
	}
}

// single puts one value in the place of several where with it withdrawn all those
// are sound, and it is not: one bad value is likelier than two.
func (t *table) single(flags []Flag) []Flag {
	for n := 0; n < len(flags); {
		if fewer, ok := t.instead(flags, flags[n].Spot); ok {
			flags, n = fewer, 0
			continue
		}
		n++
	}
	return flags
}

// instead looks for such a value among those that one flagged was judged by.
func (t *table) instead(flags []Flag, s Spot) (fewer []Flag, ok bool) {
	t.give(s, true)
	others := t.others(s)
	t.give(s, false)
	for _, c := range others {
		if !t.rows[c.Row].Given[c.At] || t.mendedBy(flags, c) < 2 {
			continue
		}
		t.withdraw(c, false)
		var kept []Flag
		var back []Spot
		for _, f := range flags {
			if math.Abs(t.alone(f.Spot)) >= suspicious {
				kept = append(kept, f)
				continue
			}
			t.withdraw(f.Spot, true)
			back = append(back, f.Spot)
		}
		_, alarm := t.worst(make([]int, len(t.rows)))
		if len(back) > 1 && !alarm && math.Abs(t.alone(c)) >= suspicious {
			return append(kept, Flag{Spot: c}), true
		}
		for _, f := range back {
			t.withdraw(f, false)
		}
		t.withdraw(c, true)
	}
	return nil, false
}

// mendedBy is how many of the values flagged are sound with another withdrawn.
func (t *table) mendedBy(flags []Flag, c Spot) int {
	t.give(c, false)
	defer t.give(c, true)
	n := 0
	for _, f := range flags {
		if math.Abs(t.alone(f.Spot)) < suspicious {
			n++
		}
	}
	return n
}
