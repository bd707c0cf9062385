package xlsx

import (
	"strings"
	"unicode/utf8"

	"strakebook/convert/sheet"
)

// widths is how many letters each column needs for the words that stand in it on
// one line: a word that is cut off is a word misread.
type widths []float64

// mostLetters is the width beyond which no column goes by itself.
const mostLetters = 34

// row takes a row in. Words that are wrapped, or lie across cells, need none; nor
// does a text with nothing to its right, or in merged cells.
func (w *widths) row(s *sheet.Sheet, r int, cells []sheet.Cell) {
	for len(*w) < len(cells) {
		*w = append(*w, 0)
	}
	for i := range cells {
		c := &cells[i]
		if c.Kind == sheet.Empty || c.Text == "" && !isNumber(c) || i+1 == len(cells) || cells[i+1].Kind == sheet.Empty {
			continue
		}
		letters := float64(utf8.RuneCountInString(c.Text))
		switch {
		case c.Style == sheet.Entry:
			letters += 2
		case c.Style == sheet.CardLine:
			letters = 1.3*letters + 2
		case c.Style == sheet.Called && c.Kind == sheet.Text:
			letters = 2.1*letters + 3
		case c.Style == sheet.Plain && s.Out.Widths == nil:
			letters += 2
		default:
			continue
		}
		if letters <= mostLetters && letters > (*w)[i] && !merged(s, r, i+1) {
			(*w)[i] = letters
		}
	}
}

func merged(s *sheet.Sheet, row, col int) bool {
	for _, m := range s.Merged {
		if m.Top <= row && row <= m.Bottom && m.Left <= col && col <= m.Right {
			return true
		}
	}
	return false
}

// downPaper is how many letters go across a sheet of paper held upright.
const downPaper = 95

// sum is how many letters go across the sheet.
func (w widths) sum() float64 {
	sum := 0.0
	for _, needs := range w {
		sum += max(standard, needs)
	}
	return sum
}

// standard is the width of a column that none is set for.
const standard = 8.5

// widen is the widths wanted, each as wide as is needed. A column that none is
// set for is widened where it needs more than the standard.
func (w widths) widen(wanted []float64) []float64 {
	out := append([]float64{}, wanted...)
	for i, needs := range w {
		switch {
		case i >= len(out) && needs > standard:
			out = append(append(out, make([]float64, i-len(out))...), needs)
		case i < len(out) && out[i] > 0 && needs > out[i]:
			out[i] = needs
		}
	}
	return out
}

// width is how many letters go across a cell, 0 where its column has the
// standard width; a cell that begins a merged block has the block's.
func width(s *sheet.Sheet, row, col int) float64 {
	last := col
	for _, m := range s.Merged {
		if m.Top == row && m.Left == col {
			last = m.Right
		}
	}
	sum := 0.0
	for c := col; c <= last && c <= len(s.Out.Widths); c++ {
		sum += s.Out.Widths[c-1]
	}
	return sum
}

// lines is how many lines a text takes when it is wrapped at whole words.
func lines(text string, width float64) int {
	n, used := 0, 0.0
	for _, part := range strings.Split(text, "\n") {
		n, used = n+1, 0
		for _, word := range strings.Fields(part) {
			w := 0.9 * float64(len([]rune(word))) // words are narrower than as many noughts
			if used > 0 && used+0.6+w > width-1 {
				n, used = n+1, 0
			}
			n += int(w / width) // a word longer than the line is broken
			used += 0.6 + w
		}
	}
	return n
}
