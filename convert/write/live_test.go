package write_test

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

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
	for _, in := range []write.Input{demo(), unlike} {
		taken, boxed := map[string]bool{}, map[string]bool{}
		book, _ := write.Lay(in).Book()
		followed(book, taken, boxed)
		if d := cmp.Diff(taken, boxed); d != "" || len(taken) < 14 {
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

// On the cards nothing follows a setting but the batten and the blade: the words there
// say which face lies up, which end is read from and which hand the blade leans to, and
// a figure that moved without them would cut a wrong plank. What is said of battens
// that serve several planks gives way where their thickness is changed.
func TestCardsAreNeverHalfLive(t *testing.T) {
	book, _ := write.Lay(demo()).Book()
	may := []string{"strakebook_set_batten_thickness", "strakebook_set_saw_offset", "strakebook_set_spare_depth"}
	serves := 0
	for _, s := range book.Sheets {
		if !strings.HasPrefix(s.Name, "Bevels") {
			continue
		}
		for r, row := range s.Each() {
			for _, cell := range row {
				for _, name := range ourNames.FindAllString(cell.Formula, -1) {
					if !slices.Contains(may, name) {
						t.Fatalf("row %d follows %s: %s", r, name, cell.Formula)
					}
				}
				if strings.Contains(cell.Text, "serves") && cell.Formula != "" {
					serves++
				} else if strings.Contains(cell.Text, "serves,") || strings.Contains(cell.Text, "One batten serves") {
					t.Errorf("row %d does not give way: %s", r, cell.Text)
				}
			}
		}
	}
	if serves == 0 {
		t.Error("no batten serves two planks")
	}
}
