package read

import (
	"slices"
	"testing"

	"strakebook/calc/finding"
	"strakebook/convert/sheet"
)

// headings is as much of the heading words as these tests need.
const headings = "meaning,words\n" +
	"strake,strake;strakes\nskin,skin\nlength,length\nwidth,width\nthickness,thickness\ncount,count\nmark,board;mark\nspecies,species\n"

// racked is a book of one sheet with a rack of boards at B2.
func racked() []*sheet.Book {
	s := &sheet.Sheet{Name: "Lumber"}
	for r, row := range [][]any{{"Board", "Species", "Thickness, in", "Width, in", "Length, ft"}, {"B1", "fir", 1.0, 6.0, 16.0}, {"B2", "fir", 1.0, 8.0, 14.0}} {
		for c, v := range row {
			switch v := v.(type) {
			case string:
				s.Set(r+2, c+2, sheet.Cell{Kind: sheet.Text, Text: v})
			case float64:
				s.Set(r+2, c+2, sheet.Cell{Kind: sheet.Number, Number: v, Text: "1"})
			}
		}
	}
	return []*sheet.Book{{Name: "yard.xlsx", Sheets: []*sheet.Sheet{s}}}
}

func codes(found finding.List) []string {
	var all []string
	for _, f := range found {
		if f.Kind == GuideUnread || f.Kind == GuideUnmet {
			all = append(all, f.Code)
		}
	}
	return all
}

func TestGuideLeavesATable(t *testing.T) {
	job, _, found := Books(racked(), Options{Headings: headings})
	if len(job.Rack) != 2 {
		t.Fatalf("%d boards without a guide, want 2: %v", len(job.Rack), found)
	}
	guide := []sheet.GuideRow{{Table: "rack", Sheet: "lumber", Range: "$B$2:$F$4", Skip: "Yes"}}
	job, _, found = Books(racked(), Options{Headings: headings, Guide: guide})
	if len(job.Rack) != 0 || len(codes(found)) != 0 {
		t.Errorf("%d boards of a rack that the guide leaves out, and %v", len(job.Rack), found)
	}
}

// Nothing a guide says is passed over in silence.
func TestGuideChecked(t *testing.T) {
	test := func(g sheet.GuideRow, want ...string) {
		t.Helper()
		if _, _, found := Books(racked(), Options{Headings: headings, Guide: []sheet.GuideRow{g}}); !slices.Equal(codes(found), want) {
			t.Errorf("%+v: %v, want %v", g, codes(found), want)
		}
	}
	test(sheet.GuideRow{Table: "rack", Sheet: "Lumber", Range: "B2:F4", Unit: "inches", Notation: "decimal", Skip: "no"})
	test(sheet.GuideRow{Table: "Rack", Sheet: "Lumber", Range: "C3", Stations: "14"})
	test(sheet.GuideRow{Table: "rack", Sheet: "Lumber"})
	test(sheet.GuideRow{Table: "rack", Sheet: "Timber", Range: "B2:F4"}, "guide-unmet")
	test(sheet.GuideRow{Table: "rack", Sheet: "Lumber", Range: "H20:K30"}, "guide-unmet")
	test(sheet.GuideRow{Table: "boards", Sheet: "Lumber", Range: "B2:F4"}, "guide-unread")
	test(sheet.GuideRow{Table: "rack", Sheet: "Lumber", Range: "B2-F4"}, "guide-unread")
	test(sheet.GuideRow{Table: "rack", Sheet: "Lumber", Range: "B2:F4", Stations: "up", Unit: "hands", Notation: "roman", Skip: "perhaps"},
		"guide-unread", "guide-unread", "guide-unread", "guide-unread")
}

func TestCorners(t *testing.T) {
	for text, want := range map[string][4]int{"B3:W14": {3, 2, 14, 23}, "$b$3:$w$14": {3, 2, 14, 23}, " C7 ": {7, 3, 7, 3}, "AA1:AB2": {1, 27, 2, 28}} {
		if top, left, bottom, right, ok := corners(text); !ok || [4]int{top, left, bottom, right} != want {
			t.Errorf("%q is %d,%d to %d,%d, %v; want %v", text, top, left, bottom, right, ok, want)
		}
	}
	for _, text := range []string{"", "B", "3", "B3:A1", "W14:B3", "B0", "ZZZZ1", "B3:", "B3:W14:X15", "B9999999", "Lines!B3"} {
		if _, _, _, _, ok := corners(text); ok {
			t.Errorf("%q was taken for a block", text)
		}
	}
}
