package csv

import (
	"encoding/csv"
	"fmt"
	"io"
	"os"
	"strings"

	"github.com/gocarina/gocsv"

	"strakebook/convert/sheet"
)

// Write writes rows as a text file that any spreadsheet opens: UTF-8 with its
// mark, lines ended as RFC 4180 has them, and text that a spreadsheet might run
// as a formula guarded by a quotation mark (OWASP ASVS 5.0, 1.2.10).
func Write(w io.Writer, rows [][]string) error {
	if _, err := io.WriteString(w, "\ufeff"); err != nil {
		return err
	}
	c := csv.NewWriter(w)
	c.UseCRLF = true
	for _, row := range rows {
		out := make([]string, len(row))
		for i, field := range row {
			out[i] = guard(field)
		}
		if err := c.Write(out); err != nil {
			return err
		}
	}
	c.Flush()
	return c.Error()
}

// guard puts a quotation mark before text that begins as a formula does; a
// number is left a number.
func guard(field string) string {
	if field == "" || plain(field) {
		return field
	}
	if strings.ContainsRune("=+-@\t\r\n＝＋－＠", []rune(field)[0]) {
		return "'" + field
	}
	return field
}

// guideLine is one line of a guide file.
type guideLine struct {
	Table    string `csv:"table"`
	Sheet    string `csv:"sheet"`
	Range    string `csv:"range"`
	Stations string `csv:"stations"`
	Unit     string `csv:"unit"`
	Notation string `csv:"notation"`
	Skip     string `csv:"skip"`
}

// GuideHeadings is the headings of a guide file, in order.
var GuideHeadings = []string{"table", "sheet", "range", "stations", "unit", "notation", "skip"}

// ReadGuide reads a guide file. Unknown and missing headings are refused: the
// library would pass over them and return empty lines.
func ReadGuide(name string) ([]sheet.GuideRow, error) {
	refuse := func(cause string, err error) ([]sheet.GuideRow, error) {
		return nil, &sheet.Refused{Doing: "read guide", Path: name, Cause: cause, Err: err,
			Hint: "write one with strakebook show BOOK --write-guide FILE and correct it"}
	}
	data, err := os.ReadFile(name)
	if err != nil {
		return refuse("cannot be read", err.(*os.PathError).Err)
	}
	text, err := decode(data)
	if err != nil {
		return refuse("not text", err)
	}
	comma, text := separator(text)
	head, _, _ := strings.Cut(text, "\n")
	have := map[string]bool{}
	for _, h := range strings.Split(strings.TrimSpace(head), string(comma)) {
		h = strings.ToLower(strings.Trim(strings.TrimSpace(h), `"`))
		if have[h] {
			return refuse(fmt.Sprintf("heading %q stands twice", h), nil)
		}
		have[h] = true
	}
	for _, h := range GuideHeadings {
		if !have[h] {
			return refuse(fmt.Sprintf("heading %q is missing", h), nil)
		}
		delete(have, h)
	}
	for h := range have {
		return refuse(fmt.Sprintf("heading %q is not one of %s", h, strings.Join(GuideHeadings, ", ")), nil)
	}
	r := csv.NewReader(strings.NewReader(text))
	r.Comma = comma
	var lines []guideLine
	if err := gocsv.UnmarshalCSV(r, &lines); err != nil {
		return refuse("not a guide", err)
	}
	rows := make([]sheet.GuideRow, len(lines))
	for i, l := range lines {
		rows[i] = sheet.GuideRow(l)
	}
	return rows, nil
}

// WriteGuide writes a guide file.
func WriteGuide(w io.Writer, rows []sheet.GuideRow) error {
	lines := make([]guideLine, len(rows))
	for i, r := range rows {
		lines[i] = guideLine(r)
	}
	if _, err := io.WriteString(w, "\ufeff"); err != nil {
		return err
	}
	c := csv.NewWriter(w)
	c.UseCRLF = true
	if err := gocsv.MarshalCSV(lines, gocsv.NewSafeCSVWriter(c)); err != nil {
		return err
	}
	c.Flush()
	return c.Error()
}
