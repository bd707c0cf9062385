package xlsx

import (
	"archive/zip"
	"bytes"
	"errors"
	"fmt"
	"hash/crc32"
	"io"
	"strings"

	"strakebook/convert/sheet"
)

// archive is the parts of a workbook by name, in the order they were found.
type archive struct {
	names []string
	parts map[string][]byte
}

// damaged is a workbook refused for what is wrong with one part of it.
func damaged(path, part string, err error) error {
	return &sheet.Refused{Doing: "open", Path: path, Cause: "damaged in its part " + part, Hint: "open it, repair it and save it under a new name", Err: err}
}

// unpack reads every part, each whole and with the checksum it should have. The
// standard reader takes a checksum of 0 for none, so they are taken again.
func unpack(path string, z *zip.Reader) (*archive, error) {
	a := &archive{parts: map[string][]byte{}}
	lower := map[string]bool{}
	for _, f := range z.File {
		name := strings.TrimPrefix(strings.ReplaceAll(f.Name, `\`, "/"), "/")
		if strings.HasSuffix(name, "/") && f.UncompressedSize64 == 0 {
			continue // a folder
		}
		if lower[strings.ToLower(name)] {
			return nil, damaged(path, name, errors.New("it is there twice"))
		}
		lower[strings.ToLower(name)] = true
		data, err := unpackOne(f)
		if err != nil {
			return nil, damaged(path, name, err)
		}
		a.put(name, data)
	}
	return a, nil
}

func unpackOne(f *zip.File) ([]byte, error) {
	r, err := f.Open()
	if err != nil {
		return nil, err
	}
	defer r.Close()
	var b bytes.Buffer
	b.Grow(int(f.UncompressedSize64) + bytes.MinRead)
	if _, err := io.Copy(&b, io.LimitReader(r, int64(f.UncompressedSize64)+1)); err != nil {
		return nil, err
	}
	if uint64(b.Len()) != f.UncompressedSize64 {
		return nil, errors.New("it is not of the size it says")
	}
	if crc32.ChecksumIEEE(b.Bytes()) != f.CRC32 {
		return nil, zip.ErrChecksum
	}
	return b.Bytes(), nil
}

func (a *archive) put(name string, data []byte) {
	if _, had := a.parts[name]; !had {
		a.names = append(a.names, name)
	}
	a.parts[name] = data
}

// find is a part's name as the archive writes it, whatever its capitals: part
// names are the same whatever their case (ECMA-376-2, from memory).
func (a *archive) find(name string) (string, bool) {
	if _, ok := a.parts[name]; ok {
		return name, true
	}
	for _, n := range a.names {
		if strings.EqualFold(n, name) {
			return n, true
		}
	}
	return "", false
}

// pack is the archive as bytes, not compressed, for the library to read.
func (a *archive) pack() ([]byte, error) {
	total := 0
	for n, p := range a.parts {
		total += len(p) + 2*len(n) + 128
	}
	var b bytes.Buffer
	b.Grow(total)
	w := zip.NewWriter(&b)
	for _, name := range a.names {
		to, err := w.CreateHeader(&zip.FileHeader{Name: name, Method: zip.Store})
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		if _, err := to.Write(a.parts[name]); err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
	}
	err := w.Close()
	return b.Bytes(), err
}
