// Package source says where a value came from and how it was given, so that a
// blank, a zero, a dash and an unreadable text are never mixed. It knows
// nothing of what the values mean.
package source

import "fmt"

// Cell is a place in the builder's books. Row and Col count from one; a cell
// with Row 0 names a whole sheet, and one with no Sheet a whole book.
type Cell struct {
	Book, Sheet string
	Row, Col    int
}

// Ref is the cell's address on its sheet, like "C7"; empty for a whole sheet.
func (c Cell) Ref() string {
	if c.Row < 1 || c.Col < 1 {
		return ""
	}
	return fmt.Sprint(Column(c.Col), c.Row)
}

// String is the cell as the terminal names it: "Offsets!C7".
func (c Cell) String() string {
	switch ref := c.Ref(); {
	case c.Sheet == "":
		return c.Book
	case ref == "":
		return c.Sheet
	default:
		return c.Sheet + "!" + ref
	}
}

// Column is the letters of a column counted from one: 1 A, 26 Z, 27 AA.
func Column(n int) string {
	var letters []byte
	for ; n > 0; n = (n - 1) / 26 {
		letters = append([]byte{byte('A' + (n-1)%26)}, letters...)
	}
	return string(letters)
}

// State is how a cell gave its value.
type State uint8

// A reading's states.
const (
	Blank  State = iota // nothing there: a gap
	Given               // a value, zero among them
	Dash                // the line is not there: -, ..., n/a, nil
	Unread              // text that could not be read, and has been reported
)

// Reading is a value with the text it was written as and the cell it came from.
// Value means something only where State is Given.
type Reading[T any] struct {
	Value T
	State State
	Text  string
	Cell  Cell
}

// Is makes a given reading that has no cell of its own, such as a setting's
// default or a computed length.
func Is[T any](v T) Reading[T] { return Reading[T]{Value: v, State: Given} }

// OK says whether there is a value.
func (r Reading[T]) OK() bool { return r.State == Given }

// Or is the value where there is one and the other value where there is none.
func (r Reading[T]) Or(other T) T {
	if r.State == Given {
		return r.Value
	}
	return other
}
