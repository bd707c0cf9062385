package stock

import (
	"strings"
	"testing"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Lines of a builder's list: numbered where several bear one mark, left out where
// they cannot be cut, and not without end.
func TestWantedRuns(t *testing.T) {
	line := func(mark string, long float64, count int) Wanted {
		return Wanted{Mark: mark, Thickness: in(1), Width: in(4), Length: in(long), Count: source.Is(count)}
	}
	one := line("b", 20, 0)
	one.Count = source.Reading[int]{}
	lacking := line("c", 20, 1)
	lacking.Width = source.Reading[measure.Length]{State: source.Unread}
	list := []Wanted{line("a", 30, 2), one, line("a", 10, 1), lacking, line("d", -5, 1), line("e", 9e5, 1), line("none", 5, 0), line("f", 40, mostGiven-3), line("b2", 3, 1)}
	runs := WantedRuns(list)
	var marks []string
	for _, r := range runs[:4] {
		marks = append(marks, r.Name)
	}
	if got := strings.Join(marks, " "); got != "a-1 a-2 b a-3" || len(runs) != 5 || runs[4].Name != "b2" {
		t.Errorf("%s, %d in all", got, len(runs))
	}
	var said []string
	for _, f := range CheckWanted(list, DefaultRules()) {
		said = append(said, f.Text)
	}
	want := `piece "c" has no width that could be read; piece "d" is -0' 5" long; piece "e" is 75000' 0" long; piece "f" is wanted 99997 times: with it the list comes to more than 100000 pieces`
	if got := strings.Join(said, "; "); got != want {
		t.Errorf("%s", got)
	}
}
