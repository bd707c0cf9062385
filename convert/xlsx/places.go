package xlsx

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/convert/sheet"
)

// place is an address such as C7 as column and row.
func place(ref []byte) (col, row int, ok bool) {
	i := 0
	for i < len(ref) && ref[i] >= 'A' && ref[i] <= 'Z' && i < 4 {
		col = col*26 + int(ref[i]-'A') + 1
		i++
	}
	row, ok = whole(ref[i:])
	return col, row, ok && i > 0 && row > 0 && row <= mostRows && col <= mostCols
}

// whole is a whole number of at most nine figures.
func whole(text []byte) (n int, ok bool) {
	if len(text) == 0 || len(text) > 9 {
		return 0, false
	}
	for _, c := range text {
		if c < '0' || c > '9' {
			return 0, false
		}
		n = n*10 + int(c-'0')
	}
	return n, true
}

// block is an address such as B3:W14 as a range.
func block(ref string) (sheet.Range, error) {
	from, to, ok := strings.Cut(strings.ReplaceAll(ref, "$", ""), ":")
	if !ok {
		to = from
	}
	left, top, fine := place([]byte(from))
	right, bottom, also := place([]byte(to))
	if !fine || !also {
		return sheet.Range{}, fmt.Errorf("%.40s is no block of cells", ref)
	}
	return sheet.Range{Top: min(top, bottom), Left: min(left, right), Bottom: max(top, bottom), Right: max(left, right)}, nil
}

// covering finds which merged block a cell lies in. Cells are asked for in their
// order, row by row.
type covering struct {
	blocks []sheet.Range // by their top, those not yet reached
	active []sheet.Range // by their left
}

func newCovering(merged []sheet.Range) *covering {
	blocks := slices.Clone(merged)
	slices.SortFunc(blocks, func(a, b sheet.Range) int { return a.Top - b.Top })
	return &covering{blocks: blocks}
}

// under says that a cell lies in a merged block and is not its first.
func (c *covering) under(row, col int) bool {
	if n := len(c.active); n > 0 && slices.ContainsFunc(c.active, func(b sheet.Range) bool { return b.Bottom < row }) {
		c.active = slices.DeleteFunc(c.active, func(b sheet.Range) bool { return b.Bottom < row })
	}
	for len(c.blocks) > 0 && c.blocks[0].Top <= row {
		if c.blocks[0].Bottom >= row {
			c.active = append(c.active, c.blocks[0])
		}
		c.blocks = c.blocks[1:]
	}
	for _, b := range c.active {
		if col >= b.Left && col <= b.Right {
			return row != b.Top || col != b.Left
		}
	}
	return false
}
