package csv

import (
	"regexp"
	"strconv"
	"strings"

	"strakebook/convert/sheet"
)

// commas is what a comma in a number means in one file.
type commas uint8

const (
	unknown   commas = iota // a comma before three figures can be either
	decimal                 // 102,5: and a point parts thousands
	thousands               // 1,234: and a point is the decimal point
	likely                  // decimal, but nothing in the file shows it
)

var (
	plainNumber = regexp.MustCompile(`^-?(\d+(\.\d*)?|\.\d+)$`)
	sureComma   = regexp.MustCompile(`^-?(\d+,(\d{1,2}|\d{4,})|0+,\d+|\d{4,},\d+|\d{1,3}([. ]\d{3})+,\d+)$`)
	surePoint   = regexp.MustCompile(`^-?(\d+\.(\d{1,2}|\d{4,})|0+\.\d+|\d{4,}\.\d+|\d{1,3}(,\d{3})+\.\d+|\d{1,3}(,\d{3}){2,})$`)
	eitherComma = regexp.MustCompile(`^-?[1-9]\d{0,2},\d{3}$`)
	eitherPoint = regexp.MustCompile(`^-?[1-9]\d{0,2}\.\d{3}$`)
	groups      = regexp.MustCompile(`^-?[1-9]\d{0,2}( \d{3})+$`)
	faultText   = regexp.MustCompile(`^#(REF!|DIV/0!|VALUE!|NAME\?|NUM!|NULL!)$`)
)

var (
	oneMark      = strings.NewReplacer("−", "-", "\u00a0", " ", "\u202f", " ")
	commaToPoint = strings.NewReplacer(".", "", " ", "", ",", ".")
)

// commasOf is what the commas in a file's numbers mean, by its separator and by
// those numbers that can be read in one way only. A comma that separates the
// fields is no decimal comma besides.
func commasOf(rows [][]string, separator rune) commas {
	if separator == ',' {
		return thousands
	}
	comma, point := false, false
	for _, row := range rows {
		for _, f := range row {
			t := figures(f)
			comma = comma || sureComma.MatchString(t)
			point = point || surePoint.MatchString(t)
		}
	}
	switch {
	case comma && point:
		return unknown
	case comma:
		return decimal
	case point:
		return thousands
	case separator == ';': // set by programs where the comma is the decimal comma
		return likely
	}
	return unknown
}

// cellOf is a field as a cell: a number where it is one number and can be read
// in one way, else text for the table's own notation to decide.
func cellOf(field string, way commas) sheet.Cell {
	t := strings.TrimSpace(field)
	bare, quoted := unguard(t)
	switch {
	case t == "":
		return sheet.Cell{}
	case quoted:
		return sheet.Cell{Kind: sheet.Text, Text: bare}
	case faultText.MatchString(t):
		return sheet.Cell{Kind: sheet.Fault, Text: t}
	}
	if v, ok := numberOf(figures(t), way); ok {
		return sheet.Cell{Kind: sheet.Number, Number: v, Text: t}
	}
	return sheet.Cell{Kind: sheet.Text, Text: t}
}

// figures is a field as its number is looked for: one kind of minus, and the
// hard spaces that part thousands as spaces.
func figures(field string) string {
	return oneMark.Replace(strings.TrimSpace(field))
}

// numberOf is the number a field is, if it is one and can be read in one way.
func numberOf(t string, way commas) (float64, bool) {
	decimalComma := way == decimal || way == likely
	switch {
	case way == decimal && (eitherPoint.MatchString(t) || eitherComma.MatchString(t)),
		way != thousands && sureComma.MatchString(t), decimalComma && groups.MatchString(t):
		t = commaToPoint.Replace(t)
	case way == thousands && eitherComma.MatchString(t), surePoint.MatchString(t):
		t = strings.ReplaceAll(t, ",", "")
	}
	if !plainNumber.MatchString(t) {
		return 0, false
	}
	v, err := strconv.ParseFloat(t, 64)
	return v, err == nil
}
