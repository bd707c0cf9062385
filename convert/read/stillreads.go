package read

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// A decision was made of a figure: where its cell holds another since, because it was
// put right or rows were taken out, it is of that figure no more.

// changed is what a decided cell reads now, where that is not what it read when the
// builder decided.
func (p *page) changed(w warned) (now string, changed bool) {
	d := w.decision
	c := p.raw(d.Cell.Row, d.Cell.Col)
	now = text(c)
	switch {
	case c.Kind == sheet.Text && measure.IsDitto(c.Text):
		return now, false // it was told of by what stands above it
	case d.Reads == "" && d.Text == "":
		return now, false // it is not told
	case d.Reads == "":
		return now, filled(c) && !measure.IsDash(now) && !strings.Contains(d.Text, strconv.Quote(now))
	case sameReading(d.Reads, now) || c.Kind == sheet.Number && shownAs(d.Reads, c.Number):
		return now, false
	}
	return now, !p.inParts(d.Reads, d.Cell.Row, d.Cell.Col)
}

// inParts says that a figure of several parts, feet and inches and eighths, stands in
// as many cells side by side.
func (p *page) inParts(reads string, row, col int) bool {
	parts := strings.FieldsFunc(reads, func(c rune) bool { return strings.ContainsRune(" -'\"", c) })
	for i, part := range parts {
		if !sameReading(part, text(p.raw(row, col+i))) {
			return false
		}
	}
	return len(parts) > 1
}

// sameReading says that two texts are one figure, however it is written.
func sameReading(a, b string) bool {
	if a, b := measure.Fold(a), measure.Fold(b); strings.EqualFold(strings.Join(strings.Fields(a), " "), strings.Join(strings.Fields(b), " ")) {
		return true
	}
	if x, err := measure.ParseNumber(a); err == nil {
		y, err := measure.ParseNumber(b)
		return err == nil && x == y
	}
	if x, err := measure.ParseLength(a, measure.InInches); err == nil {
		y, err := measure.ParseLength(b, measure.InInches)
		return err == nil && x == y
	}
	x, errA := measure.ParseAngle(a)
	y, errB := measure.ParseAngle(b)
	return errA == nil && errB == nil && x == y
}

// shownAs says that a number may be shown so: a spreadsheet rounds what it shows.
func shownAs(text string, v float64) bool {
	shown, err := measure.ParseNumber(text)
	_, places, _ := strings.Cut(text, ".")
	return err == nil && math.Abs(shown-v) <= 0.5*math.Pow10(-len(places))+1e-9
}

// stale tells of a decision whose cell is no more what it was.
func (r *reader) stale(w warned, why string) {
	r.unmet(w, why)
	r.found[len(r.found)-1].Do = "write it anew on the Warnings sheet of the book made now, if it still holds"
}

// otherwise is how a cell reads now and read before.
func otherwise(w warned, now string) string {
	was := fmt.Sprintf("read %q", w.decision.Reads)
	if w.decision.Reads == "" {
		was = "was blank"
	}
	return fmt.Sprintf("the cell reads %q now and %s when it was written", now, was)
}
