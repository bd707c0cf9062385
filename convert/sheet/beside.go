package sheet

import (
	"strconv"
	"strings"
)

// Beside is what tells a cell's row and column from others: the cells that begin its
// row, as far as the first that is a figure, and the one at the head of its column. It
// is the same wherever rows and columns put in or taken out move the cell to.
func (s *Sheet) Beside(row, col int) string {
	var words []string
	for c := 1; c < col; c++ {
		word := s.At(row, c).plain()
		if word == "" {
			continue
		}
		words = append(words, word)
		if word[0] >= '0' && word[0] <= '9' {
			break
		}
	}
	for r := 1; r < row; r++ {
		if head := s.At(r, col).plain(); head != "" {
			return strings.Join(append(words, head), " / ")
		}
	}
	return strings.Join(words, " / ")
}

// plain is what a cell holds, however a spreadsheet shows it.
func (c Cell) plain() string {
	if c.Kind == Number {
		return strconv.FormatFloat(c.Number, 'g', 10, 64)
	}
	return strings.Join(strings.Fields(c.Text), " ")
}
