package read

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strings"

	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// Where no gauge reads degrees, yards give a bevel as a rise: so many sixteenths to the
// inch, so much in 12, per cent. Its tangent is then the rise on a run of one.

// rise is what the figures of some bevels are of, where they are no degrees.
type rise struct {
	one   float64 // the tangent of a bevel given as 1; 0 for degrees
	inch  float64 // that of one given as an inch, marked so; 0 where inches say nothing
	open  bool    // they are of something that no bevel follows from
	words string  // what says so
}

const (
	aRun    = ` ?(?:\bto|\bper|\bin|\bon|\ban?|/) ?(?:(?:the|an?|one|each|every|1) )?`
	parts16 = `(sixteenths?|16 ?ths?|1/16(?:ths?|s)?|eighths?|8 ?ths?|1/8(?:ths?|s)?|thirty-?seconds?|32 ?nds?|1/32(?:nds?|s)?)(?: ?"| (?:of )?(?:an? |the )?in(?:ch(?:es)?)?\b\.?)?`
	whole   = `(?:(inch\b|in\b|")|12\b|twelve\b|foot\b|ft\b)`
)

var (
	risePerCent = regexp.MustCompile(`(?:^|[^\d ]) *(?:%|per ?cent\b)|\bpercentages?\b`)
	riseParts   = regexp.MustCompile(parts16 + aRun + whole)
	riseInches  = regexp.MustCompile(`(?:^|[^\d/ ]) *(?:\binch(?:es)?\b|\bins?\.|\bins?\b(?: ?/| per\b))` + aRun + whole + `|(?:^|[^\d ]) *\bin(?:s|\.)? ?(?:/|per) ?(?:(in\b|inch\b)|ft\b|foot\b|12\b)`)
	riseIn      = regexp.MustCompile(`\brises?\b(?: of \w+)?` + aRun + `(12|twelve|ten|10|hundred|100|foot|inch)\b|\bbevels?[ ,:(]+(?:in|per|to) (12|twelve)\b`)
	riseMetric  = regexp.MustCompile(`\bmm` + aRun + `(10|100|1000|cm|m|metre|meter)\b`)
	riseRun     = regexp.MustCompile(`\brise (?:over|/|to) (?:the )?run\b|\btangents\b|\btangent of\b`)
	riseOpen    = regexp.MustCompile(`(?:^|[^\d/ ]) *\b(?:mm|millimet\w+|inch(?:es)?|sixteenths|eighths|16ths|8ths|1/(?:8|16|32)|ins?\.)[^.;]*\b(?:on|in|over|to|per|through|across) (?:the |a )?(?:plank'?s? )?thickness\b|\bdifference\b[^.;]* faces\b|\bbevels?[ ,:;(\[]*(?:given in |measured in |in )?(?:1/8|1/16|1/32|mm|cm|millimet\w+|inches|ins?\.|sixteenths|16ths|eighths|8ths)(?:\W|$)`)
	riseElse    = regexp.MustCompile(`\b(?:1 ?: ?n|1 in n|slopes?|ratios?|gradients?|grads?|gons?|radians?|minutes)\b`)
	degreeWords = regexp.MustCompile(`\bdeg(?:s|rees?)?\b|°`)
	bevelWords  = regexp.MustCompile(`\bbevels?\b|\breadings?\b|\bangles?\b`)
)

// riseSaid is what one text says of the figures of bevels; degrees is true where it says
// that they are such.
func riseSaid(text string) (said rise, degrees bool) {
	t := strings.ToLower(measure.Fold(text))
	if i := strings.Index(t, "scale"); i >= 0 {
		t = t[:i] // 1 in. to the foot is then the drawing's
	}
	said.words = text
	over := func(m []string, from int, one float64) rise {
		r := rise{one: one, inch: 1, words: text}
		if slices.ContainsFunc(m[from:], func(s string) bool { return s != "" }) {
			return r
		}
		r.one, r.inch = one/12, 1.0/12
		return r
	}
	if m := riseParts.FindStringSubmatch(t); m != nil {
		of := map[string]float64{"s": 16, "1": 16, "e": 8, "8": 8, "t": 32, "3": 32}[m[1][:1]]
		if rest, ok := strings.CutPrefix(m[1], "1/"); ok {
			of = map[string]float64{"1": 16, "8": 8, "3": 32}[rest[:1]]
		}
		said = over(m, 2, 1/of)
	} else if m := riseIn.FindStringSubmatch(t); m != nil {
		runs := map[string]float64{"12": 12, "twelve": 12, "foot": 12, "ten": 10, "10": 10, "hundred": 100, "100": 100, "inch": 1}[m[1]+m[2]]
		said.one, said.inch = 1/runs, 1/runs
	} else if m := riseInches.FindStringSubmatch(t); m != nil {
		said = over(m, 1, 1)
	} else if m := riseMetric.FindStringSubmatch(t); m != nil {
		said.one = 1 / map[string]float64{"10": 10, "cm": 10, "100": 100, "1000": 1000, "m": 1000, "metre": 1000, "meter": 1000}[m[1]]
	} else if risePerCent.MatchString(t) {
		said.one = 0.01
	} else if riseRun.MatchString(t) {
		said.one = 1
	} else {
		said.open = riseOpen.MatchString(t) || riseElse.MatchString(t) && bevelWords.MatchString(t) && !degreeWords.MatchString(t)
	}
	return said, degreeWords.MatchString(t)
}

