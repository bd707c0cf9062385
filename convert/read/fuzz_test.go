package read

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"strakebook/calc/finding"
	"strakebook/convert/sheet"
)

// gridOf is a sheet of the cells that a text writes between bars.
func gridOf(text string) *sheet.Sheet {
	const most = 400 // cells: larger sheets try nothing more
	s, row, col, n := &sheet.Sheet{Name: "Sheet1"}, 1, 1, 0
	word := ""
	put := func() {
		if n++; n < most {
			if c := cellOf(word); filled(c) {
				s.Set(row, min(col, 40), c)
			}
		}
		word, col = "", col+1
	}
	for _, r := range text {
		switch r {
		case '|':
			put()
		case '\n':
			put()
			row, col = min(row+1, 60), 1
		default:
			word += string(r)
		}
	}
	put()
	return s
}

// Whatever stands on a sheet, reading ends, twice alike, and every finding has its
// kind and its words.
func FuzzGrid(f *testing.F) {
	f.Add("Offsets in mm\nStation|1|2|3|4\nHB deck|120|640|702|555\nHt deck|1210|1105|1060|1098")
	f.Add("Station|0|1/2|1|X|Transom\nHeights\nSheer|3-4-6|3-2-0+|date:2003-04-06|-|text:3-4\n\nTotal|1|2|3|4|5")
	f.Add("Station|Line|View|Offset (in)\n1|Deck|height|40 3/4\n|WL 6\"|half-breadth|1' 2 1/2\"")
	f.Add("Plank|Edge|Sta 1|Sta 2|Sta 3\n1|upper|2 1/2|time:2:30|92.5\n\"|lower|(2)|-|fault:#REF!")
	f.Add("Sta. 1||Sta. 2|\ny|z|y|z\n0|10|0|12\n1|20|2|22")
	f.Add("Mark|Species|Thickness (in.)|Width|Length\nA|oak|5/4|6|12\nTotal||||12")
	f.Add("Setting|Value\nbare numbers|mm\nstation spacing|900")
	f.Add("|1|2|3\n|ft|in|8ths|ft|in|8ths\nHB deck|1|2|3|1|4|")
	f.Add("Guide\nTable|Sheet|Range|Stations|Unit|Notation|Skip\noffsets|Sheet1|A1:B9|down|mm|decimal|no")
	f.Fuzz(func(t *testing.T, text string) {
		first := read(t, bookOf(gridOf(text)), Options{})
		again := read(t, bookOf(gridOf(text)), Options{})
		for _, fault := range first.found {
			if fault.Kind == nil || fault.Text == "" || fault.Severity > finding.Error {
				t.Fatalf("%+v", fault)
			}
		}
		if d := cmp.Diff(first.codes(finding.Note), again.codes(finding.Note)); d != "" {
			t.Fatalf("read again it is told otherwise: %s", d)
		}
		if d := cmp.Diff(first.job.Offsets, again.job.Offsets); d != "" {
			t.Fatalf("read again it is otherwise: %s", d)
		}
	})
}
