package convert

import (
	"math"
	"os"
	"path/filepath"
	"testing"

	"strakebook/convert/sheet"
	"strakebook/convert/write"
	"strakebook/convert/xlsx"
)

// Every stored figure of a live formula is what the formula comes to: the book
// is written without them, and what is worked out on reading it is held to them.
func TestStoredFiguresAreWhatTheirFormulasComeTo(t *testing.T) {
	for _, set := range [][]string{nil, {"units=mm", "strips flat=yes", "dressing by=quarters"}, {"units=inches", "hardwood measure=yes", "face up=inside", "batten thickness=3/4", "saw faired bevels=yes", "scarf nib=1/16"}} {
		done, err := readBooks([]*sheet.Book{Starter()}, Options{Set: set})
		if err != nil {
			t.Fatal(err)
		}
		ours, _ := write.Lay(done.Work().input(true)).Book()
		path := filepath.Join(t.TempDir(), "out.xlsx")
		if err := xlsx.Save(path, false, bareOf(ours), nil, nil); err != nil {
			t.Fatal(err)
		}
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		back, err := xlsx.Read(path, data)
		if err != nil {
			t.Fatal(err)
		}
		formulas := 0
		for i, s := range ours.Sheets {
			for r, row := range s.Each() {
				for c, want := range row {
					if want.Formula == "" || !tried(r-1) {
						continue
					}
					formulas++
					got := back.Sheets[i].At(r, c+1)
					if !alike(want, got) {
						t.Fatalf("%v: %s row %d column %d: %q comes to %v %q, and %v %q is stored", set, s.Name, r, c+1, want.Formula, got.Number, got.Text, want.Number, want.Text)
					}
				}
			}
		}
		if formulas < 50 {
			t.Errorf("only %d formulas", formulas)
		}
	}
}

func alike(want, got sheet.Cell) bool {
	if want.Kind == sheet.Number {
		return got.Kind == sheet.Number && math.Abs(want.Number-got.Number) <= 1e-6*max(1, math.Abs(want.Number))
	}
	return want.Text == got.Text
}

// tried says that a row's formulas are worked out: the first rows of every sheet,
// and every ninth after them, for the library takes its time.
func tried(row int) bool { return row < 6 || row%9 == 0 }

// bareOf is the book without the figures stored beside its formulas.
func bareOf(b *sheet.Book) *sheet.Book {
	out := &sheet.Book{Names: b.Names}
	for _, s := range b.Sheets {
		bare := *s
		bare.Rows = nil
		bare.Out.Later = nil
		for r, row := range s.Each() {
			cells := append([]sheet.Cell{}, row...)
			for c := range cells {
				if cells[c].Formula != "" && tried(r-1) {
					cells[c].Kind, cells[c].Number, cells[c].Text = sheet.Empty, 0, ""
				}
			}
			bare.Rows = append(bare.Rows, cells)
		}
		out.Sheets = append(out.Sheets, &bare)
	}
	return out
}
