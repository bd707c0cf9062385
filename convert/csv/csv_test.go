package csv

import (
	"bytes"
	"errors"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"strakebook/convert/sheet"
)

func TestOpenNothing(t *testing.T) {
	var r *sheet.Refused
	if _, err := ReadGuide(filepath.Join(t.TempDir(), "none.csv")); !errors.As(err, &r) || r.Err == nil || r.Hint == "" {
		t.Errorf("a file that is not there gave %v", err)
	}
	if _, err := Read("book.csv", []byte("PK\x03\x04and the rest")); !errors.As(err, &r) || !strings.Contains(r.Cause, "workbook") {
		t.Errorf("an archive gave %v", err)
	}
	for opening, want := range map[string]string{"%PDF-1.7\n": "a PDF", "\x89PNG\r\n": "a picture", "\xff\xd8\xff\xe0": "a picture", "{\\rtf1": "a document of words"} {
		if _, err := Read("book.csv", []byte(opening)); !errors.As(err, &r) || !strings.Contains(r.Cause, want) || r.Hint == "" {
			t.Errorf("%q gave %v", opening, err)
		}
	}
}

func TestSeparator(t *testing.T) {
	test := func(text string, want rune) {
		t.Helper()
		if got, _ := separator(text); got != want {
			t.Errorf("%q is separated by %q, want %q", text, got, want)
		}
	}
	test("a,b\n1,2\n", ',')
	test("a;b\n1,5;2,5\n", ';')
	test("a\tb\n1,5\t2,5\n", '\t')
	test("Smith, J;5\nJones, K;6\n", ';')
	test("name,note\n1,see; and look; at 3\n2,clear\n3,clear\n", ',')
	test("a,b,c\n1,\"x;y\",2\n1,\"x;y\",2\n", ',')
	test("\"a;b\";c\n\"d\ne;f\";g\n", ';')
	test("1,2,3\n", ',')
	test("only\n", ',')
	test("sep=:\na:b\n", ':')
	test("sep=;\n", ';')
	test("a \" b,c\nd \" e,f\n", ',')
}

// Text that a spreadsheet might run is guarded and numbers are not (OWASP ASVS
// 5.0, 1.2.10); lines end as RFC 4180 has them.
func TestWrite(t *testing.T) {
	var out bytes.Buffer
	err := Write(&out, slices.Values([][]string{
		{"Strake", "Note", "Bevel"},
		{"1", "=1+1", "-2.5"},
		{"2", "+cmd|x", "-"},
		{"3", "@here", "-2 1/2"},
		{"4", "＝1", `3' 4 3/4"`},
		{"5", "two\r\nlines", "½, °"},
		{"6", "a\x00b\xff", "'=x"},
	}))
	want := "\ufeffStrake,Note,Bevel\r\n" +
		"1,'=1+1,-2.5\r\n" +
		"2,'+cmd|x,-\r\n" +
		"3,'@here,'-2 1/2\r\n" +
		"4,'＝1,\"3' 4 3/4\"\"\"\r\n" +
		"5,\"two\r\nlines\",\"½, °\"\r\n" +
		"6,a\ufffdb\ufffd,''=x\r\n"
	if err != nil || out.String() != want {
		t.Errorf("wrote %q, %v; want %q", out.String(), err, want)
	}
}

func TestWriteFails(t *testing.T) {
	if err := Write(full{}, slices.Values([][]string{{"a"}})); err == nil {
		t.Error("a full disk was not noticed")
	}
	if err := WriteGuide(full{}, nil); err == nil {
		t.Error("a full disk was not noticed")
	}
}

type full struct{}

func (full) Write([]byte) (int, error) { return 0, errors.New("no space left") }

func TestGuide(t *testing.T) {
	rows := []sheet.GuideRow{
		{Table: "offsets", Sheet: "Lines", Range: "B3:W14", Stations: "across", Unit: "", Notation: "feet-inches-eighths"},
		{Table: "rack", Sheet: "=odd, \"name\"", Range: "A1:C9", Unit: "mm", Notation: "decimal", Skip: "yes"},
	}
	var out bytes.Buffer
	if err := WriteGuide(&out, rows); err != nil {
		t.Fatal(err)
	}
	if got, err := Guide("guide.csv", out.Bytes()); err != nil || !slices.Equal(got, rows) {
		t.Errorf("wrote %v, read %v, %v", rows, got, err)
	}
	out.Reset()
	if err := WriteGuide(&out, nil); err != nil {
		t.Fatal(err)
	}
	if got, err := Guide("guide.csv", out.Bytes()); err != nil || len(got) != 0 {
		t.Errorf("a guide of no lines was read as %v, %v", got, err)
	}
}

