package xlsx

import (
	"archive/zip"
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"strakebook/convert/sheet"
)

// refusedWell says that an error names the file, the cause and the way out.
func refusedWell(err error) bool {
	var r *sheet.Refused
	return errors.As(err, &r) && r.Cause != "" && r.Hint != ""
}

// judge holds a damaged workbook's reading against the sound one's: refused, or
// the same.
func judge(t *testing.T, what string, bad []byte, sound *sheet.Book) (refused bool) {
	t.Helper()
	got, err := Read("book.xlsx", bad)
	switch {
	case err != nil && !refusedWell(err):
		t.Errorf("%s: an error without cause or hint: %v", what, err)
	case err == nil && !cmp.Equal(got, sound):
		t.Errorf("%s: read otherwise without a word: %.900s", what, cmp.Diff(sound, got))
	}
	return err != nil
}

// A file of which bytes were changed, lost or added anywhere is refused or reads
// as it did.
func TestDamagedFile(t *testing.T) {
	data := sample(t)
	sound, err := Read("book.xlsx", data)
	if err != nil {
		t.Fatal(err)
	}
	rng := rand.New(rand.NewPCG(1, 2))
	refused := 0
	const tries = 5000
	for i := range tries {
		bad := bytes.Clone(data)
		at := rng.IntN(len(bad))
		what := ""
		switch i % 5 {
		case 0:
			what, bad = "cut short", bad[:at]
		case 1:
			what = "a byte changed"
			bad[at] ^= byte(1 + rng.IntN(255))
		case 2:
			what = "bytes changed"
			for range 2 + rng.IntN(6) {
				bad[rng.IntN(len(bad))] = byte(rng.IntN(256))
			}
		case 3:
			what, bad = "bytes lost", slices.Delete(bad, at, min(len(bad), at+1+rng.IntN(40)))
		case 4:
			what = "a block of nothing"
			clear(bad[at:min(len(bad), at+1+rng.IntN(600))])
		}
		if judge(t, what, bad, sound) {
			refused++
		}
	}
	t.Logf("%d of %d damaged files refused, the others read as they were", refused, tries)
	if refused < tries*3/4 {
		t.Errorf("only %d of %d damaged files refused", refused, tries)
	}
}

// markup is a part's elements and their attributes, without what is between and
// in them; "" where it is malformed.
func markup(part []byte) string {
	var all strings.Builder
	d := xml.NewDecoder(bytes.NewReader(part))
	for {
		token, err := d.RawToken()
		if err == io.EOF {
			return all.String() + "."
		}
		switch token := token.(type) {
		case nil:
			return ""
		case xml.StartElement:
			all.WriteString("<" + token.Name.Space + ":" + token.Name.Local)
			for _, a := range token.Attr {
				all.WriteString(" " + a.Name.Space + ":" + a.Name.Local)
			}
		case xml.EndElement:
			all.WriteString(">")
		}
	}
}

func malformed(part []byte) bool {
	d := xml.NewDecoder(bytes.NewReader(part))
	for {
		if _, err := d.Token(); err == io.EOF {
			return false
		} else if err != nil {
			return true
		}
	}
}

// xmlParts is the parts of a workbook in which to do damage.
func xmlParts(a *archive) []string {
	var all []string
	for _, n := range a.names {
		if (strings.HasSuffix(n, ".xml") || strings.HasSuffix(n, ".rels")) && !strings.HasPrefix(n, "docProps") && !strings.Contains(n, "theme") {
			all = append(all, n)
		}
	}
	return all
}

// A workbook packed soundly, of which a part is malformed, is refused; one of
// which a byte was changed, lost or added is refused or reads as it did. Where the
// markup is what it was and a value is not, none can tell.
func TestDamagedMarkup(t *testing.T) {
	data := sample(t)
	sound, err := Read("book.xlsx", data)
	if err != nil {
		t.Fatal(err)
	}
	a := unzipped(t, data)
	parts := xmlParts(a)
	rng := rand.New(rand.NewPCG(3, 4))
	odd := []byte("<>&\"'/= \x00\x01azAZ09\xff\xc3;:")
	refused, tries := 0, 0
	for i := range 6000 {
		name := parts[rng.IntN(len(parts))]
		part := a.parts[name]
		at := rng.IntN(len(part))
		bad := bytes.Clone(part)
		what := "in " + name + " "
		one := true
		switch i % 4 {
		case 0:
			c := odd[rng.IntN(len(odd))]
			what += "a byte changed to " + string(c)
			bad[at] = c
		case 1:
			what, bad = what+"a byte lost", slices.Delete(bad, at, at+1)
		case 2:
			what, bad = what+"a byte added", slices.Insert(bad, at, odd[rng.IntN(len(odd))])
		case 3:
			one = false
			what, bad = what+"bytes lost", slices.Delete(bad, at, min(len(bad), at+2+rng.IntN(60)))
		}
		broken := malformed(bad)
		if !broken && (!one || markup(bad) == markup(part)) {
			continue // a sound workbook that says something else
		}
		tries++
		what += ": " + string(part[max(0, at-30):at]) + "@" + string(bad[at:min(len(bad), at+30)])
		got := judge(t, what, a.with(t, name, bad), sound)
		if broken && !got {
			t.Errorf("%s: malformed and not refused: %s", what, bad)
		}
		if got {
			refused++
		}
	}
	t.Logf("%d of %d edits of the markup refused, the others read as they were", refused, tries)
	if refused < tries*3/4 || tries < 3000 {
		t.Errorf("only %d of %d edits refused", refused, tries)
	}
}

