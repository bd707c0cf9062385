package convert

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"strakebook/calc"
	"strakebook/calc/finding"
	"strakebook/convert/csv"
	"strakebook/convert/sheet"
	"strakebook/convert/write"
	"strakebook/convert/xlsx"
)

// Target says where a job's new book goes.
type Target struct {
	Path   string // "" for "BOOK cut list.xlsx" beside the first book, numbered if taken and not forced
	Force  bool   // write over a file that is there, never over a book read
	Tables string // folder for the tables as text files; "" for none
}

// Save writes the new book, and the tables where they are asked for. It returns
// the new book's path.
func (d *Done) Save(to Target) (string, error) {
	first := d.Books[0]
	path, err := d.target(to, first)
	if err != nil {
		return "", err
	}
	in := d.input(true)
	var from []byte
	workbook := xlsx.IsWorkbook(first.Data)
	if workbook {
		from = first.Data
	}
	for _, s := range first.Theirs() {
		in.Taken = append(in.Taken, s.Name)
	}
	laid := write.Lay(in)
	tables, err := d.tables(to, laid)
	if err != nil {
		return "", err
	}
	ours, marks := laid.Book()
	a4 := d.Result.Rules.Yard.Paper == calc.A4
	if !workbook {
		ours.Sheets = append(ours.Sheets, values(first.Theirs(), marks, a4)...)
		marks = nil
	}
	for _, b := range d.Books[1:] {
		for _, s := range values(b.Theirs(), nil, a4) {
			s.Name = numbered(s.Name, func(name string) bool { return has(ours.Sheets, first.Theirs(), name) })
			ours.Sheets = append(ours.Sheets, s)
		}
	}
	err = xlsx.Save(path, to.Force, ours, from, marks)
	for to.Path == "" && !to.Force && errors.Is(err, fs.ErrExist) { // taken since it was chosen
		if path, err = d.target(to, first); err == nil {
			err = xlsx.Save(path, false, ours, from, marks)
		}
	}
	if err != nil {
		return "", err
	}
	for _, t := range tables {
		if err := xlsx.Replace(tablePath(to, t), to.Force, func(w io.Writer) error { return csv.Write(w, t.Rows) }); err != nil {
			return "", err
		}
	}
	return path, nil
}

// numbered is a name that is not taken: itself, or with a number behind it.
func numbered(name string, taken func(string) bool) string {
	free := name
	for n := 2; taken(free); n++ {
		free = fmt.Sprintf("%.24s (%d)", name, n)
	}
	return free
}

func has(ours, theirs []*sheet.Sheet, name string) bool {
	for _, s := range append(append([]*sheet.Sheet{}, ours...), theirs...) {
		if strings.EqualFold(s.Name, name) {
			return true
		}
	}
	return false
}

// values is sheets carried over as their values, marked where doubtful.
func values(sheets []*sheet.Sheet, marks []sheet.Mark, a4 bool) []*sheet.Sheet {
	var all []*sheet.Sheet
	for _, s := range sheets {
		c := &sheet.Sheet{Name: s.Name, Merged: s.Merged, Out: sheet.Layout{A4: a4}}
		for r, row := range s.Rows {
			for col, cell := range row {
				cell.Formula = ""
				if cell.Kind != sheet.Empty {
					c.Set(r+1, col+1, cell)
				}
			}
		}
		for _, m := range marks {
			if m.Sheet == s.Name {
				cell := c.At(m.Row, m.Col)
				cell.Style, cell.Note = m.Style, m.Note
				c.Set(m.Row, m.Col, cell)
			}
		}
		all = append(all, c)
	}
	return all
}

