// Package csv reads text files of any dialect as a book of one sheet, and reads
// and writes the project's own fixed tables. It is the only place that knows
// the libraries for them.
package csv

import (
	"path/filepath"
	"regexp"
	"strings"

	"strakebook/convert/sheet"
)

// most is the largest text file read: a yard's is a thousandth of it.
const most = 50 << 20

// Read reads a text file as a book of one sheet named after the file. Rows and
// columns are where a spreadsheet program shows them, blank lines counted. Its
// errors are *sheet.Refused.
func Read(name string, data []byte) (*sheet.Book, error) {
	refuse := func(cause, hint string) (*sheet.Book, error) {
		return nil, &sheet.Refused{Doing: "open", Path: name, Cause: cause, Hint: hint}
	}
	const other = "give a workbook (.xlsx) or a text file of columns (.csv)"
	if len(data) > most {
		return refuse("larger than 50 MB of text", "save the tables you need by themselves")
	}
	if what := otherFile(data); what != "" {
		return refuse(what, other)
	}
	text, err := decode(data)
	switch {
	case err != nil:
		return refuse(err.Error(), other)
	case strings.TrimSpace(text) == "":
		return refuse("empty", other)
	case webPage(text):
		return refuse("a web page or XML under another name", "open it in a spreadsheet program and save it as .xlsx")
	}
	comma, text := separator(text)
	rows, err := records(text, comma)
	if err != nil {
		return refuse(err.Error(), "close it, write two of them for an inch mark inside quotation marks, and write ditto marks out as words")
	}
	base := filepath.Base(name)
	s := &sheet.Sheet{Name: sheet.LegalName(strings.TrimSuffix(base, filepath.Ext(base)))}
	remarks(rows, comma)
	way := commasOf(rows, comma)
	for r, row := range rows {
		for c, field := range row {
			if cell := cellOf(field, way); cell.Kind != sheet.Empty {
				s.Set(r+1, c+1, cell)
			}
		}
	}
	return &sheet.Book{Path: name, Name: base, Kind: "csv", Sheets: []*sheet.Sheet{s}}, nil
}

// remarks puts every line that opens with a mark of number and words, as a remark
// over a table does, together again as one text.
func remarks(rows [][]string, comma rune) {
	for i, row := range rows {
		if len(row) > 1 && remark.MatchString(row[0]) {
			rows[i] = []string{strings.Join(row, string(comma))}
		}
	}
}

var remark = regexp.MustCompile(`^# \pL`)

// webPage says that a text is mark-up: what some programs save as a spreadsheet.
func webPage(text string) bool {
	low := strings.ToLower(strings.TrimSpace(text[:min(len(text), 400)]))
	for _, opening := range []string{"<!doctype", "<html", "<?xml", "<table", "<meta"} {
		if strings.HasPrefix(low, opening) {
			return true
		}
	}
	return false
}

// otherFile is what a file is by its first bytes, where it is no text at all; ""
// where it may be.
func otherFile(data []byte) string {
	for _, k := range []struct{ opening, what string }{
		{"%PDF-", "a PDF and no workbook"},
		{"\x89PNG", "a picture and no workbook"},
		{"\xff\xd8\xff", "a picture and no workbook"},
		{"GIF8", "a picture and no workbook"},
		{"{\\rtf", "a document of words and no workbook"},
	} {
		if strings.HasPrefix(string(data[:min(len(data), 8)]), k.opening) {
			return k.what
		}
	}
	return ""
}
