package xlsx

import (
	"archive/zip"
	"bytes"
	"io"
	"io/fs"
	"regexp"
	"slices"
	"strings"
	"time"
)

// sortedZip writes an archive whose bytes depend on nothing but its parts: the
// library hands them over in the order of a map.
type sortedZip struct {
	to    io.Writer
	parts map[string]*bytes.Buffer
}

func newSortedZip(w io.Writer) *sortedZip { return &sortedZip{w, map[string]*bytes.Buffer{}} }

func (z *sortedZip) Create(name string) (io.Writer, error) {
	z.parts[name] = &bytes.Buffer{}
	return z.parts[name], nil
}

func (z *sortedZip) AddFS(files fs.FS) error {
	return fs.WalkDir(files, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		data, err := fs.ReadFile(files, name)
		z.parts[name] = bytes.NewBuffer(data)
		return err
	})
}

const contentTypes = "[Content_Types].xml"

// Close writes the parts, the list of their types first, each at one fixed date.
func (z *sortedZip) Close() error {
	w := zip.NewWriter(z.to)
	names := make([]string, 0, len(z.parts))
	for name := range z.parts {
		names = append(names, name)
	}
	slices.SortFunc(names, func(a, b string) int {
		switch {
		case a == b:
			return 0
		case a == contentTypes:
			return -1
		case b == contentTypes:
			return 1
		}
		return strings.Compare(a, b)
	})
	for _, name := range names {
		data := z.parts[name].Bytes()
		switch {
		case name == contentTypes:
			data = sortTypes(data)
		case strings.HasPrefix(name, "xl/worksheets/"):
			data = formulaTexts(data)
		}
		to, err := w.CreateHeader(&zip.FileHeader{Name: name, Method: zip.Deflate, Modified: time.Date(1980, 1, 1, 0, 0, 0, 0, time.UTC)})
		if err != nil {
			return err
		}
		if _, err := to.Write(data); err != nil {
			return err
		}
	}
	return w.Close()
}

var typeEntry = regexp.MustCompile(`<(?:Default|Override) [^>]*?(?:/>|></(?:Default|Override)>)`)

// sortTypes puts the entries of the list of types in order.
func sortTypes(data []byte) []byte {
	entries := typeEntry.FindAll(data, -1)
	if len(entries) == 0 {
		return data
	}
	first := typeEntry.FindIndex(data)
	rest := typeEntry.ReplaceAll(data[first[0]:], nil)
	slices.SortFunc(entries, bytes.Compare)
	out := append([]byte{}, data[:first[0]]...)
	for _, e := range entries {
		out = append(out, e...)
	}
	return append(out, rest...)
}

// formulaTexts makes the texts stored beside formulas the kind that a formula's
// result is: the library writes them as typed in.
func formulaTexts(data []byte) []byte {
	begin, middle, end := []byte(`t="inlineStr"><f>`), []byte(`</f><is><t`), []byte(`</t></is>`)
	var out []byte
	for {
		at := bytes.Index(data, begin)
		if at < 0 {
			break
		}
		text := bytes.Index(data[at:], middle)
		if text < 0 {
			break
		}
		open := at + text + len(middle)
		from := open + bytes.IndexByte(data[open:], '>') + 1
		to := bytes.Index(data[from:], end)
		if to < 0 {
			break
		}
		out = append(append(out, data[:at]...), `t="str"><f>`...)
		out = append(append(out, data[at+len(begin):at+text]...), `</f><v>`...)
		out = append(append(out, data[from:from+to]...), `</v>`...)
		data = data[from+to+len(end):]
	}
	if out == nil {
		return data
	}
	return append(out, data...)
}
