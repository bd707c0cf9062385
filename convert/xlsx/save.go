package xlsx

import (
	"fmt"
	"io"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"

	"github.com/xuri/excelize/v2"

	"strakebook/convert/sheet"
)

// Save writes our sheets as a workbook to a path: by themselves, or in front of
// the sheets of the workbook in from, which is read afresh and touched only to
// mark its doubtful cells. What is written is written beside and put in its
// place, so that a failure leaves nothing half-written; a file that is there is
// written over only where over says so. The same sheets give the same bytes. Its
// errors are *sheet.Refused.
func Save(path string, over bool, ours *sheet.Book, from []byte, marks []sheet.Mark) error {
	refuse := func(cause string, err error) error {
		return &sheet.Refused{Doing: "write", Path: path, Cause: cause, Err: err, Hint: "name another file with -o, in a folder you may write to"}
	}
	f, err := build(path, ours, from, marks)
	if err != nil {
		return refuse("cannot be made", err)
	}
	defer f.Close()
	return Replace(path, over, func(w io.Writer) error { return f.Write(w) })
}

// build puts the workbook together.
func build(path string, ours *sheet.Book, from []byte, marks []sheet.Mark) (*excelize.File, error) {
	var f *excelize.File
	var theirs []string
	if from == nil {
		f = excelize.NewFile()
		if err := f.SetDefaultFont(letterface); err != nil { // by which columns are measured
			return nil, shut(f, err)
		}
		size := 10.0
		f.Styles.Fonts.Font[0].Sz.Val = &size
	} else {
		c, err := carry(from)
		if err != nil {
			return nil, err
		}
		f, theirs = c.file, c.sheets
		if err := c.mark(marks); err != nil {
			return nil, shut(f, err)
		}
	}
	f.Path = path // the library picks the main content type by it
	rows, err := fill(f, ours, theirs)
	if err != nil {
		return nil, shut(f, err)
	}
	f.SetZipWriter(func(w io.Writer) excelize.ZipWriter { return newSortedZip(w, rows) })
	return f, nil
}

// shut closes a workbook that could not be made, and is the error.
func shut(f *excelize.File, err error) error {
	f.Close()
	return err
}

// fill writes our sheets into the workbook, and what belongs to all of it. What it
// returns is their rows, which are yet to be written.
func fill(f *excelize.File, ours *sheet.Book, theirs []string) (map[string]rows, error) {
	parts, err := arrange(f, ours, theirs)
	if err != nil {
		return nil, err
	}
	w := writer{file: f, styles: map[look]int{}, rows: map[string]rows{}}
	for i, s := range ours.Sheets {
		if err := w.sheet(s, parts[i]); err != nil {
			return nil, fmt.Errorf("sheet %q: %w", s.Name, err)
		}
	}
	for i, s := range ours.Sheets {
		if s.Hidden {
			f.WorkBook.Sheets.Sheet[i].State = "hidden"
		}
	}
	for _, n := range ours.Names {
		if err := f.SetDefinedName(&excelize.DefinedName{Name: n.Name, RefersTo: refers(n)}); err != nil {
			return nil, fmt.Errorf("name %s: %w", n.Name, err)
		}
	}
	if len(theirs) == 0 {
		if err := f.SetDocProps(&excelize.DocProperties{Creator: "strakebook", LastModifiedBy: "strakebook", Created: "2000-01-01T00:00:00Z", Modified: "2000-01-01T00:00:00Z"}); err != nil {
			return nil, err
		}
	}
	full := true
	return w.rows, f.SetCalcProps(&excelize.CalcPropsOptions{FullCalcOnLoad: &full})
}

func refers(n sheet.Name) string {
	from, _ := excelize.CoordinatesToCellName(n.Range.Left, n.Range.Top, true)
	to, _ := excelize.CoordinatesToCellName(n.Range.Right, n.Range.Bottom, true)
	ref := Quote(n.Sheet) + "!" + from
	if to != from {
		ref += ":" + to
	}
	return ref
}

// Quote is a sheet's name as links and formulas want it.
func Quote(name string) string { return "'" + strings.ReplaceAll(name, "'", "''") + "'" }

// arrange makes our sheets and puts them before those that were there, whose own
// local names keep to them. The library's own way of moving a sheet would read
// and write again every one of the builder's. It returns the names of our sheets'
// parts, which the library numbers as it does the sheets.
func arrange(f *excelize.File, ours *sheet.Book, theirs []string) ([]string, error) {
	held := len(theirs) > 0
	if held { // a sheet that is none, so that the library numbers ours past every part there is
		none := f.WorkBook.Sheets.Sheet[0]
		none.Name, none.SheetID = "\x00", lastPart(f)
		f.WorkBook.Sheets.Sheet = append(f.WorkBook.Sheets.Sheet, none)
	}
	for i, s := range ours.Sheets {
		if len(theirs) == 0 && i == 0 {
			if err := f.SetSheetName(f.GetSheetName(0), s.Name); err != nil {
				return nil, err
			}
			continue
		}
		if at, _ := f.GetSheetIndex(s.Name); at >= 0 {
			return nil, fmt.Errorf("sheet %q is there already", s.Name)
		}
		if _, err := f.NewSheet(s.Name); err != nil {
			return nil, err
		}
	}
	all := f.WorkBook.Sheets.Sheet
	if held {
		all = slices.Delete(all, len(theirs), len(theirs)+1)
	}
	var parts []string
	for _, s := range all[len(theirs):] {
		parts = append(parts, fmt.Sprintf("xl/worksheets/sheet%d.xml", s.SheetID))
	}
	if len(theirs) == 0 {
		return parts, nil
	}
	f.WorkBook.Sheets.Sheet = append(slices.Clone(all[len(theirs):]), all[:len(theirs)]...)
	if names := f.WorkBook.DefinedNames; names != nil {
		for i := range names.DefinedName {
			if id := names.DefinedName[i].LocalSheetID; id != nil && *id < len(theirs) {
				at := *id + len(ours.Sheets)
				names.DefinedName[i].LocalSheetID = &at
			}
		}
	}
	if views := f.WorkBook.BookViews; views != nil {
		for i := range views.WorkBookView {
			views.WorkBookView[i].ActiveTab, views.WorkBookView[i].FirstSheet = 0, 0
		}
	}
	return parts, nil
}

var sheetParts = regexp.MustCompile(`(?i)^/?xl/worksheets/sheet(\d+)\.xml$`)

// lastPart is the highest number that a sheet's part bears.
func lastPart(f *excelize.File) int {
	last := 0
	for _, parts := range []*sync.Map{&f.Pkg, &f.Sheet} {
		parts.Range(func(name, _ any) bool {
			if m := sheetParts.FindStringSubmatch(name.(string)); m != nil {
				n, _ := strconv.Atoi(m[1])
				last = max(last, n)
			}
			return true
		})
	}
	return last
}
