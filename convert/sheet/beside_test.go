package sheet

import (
	"strings"
	"testing"
)

// What is beside a cell is written down with how many are known by the same, and read
// back as the name of one alone only where it was of one alone.
func TestOnesOfASheet(t *testing.T) {
	s := &Sheet{Name: "Strakes"}
	for r, row := range [][]string{{"Strake", "Side", "Width"}, {"2", "port", "5"}, {"2", "starboard", ""}, {"3", "port", ""}} {
		for c, v := range row {
			if v != "" {
				s.Set(r+1, c+1, Cell{Kind: Text, Text: v})
			}
		}
	}
	ones := s.Ones()
	for _, c := range []struct {
		row   int
		want  string
		alone bool
	}{{2, "2 / Width (one of 2)", false}, {3, "2 / Width (one of 2)", false}, {4, "3 / Width", true}} {
		written := OneOf(s.Beside(c.row, 3), ones)
		was, alone := Alone(written)
		if written != c.want || alone != c.alone || was != s.Beside(c.row, 3) {
			t.Errorf("row %d: %q, of %q alone %v", c.row, written, was, alone)
		}
		if one := ones["3 / width"]; one != (One{4, 3, 1}) {
			t.Errorf("3 / width is %+v", one)
		}
	}
	for row := 1; row <= 5; row++ {
		for col := 1; col <= 4; col++ {
			key := strings.ToLower(s.Beside(row, col))
			if one := ones[key]; row <= 4 && col <= 3 && (one.Of == 0 || one.Of == 1 && (one.Row != row || one.Col != col)) {
				t.Errorf("row %d column %d, %q: %+v", row, col, key, one)
			}
		}
	}
	if got := OneOf("2 / Width", nil); got != "2 / Width (one of many)" {
		t.Errorf("of a sheet too large: %q", got)
	}
}
