package convert

import (
	"encoding/csv"
	"slices"
	"strings"
	"testing"

	"strakebook/calc"
	"strakebook/calc/finding"
	"strakebook/convert/read"
	"strakebook/convert/sheet"
	"strakebook/templates"
)

// said is what there is to say above a note about a book: code and cell.
func said(b *sheet.Book) []string {
	job, _, found := read.Books([]*sheet.Book{b}, read.Options{Headings: templates.Headings})
	_, worked := calc.Work(job)
	var all []string
	for _, f := range append(found, worked...) {
		if f.Severity > finding.Note {
			all = append(all, f.Code+" "+f.Cell.String())
		}
	}
	slices.Sort(all)
	return all
}

// Every fault planted in the demo yard is named at its cell, and nothing else is
// raised above a note.
func TestDemoFaultsAreNamed(t *testing.T) {
	text, err := templates.Books.ReadFile("demo/faults.csv")
	if err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(strings.NewReader(string(text))).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var planted []string
	for _, r := range rows[1:] {
		planted = append(planted, r[0]+" "+r[1]+"!"+r[2])
	}
	slices.Sort(planted)
	found := said(Demo())
	for _, f := range planted {
		if !slices.Contains(found, f) {
			t.Errorf("planted and not named: %s", f)
		}
	}
	for _, f := range found {
		if !slices.Contains(planted, f) {
			t.Errorf("raised and not planted: %s", f)
		}
	}
	if len(found) != len(planted) {
		t.Errorf("%d findings above a note for %d faults planted", len(found), len(planted))
	}
}

// A book to begin from is checked clean.
func TestStarterIsClean(t *testing.T) {
	for _, f := range said(Starter()) {
		t.Errorf("the starter book raises %s", f)
	}
}
