package read

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// phrase is words that state a convention.
type phrase[T any] struct {
	re *regexp.Regexp
	is T
}

var surfaces = []phrase[hull.Surface]{
	{regexp.MustCompile(`\bbetween (the )?(two )?skins\b`), hull.BetweenSkins},
	{regexp.MustCompile(`\b(to|is|are) (the )?outside( face)?( of| the)*( finished)?` + thick + ` (plank|skin|hull|shell)|\bto (the )?outside$|\boutside of( the)?` + thick + ` plank(s|ing)?\b`), hull.OutsidePlanking},
	{regexp.MustCompile(`\b(to|is|are) (the )?inside( face)?( of| the)*` + thick + ` (plank|skin|strip|shell)|\bto (the )?inside$|\binside of( the)?` + thick + ` (plank(s|ing)?|strips?)\b|\bon the moulds\b|\bmoulded offsets\b`), hull.InsidePlanking},
}

// thick is a thickness that may stand before the planking it is of: 3/4", 20 mm.
const thick = `(?: (?:\d+ )?\d[\d/.,]* ?(?:"|in\.?|ins\.?|inch|mm|cm)?(?: thick)?)?`

// planking is words that say how thick the planking is.
var planking = regexp.MustCompile(`\bplank(?:s|ing)?(?:'s)?(?: (?:thickness|is|are|to be|of|finished|finishes|thick))*[ :,=]+(?:\d+ )?\d[\d/.,]* ?(?:"|in\b|ins\b|inch|mm\b|cm\b)|\d ?(?:"|in\.?|ins\.?|inch(?:es)?|mm|cm)(?: thick| finished| cedar| larch| pine| oak| fir)* plank(?:s|ing)?\b`)

var gauges = []phrase[bevel.Gauge]{
	{regexp.MustCompile(`\boff square\b`), bevel.OffSquare},
	{regexp.MustCompile(gaugeHeld + `(?:inside|inner) (?:face|side)\b|` + gaugeHeld + `skin\b`), bevel.OnInside},
	{regexp.MustCompile(gaugeHeld + `(?:outside|outer) (?:face|side)\b`), bevel.OnOutside},
}

// gaugeHeld is words that say what the stock of the gauge was held against, up to that.
const gaugeHeld = `\b(?:gauge|stock)(?: of the (?:gauge|bevel))?(?: (?:stock|is|was|were|being|held|laid|set|kept|flat|read|used|lying|bearing|always))* (?:on|along|against|to|upon) (?:the )?`

var planes = []phrase[bool]{
	{regexp.MustCompile(`\b(?:` + stationWords + ` plane|plane of (?:the |each )?` + stationWords + `|along (?:the |each )` + stationWords + `|(?:lifted|taken|measured|read|bevels?)\b[^.;]*\bathwartships?)\b`), true},
	{regexp.MustCompile(`\bsquare to the (\w+ )?(edge|seam)\b`), false},
}

// stationWords is what the places where bevels are lifted are called.
const stationWords = `(?:stations?|frames?|moulds?|molds?|sections?)`

// squareToPlane is words that name the stations' plane and not what lies in it.
var squareToPlane = regexp.MustCompile(`\b(?:square|normal|right angles) to (?:the )?(?:plane of (?:the )?)?` + stationWords + `\b`)

// denied is what words say that something is not: it states nothing.
var denied = regexp.MustCompile(`\b(?:not|never)\b[^,;:.()]*`)

// saidOf is what the words over a table and about its sheet state of a
// convention, in clauses that speak of it; nil for any that name it.
func saidOf[T comparable](all []phrase[T], words []string, speaks func(c clause, at int) bool) (said spoken[T]) {
	for _, w := range words {
		t := strings.ToLower(measure.Fold(w))
		t = squareToPlane.ReplaceAllString(denied.ReplaceAllString(t, " "), " ")
		clauses := []clause{{t, t}}
		if speaks != nil {
			clauses = clausesOf(t)
		}
		for _, c := range clauses {
			for _, p := range all {
				at := p.re.FindStringIndex(c.text)
				if at == nil || speaks != nil && !speaks(c, at[0]) {
					continue
				}
				if said.by != "" && p.is != said.is {
					return spoken[T]{by: said.by, two: true}
				}
				said.is, said.by = p.is, w
			}
		}
	}
	return said
}

// saidAbout is what a table's own words and the remarks of its sheet state of a
// convention; where they are silent, what the titles of other tables there do.
func saidAbout[T comparable](all []phrase[T], own []string, p *page, speaks func(c clause, at int) bool) spoken[T] {
	remarks, titles := p.sheetWords()
	if said := saidOf(all, append(slices.Clone(own), remarks...), speaks); said.by != "" {
		return said
	}
	return saidOf(all, titles, speaks)
}

