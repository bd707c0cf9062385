package xlsx

import (
	"bytes"
	"fmt"
	"strconv"
	"unicode/utf8"
)

// nameByte says which bytes names of elements and attributes are made of.
var nameByte = func() (set [256]bool) {
	for c := range set {
		set[c] = c >= 0x80 || c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '.' || c == '-' || c == '_' || c == ':'
	}
	return set
}()

func (s *scanner) word() ([]byte, error) {
	from := s.at
	for s.at < len(s.data) && nameByte[s.data[s.at]] {
		s.at++
	}
	name := s.data[from:s.at]
	if n := bytes.IndexByte(name, ':'); n == 0 || n == len(name)-1 || n != bytes.LastIndexByte(name, ':') {
		if n >= 0 {
			return nil, s.fault("a name that is none")
		}
	}
	if len(name) == 0 || name[0] == '.' || name[0] == '-' || name[0] >= '0' && name[0] <= '9' || !utf8.Valid(name) {
		return nil, s.fault("a tag without a name")
	}
	return name, nil
}

func (s *scanner) space() bool {
	from := s.at
	for s.at < len(s.data) {
		switch s.data[s.at] {
		case ' ', '\t', '\r', '\n':
			s.at++
			continue
		}
		break
	}
	return s.at > from
}

func (s *scanner) begin() error {
	if s.rooted && len(s.open) == 0 {
		return s.fault("a second root element")
	}
	s.rooted = true
	s.at++
	name, err := s.word()
	if err != nil {
		return err
	}
	s.kind, s.name, s.attrs, s.empty = tokenStart, name, s.attrs[:0], false
	for {
		spaced := s.space()
		if s.at == len(s.data) {
			return s.fault("a tag does not end")
		}
		switch c := s.data[s.at]; {
		case c == '>':
			s.at++
		case c == '/' && s.at+1 < len(s.data) && s.data[s.at+1] == '>':
			s.at += 2
			s.empty = true
		case !spaced:
			return s.fault("a tag that is none")
		default:
			if err := s.attribute(); err != nil {
				return err
			}
			continue
		}
		if err := s.prefixes(); err != nil {
			return err
		}
		if s.open = append(s.open, name); len(s.open) > deepest {
			return s.fault("elements nest too deep")
		}
		return nil
	}
}

// prefixes says what is wrong with the prefixes of the tag just read: each must
// have been declared.
func (s *scanner) prefixes() error {
	for _, a := range s.attrs {
		if prefix, ok := bytes.CutPrefix(a.name, []byte("xmlns:")); ok && !s.declared(prefix) {
			s.known = append(s.known, prefix)
		}
	}
	if n := bytes.IndexByte(s.name, ':'); n >= 0 && !s.declared(s.name[:n]) {
		return s.fault(fmt.Sprintf("<%.40s> has a prefix of nothing", s.name))
	}
	for _, a := range s.attrs {
		if n := bytes.IndexByte(a.name, ':'); n >= 0 && !s.declared(a.name[:n]) {
			return s.fault(fmt.Sprintf("%.40s has a prefix of nothing", a.name))
		}
	}
	return nil
}

func (s *scanner) declared(prefix []byte) bool {
	for _, k := range s.known {
		if bytes.Equal(k, prefix) {
			return true
		}
	}
	return string(prefix) == "xml" || string(prefix) == "xmlns"
}

func (s *scanner) attribute() error {
	name, err := s.word()
	if err != nil {
		return err
	}
	s.space()
	if s.at == len(s.data) || s.data[s.at] != '=' {
		return s.fault("an attribute without a value")
	}
	s.at++
	s.space()
	if s.at == len(s.data) || s.data[s.at] != '"' && s.data[s.at] != '\'' {
		return s.fault("an attribute without a value")
	}
	n := bytes.IndexByte(s.data[s.at+1:], s.data[s.at])
	if n < 0 {
		return s.fault("an attribute does not end")
	}
	raw := s.data[s.at+1 : s.at+1+n]
	if unfitText(raw) >= 0 || bytes.IndexByte(raw, '<') >= 0 {
		return s.fault("an attribute holds what it may not")
	}
	if err := s.references(raw); err != nil {
		return err
	}
	for _, a := range s.attrs {
		if bytes.Equal(a.name, name) {
			return s.fault("an attribute is given twice")
		}
	}
	s.attrs = append(s.attrs, attribute{name, raw})
	s.at += n + 2
	return nil
}

// attr is an attribute's value by its name; prefixed ones count only by their
// whole name.
func (s *scanner) attr(name string) (string, bool) {
	for _, a := range s.attrs {
		if string(a.name) == name {
			return value(a.raw), true
		}
	}
	return "", false
}

// flag is an attribute that says yes or no.
func (s *scanner) flag(name string) (bool, error) {
	switch v, ok := s.attr(name); {
	case !ok || v == "0" || v == "false":
		return false, nil
	case v == "1" || v == "true":
		return true, nil
	}
	return false, s.fault(name + " says neither yes nor no")
}

// count is an attribute that is a whole number; -1 where it is not given.
func (s *scanner) count(name string) (int, error) {
	v, ok := s.attr(name)
	if !ok {
		return -1, nil
	}
	n, err := strconv.Atoi(v)
	if err != nil || n < 0 {
		return 0, s.fault(name + " is no whole number")
	}
	return n, nil
}
