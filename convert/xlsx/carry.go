package xlsx

import (
	"archive/zip"
	"bytes"
	"path"
	"regexp"

	"github.com/xuri/excelize/v2"
)

// carried is the builder's workbook, read afresh for its sheets to be carried
// over: only those sheets are touched that have cells to be marked.
type carried struct {
	file    *excelize.File
	sheets  []string
	noNotes map[string]bool              // sheets to whose notes the library cannot add
	notes   map[string]map[string]string // the builder's, by sheet and cell, as they are asked for
}

// carry opens the builder's workbook to be written on.
func carry(from []byte) (*carried, error) {
	z, err := zip.NewReader(bytes.NewReader(from), int64(len(from)))
	if err != nil {
		return nil, err
	}
	a, err := unpack("", z)
	if err != nil {
		return nil, err
	}
	s, err := a.structure()
	if err != nil {
		return nil, err
	}
	c := &carried{noNotes: map[string]bool{}, notes: map[string]map[string]string{}}
	a.placeNotes(s)
	for _, p := range s.sheets {
		a.unselect(p.part)
		a.nameFromSheet(p.part)
		if !a.takesNotes(p.part) {
			c.noNotes[p.name] = true
		}
	}
	if err := a.dropDrawings(s); err != nil {
		return nil, err
	}
	packed, err := a.pack()
	if err != nil {
		return nil, err
	}
	c.file, err = excelize.OpenReader(bytes.NewReader(packed), excelize.Options{UnzipSizeLimit: mostUnpacked, UnzipXMLSizeLimit: mostUnpacked})
	if err != nil {
		return nil, err
	}
	if err := strip(c.file); err != nil {
		return nil, shut(c.file, err)
	}
	c.sheets = c.file.GetSheetList()
	return c, nil
}

var selected = regexp.MustCompile(` tabSelected="(?:1|true)"`)

// nameFromSheet names the parts that a sheet names from the top of the archive as
// from the sheet: the library would put what it changes beside them, under a second
// name of the same part.
func (a *archive) nameFromSheet(part string) {
	rels := relsOf(part)
	if data, ok := a.parts[rels]; ok && path.Dir(path.Dir(part)) == "xl" {
		a.parts[rels] = bytes.ReplaceAll(data, []byte(`Target="/xl/`), []byte(`Target="../`))
	}
}

// unselect takes off that a sheet is the one in view: two sheets in view at once
// are a group, and what is typed into one of them goes into both.
func (a *archive) unselect(part string) {
	data := a.parts[part]
	at := bytes.Index(data, []byte("<sheetData"))
	if at < 0 {
		return
	}
	if place := selected.FindIndex(data[:at]); place != nil {
		a.parts[part] = append(append([]byte{}, data[:place[0]]...), data[place[1]:]...)
	}
}

var (
	noteParts  = regexp.MustCompile(`^xl/comments(\d+)\.xml$`)
	shapeParts = regexp.MustCompile(`^xl/drawings/vmlDrawing(\d+)\.vml$`)
)

// takesNotes says that a note can be added to a sheet: it has none, or their
// parts bear one number, by which alone the library knows them.
func (a *archive) takesNotes(part string) bool {
	rels, err := a.relations(part)
	if err != nil {
		return false
	}
	notes, shapes := "none", "none"
	for _, n := range rels {
		switch n.kind {
		case "comments":
			notes = numbered(noteParts, n.target)
		case "vmlDrawing":
			shapes = numbered(shapeParts, n.target)
		}
	}
	return notes == shapes && notes != ""
}

func numbered(name *regexp.Regexp, part string) string {
	if m := name.FindStringSubmatch(part); m != nil {
		return m[1]
	}
	return ""
}
