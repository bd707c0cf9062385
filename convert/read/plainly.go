package read

import (
	"regexp"
	"slices"
	"strings"

	"strakebook/calc/bevel"
)

// A convention is taken from words only where they plainly speak of it: a remark on
// stock, on marking or on the planking itself says nothing of how figures were
// measured, and what is not said is asked.

// clause is a part of a sentence between its commas and brackets.
type clause struct {
	sentence, text string
}

var (
	shortened = regexp.MustCompile(`\b(in|ins|ft|no|approx|thk|dia)\. `)
	stops     = regexp.MustCompile(`;|\n|\. |\.$`)
	commas    = regexp.MustCompile(`[,():]| - |--`)
)

// clausesOf is the clauses of words in lower case.
func clausesOf(words string) []clause {
	var all []clause
	for _, s := range stops.Split(shortened.ReplaceAllString(words, "$1 "), -1) {
		for _, c := range commas.Split(s, -1) {
			if c = strings.Trim(c, " .\"'"); c != "" {
				all = append(all, clause{s, c})
			}
		}
	}
	return all
}

var (
	ofTheOffsets = regexp.MustCompile(`\b(?:offsets?|lines|half-? ?breadths?|breadths|heights|depths|dimensions|figures|measurements|table|body plan|lines plan|sections?|everything|all)\b`)
	asDrawn      = regexp.MustCompile(`\b(?:drawn|faired|measured|taken|lofted|given|moulded|molded|laid (?:down|off))\b`)
	ofOneLine    = regexp.MustCompile(`\b(?:rabbet|deck|sheer|keel|transom|stem|chine|profile|waterline|buttock|diagonal)\b`)
	ofWork       = regexp.MustCompile(`\b(?:add|added|adding|deduct|deducted|deducting|subtract|subtracted|plus|minus|allow|allowing|mark|marked|get|getting|obtain|reach|convert|fit|fitted|plane|planed|run|runs|running|nail|hang|hung|paint|seal|caulk|cut|put|check|compare|compound|bedding|glue|leave|trim|dress|fasten|clamp|screw|batten)\b`)
)

// ofSurface says that a clause which names a surface at a place in it has the offsets
// there: it speaks of them, or of nothing else.
func ofSurface(c clause, at int) bool {
	switch {
	case ofWork.MatchString(c.text):
		return false
	case ofTheOffsets.MatchString(c.text):
		return true
	case ofOneLine.MatchString(c.text), ofWork.MatchString(c.sentence):
		return false
	}
	return at == 0 || asDrawn.MatchString(c.text)
}

// ofBevels is what the words about bevels speak of where they say how these are read.
var ofBevels = regexp.MustCompile(`\b(?:bevels?|degrees?|degs?|readings?|read|angles?|lifted|gauge|measured|seams?|edges?)\b|°`)

// ofGauge says that a clause speaks of how bevels are read.
func ofGauge(c clause, at int) bool {
	return at == 0 || ofBevels.MatchString(c.sentence)
}

var (
	aFace     = regexp.MustCompile(`\b(inside|inner|outside|outer) (?:face|side)\b|\bon the skin\b`)
	otherFace = regexp.MustCompile(`\b(?:blade|widths?)(?: (?:is|are|being|held|laid|measured))* (?:on|along|against|of|to)(?: the)? (?:inside|inner|outside|outer) (?:face|side)|\b(?:inside|inner|outside|outer)(?: face| side)?(?: is)?(?: the)? (?:wider|broader|narrower|greater|larger|smaller)`)
)

// bothFaces says that the words which have the gauge on one face name the other too,
// as of port and starboard.
func bothFaces(words string, is bevel.Gauge) bool {
	if is != bevel.OnInside && is != bevel.OnOutside {
		return false
	}
	found := aFace.FindAllString(otherFace.ReplaceAllString(strings.ToLower(words), " "), -1)
	return slices.ContainsFunc(found, func(f string) bool {
		outside := strings.HasPrefix(f, "out")
		return outside != (is == bevel.OnOutside)
	})
}
