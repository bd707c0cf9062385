package xlsx

import (
	"archive/zip"
	"bytes"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"strakebook/convert/sheet"
)

// A file that comes to be there while the new one is written is kept whole.
func TestNothingIsWrittenOverUnforced(t *testing.T) {
	path := filepath.Join(t.TempDir(), "out.xlsx")
	late := func(w io.Writer) error {
		if err := os.WriteFile(path, []byte("another's"), 0o644); err != nil {
			t.Fatal(err)
		}
		_, err := io.WriteString(w, "ours")
		return err
	}
	if err := Replace(path, false, late); !errors.Is(err, fs.ErrExist) {
		t.Errorf("a file that came to be there: %v", err)
	}
	if got, _ := os.ReadFile(path); string(got) != "another's" {
		t.Errorf("it now holds %q", got)
	}
	if err := Replace(path, true, late); err != nil {
		t.Error(err)
	}
	info, err := os.Stat(path)
	if got, _ := os.ReadFile(path); string(got) != "ours" || err != nil || info.Mode().Perm() != 0o644 {
		t.Errorf("forced: it holds %q, mode %v, %v", got, info.Mode(), err)
	}
	broken := errors.New("no space left")
	if err := Replace(path, true, func(io.Writer) error { return broken }); err == nil {
		t.Error("a failure was not told")
	}
	if got, _ := os.ReadFile(path); string(got) != "ours" {
		t.Errorf("after a failure it holds %q", got)
	}
	if left, _ := os.ReadDir(filepath.Dir(path)); len(left) != 1 {
		t.Errorf("%d files are left", len(left))
	}
}

// builders is a workbook of the builder's: one sheet with a note, one in view.
func builders(t *testing.T) []byte {
	t.Helper()
	f := excelize.NewFile()
	defer f.Close()
	for _, err := range []error{
		f.SetCellValue("Sheet1", "B2", 3.5),
		f.AddComment("Sheet1", excelize.Comment{Cell: "B2", Author: "yard", Text: "measured twice"}),
		f.SetCellValue("Sheet1", "B3", 4.5),
	} {
		if err != nil {
			t.Fatal(err)
		}
	}
	at, err := f.NewSheet("Other")
	if err != nil {
		t.Fatal(err)
	}
	if err := f.SetCellFormula("Other", "A1", "Sheet1!B2*2"); err != nil {
		t.Fatal(err)
	}
	f.SetActiveSheet(at)
	var b bytes.Buffer
	if err := f.Write(&b); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// saved is the new book of one sheet of ours before the builder's.
func saved(t *testing.T, from []byte, marks []sheet.Mark) *archive {
	t.Helper()
	ours := &sheet.Sheet{Name: "Summary"}
	ours.Set(1, 1, sheet.Cell{Kind: sheet.Text, Text: "What", Style: sheet.Heading})
	path := filepath.Join(t.TempDir(), "out.xlsx")
	if err := Save(path, false, &sheet.Book{Sheets: []*sheet.Sheet{ours}}, from, marks); err != nil {
		t.Fatal(err)
	}
	return parts(t, path)
}

func parts(t *testing.T, path string) *archive {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return unpacked(t, data)
}

// unpacked is the parts of a workbook in memory.
func unpacked(t *testing.T, data []byte) *archive {
	t.Helper()
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		t.Fatal(err)
	}
	a, err := unpack("", z)
	if err != nil {
		t.Fatal(err)
	}
	return a
}

// A sheet without marks is carried over byte for byte, but that it is no longer
// the one in view.
func TestCarriedSheetsAreNotTouched(t *testing.T) {
	from := builders(t)
	had := unpacked(t, from)
	has := saved(t, from, nil)
	for _, part := range []string{"xl/worksheets/sheet1.xml", "xl/worksheets/sheet2.xml", "xl/comments1.xml"} {
		want := strings.Replace(string(had.parts[part]), ` tabSelected="true"`, "", 1)
		if got := string(has.parts[part]); got == "" || got != want {
			t.Errorf("%s was\n%s\nand is\n%s", part, want, got)
		}
	}
}

// A colour that some programs write without its opacity is eight digits on a marked
// cell as well.
func TestColourOfMarkedCells(t *testing.T) {
	f := excelize.NewFile()
	defer f.Close()
	red, err := f.NewStyle(&excelize.Style{Font: &excelize.Font{Color: "FF0000"}})
	if err != nil || f.SetCellValue("Sheet1", "B3", "five") != nil || f.SetCellStyle("Sheet1", "B3", "B3", red) != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	if err := f.Write(&b); err != nil {
		t.Fatal(err)
	}
	a := unpacked(t, b.Bytes())
	styles := bytes.ReplaceAll(a.parts["xl/styles.xml"], []byte(`"FFFF0000"`), []byte(`"00FF0000"`))
	if bytes.Equal(styles, a.parts["xl/styles.xml"]) {
		t.Fatalf("no colour in %s", styles)
	}
	a.parts["xl/styles.xml"] = styles
	packed, err := a.pack()
	if err != nil {
		t.Fatal(err)
	}
	has := saved(t, packed, []sheet.Mark{{Sheet: "Sheet1", Row: 3, Col: 2, Style: sheet.Wrong, Note: "no figure"}})
	for _, m := range regexp.MustCompile(`rgb="([^"]*)"`).FindAllSubmatch(has.parts["xl/styles.xml"], -1) {
		if len(m[1]) != 8 {
			t.Errorf("a colour is written %s", m[1])
		}
	}
}

