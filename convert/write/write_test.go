package write_test

import (
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/google/go-cmp/cmp"

	"strakebook/calc"
	"strakebook/convert"
	"strakebook/convert/read"
	"strakebook/convert/sheet"
	"strakebook/convert/write"
	"strakebook/templates"
)

// worked is a book worked out, as the doors hand it on to be written.
func worked(b *sheet.Book, set ...string) write.Input {
	job, tables, findings := read.Books([]*sheet.Book{b}, read.Options{Headings: templates.Headings, Set: set})
	result, found := calc.Work(job)
	all := append(findings, found...)
	all.Sort()
	in := write.Input{Books: []*sheet.Book{b}, Job: job, Result: result, Tables: tables, Findings: all, Version: "test", Cut: true}
	for _, s := range b.Sheets {
		in.Taken = append(in.Taken, s.Name)
	}
	return in
}

// demo is the demo yard worked out. As it is, it is worked out once, and shared: a
// test that changes it changes a copy.
func demo(set ...string) write.Input {
	if len(set) == 0 {
		return demoYard()
	}
	return worked(convert.Demo(), set...)
}

var demoYard = sync.OnceValue(func() write.Input { return worked(convert.Demo()) })

// bare is a yard of nothing but two strakes.
func bare(set ...string) write.Input {
	s := &sheet.Sheet{Name: "Strakes"}
	for r, row := range [][]string{{"Strake", "Thickness (mm)", "Width (mm)", "Length (mm)"}, {"1", "25", "120", "12000"}, {"2", "25", "120", "11800"}} {
		for c, v := range row {
			s.Set(r+1, c+1, sheet.Cell{Kind: sheet.Text, Text: v})
		}
	}
	return worked(&sheet.Book{Path: "strakes.xlsx", Name: "strakes.xlsx", Sheets: []*sheet.Sheet{s}}, set...)
}

// Fore ends go to the fore-end saw and after ends to the after-end saw, and outside
// feathers stand at the ends that they point from, whichever way that is.
func TestEndsGoToTheirOwnSaws(t *testing.T) {
	for point, want := range map[string][2]string{"aft": {"feather inside, fore-end saw", "feather outside, after-end saw"}, "forward": {"feather outside, fore-end saw", "feather inside, after-end saw"}} {
		rows := cellsOf(t, bare("outside feathers point="+point, "tries=1"), "Cut list")
		scarfed := 0
		for i, head := range []string{"Fore end", "After end"} {
			c := slices.IndexFunc(rows[0], func(c sheet.Cell) bool { return c.Text == head })
			for _, row := range rows[1:] {
				switch {
				case len(row) <= c || !strings.HasPrefix(row[c].Text, "feather"):
				case row[c].Text != want[i]:
					t.Errorf("%s, %s: %q", point, head, row[c].Text)
				default:
					scarfed++
				}
			}
		}
		if scarfed < 8 {
			t.Errorf("%s: %d ends scarfed", point, scarfed)
		}
	}
}

// Every sheet is headed on its first row, every row of its table has no more
// cells than headings, and no heading stands twice.
func TestSheetsAreHeadedOnTheFirstRow(t *testing.T) {
	for _, in := range []write.Input{demo(), demo("units=mm"), demo("units=inches"), bare()} {
		book, _ := write.Lay(in).Book()
		for _, s := range book.Sheets {
			if s.Out.HeadRow != 1 {
				t.Errorf("%s: headed on row %d", s.Name, s.Out.HeadRow)
			}
			seen := map[string]bool{}
			for _, c := range s.Rows[0] {
				if c.Style != sheet.Heading && c.Style != sheet.CardHead || c.Text == "" {
					t.Errorf("%s: row 1 holds %q, no heading", s.Name, c.Text)
				}
				if key := strings.ToLower(c.Text); seen[key] && !strings.HasPrefix(s.Name, "Offsets") {
					t.Errorf("%s: two headings %q", s.Name, c.Text)
				} else {
					seen[key] = true
				}
			}
			for r, row := range s.Each() {
				if len(row) > len(s.Rows[0]) {
					t.Errorf("%s: row %d has %d cells under %d headings", s.Name, r, len(row), len(s.Rows[0]))
				}
			}
			if s.Out.FilterTo > len(s.Rows) {
				t.Errorf("%s: filtered to row %d of %d", s.Name, s.Out.FilterTo, len(s.Rows))
			}
		}
	}
}

