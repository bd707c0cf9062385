package write_test

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"strakebook/convert/sheet"
	"strakebook/convert/write"
)

// cellsOf is the rows of a sheet of the book, headings first.
func cellsOf(t *testing.T, in write.Input, name string) [][]sheet.Cell {
	t.Helper()
	book, _ := write.Lay(in).Book()
	i := slices.IndexFunc(book.Sheets, func(s *sheet.Sheet) bool { return s.Name == name })
	if i < 0 {
		t.Fatalf("no sheet %s", name)
	}
	return book.Sheets[i].Rows
}

// Of lines and of stations the worst stands first, all that is found is counted,
// and the departures are in eighths or millimetres whatever the table's own step.
func TestFairnessWorstFirst(t *testing.T) {
	for _, units := range []string{"feet", "mm"} {
		in := demo("units=" + units)
		if units == "feet" {
			in = demo()
		}
		count, lines, largest := 0, 0, 0.0
		var last []sheet.Cell
		for _, row := range cellsOf(t, in, "Fairness")[1:] {
			if len(row) < 6 || row[5].Kind != sheet.Number {
				break
			}
			if last != nil && (last[0].Text == "station") == (row[0].Text == "station") {
				a, b := last[5].Number, row[5].Number
				if a < b || a == b && math.Abs(last[3].Number) < math.Abs(row[3].Number) {
					t.Errorf("%s: %s %s stands below %s %s", units, row[0].Text, row[1].Text, last[0].Text, last[1].Text)
				}
			}
			if row[0].Text != "station" {
				lines++
				count += int(row[5].Number)
				largest = max(largest, math.Abs(row[3].Number))
			}
			last = row
		}
		want, most := 0, 0.0
		for _, f := range in.Result.Fair {
			want += f.Findings
			for _, d := range f.Departure {
				most = max(most, math.Abs(d.Inches()*8))
				if units == "mm" {
					most = max(most, math.Abs(d.Millimetres()))
				}
			}
		}
		if lines == 0 || want == 0 || count != want || math.Abs(largest-most) > 0.6 {
			t.Errorf("%s: %d findings on %d lines, want %d; largest %v, want %v", units, count, lines, want, largest, most)
		}
	}
}

// Two tables of other stations stand each under its own.
func TestOffsetsOfTwoTables(t *testing.T) {
	b := &sheet.Book{Path: "two.xlsx", Name: "two.xlsx"}
	for n, name := range []string{"Hull", "Cabin"} {
		s := &sheet.Sheet{Name: name}
		s.Set(1, 1, sheet.Cell{Kind: sheet.Text, Text: "Offsets, ft-in-8ths, outside of planking"})
		s.Set(2, 1, sheet.Cell{Kind: sheet.Text, Text: "Station"})
		for k := range 5 {
			s.Set(2, k+2, sheet.Cell{Kind: sheet.Text, Text: fmt.Sprint(10*n + k + 1)})
			for l := range 3 {
				s.Set(3+l, 1, sheet.Cell{Kind: sheet.Text, Text: fmt.Sprintf("HB WL %d-0-0", 4*n+l+1)})
				s.Set(3+l, k+2, sheet.Cell{Kind: sheet.Text, Text: fmt.Sprintf("%d-%d-%d", n+1, 2*l+k, k)})
			}
		}
		b.Sheets = append(b.Sheets, s)
	}
	in := worked(b)
	if len(in.Job.Offsets) != 2 {
		t.Fatalf("%d tables were read", len(in.Job.Offsets))
	}
	rows := cellsOf(t, in, "Offsets")
	at := slices.IndexFunc(rows, func(row []sheet.Cell) bool { return len(row) > 3 && row[1].Text == "Station" })
	if at < 0 || rows[at][3].Text != "11" || rows[0][3].Text != "1" {
		t.Errorf("the second table's lines do not stand under its stations: %v", rows[:min(9, len(rows))])
	}
}
