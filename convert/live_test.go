package convert

import (
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"strakebook/calc/bevel"
	"strakebook/calc/measure"
	"strakebook/convert/csv"
	"strakebook/convert/sheet"
	"strakebook/convert/write"
	"strakebook/convert/xlsx"
)

// Every stored figure of a live formula is what the formula comes to: the book
// is written without them, and what is worked out on reading it is held to them.
func TestStoredFiguresAreWhatTheirFormulasComeTo(t *testing.T) {
	for _, set := range [][]string{nil, {"units=mm", "strips flat=yes", "dressing by=quarters", "share slanted cuts=yes", "saw offset to=middle"}, {"units=inches", "hardwood measure=yes", "face up=inside", "batten thickness=3/4", "saw faired bevels=yes", "scarf nib=1/16", "share slanted cuts=yes", "saw offset to=far side"}} {
		done, err := readBooks([]*sheet.Book{Starter()}, Options{Set: set})
		if err != nil {
			t.Fatal(err)
		}
		in := done.Work().input(true)
		toBeRounded(&in.Result.Bevels[0], in.Result.Rules.Bevel)
		ours, _ := write.Lay(in).Book()
		back := workedOut(t, ours)
		formulas := 0
		for i, s := range ours.Sheets {
			for r, row := range s.Each() {
				for c, want := range row {
					if want.Formula == "" || !tried(r-1) {
						continue
					}
					formulas++
					got := back.Sheets[i].At(r, c+1)
					if !alike(want, got) {
						t.Fatalf("%v: %s row %d column %d: %q comes to %v %q, and %v %q is stored", set, s.Name, r, c+1, want.Formula, got.Number, got.Text, want.Number, want.Text)
					}
				}
			}
		}
		if formulas < 50 {
			t.Errorf("only %d formulas", formulas)
		}
	}
}

// toBeRounded gives a card a back still to be rounded by 3/16 in: the corners of its
// inside face lie so far within the board.
func toBeRounded(s *bevel.Schedule, r bevel.Rules) {
	s.Rounded = 3 * measure.Sixteenth
	if r.FaceUp == bevel.Inside {
		r.Batten += s.Rounded
	}
	for i := range s.Marks {
		m := &s.Marks[i]
		at := func(b measure.Angle) measure.Length { return bevel.Batten(m.Width, s.Thickness-s.Rounded, b, r) }
		m.Batten, m.SetOut, m.Faces = at(m.Set), at(m.Set)-at(s.Parallel), (s.Thickness - s.Rounded).Times(m.Set.Tan())
	}
}

func alike(want, got sheet.Cell) bool {
	if want.Kind == sheet.Number {
		return got.Kind == sheet.Number && math.Abs(want.Number-got.Number) <= 1e-6*max(1, math.Abs(want.Number))
	}
	return want.Text == got.Text
}

// tried says that a row's formulas are worked out: the first rows of every sheet,
// and every ninth after them, for the library takes its time.
func tried(row int) bool { return row < 6 || row%9 == 0 }

// bareOf is the book without the figures stored beside its formulas.
func bareOf(b *sheet.Book) *sheet.Book {
	out := &sheet.Book{}
	for _, n := range b.Names { // on a sheet known as ours nothing is worked out
		if !strings.HasPrefix(n.Name, sheet.OursPrefix) {
			out.Names = append(out.Names, n)
		}
	}
	for _, s := range b.Sheets {
		bare := *s
		bare.Rows = nil
		bare.Out.Later = nil
		for r, row := range s.Each() {
			cells := append([]sheet.Cell{}, row...)
			for c := range cells {
				if cells[c].Formula != "" && tried(r-1) {
					cells[c].Kind, cells[c].Number, cells[c].Text = sheet.Empty, 0, ""
				}
			}
			bare.Rows = append(bare.Rows, cells)
		}
		out.Sheets = append(out.Sheets, &bare)
	}
	return out
}

