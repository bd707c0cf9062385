package xlsx

import (
	"archive/zip"
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"path"
	"strconv"
	"strings"

	"github.com/xuri/excelize/v2"

	"strakebook/convert/sheet"
)

// part is one sheet's cells as its XML has them, before the library has seen it.
type part struct {
	cells  []rawCell
	hidden map[int]bool // rows
	cols   map[int]bool // hidden columns
}

// rawCell is one cell that holds something.
type rawCell struct {
	ref     string
	kind    string // the t attribute
	formula bool
	value   bool // it has a stored value
}

// contents is what a workbook's archive holds.
type contents struct {
	sheets  map[string]part   // by part name
	targets map[string]string // part name by the sheet's own name
	trimmed []byte            // the archive again, for the library
}

// whole reads every part of the archive once: checksums and well-formed XML. In
// the archive it gives on, the empty formatted rows after the last filled one
// are cut off: they would cost a million-row sheet seconds and a gigabyte.
func whole(file string, z *zip.Reader) (*contents, error) {
	damaged := func(name string, err error) error {
		return &sheet.Refused{Doing: "open", Path: file, Cause: "damaged in its part " + name, Hint: "open it, repair it and save it under a new name", Err: err}
	}
	in := &contents{sheets: map[string]part{}}
	var book, rels []byte
	var out bytes.Buffer
	w := zip.NewWriter(&out)
	left := int64(mostUnpacked)
	for _, f := range z.File {
		r, err := f.Open()
		if err != nil {
			return nil, damaged(f.Name, err)
		}
		data, err := io.ReadAll(io.LimitReader(r, left+1))
		r.Close()
		if err != nil {
			return nil, damaged(f.Name, err)
		}
		if left -= int64(len(data)); left < 0 {
			return nil, damaged(f.Name, errors.New("it is larger than it says"))
		}
		switch {
		case isSheet(f.Name):
			data = trim(data)
			p, err := scan(data)
			if err != nil {
				return nil, damaged(f.Name, err)
			}
			in.sheets[f.Name] = p
		case strings.HasSuffix(f.Name, ".xml") || strings.HasSuffix(f.Name, ".rels"):
			if err := wellFormed(data); err != nil {
				return nil, damaged(f.Name, err)
			}
		}
		switch f.Name {
		case "xl/workbook.xml":
			book = data
		case "xl/_rels/workbook.xml.rels":
			rels = data
		}
		to, err := w.CreateHeader(&zip.FileHeader{Name: f.Name, Method: zip.Store})
		if err == nil {
			_, err = to.Write(data)
		}
		if err != nil {
			return nil, damaged(f.Name, err)
		}
	}
	if err := w.Close(); err != nil {
		return nil, damaged("archive", err)
	}
	in.targets, in.trimmed = targets(book, rels), out.Bytes()
	return in, nil
}

// targets is the part of each sheet, by the workbook's own list of them.
func targets(book, rels []byte) map[string]string {
	part := map[string]string{}
	for _, t := range elements(rels, "Relationship") {
		target := attr(t, "Target")
		if !strings.HasPrefix(target, "/") {
			target = "/xl/" + target
		}
		part[attr(t, "Id")] = strings.TrimPrefix(path.Clean(target), "/")
	}
	all := map[string]string{}
	for _, t := range elements(book, "sheet") {
		for _, a := range t.Attr {
			if a.Name.Local == "id" && a.Name.Space != "" {
				all[attr(t, "name")] = part[a.Value]
			}
		}
	}
	return all
}

// elements is every element of a name in a part known to be well-formed.
func elements(data []byte, name string) []xml.StartElement {
	var all []xml.StartElement
	d := xml.NewDecoder(bytes.NewReader(data))
	for {
		t, err := d.Token()
		if err != nil {
			return all
		}
		if e, ok := t.(xml.StartElement); ok && e.Name.Local == name {
			all = append(all, e.Copy())
		}
	}
}

