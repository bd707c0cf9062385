package xlsx

import (
	"bytes"
	"encoding/csv"
	"flag"
	"io"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/xuri/excelize/v2"
)

const booksDir = "../../testdata/books"

var writeBooks = flag.Bool("write-books", false, "write the workbooks of testdata/books again from what is written of them")

// The workbooks of testdata/books are as the texts beside them tell: what is in
// one can be read, and its changes seen, in the text.
func TestBooksAreAsWritten(t *testing.T) {
	texts, err := filepath.Glob(filepath.Join(booksDir, "*.txt"))
	if err != nil || len(texts) < 25 {
		t.Fatalf("%d books, %v", len(texts), err)
	}
	for _, path := range texts {
		t.Run(strings.TrimSuffix(filepath.Base(path), ".txt"), func(t *testing.T) {
			made := makeBook(t, path)
			stored := strings.TrimSuffix(path, ".txt") + ".xlsx"
			if *writeBooks {
				if err := os.WriteFile(stored, made, 0o644); err != nil {
					t.Fatal(err)
				}
			}
			had, err := os.ReadFile(stored)
			if err != nil {
				t.Fatal(err)
			}
			want, errMade := Read("book.xlsx", made)
			got, errHad := Read("book.xlsx", had)
			if errMade != nil || errHad != nil {
				t.Fatal(errMade, errHad)
			}
			if d := cmp.Diff(want, got); d != "" {
				t.Errorf("the workbook is not what is written of it: %s", d)
			}
		})
	}
}

// bookMaker makes a workbook of a text: a cell between bars, a row a line.
type bookMaker struct {
	t      testing.TB
	file   *excelize.File
	sheet  string
	row    int
	sheets int
	styles map[string]int
}

// makeBook makes the workbook that a text tells of. Lines that begin with # or >
// are not part of it.
func makeBook(t testing.TB, path string) []byte {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	m := &bookMaker{t: t, file: excelize.NewFile(), styles: map[string]int{}}
	defer m.file.Close()
	for _, line := range strings.Split(strings.TrimRight(string(data), "\n"), "\n") {
		switch {
		case strings.HasPrefix(line, "#"), strings.HasPrefix(line, ">"):
		case strings.HasPrefix(line, "= "):
			m.order(strings.Fields(line)[1:])
		case m.sheet != "":
			m.row++
			for col, field := range strings.Split(line, "|") {
				m.cell(col+1, m.row, strings.TrimSpace(field))
			}
		}
	}
	m.file.SetZipWriter(func(w io.Writer) excelize.ZipWriter { return newSortedZip(w, nil) })
	m.do(m.file.SetDocProps(&excelize.DocProperties{Creator: "yard", Created: "2000-01-01T00:00:00Z", Modified: "2000-01-01T00:00:00Z"}))
	var b bytes.Buffer
	m.do(m.file.Write(&b))
	return b.Bytes()
}

func (m *bookMaker) do(err error) {
	m.t.Helper()
	if err != nil {
		m.t.Fatal(err)
	}
}

// order follows a line that begins with an equals sign.
func (m *bookMaker) order(words []string) {
	on := true
	switch words[0] {
	case "sheet":
		m.sheets++
		m.sheet, m.row = strings.Join(words[1:], " "), 0
		if m.sheets == 1 {
			m.do(m.file.SetSheetName("Sheet1", m.sheet))
			return
		}
		_, err := m.file.NewSheet(m.sheet)
		m.do(err)
	case "hidden":
		m.do(m.file.SetSheetVisible(m.sheet, false))
	case "hide-row":
		n, _ := strconv.Atoi(words[1])
		m.do(m.file.SetRowVisible(m.sheet, n, false))
	case "hide-col":
		m.do(m.file.SetColVisible(m.sheet, words[1], false))
	case "table":
		m.do(m.file.AddTable(m.sheet, &excelize.Table{Range: words[1], Name: words[2]}))
	case "name":
		m.do(m.file.SetDefinedName(&excelize.DefinedName{Name: words[1], RefersTo: words[2]}))
	case "1904":
		m.do(m.file.SetWorkbookProps(&excelize.WorkbookPropsOptions{Date1904: &on}))
	case "paste":
		m.paste(words[1], words[2])
	default:
		m.t.Fatalf("no such order: %v", words)
	}
}

