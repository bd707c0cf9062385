package csv

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"slices"
	"strings"

	"github.com/gocarina/gocsv"

	"strakebook/convert/sheet"
)

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

// ReadGuide reads the guide file at a path. Its errors are *sheet.Refused.
func ReadGuide(path string) ([]sheet.GuideRow, error) {
	data, err := os.ReadFile(path)
	if err == nil {
		return Guide(path, data)
	}
	var said *fs.PathError
	if errors.As(err, &said) {
		err = said.Err
	}
	return nil, &sheet.Refused{Doing: "read guide", Path: path, Cause: "cannot be read", Hint: "check the name and the folder", Err: err}
}

// Guide reads a guide file's bytes, in any dialect: it may have been through a
// spreadsheet program. Unknown, missing and repeated headings are refused, and
// fields under no heading: the library would pass over them. Its errors are
// *sheet.Refused.
func Guide(name string, data []byte) ([]sheet.GuideRow, error) {
	refuse := func(cause string) ([]sheet.GuideRow, error) {
		return nil, &sheet.Refused{Doing: "read guide", Path: name, Cause: cause,
			Hint: "write one with strakebook show BOOK --write-guide FILE and correct it"}
	}
	text, err := decode(data)
	if err != nil {
		return refuse(err.Error())
	}
	comma, text := separator(text)
	rows, err := records(text, comma)
	if err != nil {
		return refuse(err.Error())
	}
	kept, cause := guideRows(rows)
	if cause != "" {
		return refuse(cause)
	}
	var lines []guideLine
	if err := gocsv.UnmarshalCSV(&kept, &lines); err != nil {
		return refuse(err.Error())
	}
	guide := make([]sheet.GuideRow, len(lines))
	for i, l := range lines {
		guide[i] = sheet.GuideRow(l)
	}
	return guide, nil
}

// guideRows is the headings and the lines under them, every line as long as the
// headings and blank lines left out; or the cause why they are no guide.
func guideRows(rows [][]string) (kept given, cause string) {
	for n, row := range rows {
		for i, f := range row {
			row[i], _ = unguard(strings.TrimSpace(f))
		}
		filled := slices.IndexFunc(row, func(f string) bool { return f != "" }) >= 0
		switch {
		case !filled:
		case kept == nil:
			head, cause := guideHead(row)
			if cause != "" {
				return nil, cause
			}
			kept = given{head}
		default:
			for i := len(kept[0]); i < len(row); i++ {
				if row[i] != "" {
					return nil, fmt.Sprintf("row %d holds %q under no heading", n+1, row[i])
				}
			}
			kept = append(kept, slices.Concat(row, make([]string, len(kept[0])))[:len(kept[0])])
		}
	}
	if kept == nil {
		return nil, "empty"
	}
	return kept, ""
}

// guideHead is the row of headings in plain words, or the cause why it is none.
func guideHead(row []string) (head []string, cause string) {
	for len(row) > 0 && row[len(row)-1] == "" {
		row = row[:len(row)-1]
	}
	for _, f := range row {
		h := strings.ToLower(f)
		switch {
		case !slices.Contains(GuideHeadings, h):
			return nil, fmt.Sprintf("heading %q is not one of %s", f, strings.Join(GuideHeadings, ", "))
		case slices.Contains(head, h):
			return nil, fmt.Sprintf("heading %q stands twice", f)
		}
		head = append(head, h)
	}
	for _, h := range GuideHeadings {
		if !slices.Contains(head, h) {
			return nil, fmt.Sprintf("heading %q is missing", h)
		}
	}
	return head, ""
}

// given is rows already read, as the library takes them.
type given [][]string

// Read is the next row.
func (g *given) Read() ([]string, error) {
	if len(*g) == 0 {
		return nil, io.EOF
	}
	row := (*g)[0]
	*g = (*g)[1:]
	return row, nil
}

// ReadAll is the rows that are left.
func (g *given) ReadAll() ([][]string, error) {
	rows := *g
	*g = nil
	return rows, nil
}

// WriteGuide writes a guide file.
func WriteGuide(w io.Writer, rows []sheet.GuideRow) error {
	lines := make([]guideLine, len(rows))
	for i, r := range rows {
		lines[i] = guideLine(r)
	}
	to, err := newGuarding(w)
	if err != nil {
		return err
	}
	return gocsv.MarshalCSV(lines, to)
}
