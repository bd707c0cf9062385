package write_test

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"strakebook/calc/bevel"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
	"strakebook/convert/write"
)

var ourNames = regexp.MustCompile(sheet.NamePrefix + `[a-z0-9_]+`)

// Every name that a formula takes is the name of one cell that holds a figure or
// a word, and no page's name is left in braces.
func TestFormulasNameCellsThatAreThere(t *testing.T) {
	for _, in := range []write.Input{demo(), demo("units=mm", "hardwood measure=yes"), bare()} {
		book, _ := write.Lay(in).Book()
		sheets := map[string]*sheet.Sheet{}
		for _, s := range book.Sheets {
			sheets[s.Name] = s
		}
		names := map[string]bool{}
		for _, n := range book.Names {
			if names[n.Name] {
				t.Errorf("the name %s is given twice", n.Name)
			}
			if s := sheets[n.Sheet]; s == nil || n.Range.Top != n.Range.Bottom {
				t.Errorf("the name %s is of %v on %q", n.Name, n.Range, n.Sheet)
			}
			names[n.Name] = true
		}
		formulas := 0
		for _, s := range book.Sheets {
			for r, row := range s.Each() {
				for c, cell := range row {
					if cell.Formula == "" {
						continue
					}
					formulas++
					for _, name := range ourNames.FindAllString(cell.Formula, -1) {
						if !names[name] {
							t.Fatalf("%s row %d column %d takes %s, which is no name: %s", s.Name, r, c+1, name, cell.Formula)
						}
					}
					if strings.ContainsAny(cell.Formula, "{}") {
						t.Fatalf("%s row %d column %d: %s", s.Name, r, c+1, cell.Formula)
					}
				}
			}
		}
		if formulas == 0 {
			t.Error("no formulas")
		}
	}
}

// The settings in boxes are those that formulas follow, all of them and no other.
func TestSettingsInBoxesAreFollowed(t *testing.T) {
	unlike := demo()
	unlike.Result.Runs = slices.Clone(unlike.Result.Runs)
	for i := range unlike.Result.Runs {
		unlike.Result.Runs[i].Strake.Slope = source.Reading[float64]{}
	}
	unlike.Result.Rules.Bevel.Trials = []bevel.Trial{{Reads: -3, Cuts: -3}, {Cuts: 0.25}, {Reads: 5, Cuts: 5.5}}
	for _, in := range []write.Input{demo(), unlike} {
		taken, boxed := map[string]bool{}, map[string]bool{}
		book, _ := write.Lay(in).Book()
		followed(book, taken, boxed)
		if d := cmp.Diff(taken, boxed); d != "" || len(taken) < 16 {
			t.Errorf("followed, and in boxes: %s", d)
		}
	}
}

// followed adds the settings that a book's formulas take, and those in boxes.
func followed(book *sheet.Book, taken, boxed map[string]bool) {
	inBox := map[int]bool{}
	for _, s := range book.Sheets {
		for r, row := range s.Each() {
			for c, cell := range row {
				for _, name := range ourNames.FindAllString(cell.Formula, -1) {
					if strings.Contains(name, "_set_") {
						taken[name] = true
					}
				}
				if s.Name == "Settings" && c == 1 && cell.Style == sheet.Input {
					inBox[r] = true
				}
			}
		}
	}
	for _, n := range book.Names {
		if n.Sheet == "Settings" && strings.Contains(n.Name, "_set_") && inBox[n.Range.Top] {
			boxed[n.Name] = true
		}
	}
}
