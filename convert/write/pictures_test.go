package write_test

import (
	"math"
	"strings"
	"testing"

	"strakebook/convert/sheet"
	"strakebook/convert/write"
)

// Every line of every picture goes through cells that hold figures within its
// axes, and at least one of them; every picture has a title and units.
func TestPicturesAreDrawnOfFigures(t *testing.T) {
	for _, in := range []write.Input{demo(), demo("units=mm"), bare()} {
		book, _ := write.Lay(in).Book()
		sheets := map[string]*sheet.Sheet{}
		for _, s := range book.Sheets {
			sheets[s.Name] = &sheet.Sheet{Name: s.Name, Rows: wholly(s)}
		}
		charts := 0
		for _, s := range book.Sheets {
			for _, c := range s.Out.Charts {
				charts++
				if c.Title == "" || c.X.Title == "" || c.Y.Title == "" || len(c.Lines) == 0 {
					t.Errorf("%s: a picture %q along %q up %q of %d lines", s.Name, c.Title, c.X.Title, c.Y.Title, len(c.Lines))
				}
				for _, l := range c.Lines {
					if s.Name == "Bevel curves" {
						ofOnePlank(t, sheets[l.Sheet], c, l)
					}
					if n := drawnPoints(t, sheets[l.Sheet], c, l); n == 0 && l.Name != "read" {
						t.Errorf("%s: nothing drawn of %q", c.Title, l.Name)
					}
				}
			}
		}
		if charts == 0 {
			t.Error("no pictures")
		}
	}
}

// wholly is all rows of a sheet, made.
func wholly(s *sheet.Sheet) [][]sheet.Cell {
	var all [][]sheet.Cell
	for _, row := range s.Each() {
		all = append(all, row)
	}
	return all
}

// ofOnePlank holds a curve to the lines of its plank's card, all of them.
func ofOnePlank(t *testing.T, s *sheet.Sheet, c sheet.Chart, l sheet.ChartLine) {
	strake := func(row int) string { return s.At(row, 1).Text }
	of := strake(l.X.Top)
	if !strings.Contains(c.Title, " "+of+",") || strake(l.X.Top-1) == of || strake(l.X.Bottom+1) == of {
		t.Errorf("%s is drawn of rows %d to %d, between %q and %q", c.Title, l.X.Top, l.X.Bottom, strake(l.X.Top-1), strake(l.X.Bottom+1))
	}
	for row := l.X.Top; row <= l.X.Bottom; row++ {
		if strake(row) != of {
			t.Errorf("%s is drawn of row %d, which is of %q", c.Title, row, strake(row))
		}
	}
}

// drawnPoints is how many points of a line have both their figures; none may lie
// off the picture but readings that are themselves in doubt.
func drawnPoints(t *testing.T, s *sheet.Sheet, c sheet.Chart, l sheet.ChartLine) int {
	if s == nil || l.X.Bottom-l.X.Top != l.Y.Bottom-l.Y.Top || l.X.Left != l.X.Right || l.Y.Left != l.Y.Right {
		t.Fatalf("%s: %q is drawn of %v and %v on %q", c.Title, l.Name, l.X, l.Y, l.Sheet)
	}
	n := 0
	for i := 0; i <= l.X.Bottom-l.X.Top; i++ {
		x, y := s.At(l.X.Top+i, l.X.Left), s.At(l.Y.Top+i, l.Y.Left)
		if x.Kind != sheet.Number || y.Kind != sheet.Number {
			continue
		}
		n++
		if off := math.Min(x.Number-c.X.From, c.X.To-x.Number); off < -1e-6 {
			t.Errorf("%s: %q lies off the picture at %v, from %v to %v", c.Title, l.Name, x.Number, c.X.From, c.X.To)
		}
		if off := math.Min(y.Number-c.Y.From, c.Y.To-y.Number); off < -1e-6 && l.Name != "read" && l.Name != "faired" && l.Name != "to look at" {
			t.Errorf("%s: %q lies off the picture at %v, from %v to %v", c.Title, l.Name, y.Number, c.Y.From, c.Y.To)
		}
	}
	return n
}

// The body plan is drawn to one scale: as many feet an inch up as across.
func TestBodyPlanIsToOneScale(t *testing.T) {
	book, _ := write.Lay(demo()).Book()
	for _, s := range book.Sheets {
		for _, c := range s.Out.Charts {
			if strings.HasPrefix(c.Title, "Body plan") != c.Equal {
				t.Errorf("%s: one scale is %v", c.Title, c.Equal)
			}
		}
	}
}

// One figure that lost its comma does not shrink a picture, which tells of it; points
// that only spread are all in it.
func TestAxesAreSetByTheBulk(t *testing.T) {
	x, y := []float64{0, 1, -2, 3, -4, 4}, []float64{0, 0.5, 1, 2, 5, 6}
	if n, told := write.Bulk(x, y); n != len(x) || told {
		t.Errorf("of %d points %d set the axes, told: %v", len(x), n, told)
	}
	if n, told := write.Bulk(append(x, 4), append(y, 60)); n != len(x) || !told {
		t.Errorf("with one far off %d set the axes, told: %v", n, told)
	}
}
