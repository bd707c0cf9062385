package xlsx

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"io"
	"path"
	"regexp"
	"slices"
	"strings"
)

// placeNotes gives the notes of sheets the names by which alone the library adds to
// them: other programs keep notes and their shapes in parts named their own way. The
// parts are only moved, and shapes written with other prefixes get the usual ones.
// Where the parts cannot be moved all stay where they are.
func (a *archive) placeNotes(s *structure) {
	moved := a.notesMoved(s)
	if len(moved) == 0 {
		return
	}
	for from, to := range moved {
		if path.Ext(to) != ".vml" {
			continue
		}
		shapes, ok := usualShapes(a.parts[from])
		if _, has := a.find(relsOf(from)); !ok || has && path.Dir(from) != path.Dir(to) {
			return
		}
		a.parts[from] = shapes
	}
	for _, p := range s.sheets {
		a.retarget(p.part, moved)
	}
	a.rename(moved)
}

// notesMoved is the new names of all parts of notes and their shapes, numbered
// sheet by sheet; none where they have such names already. Shapes that are no
// notes' are numbered after those that sheets without notes may yet be given.
func (a *archive) notesMoved(s *structure) map[string]string {
	moved, others, n := map[string]string{}, []string{}, 0
	for _, p := range s.sheets {
		rels, err := a.relations(p.part)
		if err != nil || path.Dir(p.part) != "xl/worksheets" {
			continue
		}
		of := map[string]string{}
		for _, r := range rels {
			target, ok := a.find(r.target)
			switch {
			case !ok || r.outside:
			case r.kind == "comments":
				of[r.kind] = target
			case r.kind == "vmlDrawing" && bytes.Contains(a.parts[target], []byte(`"Note"`)):
				of[r.kind] = target
			case r.kind == "vmlDrawing":
				others = append(others, target)
			}
		}
		if len(of) < 2 {
			continue
		}
		n++
		moved[of["comments"]] = fmt.Sprintf("xl/comments%d.xml", n)
		moved[of["vmlDrawing"]] = fmt.Sprintf("xl/drawings/vmlDrawing%d.vml", n)
	}
	if !slices.ContainsFunc(a.names, func(name string) bool { return moved[name] != "" && moved[name] != name }) {
		return nil
	}
	for i, name := range others {
		moved[name] = fmt.Sprintf("xl/drawings/vmlDrawing%d.vml", len(s.sheets)+i+1)
	}
	taken := map[string]bool{}
	for _, to := range moved {
		if _, goes := moved[to]; taken[to] || !goes && a.parts[to] != nil {
			return nil // two parts of one name, or a part that no sheet names
		}
		taken[to] = true
	}
	return moved
}

var target = regexp.MustCompile(`(Target\s*=\s*)("[^"]*"|'[^']*')`)

// retarget has the relationships of a sheet name parts where they now are.
func (a *archive) retarget(part string, moved map[string]string) {
	rels, ok := a.find(relsOf(part))
	if !ok {
		return
	}
	a.parts[rels] = target.ReplaceAllFunc(a.parts[rels], func(at []byte) []byte {
		m := target.FindSubmatch(at)
		name, _ := a.find(partName(part, string(m[2][1:len(m[2])-1])))
		if to, ok := moved[name]; ok {
			return []byte(fmt.Sprintf(`%s"../%s"`, m[1], strings.TrimPrefix(to, "xl/")))
		}
		return at
	})
}

var typed = regexp.MustCompile(`(PartName\s*=\s*)("[^"]*"|'[^']*')`)

// rename moves parts to their new names, with their relationships and types.
func (a *archive) rename(moved map[string]string) {
	for _, from := range slices.Clone(a.names) {
		if to, ok := moved[from]; ok {
			if rels, ok := a.find(relsOf(from)); ok {
				moved[rels] = relsOf(to)
			}
		}
	}
	parts := map[string][]byte{}
	for i, from := range a.names {
		if to, ok := moved[from]; ok {
			a.names[i] = to
		}
		parts[a.names[i]] = a.parts[from]
	}
	a.parts = parts
	types := "[Content_Types].xml"
	a.parts[types] = typed.ReplaceAllFunc(a.parts[types], func(at []byte) []byte {
		m := typed.FindSubmatch(at)
		for from, to := range moved {
			if strings.EqualFold(string(m[2][1:len(m[2])-1]), "/"+from) {
				return []byte(fmt.Sprintf(`%s"/%s"`, m[1], to))
			}
		}
		return at
	})
}

// shapePrefix is the usual prefixes in the drawing of notes. The library writes
// shapes back as they stand, under these.
var shapePrefix = map[string]string{
	"urn:schemas-microsoft-com:vml":           "v:",
	"urn:schemas-microsoft-com:office:office": "o:",
	"urn:schemas-microsoft-com:office:excel":  "x:",
	"http://www.w3.org/XML/1998/namespace":    "xml:",
}

var shapeNumber = regexp.MustCompile(`^_x0000_s\d{1,9}$`)

// usualShapes is a drawing of notes with the usual prefixes and numbers; not ok where
// it cannot be read.
func usualShapes(data []byte) ([]byte, bool) {
	var b bytes.Buffer
	b.WriteString(`<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel">`)
	in := xml.NewDecoder(bytes.NewReader(data))
	in.Strict, in.AutoClose = false, []string{"br"}
	in.CharsetReader = func(_ string, r io.Reader) (io.Reader, error) { return r, nil }
	depth, shapes := 0, 0
	for {
		token, err := in.Token()
		if err == io.EOF {
			b.WriteString("</xml>")
			return b.Bytes(), depth == 0
		}
		if err != nil {
			return nil, false
		}
		switch t := token.(type) {
		case xml.StartElement:
			if depth++; depth == 1 {
				continue
			}
			b.WriteString("<" + usualName(t.Name))
			for _, at := range t.Attr {
				if at.Name.Space == "xmlns" || at.Name.Local == "xmlns" {
					continue
				}
				if t.Name.Local == "shape" && at.Name.Local == "id" && at.Name.Space == "" {
					if shapes++; !shapeNumber.MatchString(at.Value) {
						at.Value = fmt.Sprintf("_x0000_s%d", 900000+shapes)
					}
				}
				b.WriteString(" " + usualName(at.Name) + `="`)
				xml.EscapeText(&b, []byte(at.Value))
				b.WriteString(`"`)
			}
			b.WriteString(">")
		case xml.EndElement:
			if depth--; depth > 0 {
				b.WriteString("</" + usualName(t.Name) + ">")
			}
		case xml.CharData:
			if depth > 1 {
				xml.EscapeText(&b, t)
			}
		}
	}
}

func usualName(n xml.Name) string { return shapePrefix[n.Space] + n.Local }
