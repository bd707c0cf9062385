package convert

import (
	"slices"
	"testing"

	"strakebook/calc/finding"
	"strakebook/convert/sheet"
)

// What the builder writes in the Decision column of the cut list of the demo yard
// is followed when that book is handed back, and holds in the book after it.
func TestDecisionsAreFollowed(t *testing.T) {
	_, list := cutDemo(t)
	book := reopen(t, list)
	decide(t, book, "offset-jump", "Offsets!N16", "take")
	decide(t, book, "offset-jump", "Offsets!G20", "3-7-6")
	decide(t, book, "offset-gap", "Offsets!K15", "sometime")
	job, err := readBooks([]*sheet.Book{book}, Options{})
	if err != nil {
		t.Fatal(err)
	}
	found := job.Work().Findings
	for _, want := range []struct{ code, cell, suggests string }{
		{"offset-decided", "Offsets!N16", "5-6-1"},
		{"offset-decided", "Offsets!G20", "3-7-6"},
		{"decision-idle", "Offsets!K15", ""},
	} {
		if !slices.ContainsFunc(found, func(f finding.Finding) bool {
			return f.Code == want.code && f.Cell.String() == want.cell && f.Suggests == want.suggests
		}) {
			t.Errorf("no %s at %s with %q", want.code, want.cell, want.suggests)
		}
	}
	for _, f := range found {
		if f.Code == "offset-jump" {
			t.Errorf("decided and still raised: %s", f.Cell)
		}
	}
}

func reopen(t *testing.T, path string) *sheet.Book {
	t.Helper()
	books, err := open([]string{path})
	if err != nil {
		t.Fatal(err)
	}
	return books[0]
}

// decide writes a decision beside a finding on a book's Warnings sheet.
func decide(t *testing.T, book *sheet.Book, code, cell, decision string) {
	t.Helper()
	for _, s := range book.Sheets {
		if s.Name != "Warnings" {
			continue
		}
		for row := range s.Rows {
			if s.At(row+1, 9).Text == code && s.At(row+1, 3).Text == cell {
				s.Rows[row][7] = sheet.Cell{Kind: sheet.Text, Text: decision}
				return
			}
		}
	}
	t.Fatalf("no %s at %s on the Warnings sheet", code, cell)
}
