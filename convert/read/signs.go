package read

import (
	"slices"
	"strings"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// The sixteenth more or less of feet-inches-eighths, 3-4-6+, may stand in a column
// of its own behind the figures.

// signed puts the signs that stand in columns of their own to the figures before
// them: where one of them is a plus, which is never a dash.
func (p *page) signed() {
	signs, plus := map[int][]int{}, false
	for col := 2; col <= p.cols; col++ {
		signs[col] = p.signsIn(col)
		for _, row := range signs[col] {
			plus = plus || signOf(p.raw(row, col)) == "+"
		}
	}
	for col := 2; plus && col <= p.cols; col++ {
		for i, row := range signs[col] {
			left := p.leftOf(row, col)
			c := p.raw(row, left)
			c.Text = text(c) + signOf(p.raw(row, col))
			p.put[[2]int{row, left}] = c
			p.clear(row, col, 1)
			if at := p.headOf(row, col); i == 0 && at > 0 {
				p.unfill(at, col)
			}
		}
	}
}

// signsIn is the rows of a column that hold signs; nil where it is headed as
// anything else, holds anything else beside the figures, or a sign stands behind
// what it cannot belong to.
func (p *page) signsIn(col int) []int {
	var rows []int
	for _, row := range p.filled[1][col] {
		sign := signOf(p.raw(row, col))
		if sign == "" {
			if len(rows) > 0 && p.eighthsAt(row, p.leftOf(row, col)) {
				return nil
			}
			continue
		}
		if !p.eighthsAt(row, p.leftOf(row, col)) {
			return nil
		}
		if at := p.headOf(row, col); len(rows) == 0 && at > 0 && !signHead(text(p.raw(at, col))) {
			return nil
		}
		rows = append(rows, row)
	}
	return rows
}

// signOf is a cell as the sign of a sixteenth; "" for none.
func signOf(c sheet.Cell) string {
	if c.Kind != sheet.Text {
		return ""
	}
	if t := strings.TrimSpace(measure.Fold(c.Text)); t == "+" || t == "-" {
		return t
	}
	return ""
}

// leftOf is the column of the nearest cell to the left that is not emptied.
func (p *page) leftOf(row, col int) int {
	for col--; col > 1 && !filled(p.raw(row, col)) && p.used[[2]int{row, col}]; col-- {
	}
	return col
}

// eighthsAt says that a cell holds feet-inches-eighths without a sign.
func (p *page) eighthsAt(row, col int) bool {
	c := p.raw(row, col)
	return c.Kind == sheet.Text && slices.Contains(measure.Notations(c.Text), measure.FeetInchesEighths) && strings.Count(measure.Fold(c.Text), "-") == 2 && !strings.HasSuffix(measure.Fold(c.Text), "+")
}

// headOf is the row of the heading over a column of signs that begins in a row: in
// the two rows above; 0 where nothing stands there.
func (p *page) headOf(row, col int) int {
	for up := row - 1; up >= max(1, row-2); up-- {
		if filled(p.raw(up, col)) {
			return up
		}
	}
	return 0
}

// signHead says that a heading is that of a column of signs.
func signHead(t string) bool {
	switch strings.ReplaceAll(strings.ToLower(measure.Fold(t)), " ", "") {
	case "+", "+/-", "+-", "±", "16ths", "16th", "1/16", "sixteenths":
		return true
	}
	return false
}
