// Package xlsx reads and writes workbooks of ECMA-376 (ISO/IEC 29500). It is
// the only place that knows the library for them. A workbook is read whole or
// not at all.
package xlsx

import (
	"archive/zip"
	"bytes"
	"unicode/utf16"

	"strakebook/convert/sheet"
)

// The most that a workbook may unpack to. A yard's book is a thousandth of it.
const (
	mostUnpacked = 200 << 20
	mostParts    = 2000
)

// oldHeader opens the compound files of older workbooks and of encrypted ones.
var oldHeader = []byte{0xD0, 0xCF, 0x11, 0xE0}

// IsWorkbook says by its first bytes that a file is of a workbook's making,
// readable or not, and not text.
func IsWorkbook(data []byte) bool {
	return bytes.HasPrefix(data, []byte("PK\x03\x04")) || bytes.HasPrefix(data, []byte("PK\x05\x06")) || bytes.HasPrefix(data, oldHeader)
}

const saveAs = "open it in the program that made it and save it as .xlsx"

// unfit says what a file is that is no readable workbook; nil where it is one.
func unfit(path string, data []byte) (*zip.Reader, error) {
	refuse := func(cause, hint string) (*zip.Reader, error) {
		return nil, &sheet.Refused{Doing: "open", Path: path, Cause: cause, Hint: hint}
	}
	if bytes.HasPrefix(data, oldHeader) {
		if bytes.Contains(data, wide("EncryptedPackage")) {
			return refuse("protected by a password", "open it, take the password off, and save it")
		}
		if bytes.Contains(data, wide("WordDocument")) {
			return refuse("a document of words and no workbook", "name the workbook")
		}
		return refuse("a workbook of the old .xls kind", saveAs)
	}
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		return refuse("cut short or damaged", "fetch it again from where it came, or open it, repair it and save it under a new name")
	}
	if len(z.File) > mostParts {
		return refuse("made of more parts than any workbook", "save the sheets you need as a new workbook")
	}
	total := uint64(0)
	parts := map[string]bool{}
	for _, f := range z.File {
		total += f.UncompressedSize64
		parts[f.Name] = true
	}
	switch {
	case total > mostUnpacked:
		return refuse("unpacks to more than 200 MB", "save the sheets you need as a new workbook")
	case parts["xl/workbook.bin"]:
		return refuse("a binary workbook (.xlsb)", saveAs)
	case parts["Index/Document.iwa"] || parts["Index.zip"]:
		return refuse("a document of another spreadsheet program", "export it as .xlsx")
	case parts["content.xml"] && parts["mimetype"]:
		return refuse("an OpenDocument spreadsheet (.ods)", saveAs)
	case !parts[contentTypes] || !parts["_rels/.rels"]:
		return refuse("an archive and not a workbook", "name the workbook inside it")
	case parts["word/document.xml"]:
		return refuse("a document of words and no workbook", "copy its tables into a workbook")
	}
	return z, nil
}

// wide is a name as older compound files write it.
func wide(name string) []byte {
	var b []byte
	for _, u := range utf16.Encode([]rune(name)) {
		b = append(b, byte(u), byte(u>>8))
	}
	return b
}
