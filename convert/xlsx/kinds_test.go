package xlsx

import (
	"archive/zip"
	"bytes"
	"errors"
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"strakebook/convert/sheet"
)

// archiveOf is an archive of some parts, all empty.
func archiveOf(t *testing.T, parts ...string) []byte {
	t.Helper()
	var b bytes.Buffer
	w := zip.NewWriter(&b)
	for _, p := range parts {
		if _, err := w.Create(p); err != nil {
			t.Fatal(err)
		}
	}
	if err := w.Close(); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// What is no workbook of ours is named for what it is by what it holds, with the
// way out.
func TestOtherKindsAreNamed(t *testing.T) {
	old := func(entry string) []byte {
		return append(append(bytes.Clone(oldHeader), make([]byte, 508)...), wide(entry)...)
	}
	many := []string{"[Content_Types].xml", "_rels/.rels"}
	for i := range mostParts {
		many = append(many, fmt.Sprint("xl/worksheets/sheet", i, ".xml"))
	}
	for _, c := range []struct {
		data        []byte
		cause, hint string
	}{
		{old("Workbook"), "old .xls kind", "save it as .xlsx"},
		{old("Book"), "old .xls kind", "save it as .xlsx"},
		{old("EncryptedPackage"), "protected by a password", "take the password off"},
		{old("WordDocument"), "a document of words", "name the workbook"},
		{archiveOf(t, "[Content_Types].xml", "_rels/.rels", "xl/workbook.bin"), ".xlsb", "save it as .xlsx"},
		{archiveOf(t, "mimetype", "content.xml"), ".ods", "save it as .xlsx"},
		{archiveOf(t, "Index/Document.iwa"), "another spreadsheet program", "export it as .xlsx"},
		{archiveOf(t, "[Content_Types].xml", "_rels/.rels", "word/document.xml"), "a document of words", "copy its tables"},
		{archiveOf(t, "photo.jpg", "offsets.xlsx"), "an archive and not a workbook", "name the workbook inside it"},
		{archiveOf(t, many...), "more parts than any workbook", "as a new workbook"},
		{sample(t)[:4000], "cut short or damaged", "repair it"},
	} {
		if !IsWorkbook(c.data) {
			t.Errorf("%s: taken for text", c.cause)
		}
		_, err := Read("book.xlsx", c.data)
		var r *sheet.Refused
		if !errors.As(err, &r) || !strings.Contains(r.Cause, c.cause) || !strings.Contains(r.Hint, c.hint) {
			t.Errorf("%s: refused as %v", c.cause, err)
		}
	}
}

// Templates and books with macros are read as any book, by what they say of
// themselves and not by their names.
func TestKindsOfWorkbook(t *testing.T) {
	a := unzipped(t, sample(t))
	types := string(a.parts[contentTypes])
	const plain = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"
	if !strings.Contains(types, plain) {
		t.Fatal(types)
	}
	want, err := Read("book.xlsx", sample(t))
	if err != nil {
		t.Fatal(err)
	}
	for kind, of := range map[string]string{
		"xlsx": plain,
		"xltx": "application/vnd.openxmlformats-officedocument.spreadsheetml.template.main+xml",
		"xlsm": "application/vnd.ms-excel.sheet.macroEnabled.main+xml",
		"xltm": "application/vnd.ms-excel.template.macroEnabled.main+xml",
	} {
		got, err := Read("book.xlsx", a.with(t, contentTypes, []byte(strings.ReplaceAll(types, plain, of))))
		if err != nil || got.Kind != kind || !cmp.Equal(got.Sheets, want.Sheets) {
			t.Errorf("%s: %v, %v", kind, got, err)
		}
	}
}

// A strict workbook holds the same cells, its dates in words.
func TestStrictWorkbook(t *testing.T) {
	want, err := Read("book.xlsx", sample(t))
	if err != nil {
		t.Fatal(err)
	}
	names := strings.NewReplacer(
		"http://schemas.openxmlformats.org/spreadsheetml/2006/main", "http://purl.oclc.org/ooxml/spreadsheetml/main",
		"http://schemas.openxmlformats.org/officeDocument/2006/relationships", "http://purl.oclc.org/ooxml/officeDocument/relationships")
	a := unzipped(t, sample(t))
	strict := &archive{parts: map[string][]byte{}}
	for _, n := range a.names {
		part := names.Replace(string(a.parts[n]))
		if n == "xl/worksheets/sheet1.xml" {
			i := strings.Index(part, `<c r="D5"`)
			end := i + strings.Index(part[i:], "</c>")
			date := strings.Replace(strings.Replace(part[i:end], `r="D5"`, `r="D5" t="d"`, 1), "<v>38780</v>", "<v>2006-03-04T00:00:00</v>", 1)
			part = part[:i] + date + part[end:]
		}
		strict.put(n, []byte(part))
	}
	data, err := strict.pack()
	if err != nil {
		t.Fatal(err)
	}
	got, err := Read("book.xlsx", data)
	if err != nil {
		t.Fatal(err)
	}
	want.Sheets[0].Rows[4][3].Text, got.Sheets[0].Rows[4][3].Text = "", "" // as shown, which a date in words is not
	if d := cmp.Diff(want, got); d != "" {
		t.Error(d)
	}
}
