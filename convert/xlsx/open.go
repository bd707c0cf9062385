package xlsx

import (
	"bytes"
	"errors"
	"fmt"
	"path/filepath"
	"strings"

	"github.com/xuri/excelize/v2"

	"strakebook/convert/sheet"
)

// mostPlaces is how many places, empty ones between included, the sheets of one
// book may have in memory. A yard's book has some thousands.
const mostPlaces = 3_000_000

// Read reads a workbook whole, or refuses it: its errors are *sheet.Refused. The
// name is only for messages.
func Read(name string, data []byte) (*sheet.Book, error) {
	z, err := unfit(name, data)
	if err != nil {
		return nil, err
	}
	a, err := unpack(name, z)
	if err != nil {
		return nil, err
	}
	refuse := func(err error) error {
		return &sheet.Refused{Doing: "open", Path: name, Cause: "damaged", Hint: "open it, repair it and save it under a new name", Err: err}
	}
	in, err := examine(name, a)
	if err != nil {
		return nil, err
	}
	f, err := in.library()
	if err != nil {
		return nil, refuse(err)
	}
	defer f.Close()
	book := &sheet.Book{Path: name, Name: filepath.Base(name), Kind: in.kind}
	if book.Names, err = in.names(); err != nil {
		return nil, refuse(err)
	}
	b := builder{contents: in, file: f, shown: map[shownKey]string{}, ours: book.Ours}
	for i, p := range in.sheets {
		if !p.cells {
			continue
		}
		out, err := b.sheet(p, in.grids[i])
		if err != nil {
			return nil, refuse(err)
		}
		book.Sheets = append(book.Sheets, out)
		if b.places > mostPlaces {
			return nil, &sheet.Refused{Doing: "open", Path: name, Cause: "spread over too many rows and columns", Hint: "save the tables you need as a new workbook, near each other"}
		}
	}
	return book, nil
}

// contents is what a workbook's archive holds, each part read and found sound.
type contents struct {
	*structure
	archive *archive
	kind    string // "xlsx", "xlsm", "xltx" or "xltm"
	grids   []*grid
	texts   []rich
	formats []format
}

// examine reads every part of the archive: the ones that values depend on by
// their grammar, the others for their form.
func examine(path string, a *archive) (*contents, error) {
	in := &contents{archive: a}
	var err error
	if in.structure, err = a.structure(); err != nil {
		return nil, damaged(path, "list", err)
	}
	read := map[string]bool{in.workbook: true}
	if part := in.structure.texts; part != "" {
		read[part] = true
		if in.texts, err = texts(a.parts[part]); err != nil {
			return nil, damaged(path, part, err)
		}
	}
	if part := in.structure.styles; part != "" {
		read[part] = true
		if in.formats, err = formats(a.parts[part]); err != nil {
			return nil, damaged(path, part, err)
		}
	}
	for _, p := range in.sheets {
		var g *grid
		if p.cells {
			read[p.part] = true
			if g, err = scan(a.parts[p.part], p); err == nil {
				err = in.check(g)
			}
			if err != nil {
				return nil, damaged(path, p.part, err)
			}
		}
		in.grids = append(in.grids, g)
	}
	for _, name := range a.names {
		if !read[name] && (strings.HasSuffix(name, ".xml") || strings.HasSuffix(name, ".rels")) {
			if err := wellFormed(a.parts[name]); err != nil {
				return nil, damaged(path, name, err)
			}
		}
	}
	in.kind = a.kind(in.workbook)
	return in, nil
}

// check says what is wrong with a sheet's cells: a text or a style that is not
// there, or a number that is none.
func (in *contents) check(g *grid) error {
	for i := range g.cells {
		c := &g.cells[i]
		at := func(what string) error {
			ref, _ := excelize.CoordinatesToCellName(c.col, c.row)
			return fmt.Errorf("cell %s: %s", ref, what)
		}
		if c.style >= max(1, len(in.formats)) {
			return at("a style that is not there")
		}
		if !c.hasValue {
			continue
		}
		switch c.kind {
		case "s":
			if n, ok := whole([]byte(strings.TrimSpace(c.value))); !ok || n >= len(in.texts) {
				return at("a text that is not there")
			}
		case "", "n", "b":
			if _, ok := number(c.value); !ok {
				return at("a number that is none")
			}
		}
	}
	return nil
}

// kind is the workbook's kind, by what it says of itself.
func (a *archive) kind(workbook string) string {
	kind := "xlsx"
	r := newScanner(a.parts[contentTypes])
	for r.kind != tokenDone && r.next() == nil {
		if r.kind != tokenStart {
			continue
		}
		if part, _ := r.attr("PartName"); strings.EqualFold(strings.TrimPrefix(part, "/"), workbook) {
			of, _ := r.attr("ContentType")
			template, macros := strings.Contains(of, "template"), strings.Contains(of, "macroEnabled")
			switch {
			case template && macros:
				kind = "xltm"
			case template:
				kind = "xltx"
			case macros:
				kind = "xlsm"
			}
		}
	}
	return kind
}

// library opens what was found sound with the library: its sheets without their
// empty tails, and the parts it looks for by name under those names.
func (in *contents) library() (*excelize.File, error) {
	a := &archive{parts: map[string][]byte{}}
	tails := map[string]*grid{}
	for i, p := range in.sheets {
		if p.cells {
			tails[p.part] = in.grids[i]
		}
	}
	for _, name := range in.archive.names {
		data := in.archive.parts[name]
		switch {
		case tails[name] != nil:
			data = tails[name].trimmed()
		case name == in.structure.texts:
			name = "xl/sharedStrings.xml"
		case name == in.structure.styles:
			name = "xl/styles.xml"
		case !strings.HasSuffix(name, ".xml") && !strings.HasSuffix(name, ".rels"):
			data = nil // pictures, macros and the like
		}
		a.put(name, data)
	}
	packed, err := a.pack()
	if err != nil {
		return nil, err
	}
	f, err := excelize.OpenReader(bytes.NewReader(packed), excelize.Options{UnzipSizeLimit: mostUnpacked, UnzipXMLSizeLimit: mostUnpacked})
	if err != nil {
		return nil, err
	}
	if n := len(f.GetSheetList()); n != len(in.sheets) {
		f.Close()
		return nil, errors.New("a sheet is lost")
	}
	return f, nil
}

// names is the book's tables and the defined names that stand for one plain block.
func (in *contents) names() ([]sheet.Name, error) {
	var all []sheet.Name
	for _, n := range in.defined {
		at := strings.LastIndex(n.refersTo, "!")
		if at < 0 || strings.HasPrefix(n.name, "_xlnm.") {
			continue
		}
		if g, err := block(n.refersTo[at+1:]); err == nil {
			all = append(all, sheet.Name{Name: n.name, Sheet: strings.ReplaceAll(strings.Trim(n.refersTo[:at], "'"), "''", "'"), Range: g})
		}
	}
	for _, p := range in.sheets {
		for _, part := range p.tables {
			r := newReader(in.archive.parts[part])
			err := r.each(map[string]func() error{"table": func() error {
				n := sheet.Name{Sheet: p.name, Table: true}
				var named bool
				if n.Name, named = r.attr("displayName"); !named {
					return r.fault("a table without a name")
				}
				ref, _ := r.attr("ref")
				var err error
				n.Range, err = block(ref)
				all = append(all, n)
				return err
			}})
			if err != nil {
				return nil, fmt.Errorf("%s: %w", part, err)
			}
		}
	}
	return all, nil
}
