package write_test

import (
	"slices"
	"strings"
	"testing"

	"strakebook/calc/bevel"
	"strakebook/convert/write"
)

// The cards of a plank that is sawn on both edges say where its width is measured
// from; those of the others, whose other edge is square, do not.
func TestCardsOfBothEdges(t *testing.T) {
	in := demo()
	result := in.Result
	twice := result.Bevels[1]
	twice.Edge = bevel.Lower
	result.Bevels = append(slices.Clone(result.Bevels[:3]), twice)
	in.Result = result
	said := 0
	book, _ := write.Lay(in).Book()
	for _, s := range book.Sheets {
		for _, row := range s.Rows {
			for _, c := range row {
				if strings.HasPrefix(s.Name, "Bevels") && strings.Contains(c.Text, "Both edges are sawn") {
					said++
				}
			}
		}
	}
	if said != 2 {
		t.Errorf("said on %d cards of 4, want 2", said)
	}
}
