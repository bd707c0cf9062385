package csv

import (
	"bytes"
	"errors"
	"strings"
	"unicode/utf8"

	"golang.org/x/text/encoding"
	"golang.org/x/text/encoding/charmap"
	"golang.org/x/text/encoding/unicode"
)

// decode turns a file's bytes into text with one kind of line end.
func decode(data []byte) (string, error) {
	if bytes.HasPrefix(data, []byte("PK\x03\x04")) {
		return "", errors.New("a workbook or an archive, not text")
	}
	text, err := characters(data)
	if err != nil {
		return "", err
	}
	text = strings.TrimRight(text, "\x1a") // how old programs ended a file
	for _, r := range text {
		if r < ' ' && !strings.ContainsRune("\t\n\v\f\r", r) {
			return "", errors.New("not text, nor a workbook")
		}
	}
	return lineEnds(text), nil
}

// characters reads UTF-8, UTF-16 with or without its mark, or else Windows-1252,
// which older programs on that system write.
func characters(data []byte) (string, error) {
	rest, marked := bytes.CutPrefix(data, []byte("\xEF\xBB\xBF"))
	nul := bytes.Count(data, []byte{0})
	switch {
	case marked && !utf8.Valid(rest):
		return "", errors.New("text marked as UTF-8 that is not")
	case marked:
		return string(rest), nil
	case bytes.HasPrefix(data, []byte{0xFF, 0xFE}):
		return with(unicode.UTF16(unicode.LittleEndian, unicode.IgnoreBOM), data[2:])
	case bytes.HasPrefix(data, []byte{0xFE, 0xFF}):
		return with(unicode.UTF16(unicode.BigEndian, unicode.IgnoreBOM), data[2:])
	case nul*3 > len(data):
		return with(unicode.UTF16(byteOrder(data), unicode.IgnoreBOM), data)
	case nul > 0:
		return "", errors.New("not text, nor a workbook")
	case utf8.Valid(data):
		return string(data), nil
	}
	return with(charmap.Windows1252, data)
}

// byteOrder is the order of UTF-16 without a mark: in a table most characters
// have a null for their high byte, and it comes second where the low comes first.
func byteOrder(data []byte) unicode.Endianness {
	first, second := 0, 0
	for i, b := range data {
		switch {
		case b != 0:
		case i%2 == 0:
			first++
		default:
			second++
		}
	}
	if first > second {
		return unicode.BigEndian
	}
	return unicode.LittleEndian
}

func with(e encoding.Encoding, data []byte) (string, error) {
	out, err := e.NewDecoder().Bytes(data)
	return string(out), err
}

// lineEnds makes every line end one line feed. Returns alone end the lines where
// they are the more: old programs set them so, and line feeds inside cells.
func lineEnds(text string) string {
	text = strings.ReplaceAll(text, "\r\r\n", "\n") // written through two systems
	text = strings.ReplaceAll(text, "\r\n", "\n")
	if strings.Count(text, "\r") > strings.Count(text, "\n") {
		text = strings.ReplaceAll(text, "\r", "\n")
	}
	return text
}
