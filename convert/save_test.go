package convert

import (
	"bytes"
	"errors"
	"io/fs"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"sync"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
	"strakebook/convert/xlsx"
)

// cutInto writes the demo's book and its cut list into a folder.
func cutInto(dir string) (book, list string, err error) {
	book = filepath.Join(dir, "demo.xlsx")
	if err = Write(Demo(), book, false); err != nil {
		return
	}
	in, err := Read([]string{book}, Options{})
	if err != nil {
		return
	}
	list, err = in.Work().Save(Target{})
	return
}

// demoCut is a folder with the demo's book and its cut list, cut once for all tests.
var demoCut = sync.OnceValues(func() (fs.FS, error) {
	dir, err := os.MkdirTemp("", "strakebook")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	book, list, err := cutInto(dir)
	kept := fstest.MapFS{}
	for _, path := range []string{book, list} {
		if data, e := os.ReadFile(path); e == nil {
			kept[filepath.Base(path)] = &fstest.MapFile{Data: data, Mode: 0o644}
		}
	}
	return kept, err
})

// cutDemo is the demo's book and its cut list in a folder of the test's own.
func cutDemo(t *testing.T) (book, list string) {
	t.Helper()
	files, err := demoCut()
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	if err := os.CopyFS(dir, files); err != nil {
		t.Fatal(err)
	}
	return filepath.Join(dir, "demo.xlsx"), filepath.Join(dir, "demo cut list.xlsx")
}

func TestSameInputSameBytes(t *testing.T) {
	_, first := cutDemo(t)
	want, err := os.ReadFile(first)
	if err != nil {
		t.Fatal(err)
	}
	for range 2 {
		_, again, err := cutInto(t.TempDir())
		if err != nil {
			t.Fatal(err)
		}
		if got, err := os.ReadFile(again); err != nil || !bytes.Equal(got, want) {
			t.Errorf("the same book gave other bytes, %v", err)
		}
	}
}

// The builder's own sheets come back with the values they had.
func TestSheetsAreCarriedOver(t *testing.T) {
	book, list := cutDemo(t)
	read := func(path string) map[string]*sheet.Sheet {
		books, err := open([]string{path})
		if err != nil {
			t.Fatal(err)
		}
		all := map[string]*sheet.Sheet{}
		for _, s := range books[0].Sheets {
			all[s.Name] = s
		}
		return all
	}
	had, has := read(book), read(list)
	for name := range had {
		if has[name] == nil {
			t.Fatalf("sheet %q is not in the new book", name)
		}
	}
	for name, s := range had {
		for r, row := range s.Rows {
			for c, want := range row {
				got := has[name].At(r+1, c+1)
				got.Note, want.Note = "", ""
				if d := cmp.Diff(want, got); d != "" {
					t.Fatalf("%s row %d column %d: %s", name, r+1, c+1, d)
				}
			}
		}
	}
}

// A workbook cut short or with a byte changed is refused, or reads as it did:
// never otherwise, and never with a panic.
func TestDamageIsRefused(t *testing.T) {
	book, _ := cutDemo(t)
	data, err := os.ReadFile(book)
	if err != nil {
		t.Fatal(err)
	}
	whole, err := xlsx.Read("demo.xlsx", data)
	if err != nil {
		t.Fatal(err)
	}
	rng := rand.New(rand.NewPCG(1, 2))
	refused := 0
	for i := range 300 {
		bad := bytes.Clone(data)
		if i%3 == 0 {
			bad = bad[:rng.IntN(len(bad))]
		} else {
			bad[rng.IntN(len(bad))] ^= byte(1 + rng.IntN(255))
		}
		got, err := xlsx.Read("demo.xlsx", bad)
		var told *sheet.Refused
		switch {
		case errors.As(err, &told) && told.Hint != "":
			refused++
		case err != nil:
			t.Errorf("edit %d: an error without a hint: %v", i, err)
		case !cmp.Equal(got.Sheets, whole.Sheets):
			t.Errorf("edit %d: read otherwise without a word", i)
		}
	}
	if refused < 200 {
		t.Errorf("only %d of 300 damaged books were refused", refused)
	}
}

