package read

import (
	"regexp"
	"strings"

	"strakebook/calc/measure"
)

// origin is the end of the boat that stations are numbered or measured from.
type origin uint8

const (
	originUnsaid origin = iota
	fromFore
	fromAft
	originTwo // said two ways
)

// and is what two sayings come to.
func (o origin) and(other origin) origin {
	switch {
	case o == originUnsaid || o == other:
		return other
	case other == originUnsaid:
		return o
	}
	return originTwo
}

// other is the other end.
func (o origin) other() origin {
	switch o {
	case fromFore:
		return fromAft
	case fromAft:
		return fromFore
	}
	return o
}

// The ends of a boat in the words of the trade: common practice, no source.
const (
	aftEnd  = `(?:ap|aft(?:er)?(?:most)?(?: (?:end|perp(?:endicular)?|station|face))?|stern(?: ?post)?|transom|tuck|rudder ?post)\b`
	foreEnd = `(?:fp|fore(?:most)?(?: (?:end|perp(?:endicular)?|station|face))?|for(?:e)?ward(?: (?:end|perp(?:endicular)?|station))?|fwd(?: (?:end|perp(?:endicular)?))?|bows?|stem(?: ?head)?)\b`
	ofThe   = `(?: the)?(?: (?:face|fore side|aft side|after side|heel|head|outside|inside|back|centre|center) of(?: the)?)? `
)

var (
	abbreviated = regexp.MustCompile(`\b([af])\. ?p\b\.?`)
	plusFore    = regexp.MustCompile(`(?:\+|\bplus|\bpositive)(?: ?ve)?(?: is)? (?:fwd|forward)\b`)
	plusAft     = regexp.MustCompile(`(?:\+|\bplus|\bpositive)(?: ?ve)?(?: is)? aft\b`)
	measuredAft = regexp.MustCompile(`\b(?:from|(?:forward|fwd) (?:of|from)|before|ahead of)` + ofThe + aftEnd)
	measuredFwd = regexp.MustCompile(`\b(?:from|abaft|aft (?:of|from)|behind)` + ofThe + foreEnd)
	towardsFore = regexp.MustCompile(`\b(?:fwd|forward)\b`)
	towardsAft  = regexp.MustCompile(`\b(?:aft|abaft)\b`)
	anAftEnd    = regexp.MustCompile(`\b` + aftEnd)
	aForeEnd    = regexp.MustCompile(`\b` + foreEnd)
)

// plainEnds is words in lower case, A.P. as ap and fwd. as fwd.
func plainEnds(words string) string {
	t := abbreviated.ReplaceAllString(strings.ToLower(measure.Fold(words)), "${1}p")
	return strings.ReplaceAll(strings.ReplaceAll(t, "fwd.", "fwd"), "perp.", "perp")
}

// first is the first of some pairs of words, for aft and for fore, that a text holds.
func first(t string, pairs ...[2]*regexp.Regexp) origin {
	for _, p := range pairs {
		said := originUnsaid
		if p[0].MatchString(t) {
			said = fromAft
		}
		if p[1].MatchString(t) {
			said = said.and(fromFore)
		}
		if said != originUnsaid {
			return said
		}
	}
	return originUnsaid
}

// originOf is where the distances under a label are measured from: Distance from AP,
// Aft of FP, x forward of transom. What increases forward is from aft.
func originOf(label string) origin {
	return first(plainEnds(label), [2]*regexp.Regexp{plusFore, plusAft}, [2]*regexp.Regexp{measuredAft, measuredFwd},
		[2]*regexp.Regexp{towardsFore, towardsAft}, [2]*regexp.Regexp{anAftEnd, aForeEnd})
}

// distanceHead begins the label of distances from an end of the boat.
var distanceHead = regexp.MustCompile(`^(?:x\b|dist|positions?\b|from\b|(?:aft|fwd|forward) (?:of|from)\b|abaft\b|measured from\b|stations? (?:from|aft of|fwd of)\b)`)

// fromEnd says that a label is of distances from an end of the boat that it names.
func fromEnd(label string) bool {
	return distanceHead.MatchString(plainEnds(label)) && originOf(label) != originUnsaid
}

