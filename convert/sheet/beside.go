package sheet

import (
	"fmt"
	"regexp"
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

// One is a cell that is known by what is beside it, and how many are known by the same.
type One struct{ Row, Col, Of int }

// mostCells is the largest sheet whose cells are told from one another.
const mostCells = 200_000

// Ones is every cell of the sheet, blank ones among them, by what is beside it, in lower
// case; none of a sheet too large.
func (s *Sheet) Ones() map[string]One {
	wide := 0
	for _, row := range s.Rows {
		wide = max(wide, len(row))
	}
	if wide*len(s.Rows) > mostCells {
		return nil
	}
	heads := make([]string, wide) // the first word of each column so far
	all := map[string]One{}
	for row := range s.Rows {
		begins, figure := "", false
		for col := range wide {
			word := s.At(row+1, col+1).plain()
			key := strings.ToLower(joined(begins, heads[col]))
			all[key] = One{row + 1, col + 1, all[key].Of + 1}
			if heads[col] == "" {
				heads[col] = word
			}
			if !figure && word != "" {
				begins, figure = joined(begins, word), word[0] >= '0' && word[0] <= '9'
			}
		}
	}
	return all
}

// joined is two parts of what is beside a cell as one; either may be "".
func joined(a, b string) string {
	if a == "" || b == "" {
		return a + b
	}
	return a + " / " + b
}

// OneOf is what is beside a cell as it is written down: with a remark where other cells
// of the sheet are known by the same, so that none is taken for another later.
func OneOf(beside string, ones map[string]One) string {
	switch one := ones[strings.ToLower(beside)]; {
	case beside == "" || one.Of == 1:
		return beside
	case one.Of == 0:
		return beside + " (one of many)"
	default:
		return fmt.Sprintf("%s (one of %d)", beside, one.Of)
	}
}

var oneOf = regexp.MustCompile(` \(one of (?:many|\d+)\)$`)

// Alone is what OneOf was given, and whether it was of one cell alone.
func Alone(written string) (beside string, alone bool) {
	beside = oneOf.ReplaceAllString(written, "")
	return beside, beside == written && beside != ""
}

// plain is what a cell holds, however a spreadsheet shows it.
func (c Cell) plain() string {
	if c.Kind == Number {
		return strconv.FormatFloat(c.Number, 'g', 10, 64)
	}
	return strings.Join(strings.Fields(c.Text), " ")
}
