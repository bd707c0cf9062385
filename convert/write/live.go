package write

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// What follows from the settings is written as formulas beside the figures that
// the trades worked out, so that a yard sees what a change does. A formula names
// a setting by set, a cell of its own page by at and here, and a column of
// another page by span; that page's name stands in braces until it is known.

// set is a setting as formulas name it.
func set(name string) string {
	joined := append(make([]byte, 0, 64), settingPrefix...)
	for i := range len(name) {
		if c := name[i]; c == ' ' || c == '-' {
			joined = append(joined, '_')
		} else {
			joined = append(joined, c)
		}
	}
	return string(joined)
}

const settingPrefix = sheet.NamePrefix + "set_"

// index is a column's place, from one, by its key. A key that is no column's is
// a slip of ours, and the formula is then no formula.
func (p *page) index(key string) int {
	for i, c := range p.cols {
		if c.key == key {
			return i + 1
		}
	}
	return 0
}

// at is a cell of a row of the page, counted from nought.
func (p *page) at(key string, row int) string {
	return source.Column(p.index(key)) + strconv.Itoa(row+2)
}

// here is a cell of the row that is being made.
func (p *page) here(key string) string { return p.at(key, p.next()) }

// name gives a cell of the row that is being made a name for formulas.
func (p *page) name(name, key string) {
	row, col := p.next()+2, p.index(key)
	p.names = append(p.names, sheet.Name{Name: name, Range: sheet.Range{Top: row, Left: col, Bottom: row, Right: col}})
}

// span is a whole column of the page, for formulas of other pages.
func (p *page) span(key string) string {
	c := source.Column(p.index(key))
	return "{" + p.called + "}!$" + c + "$2:$" + c + "$" + strconv.Itoa(max(p.next(), 1)+1)
}

// live is a cell with the formula it follows from; livef puts the formula
// together.
func live(c sheet.Cell, formula string) sheet.Cell {
	c.Formula = formula
	return c
}

func livef(c sheet.Cell, format string, args ...any) sheet.Cell {
	return live(c, fmt.Sprintf(format, args...))
}

// length is the cells of a length under the columns that lengths makes; the
// formula, where there is one, is of inches or millimetres.
func (p *page) length(key string, l measure.Length, u measure.Style, formula string) []sheet.Cell {
	figure := small(l, u)
	if formula != "" {
		figure = live(figure, formula)
	}
	if u != measure.StyleFeet {
		return []sheet.Cell{figure}
	}
	text := long(l, u)
	if formula != "" {
		text.Formula = eighths(p.here(key), l < 0 || strings.Contains(formula, "-"))
	}
	return []sheet.Cell{text, figure}
}

// eighths is feet-inches-eighths of a cell in inches, to the sixteenth.
func eighths(cell string, signed bool) string {
	sign, of := "", cell
	if signed {
		sign, of = `IF(ROUND(`+cell+`*16,0)<0,"-","")&`, "ABS("+cell+")"
	}
	n := "ROUND(" + of + "*16,0)"
	return sign + "INT(" + n + `/192)&"-"&INT(MOD(` + n + `,192)/16)&"-"&INT(MOD(` + n + `,16)/2)&IF(MOD(` + n + `,2)=1,"+","")`
}

// inches is a page's figure as inches, whatever the page is in.
func inches(cell string, u measure.Style) string {
	if u == measure.StyleMM {
		return "(" + cell + "/25.4)"
	}
	return cell
}

// figure is a plain number in a formula.
func figure(v float64) string { return strconv.FormatFloat(v, 'g', -1, 64) }

// cells puts runs of cells end to end.
func cells(runs ...[]sheet.Cell) []sheet.Cell {
	return slices.Concat(runs...)
}

func one(c sheet.Cell) []sheet.Cell { return []sheet.Cell{c} }
