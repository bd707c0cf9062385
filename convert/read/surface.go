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
	{regexp.MustCompile(`\b(to|is|are) (the )?outside( face)?( of| the)*( finished)?` + thick + ` (plank|skin|hull|shell)|\bto (the )?outside$|\bto (the )?outside[,;.]|\boutside of( the)?` + thick + ` plank(s|ing)?\b`), hull.OutsidePlanking},
	{regexp.MustCompile(`\b(to|is|are) (the )?inside( face)?( of| the)*` + thick + ` (plank|skin|strip|shell)|\bto (the )?inside$|\bto (the )?inside[,;.]|\binside of( the)?` + thick + ` (plank(s|ing)?|strips?)\b|\bon the moulds\b|\bmoulded offsets\b`), hull.InsidePlanking},
}

// thick is a thickness that may stand before the planking it is of: 3/4", 20 mm.
const thick = `(?: (?:\d+ )?\d[\d/.,]* ?(?:"|in\.?|ins\.?|inch|mm|cm)?(?: thick)?)?`

// planking is words that say how thick the planking is.
var planking = regexp.MustCompile(`\bplank(?:s|ing)?(?:'s)?(?: (?:thickness|is|are|to be|of|finished|finishes|thick))*[ :,=]+(?:\d+ )?\d[\d/.,]* ?(?:"|in\b|ins\b|inch|mm\b|cm\b)|\d ?(?:"|in\.?|ins\.?|inch(?:es)?|mm|cm)(?: thick| finished| cedar| larch| pine| oak| fir)* plank(?:s|ing)?\b`)

var gauges = []phrase[bevel.Gauge]{
	{regexp.MustCompile(`\boff square\b`), bevel.OffSquare},
	{regexp.MustCompile(`\b(gauge|stock)\b.*\b(inside face|on the skin)\b`), bevel.OnInside},
	{regexp.MustCompile(`\b(gauge|stock)\b.*\boutside face\b`), bevel.OnOutside},
}

var planes = []phrase[bool]{
	{regexp.MustCompile(`\b(station plane|plane of the stations?)\b`), true},
	{regexp.MustCompile(`\bsquare to the (\w+ )?(edge|seam)\b`), false},
}

// saidOf is what the words over a table and about its sheet state of a
// convention, and the words; two where they state different things.
func saidOf[T comparable](all []phrase[T], words []string) (is T, by string, two bool) {
	var none T
	for _, w := range words {
		t := strings.ToLower(measure.Fold(w))
		if strings.Contains(t, " not ") {
			continue
		}
		for _, p := range all {
			if !p.re.MatchString(t) {
				continue
			}
			if by != "" && p.is != is {
				return none, by, true
			}
			is, by = p.is, w
		}
	}
	return is, by, false
}

// saidAbout is what a table's own words and the remarks of its sheet state of a
// convention; where they are silent, what the titles of other tables there do.
func saidAbout[T comparable](all []phrase[T], own []string, p *page) (is T, by string, two bool) {
	remarks, titles := p.sheetWords()
	if is, by, two = saidOf(all, append(slices.Clone(own), remarks...)); two || by != "" {
		return is, by, two
	}
	return saidOf(all, titles)
}

// wordsAbout is a table's headings and its caption.
func (t *stationTable) wordsAbout() []string {
	return append(t.ownWords(), t.caption...)
}

// surfaceOf is the surface that the words of some offsets, and of their sheet, say
// they are to. What they say of the planking's thickness is told, and not used:
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
	s, _, two := saidAbout(surfaces, own, p)
	switch {
	case two:
		r.torn[at] = true
		r.add(finding.Finding{Kind: ConventionTwo, Cell: at, Text: "the book's words about the surface of the offsets name two"})
	case s != hull.SurfaceUnstated:
		r.add(finding.Finding{Kind: ConventionRead, Cell: at, Text: fmt.Sprintf("the book says the offsets are to the %s", s)})
	}
	return s
}

// gauge is what a book's own words say its bevels stand for, and whether they
// were lifted in the plane of the station.
func (r *reader) gauge(own []string, p *page, at source.Cell) (bevel.Gauge, bool) {
	g, _, two := saidAbout(gauges, own, p)
	switch {
	case two:
		r.add(finding.Finding{Kind: ConventionTwo, Cell: at, Text: "the book's words about how bevels are read say two things"})
	case g != bevel.GaugeUnstated:
		r.add(finding.Finding{Kind: ConventionRead, Cell: at, Text: fmt.Sprintf("the book says the bevels are read: %s", g)})
	}
	inStation, _, two := saidAbout(planes, own, p)
	switch {
	case two:
		r.add(finding.Finding{Kind: ConventionTwo, Cell: at, Text: "the book's words about the plane in which bevels were lifted name two"})
	case inStation:
		r.add(finding.Finding{Kind: ConventionRead, Cell: at, Text: "the book says the bevels were lifted in the plane of the station"})
	}
	return g, inStation
}
