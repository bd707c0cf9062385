package xlsx

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"github.com/xuri/excelize/v2"

	"strakebook/convert/sheet"
)

// Save writes our sheets as a workbook to a path: by themselves, or in front of
// the sheets of the workbook in from, which is read afresh and touched only to
// mark its doubtful cells. What is written is written beside and renamed, so
// that a failure leaves nothing half-written; the same sheets give the same
// bytes. Its errors are *sheet.Refused.
func Save(path string, ours *sheet.Book, from []byte, marks []sheet.Mark) error {
	refuse := func(cause string, err error) error {
		return &sheet.Refused{Doing: "write", Path: path, Cause: cause, Err: err, Hint: "name another file with -o, in a folder you may write to"}
	}
	f, err := build(path, ours, from, marks)
	if err != nil {
		return refuse("cannot be made", err)
	}
	defer f.Close()
	return Replace(path, func(w io.Writer) error { return f.Write(w) })
}

// Replace writes a file whole or not at all: beside it, and renamed when all is
// on the disk.
func Replace(path string, write func(io.Writer) error) error {
	refuse := func(cause string, err error) error {
		return &sheet.Refused{Doing: "write", Path: path, Cause: cause, Err: unpath(err), Hint: "name another file with -o, in a folder you may write to"}
	}
	temp, err := os.CreateTemp(filepath.Dir(path), ".strakebook-*")
	if err != nil {
		return refuse("the folder cannot be written to", err)
	}
	done := false
	defer func() {
		if !done {
			temp.Close()
			os.Remove(temp.Name())
		}
	}()
	if err := write(temp); err != nil {
		return refuse("not written", err)
	}
	if err := temp.Sync(); err != nil {
		return refuse("not written", err)
	}
	if err := temp.Close(); err != nil {
		return refuse("not written", err)
	}
	if err := os.Chmod(temp.Name(), 0o644); err != nil {
		return refuse("not written", err)
	}
	if err := os.Rename(temp.Name(), path); err != nil {
		return refuse("cannot be put in its place: close it where it is open and run again", err)
	}
	done = true
	return nil
}

// unpath is a system's error without the name of the temporary file.
func unpath(err error) error {
	if p, ok := err.(*os.PathError); ok {
		return p.Err
	}
	return err
}

// build puts the workbook together.
func build(path string, ours *sheet.Book, from []byte, marks []sheet.Mark) (*excelize.File, error) {
	var f *excelize.File
	var theirs []string
	if from == nil {
		f = excelize.NewFile()
	} else {
		var err error
		if f, err = excelize.OpenReader(bytes.NewReader(from)); err != nil {
			return nil, err
		}
		theirs = f.GetSheetList()
		if err := mark(f, marks); err != nil {
			return nil, err
		}
	}
	f.Path = path // the library picks the main content type by it
	f.SetZipWriter(func(w io.Writer) excelize.ZipWriter { return newSortedZip(w) })
	if err := arrange(f, ours, theirs); err != nil {
		return nil, err
	}
	w := writer{file: f, styles: map[look]int{}}
	for _, s := range ours.Sheets {
		if err := w.sheet(s); err != nil {
			return nil, fmt.Errorf("sheet %q: %w", s.Name, err)
		}
	}
	for _, n := range ours.Names {
		if err := f.SetDefinedName(&excelize.DefinedName{Name: n.Name, RefersTo: refers(n)}); err != nil {
			return nil, fmt.Errorf("name %s: %w", n.Name, err)
		}
	}
	f.SetActiveSheet(0)
	if from == nil {
		if err := f.SetDocProps(&excelize.DocProperties{Creator: "strakebook", LastModifiedBy: "strakebook", Created: "2000-01-01T00:00:00Z", Modified: "2000-01-01T00:00:00Z"}); err != nil {
			return nil, err
		}
	}
	full := true
	return f, f.SetCalcProps(&excelize.CalcPropsOptions{FullCalcOnLoad: &full})
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

// arrange makes our sheets and puts them before those that were there, whose
// own local names keep to them.
func arrange(f *excelize.File, ours *sheet.Book, theirs []string) error {
	for i, s := range ours.Sheets {
		if len(theirs) == 0 && i == 0 {
			if err := f.SetSheetName(f.GetSheetName(0), s.Name); err != nil {
				return err
			}
			continue
		}
		if at, _ := f.GetSheetIndex(s.Name); at >= 0 {
			return fmt.Errorf("sheet %q is there already", s.Name)
		}
		if _, err := f.NewSheet(s.Name); err != nil {
			return err
		}
	}
	if len(theirs) == 0 {
		return nil
	}
	for _, s := range ours.Sheets {
		if err := f.MoveSheet(s.Name, theirs[0]); err != nil {
			return err
		}
	}
	if names := f.WorkBook.DefinedNames; names != nil {
		for i := range names.DefinedName {
			if id := names.DefinedName[i].LocalSheetID; id != nil && *id < len(theirs) {
				at, err := f.GetSheetIndex(theirs[*id])
				if err != nil {
					return err
				}
				names.DefinedName[i].LocalSheetID = &at
			}
		}
	}
	return nil
}
