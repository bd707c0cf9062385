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
	aftEnd  = `(?:ap|aft(?:er)?(?:most)?(?: (?:end|perp(?:endicular)?|station))?|stern(?: ?post)?|transom|tuck|rudder ?post)\b`
	foreEnd = `(?:fp|fore(?:most)?(?: (?:end|perp(?:endicular)?|station))?|for(?:e)?ward(?: (?:end|perp(?:endicular)?|station))?|fwd(?: (?:end|perp(?:endicular)?))?|bows?|stem(?: ?head)?)\b`
	// Distances in words, and the end of what they are of.
	distanceOf = `\b(?:dist(?:ance)?s?|measured|positions?|x)\b\.?`
	alone      = `(?: ?$| of\b| from\b| ?[,;.()\[+-])`
	ofThe      = `(?: the)?(?: (?:face|heel|head|outside|inside|back|centre|center) of(?: the)?)? `
)

var (
	abbreviated = regexp.MustCompile(`\b([af])\. ?p\b\.?`)
	plusFore    = regexp.MustCompile(`(?:\+|\bplus|\bpositive)(?: ?ve)?(?: is)? (?:fwd|forward)\b`)
	plusAft     = regexp.MustCompile(`(?:\+|\bplus|\bpositive)(?: ?ve)?(?: is)? aft\b`)
	measuredAft = regexp.MustCompile(`\b(?:from|(?:forward|fwd) (?:of|from)|before|ahead of)` + ofThe + aftEnd)
	measuredFwd = regexp.MustCompile(`\b(?:from|abaft|aft (?:of|from)|behind)` + ofThe + foreEnd)
	towardsFore = regexp.MustCompile(distanceOf + `,?:? (?:fwd|forward)` + alone + `|^(?:fwd|forward) of\b`)
	towardsAft  = regexp.MustCompile(distanceOf + `,?:? (?:aft|abaft)` + alone + `|^(?:aft|abaft) of\b`)
	zeroAft     = regexp.MustCompile(`\b` + aftEnd + `(?: ?=| is| at) ?0(?:$|[^\d.])|` + distanceOf + `(?: (?:to|rel(?:ative)? to|re|wrt|off))?(?: the)? ` + aftEnd + alone + `|^(?:the )?` + aftEnd + ` to `)
	zeroFwd     = regexp.MustCompile(`\b` + foreEnd + `(?: ?=| is| at) ?0(?:$|[^\d.])|` + distanceOf + `(?: (?:to|rel(?:ative)? to|re|wrt|off))?(?: the)? ` + foreEnd + alone + `|^(?:the )?` + foreEnd + ` to `)
)

// sideFace is one face of a part, at whichever end of the boat that is.
var sideFace = regexp.MustCompile(`\b(?:aft|after|fore|forward|fwd) (?:face|side|edge)\b`)

// plainEnds is words in lower case, A.P. as ap and fwd. as fwd.
func plainEnds(words string) string {
	t := abbreviated.ReplaceAllString(strings.ToLower(measure.Fold(words)), "${1}p")
	t = strings.ReplaceAll(strings.ReplaceAll(t, "fwd.", "fwd"), "perp.", "perp")
	return sideFace.ReplaceAllString(t, "face")
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
		[2]*regexp.Regexp{towardsFore, towardsAft}, [2]*regexp.Regexp{zeroAft, zeroFwd})
}

// distanceHead begins the label of distances from an end of the boat.
var distanceHead = regexp.MustCompile(`^(?:x\b|dist|positions?\b|from\b|(?:aft|fwd|forward) (?:of|from)\b|abaft\b|measured from\b|stations? (?:from|aft of|fwd of)\b)`)

// fromEnd says that a label is of distances from an end of the boat that it names.
func fromEnd(label string) bool {
	return distanceHead.MatchString(plainEnds(label)) && originOf(label) != originUnsaid
}

// Parts of sentences on how stations are numbered and set out.
const (
	aPlace    = `(?:stations?|stas?|stns?|moulds?|molds?|frames?|sections?)`
	numbering = `\b(?:numbers?|numbering|` + aPlace + `(?: numbers)?)(?: are| is| being)?(?: (?:numbered|counted|run|runs|running|rise|rises|rising|increase|increases|increasing|go|goes|going))+`
	aftPoint  = `(?:ap|aft(?:er)?(?:most)? (?:end|perp(?:endicular)?)|aftermost|stern(?: ?post)?|transom|tuck|rudder ?post)\b`
	forePoint = `(?:fp|fore(?:most)? (?:end|perp(?:endicular)?)|foremost|forward (?:end|perp(?:endicular)?)|fwd (?:end|perp(?:endicular)?)|bows?|stem(?: ?head)?)\b`
	pointAt   = `(?:\b` + aPlace + `\.? ?(?:no\.? ?)?|^)(\d+)(?: ?=| is| being| lies| stands| on| at| the)+ `
	pointIs   = `(?: ?=| is| being| at| on)+ ?(?:` + aPlace + `\.? )?(\d+)$`
)

var (
	sentences    = regexp.MustCompile(`[;\n]|[.,:] `)
	runForward   = regexp.MustCompile(numbering + `(?: from aft)?(?: to| towards?)?(?: the)? (?:fwd|forward|bows?|stem)\b|` + numbering + ` from(?: the)? ` + aftEnd)
	runAft       = regexp.MustCompile(numbering + `(?: from (?:fwd|forward))?(?: to| towards?)?(?: the)? (?:aft|transom|stern)\b|` + numbering + ` from(?: the)? ` + foreEnd)
	stationAtAft = regexp.MustCompile(pointAt + aftPoint + `|\b` + aftPoint + pointIs)
	stationAtFwd = regexp.MustCompile(pointAt + forePoint + `|\b` + forePoint + pointIs)
	allDistances = regexp.MustCompile(`^(?:all |the )*(?:distances|positions|` + aPlace + `(?: (?:distances|positions|spacings?))?)\b`)
	setOut       = regexp.MustCompile(`\b(?:distances|positions|measured|set out|set off|laid off|spaced|spacings?)\b`)
)

// originSaid is what words over a table say of where stations are numbered and measured
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
	numbered = numbered.and(first(t, [2]*regexp.Regexp{runForward, runAft}))
	if allDistances.MatchString(t) && setOut.MatchString(t) && !strings.ContainsAny(t, "0123456789") {
		measured = first(t, [2]*regexp.Regexp{measuredAft, measuredFwd})
	}
	return numbered, measured
}
