package xlsx

import (
	"fmt"
	"strings"

	"strakebook/convert/sheet"
)

// The most rows and columns of a sheet.
const (
	mostRows = 1048576
	mostCols = 16384
)

// grid is one sheet as its part has it.
type grid struct {
	cells      []rawCell
	merged     []sheet.Range
	hiddenRows []int
	hiddenCols []sheet.Range // by Left and Right
	shared     map[string]bool
	data       []byte
	last, tail int // where the last row that holds anything ends in it, and where the rows end
}

// rawCell is one cell that holds something.
type rawCell struct {
	row, col   int
	style      int
	kind       string // what the value is, as written
	value      string // as written
	rich       rich   // of a text within the cell
	hasValue   bool
	hasFormula bool
	formula    string // "" where it is shared with another cell
}

// scan reads a sheet's part: every cell that holds something, in its place.
func scan(data []byte, p sheetPart) (*grid, error) {
	r := newReader(data)
	g := &grid{shared: map[string]bool{}, data: r.data}
	row := 0
	merges, tables := -1, -1
	tableParts := 0
	err := r.each(map[string]func() error{
		"col": func() error { return g.column(r) },
		"sheetData": func() error {
			g.last = r.scanner.at
			g.tail = g.last
			return nil
		},
		"row": func() error { return g.row(r, &row) },
		"mergeCells": func() (err error) {
			merges, err = r.count("count")
			return err
		},
		"mergeCell": func() error {
			ref, _ := r.attr("ref")
			block, err := block(ref)
			if err != nil {
				return r.fault(err.Error())
			}
			g.merged = append(g.merged, block)
			return nil
		},
		"tableParts": func() (err error) {
			tables, err = r.count("count")
			return err
		},
		"tablePart":     func() error { tableParts++; return r.related(p) },
		"legacyDrawing": func() error { return r.related(p) },
	})
	switch {
	case err != nil:
	case merges > len(g.merged):
		err = r.fault("it does not hold as many merged cells as it says")
	case tables > tableParts:
		err = r.fault("it does not hold as many tables as it says")
	}
	return g, err
}

// related says what is wrong with an element that names a part of the sheet's.
func (r *reader) related(p sheetPart) error {
	for _, a := range r.attrs {
		if string(local(a.name)) == "id" && p.ids[value(a.raw)] {
			return nil
		}
	}
	return r.fault("a part of the sheet is not named")
}

func (g *grid) column(r *reader) error {
	from, err := r.count("min")
	if err != nil {
		return err
	}
	to, err := r.count("max")
	if err != nil {
		return err
	}
	hidden, err := r.flag("hidden")
	if hidden && 1 <= from && from <= to {
		g.hiddenCols = append(g.hiddenCols, sheet.Range{Left: from, Right: min(to, mostCols)})
	}
	return err
}

// row reads one row to its end.
func (g *grid) row(r *reader, row *int) error {
	*row++
	col := 0
	for _, a := range r.attrs {
		switch string(a.name) {
		case "r":
			n, ok := whole(a.raw)
			if !ok || n < *row {
				return r.fault(fmt.Sprintf("row %.20s is out of its place", a.raw))
			}
			*row = n
		case "hidden":
			hidden, err := r.flag("hidden")
			if err != nil {
				return err
			}
			if hidden {
				g.hiddenRows = append(g.hiddenRows, *row)
			}
		}
	}
	if *row > mostRows {
		return r.fault("more rows than a sheet has")
	}
	had := len(g.cells)
	for {
		if err := r.step(); err != nil {
			return err
		}
		switch {
		case r.kind == tokenStart && r.at.name == "c":
			if err := g.cell(r, *row, &col); err != nil {
				return err
			}
		case r.kind == tokenStart:
			if err := r.pass(); err != nil {
				return err
			}
		case r.kind == tokenEnd:
			g.tail = r.scanner.at
			if len(g.cells) > had {
				g.last = g.tail
			}
			return nil
		}
	}
}

// pass reads the element just begun to its end, held to the grammar.
func (r *reader) pass() error {
	for depth := len(r.path); len(r.path) >= depth; {
		if err := r.step(); err != nil {
			return err
		}
	}
	return nil
}

// cell reads one cell to its end, and keeps it where it holds something.
func (g *grid) cell(r *reader, row int, col *int) error {
	*col++
	c := rawCell{row: row}
	for _, a := range r.attrs {
		switch string(a.name) {
		case "r":
			atCol, atRow, ok := place(a.raw)
			if !ok || atRow != row || atCol < *col {
				return r.fault(fmt.Sprintf("cell %.20s is out of its place", a.raw))
			}
			*col = atCol
		case "s":
			n, ok := whole(a.raw)
			if !ok {
				return r.fault(fmt.Sprintf("cell style %.20s is none", a.raw))
			}
			c.style = n
		case "t":
			c.kind = value(a.raw)
			if !kinds[c.kind] {
				return r.fault(fmt.Sprintf("a cell of the kind %.20s", a.raw))
			}
		}
	}
	if c.col = *col; c.col > mostCols {
		return r.fault("more columns than a sheet has")
	}
	if r.empty {
		return r.step()
	}
	if err := g.contents(r, &c); err != nil {
		return err
	}
	if c.hasValue || c.hasFormula {
		g.cells = append(g.cells, c)
	}
	return nil
}

// kinds is what a cell's value may be (ECMA-376-1 18.18.11).
var kinds = set("b d e inlineStr n s str")

// contents reads what stands in a cell, to the cell's end.
func (g *grid) contents(r *reader, c *rawCell) error {
	depth := len(r.path)
	seen := ""
	for {
		if err := r.step(); err != nil {
			return err
		}
		if r.kind == tokenEnd && len(r.path) < depth {
			return nil
		}
		if r.kind != tokenStart {
			continue
		}
		name := r.at.name
		if strings.Contains(seen, " "+name+" ") {
			return r.fault("a cell has two of <" + name + ">")
		}
		seen += " " + name + " "
		switch name {
		case "v":
			v, err := r.words()
			if err != nil {
				return err
			}
			c.value, c.hasValue = v, v != ""
		case "is":
			t, err := r.rich()
			if err != nil {
				return err
			}
			c.rich = t
			c.hasValue = c.hasValue || t.all() != ""
		case "f":
			if err := g.formula(r, c); err != nil {
				return err
			}
		default:
			if err := r.pass(); err != nil {
				return err
			}
		}
	}
}

// formula reads a formula; one that is shared must have been given before.
func (g *grid) formula(r *reader, c *rawCell) error {
	kind, _ := r.attr("t")
	with, _ := r.attr("si")
	f, err := r.words()
	if err != nil {
		return err
	}
	c.hasFormula, c.formula = true, f
	if kind != "shared" {
		return nil
	}
	if f != "" {
		g.shared[with] = true
	} else if !g.shared[with] {
		return r.fault("a formula is shared that is not there")
	}
	return nil
}

// trimmed is the part without the empty rows after the last that holds anything:
// a sheet formatted to its last row would cost the library seconds and a gigabyte.
func (g *grid) trimmed() []byte {
	if g.last == g.tail {
		return g.data
	}
	return append(append([]byte{}, g.data[:g.last]...), g.data[g.tail:]...)
}
