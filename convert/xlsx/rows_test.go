package xlsx

import (
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"github.com/xuri/excelize/v2"

	"strakebook/convert/sheet"
)

// What is written is read back the same, by us and by the library: texts that look
// like mark-up, escapes and formulas, figures to their last digit, results beside
// formulas, rows that are made late, and merged cells under a filter.
func TestRowsAreReadBack(t *testing.T) {
	texts := []string{"a<b & \"c\">'d'", "=1+1", "_x000D_", "_x005F_x000D_", "_x12345 _x000d", "  two\nlines ", "½ ° ’", "3-4-6", "-", "\U0001F6F6"}
	s := &sheet.Sheet{Name: "Rows & <more>", Merged: []sheet.Range{{Top: 13, Left: 3, Bottom: 13, Right: 30}}}
	for c, head := range []string{"Text", "Figure", "Result", "Flag"} {
		s.Set(1, c+1, sheet.Cell{Kind: sheet.Text, Text: head, Style: sheet.Heading})
	}
	for i, text := range texts {
		s.Set(i+2, 1, sheet.Cell{Kind: sheet.Text, Text: text, Style: sheet.Words})
		s.Set(i+2, 3, sheet.Cell{Kind: sheet.Text, Text: text, Formula: fmt.Sprintf(`"<"&A%d`, i+2)})
		s.Set(i+2, 4, sheet.Cell{Kind: sheet.Bool, Number: float64(i % 2), Rule: true})
	}
	figures := []float64{0, -2.5, 0.1 + 0.2, 1e21, 1e-7, 123456789.125}
	for i, v := range figures {
		s.Set(i+2, 2, sheet.Cell{Kind: sheet.Number, Number: v, Style: sheet.Given})
	}
	const late = 500
	first := len(s.Rows) + 1
	s.Rows = append(s.Rows, make([][]sheet.Cell, late)...)
	s.Out = sheet.Layout{HeadRow: 1, FilterTo: 4, Widths: []float64{20, 10}, Later: []sheet.Later{{Row: first, Count: late, Make: func(i int) []sheet.Cell {
		return []sheet.Cell{{Kind: sheet.Text, Text: fmt.Sprint("late ", i)}, {Kind: sheet.Number, Number: float64(i), Style: sheet.Money}}
	}}}}
	path := filepath.Join(t.TempDir(), "out.xlsx")
	if err := Save(path, false, &sheet.Book{Sheets: []*sheet.Sheet{s}}, nil, nil); err != nil {
		t.Fatal(err)
	}
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	book, err := Read(path, data)
	if err != nil {
		t.Fatal(err)
	}
	theirs, err := excelize.OpenFile(path)
	if err != nil {
		t.Fatal(err)
	}
	defer theirs.Close()
	got := book.Sheets[0]
	for i, want := range texts {
		at := fmt.Sprint("A", i+2)
		text, err := theirs.GetCellValue(s.Name, at)
		if cell := got.At(i+2, 1); cell.Text != want || text != want || err != nil {
			t.Errorf("%s: %q was read as %q, and by the library as %q, %v", at, want, cell.Text, text, err)
		}
		if cell := got.At(i+2, 3); cell.Text != want || cell.Formula == "" || cell.NoValue {
			t.Errorf("%s: the result %q was read as %+v", at, want, cell)
		}
		if cell := got.At(i+2, 4); cell.Kind != sheet.Bool || cell.Number != float64(i%2) {
			t.Errorf("%s: %v was read as %+v", at, i%2 == 1, cell)
		}
	}
	for i, want := range figures {
		if cell := got.At(i+2, 2); cell.Kind != sheet.Number || cell.Number != want {
			t.Errorf("%v was read as %+v", want, cell)
		}
	}
	for i := range late {
		if text, figure := got.At(first+i, 1), got.At(first+i, 2); text.Text != fmt.Sprint("late ", i) || figure.Number != float64(i) {
			t.Fatalf("late row %d was read as %+v, %+v", i, text, figure)
		}
	}
	if merged, err := theirs.GetMergeCells(s.Name); err != nil || len(merged) != 1 || merged[0].GetEndAxis() != "AD13" {
		t.Errorf("merged cells %v, %v", merged, err)
	}
	if len(got.Merged) != 1 || got.Merged[0] != s.Merged[0] {
		t.Errorf("merged cells were read as %v", got.Merged)
	}
}