// target is where the new book goes, refused where it would lie over another.
func (d *Done) target(to Target, first *sheet.Book) (string, error) {
	ext := ".xlsx"
	if first.Kind == "xlsm" || first.Kind == "xltm" { // macros may not lie under the plain name
		ext = ".xlsm"
	}
	if to.Path == "" {
		base := strings.TrimSuffix(first.Path, filepath.Ext(first.Path)) + " cut list"
		path := base + ext
		if to.Force {
			return path, mayWrite(path, true, d.Books)
		}
		for n := 2; exists(path); n++ {
			path = fmt.Sprintf("%s %d%s", base, n, ext)
		}
		return path, nil
	}
	if strings.ToLower(filepath.Ext(to.Path)) != ext {
		return "", &sheet.Refused{Doing: "write", Path: to.Path, Cause: "a name that does not end in " + ext, Hint: "end the name in " + ext}
	}
	return to.Path, mayWrite(to.Path, to.Force, d.Books)
}

// mayWrite refuses to write over a folder, over a book that was read, which
// nothing allows, over a file that is there, unless forced, and over one that is open.
func mayWrite(path string, force bool, read []*sheet.Book) error {
	refuse := func(cause, hint string) error {
		return &sheet.Refused{Doing: "write", Path: path, Cause: cause, Hint: hint}
	}
	info, err := os.Stat(path)
	if err != nil {
		return nil
	}
	for _, b := range read {
		if in, err := os.Stat(b.Path); err == nil && os.SameFile(in, info) {
			return refuse("it is one of the books read", "name another file: a book read is never written over")
		}
	}
	switch {
	case info.IsDir():
		return refuse("it is a folder", "name a file in it")
	case !force:
		return refuse("it is there already", "name another file, or say --force to write over it")
	case len(openElsewhere([]string{path})) > 0:
		return refuse("it is open in a spreadsheet, which would write over it again", "close it there and run again, or name another file")
	}
	return nil
}

func exists(path string) bool {
	_, err := os.Stat(path)
	return err == nil
}

// tables is the tables asked for as text files, their folder made, and every
// one of them free to write before anything is.
func (d *Done) tables(to Target, laid *write.Laid) ([]write.Table, error) {
	if to.Tables == "" {
		return nil, nil
	}
	if err := os.MkdirAll(to.Tables, 0o755); err != nil {
		return nil, &sheet.Refused{Doing: "write", Path: to.Tables, Cause: "cannot be made", Err: err, Hint: "name a folder you may write to"}
	}
	all := laid.Tables()
	for _, t := range all {
		if err := mayWrite(tablePath(to, t), to.Force, d.Books); err != nil {
			return nil, err
		}
	}
	return all, nil
}

func tablePath(to Target, t write.Table) string { return filepath.Join(to.Tables, t.Name+".csv") }

// Write writes a book of plain sheets, such as the demo yard's.
func Write(b *sheet.Book, path string, force bool) error {
	if strings.ToLower(filepath.Ext(path)) != ".xlsx" {
		return &sheet.Refused{Doing: "write", Path: path, Cause: "a name that does not end in .xlsx", Hint: "end the name in .xlsx"}
	}
	if err := mayWrite(path, force, nil); err != nil {
		return err
	}
	return xlsx.Save(path, force, b, nil, nil)
}

// Hints is what to do about an error, a line each.
func Hints(err error) []string {
	var refused *sheet.Refused
	var unusable *Unusable
	switch {
	case errors.As(err, &refused) && refused.Hint != "":
		return []string{refused.Hint}
	case errors.As(err, &unusable):
		var all []string
		for _, f := range unusable.Findings {
			if len(all) < mostSeen && f.Cell.Sheet != "" {
				all = append(all, f.Cell.String()+": "+f.Text)
			}
		}
		return append(all, "strakebook start writes a book with one of each table to copy from")
	}
	return nil
}

// mostSeen is how many findings are told of books that hold no table.
const mostSeen = 5

// Unusable is books that hold no table known here.
type Unusable struct {
	Books    []string
	Findings finding.List // what was found instead
}

// Error names the books.
func (u *Unusable) Error() string {
	return fmt.Sprintf("read %s: no table of offsets, bevels, strakes or boards was found", strings.Join(u.Books, ", "))
}
