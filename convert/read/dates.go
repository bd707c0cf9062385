package read

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
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

// least is the mean second difference, in inches, below which a line is as smooth
// as can be told: evenly spaced figures are, whichever way round they are read.
const least = 0.125

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

// roughest is the mean second difference about its dates, in inches, beyond which
// no order is believed, however rough the others are.
const roughest = 12.0

// datesOf finds in which order a table's measurements were taken for dates: the
// one that makes the lines smoothest, where it wins clearly. One order holds for
// the whole table, since one spreadsheet took them all.
func datesOf(lines [][]sheet.Cell, form measure.Form) dated {
	if form.Notation != measure.FeetInchesEighths {
		return dated{}
	}
	n := 0
	for _, line := range lines {
		for _, c := range line {
			if c.Kind == sheet.Date && threeParts(c) {
				n++
			}
		}
	}
	if n < fewest {
		return dated{}
	}
	rough, means, floor := [3]float64{}, [3]float64{}, 0.0
	for o := range rough {
		steps := 0
		for _, line := range lines {
			sum, k := roughness(line, form, order(o))
			rough[o], steps = rough[o]+sum, steps+k
		}
		means[o] = rough[o] / max(1, float64(steps))
		floor = max(floor, least*float64(steps))
	}
	best := 0
	for o := range rough {
		if rough[o] < rough[best] {
			best = o
		}
	}
	for o := range rough {
		if o != best && rough[o] <= clearly*max(rough[best], floor) {
			return dated{}
		}
	}
	return dated{order(best), means[best] < roughest}
}

// roughness is the sum of a line's second differences about its dates, read in
// an order, and how many they are; infinite where that order cannot be.
func roughness(line []sheet.Cell, form measure.Form, o order) (sum float64, steps int) {
	var v []float64
	var isDate []bool
	for _, c := range line {
		if c.Kind == sheet.Date {
			if !threeParts(c) {
				continue
			}
			l, ok := o.as(c.Number)
			if !ok {
				return math.Inf(1), 1
			}
			v, isDate = append(v, l.Inches()), append(isDate, true)
			continue
		}
		if l, unread := length(c, form, source.Cell{}); unread == nil && l.OK() {
			v, isDate = append(v, l.Value.Inches()), append(isDate, false)
		}
	}
	for i := 1; i+1 < len(v); i++ {
		if isDate[i-1] || isDate[i] || isDate[i+1] {
			sum += math.Abs(v[i-1] - 2*v[i] + v[i+1])
			steps++
		}
	}
	return sum, steps
}

// dateAt reads a measurement stored as a date or a time: in the order found for
// its table, or not at all.
func (r *reader) dateAt(c sheet.Cell, at source.Cell, d decision, what string) source.Reading[measure.Length] {
	form, dates := d.form, d.dates
	v := source.Reading[measure.Length]{State: source.Unread, Text: text(c), Cell: at}
	take := func(l measure.Length, stored, as string) source.Reading[measure.Length] {
		v.Value, v.State = l, source.Given
		r.add(finding.Finding{Kind: LengthDate, Cell: at, Reads: v.Text, Suggests: as,
			Text: fmt.Sprintf("%s is stored as %s, %s, and was read as %s", what, stored, v.Text, as)})
		return v
	}
	switch {
	case noDate(c) && form.Notation == measure.Decimal && form.Unit != measure.NoUnit:
		// A number typed into a cell that was set to show dates.
		if l, _, err := form.Number(c.Number); err == nil {
			return take(l, "a number shown as a date", form.Write(l))
		}
	case c.Kind == sheet.Date && dates.known && threeParts(c):
		if l, ok := dates.order.as(c.Number); ok {
			return take(l, "a date", measure.EighthsText(l))
		}
	case c.Kind == sheet.Time && form.Notation == measure.FeetInchesEighths && strings.Contains(c.Format, "s"):
		if l, ok := clock(c.Number); ok {
			return take(l, "a time of day", measure.EighthsText(l))
		}
	}
	r.dateAsked(what, c, at, form)
	return v
}