// wordsAbout is a table's headings and its caption.
func (t *stationTable) wordsAbout() []string {
	return append(t.ownWords(), t.caption...)
}

// surfaceOf is the surface that some offsets are to: as set, else as their words
// and those of their sheet say. What they say of the planking's thickness is told, and not used:
// each strake has its own.
func (r *reader) surfaceOf(own []string, p *page, at source.Cell) hull.Surface {
	remarks, titles := p.sheetWords()
	for _, w := range slices.Concat(own, remarks, titles) {
		if planking.MatchString(strings.ToLower(measure.Fold(w))) {
			r.add(finding.Finding{Kind: ConventionRead, Cell: at, Reads: w,
				Text: fmt.Sprintf("words of the book tell the planking's thickness, and the thickness listed for each strake is what is used: %q", w)})
			break
		}
	}
	words := saidAbout(surfaces, own, p, ofSurface)
	if who := r.stated["offsets are to"]; who.by != "" {
		return over(r, "offsets are to", r.rules.Hull.OffsetsTo, who, words, at, hull.Surface.String)
	}
	switch {
	case words.two:
		r.torn[at] = true
		r.add(finding.Finding{Kind: ConventionTwo, Cell: at, Text: "the book's words about the surface of the offsets name two"})
	case words.is != hull.SurfaceUnstated:
		r.add(finding.Finding{Kind: ConventionRead, Cell: at, Text: fmt.Sprintf("the book says the offsets are to the %s", words.is)})
	}
	return words.is
}

// gauge is what some bevels stand for: as set, else as the book's own words say. A
// gauge's face that is set is no word on readings that are off square, nor the other
// way about, where their own words know better.
func (r *reader) gauge(own []string, p *page, b bevel.Readings) bevel.Gauge {
	words, set, who, at := saidAbout(gauges, own, p, ofGauge), r.rules.Bevel.Gauge, r.stated["bevels read"], b.Cell
	if bothFaces(words.by, words.is) {
		words = spoken[bevel.Gauge]{by: words.by, two: true}
	}
	if g := r.gaugeOfGuide(); g != bevel.GaugeUnstated && who.by != byCommand {
		set, who = g, stated{by: byGuide}
	}
	fits := func(g bevel.Gauge) bool { return g != bevel.GaugeUnstated && b.AboutNinety() == (g != bevel.OffSquare) }
	switch {
	case who.by != "" && who.by != byGuide && fits(words.is) && !fits(set):
		r.add(finding.Finding{Kind: ConventionTwo, Cell: at, Also: who.cells(), Reads: words.by,
			Text: fmt.Sprintf("%s, which the figures of this table cannot be: they were read %s, as the words over it say", who.says("bevels read", set.String()), words.is),
			Do:   "nothing, if the words are right"})
	case who.by != "":
		return over(r, "bevels read", set, who, words, at, bevel.Gauge.String)
	case words.two:
		r.add(finding.Finding{Kind: ConventionTwo, Cell: at, Text: "the book's words about how bevels are read say two things"})
	case words.is != bevel.GaugeUnstated:
		r.add(finding.Finding{Kind: ConventionRead, Cell: at, Text: fmt.Sprintf("the book says the bevels are read: %s", words.is)})
	}
	return words.is
}

// inStation says that some bevels were lifted in the plane of the station: as set,
// else as the book's own words say.
func (r *reader) inStation(own []string, p *page, at source.Cell) bool {
	words := saidAbout(planes, own, p, nil)
	remarks, titles := p.sheetWords()
	odd := slices.IndexFunc(slices.Concat(own, remarks, titles), func(w string) bool {
		t := strings.ToLower(measure.Fold(w))
		return squareToPlane.MatchString(t) || slices.ContainsFunc(denied.FindAllString(t, -1), planes[1].re.MatchString)
	})
	if who := r.stated["lifted in station plane"]; who.by != "" {
		return over(r, "lifted in station plane", r.rules.Bevel.InStation, who, words, at, func(yes bool) string {
			return map[bool]string{true: "yes, in the plane of the station", false: "no, square to the edge"}[yes]
		})
	}
	switch {
	case odd >= 0 && !words.is:
		said := slices.Concat(own, remarks, titles)[odd]
		r.add(finding.Finding{Kind: ConventionOpen, Cell: at, Reads: said,
			Text: fmt.Sprintf("%q does not say in which plane the bevels were lifted: they are taken as square to the edge", said),
			Do:   "write over them \"square to the edge\" or \"in the plane of the stations\", or set \"lifted in station plane\""})
	case words.two:
		r.add(finding.Finding{Kind: ConventionTwo, Cell: at, Text: "the book's words about the plane in which bevels were lifted name two"})
	case words.is:
		r.add(finding.Finding{Kind: ConventionRead, Cell: at, Text: "the book says the bevels were lifted in the plane of the station"})
	}
	return words.is
}
