package templates_test

import (
	"bytes"
	"encoding/csv"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"strakebook/templates"
)

var update = flag.Bool("update", false, "write the books as the forms and faults make them")

// TestBooks holds the books in the folders to what is made here: the demo yard
// from its form, with the faults of demo/faults.csv planted in it, and the
// starter from a smaller form.
func TestBooks(t *testing.T) {
	demo := demoBook()
	for _, f := range faults(t) {
		f.plant(t, demo)
	}
	held(t, "demo", templates.Demo, demo)
	held(t, "starter", templates.Starter, starterBook())
}

// held compares a folder's sheets with those made, or writes them.
func held(t *testing.T, folder string, names []string, book map[string]rows) {
	t.Helper()
	if len(book) != len(names) {
		t.Errorf("%s: %d sheets made, %d named", folder, len(book), len(names))
	}
	for _, name := range names {
		made := text(t, book[name])
		path := filepath.Join(folder, name+".csv")
		if *update {
			if err := os.WriteFile(path, made, 0o644); err != nil {
				t.Fatal(err)
			}
			continue
		}
		kept, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		if line := differ(kept, made); line > 0 {
			t.Errorf("%s is not what is made: line %d differs. Run go test ./templates -update if it should change", path, line)
		}
	}
}

// differ is the first line at which two texts differ; 0 for nowhere.
func differ(a, b []byte) int {
	if bytes.Equal(a, b) {
		return 0
	}
	as, bs := strings.Split(string(a), "\n"), strings.Split(string(b), "\n")
	for i := range min(len(as), len(bs)) {
		if as[i] != bs[i] {
			return i + 1
		}
	}
	return min(len(as), len(bs)) + 1
}

func text(t *testing.T, r rows) []byte {
	t.Helper()
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	for _, row := range r {
		if len(row) == 0 {
			row = []string{""} // a blank row stays a row
		}
		if err := w.Write(row); err != nil {
			t.Fatal(err)
		}
	}
	w.Flush()
	return b.Bytes()
}

// fault is one line of demo/faults.csv: what is put into which cells, and what
// the program must say of it and where.
type fault struct {
	Code, Sheet, Cell, Cells, Put, Words string
}

func faults(t *testing.T) []fault {
	t.Helper()
	file, err := os.Open(filepath.Join("demo", "faults.csv"))
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	records, err := csv.NewReader(file).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var all []fault
	for _, r := range records[1:] {
		all = append(all, fault{r[0], r[1], r[2], r[3], r[4], r[5]})
	}
	return all
}

// plant puts a fault into its sheet.
func (f fault) plant(t *testing.T, book map[string]rows) {
	t.Helper()
	sheet, ok := book[f.Sheet]
	if !ok {
		t.Fatalf("faults.csv: no sheet %q", f.Sheet)
	}
	from, to, isRange := strings.Cut(f.Cells, ":")
	if !isRange {
		to = from
	}
	r0, c0 := address(t, from)
	r1, c1 := address(t, to)
	changed := false
	for row := r0; row <= r1; row++ {
		for col := c0; col <= c1; col++ {
			if row <= len(sheet) && col <= len(sheet[row-1]) && sheet[row-1][col-1] != f.Put {
				sheet[row-1][col-1] = f.Put
				changed = true
			}
		}
	}
	if !changed {
		t.Errorf("faults.csv: %s at %s!%s changes nothing", f.Code, f.Sheet, f.Cells)
	}
}

// address is a cell's row and column counted from one.
func address(t *testing.T, ref string) (row, col int) {
	t.Helper()
	letters := strings.TrimRight(ref, "0123456789")
	for _, c := range letters {
		col = col*26 + int(c-'A') + 1
	}
	if _, err := fmt.Sscan(strings.TrimPrefix(ref, letters), &row); err != nil || col == 0 {
		t.Fatalf("faults.csv: %q is no cell", ref)
	}
	return row, col
}
