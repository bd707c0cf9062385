package write_test

import (
	"math"
	"regexp"
	"strings"
	"testing"

	"strakebook/calc/stock"
	"strakebook/convert/sheet"
	"strakebook/convert/write"
)

// Every stick is drawn to the one scale its heading names, 4 in a letter on the
// demo yard's boards of 20 ft: each piece as many letters as it is long, a slant
// where an end is scarfed and a bar where it is not, its mark beside its fore end,
// crosses where stations lie and nowhere else, and dots for the rest. No colour
// tells pieces apart: all is in one style.
func TestSticks(t *testing.T) {
	in := demo()
	const letter = 4
	pieces := map[string]stock.Piece{}
	for _, q := range in.Result.Plan.Pieces {
		pieces[q.Mark] = q
	}
	// from is a piece's fore end from the place the stations are measured from.
	from := map[string]float64{}
	for _, r := range in.Result.Runs {
		at := r.Start.Inches()
		for k, l := range r.Pieces {
			for mark, q := range pieces {
				if q.Strake == r.Name && q.Skin == r.Skin && q.Side == r.Side && q.Place == k+1 {
					from[mark] = at
				}
			}
			at += l.Inches() - r.Scarf.Inches()
		}
		if len(from) > 150 {
			break // enough of them
		}
	}
	station := func(x float64) bool {
		for _, o := range in.Job.Offsets {
			for _, s := range o.Stations {
				if s.At.OK() && math.Abs(s.At.Value.Inches()-x) <= 1.01*letter {
					return true
				}
			}
		}
		return false
	}
	rest := regexp.MustCompile(`^(\.*\|)?$`)
	book, _ := write.Lay(in).Book()
	crosses, slants := 0, 0
	for _, s := range book.Sheets {
		if s.Name != "Stock" {
			continue
		}
		col := map[string]int{}
		for i, c := range s.Rows[0] {
			col[c.Text] = i
		}
		drawn, names := col["Drawn to scale, a letter 4 in"], col["Pieces"]
		for i, row := range s.Rows[1:] {
			if len(row) <= max(drawn, names) || row[drawn].Style != sheet.Stick {
				continue
			}
			line := row[drawn].Text
			if row[names].Text == "" { // a lane of a ripped board that nothing is cut from
				if line == "" || !rest.MatchString(line) {
					t.Errorf("row %d: an empty lane is drawn %q", i+2, line)
				}
				continue
			}
			for _, mark := range strings.Split(row[names].Text, ", ") {
				q := pieces[mark]
				n := int(math.Round(q.Length.Inches() / letter))
				if n < 3 || len(line) < n {
					t.Fatalf("row %d: %q is too short for %s of %v in", i+2, line, mark, q.Length.Inches())
				}
				end := func(e stock.End) byte {
					if e == stock.Hood {
						return '|'
					}
					slants++
					return '/'
				}
				if line[0] != end(q.Fore) || line[n-1] != end(q.Aft) || !strings.HasPrefix(line[1:], mark) {
					t.Errorf("row %d: %s is drawn %q", i+2, mark, line[:n])
				}
				if at, known := from[mark]; known {
					for k := 1 + len(mark); k < n-1; k++ {
						if x := at + (float64(k)+0.5)*letter; line[k] == '+' {
							crosses++
							if !station(x) {
								t.Errorf("row %d: %s has a cross at %v in, where no station lies", i+2, mark, x)
							}
						}
					}
				}
				line = line[n:]
			}
			if !rest.MatchString(line) {
				t.Errorf("row %d: %q is left over", i+2, line)
			}
		}
	}
	if crosses < 100 || slants < 1000 {
		t.Errorf("%d stations crossed and %d ends slanted", crosses, slants)
	}
}
