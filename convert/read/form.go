package read

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// evidence is how the cells of one table, or of one column, are written.
type evidence struct {
	texts     map[measure.Notation]int // readable in each notation
	only      map[measure.Notation]int // readable in that one alone
	unread    int                      // texts readable in none
	numbers   int                      // plain numbers that are not nought
	fractions int                      // of them, those shown as fractions
	dates     int
	marked    int          // texts that show their own unit
	shown     measure.Unit // the unit that number formats add to every number; NoUnit for none
	mixed     bool         // formats that add different units
	total     int
	decimal   int  // most places after the point of a number or a decimal text
	finest    int  // the largest denominator of a fraction in inches
	comma     bool // texts whose comma can only be decimal
	point     bool // texts with a decimal point
	twoParts  int  // texts of two figures parted by a hyphen: 10-4
	proved    bool // one of them, or another text, can be feet and inches only
	parted    bool // feet and inches parted by a hyphen: 1'-10 1/2
	old       bool // a figure with a leading nought, as only the old printing has: 0-04
	noughts   int  // inches after feet with a nought before them: 1' 01"
	single    int  // and those of one figure without: 1' 1"
}

// weigh looks at cells that should be lengths.
func weigh(cells []sheet.Cell) evidence {
	e := evidence{texts: map[measure.Notation]int{}, only: map[measure.Notation]int{}}
	bare := 0
	for _, c := range cells {
		e.total++
		switch c.Kind {
		case sheet.Number:
			e.decimal = max(e.decimal, places(c.Number))
			if c.Number == 0 {
				break
			}
			e.numbers++
			if strings.Contains(c.Format, "?/") {
				e.fractions++
				e.finest = max(e.finest, denominator(c.Number))
			}
			u := formatUnit(c)
			switch {
			case u == measure.NoUnit:
				bare++
			case e.shown == measure.NoUnit:
				e.shown = u
			case e.shown != u:
				e.mixed = true
			}
		case sheet.Date, sheet.Time:
			e.dates++
		case sheet.Text:
			if measure.IsDash(c.Text) {
				e.total--
				break
			}
			e.text(c.Text)
		default:
			e.total--
		}
	}
	if e.mixed || bare > 0 {
		e.shown = measure.NoUnit
	}
	return e
}

// text looks at one text.
func (e *evidence) text(text string) {
	if measure.MarkedUnit(text) != measure.NoUnit {
		e.marked++
	}
	all := measure.Notations(text)
	if len(all) == 0 {
		e.unread++
		return
	}
	for _, n := range all {
		e.texts[n]++
	}
	if len(all) == 1 {
		e.only[all[0]]++
	}
	t := measure.Fold(text)
	if m := twoPartText.FindStringSubmatch(t); m != nil {
		e.twoParts++
		n, _ := strconv.Atoi(m[1])
		e.proved = e.proved || n > 7 && n < 12
	} else if strings.ContainsAny(t, `'"`) {
		e.proved = true
	}
	if decimalComma.MatchString(t) {
		_, after, _ := strings.Cut(t, ",")
		e.comma, e.decimal = true, max(e.decimal, figuresOf(after))
	}
	if m := fractionPart.FindStringSubmatch(t); m != nil {
		n, _ := strconv.Atoi(m[1])
		e.finest = max(e.finest, n)
	}
	if _, after, ok := strings.Cut(t, "."); ok && len(all) > 0 && all[0] == measure.Decimal {
		e.point = true
		e.decimal = max(e.decimal, figuresOf(after))
	}
	e.parted = e.parted || partedFeet.MatchString(t)
	if noughtInches.MatchString(t) {
		e.noughts++
	} else if singleInches.MatchString(t) {
		e.single++
	}
	e.old = e.old || leadingNought.MatchString(t)
}

// figuresOf is how many places a text has behind its point or comma, its unit not
// counted; six at most.
func figuresOf(after string) int {
	return min(6, len(strings.TrimRight(after, "abcdefghijklmnopqrstuvwxyz. ")))
}

var (
	decimalComma  = regexp.MustCompile(`^-?(\d+,(\d{1,2}|\d{4,})|0,\d+)( ?[a-z]+)?$`)
	fractionPart  = regexp.MustCompile(`\d/(\d+)`)
	twoPartText   = regexp.MustCompile(`^\d+ ?- ?(\d{1,2})$`)
	partedFeet    = regexp.MustCompile(`^\d+ ?' ?- ?\d`)
	noughtInches  = regexp.MustCompile(`'[ -]*0\d+[ "]*$`)
	singleInches  = regexp.MustCompile(`'[ -]*[1-9](?:[ "]|$)`)
	leadingNought = regexp.MustCompile(`^\d+[- ]+0\d{1,2}$`)
)

// denominator is the finest part of an inch a number is whole in: 4 for 40.75;
// 0 where it is no such part.
func denominator(v float64) int {
	for d := 1; d <= 64; d *= 2 {
		if n := v * float64(d); n == float64(int64(n)) {
			return d
		}
	}
	return 0
}

// formatUnit is the unit that a number's own format adds to it: 0" mm".
func formatUnit(c sheet.Cell) measure.Unit {
	for _, part := range quotedPart.FindAllStringSubmatch(c.Format, -1) {
		if u := measure.UnitNamed(part[1] + part[2]); u != measure.NoUnit {
			return u
		}
	}
	return measure.NoUnit
}

