package read

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// Yards write 40 ft 11 in. as 40.11 and 2 degrees 30 minutes as 2.30. Figures that
// all fit that reading are asked about; the guide settles it by a notation.

// fewestAfterPoint is the fewest figures with something after the point that
// tell anything of how a table writes them.
const fewestAfterPoint = 4

// afterPoint is what stands after the point of a number or of a text that is
// nothing but a number: hundredths, and whether two figures are written. A whole
// number, or one with more figures, is not ok.
func afterPoint(c sheet.Cell) (hundredths int, two, ok bool) {
	v := c.Number
	switch c.Kind {
	case sheet.Number:
	case sheet.Text:
		n, err := measure.ParseNumber(c.Text)
		if err != nil {
			return 0, false, false
		}
		v = n
		_, after, _ := strings.Cut(strings.TrimSpace(c.Text), ".")
		two = len(after) == 2
	default:
		return 0, false, false
	}
	whole, part := math.Modf(math.Abs(v))
	h := math.Round(part * 100)
	if math.Abs(part*100-h) > 1e-6*max(1, whole) {
		return -1, false, true // finer than either reading has it
	}
	return int(h), two || int(h)%10 != 0, h > 0
}

// inchesAfterPoint says that every figure after the points can be inches: tenths
// with .10 or .11 among them, or hundredths that never pass .11. At is the first
// of those that nobody writes of a plain decimal.
func inchesAfterPoint(cells []sheet.Cell) (at int, ok bool) {
	at = -1
	tenths, hundredths, tell := 0, 0, 0
	for i, c := range cells {
		h, two, some := afterPoint(c)
		switch {
		case !some:
			continue
		case h < 0 || two && (h < 1 || h > 11 && h%10 != 0) || two && c.Kind == sheet.Text && h > 11:
			return 0, false
		case two && (h == 10 || h == 11):
			tell++
		case h < 10:
			hundredths++
		case h > 10:
			tenths++
		default:
			continue
		}
		if at < 0 && (h == 11 || two || h < 10) {
			at = i
		}
	}
	switch {
	case at < 0 || tenths > 0 && hundredths > 0:
		return 0, false // 4.5 and 4.06 are of one reading only: decimals
	case tell > 0 && tenths+hundredths+tell >= 2, tenths == 0 && hundredths >= fewestAfterPoint:
		return at, true
	}
	return 0, false
}

// minutesAfterPoint says that every figure after the points can be minutes: none
// from .60, and some that are neither tenths nor quarters.
func minutesAfterPoint(cells []sheet.Cell) (at int, ok bool) {
	at = -1
	n, fives := 0, true
	for i, c := range cells {
		h, two, some := afterPoint(c)
		if !some {
			continue
		}
		if h < 0 || h >= 60 {
			return 0, false
		}
		n++
		fives = fives && h%5 == 0
		if at < 0 && two && h%25 != 0 && (h%10 != 0 || c.Kind == sheet.Text) {
			at = i
		}
	}
	return at, at >= 0 && (n >= 2*fewestAfterPoint || fives && n >= fewestAfterPoint)
}

// degreesMinutes is the guide's notation of bevels such as 2.30.
const degreesMinutes = "degrees and minutes"

// pointed asks of a column or table in decimals of a foot whose figures can all be
// feet and inches. Places are those of the cells.
func (r *reader) pointed(d decision, what string, cells []sheet.Cell, places []source.Cell) {
	if d.form.Unit != measure.InFeet || d.form.Notation != measure.Decimal || r.guideDecimal() {
		return
	}
	i, ok := inchesAfterPoint(cells)
	if !ok {
		return
	}
	whole, inches, _ := strings.Cut(text(cells[i]), ".")
	r.add(finding.Finding{Kind: PointInches, Cell: places[i], Reads: text(cells[i]),
		Text: fmt.Sprintf("every figure after the point of the %s can be inches: %q was read as decimals of a foot, and may stand for %s ft %s in.", what, text(cells[i]), whole, strings.TrimPrefix(inches, "0"))})
}

// pointedBevels asks of bevels whose figures after the point can all be minutes,
// and reads them so where the guide says that they are.
func (r *reader) pointedBevels(p *page, b *bevel.Readings) {
	var cells []sheet.Cell
	var readings []*source.Reading[measure.Angle]
	for i := range b.Seams {
		for k := range b.Seams[i].Readings {
			if v := &b.Seams[i].Readings[k]; v.OK() {
				readings = append(readings, v)
				cells = append(cells, p.raw(v.Cell.Row, v.Cell.Col))
			}
		}
	}
	if r.guideMinutes() {
		for i, v := range readings {
			r.asMinutes(cells[i], v)
		}
		return
	}
	i, ok := minutesAfterPoint(cells)
	if !ok && p.inMinutes {
		i = slices.IndexFunc(cells, func(c sheet.Cell) bool {
			_, _, some := afterPoint(c)
			return some && (c.Kind == sheet.Number || strings.Contains(c.Text, "."))
		})
		ok = i >= 0
	}
	if !ok || r.guideDecimal() {
		return
	}
	why := "every figure after the point of the bevels can be minutes"
	if p.inMinutes {
		why = "words over the bevels say degrees and minutes"
	}
	whole, minutes, _ := strings.Cut(text(cells[i]), ".")
	r.add(finding.Finding{Kind: PointMinutes, Cell: readings[i].Cell, Reads: text(cells[i]),
		Text: fmt.Sprintf("%s: %q was read as decimals of a degree, and may stand for %s degrees %s minutes", why, text(cells[i]), whole, minutes)})
}

// guideDecimal says that the guide has the figures in decimals.
func (r *reader) guideDecimal() bool {
	return r.now != nil && strings.Contains(plainWords(r.now.Notation), measure.Decimal.String())
}

// guideMinutes says that the guide has the bevels in degrees and minutes.
func (r *reader) guideMinutes() bool {
	return r.now != nil && strings.Contains(plainWords(r.now.Notation), degreesMinutes)
}

// asMinutes reads what stands after a bevel's point as minutes.
func (r *reader) asMinutes(c sheet.Cell, v *source.Reading[measure.Angle]) {
	h, _, some := afterPoint(c)
	switch {
	case !some:
	case h < 0 || h >= 60:
		v.State = source.Unread
		r.add(finding.Finding{Kind: AngleUnread, Cell: v.Cell, Reads: v.Text,
			Text: fmt.Sprintf("the guide says degrees and minutes, and %q has no minutes below 60 after its point", v.Text)})
	case v.Value < 0:
		v.Value = measure.Angle(math.Trunc(float64(v.Value)) - float64(h)/60)
	default:
		v.Value = measure.Angle(math.Trunc(float64(v.Value)) + float64(h)/60)
	}
}
