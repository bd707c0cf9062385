package convert

import (
	"bytes"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"strakebook/convert/csv"
	"strakebook/convert/sheet"
	"strakebook/convert/write"
)

var (
	eighths    = regexp.MustCompile(`^-?[0-9]+-[0-9]+-[0-9]`)
	decimal    = regexp.MustCompile(`^-?[0-9]+(\.[0-9]+)?$`)
	runAsThose = regexp.MustCompile(`^[=+@\t\r]`)
)

// The tables that go out as text are read back by our own reader field for field;
// no field is one that a spreadsheet takes for a date or runs as a formula.
func TestTablesAreReadBack(t *testing.T) {
	for _, set := range [][]string{nil, {"units=mm"}} {
		done, err := readBooks([]*sheet.Book{Demo()}, Options{Set: append(set, "job= =1+1")})
		if err != nil {
			t.Fatal(err)
		}
		fields := 0
		for _, table := range write.Lay(done.Work().input(true)).Tables() {
			rows := slices.Collect(table.Rows)
			var out bytes.Buffer
			if err := csv.Write(&out, slices.Values(rows)); err != nil {
				t.Fatal(err)
			}
			if !bytes.HasPrefix(out.Bytes(), []byte("\ufeff")) || !bytes.HasSuffix(out.Bytes(), []byte("\r\n")) {
				t.Errorf("%s begins %q", table.Name, out.Bytes()[:3])
			}
			back, err := csv.Read(table.Name+".csv", out.Bytes())
			if err != nil {
				t.Fatal(err)
			}
			if ours := table.Name != "mill-order"; back.OurText() != ours {
				t.Errorf("%s is known as ours: %v", table.Name, back.OurText())
			}
			for r, row := range rows {
				for c, want := range row {
					fields++
					got := back.Sheets[0].At(r+1, c+1)
					if !sameField(want, got) {
						t.Fatalf("%s row %d, %s: %q was read as %+v", table.Name, r+1, rows[0][c], want, got)
					}
					// A label of the builder's may look so; a length of ours may not.
					if strings.Contains(rows[0][c], "ft-in-8ths") || strings.HasSuffix(rows[0][c], ", ft and in") && eighths.MatchString(want) {
						t.Fatalf("%s row %d, %s: %q would become a date", table.Name, r+1, rows[0][c], want)
					}
				}
			}
			for _, line := range strings.Split(out.String()[3:], "\r\n") {
				if runAsThose.MatchString(line) {
					t.Fatalf("%s: %q would be run", table.Name, line)
				}
			}
		}
		if fields < 10_000 {
			t.Errorf("only %d fields", fields)
		}
	}
}

func sameField(want string, got sheet.Cell) bool {
	switch {
	case decimal.MatchString(want):
		v, _ := strconv.ParseFloat(want, 64)
		return got.Kind == sheet.Number && math.Abs(got.Number-v) < 1e-9 || got.Text == want
	case strings.TrimSpace(want) == "":
		return got.Kind == sheet.Empty
	}
	return got.Text == want
}
