package hull

import (
	"fmt"

	"strakebook/calc/finding"
	"strakebook/calc/source"
)

// StrakeFromHull is strakes whose length or width the list leaves to the hull.
var StrakeFromHull = &finding.Kind{
	Code: "strake-from-hull", Severity: finding.Note, Title: "strakes' lengths or widths worked out from the hull",
	Why:    "What the list leaves blank is worked out from the offsets and how the skin is lined off; the hull on the stocks may differ.",
	Remedy: "measure them on the moulds before cutting; what is written in the list is gone by",
}

// filled counts the strakes that are given what the list leaves blank.
type filled struct {
	lengths, widths int
	cells           []source.Cell // of their rows
}

func (f *filled) see(row, one Strake) {
	length, width := !row.Length.OK() && one.Length.OK(), !row.Width.OK() && one.Width.OK()
	if length {
		f.lengths++
	}
	if width {
		f.widths++
	}
	if n := len(f.cells); (length || width) && (n == 0 || f.cells[n-1] != row.Cell) {
		f.cells = append(f.cells, row.Cell)
	}
}

func (f *filled) found() finding.List {
	if len(f.cells) == 0 {
		return nil
	}
	return finding.List{{Kind: StrakeFromHull, Cell: f.cells[0], Also: f.cells[1:], Text: f.what() + " worked out from the hull"}}
}

// what is how many strakes are given which figures.
func (f *filled) what() string {
	of := func(what string, n int) string {
		if n == 1 {
			return fmt.Sprintf("the %s of one strake", what)
		}
		return fmt.Sprintf("the %ss of %d strakes", what, n)
	}
	is := " are"
	if f.lengths+f.widths == 1 {
		is = " is"
	}
	switch {
	case f.widths == 0:
		return of("length", f.lengths) + is
	case f.lengths == 0:
		return of("width", f.widths) + is
	}
	return of("length", f.lengths) + " and " + of("width", f.widths) + is
}
