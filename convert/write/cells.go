package write

import (
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// text is words as they are; words is a run of them, wrapped; opens heads a group.
func text(s string) sheet.Cell  { return sheet.Cell{Kind: sheet.Text, Text: s, Style: sheet.Entry} }
func words(s string) sheet.Cell { return sheet.Cell{Kind: sheet.Text, Text: s, Style: sheet.Words} }
func opens(s string) sheet.Cell { return sheet.Cell{Kind: sheet.Text, Text: s, Style: sheet.GroupHead} }

// number is a figure shown as its style has it; whole is a count.
func number(v float64, style sheet.Style) sheet.Cell {
	return sheet.Cell{Kind: sheet.Number, Number: v, Style: style}
}

func whole(n int) sheet.Cell { return number(float64(n), sheet.Whole) }

// units is how the yard has lengths written.
func (in Input) units() measure.Style { return in.Result.Rules.Yard.Units }

// places is what the book calls its stations, in whose word the sheets speak.
func (in Input) places() hull.Places { return in.Job.Places() }

// stationHeads heads a column of stations in the book's word for them.
var stationHeads = map[hull.Places]string{hull.AtStations: "Station", hull.AtFrames: "Frame"}

func (in Input) stationHead() string { return stationHeads[in.places()] }

// long is a length as one column has it: feet-inches-eighths, inches or mm.
func long(l measure.Length, style measure.Style) sheet.Cell {
	switch style {
	case measure.StyleInches:
		return number(l.Inches(), sheet.Inch)
	case measure.StyleMM:
		return number(l.Millimetres(), sheet.MM)
	}
	return sheet.Cell{Kind: sheet.Text, Text: measure.EighthsText(l), Style: sheet.Feet}
}

// small is a thickness or width: inches or mm.
func small(l measure.Length, style measure.Style) sheet.Cell {
	if style == measure.StyleMM {
		return number(l.Millimetres(), sheet.MM)
	}
	return number(l.Inches(), sheet.Inch)
}

// fine is a small length rounded to what a sheet shows of it: a sixty-fourth of an
// inch or a tenth of a millimetre.
func fine(l measure.Length, style measure.Style) measure.Length {
	if style == measure.StyleMM {
		return l.Round(measure.Millimetre / 10)
	}
	return l.Round(measure.SixtyFourth)
}

// unit is what small lengths are in, and longUnit what long ones are.
func unit(style measure.Style) string {
	if style == measure.StyleMM {
		return "mm"
	}
	return "in"
}

func longUnit(style measure.Style) string {
	return [...]string{"ft-in-8ths", "in", "mm"}[style]
}
