package read_test

import (
	"fmt"
	"strings"
	"testing"

	"strakebook/calc/measure"
	"strakebook/convert/csv"
	"strakebook/convert/read"
	"strakebook/convert/sheet"
	"strakebook/templates"
)

// listed reads one list, on a sheet of a name, and says what it was taken for.
func listed(t *testing.T, name, text string) string {
	t.Helper()
	b, err := csv.Read(name+".csv", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	job, tables, found := read.Books([]*sheet.Book{b}, read.Options{Headings: templates.Headings})
	var all []string
	for _, table := range tables {
		all = append(all, table.Table)
	}
	for _, f := range found {
		all = append(all, f.Code)
	}
	if len(job.Wanted) > 0 && len(job.Rack)+len(job.Strakes) > 0 {
		t.Errorf("%s: a list was taken for two kinds", name)
	}
	return strings.Join(all, " ")
}

// A list of sizes is of pieces, of boards or of strakes by what it says of itself;
// where that is nothing it is asked, and read as neither.
func TestPiecesBoardsOrStrakes(t *testing.T) {
	const rows = "A,2,larch,1,5,12-0-0\nB,1,larch,1,5,14-0-0\n"
	const sizes = ",Count,Species,Thickness (in),Width (in),Length\n" + rows
	for _, c := range []struct{ sheet, text, want string }{
		{"sheet1", "Piece" + sizes, "pieces"},
		{"sheet1", "Part no." + sizes, "pieces"},
		{"rack", "Piece" + sizes, "pieces"}, // the columns' own words hold before the title's
		{"sheet1", "Mark" + sizes, "list-open"},
		{"sheet1", "Pieces wanted\nMark" + sizes, "pieces"},
		{"pieces to cut", "Mark" + sizes, "pieces"},
		{"sheet1", "Cutting list as given\nNo." + sizes, "pieces"},
		{"sheet1", "Lumber rack\nMark" + sizes, "rack"},
		{"stock", "Tag" + sizes, "rack"},
		{"sheet1", "Board" + sizes, "rack"},
		{"sheet1", "Boards the pieces are cut from\nMark" + sizes, "list-open"},
		{"sheet1", "Strake" + sizes, "strakes"},
		{"sheet1", "Plank" + sizes, "strakes"},
		{"sheet1", "Mark,Count,Species,Finished thickness (in),Width (in),Length\n" + rows, "pieces"},
		{"sheet1", "Mark,Count,Species,Rough thickness (in),Width (in),Length\n" + rows, "rack"},
		{"sheet1", "Mark,Count,Species,Thickness (in),Width (in),Length,Price\n" + strings.ReplaceAll(rows, "\n", ",30\n"), "rack"},
		{"sheet1", "Mark,Count,Species,Thickness (in),Width (in),Length,Delivered\n" + strings.ReplaceAll(rows, "\n", ",1\n"), "rack"},
		{"sheet1", "Pieces to cut,,,for hull 31,,\nMark" + sizes, "pieces"},
		{"sheet1", "Parts list\nSpecies,Count,Thickness (in),Width (in),Length\nlarch,2,1,5,12-0-0\nlarch,1,1,5,14-0-0\n", "pieces"},
	} {
		if got := listed(t, c.sheet, c.text); got != c.want {
			t.Errorf("%s: %q\nis taken for %q, want %q", c.sheet, c.text, got, c.want)
		}
	}
}

// Stretches of boards not to be used, however they are written, in the unit of the
// board's length.
func TestStretches(t *testing.T) {
	for _, c := range []struct{ length, head, text, want string }{
		{"Length", "Bad", "knots 4-0-0 to 5-2-0", "48 62"},
		{"Length", "Not to be used", "4-0-0 to 5-2-0; shake 9-0-0 to 10-0-4", "48 62 108 120.5"},
		{"Length", "Unusable", "9' 0\" to 10' 0\" and 1' to 2' 6\"", "12 30 108 120"},
		{"Length (ft)", "Bad", "knots from 4 to 5.5, small", "48 66"},
		{"Length (ft)", "Bad", "4-0-0 to 5-2-0", "48 62"},
		{"Length (mm)", "Bad", "1200 to 1300", "47.2441 51.1811"},
		{"Length", "Bad", "none", ""},
		{"Length", "Bad", "-", ""},
		{"Length", "Remarks", "clear but for a knot 4-0-0 to 5-2-0", "48 62"},
		{"Length", "Remarks", "knots to suit", "flaw-unplaced"},
		{"Length", "Remarks", "for 12-0-0 to 14-0-0 pieces", ""},
		{"Length", "Bad", "small knots", "length-unread"},
		{"Length", "Bad", "ok", ""},
		{"Length", "Remarks", "clear 4-0-0 to 12-0-0", "flaw-unplaced"},
		{"Length", "Usable", "4-0-0 to 12-0-0", "column-unread"},
		{"Length", "Bad", "4-0-0", "length-unread"},
		{"Length", "Bad", "good 0-0-0 to 13-0-0", "length-unread"},
		{"Length", "Flaws", "sound from 3-0-0 to 15-0-0", "length-unread"},
		{"Length", "Flaws", "usable 0-0-0 to 9-0-0; knots 9-0-0 to 10-0-0", "108 120 length-unread"},
		{"Length", "Flaws", "good except 4-0-0 to 5-0-0", "48 60"},
		{"Length", "Flaws", "split 30 in at butt end", "length-unread"},
	} {
		long := map[string]string{"Length": "16-0-0", "Length (ft)": "16", "Length (mm)": "4800"}[c.length]
		b, err := csv.Read("rack.csv", []byte("Board,Thickness (in),Width (in),"+c.length+","+c.head+"\nA,1.25,6,"+long+",\""+strings.ReplaceAll(c.text, `"`, `""`)+"\"\n"))
		if err != nil {
			t.Fatal(err)
		}
		job, _, found := read.Books([]*sheet.Book{b}, read.Options{Headings: templates.Headings})
		var got []string
		for _, r := range job.Rack {
			if asked := strings.Contains(c.want, "length-unread"); r.Unsure != asked {
				t.Errorf("%s %q: the board is left out %v, want %v", c.head, c.text, r.Unsure, asked)
			}
			for _, bad := range r.Bad {
				for _, l := range []measure.Length{bad.From, bad.To} {
					got = append(got, strings.TrimRight(strings.TrimRight(fmt.Sprintf("%.4f", l.Inches()), "0"), "."))
				}
			}
		}
		for _, f := range found {
			got = append(got, f.Code)
		}
		if strings.Join(got, " ") != c.want {
			t.Errorf("%s %q of a board in %s: %s, want %s", c.head, c.text, c.length, strings.Join(got, " "), c.want)
		}
	}
}
