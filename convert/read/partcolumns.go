package read

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// partWords are the words over columns that hold one part of a length each, as
// old tables are ruled: feet, inches, eighths.
var partWords = [][]string{
	{"ft", "feet", "foot", "f", "'"},
	{"in", "ins", "inch", "inches", "i", `"`},
	{"8ths", "8th", "8", "eighths", "eights", "e", "1/8", "1/8s", "1/8ths"},
}

// partOf is which part of a length a cell stands over: 0 feet, 1 inches, 2
// eighths; -1 where it stands over none.
func partOf(c sheet.Cell) int {
	if c.Kind != sheet.Text {
		return -1
	}
	t := strings.Trim(strings.ToLower(measure.Fold(c.Text)), " .()")
	for i, words := range partWords {
		if slices.Contains(words, t) {
			return i
		}
	}
	return -1
}

// finer is how many of the parts make an inch that stand below a cell, where they are
// smaller than eighths; 0 where it heads none such.
func finer(c sheet.Cell) int {
	if c.Kind != sheet.Text {
		return 0
	}
	switch strings.Trim(strings.ToLower(measure.Fold(c.Text)), " .()") {
	case "16ths", "16th", "16", "1/16", "1/16s", "1/16ths", "sixteenths":
		return 16
	case "32nds", "32nd", "1/32", "1/32s", "1/32nds":
		return 32
	}
	return 0
}

// parted makes one length of the feet, inches and eighths that stand in a column
// each, at the column of the feet. Their heading goes there too.
func (p *page) parted() {
	for row := 1; row <= p.rows; row++ {
		var starts []int
		size, fine := 0, 0
		for _, col := range p.filled[0][row] {
			if f := p.afterInches(row, col); f > 0 && (size == 0 || size == 2 && fine == f) {
				starts, size, fine = append(starts, col), 2, f
				continue
			}
			if partOf(p.raw(row, col+1)) != 1 {
				continue
			}
			if p.saysFeet(row, col) {
				p.clear(row, col+1, 1)
				p.joinBelow(row, col, 2, 0)
				continue
			}
			if partOf(p.raw(row, col)) != 0 {
				continue
			}
			n, f := 2, finer(p.raw(row, col+2))
			if partOf(p.raw(row, col+2)) == 2 || f > 0 {
				n = 3
			}
			if size == 0 || size == n && fine == f {
				starts, size, fine = append(starts, col), n, f
			}
		}
		if len(starts) == 1 && !p.underOne(row, starts[0]) {
			continue // the units of two columns
		}
		for _, col := range starts {
			p.joinParts(row, col, size, fine)
		}
	}
}

// afterInches is how many of the parts make an inch that stand beside a column of inches
// with no feet before them; 0 where none do.
func (p *page) afterInches(row, col int) int {
	if partOf(p.raw(row, col)) != 1 || col > 1 && (partOf(p.raw(row, col-1)) == 0 || p.saysFeet(row, col-1)) {
		return 0
	}
	if partOf(p.raw(row, col+1)) == 2 {
		return 8
	}
	return finer(p.raw(row, col+1))
}

// saysFeet says that a cell is a heading that ends in its unit, feet, as of
// "Length ft" before a column headed "in".
func (p *page) saysFeet(row, col int) bool {
	c := p.raw(row, col)
	if c.Kind != sheet.Text || partOf(c) >= 0 {
		return false
	}
	form, ok := headUnit(c.Text)
	return ok && form == measure.Form{Unit: measure.InFeet}
}

// underOne says that the columns of feet and inches stand under one heading.
func (p *page) underOne(row, col int) bool {
	return row > 1 && p.raw(row-1, col).Kind == sheet.Text && !filled(p.raw(row-1, col+1))
}

// joinParts joins the columns of one length under the row of their words.
func (p *page) joinParts(row, col, size, fine int) {
	p.clear(row, col, size)
	if row > 1 && !filled(p.raw(row-1, col)) {
		for k := 1; k < size; k++ {
			if head := p.raw(row-1, col+k); filled(head) {
				p.put[[2]int{row - 1, col}] = head
				p.fill(row-1, col)
				p.clear(row-1, col+k, 1)
			}
		}
	}
	p.joinBelow(row, col, size, fine)
}

// joinBelow joins the parts that stand below a row, to the next words: fine is how many
// of the last make an inch where they are smaller than eighths.
func (p *page) joinBelow(row, col, size, fine int) {
	for down := row + 1; down <= p.rows; down++ {
		cells := make([]sheet.Cell, size)
		words, some := false, false
		for k := range cells {
			cells[k] = p.raw(down, col+k)
			some = some || filled(cells[k])
			words = words || cells[k].Kind == sheet.Text && !figure(cells[k].Text)
		}
		if words {
			return // another table begins
		}
		if !some {
			continue
		}
		p.clear(down, col+1, size-1)
		p.put[[2]int{down, col}] = joined(cells, fine)
		p.fill(down, col)
	}
}

// joined is the parts of one length as one text. A part left blank after the
// first is not taken for a nought: the text cannot be read then, and is said.
func joined(cells []sheet.Cell, fine int) sheet.Cell {
	var parts []string
	dashes := 0
	for i, c := range cells {
		t := text(c)
		switch {
		case c.Kind == sheet.Number:
			t = plainNumber(c.Number)
			if l := measure.Inches(c.Number); len(cells) == 2 && fine == 0 && i == 1 && l%measure.SixtyFourth == 0 {
				t = measure.InchesText(l)
			}
		case c.Kind == sheet.Text && measure.IsDash(t):
			dashes++
		case t == "" && i == 0:
			t = "0"
		case t == "":
			t = "?"
		}
		parts = append(parts, t)
	}
	switch {
	case dashes == len(cells), dashes == 1 && strings.Join(parts[1:], "") == strings.Repeat("?", len(cells)-1):
		return sheet.Cell{Kind: sheet.Text, Text: "-"}
	case len(cells) == 2 && fine == 0:
		return sheet.Cell{Kind: sheet.Text, Text: parts[0] + "' " + parts[1] + `"`}
	}
	last, err := strconv.Atoi(parts[len(parts)-1])
	switch {
	case fine == 0:
		return sheet.Cell{Kind: sheet.Text, Text: strings.Join(parts, "-")}
	case err != nil || last < 0 || last >= fine:
		return sheet.Cell{Kind: sheet.Text, Text: strings.Join(parts, "-") + "?"}
	}
	t := parts[len(parts)-2]
	if last > 0 {
		t += fmt.Sprintf(" %d/%d", last, fine)
	}
	if len(cells) == 3 {
		t = parts[0] + "' " + t
	}
	return sheet.Cell{Kind: sheet.Text, Text: t + `"`}
}

// clear takes cells of a row out of what is looked at: they stand in another.
func (p *page) clear(row, col, n int) {
	for k := range n {
		if filled(p.raw(row, col+k)) {
			p.put[[2]int{row, col + k}] = sheet.Cell{}
			p.use(row, col+k)
			p.gone[col+k] = true
		}
	}
}
