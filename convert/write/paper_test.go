package write_test

import (
	"strings"
	"testing"

	"strakebook/convert/sheet"
	"strakebook/convert/write"
)

// A sheet of nothing is out of sight and is not printed, and the Summary says what
// it would need; every other sheet is in sight.
func TestSheetsOfNothingAreOutOfSight(t *testing.T) {
	book, _ := write.Lay(bare()).Book()
	left := ""
	for _, row := range book.Sheets[0].Rows {
		if len(row) > 2 && row[0].Text == "Left out" {
			left += row[2].Text + "\n"
		}
	}
	hidden := 0
	for _, s := range book.Sheets {
		nothing := len(s.Rows) < 2 || s.Rows[1] == nil || s.Rows[1][0].Style == sheet.Gone
		if s.Name == "Figures" || s.Name == "Warnings" {
			continue
		}
		if s.Hidden != nothing {
			t.Errorf("%s: hidden is %v, and that it holds nothing is %v", s.Name, s.Hidden, nothing)
		}
		if s.Hidden {
			hidden++
			if s.Out.PrintCols > 0 {
				t.Errorf("%s is hidden, and would be printed", s.Name)
			}
			if !strings.Contains(left, s.Name+": ") {
				t.Errorf("the Summary does not say that %s is left out: %s", s.Name, left)
			}
		}
	}
	if hidden == 0 {
		t.Error("a list of strakes alone leaves no sheet out")
	}
}

// A table too wide for one paper to be read goes on several, its first columns on
// each; every other is on one, and the mill order on one in all.
func TestWideTables(t *testing.T) {
	book, _ := write.Lay(demo()).Book()
	side := 0
	for _, s := range book.Sheets {
		printed := s.Out.Widths
		if n := s.Out.PrintCols; n > 0 {
			printed = printed[:n]
		}
		sum := 0.0
		for _, w := range printed {
			sum += w
		}
		const note = "dress to 1 5/64 in, work back 5/64 in once sawn" // on two lines, and all on one paper
		if last := len(printed); s.Name == "Cut list" && (s.Rows[0][last-1].Text != "Note" || 2*printed[last-1] < float64(len(note)) || s.Out.PagesWide > 1) {
			t.Errorf("%s: %q is %.0f letters wide", s.Name, s.Rows[0][last-1].Text, printed[last-1])
		}
		if s.Out.PagesWide > 1 {
			side++
			if s.Out.KeyCols == 0 || sum < 195 {
				t.Errorf("%s: %.0f letters on %d papers, %d columns on each", s.Name, sum, s.Out.PagesWide, s.Out.KeyCols)
			}
		} else if sum > 210 {
			t.Errorf("%s: %.0f letters on one paper", s.Name, sum)
		}
		if s.Out.OnePage != (s.Name == "Mill order") {
			t.Errorf("%s: on one paper in all is %v", s.Name, s.Out.OnePage)
		}
	}
	if side == 0 {
		t.Error("no table is wide")
	}
}
