package xlsx

import (
	"archive/zip"
	"bytes"
	"io"
	"testing"

	"github.com/xuri/excelize/v2"
)

// sample is a workbook with one of everything that reading takes notice of.
func sample(t testing.TB) []byte {
	t.Helper()
	f := excelize.NewFile()
	defer f.Close()
	do := func(err error) {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
	}
	style := func(s *excelize.Style) int {
		id, err := f.NewStyle(s)
		do(err)
		return id
	}
	set := func(at string, v any, look int) {
		t.Helper()
		do(f.SetCellValue("Offsets", at, v))
		if look > 0 {
			do(f.SetCellStyle("Offsets", at, at, look))
		}
	}
	iso, fraction, hours := "yyyy-mm-dd", "# ?/?", "h:mm"
	date, eighths := style(&excelize.Style{CustomNumFmt: &iso}), style(&excelize.Style{CustomNumFmt: &fraction})
	clock, struck := style(&excelize.Style{CustomNumFmt: &hours}), style(&excelize.Style{Font: &excelize.Font{Strike: true}})
	do(f.SetSheetName("Sheet1", "Offsets"))
	set("A1", "Offsets to the outside of planking", 0)
	do(f.MergeCell("Offsets", "A1", "E1"))
	for i, head := range []string{"Line", "St 1", "St 2", "St 3", "Remark"} {
		at, _ := excelize.CoordinatesToCellName(i+1, 2)
		set(at, head, 0)
	}
	for i, row := range [][]any{
		{"Sheer & rail", "3-4-6", 40.75, 41.125, "see < plan"},
		{"WL 6 in.", "2-0-3", 24.375, 24.5, true},
		{"WL 12 in.", "1-7-1", 19.125, 38780.0, "½ breadth"},
		{"Rabbet", "0-1-4", 1.5, 1.5, "3:4 \u2014 \u00bd"},
	} {
		for c, v := range row {
			at, _ := excelize.CoordinatesToCellName(c+1, i+3)
			set(at, v, 0)
		}
	}
	set("C3", 40.75, eighths)
	set("D5", 38780.0, date)
	set("D6", 0.104166, clock)
	set("A8", "withdrawn", struck)
	do(f.SetCellRichText("Offsets", "B8", []excelize.RichTextRun{{Text: "3-4-"}, {Text: "5", Font: &excelize.Font{Strike: true}}, {Text: "6"}}))
	do(f.SetCellFormula("Offsets", "C8", "C3*2"))
	do(f.AddComment("Offsets", excelize.Comment{Cell: "C4", Author: "yard", Text: "check this"}))
	do(f.SetRowVisible("Offsets", 6, false))
	do(f.SetColVisible("Offsets", "E", false))
	do(f.SetDefinedName(&excelize.DefinedName{Name: "Half_breadths", RefersTo: "Offsets!$A$2:$D$6"}))
	_, err := f.NewSheet("Rack")
	do(err)
	for i, row := range [][]any{{"Mark", "Length", "Count"}, {"A1", 16.5, 4}, {"A2", 18.25, 2}} {
		at, _ := excelize.CoordinatesToCellName(2, i+3)
		do(f.SetSheetRow("Rack", at, &row))
	}
	do(f.AddTable("Rack", &excelize.Table{Range: "B3:D5", Name: "Boards"}))
	do(f.SetSheetVisible("Rack", false))
	var b bytes.Buffer
	do(f.Write(&b))
	return b.Bytes()
}

// unzipped is the parts of a workbook.
func unzipped(t testing.TB, data []byte) *archive {
	t.Helper()
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		t.Fatal(err)
	}
	a := &archive{parts: map[string][]byte{}}
	for _, f := range z.File {
		r, err := f.Open()
		if err != nil {
			t.Fatal(err)
		}
		part, err := io.ReadAll(r)
		if err != nil {
			t.Fatal(err)
		}
		a.put(f.Name, part)
	}
	return a
}

// with is the workbook with one part put in another's place.
func (a *archive) with(t testing.TB, name string, part []byte) []byte {
	t.Helper()
	b := &archive{parts: map[string][]byte{}}
	for _, n := range a.names {
		b.put(n, a.parts[n])
	}
	b.put(name, part)
	data, err := b.pack()
	if err != nil {
		t.Fatal(err)
	}
	return data
}
