package read

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/calc/stock"
	"strakebook/convert/sheet"
)

// pricedBy is a heading that says by what measure a price is: Price/ft, $ per bd ft,
// Cost (£/m), per lf. What comes after is the measure.
var pricedBy = regexp.MustCompile(`^(?:(?:(?:unit|lumber|timber) )?(?:price|cost|rate)s?\b|` + currency + `\b|[$£€]|per\b)[^a-z0-9]*(?:\bin\b[ $£€]*)?(?:` + currency + `\b[^a-z0-9]*)?(?:per|an?|by the|each|/)?[ $£€/([]*(.*)$`)

// byMeasure says that a heading names a measure at all.
var byMeasure = regexp.MustCompile(`(?:(?:price|cost|rate)s?|^` + currency + `)\b.*(?:[/$£€]|\b(?:per|an?|by the|bf|lf|bdft|lm|mbf)\b)|[$£€] ?(?:/|per\b|a\b)|^per\b`)

// currency is what money is called in a heading.
const currency = `(?:eur|euros?|usd|dollars?|gbp|pounds?|sek|nok|dkk|chf|cad|aud|nzd)`

// pricesText is what a caption says of prices, whose measure is no length's.
var pricesText = regexp.MustCompile(`\b(?:prices?|priced|costs?) (?:in \S+ )?(?:an?|per|by the|by) [^;,.()]*`)

// priceMeasures is what a price may be of, under the meaning its column has.
var priceMeasures = map[string][]string{
	"price":      {"each", "board", "piece", "pc", "ea", "stick", "plank"},
	"footprice":  {"board foot", "board feet", "board ft", "bd foot", "bd ft", "bdft", "bf", "fbm"},
	"thousand":   {"mbf", "m bf", "mbm", "thousand", "thousand board feet", "thousand board foot", "thousand feet", "1000 bf", "1000 board feet", "1000 bd ft"},
	"runfoot":    {"foot", "ft", "lf", "lft", "lin ft", "lin foot", "lineal foot", "lineal ft", "linear foot", "linear ft", "running foot", "running ft", "run ft", "rft", "foot run", "ft run"},
	"runmetre":   {"m", "metre", "meter", "lm", "lin m", "linear m", "linear metre", "linear meter", "lineal metre", "lineal meter", "running metre", "running meter", "running m", "m run", "metre run", "meter run"},
	"cubicmetre": {"m3", "m^3", "cubic metre", "cubic meter", "cubic m", "cu metre", "cu meter", "cu m", "cbm"},
}

// priceHead is the meaning of a heading that says by what measure a price is; "" where
// the measure is not known. It is not ok for any other heading.
func priceHead(text string) (meaning string, ok bool) {
	t := strings.Join(strings.Fields(strings.ToLower(measure.Fold(strings.ReplaceAll(text, "³", "3")))), " ")
	if !byMeasure.MatchString(t) {
		return "", false
	}
	m := pricedBy.FindStringSubmatch(t)
	if m == nil {
		return "", false
	}
	of := strings.Join(strings.Fields(strings.NewReplacer(".", " ", "(", " ", ")", " ", "]", " ", "-", " ").Replace(m[1])), " ")
	for meaning, all := range priceMeasures {
		if slices.Contains(all, of) {
			if of == "m" && strings.ContainsRune(text, 'M') {
				return "", true // a metre, or a thousand feet
			}
			return meaning, true
		}
	}
	return "", of != "" || !strings.Contains(t, "price") && !strings.Contains(t, "cost")
}

// priced gives a board its price where that is not of the board itself: of a board
// foot, of a thousand, of so much of its length, or of its volume in the rough.
func (r *reader) priced(t *records, row int, b *stock.Board, what string) {
	if b.Price.OK() {
		r.pricedBeside(t, row, b, what)
		return
	}
	for _, meaning := range []string{"footprice", "thousand", "cubicmetre", "runfoot", "runmetre"} {
		if p := r.number(t, row, meaning, what); p.OK() {
			pricedOf(b, p, meaning)
			return
		}
	}
}

// pricedOf gives a board its price by what that is of: it stays without one where it is
// of a size that is not known.
func pricedOf(b *stock.Board, p source.Reading[float64], meaning string) {
	const metre = 1000 * measure.Millimetre
	switch meaning {
	case "price":
	case "footprice":
		b.PerFoot = true
	case "thousand":
		p.Value /= 1000
		b.PerFoot = true
	case "cubicmetre":
		if !b.Thickness.OK() || !b.Width.OK() || !b.Length.OK() {
			return
		}
		p.Value *= float64(b.Thickness.Value) / float64(metre) * float64(b.Width.Value) / float64(metre) * float64(b.Length.Value) / float64(metre)
	default:
		of := measure.Foot
		if meaning == "runmetre" {
			of = metre
		}
		if !b.Length.OK() {
			return
		}
		p.Value *= float64(b.Length.Value) / float64(of)
	}
	b.Price = p
}

// metric says that figures of a column show a metric unit of their own.
func (t *records) metric(field string) bool {
	cells, _ := t.column(field)
	return slices.ContainsFunc(cells, func(c sheet.Cell) bool {
		return max(measure.MarkedUnit(c.Text), formatUnit(c)) >= measure.InMillimetres
	})
}

// loneM is a heading that ends in the letter alone.
var loneM = regexp.MustCompile(`(?:\W|^)m\W*$`)

// pricesSaid tells how a price a foot was taken, since lumber is sold by two of them,
// and asks of a price per m where nothing else is metric: that may be of a thousand.
func (r *reader) pricesSaid(t *records, unit measure.Unit) {
	if col, ok := t.cols["runmetre"]; ok && unit < measure.InMillimetres && !t.metric("length") && loneM.MatchString(strings.ToLower(t.heads[col])) {
		r.add(finding.Finding{Kind: ConventionOpen, Cell: t.page.cell(t.head, col), Reads: t.heads[col],
			Text: fmt.Sprintf("%q may be a price of a metre or of a thousand feet, in a list that is not metric: the prices were left", t.heads[col])})
		delete(t.cols, "runmetre")
	}
	col, ok := t.cols["runfoot"]
	if head := strings.ToLower(measure.Fold(t.heads[col])); ok && !strings.Contains(head, "run") && !strings.Contains(head, "lin") && !strings.Contains(head, "lf") {
		r.add(finding.Finding{Kind: ConventionRead, Cell: t.page.cell(t.head, col), Reads: t.heads[col],
			Text: fmt.Sprintf("%q is read as the price of a foot of a board's length: a price of a board foot is headed so", t.heads[col])})
	}
}