// The sheets of the new book stand in the order in which a yard looks at them.
func TestSheetsAreInOrder(t *testing.T) {
	book, _ := write.Lay(bare()).Book()
	var names []string
	for _, s := range book.Sheets {
		names = append(names, s.Name)
	}
	at := -1
	for _, want := range []string{"Summary", "Cut list", "Mill order", "Warnings", "Bevels", "Scarfs", "Joints", "Stock", "Offsets", "Settings", "Cautions"} {
		i := slices.Index(names, want)
		if i <= at {
			t.Errorf("%s is sheet %d of %q", want, i+1, names)
		}
		at = i
	}
}

// A sheet of the builder's keeps its name, and ours is found another.
func TestNamesDoNotClash(t *testing.T) {
	in := bare()
	in.Taken = []string{"cut LIST", "Stock", "Stock (checked)"}
	book, _ := write.Lay(in).Book()
	seen := map[string]bool{}
	for _, n := range in.Taken {
		seen[strings.ToLower(n)] = true
	}
	for _, s := range book.Sheets {
		if seen[strings.ToLower(s.Name)] {
			t.Errorf("the name %q stands twice", s.Name)
		}
		seen[strings.ToLower(s.Name)] = true
	}
}

// The tables that go out as text are those people read by other programs, hold
// no totals and headings of groups, and as many fields a row as headings.
func TestTables(t *testing.T) {
	in := demo()
	var names []string
	for _, table := range write.Lay(in).Tables() {
		rows := slices.Collect(table.Rows)
		names = append(names, table.Name)
		for i, row := range rows {
			if len(row) != len(rows[0]) {
				t.Errorf("%s: row %d has %d fields under %d headings", table.Name, i+1, len(row), len(rows[0]))
			}
			if slices.Contains(row, "Total") {
				t.Errorf("%s: a total among its rows", table.Name)
			}
			if n := len(row) - 1; i == 1 && table.Name == "bevels" && !(strings.HasSuffix(row[n-1], " edge") && strings.Contains(row[n], "face up") && strings.Contains(row[n], "Plank, in 1.000 x ")) ||
				i > 0 && table.Name == "hull" && row[n] == "" || i == 1 && table.Name == "hull" && !strings.HasSuffix(row[n], "outside of planking") {
				t.Errorf("%s: row %d does not say what it stands under: %q", table.Name, i+1, row)
			}
		}
		want := map[string]int{"cut-list": len(in.Result.Plan.Pieces), "mill-order": len(in.Result.Plan.Order), "warnings": len(in.Findings), "scarfs": len(in.Result.Scarfs), "joints": len(in.Result.Runs)}
		if n, ok := want[table.Name]; ok && n != len(rows)-1 {
			t.Errorf("%s: %d lines, want %d", table.Name, len(rows)-1, n)
		}
	}
	for _, want := range []string{"cut-list", "mill-order", "warnings", "bevels", "scarfs", "joints", "stock", "offsets"} {
		if !slices.Contains(names, want) {
			t.Errorf("no table %s among %q", want, names)
		}
	}
}

// Lines made as they are written are those that are made at once.
func TestLaterLines(t *testing.T) {
	in := demo()
	atOnce, _ := write.Lay(in).Book()
	undo := write.MakeLater()
	defer undo()
	later, _ := write.Lay(in).Book()
	for i, s := range atOnce.Sheets {
		if d := cmp.Diff(wholly(s), wholly(later.Sheets[i])); d != "" {
			t.Errorf("%s: %s", s.Name, d)
		}
	}
	if rows := later.Sheets[slices.IndexFunc(later.Sheets, func(s *sheet.Sheet) bool { return s.Name == "Cut list" })].Rows; rows[1] != nil {
		t.Error("the cut list was made at once")
	}
}