func TestNothingIsLeftBehind(t *testing.T) {
	book, list := cutDemo(t)
	in, err := Read([]string{book}, Options{})
	if err != nil {
		t.Fatal(err)
	}
	for _, path := range []string{book, list, filepath.Join(filepath.Dir(book), "no folder", "x.xlsx"), filepath.Join(filepath.Dir(book), "x.txt")} {
		if _, err := in.Work().Save(Target{Path: path}); err == nil || len(Hints(err)) == 0 {
			t.Errorf("%s: %v", path, err)
		}
	}
	if left, _ := os.ReadDir(filepath.Dir(book)); len(left) != 2 {
		t.Errorf("%d files in the folder, want the book and its cut list", len(left))
	}
}

// A cut list cut again says what was said of the book, and that its plan is where
// the new one begins: our sheets and marks of the first run are gone, and not
// written beside the new ones. The plan costs no more than the one handed back.
func TestCutTwice(t *testing.T) {
	book, list := cutDemo(t)
	again := filepath.Join(t.TempDir(), "again.xlsx")
	in, err := Read([]string{list}, Options{})
	if err != nil {
		t.Fatal(err)
	}
	done := in.Work()
	if _, err := done.Save(Target{Path: again}); err != nil {
		t.Fatal(err)
	}
	first, err := readBooks([]*sheet.Book{Demo()}, Options{})
	if err != nil {
		t.Fatal(err)
	}
	was := first.Work()
	plan := was.Result.Plan
	if len(in.job.Before) != len(plan.Pieces) {
		t.Fatalf("%d pieces are read of %d", len(in.job.Before), len(plan.Pieces))
	}
	i := 0
	for _, run := range was.Result.Runs {
		for place := range run.Pieces {
			b, w, board, joint := in.job.Before[i], plan.Pieces[i], "", measure.Length(0)
			if w.Board >= 0 {
				board = plan.Cuts[w.Board].Mark
			}
			if place < len(run.Joints) {
				joint = run.Joints[place]
			}
			if off := b.Joint - joint; b.Mark != w.Mark || b.Of != w.Of || b.Board != board || (b.Stick == 0) != (board == "") || joint > 0 && max(off, -off) > measure.SixtyFourth {
				t.Fatalf("piece %d is read as %+v and was %+v, on board %q, its joint at %v", i, b, w, board, joint)
			}
			i++
		}
	}
	if now, then := done.Result.Plan.Summary.Total, was.Result.Plan.Summary.Total; now > then {
		t.Errorf("from the plan handed back it comes to %v, and to %v before", now, then)
	}
	sheets, findings := seen(t, list)
	sheetsAgain, findingsAgain := seen(t, again)
	if d := cmp.Diff(sheets, sheetsAgain); d != "" {
		t.Errorf("sheets: %s", d)
	}
	if d := cmp.Diff(findings, findingsAgain); d != "" {
		t.Errorf("findings: %s", d)
	}
	findings = slices.DeleteFunc(findings, func(f string) bool { return f == "plan-before Cut list!" })
	if _, of := seen(t, book); len(of) == 0 || !cmp.Equal(of, findings) {
		t.Errorf("the cut list is told otherwise than the book: %s", cmp.Diff(of, findings))
	}
}

// seen is the names of a book's sheets and what is found in reading it.
func seen(t *testing.T, path string) (sheets, findings []string) {
	t.Helper()
	in, err := Read([]string{path}, Options{})
	if err != nil {
		t.Fatal(err)
	}
	for _, s := range in.Books[0].Sheets {
		sheets = append(sheets, s.Name)
	}
	for _, f := range in.Findings {
		findings = append(findings, f.Code+" "+f.Cell.Sheet+"!"+f.Cell.Ref())
	}
	return sheets, findings
}
