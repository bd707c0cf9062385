package csv

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"strakebook/convert/sheet"
)

const samples = "../../testdata/books/csv"

// Every file of the samples is read as the manifest beside them says it must be.
func TestSamples(t *testing.T) {
	data, err := os.ReadFile(filepath.Join(samples, "manifest.txt"))
	if err != nil {
		t.Fatal(err)
	}
	listed := map[string]bool{"manifest.txt": true, ".gitattributes": true}
	for _, line := range strings.Split(strings.TrimSpace(string(data)), "\n") {
		if strings.HasPrefix(line, "#") {
			continue
		}
		fields := strings.Split(line, "\t")
		if len(fields) < 3 {
			t.Fatalf("manifest: %q", line)
		}
		listed[fields[0]] = true
		t.Run(fields[0], func(t *testing.T) { sample(t, fields[0], fields[2:]) })
	}
	files, err := os.ReadDir(samples)
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range files {
		if !listed[f.Name()] {
			t.Errorf("%s is not in the manifest", f.Name())
		}
	}
	if len(listed) < 22 {
		t.Errorf("%d samples, want 20 or more", len(listed)-2)
	}
}

// sample opens one file and compares it with what is wanted of it.
func sample(t *testing.T, name string, want []string) {
	path := filepath.Join(samples, name)
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	book, err := Read(path, data)
	if cause, refused := strings.CutPrefix(want[0], "refused "); refused {
		var r *sheet.Refused
		if !errors.As(err, &r) || !strings.Contains(r.Cause, cause) || r.Hint == "" {
			t.Errorf("read as %v, error %v; want it refused: %s", book, err, cause)
		}
		return
	}
	if err != nil {
		t.Fatal(err)
	}
	s := book.Sheets[0]
	if got := size(s); got != want[0] || s.Name != strings.TrimSuffix(name, filepath.Ext(name)) {
		t.Errorf("sheet %q of %s, want %s", s.Name, got, want[0])
	}
	for _, w := range want[1:] {
		ref, value, _ := strings.Cut(w, " ")
		row, col := place(t, ref)
		if got := show(s.At(row, col)); got != strings.ReplaceAll(value, "|", "\n") {
			t.Errorf("%s: %q, want %q", ref, got, value)
		}
	}
}

func size(s *sheet.Sheet) string {
	cols := 0
	for _, row := range s.Rows {
		cols = max(cols, len(row))
	}
	return fmt.Sprintf("%dx%d", len(s.Rows), cols)
}

var address = regexp.MustCompile(`^([A-Z])(\d+)$`)

func place(t *testing.T, ref string) (row, col int) {
	t.Helper()
	m := address.FindStringSubmatch(ref)
	if m == nil {
		t.Fatalf("manifest: no cell %q", ref)
	}
	if _, err := fmt.Sscan(m[2], &row); err != nil {
		t.Fatal(err)
	}
	return row, int(m[1][0]-'A') + 1
}

func show(c sheet.Cell) string {
	switch c.Kind {
	case sheet.Empty:
		return "empty"
	case sheet.Number:
		return fmt.Sprint("number ", c.Number)
	case sheet.Fault:
		return "fault " + c.Text
	default:
		return "text " + c.Text
	}
}