// A doubtful cell that bears a note of the builder's gets one note of both.
func TestNotesAreNotDoubled(t *testing.T) {
	has := saved(t, builders(t), []sheet.Mark{
		{Sheet: "Sheet1", Row: 2, Col: 2, Style: sheet.Unsure, Note: "off the run"},
		{Sheet: "Sheet1", Row: 3, Col: 2, Style: sheet.Wrong, Note: "no figure"},
	})
	notes := string(has.parts["xl/comments1.xml"])
	if n := strings.Count(notes, `ref="B2"`); n != 1 || !strings.Contains(notes, "measured twice") || !strings.Contains(notes, "off the run") {
		t.Errorf("%d notes on B2: %s", n, notes)
	}
	if shapes := string(has.parts["xl/drawings/vmlDrawing1.vml"]); strings.Count(shapes, "<v:shape ") != 2 {
		t.Errorf("two notes have these shapes: %s", shapes)
	}
}

// Some programs name a sheet's parts from the top of the archive: our notes are
// taken off such a sheet and put on again, and the book is whole.
func TestPartsNamedFromTheTop(t *testing.T) {
	from := builders(t)
	a := unpacked(t, from)
	rels := relsOf("xl/worksheets/sheet1.xml")
	fromTop := bytes.ReplaceAll(a.parts[rels], []byte(`Target="../`), []byte(`Target="/xl/`))
	ours := regexp.MustCompile(`<author>[^<]*</author>`).ReplaceAll(a.parts["xl/comments1.xml"], []byte("<author>"+author+"</author>"))
	if bytes.Equal(fromTop, a.parts[rels]) || bytes.Equal(ours, a.parts["xl/comments1.xml"]) {
		t.Fatalf("nothing to change in %s and %s", fromTop, ours)
	}
	a.parts[rels], a.parts["xl/comments1.xml"] = fromTop, ours
	packed, err := a.pack()
	if err != nil {
		t.Fatal(err)
	}
	for _, marks := range [][]sheet.Mark{nil, {{Sheet: "Sheet1", Row: 3, Col: 2, Style: sheet.Wrong, Note: "no figure"}}} {
		has := saved(t, packed, marks)
		for _, name := range has.names {
			if strings.HasPrefix(name, "/") {
				t.Errorf("a part is named %q", name)
			}
		}
		data, err := has.pack()
		if err != nil {
			t.Fatal(err)
		}
		if _, err := Read("again.xlsx", data); err != nil {
			t.Error(err)
		}
	}
}

// A sheet whose part bears a number that the library would give to a sheet of ours
// keeps its part.
func TestPartsOfAnyNumberAreKept(t *testing.T) {
	from := builders(t)
	a := unpacked(t, from)
	const was, is = "sheet2.xml", "sheet4.xml"
	for _, name := range a.names {
		a.parts[name] = bytes.ReplaceAll(a.parts[name], []byte(was), []byte(is))
	}
	a.names = append(a.names, "xl/worksheets/"+is)
	a.parts["xl/worksheets/"+is] = a.parts["xl/worksheets/"+was]
	a.drop("xl/worksheets/" + was)
	packed, err := a.pack()
	if err != nil {
		t.Fatal(err)
	}
	ours := &sheet.Book{}
	for _, name := range []string{"One", "Two", "Three"} {
		s := &sheet.Sheet{Name: name}
		s.Set(1, 1, sheet.Cell{Kind: sheet.Text, Text: "of " + name})
		ours.Sheets = append(ours.Sheets, s)
	}
	path := filepath.Join(t.TempDir(), "out.xlsx")
	if err := Save(path, false, ours, packed, nil); err != nil {
		t.Fatal(err)
	}
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	book, err := Read(path, data)
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, s := range book.Sheets {
		names = append(names, s.Name)
		if text := s.At(1, 1).Text; s.Name != "Sheet1" && s.Name != "Other" && text != "of "+s.Name {
			t.Errorf("%s holds %q", s.Name, text)
		}
	}
	if other := book.Sheets[len(book.Sheets)-1]; other.Name != "Other" || other.At(1, 1).Formula != "Sheet1!B2*2" {
		t.Errorf("of %q the last holds %+v", names, other.At(1, 1))
	}
}