var (
	sentences    = regexp.MustCompile(`[;\n]|[.,:] `)
	ofStations   = regexp.MustCompile(`\b(?:stations?|stas?|stns?|moulds?|molds?|frames?|sections?|distances?|positions?|numbers?|numbered|numbering)\b`)
	ofNumbers    = regexp.MustCompile(`\b(?:numbers?|numbered|numbering|counted|counting|count|named|lettered)\b`)
	ofDistances  = regexp.MustCompile(`\b(?:distances?|positions?|measured|set out|set off|spaced|placed)\b`)
	runForward   = regexp.MustCompile(`\b(?:runs?|running|rises?|rising|increas\w+|counts?|counted|goes|going|numbered|numbering)(?: from aft)?(?: to| towards?)?(?: the)? (?:fwd|forward|bows?|stem)\b|\b(?:aft|stern|transom|ap) (?:to|towards?)(?: the)? ` + foreEnd)
	runAft       = regexp.MustCompile(`\b(?:runs?|running|rises?|rising|increas\w+|counts?|counted|goes|going|numbered|numbering)(?: from (?:fwd|forward))?(?: to| towards?)?(?: the)? (?:aft|stern|transom)\b|\b(?:fwd|forward|bow|stem|fp) (?:to|towards?)(?: the)? ` + aftEnd)
	stationAtAft = regexp.MustCompile(`(?:\b(?:stations?|stas?|stns?|moulds?|molds?|frames?|sections?|no)\.? ?|^)(?:no\.? ?)?(\d+)(?: ?=| is| being| lies| stands| on| at| the)+ ` + aftEnd + `|\b` + aftEnd + `(?: ?=| is| being| at| on)+ ?(?:station|sta\.?|stn\.?|mould|mold|frame|section)? ?(\d+)\b`)
	stationAtFwd = regexp.MustCompile(`(?:\b(?:stations?|stas?|stns?|moulds?|molds?|frames?|sections?|no)\.? ?|^)(?:no\.? ?)?(\d+)(?: ?=| is| being| lies| stands| on| at| the)+ ` + foreEnd + `|\b` + foreEnd + `(?: ?=| is| being| at| on)+ ?(?:station|sta\.?|stn\.?|mould|mold|frame|section)? ?(\d+)\b`)
)

// said is what words over a table say of where stations are numbered and measured
// from, and the words that do.
type originSaid struct {
	numbered, measured origin
	by                 string
}

// originsIn is what some words say of it: Station 0 is at the after perpendicular,
// numbers run forward; distances from AP.
func originsIn(words []string) (all originSaid) {
	for _, w := range words {
		for _, t := range sentences.Split(plainEnds(w), -1) {
			t = strings.Trim(t, " .")
			if strings.Contains(" "+t, " not ") {
				continue
			}
			numbered, measured := originsOf(t)
			if all.by == "" && (numbered != originUnsaid || measured != originUnsaid) {
				all.by = w
			}
			all.numbered, all.measured = all.numbered.and(numbered), all.measured.and(measured)
		}
	}
	return all
}

// originsOf is what one sentence says.
func originsOf(t string) (numbered, measured origin) {
	for _, p := range []struct {
		re   *regexp.Regexp
		zero origin
	}{{stationAtAft, fromAft}, {stationAtFwd, fromFore}} {
		if m := p.re.FindStringSubmatch(t); m != nil {
			if n := m[1] + m[2]; n == "0" || n == "1" {
				numbered = numbered.and(p.zero)
			} else {
				numbered = numbered.and(p.zero.other())
			}
		}
	}
	if !ofStations.MatchString(t) {
		return numbered, measured
	}
	numbered = numbered.and(first(t, [2]*regexp.Regexp{runForward, runAft}))
	switch said := first(t, [2]*regexp.Regexp{measuredAft, measuredFwd}); {
	case ofNumbers.MatchString(t), !ofDistances.MatchString(t):
		numbered = numbered.and(said)
	default:
		measured = said
	}
	return numbered, measured
}
