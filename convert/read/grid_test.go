package read

import (
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"strakebook/calc"
	"strakebook/calc/finding"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// words of the headings as the program carries them.
func headingWords(t testing.TB) string {
	t.Helper()
	data, err := os.ReadFile("../../templates/headings.csv")
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// cellOf makes a cell of a text as a spreadsheet would have it: a number where it
// is one, "date:2003-04-06" for a date, "time:2:30" for a time of day.
func cellOf(text string) sheet.Cell {
	t := strings.TrimSpace(text)
	if t == "" {
		return sheet.Cell{}
	}
	if date, ok := strings.CutPrefix(t, "date:"); ok {
		return dateCell(date)
	}
	if clock, ok := strings.CutPrefix(t, "time:"); ok {
		parts := strings.Split(clock, ":")
		v := 0.0
		for i, p := range parts {
			n, _ := strconv.ParseFloat(p, 64)
			v += n / []float64{24, 1440, 86400}[min(i, 2)]
		}
		return sheet.Cell{Kind: sheet.Time, Number: v, Text: clock, Format: []string{"", "h", "h:mm", "h:mm:ss"}[min(len(parts), 3)]}
	}
	if fault, ok := strings.CutPrefix(t, "fault:"); ok {
		return sheet.Cell{Kind: sheet.Fault, Text: fault}
	}
	if quoted, ok := strings.CutPrefix(t, "text:"); ok {
		return sheet.Cell{Kind: sheet.Text, Text: quoted}
	}
	if v, err := strconv.ParseFloat(t, 64); err == nil && plainFigure.MatchString(t) {
		return sheet.Cell{Kind: sheet.Number, Number: v, Text: t}
	}
	return sheet.Cell{Kind: sheet.Text, Text: t}
}

var plainFigure = regexp.MustCompile(`^-?\d*\.?\d+$`)

// dateCell is a date as a count of days.
func dateCell(date string) sheet.Cell {
	var y, m, d int
	for i, p := range strings.Split(date, "-") {
		n, _ := strconv.Atoi(p)
		switch i {
		case 0:
			y = n
		case 1:
			m = n
		case 2:
			d = n
		}
	}
	days := 0.0
	for n := 36526.0; n < 60000; n++ { // from 1 January 2000
		if yy, mm, dd := calendar(n); yy == y && mm == m && dd == d {
			days = n
			break
		}
	}
	return sheet.Cell{Kind: sheet.Date, Number: days, Text: date, Format: "yyyy-mm-dd"}
}

// sheetOf is a sheet whose rows are lines of cells apart by bars, the table's
// first cell at A1.
func sheetOf(name, rows string) *sheet.Sheet {
	s := &sheet.Sheet{Name: name}
	for r, line := range strings.Split(strings.Trim(rows, "\n"), "\n") {
		for c, t := range strings.Split(line, "|") {
			if cell := cellOf(t); filled(cell) {
				s.Set(r+1, c+1, cell)
			}
		}
	}
	return s
}

func bookOf(sheets ...*sheet.Sheet) []*sheet.Book {
	return []*sheet.Book{{Name: "yard.xlsx", Sheets: sheets}}
}

// reading is what one reading came to.
type reading struct {
	job    calc.Job
	tables []source.Table
	found  finding.List
}

func read(t testing.TB, books []*sheet.Book, o Options) reading {
	t.Helper()
	o.Headings = headingWords(t)
	job, tables, found := Books(books, o)
	return reading{job, tables, found}
}

// codes is the codes of the findings at or above a severity, with their cells.
func (r reading) codes(least finding.Severity) []string {
	var all []string
	for _, f := range r.found {
		if f.Severity >= least {
			all = append(all, f.Code+"@"+f.Cell.Ref())
		}
	}
	return all
}
