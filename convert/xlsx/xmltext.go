package xlsx

import (
	"bytes"
	"strconv"
	"strings"
	"unicode/utf8"
)

// unfitText is where text holds what XML may not; -1 where it does not.
func unfitText(text []byte) int {
	for i := 0; i < len(text); {
		c := text[i]
		switch {
		case c < ' ' && c != '\n' && c != '\t' && c != '\r':
			return i
		case c < utf8.RuneSelf:
			i++
		default:
			r, n := utf8.DecodeRune(text[i:])
			if r == utf8.RuneError && n == 1 || r == 0xFFFE || r == 0xFFFF {
				return i
			}
			i += n
		}
	}
	return -1
}

// references says what is wrong with the references of a text.
func (s *scanner) references(text []byte) error {
	for {
		i := bytes.IndexByte(text, '&')
		if i < 0 {
			return nil
		}
		_, n := reference(text[i:])
		if n == 0 {
			return s.fault("a reference to nothing")
		}
		text = text[i+n:]
	}
}

// reference is the character that a reference stands for, and the reference's
// length; 0 where it is none.
func reference(text []byte) (rune, int) {
	n := bytes.IndexByte(text, ';')
	if n < 0 || n > 12 {
		return 0, 0
	}
	switch name := string(text[1:n]); name {
	case "amp":
		return '&', n + 1
	case "lt":
		return '<', n + 1
	case "gt":
		return '>', n + 1
	case "quot":
		return '"', n + 1
	case "apos":
		return '\'', n + 1
	default:
		digits, ok := strings.CutPrefix(name, "#")
		if !ok {
			return 0, 0
		}
		base := 10
		if hex, ok := strings.CutPrefix(digits, "x"); ok {
			digits, base = hex, 16
		}
		v, err := strconv.ParseUint(digits, base, 32)
		r := rune(v)
		if err != nil || v > utf8.MaxRune || !utf8.ValidRune(r) || r < ' ' && r != '\t' && r != '\n' && r != '\r' || r == 0xFFFE || r == 0xFFFF {
			return 0, 0
		}
		return r, n + 1
	}
}

// value is text or an attribute as it is meant: references read, and line ends
// of every kind as one line feed.
func value(raw []byte) string {
	if bytes.IndexByte(raw, '&') < 0 && bytes.IndexByte(raw, '\r') < 0 {
		return string(raw)
	}
	var b strings.Builder
	for i := 0; i < len(raw); {
		switch raw[i] {
		case '&':
			r, n := reference(raw[i:])
			b.WriteRune(r)
			i += max(n, 1)
		case '\r':
			b.WriteByte('\n')
			i++
			if i < len(raw) && raw[i] == '\n' {
				i++
			}
		default:
			b.WriteByte(raw[i])
			i++
		}
	}
	return b.String()
}
