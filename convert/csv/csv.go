// Package csv reads text files of any dialect as a book of one sheet, and reads
// and writes the project's own fixed tables. It is the only place that knows
// the libraries for them.
package csv

import (
	"bytes"
	"encoding/csv"
	"errors"
	"io"
	"path/filepath"
	"strconv"
	"strings"
	"unicode/utf8"

	"golang.org/x/text/encoding/charmap"
	"golang.org/x/text/encoding/unicode"

	"strakebook/convert/sheet"
)

// most is the largest text file read: a yard's is a thousandth of it.
const most = 50 << 20

// Read reads a text file as a book of one sheet named after the file. Its errors
// are *sheet.Refused.
func Read(name string, data []byte) (*sheet.Book, error) {
	refuse := func(cause, hint string) (*sheet.Book, error) {
		return nil, &sheet.Refused{Doing: "open", Path: name, Cause: cause, Hint: hint}
	}
	if len(data) > most {
		return refuse("larger than 50 MB of text", "save the tables you need by themselves")
	}
	text, err := decode(data)
	if err != nil {
		return refuse("not text, nor a workbook", "give a workbook (.xlsx) or a text file of columns (.csv)")
	}
	if strings.TrimSpace(text) == "" {
		return refuse("empty", "give a workbook (.xlsx) or a text file of columns (.csv)")
	}
	if low := strings.ToLower(strings.TrimSpace(text[:min(len(text), 400)])); strings.HasPrefix(low, "<!doctype") || strings.HasPrefix(low, "<html") || strings.HasPrefix(low, "<?xml") || strings.HasPrefix(low, "<table") {
		return refuse("a web page or XML under another name", "open it in a spreadsheet program and save it as .xlsx")
	}
	if !strings.Contains(text, "\n") {
		text = strings.ReplaceAll(text, "\r", "\n")
	}
	comma, text := separator(text)
	rows, err := records(text, comma)
	if err != nil {
		return refuse("a quotation mark opens and does not close: "+err.Error(), "close it, or write two of them for an inch mark inside quotes")
	}
	base := filepath.Base(name)
	s := &sheet.Sheet{Name: strings.TrimSuffix(base, filepath.Ext(base))}
	for r, row := range rows {
		for c, field := range row {
			if cell := cellOf(field, comma); cell.Kind != sheet.Empty {
				s.Set(r+1, c+1, cell)
			}
		}
	}
	return &sheet.Book{Path: name, Name: base, Kind: "csv", Sheets: []*sheet.Sheet{s}}, nil
}

// decode turns the file's bytes into text: UTF-8, UTF-16 with or without a mark,
// or else Windows-1252, which older programs on that system write.
func decode(data []byte) (string, error) {
	switch nul := bytes.Count(data, []byte{0}); {
	case bytes.HasPrefix(data, []byte{0xEF, 0xBB, 0xBF}):
		return string(data[3:]), nil
	case bytes.HasPrefix(data, []byte{0xFF, 0xFE}), bytes.HasPrefix(data, []byte{0xFE, 0xFF}), nul*3 > len(data):
		end := unicode.LittleEndian
		if data[0] == 0 {
			end = unicode.BigEndian
		}
		out, err := unicode.UTF16(end, unicode.UseBOM).NewDecoder().Bytes(data)
		if errors.Is(err, unicode.ErrMissingBOM) {
			out, err = unicode.UTF16(end, unicode.IgnoreBOM).NewDecoder().Bytes(data)
		}
		return string(out), err
	case nul > 0:
		return "", errors.New("it holds null bytes")
	case utf8.Valid(data):
		return string(data), nil
	}
	out, err := charmap.Windows1252.NewDecoder().Bytes(data)
	return string(out), err
}

// separator finds what separates the fields: as a first line sep=; says, or of
// comma, semicolon, tab and bar the one that stands most evenly in the lines.
func separator(text string) (rune, string) {
	if rest, ok := strings.CutPrefix(text, "sep="); ok && len(rest) > 1 {
		if line, after, found := strings.Cut(rest, "\n"); found && len(strings.TrimRight(line, "\r")) == 1 {
			return rune(line[0]), after
		}
	}
	best, bestEven, bestCols := ',', 0, 0
	for _, comma := range ",;\t|" {
		counts := map[int]int{}
		lines := 0
		for _, line := range strings.SplitN(text, "\n", 31) {
			if strings.TrimSpace(line) == "" || lines == 30 {
				continue
			}
			lines++
			if n := outside(line, comma); n > 0 {
				counts[n]++
			}
		}
		for n, lines := range counts {
			if lines > bestEven || lines == bestEven && n > bestCols {
				best, bestEven, bestCols = comma, lines, n
			}
		}
	}
	return best, text
}

// outside counts a separator outside of quotation marks.
func outside(line string, comma rune) int {
	n, quoted := 0, false
	for _, r := range line {
		switch {
		case r == '"':
			quoted = !quoted
		case r == comma && !quoted:
			n++
		}
	}
	return n
}

// records reads the fields, by the strict rules of RFC 4180 if the file keeps
// them; else loosely, for inch marks that were never quoted. Read loosely, a
// field with a line break is a quotation that never closed and would swallow
// the rest of the file.
func records(text string, comma rune) ([][]string, error) {
	for _, lazy := range []bool{false, true} {
		r := csv.NewReader(strings.NewReader(text))
		r.Comma, r.FieldsPerRecord, r.LazyQuotes = comma, -1, lazy
		var rows [][]string
		for {
			row, err := r.Read()
			if err == io.EOF {
				return rows, nil
			}
			if err != nil {
				break
			}
			line, _ := r.FieldPos(0)
			for len(rows) < line-1 {
				rows = append(rows, nil) // the reader passes over blank lines: rows keep their place
			}
			for _, f := range row {
				if lazy && strings.Contains(f, "\n") {
					return nil, errors.New("at line " + strconv.Itoa(line))
				}
			}
			rows = append(rows, row)
		}
	}
	return nil, errors.New("the file is not read")
}

// cellOf is a field as a cell: a number where it is one plain number, else text.
// With a comma between fields a comma in a number is no decimal point.
func cellOf(field string, comma rune) sheet.Cell {
	t := strings.TrimSpace(field)
	if rest, ok := strings.CutPrefix(t, "'"); ok && rest != "" && strings.ContainsAny(rest[:1], "=+-@") {
		t = rest // the guard put before text that might be run as a formula
	}
	if t == "" {
		return sheet.Cell{}
	}
	number := t
	if comma != ',' && strings.Count(t, ",") == 1 && !strings.Contains(t, ".") {
		number = strings.Replace(t, ",", ".", 1)
	}
	if v, err := strconv.ParseFloat(number, 64); err == nil && plain(number) {
		return sheet.Cell{Kind: sheet.Number, Number: v, Text: t}
	}
	return sheet.Cell{Kind: sheet.Text, Text: t}
}

// plain says that a number is written with figures, a sign and a point alone.
func plain(t string) bool {
	return strings.Trim(t, "0123456789.-+") == "" && strings.Trim(t, "+-") != "" && !strings.HasPrefix(t, "+")
}
