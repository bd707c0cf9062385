package convert

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"

	"strakebook/convert/csv"
	"strakebook/convert/sheet"
	"strakebook/convert/xlsx"
)

// mostBytes is the largest file opened.
const mostBytes = 100 << 20

// open opens every book, by what it holds and not by its name. The files' own
// bytes are kept: a workbook is carried over from them.
func open(paths []string) ([]*sheet.Book, error) {
	var books []*sheet.Book
	var infos []os.FileInfo
	for _, p := range paths {
		info, data, err := load(p)
		if err != nil {
			return nil, err
		}
		for i, other := range infos {
			if os.SameFile(info, other) {
				return nil, &sheet.Refused{Doing: "open", Path: p, Cause: fmt.Sprintf("the same file as %s", paths[i]), Hint: "name each book once"}
			}
		}
		infos = append(infos, info)
		read := csv.Read
		if xlsx.IsWorkbook(data) {
			read = xlsx.Read
		}
		book, err := read(p, data)
		if err != nil {
			return nil, err
		}
		book.Data = data
		if len(book.Sheets) == 0 {
			return nil, &sheet.Refused{Doing: "open", Path: p, Cause: "a workbook without sheets of cells", Hint: "name the book that holds the tables"}
		}
		books = append(books, book)
	}
	return books, nil
}

// load reads a file's bytes.
func load(p string) (os.FileInfo, []byte, error) {
	refuse := func(cause, hint string, err error) (os.FileInfo, []byte, error) {
		return nil, nil, &sheet.Refused{Doing: "open", Path: p, Cause: cause, Hint: hint, Err: err}
	}
	info, err := os.Stat(p)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return refuse("no such file", "check the name and the folder", nil)
	case err != nil:
		return refuse("cannot be read", "check that you may read it", cause(err))
	case info.IsDir():
		return refuse("a folder", "name the books in it", nil)
	case info.Size() == 0:
		return refuse("empty", "name the book that holds the tables", nil)
	case info.Size() > mostBytes:
		return refuse("larger than 100 MB", "save the sheets you need as a new workbook", nil)
	}
	data, err := os.ReadFile(p)
	if err != nil {
		return refuse("cannot be read", "check that you may read it", cause(err))
	}
	return info, data, nil
}

func cause(err error) error {
	var p *fs.PathError
	if errors.As(err, &p) {
		return p.Err
	}
	return err
}

// openElsewhere is the books that a spreadsheet program holds open, whose
// unsaved changes are not in the file: each such program leaves a lock beside.
func openElsewhere(paths []string) []string {
	var all []string
	for _, p := range paths {
		dir, name := filepath.Split(p)
		for _, lock := range []string{"~$" + name, ".~lock." + name + "#"} {
			if _, err := os.Stat(filepath.Join(dir, lock)); err == nil {
				all = append(all, p)
				break
			}
		}
	}
	return all
}