// noDate says that a number shown as a date is none that anybody typed: what is
// typed as a date falls on a whole day, and not before 1930 (from memory: years
// of two figures below 30 are of this century).
func noDate(c sheet.Cell) bool {
	const from = 10959 // 1 January 1930
	return c.Kind == sheet.Date && (c.Number < from || c.Number != math.Trunc(c.Number))
}

// threeParts says that a date was shown with day, month and year: one of two
// parts was typed as two figures, 10/6 or 3-4, and gives no feet, inches and
// eighths.
func threeParts(c sheet.Cell) bool {
	f := strings.ToLower(c.Format)
	return !noDate(c) && (f == "" || strings.Contains(f, "y") && strings.Contains(f, "d"))
}

// clock reads a time of day as the feet, inches and eighths typed with colons:
// 3:4:6.
func clock(days float64) (measure.Length, bool) {
	seconds := int(math.Round(days * 24 * 60 * 60))
	feet, inches, eighths := seconds/3600, seconds/60%60, seconds%60
	return measure.Length(feet)*measure.Foot + measure.Length(inches)*measure.Inch + measure.Length(eighths)*measure.Eighth,
		feet < 100 && inches <= 11 && eighths <= 7
}

// dateAsked reports a measurement stored as a date that is left unread, with
// what it may have been.
func (r *reader) dateAsked(what string, c sheet.Cell, at source.Cell, form measure.Form) {
	stored := "a date"
	var ways []string
	switch {
	case c.Kind == sheet.Time:
		stored = "a time of day"
		if l, ok := clock(c.Number); ok {
			ways = append(ways, measure.EighthsText(l))
		}
	case noDate(c):
		stored = "a number shown as a date"
		ways = append(ways, plainNumber(c.Number))
	case threeParts(c) && form.Notation == measure.FeetInchesEighths:
		for _, o := range []order{yearMonthDay, monthDayYear, dayMonthYear} {
			if l, ok := o.as(c.Number); ok {
				ways = append(ways, measure.EighthsText(l))
			}
		}
	case !threeParts(c):
		_, month, day := calendar(c.Number)
		ways = append(ways, twoParts(month, day, form)...)
	}
	slices.Sort(ways)
	r.add(finding.Finding{Kind: LengthDateAsked, Cell: at, Reads: text(c), Suggests: strings.Join(slices.Compact(ways), " or "),
		Text: fmt.Sprintf("%s is stored as %s, %s, and not as a measurement", what, stored, text(c))})
}

// twoParts is what two figures that a spreadsheet took for a month and a day may
// have been: a fraction of an inch where they make one, else feet and inches.
func twoParts(month, day int, form measure.Form) []string {
	var all []string
	for _, p := range [][2]int{{month, day}, {day, month}} {
		a, b := p[0], p[1]
		if a < b && (b == 2 || b == 4 || b == 8 || b == 16) && a%2 == 1 && form.Notation != measure.FeetInchesEighths {
			return []string{fmt.Sprintf("%d/%d", a, b)}
		}
		if b == 4 && a >= 4 && form.Notation != measure.FeetInchesEighths {
			all = append(all, fmt.Sprintf("%d/4", a)) // lumber sold by quarters of an inch: 5/4
		}
		if b <= 11 {
			all = append(all, measure.FeetInchesText(measure.Length(a)*measure.Foot+measure.Length(b)*measure.Inch))
		}
	}
	return all
}

// plainNumber is a number without needless noughts, in the fifteen figures that a
// spreadsheet holds: what lies beyond them is left of its sums.
func plainNumber(v float64) string {
	if short, err := strconv.ParseFloat(strconv.FormatFloat(v, 'g', 15, 64), 64); err == nil {
		v = short
	}
	return strconv.FormatFloat(v, 'f', -1, 64)
}