var quotedPart = regexp.MustCompile(`"([^"]+)"|\\(["'])`)

// decision is the form of a table, why, and whether the unit of its bare numbers
// is still open.
type decision struct {
	form     measure.Form
	why      []string
	open     bool
	parted   bool   // its feet and inches are parted by hyphens
	bared    bool   // its inches after feet have no nought before them
	dates    dated  // how its dates are read
	unmarked bool   // some of its figures show no unit of their own
	doubted  bool   // its figures of two parts may be feet and inches, or inches and eighths
	against  string // what its heading says and its figures do not bear out
}

// decide is the form of a table or a column, from what it says of itself and
// from its cells. Said is what its heading or caption states, fallback the unit
// that Settings give a bare number, coarse the quantity that is written in feet
// as soon as in inches.
func decide(e evidence, said measure.Form, fallback measure.Unit, coarse bool) decision {
	d := decision{form: said, unmarked: e.numbers > 0 || e.texts[measure.Decimal] > e.marked || e.texts[measure.InchesFractions] > e.marked, parted: e.parted, bared: e.single > e.noughts}
	d.form.DecimalComma = e.comma && !e.point
	switch {
	case said.Unit != measure.NoUnit:
		d.why = append(d.why, "its heading or caption says "+said.Unit.String())
	case said.Notation != measure.NoNotation:
		d.why = append(d.why, "its heading or caption says "+said.Notation.String())
	}
	d.notation(e, said, coarse)
	if d.form.Unit == measure.NoUnit {
		d.unit(e, fallback, coarse)
	}
	if d.form.Notation == measure.FeetInchesEighths && said.Unit >= measure.InMillimetres {
		d.against, d.form.Unit = said.Unit.String(), measure.NoUnit
	}
	return d
}

// torn takes figures of two parts for what is in doubt, where the words over them
// name inches and parts of an inch that are no eighths behind feet.
func (d *decision) torn(e evidence, two bool) {
	if two && e.twoParts > 0 && d.form.Notation == measure.FeetInchesFractions {
		d.doubted, d.form.Notation = true, measure.Decimal
	}
}

// notation settles how the texts are written: as most of them are.
func (d *decision) notation(e evidence, said measure.Form, coarse bool) {
	best, most := measure.NoNotation, 0
	for _, n := range []measure.Notation{measure.FeetInchesEighths, measure.FeetInchesFractions, measure.InchesFractions, measure.Decimal, measure.OldPrint} {
		if e.texts[n] > most {
			best, most = n, e.texts[n]
		}
	}
	if best == measure.FeetInchesFractions && e.old && e.texts[measure.OldPrint] == most {
		best = measure.OldPrint // 0-04 is 4/8: nobody writes feet and inches so
	}
	// A width of 6-10 is as soon of six inches to ten, and 18-8 under inches of
	// sixteenths.
	if best == measure.FeetInchesFractions && e.twoParts > 0 && (!e.proved || !coarse || said.Unit != measure.NoUnit) && said.Notation == measure.NoNotation && said.Unit != measure.InFeet {
		d.doubted, d.form.Notation = true, measure.Decimal
		return
	}
	if best == measure.InchesFractions && e.texts[measure.Decimal] == most && e.finest < 2 {
		best = measure.Decimal
	}
	switch {
	case said.Notation == measure.FeetInchesFractions && best == measure.FeetInchesEighths, said.Notation == measure.NoNotation && most > 0:
		d.form.Notation = best
		d.why = append(d.why, fmt.Sprintf("%d of %d figures are written in %s", most, e.total, best))
	case said.Notation == measure.NoNotation:
		d.form.Notation = measure.Decimal
	}
}

// unit settles the unit of bare numbers where no heading has.
func (d *decision) unit(e evidence, fallback measure.Unit, coarse bool) {
	set := func(u measure.Unit, why string) {
		d.form.Unit = u
		d.why = append(d.why, why)
	}
	fine := e.finest >= 8 || e.finest == 4 && !coarse
	// The notations of feet and inches hold their own unit; a bare number among
	// them is asked about at its cell.
	switch n := d.form.Notation; {
	case n == measure.FeetInchesEighths || n == measure.OldPrint:
	case e.shown != measure.NoUnit:
		set(e.shown, "its number formats show "+e.shown.String())
	case fallback == measure.InFeet || fallback == measure.InInches:
		set(fallback, bySetting(fallback))
	case n == measure.FeetInchesFractions:
	case fine && (n == measure.InchesFractions || e.fractions == e.numbers):
		// Nobody writes eighths of anything but inches.
		set(measure.InInches, "fractions such as these are of inches")
	case fallback != measure.NoUnit && n == measure.InchesFractions && e.finest > 1:
		d.open = true // Settings say metric, and the figures are in fractions
	case fallback != measure.NoUnit:
		set(fallback, bySetting(fallback))
	default:
		d.open = e.numbers > 0 || e.texts[measure.Decimal] > e.marked || e.texts[measure.InchesFractions] > e.marked
	}
}

// bySetting is why bare numbers are in a unit that is set for them.
func bySetting(unit measure.Unit) string { return "Settings say bare numbers are in " + unit.String() }
