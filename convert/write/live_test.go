package write_test

import (
	"regexp"
	"strings"
	"testing"

	"strakebook/convert/sheet"
	"strakebook/convert/write"
)

var ourNames = regexp.MustCompile(sheet.NamePrefix + `[a-z0-9_]+`)

// Every name that a formula takes is the name of one cell that holds a figure or
// a word, and no page's name is left in braces.
func TestFormulasNameCellsThatAreThere(t *testing.T) {
	for _, in := range []write.Input{demo(), demo("units=mm", "hardwood measure=yes"), bare()} {
		book, _ := write.Book(in)
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
