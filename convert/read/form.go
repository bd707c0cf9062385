package read

import (
	"fmt"
	"math"

	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// evidence is how the cells of one table, or of one column, are written.
type evidence struct {
	texts   map[measure.Notation]int // readable in each notation
	unread  int                      // texts readable in none
	numbers int                      // plain numbers that are not nought
	dates   int
	marked  int // texts that show their own unit
	total   int
	decimal int // most places after the point of a number
}

// weigh looks at cells that should be lengths.
func weigh(cells []sheet.Cell) evidence {
	e := evidence{texts: map[measure.Notation]int{}}
	for _, c := range cells {
		e.total++
		switch c.Kind {
		case sheet.Number:
			if c.Number != 0 {
				e.numbers++
			}
			e.decimal = max(e.decimal, places(c.Number))
		case sheet.Date, sheet.Time:
			e.dates++
		case sheet.Text:
			if measure.IsDash(c.Text) {
				e.total--
				continue
			}
			if measure.MarkedUnit(c.Text) != measure.NoUnit {
				e.marked++
			}
			all := measure.Notations(c.Text)
			if len(all) == 0 {
				e.unread++
			}
			for _, n := range all {
				e.texts[n]++
			}
		default:
			e.total--
		}
	}
	return e
}

// places is how many figures a number has after the point, six at most.
func places(v float64) int {
	for n := range 6 {
		if s := math.Abs(v) * math.Pow10(n); math.Abs(s-math.Round(s)) < 1e-6*max(1, s) {
			return n
		}
	}
	return 6
}

// decide is the form of a table from what it says of itself and from its cells.
// Said is what its heading or caption states; fallback is the unit Settings give
// a bare number. Open is true where bare numbers have no unit.
func decide(e evidence, said measure.Form, fallback measure.Unit) (form measure.Form, why []string, open bool) {
	form = said
	if form.Notation == measure.NoNotation || form.Notation == measure.Decimal {
		best, most := measure.NoNotation, 0
		for _, n := range []measure.Notation{measure.FeetInchesEighths, measure.FeetInchesFractions, measure.InchesFractions, measure.Decimal, measure.OldPrint} {
			if c := e.texts[n]; c > most {
				best, most = n, c
			}
		}
		if most > 0 && (best == measure.FeetInchesEighths || form.Notation == measure.NoNotation) {
			form.Notation = best
			why = append(why, fmt.Sprintf("%d of %d figures are written in %s", most, e.total, best))
		}
		if form.Notation == measure.NoNotation {
			form.Notation = measure.Decimal
		}
	}
	if said.Unit != measure.NoUnit {
		why = append(why, "its heading or caption says "+said.Unit.String())
	} else if said.Notation != measure.NoNotation {
		why = append(why, "its heading or caption says "+said.Notation.String())
	}
	bare := e.numbers > 0 || e.texts[measure.Decimal] > e.marked || e.texts[measure.InchesFractions] > e.marked
	if form.Unit != measure.NoUnit {
		return form, why, false
	}
	switch {
	case form.Notation == measure.FeetInchesEighths || form.Notation == measure.OldPrint:
		return form, why, false // a bare number among these is asked about at its cell
	case form.Notation == measure.FeetInchesFractions && e.marked > 0:
		form.Unit = measure.InInches
		return form, append(why, "its neighbours are in feet and inches"), false
	case fallback != measure.NoUnit:
		form.Unit = fallback
		return form, append(why, "Settings say bare numbers are in "+fallback.String()), false
	case form.Notation == measure.InchesFractions && e.texts[measure.InchesFractions] > e.texts[measure.Decimal]:
		// Vulgar fractions are written of inches: nothing else is halved and quartered so.
		form.Unit = measure.InInches
		return form, append(why, "fractions are of inches"), false
	}
	return form, why, bare
}

// length reads one cell as a length in the form. Unread says why it could not
// be; the reading's state is then Unread.
func length(c sheet.Cell, form measure.Form, at source.Cell) (r source.Reading[measure.Length], unread *measure.ReadError) {
	r = source.Reading[measure.Length]{Text: text(c), Cell: at}
	fail := func(err error) {
		r.State = source.Unread
		unread, _ = err.(*measure.ReadError)
	}
	switch c.Kind {
	case sheet.Number:
		if c.Number == 0 {
			r.State = source.Given
			return r, nil
		}
		v, _, err := form.Number(c.Number)
		if err != nil {
			fail(err)
			break
		}
		r.Value, r.State = v, source.Given
	case sheet.Text:
		if measure.IsDash(c.Text) {
			r.State = source.Dash
			break
		}
		v, err := form.Length(c.Text)
		if err != nil {
			fail(err)
			break
		}
		r.Value, r.State = v, source.Given
	case sheet.Date, sheet.Time, sheet.Fault, sheet.Bool:
		fail(&measure.ReadError{Text: text(c), Expected: "a length"})
	default:
		if c.Formula != "" {
			fail(&measure.ReadError{Text: "=" + c.Formula, Expected: "a value: open the book and save it so that its formulas are worked out"})
		}
	}
	return r, unread
}

// resolution is the smallest step in which a table's lengths are given.
func resolution(form measure.Form, e evidence, values []measure.Length) measure.Length {
	step := func(candidates ...measure.Length) measure.Length {
		for _, s := range candidates {
			odd := 0
			for _, v := range values {
				if v%s != 0 {
					odd++
				}
			}
			if odd*50 <= len(values) { // a slip or two does not make the table finer
				return s
			}
		}
		return candidates[len(candidates)-1]
	}
	switch {
	case form.Notation != measure.Decimal:
		return step(measure.Eighth, measure.Sixteenth, 2*measure.SixtyFourth, measure.SixtyFourth)
	case form.Unit == measure.InInches || form.Unit == measure.InFeet:
		if s := step(measure.Eighth, measure.Sixteenth, 2*measure.SixtyFourth, measure.SixtyFourth, 1); s > 1 {
			return s
		}
	}
	unit := form.Unit.Length()
	if unit == 0 {
		unit = measure.Metre
	}
	return max(1, unit.Times(math.Pow10(-e.decimal)))
}