// riseOf is what the figures of some bevels are of, by their own headings and title,
// else by what the sheet says of bevels. What is no plain rise, or is said to be two
// things, is asked.
func (r *reader) riseOf(own []string, p *page, at source.Cell) rise {
	remarks, titles := p.sheetWords()
	for _, words := range [][]string{own, slices.DeleteFunc(append(remarks, titles...), func(t string) bool {
		return !bevelWords.MatchString(strings.ToLower(t))
	})} {
		found, degrees := rise{}, false
		for _, w := range words {
			said, in := riseSaid(w)
			degrees = degrees || in
			if said.one == 0 && !said.open || found.words != "" && found.one == said.one {
				continue
			}
			said.open = said.open || found.words != ""
			found = said
		}
		switch {
		case found.words == "" && degrees:
			return rise{}
		case found.words == "":
			continue
		case found.open || degrees:
			found.open = true
			r.add(finding.Finding{Kind: ConventionOpen, Cell: at, Reads: found.words,
				Text: fmt.Sprintf("%q does not say how many degrees a bevel is: they were left", found.words),
				Do:   "write the bevels in degrees off square; or as a rise, with words over them that say which: sixteenths to the inch, inches to the inch, rise in 12, per cent"})
		}
		return found
	}
	return rise{}
}

// riseTold tells how the rises of a table were read, by the first of them.
func (r *reader) riseTold(in rise, b *bevel.Readings) {
	if in.one == 0 || in.open {
		return
	}
	b.Rise = in.one
	for _, s := range b.Seams {
		for _, v := range s.Readings {
			if v.OK() && v.Value != 0 {
				r.add(finding.Finding{Kind: ConventionRead, Cell: b.Cell, Reads: in.words,
					Text: fmt.Sprintf("the book says the bevels are rises, %q: the first, %q, is read as %s degrees", in.words, v.Text, v.Value.Round(0.01).Write())})
				return
			}
		}
	}
}

// degreesIn is words or a mark that make an angle degrees, whatever stands over it.
var degreesIn = regexp.MustCompile(`°|\bdeg`)

// angle is a bevel's rise as degrees. A part of an inch is no part of a sixteenth: that
// wants its mark, 1/8".
func (in rise) angle(c sheet.Cell) (measure.Angle, string) {
	text := c.Text
	if c.Kind == sheet.Number && !strings.ContainsAny(text, "/%") { // else shown as a fraction
		text = plainNumber(c.Number)
	}
	t := strings.ToLower(measure.Fold(text))
	percent, isPercent := strings.CutSuffix(t, "%")
	if degreesIn.MatchString(t) {
		a, err := measure.ParseAngle(text)
		if err != nil {
			return 0, "a rise, or degrees"
		}
		return a, ""
	}
	one := in.one
	bare := strings.TrimSpace(strings.TrimRight(strings.TrimSuffix(strings.TrimSuffix(t, "."), "in"), `" `))
	switch {
	case isPercent && c.Kind == sheet.Number:
		return atan(c.Number), ""
	case isPercent:
		one, bare = 0.01, strings.TrimSpace(percent)
	case bare != t && in.inch == 0:
		return 0, "a rise without a unit, as the words over it say"
	case bare != t:
		one = in.inch
	case in.one != in.inch && in.inch != 0 && bareFraction.MatchString(t):
		return 0, `how many of those parts, as 2, or inches marked so: 1/8"`
	}
	v, err := measure.ParseAngle(bare) // signs and fractions are written alike
	if tan := float64(v) * one; err == nil && math.Abs(tan) <= 1 {
		return atan(tan), ""
	}
	return 0, "a rise of no more than one to one"
}

// bareFraction is a fraction alone.
var bareFraction = regexp.MustCompile(`^[-+(]?\d+/\d+\)?$`)

// fineFraction is a fraction alone that is marked on rules, and on no gauge.
var fineFraction = regexp.MustCompile(`^[-+(]?\d+/(?:8|16|32|64)\)?$`)

// atan is the bevel of a rise on a run of one.
func atan(tan float64) measure.Angle { return measure.Angle(math.Atan(tan) * 180 / math.Pi) }

// step is the smallest step that a table's figures were read in, in degrees.
func (in rise) step(readings []measure.Angle) measure.Angle {
	if in.one == 0 {
		return step(readings)
	}
	written := make([]measure.Angle, len(readings))
	for i, v := range readings {
		written[i] = measure.Angle(math.Tan(float64(v)*math.Pi/180) / in.one)
	}
	return atan(float64(step(written)) * in.one)
}
