package read

import (
	"fmt"
	"math"
	"strconv"
	"time"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// order is the order of year, month and day in which a spreadsheet took feet,
// inches and eighths.
type order uint8

const (
	monthDayYear order = iota
	dayMonthYear
	yearMonthDay
)

// clearly is how many times smoother one order must be than the next.
const clearly = 3

// fewest is the fewest dates an order is told from.
const fewest = 4

// dated is what a table's dates were found to be.
type dated struct {
	order order
	known bool
}

// calendar is the day a stored count of days stands for (1900 system).
func calendar(days float64) (year, month, day int) {
	t := time.Date(1899, 12, 30, 0, 0, 0, 0, time.UTC).AddDate(0, 0, int(math.Floor(days)))
	return t.Year(), int(t.Month()), t.Day()
}

// as reads a date as feet-inches-eighths in an order; ok is false where that
// gives figures no measurement has.
func (o order) as(days float64) (l measure.Length, ok bool) {
	year, month, day := calendar(days)
	feet, inches, eighths := year%100, month, day
	switch o {
	case monthDayYear:
		feet, inches, eighths = month, day, year%100
	case dayMonthYear:
		feet, inches, eighths = day, month, year%100
	}
	l = measure.Length(feet)*measure.Foot + measure.Length(inches)*measure.Inch + measure.Length(eighths)*measure.Eighth
	return l, inches <= 11 && eighths <= 7
}

// datesOf finds in which order a table's measurements were taken for dates: the
// one that makes the lines smoothest, where it wins clearly. One order holds for
// the whole table, since one spreadsheet took them all.
func (r *reader) datesOf(t *stationTable, form measure.Form, cols []int) dated {
	if form.Notation != measure.FeetInchesEighths {
		return dated{}
	}
	n := 0
	rough := [3]float64{}
	for _, row := range t.lines {
		for _, col := range cols {
			if t.see(row, col).Kind == sheet.Date {
				n++
			}
		}
		for o := range rough {
			rough[o] += roughness(t, row, cols, form, order(o))
		}
	}
	if n < fewest {
		return dated{}
	}
	best := 0
	for o := range rough {
		if rough[o] < rough[best] {
			best = o
		}
	}
	for o := range rough {
		if o != best && rough[o] < clearly*rough[best] {
			return dated{}
		}
	}
	return dated{order(best), !math.IsInf(rough[best], 1)}
}

// roughness is the sum of a row's second differences about its dates, read in an
// order; infinite where that order cannot be.
func roughness(t *stationTable, row int, cols []int, form measure.Form, o order) float64 {
	var v []float64
	var isDate []bool
	for _, col := range cols {
		c := t.see(row, col)
		if c.Kind == sheet.Date {
			l, ok := o.as(c.Number)
			if !ok {
				return math.Inf(1)
			}
			v, isDate = append(v, l.Inches()), append(isDate, true)
			continue
		}
		if l, unread := length(c, form, source.Cell{}); unread == nil && l.OK() {
			v, isDate = append(v, l.Value.Inches()), append(isDate, false)
		}
	}
	sum := 0.0
	for i := 1; i+1 < len(v); i++ {
		if isDate[i-1] || isDate[i] || isDate[i+1] {
			sum += math.Abs(v[i-1] - 2*v[i] + v[i+1])
		}
	}
	return sum
}

// date reads a measurement stored as a date: in the order found for its table,
// or not at all.
func (r *reader) date(c sheet.Cell, at source.Cell, form measure.Form, d dated, what string) source.Reading[measure.Length] {
	v := source.Reading[measure.Length]{State: source.Unread, Text: text(c), Cell: at}
	if c.Kind == sheet.Date && d.known {
		if l, ok := d.order.as(c.Number); ok {
			v.Value, v.State = l, source.Given
			r.add(finding.Finding{Kind: LengthDate, Cell: at, Reads: v.Text, Suggests: measure.EighthsText(l),
				Text: fmt.Sprintf("%s is stored as a date, %s, and was read as %s", what, v.Text, measure.EighthsText(l))})
			return v
		}
	}
	r.dateAsked(what, c, at, form)
	return v
}

// dateAsked reports a measurement stored as a date that is left unread, with
// what it may have been.
func (r *reader) dateAsked(what string, c sheet.Cell, at source.Cell, form measure.Form) {
	if c.Kind == sheet.Time {
		r.add(finding.Finding{Kind: LengthDateAsked, Cell: at, Reads: text(c), Text: fmt.Sprintf("%s is stored as a time of day, %s", what, text(c))})
		return
	}
	suggests := ""
	if form.Notation == measure.FeetInchesEighths {
		for _, o := range []order{yearMonthDay, monthDayYear, dayMonthYear} {
			if l, ok := o.as(c.Number); ok {
				if suggests != "" {
					suggests += " or "
				}
				suggests += measure.EighthsText(l)
			}
		}
	}
	r.add(finding.Finding{Kind: LengthDateAsked, Cell: at, Reads: text(c), Suggests: suggests,
		Text: fmt.Sprintf("%s is stored as a date, %s, and not as a measurement", what, text(c))})
}

// plainNumber is a number without needless noughts.
func plainNumber(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }
