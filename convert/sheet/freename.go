package sheet

import (
	"fmt"
	"slices"
	"strings"
)

// mostName is how many letters a sheet's name may have.
const mostName = 31

// FreeName is the name wanted for a sheet, or the nearest to it that no other
// sheet bears, whatever its capitals: the builder's sheets keep their names.
func FreeName(taken []string, want string) string {
	is := func(name string) bool {
		return slices.ContainsFunc(taken, func(t string) bool { return strings.EqualFold(t, name) })
	}
	name := want
	for n := 1; is(name); n++ {
		mark := " (checked)"
		if n > 1 {
			mark = fmt.Sprintf(" (checked %d)", n)
		}
		kept := []rune(want)
		name = strings.TrimRight(string(kept[:min(len(kept), mostName-len(mark))]), " '") + mark
	}
	return name
}
