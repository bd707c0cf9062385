package xlsx

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
	"time"

	"github.com/xuri/excelize/v2"

	"strakebook/convert/sheet"
)

// builder makes plain sheets of what was read.
type builder struct {
	*contents
	file     *excelize.File
	shown    map[shownKey]string
	scratch  string // a sheet of the library's, for showing numbers by their formats
	places   int
	ours     func(sheet string) bool // says that a sheet is one of those we write
	unvalued int                     // formulas of the book without a stored value
	visited  int                     // cells that the formulas worked out name
	unsteady *bool                   // the book holds a formula of the clock or of chance
}

// sheet makes one sheet, after its two readings have been found to agree.
func (b *builder) sheet(p sheetPart, g *grid) (*sheet.Sheet, error) {
	if err := agree(b.file, p.name, g, b.texts); err != nil {
		return nil, err
	}
	out := &sheet.Sheet{Name: p.name, Hidden: p.hidden, Merged: g.merged, HiddenRows: map[int]bool{}, HiddenCols: map[int]bool{}}
	rows, cols := 0, 0
	over := newCovering(g.merged)
	var late []*rawCell
	for i := range g.cells {
		c := &g.cells[i]
		if over.under(c.row, c.col) {
			continue // what lies under a merged cell is not shown, and is not the builder's word
		}
		if c.hasFormula && !c.hasValue {
			late = append(late, c)
			continue
		}
		cell, err := b.cell(p.name, c)
		if err != nil {
			return nil, err
		}
		if cell.Kind == sheet.Empty && cell.Formula == "" && cell.Struck == "" {
			continue
		}
		if err := b.set(out, c.row, c.col, cell); err != nil {
			return out, nil // told by the count of places
		}
	}
	for _, c := range b.inOrder(p.name, late) {
		cell, err := b.cell(p.name, c)
		if err != nil {
			return nil, err
		}
		if err := b.set(out, c.row, c.col, cell); err != nil {
			return out, nil
		}
	}
	if err := b.notes(out, p); err != nil {
		return nil, err
	}
	for _, row := range out.Rows {
		cols = max(cols, len(row))
	}
	rows = len(out.Rows)
	for _, r := range g.hiddenRows {
		if r <= rows {
			out.HiddenRows[r] = true
		}
	}
	for _, c := range g.hiddenCols {
		for at := c.Left; at <= min(c.Right, cols); at++ {
			out.HiddenCols[at] = true
		}
	}
	return out, nil
}

// set puts a cell in its place, unless the sheet then grows beyond all measure.
func (b *builder) set(out *sheet.Sheet, row, col int, c sheet.Cell) error {
	had := 0
	if row <= len(out.Rows) {
		had = len(out.Rows[row-1])
	}
	if b.places += max(0, col-had) + max(0, row-len(out.Rows))/8; b.places > mostPlaces {
		return fmt.Errorf("more than %d places", mostPlaces)
	}
	out.Set(row, col, c)
	return nil
}

// notes puts the sheet's notes on their cells, but for what an earlier
// run of ours wrote.
func (b *builder) notes(out *sheet.Sheet, p sheetPart) error {
	if p.notes == "" {
		return nil
	}
	r := newReader(b.archive.parts[p.notes])
	var by []string
	return r.each(map[string]func() error{"author": func() error {
		name, err := r.words()
		by = append(by, name)
		return err
	}, "comment": func() error {
		ref, _ := r.attr("ref")
		id, _ := r.attr("authorId")
		col, row, ok := place([]byte(ref))
		if !ok {
			return r.fault("a note on no cell")
		}
		t, err := r.rich()
		if err != nil {
			return err
		}
		said := strings.TrimSpace(t.all())
		if n, ok := whole([]byte(id)); ok && n < len(by) && by[n] == author || ourForm.MatchString(said) {
			said = theirNote(said)
		}
		if said == "" {
			return nil
		}
		c := out.At(row, col)
		c.Note = said
		if err := b.set(out, row, col, c); err != nil {
			return nil // told by the count of places
		}
		return nil
	}})
}

// cell makes one cell.
func (b *builder) cell(name string, c *rawCell) (sheet.Cell, error) {
	var form format
	if c.style < len(b.formats) {
		form = b.formats[c.style]
	}
	out := sheet.Cell{Format: form.code}
	if c.hasFormula {
		if err := b.formula(&out, name, c); err != nil {
			return out, err
		}
	}
	if c.hasValue {
		b.fill(&out, c, form)
	}
	if form.struck && out.Kind != sheet.Empty {
		out = sheet.Cell{Struck: out.Text, Note: out.Note}
	}
	return out, nil
}

// fill puts the value into the cell by what the book says it is.
func (b *builder) fill(out *sheet.Cell, c *rawCell, form format) {
	switch c.kind {
	case "s", "inlineStr":
		t := c.rich
		if c.kind == "s" {
			n, _ := whole([]byte(strings.TrimSpace(c.value)))
			t = b.texts[n]
		}
		out.Kind, out.Text, out.Struck = sheet.Text, t.text, t.struck
	case "str":
		out.Kind, out.Text = sheet.Text, escaped(c.value)
	case "e":
		out.Kind, out.Text = sheet.Fault, c.value
	case "b":
		out.Kind, out.Text = sheet.Bool, "FALSE"
		if out.Number, _ = number(c.value); out.Number != 0 {
			out.Text = "TRUE"
		}
	case "d":
		b.date(out, c.value)
	default:
		v, _ := number(c.value)
		out.Kind, out.Number, out.Text = form.kind, v, b.show(c.style, c.value, form)
		if form.kind == sheet.Date && b.date1904 {
			out.Number += days1904
		}
	}
	if out.Kind == sheet.Text && strings.TrimSpace(out.Text) == "" {
		out.Kind, out.Text = sheet.Empty, ""
	}
}

// days1904 is how many days later the epoch of 1904 begins than that of 1900.
const days1904 = 1462

// date is a date or a time as strict workbooks write it, in words of ISO 8601.
func (b *builder) date(out *sheet.Cell, text string) {
	out.Kind, out.Text = sheet.Text, text
	for _, form := range []string{"2006-01-02T15:04:05", "2006-01-02T15:04:05.999999999", "2006-01-02", "2006-01-02T15:04"} {
		if t, err := time.Parse(form, strings.TrimSuffix(text, "Z")); err == nil {
			out.Kind, out.Number = sheet.Date, t.Sub(time.Date(1899, 12, 30, 0, 0, 0, 0, time.UTC)).Hours()/24
			return
		}
	}
	for _, form := range []string{"15:04:05", "T15:04:05", "15:04", "T15:04"} {
		if t, err := time.Parse(form, strings.TrimSuffix(text, "Z")); err == nil {
			out.Kind, out.Number = sheet.Time, float64(t.Hour()*3600+t.Minute()*60+t.Second())/86400
			return
		}
	}
}

var plainNumber = regexp.MustCompile(`^[+-]?(?:[0-9]+\.?[0-9]*|\.[0-9]+)(?:[eE][+-]?[0-9]+)?$`)

// number is a stored number, which is never infinite and never none.
func number(text string) (float64, bool) {
	text = strings.TrimSpace(text)
	if n, ok := whole([]byte(text)); ok {
		return float64(n), true
	}
	if !plainNumber.MatchString(text) {
		return 0, false
	}
	v, err := strconv.ParseFloat(text, 64)
	return v, err == nil && !math.IsInf(v, 0)
}