// Some programs name the parts of notes, and the prefixes in their drawings, their own
// way: our notes stand on such a sheet beside the builder's, once, and the book is whole.
func TestNotesInPartsOfOtherNames(t *testing.T) {
	z, err := zip.NewReader(bytes.NewReader(builders(t)), int64(len(builders(t))))
	if err != nil {
		t.Fatal(err)
	}
	a, err := unpack("", z)
	if err != nil {
		t.Fatal(err)
	}
	rels, types := relsOf("xl/worksheets/sheet1.xml"), "[Content_Types].xml"
	a.parts[rels] = bytes.ReplaceAll(a.parts[rels], []byte("../comments1.xml"), []byte("/xl/comments/comment1.xml"))
	a.parts[rels] = bytes.ReplaceAll(a.parts[rels], []byte("../drawings/vmlDrawing1.vml"), []byte("/xl/drawings/commentsDrawing1.vml"))
	a.parts[types] = bytes.ReplaceAll(a.parts[types], []byte("/xl/comments1.xml"), []byte("/xl/comments/comment1.xml"))
	shapes := string(a.parts["xl/drawings/vmlDrawing1.vml"])
	shapes = strings.NewReplacer("<v:", "<ns2:", "</v:", "</ns2:", "xmlns:v=", "xmlns:ns2=", "<x:", "<ns0:", "</x:", "</ns0:", "xmlns:x=", "xmlns:ns0=", `id="_x0000_s`, `id="note `).Replace(shapes)
	for from, to := range map[string]string{"xl/comments1.xml": "xl/comments/comment1.xml", "xl/drawings/vmlDrawing1.vml": "xl/drawings/commentsDrawing1.vml"} {
		a.names[slices.Index(a.names, from)], a.parts[to] = to, a.parts[from]
		delete(a.parts, from)
	}
	a.parts["xl/drawings/commentsDrawing1.vml"] = []byte(shapes)
	packed, err := a.pack()
	if err != nil {
		t.Fatal(err)
	}
	has := saved(t, packed, []sheet.Mark{
		{Sheet: "Sheet1", Row: 3, Col: 2, Style: sheet.Wrong, Note: "error: no figure"},
		{Sheet: "Sheet1", Row: 2, Col: 2, Style: sheet.Unsure, Note: "warning: off the run"},
		{Sheet: "Other", Row: 1, Col: 1, Style: sheet.Unsure, Note: "warning: it hangs on that"},
	})
	notes, drawn := string(has.parts["xl/comments1.xml"]), has.parts["xl/drawings/vmlDrawing1.vml"]
	for _, want := range []string{"measured twice", "off the run", "no figure"} {
		if strings.Count(notes, want) != 1 {
			t.Errorf("%q is not once in %s", want, notes)
		}
	}
	if whole, ok := usualShapes(drawn); !ok || bytes.Count(drawn, []byte("<v:shape ")) != 2 || bytes.Contains(whole, []byte("ns2")) {
		t.Errorf("two notes are drawn by %s", drawn)
	}
	if n := bytes.Count(has.parts[types], []byte("/xl/comments")); n != 2 || bytes.Contains(has.parts[types], []byte("/xl/comments/")) {
		t.Errorf("%d parts of notes: %s", n, has.parts[types])
	}
	if packed, err = has.pack(); err != nil {
		t.Fatal(err)
	}
	if _, err := Read("again.xlsx", packed); err != nil {
		t.Error(err)
	}
}

// Our notes in a book that another program has saved, without their author and in runs
// of words, are taken off and not added to.
func TestOurNotesWithoutTheirAuthor(t *testing.T) {
	save := func(from []byte) *archive {
		ours := &sheet.Sheet{Name: "Summary"}
		ours.Set(1, 1, sheet.Cell{Kind: sheet.Text, Text: "What"})
		book := &sheet.Book{Sheets: []*sheet.Sheet{ours}, Names: []sheet.Name{{Name: sheet.OursPrefix + "1", Sheet: "Summary", Range: sheet.Range{Top: 1, Left: 1, Bottom: 1, Right: 1}}}}
		path := filepath.Join(t.TempDir(), "out.xlsx")
		if err := Save(path, false, book, from, []sheet.Mark{{Sheet: "Sheet1", Row: 7, Col: 5, Style: sheet.Wrong, Note: "error: no figure\nTo do: write it"}}); err != nil {
			t.Fatal(err)
		}
		return parts(t, path)
	}
	has := save(builders(t))
	for name, part := range has.parts {
		if strings.HasPrefix(name, "xl/comments") {
			part = regexp.MustCompile(`<author>[^<]*</author>`).ReplaceAll(part, []byte("<author> </author>"))
			has.parts[name] = regexp.MustCompile(`<text><t([^>]*)>([^<]*)</t></text>`).ReplaceAll(part, []byte("<text><r><t$1>$2</t></r></text>"))
		}
	}
	packed, err := has.pack()
	if err != nil {
		t.Fatal(err)
	}
	notes := 0
	for name, part := range save(packed).parts {
		if strings.HasPrefix(name, "xl/comments") {
			notes += bytes.Count(part, []byte("To do: write it"))
		}
	}
	if notes != 1 {
		t.Errorf("our note stands there %d times", notes)
	}
}