// A guide that has been through a spreadsheet program is still a guide: other
// separators, headings in capitals and in another order, blank lines.
func TestGuideOtherDialects(t *testing.T) {
	want := []sheet.GuideRow{{Table: "bevels", Sheet: "Bevels", Range: "A1:F9", Unit: "degrees"}}
	for _, text := range []string{
		"\"Table\";SHEET; range ;Stations;Unit;Notation;Skip\r\n\r\nbevels;Bevels;A1:F9;;degrees\r\n;;;;;;\r\n",
		"skip\tnotation\tunit\tstations\trange\tsheet\ttable\t\r\t\tdegrees\t\tA1:F9\tBevels\tbevels\t\r",
	} {
		if got, err := Guide("guide.csv", []byte(text)); err != nil || !slices.Equal(got, want) {
			t.Errorf("%q: read %v, %v", text, got, err)
		}
	}
}

// The library would take each of these and leave fields empty.
func TestGuideRefused(t *testing.T) {
	for text, cause := range map[string]string{
		"":                        "empty",
		"\n\n":                    "empty",
		"the tables of hull 14\n": "is not one of",
		"table,sheet,range,stations,unit,notation\noffsets,A,,,,\n":               `"skip" is missing`,
		"table,sheet,range,stations,units,notation,skip\noffsets,A,,,,,\n":        `"units" is not one of`,
		"table,sheet,range,stations,unit,notation,skip,skip\noffsets,A,,,,,,\n":   `"skip" stands twice`,
		"table,sheet,range,stations,unit,notation,skip\noffsets,A,,,,,,yes\n":     `row 2 holds "yes" under no heading`,
		"table,sheet,range,stations,unit,notation,skip\noffsets,\"A,,,,,\n,,,,\n": "does not close",
		"table\x00,sheet,range,stations,unit,notation,skip\n":                     "not text",
	} {
		got, err := Guide("guide.csv", []byte(text))
		var r *sheet.Refused
		if !errors.As(err, &r) || !strings.Contains(r.Cause, cause) || r.Hint == "" {
			t.Errorf("%q: read %v, error %v; want it refused: %s", text, got, err, cause)
		}
	}
}

// Whatever a file holds it is read or refused; and what is read keeps no field
// that is blank.
func FuzzRead(f *testing.F) {
	for _, s := range []string{"a,b\n1,2", "a;b\n1,5;2", "sep=|\na|b", "\xff\xfea\x00", "\xef\xbb\xbf\"a\"", "\"a", "',=1", "\",1\n\",2", "1.234;1,5", "a\rb\rc"} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		book, err := Read("fuzz.csv", data)
		if err != nil {
			var r *sheet.Refused
			if !errors.As(err, &r) || r.Cause == "" || r.Hint == "" {
				t.Errorf("refused with %#v", err)
			}
			return
		}
		for _, row := range book.Sheets[0].Rows {
			for _, c := range row {
				if c.Kind == sheet.Text && c.Text == "" || c.Kind == sheet.Number && c.Number != c.Number {
					t.Errorf("%q: cell %+v", data, c)
				}
			}
		}
		_, _ = Guide("fuzz.csv", data)
	})
}

// What is written comes back: every field as it was, save for blanks around it,
// for characters no text file holds and for the one kind of line break.
func FuzzWrite(f *testing.F) {
	for _, s := range []string{"=1+1", "-2.5", "- 2", "3' 4 3/4\"", "two\nlines", "'tween", "'=x", "''5", "½, °", "#REF!"} {
		f.Add(s, "next")
	}
	f.Fuzz(func(t *testing.T, a, b string) {
		var out bytes.Buffer
		if err := Write(&out, slices.Values([][]string{{"first", "second"}, {a, b}})); err != nil {
			t.Fatal(err)
		}
		text, err := decode(out.Bytes())
		if err != nil {
			t.Fatalf("%q was written as %q, which is %v", a, out.String(), err)
		}
		rows, _, err := parse(text, ',', false)
		if err != nil || len(rows) != 2 || len(rows[1]) != 2 {
			t.Fatalf("%q and %q were written as %q and read as %q, %v", a, b, text, rows, err)
		}
		for i, want := range []string{a, b} {
			if got, _ := unguard(rows[1][i]); got != clean(want) {
				t.Errorf("%q was written as %q and read as %q", want, rows[1][i], got)
			}
			if c := cellOf(rows[1][i], thousands); c.Kind == sheet.Number && !plainNumber.MatchString(strings.TrimSpace(clean(want))) && !surePoint.MatchString(c.Text) && !eitherComma.MatchString(c.Text) && !strings.HasPrefix(c.Text, "−") {
				t.Errorf("%q came back as the number %v", want, c.Number)
			}
		}
	})
}