// A yard in which one board holds pieces of two widths and two thicknesses, the
// narrow and thin one before the other, and pieces have no board: what fits, the
// net and the waste follow the settings, piece by piece.
func TestFiguresOfSticksFollowEveryPiece(t *testing.T) {
	var books []*sheet.Book
	for name, text := range map[string]string{
		"strakes.csv": "Strake,Skin,Side,Thickness (in),Width (in),Length (ft),Species\n1,plank,starboard,1,5,6,fir\n2,plank,starboard,1.5,7,6,fir\n3,plank,both,1,5,10,teak\n4,plank,port,1,9,11,fir\n",
		"rack.csv":    "Board,Thickness (in),Width (in),Length (ft),Count,Price/bf,Species\nA,1.75,8,13,1,4,fir\nB,1.75,5.5,13,1,4,teak\n",
	} {
		b, err := csv.Read(name, []byte(text))
		if err != nil {
			t.Fatal(err)
		}
		books = append(books, b)
	}
	slices.SortFunc(books, func(a, b *sheet.Book) int { return -strings.Compare(a.Path, b.Path) })
	done, err := readBooks(books, Options{Set: []string{"edge allowance=1/4", "dressing allowance=3/16"}})
	if err != nil {
		t.Fatal(err)
	}
	in := done.Work().input(true)
	plan := in.Result.Plan
	// Two of 6 ft by 5 by 1 and 7 by 1 1/2 in, and one of 10 ft by 5 by 1: 2.5, 5.25 and 4.1667 board feet.
	if s := plan.Summary; s.Boards != 2 || s.Unserved != 1 || math.Abs(float64(s.NetFeet)-11.916667) > 1e-6 {
		t.Fatalf("%d boards, %d pieces without one, net %v", s.Boards, s.Unserved, s.NetFeet)
	}
	if wide := plan.Cuts[0]; len(wide.Pieces) != 2 || plan.Pieces[wide.Pieces[0]].Strake != "1" || plan.Pieces[wide.Pieces[1]].Strake != "2" {
		t.Fatalf("the wide board holds %v", wide.Pieces)
	}
	asWas := changed(t, in, nil)
	for _, s := range asWas.Sheets {
		for r := 2; s.Name == "Summary" && s.At(r, 1).Text != ""; r++ {
			want := map[string]float64{"Board feet in the pieces": 11.916667, "Waste, per cent bought": plan.Summary.WasteOfBought, "Waste, per cent on the net": plan.Summary.WasteOnNet}[s.At(r, 1).Text]
			if got := s.At(r, 2).Number; want > 0 && math.Abs(got-want) > 1e-5 {
				t.Errorf("%s: %v, want %v", s.At(r, 1).Text, got, want)
			}
		}
	}
	for _, c := range []struct{ edge, dress float64 }{{0.25, 0.1875}, {1.01, 0.1875}, {0.25, 0.26}, {0.6, 0.1875}} {
		back := changed(t, in, map[string]float64{"edge allowance": c.edge, "dressing allowance": c.dress})
		for r := 2; r <= len(plan.Cuts)+1; r++ {
			cut := plan.Cuts[r-2]
			want := "fits"
			for _, k := range cut.Pieces {
				if p := plan.Pieces[k]; p.Width.Inches()+c.edge > cut.Board.Width.Value.Inches() || p.Thickness.Inches()+c.dress > cut.Board.Thickness.Value.Inches() {
					want = "does not fit"
				}
			}
			if got := under(back, "Stock", "Still fits", r); got.Text != want {
				t.Errorf("edge %v, dressing %v: board %s %q, want %q", c.edge, c.dress, cut.Mark, got.Text, want)
			}
		}
	}
}

// changed is our sheets with settings changed, worked out by the library.
func changed(t *testing.T, in write.Input, set map[string]float64) *sheet.Book {
	t.Helper()
	ours, _ := write.Lay(in).Book()
	for _, s := range ours.Sheets {
		if s.Name != "Settings" {
			continue
		}
		for _, row := range s.Each() {
			if len(row) < 2 {
				continue
			}
			if v, ok := set[row[0].Text]; ok {
				row[1].Number = v
			}
		}
	}
	return workedOut(t, ours)
}

// workedOut is a book written without the figures of its formulas and read again,
// so that the library works them out.
func workedOut(t *testing.T, ours *sheet.Book) *sheet.Book {
	t.Helper()
	path := filepath.Join(t.TempDir(), "out.xlsx")
	if err := xlsx.Save(path, false, bareOf(ours), nil, nil); err != nil {
		t.Fatal(err)
	}
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	back, err := xlsx.Read(path, data)
	if err != nil {
		t.Fatal(err)
	}
	return back
}

// under is the cell of a row under a heading of one of our sheets.
func under(b *sheet.Book, name, heading string, row int) sheet.Cell {
	for _, s := range b.Sheets {
		for c := 1; s.Name == name && s.At(1, c).Text != ""; c++ {
			if s.At(1, c).Text == heading {
				return s.At(row, c)
			}
		}
	}
	return sheet.Cell{}
}