func isSheet(name string) bool {
	return strings.HasPrefix(name, "xl/worksheets/") && strings.HasSuffix(name, ".xml")
}

// wellFormed reads a part to its end: the library passes over what it cannot
// read without a word.
func wellFormed(data []byte) error {
	d := xml.NewDecoder(bytes.NewReader(data))
	d.CharsetReader = func(_ string, r io.Reader) (io.Reader, error) { return r, nil }
	for {
		if _, err := d.Token(); err == io.EOF {
			return nil
		} else if err != nil {
			return err
		}
	}
}

// trim cuts off the rows after the last one that holds anything. A sheet it does
// not understand is left as it is.
func trim(data []byte) []byte {
	end := bytes.LastIndex(data, []byte("</sheetData>"))
	if end < 0 {
		return data
	}
	last := -1
	for _, mark := range []string{"<v>", "<v ", "<f>", "<f ", "<is>", "<is "} {
		last = max(last, bytes.LastIndex(data[:end], []byte(mark)))
	}
	start := bytes.Index(data, []byte("<sheetData"))
	if start < 0 {
		return data
	}
	if last < 0 {
		open := bytes.IndexByte(data[start:], '>')
		if open < 0 {
			return data
		}
		last = start + open + 1
		return append(append([]byte{}, data[:last]...), data[end:]...)
	}
	row := bytes.Index(data[last:end], []byte("</row>"))
	if row < 0 {
		return data
	}
	return append(append([]byte{}, data[:last+row+len("</row>")]...), data[end:]...)
}

// scan lists the cells of a sheet that hold something.
func scan(data []byte) (part, error) {
	p := part{hidden: map[int]bool{}, cols: map[int]bool{}}
	d := xml.NewDecoder(bytes.NewReader(data))
	var cell *rawCell
	row, col := 0, 0
	inValue := false
	for {
		t, err := d.Token()
		if err == io.EOF {
			return p, nil
		}
		if err != nil {
			return p, err
		}
		switch t := t.(type) {
		case xml.StartElement:
			switch t.Name.Local {
			case "col":
				hideCols(&p, t)
			case "row":
				row++
				col = 0
				if r := attr(t, "r"); r != "" {
					n, err := strconv.Atoi(r)
					if err != nil || n < row {
						return p, errors.New("row " + r + " is out of place")
					}
					row = n
				}
				if h := attr(t, "hidden"); h == "1" || h == "true" {
					p.hidden[row] = true
				}
			case "c":
				col++
				ref := attr(t, "r")
				if ref == "" {
					ref, _ = excelize.CoordinatesToCellName(max(1, col), max(1, row))
				} else if c, r, err := excelize.CellNameToCoordinates(ref); err != nil || r != row || c < col {
					return p, errors.New("cell " + ref + " is out of place")
				} else {
					col = c
				}
				cell = &rawCell{ref: ref, kind: attr(t, "t")}
			case "f":
				if cell != nil {
					cell.formula = true
				}
			case "v", "is":
				inValue = cell != nil
			}
		case xml.CharData:
			if inValue && cell != nil && len(t) > 0 {
				cell.value = true
			}
		case xml.EndElement:
			switch t.Name.Local {
			case "v", "is":
				inValue = false
			case "c":
				if cell != nil && (cell.value || cell.formula) {
					p.cells = append(p.cells, *cell)
				}
				cell = nil
			}
		}
	}
}

func attr(t xml.StartElement, name string) string {
	for _, a := range t.Attr {
		if a.Name.Local == name && a.Name.Space == "" {
			return a.Value
		}
	}
	return ""
}

func hideCols(p *part, t xml.StartElement) {
	if h := attr(t, "hidden"); h != "1" && h != "true" {
		return
	}
	from, _ := strconv.Atoi(attr(t, "min"))
	to, _ := strconv.Atoi(attr(t, "max"))
	for c := max(1, from); c <= min(to, 16384); c++ {
		p.cols[c] = true
	}
}
