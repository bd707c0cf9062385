package read

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// hand is how one table's lengths are written.
type hand struct {
	name  string
	unit  string // what a heading or caption says; "" where the figures say it
	write func(measure.Length) sheet.Cell
}

func plainText(t string) sheet.Cell { return sheet.Cell{Kind: sheet.Text, Text: t} }

func plainFigures(v float64, format string) sheet.Cell {
	return sheet.Cell{Kind: sheet.Number, Number: v, Text: plainNumber(v), Format: format}
}

// hands is the ways lengths are written, in feet and inches or in metric.
func hands(metric bool) []hand {
	number := func(unit measure.Unit, format string) func(measure.Length) sheet.Cell {
		return func(l measure.Length) sheet.Cell {
			return plainFigures(float64(l)/float64(unit.Length()), format)
		}
	}
	words := func(f func(measure.Length) string) func(measure.Length) sheet.Cell {
		return func(l measure.Length) sheet.Cell { return plainText(f(l)) }
	}
	if metric {
		return []hand{
			{"millimetres", "mm", number(measure.InMillimetres, "0")},
			{"centimetres", "cm", number(measure.InCentimetres, "")},
			{"metres", "metres", number(measure.InMetres, "0.000")},
			{"marked millimetres", "", words(func(l measure.Length) string { return plainNumber(l.Millimetres()) + " mm" })},
			{"millimetres by their format", "", number(measure.InMillimetres, `0" mm"`)},
			{"comma metres", "metres", words(func(l measure.Length) string {
				return strings.ReplaceAll(fmt.Sprintf("%.3f", l.Millimetres()/1000), ".", ",")
			})},
		}
	}
	return []hand{
		{"eighths", "", words(measure.EighthsText)},
		{"eighths said", "ft-in-8ths", words(measure.EighthsText)},
		{"feet and inches", "", words(measure.FeetInchesText)},
		{"curly feet and inches", "", words(func(l measure.Length) string {
			return strings.NewReplacer("'", "\u2032", `"`, "\u2033", " 1/2", "½", " 1/4", "¼", " 3/4", "¾").Replace(measure.FeetInchesText(l))
		})},
		{"decimal inches", "inches", number(measure.InInches, "0.000")},
		{"inches as fractions", "inches", number(measure.InInches, "# ?/?")},
		{"inches as words", "inches", words(measure.InchesText)},
		{"decimal feet", "feet", number(measure.InFeet, "")},
		{"eighths turned into dates", "", dated3(monthDayYear)},
		{"eighths turned into dates, day first", "", dated3(dayMonthYear)},
		{"eighths turned into dates, year first", "", dated3(yearMonthDay)},
	}
}

// hand is one of the ways lengths are written: of those that leave them whole, but in
// a damaged book.
func (l *laidOut) hand() hand {
	all := hands(l.job.metric)
	if !l.damaged {
		all = slices.DeleteFunc(all, func(h hand) bool { return strings.Contains(h.name, "dates") })
	}
	return all[l.rnd.IntN(len(all))]
}

// dated3 writes eighths as a spreadsheet leaves them that takes what it can for
// dates in an order: those that make no date stay text.
func dated3(o order) func(measure.Length) sheet.Cell {
	return func(l measure.Length) sheet.Cell {
		feet, inches, eighths := int(l/measure.Foot), int(l%measure.Foot/measure.Inch), int(l%measure.Inch/measure.Eighth)
		year, month, day := eighths, feet, inches
		switch o {
		case dayMonthYear:
			month, day = inches, feet
		case yearMonthDay:
			year, month, day = feet, inches, eighths
		}
		c := dateCell(fmt.Sprintf("20%02d-%02d-%02d", year, month, day))
		if c.Number == 0 || l%measure.Eighth != 0 {
			return plainText(measure.EighthsText(l))
		}
		return c
	}
}
