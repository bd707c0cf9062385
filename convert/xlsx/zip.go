package xlsx

import (
	"archive/zip"
	"bytes"
	"compress/flate"
	"hash/crc32"
	"io"
	"io/fs"
	"maps"
	"regexp"
	"slices"
	"strings"
	"time"
)

// sortedZip writes an archive whose bytes depend on nothing but its parts: the
// library hands them over in the order of a map. Each is pressed as soon as it is
// whole, so that only one lies open in memory.
type sortedZip struct {
	to    io.Writer
	parts map[string]pressed
	rows  map[string]rows // of our sheets, by the names of their parts
	name  string          // of the part being handed over; "" for none
	part  bytes.Buffer
	press *flate.Writer
}

// pressed is a part pressed, as the archive takes it.
type pressed struct {
	data []byte
	sum  uint32
	size int
}

func newSortedZip(w io.Writer, ours map[string]rows) *sortedZip {
	return &sortedZip{to: w, parts: map[string]pressed{}, rows: ours}
}

func (z *sortedZip) Create(name string) (io.Writer, error) {
	if err := z.pack(); err != nil {
		return nil, err
	}
	z.name = name
	return &z.part, nil
}

func (z *sortedZip) AddFS(files fs.FS) error {
	return fs.WalkDir(files, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		data, err := fs.ReadFile(files, name)
		if err != nil {
			return err
		}
		to, err := z.Create(name)
		if err != nil {
			return err
		}
		_, err = to.Write(data)
		return err
	})
}

// quick is how hard the parts are pressed: harder takes two and three times as long
// for an eighth less.
const quick = 1

// pack presses the part that has been handed over, our rows put in as they are
// made.
func (z *sortedZip) pack() error {
	if z.name == "" {
		return nil
	}
	var out bytes.Buffer
	if z.press == nil {
		press, err := flate.NewWriter(&out, quick)
		if err != nil {
			return err
		}
		z.press = press
	}
	z.press.Reset(&out)
	through := &summed{to: z.press}
	data, err := z.part.Bytes(), error(nil)
	if ours, ok := z.rows[z.name]; ok {
		err = ours.splice(through, data)
	} else {
		if z.name == contentTypes {
			data = sortTypes(data)
		}
		_, err = through.Write(data)
	}
	if err != nil {
		return err
	}
	if err := z.press.Close(); err != nil {
		return err
	}
	z.parts[z.name] = pressed{out.Bytes(), through.sum, through.size}
	z.name = ""
	z.part.Reset()
	return nil
}

// summed counts and sums what goes through it.
type summed struct {
	to   io.Writer
	sum  uint32
	size int
}

func (s *summed) Write(data []byte) (int, error) {
	s.sum = crc32.Update(s.sum, crc32.IEEETable, data)
	s.size += len(data)
	return s.to.Write(data)
}

const contentTypes = "[Content_Types].xml"

// Close writes the parts, the list of their types first, each at one fixed date.
func (z *sortedZip) Close() error {
	if err := z.pack(); err != nil {
		return err
	}
	w := zip.NewWriter(z.to)
	names := slices.SortedFunc(maps.Keys(z.parts), func(a, b string) int {
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
		p := z.parts[name]
		head := &zip.FileHeader{Name: name, Method: zip.Deflate, CRC32: p.sum, CompressedSize64: uint64(len(p.data)), UncompressedSize64: uint64(p.size)}
		//lint:ignore SA1019 a part handed over pressed takes its date from nowhere else
		head.SetModTime(time.Date(1980, 1, 1, 0, 0, 0, 0, time.UTC))
		to, err := w.CreateRaw(head)
		if err != nil {
			return err
		}
		if _, err := to.Write(p.data); err != nil {
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
