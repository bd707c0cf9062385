package read

import (
	"fmt"
	"math"
	"regexp"
	"strings"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// Sawn stock is sold by quarters of an inch, and a column may give them alone: 5 under
// "Thickness (quarters)" is 5/4.

// partsHead is a heading whose figures are whole parts of an inch.
var partsHead = regexp.MustCompile(`[,(\[] *(quarters?|4ths|1/4s?|eighths?|8ths|1/8s?|sixteenths?|16ths|1/16s?)(?: ?(?:of an )?(?:in\.?|inch|"))? *[)\]]?$`)

// partsOfInch marks a column of thicknesses or widths in parts of an inch.
func (t *records) partsOfInch(field string) {
	col := t.cols[field]
	m := partsHead.FindStringSubmatch(strings.ToLower(measure.Fold(t.heads[col])))
	if m == nil || col == t.size {
		return
	}
	n := map[string]int{"q": 4, "4": 4, "e": 8, "8": 8, "s": 16, "1": 16}[strings.TrimPrefix(m[1], "1/")[:1]]
	if t.parts == nil {
		t.parts = map[int]int{}
	}
	t.parts[col] = n
	t.said[field] = measure.Form{Unit: measure.InInches}
}

// ofParts is a whole number of a column of parts of an inch as a fraction of one; any
// other figure there must hold a unit or a fraction of its own.
func ofParts(c sheet.Cell, n int) sheet.Cell {
	v := c.Number
	if c.Kind == sheet.Text {
		if t := measure.Fold(c.Text); bareFraction.MatchString(t) {
			return sheet.Cell{Kind: sheet.Text, Text: t + `"`}
		}
		f, err := measure.ParseNumber(c.Text)
		if err != nil {
			return c
		}
		v = f
	} else if c.Kind != sheet.Number {
		return c
	}
	if v != math.Trunc(v) || v <= 0 {
		return sheet.Cell{Kind: sheet.Fault, Text: text(c)}
	}
	return sheet.Cell{Kind: sheet.Text, Text: fmt.Sprintf("%.0f/%d\"", v, n)}
}
