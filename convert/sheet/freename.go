package sheet

import (
	"fmt"
	"slices"
	"strings"
	"unicode/utf16"
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

// LegalName is the nearest to a name that a sheet may bear: no more than 31
// letters, as spreadsheets count them, none of those that are forbidden, and not
// the one that they keep for themselves.
func LegalName(name string) string {
	name = strings.Map(func(r rune) rune {
		if r < ' ' || strings.ContainsRune(`[]:*?/\`, r) {
			return ' '
		}
		return r
	}, strings.ToValidUTF8(name, " "))
	name = strings.Trim(strings.Join(strings.Fields(name), " "), "' ")
	for len(utf16.Encode([]rune(name))) > mostName {
		r := []rune(name)
		name = strings.Trim(string(r[:len(r)-1]), "' ")
	}
	switch {
	case name == "":
		return "Sheet"
	case strings.EqualFold(name, "History"): // from memory
		return name + " 1"
	}
	return name
}