// What a workbook counts and points to must be there.
func TestWrongCounts(t *testing.T) {
	a := unzipped(t, sample(t))
	const sheet1, texts, styles = "xl/worksheets/sheet1.xml", "xl/sharedStrings.xml", "xl/styles.xml"
	for _, c := range []struct{ what, part, old, new string }{
		{"a text lost", texts, "<si><t>St 1</t></si>", ""},
		{"a style lost", styles, "</cellXfs>", "</cellXfs><!-- -->"},
		{"a text beyond the last", sheet1, `t="s"><v>1<`, `t="s"><v>4711<`},
		{"a text that is no number", sheet1, `t="s"><v>1<`, `t="s"><v>x<`},
		{"a number that is none", sheet1, `<v>40.75<`, `<v>4O.75<`},
		{"a number without end", sheet1, `<v>40.75<`, `<v>inf<`},
		{"a cell twice", sheet1, `<c r="B2"`, `<c r="A2"`},
		{"a cell of another row", sheet1, `<c r="B2"`, `<c r="B3"`},
		{"a cell beyond the last column", sheet1, `<c r="E6"`, `<c r="XFE6"`},
		{"a row twice", sheet1, `<row r="3"`, `<row r="2"`},
		{"a row beyond the last", sheet1, `<row r="8"`, `<row r="1048577"`},
		{"a kind of cell that is none", sheet1, `t="s"`, `t="z"`},
		{"a merged block lost", sheet1, `<mergeCell ref="A1:E1"></mergeCell>`, ""},
		{"a sheet lost", "xl/_rels/workbook.xml.rels", `worksheets/sheet2.xml`, `worksheets/sheet9.xml`},
		{"the styles lost", "xl/_rels/workbook.xml.rels", `styles.xml`, `stiles.xml`},
		{"the notes lost", "xl/worksheets/_rels/sheet1.xml.rels", `comments1.xml`, `comments7.xml`},
		{"the table lost", "xl/worksheets/_rels/sheet2.xml.rels", `table1.xml`, `table7.xml`},
		{"the sheet cut short", sheet1, "</sheetData>", "</sheetDat"},
		{"a control character in a tag", sheet1, `<c r="B2"`, "<c \x01r=\"B2\""},
		{"an address that is none", sheet1, `<c r="B2"`, `<c r="2B"`},
		{"the texts cut short", texts, "</sst>", ""},
		{"the texts lost", "xl/_rels/workbook.xml.rels", `sharedStrings.xml`, `sharedStringz.xml`},
		{"a style beyond the last", sheet1, `r="C3" s="`, `r="C3" s="9`},
	} {
		part := string(a.parts[c.part])
		if c.what == "a style lost" {
			i := strings.LastIndex(part, "<xf ")
			for !strings.Contains(part[i:], "</cellXfs>") {
				i = strings.LastIndex(part[:i], "<xf ")
			}
			end := i + strings.Index(part[i:], "</xf>") + len("</xf>")
			part = part[:i] + part[end:]
		} else if part = strings.Replace(part, c.old, c.new, 1); part == string(a.parts[c.part]) {
			t.Errorf("%s: %s is not in %s", c.what, c.old, c.part)
			continue
		}
		if got, err := Read("book.xlsx", a.with(t, c.part, []byte(part))); !refusedWell(err) {
			t.Errorf("%s: %v, %v", c.what, got != nil, err)
		}
	}
}

// A figure changed under its checksum is not read.
func TestWrongChecksum(t *testing.T) {
	a := unzipped(t, sample(t))
	var b bytes.Buffer
	w := zip.NewWriter(&b)
	for _, n := range a.names {
		to, err := w.CreateHeader(&zip.FileHeader{Name: n, Method: zip.Store})
		if err != nil {
			t.Fatal(err)
		}
		if _, err := to.Write(a.parts[n]); err != nil {
			t.Fatal(err)
		}
	}
	if err := w.Close(); err != nil {
		t.Fatal(err)
	}
	if _, err := Read("book.xlsx", b.Bytes()); err != nil {
		t.Fatal(err)
	}
	if got, err := Read("book.xlsx", bytes.Replace(b.Bytes(), []byte("<v>40.75<"), []byte("<v>90.75<"), 1)); !refusedWell(err) {
		t.Errorf("%v, %v", got, err)
	}
}

// FuzzXML holds the scanner against the standard decoder: what it takes, the
// decoder takes too, with the same text.
func FuzzXML(f *testing.F) {
	a := unzipped(f, sample(f))
	for _, n := range xmlParts(a) {
		f.Add(a.parts[n])
	}
	f.Add([]byte("<a b='1'>&#x41;\r\n<![CDATA[<&]]></a><!-- -->"))
	f.Fuzz(func(t *testing.T, part []byte) {
		s := newScanner(part)
		text := ""
		for s.kind != tokenDone {
			if err := s.next(); err != nil {
				return
			}
			if s.kind == tokenText && len(s.open) > 0 {
				text += value(s.text)
			}
		}
		d := xml.NewDecoder(bytes.NewReader(part))
		d.CharsetReader = func(_ string, r io.Reader) (io.Reader, error) { return r, nil }
		want := ""
		for depth := 0; ; {
			token, err := d.Token()
			if err == io.EOF {
				break
			}
			if err != nil {
				t.Fatalf("taken, and not by the decoder: %v", err)
			}
			switch token := token.(type) {
			case xml.StartElement:
				depth++
			case xml.EndElement:
				depth--
			case xml.CharData:
				if depth > 0 {
					want += string(token)
				}
			}
		}
		if text != want {
			t.Fatalf("text %q, the decoder has %q", text, want)
		}
	})
}
