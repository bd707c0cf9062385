package xlsx

import (
	"regexp"
	"strconv"
	"strings"
	"unicode/utf16"
)

// rich is a text without what of it is struck out, and that.
type rich struct {
	text, struck string
	whole        string // both in their order, where some is struck
}

// all is the whole text, struck or not, as the library has it.
func (t rich) all() string {
	if t.struck == "" {
		return t.text
	}
	return t.whole
}

// texts reads the part of shared strings, and refuses one that holds fewer than
// it says: every text after a lost one would be another's.
func texts(data []byte) ([]rich, error) {
	var all []rich
	said := -1
	r := newReader(data)
	err := r.each(map[string]func() error{
		"sst": func() (err error) {
			said, err = r.count("uniqueCount")
			return err
		},
		"si": func() error {
			t, err := r.rich()
			all = append(all, t)
			return err
		},
	})
	if err == nil && said > len(all) {
		err = r.fault("it holds " + strconv.Itoa(len(all)) + " texts and says " + strconv.Itoa(said))
	}
	return all, err
}

// rich reads the text of the element just begun, to its end: runs, of which some
// may be struck out. Readings beside the text, for its pronunciation, are none of it.
func (r *reader) rich() (rich, error) {
	var out rich
	depth := len(r.path)
	struck, beside := false, false
	for {
		if err := r.step(); err != nil {
			return out, err
		}
		if r.kind == tokenEnd {
			switch {
			case len(r.path) < depth:
				return rich{escaped(out.text), escaped(out.struck), escaped(out.whole)}, nil
			case r.at.name == "r":
				struck = false
			case r.at.name == "rPh":
				beside = false
			}
			continue
		}
		if r.kind != tokenStart {
			continue
		}
		switch r.at.name {
		case "rPh":
			beside = true
		case "strike":
			off, err := r.off()
			if err != nil {
				return out, err
			}
			struck = !off
		case "t":
			t, err := r.words()
			if err != nil {
				return out, err
			}
			if beside {
				continue
			}
			out.whole += t
			if struck {
				out.struck += t
			} else {
				out.text += t
			}
		}
	}
}

// off says that an element such as <strike/> says no: by itself it says yes.
func (r *reader) off() (bool, error) {
	if _, given := r.attr("val"); !given {
		return false, nil
	}
	on, err := r.flag("val")
	return !on, err
}

var escape = regexp.MustCompile(`_x([0-9A-Fa-f]{4})_`)

// escaped is a text with the characters that XML cannot hold put back: they are
// written _x000D_ (ECMA-376-1 22.9.2.19, from memory).
func escaped(text string) string {
	if !strings.Contains(text, "_x") {
		return text
	}
	var units []uint16
	var out strings.Builder
	flush := func() {
		out.WriteString(string(utf16.Decode(units)))
		units = units[:0]
	}
	at := 0
	for _, m := range escape.FindAllStringSubmatchIndex(text, -1) {
		if m[0] > at {
			flush()
			out.WriteString(text[at:m[0]])
		}
		u, _ := strconv.ParseUint(text[m[2]:m[3]], 16, 16)
		units = append(units, uint16(u))
		at = m[1]
	}
	flush()
	out.WriteString(text[at:])
	return out.String()
}
