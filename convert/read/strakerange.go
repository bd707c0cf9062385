package read

import (
	"fmt"
	"regexp"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// StrakeRange is a row named from one strake to another that may stand for more or
// fewer strakes than it is read as.
var StrakeRange = &finding.Kind{
	Code: "strake-range", Severity: finding.Warning, Title: "row of strakes that may be more or fewer",
	Why:    "Boards are chosen and joints placed for as many strakes as the row is read as.",
	Remedy: "name the row from the first to the last, as 1-15, with a count of 15, or give each strake a row of its own",
}

// rangeText is a name that looks to run from one strake to another.
var rangeText = regexp.MustCompile(`^(?:[a-z]{0,2}\d+ ?(?:-|to|thru|through|\.\.+) ?[a-z]{0,2}\d+(?:$|[ (])|[a-z](?: ?- ?| ?\.\.+ ?| (?:to|thru|through) )[a-z]$)`)

// spanned counts the strakes of rows that give no count and are named from one to
// another, "1-34", unless one of those has a row of its own; and tells of such rows
// that may be meant otherwise than they are read.
func (r *reader) spanned(list []hull.Strake) {
	type strake struct {
		skin hull.Skin
		name string
	}
	key := func(s hull.Strake, name string) strake { return strake{s.Skin, strings.ToLower(name)} }
	listed := map[strake]bool{}
	for _, s := range list {
		listed[key(s, s.Name)] = true
	}
	ranged := map[strake]hull.Strake{}
	for i, s := range list {
		again := i > 0 && s.Cell == list[i-1].Cell // the other side of the same row
		doubt := func(format string, words ...any) {
			if !again {
				r.add(finding.Finding{Kind: StrakeRange, Cell: s.Cell, Reads: s.Name, Text: fmt.Sprintf("%q ", s.Name) + fmt.Sprintf(format, words...)})
			}
		}
		many := s.Spanned()
		names := many.Names()
		own := ""
		if n := s.Span(); n > 1 {
			for _, name := range names {
				if listed[key(s, name)] && !strings.EqualFold(name, s.Name) {
					own = name
					break
				}
			}
			if s.Count.OK() && s.Count.Value != n {
				doubt("names %d %ss and the count beside it is %d: the count holds", n, s.Skin, s.Count.Value)
				continue
			}
		}
		switch {
		case own != "" && s.Count.OK():
			doubt("is %d %ss, and %q has a row of its own beside them", len(names), s.Skin, own)
		case own != "":
			doubt("is read as one %s, for %q has a row of its own", s.Skin, own)
		case s.Count.OK():
		case len(names) > 1:
			list[i] = many
			r.add(finding.Finding{Kind: ConventionRead, Cell: s.Cell, Reads: s.Name,
				Text: fmt.Sprintf("%q is read as the %d %ss from %s to %s: no count is given", s.Name, len(names), s.Skin, names[0], names[len(names)-1])})
		case rangeText.MatchString(strings.ToLower(measure.Fold(s.Name))):
			doubt("is read as one %s: from which strake to which is not understood", s.Skin)
		}
		if names = list[i].Names(); s.Span() != len(names) {
			continue
		}
		for _, name := range names {
			first, twice := ranged[key(s, name)]
			ranged[key(s, name)] = s
			if twice && first.Cell != s.Cell && !strings.EqualFold(first.Name, s.Name) && (first.Side == s.Side || first.Side == hull.BothSides || s.Side == hull.BothSides) {
				doubt("and %q both stand for %s %s", first.Name, s.Skin, name)
				break
			}
		}
	}
}