// paste puts a published table on the sheet as it was printed, without its
// remarks.
func (m *bookMaker) paste(at, name string) {
	f, err := os.Open(filepath.Join(booksDir, "..", "worked", "offsets", name))
	m.do(err)
	defer f.Close()
	r := csv.NewReader(f)
	r.FieldsPerRecord, r.LazyQuotes, r.Comment = -1, true, '#'
	rows, err := r.ReadAll()
	m.do(err)
	left, top, err := excelize.CellNameToCoordinates(at)
	m.do(err)
	for i, row := range rows {
		for k, field := range row {
			m.cell(left+k, top+i, strings.TrimSpace(field))
		}
	}
}

// cell puts one cell: a number, a text, or what its first letters say.
func (m *bookMaker) cell(col, row int, field string) {
	at, err := excelize.CoordinatesToCellName(col, row)
	m.do(err)
	field, note, noted := strings.Cut(field, " !! ")
	how, rest, _ := strings.Cut(field, ":")
	format := ""
	if how == "num" || how == "date" || how == "time" {
		rest, format, _ = strings.Cut(rest, ";")
	}
	switch {
	case field == "":
		return
	case field == "<" || field == "^":
		m.merge(col, row, field == "<")
	case how == "text":
		m.do(m.file.SetCellStr(m.sheet, at, rest))
	case how == "num":
		v, err := strconv.ParseFloat(rest, 64)
		m.do(err)
		m.do(m.file.SetCellValue(m.sheet, at, v))
	case how == "date":
		m.do(m.file.SetCellValue(m.sheet, at, m.days(rest)))
		if format == "" {
			format = "mm/dd/yy"
		}
	case how == "time":
		m.do(m.file.SetCellValue(m.sheet, at, dayPart(rest)))
		if format == "" {
			format = []string{"", "h", "h:mm", "h:mm:ss"}[len(strings.Split(rest, ":"))]
		}
	case how == "formula":
		m.do(m.file.SetCellFormula(m.sheet, at, rest))
	case how == "struck":
		var runs []excelize.RichTextRun
		for i, part := range strings.Split(rest, "~") {
			if part != "" {
				runs = append(runs, excelize.RichTextRun{Text: part, Font: &excelize.Font{Strike: i%2 == 1}})
			}
		}
		m.do(m.file.SetCellRichText(m.sheet, at, runs))
	default:
		if v, err := strconv.ParseFloat(field, 64); err == nil && !strings.ContainsAny(field, "xXpPiInN_") {
			m.do(m.file.SetCellValue(m.sheet, at, v))
		} else {
			m.do(m.file.SetCellStr(m.sheet, at, field))
		}
	}
	if format != "" {
		id, ok := m.styles[format]
		if !ok {
			id, err = m.file.NewStyle(&excelize.Style{CustomNumFmt: &format})
			m.do(err)
			m.styles[format] = id
		}
		m.do(m.file.SetCellStyle(m.sheet, at, at, id))
	}
	if noted {
		m.do(m.file.AddComment(m.sheet, excelize.Comment{Cell: at, Author: "yard", Text: note}))
	}
}

// merge joins a cell with the one to its left or above it, and with what that is
// joined with.
func (m *bookMaker) merge(col, row int, left bool) {
	at, err := excelize.CoordinatesToCellName(col, row)
	m.do(err)
	if left {
		col--
	} else {
		row--
	}
	from, err := excelize.CoordinatesToCellName(col, row)
	m.do(err)
	merged, err := m.file.GetMergeCells(m.sheet)
	m.do(err)
	for _, c := range merged {
		if c.GetEndAxis() == from {
			from = c.GetStartAxis()
		}
	}
	m.do(m.file.MergeCell(m.sheet, from, at))
}

// days is a date as a spreadsheet counts it.
func (m *bookMaker) days(date string) float64 {
	day, err := time.Parse("2006-01-02", date)
	m.do(err)
	props, err := m.file.GetWorkbookProps()
	m.do(err)
	from := time.Date(1899, 12, 30, 0, 0, 0, 0, time.UTC)
	if props.Date1904 != nil && *props.Date1904 {
		from = time.Date(1904, 1, 1, 0, 0, 0, 0, time.UTC)
	}
	return day.Sub(from).Hours() / 24
}

// dayPart is a time of day as a part of a day.
func dayPart(clock string) float64 {
	v := 0.0
	for i, part := range strings.Split(clock, ":") {
		n, _ := strconv.ParseFloat(part, 64)
		v += n / []float64{24, 1440, 86400}[i]
	}
	return v
}
