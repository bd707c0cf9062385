package xlsx

import (
	"bytes"
	"fmt"
	"regexp"
	"strings"
)

// scanner reads one part of a workbook, token by token, and stops at anything
// that XML 1.0 does not allow. The library's own decoder goes on past such
// places with what it has, and is several times slower. Parts of a workbook are
// UTF-8 and have no document type (ECMA-376-2 annex on XML usage, from memory),
// so that is all it takes.
type scanner struct {
	data  []byte
	at    int
	open  [][]byte // names of the elements that are open
	known [][]byte // prefixes declared so far

	kind   tokenKind
	name   []byte // of the element, with its prefix
	attrs  []attribute
	text   []byte // as written, references and all
	start  int    // where the token begins
	empty  bool   // a start whose end comes next, with nothing between
	rooted bool   // the root element has been seen
}

type tokenKind uint8

const (
	tokenStart tokenKind = iota + 1
	tokenEnd
	tokenText
	tokenDone
)

// attribute is one attribute as written; see value.
type attribute struct{ name, raw []byte }

// deepest is how far elements may nest; a workbook's nest a dozen deep.
const deepest = 200

func newScanner(data []byte) *scanner {
	return &scanner{data: bytes.TrimPrefix(data, []byte("\uFEFF"))}
}

func (s *scanner) fault(what string) error {
	return fmt.Errorf("%s at byte %d", what, s.at)
}

// next steps to the next token: a start, an end, text, or done.
func (s *scanner) next() error {
	if s.empty {
		s.empty = false
		s.kind, s.name = tokenEnd, s.open[len(s.open)-1]
		s.open = s.open[:len(s.open)-1]
		return nil
	}
	for {
		s.start = s.at
		if s.at == len(s.data) {
			if len(s.open) > 0 || !s.rooted {
				return s.fault("it is cut short")
			}
			s.kind = tokenDone
			return nil
		}
		if s.data[s.at] != '<' {
			return s.words()
		}
		rest := s.data[s.at+1:]
		switch {
		case len(rest) == 0:
			return s.fault("it is cut short")
		case rest[0] == '/':
			return s.end()
		case rest[0] == '?':
			if err := s.instruction(); err != nil {
				return err
			}
		case bytes.HasPrefix(rest, []byte("!--")):
			n := bytes.Index(rest[3:], []byte("--"))
			if n < 0 || !bytes.HasPrefix(rest[3+n:], []byte("-->")) {
				return s.fault("a comment does not end")
			}
			s.at += 1 + 3 + n + 3
		case bytes.HasPrefix(rest, []byte("![CDATA[")) && len(s.open) > 0:
			n := bytes.Index(rest[8:], []byte("]]>"))
			if n < 0 {
				return s.fault("a quotation does not end")
			}
			return s.quotation(rest[8 : 8+n])
		default:
			return s.begin()
		}
	}
}

// quotation is a CDATA section as text: it is copied with its references written
// out, so that text means the same wherever it comes from.
func (s *scanner) quotation(words []byte) error {
	if at := unfitText(words); at >= 0 {
		return s.fault("a character that is none")
	}
	s.at += len("<![CDATA[") + len(words) + len("]]>")
	words = bytes.ReplaceAll(words, []byte("&"), []byte("&amp;"))
	s.kind, s.text = tokenText, bytes.ReplaceAll(words, []byte("<"), []byte("&lt;"))
	return nil
}

func (s *scanner) words() error {
	n := bytes.IndexByte(s.data[s.at:], '<')
	if n < 0 {
		n = len(s.data) - s.at
	}
	text := s.data[s.at : s.at+n]
	if len(s.open) == 0 && len(bytes.TrimSpace(text)) > 0 {
		return s.fault("there is text outside of its elements")
	}
	if at := unfitText(text); at >= 0 {
		s.at += at
		return s.fault("a character that is none")
	}
	if bytes.Contains(text, []byte("]]>")) {
		return s.fault("a quotation ends that was not begun")
	}
	if err := s.references(text); err != nil {
		return err
	}
	s.at += n
	s.kind, s.text = tokenText, text
	return nil
}

// declaration is the XML declaration of a part in UTF-8.
var declaration = regexp.MustCompile(`(?i)^xml\s+version\s*=\s*["']1\.0["'](\s+encoding\s*=\s*["'](utf-8|us-ascii)["'])?(\s+standalone\s*=\s*["'](yes|no)["'])?\s*$`)

// instructs is the names of instructions taken.
var instructs = regexp.MustCompile(`^[A-Za-z_][A-Za-z0-9_.-]*$`)

func (s *scanner) instruction() error {
	n := bytes.Index(s.data[s.at+2:], []byte("?>"))
	if n < 0 {
		return s.fault("an instruction does not end")
	}
	body := s.data[s.at+2 : s.at+2+n]
	name, _, _ := strings.Cut(string(body), " ")
	switch {
	case unfitText(body) >= 0 || !instructs.MatchString(name):
		return s.fault("an instruction holds what it may not")
	case strings.EqualFold(name, "xml") && (s.at > 0 || !declaration.Match(body)):
		return s.fault("an XML declaration out of its place, or of another encoding than UTF-8")
	}
	s.at += 2 + n + 2
	return nil
}

func (s *scanner) end() error {
	n := bytes.IndexByte(s.data[s.at:], '>')
	if n < 0 {
		return s.fault("a tag does not end")
	}
	name := bytes.TrimRight(s.data[s.at+2:s.at+n], " \t\r\n")
	if len(s.open) == 0 || !bytes.Equal(name, s.open[len(s.open)-1]) {
		return s.fault(fmt.Sprintf("</%.40s> ends what was not begun", name))
	}
	s.open = s.open[:len(s.open)-1]
	s.at += n + 1
	s.kind, s.name = tokenEnd, name
	return nil
}

// local is a name without its prefix.
func local(name []byte) []byte { return name[bytes.IndexByte(name, ':')+1:] }

// skip passes over the rest of the element just begun.
func (s *scanner) skip() error {
	for depth := len(s.open); len(s.open) >= depth; {
		if err := s.next(); err != nil {
			return err
		}
	}
	return nil
}

// wellFormed reads a part to its end.
func wellFormed(data []byte) error {
	s := newScanner(data)
	for s.kind != tokenDone {
		if err := s.next(); err != nil {
			return err
		}
	}
	return nil
}
