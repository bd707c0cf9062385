package xlsx

import (
	"errors"
	"fmt"
	"path"
	"strings"
)

// relation is one entry of a part's relationships: its type by its last word,
// which is the same in the strict and the transitional form.
type relation struct {
	id, kind, target string // the target as a part's name
	full             string // the type as written
	outside          bool   // the target is not in the archive
}

// relsOf is the name of the part that holds another's relationships.
func relsOf(part string) string {
	dir, name := path.Split(part)
	return dir + "_rels/" + name + ".rels"
}

// relations is a part's relationships; none where it has none.
func (a *archive) relations(part string) ([]relation, error) {
	name, ok := a.find(relsOf(part))
	if !ok {
		return nil, nil
	}
	var all []relation
	r := newReader(a.parts[name])
	err := r.each(map[string]func() error{"Relationship": func() error {
		var n relation
		var fine [3]bool
		n.id, fine[0] = r.attr("Id")
		n.full, fine[1] = r.attr("Type")
		n.target, fine[2] = r.attr("Target")
		if fine != [3]bool{true, true, true} {
			return r.fault("a relationship lacks its type or target")
		}
		n.kind = path.Base(n.full)
		mode, _ := r.attr("TargetMode")
		if n.outside = mode == "External"; !n.outside {
			n.target = partName(part, n.target)
		}
		all = append(all, n)
		return nil
	}})
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	return all, nil
}

// partName is a target, given from a part, as the name of a part.
func partName(from, target string) string {
	if !strings.HasPrefix(target, "/") {
		target = path.Join("/", path.Dir(from), target)
	}
	return strings.TrimPrefix(path.Clean(target), "/")
}

// structure is which part is what.
type structure struct {
	workbook string
	sheets   []sheetPart
	texts    string // shared strings; "" for none
	styles   string
	date1904 bool
	defined  []definedName
}

// definedName is a name the book defines, and what it stands for.
type definedName struct{ name, refersTo string }

// sheetPart is one sheet of the workbook's list.
type sheetPart struct {
	name   string
	part   string
	cells  bool // a sheet of cells, and not of charts or dialogs
	hidden bool
	notes  string // part; "" for none
	tables []string
	ids    map[string]bool // of its relationships
}

// structure reads which part is what, and refuses a workbook that names a part
// it does not hold.
func (a *archive) structure() (*structure, error) {
	top, err := a.relations("")
	if err != nil {
		return nil, err
	}
	s := &structure{}
	for _, n := range top {
		if n.kind == "officeDocument" {
			s.workbook = n.target
		}
	}
	part, ok := a.find(s.workbook)
	if !ok || s.workbook == "" {
		return nil, errors.New("it names no workbook")
	}
	s.workbook = part
	rels, err := a.relations(part)
	if err != nil {
		return nil, err
	}
	byID := map[string]relation{}
	for _, n := range rels {
		byID[n.id] = n
		if n.outside {
			continue
		}
		target, ok := a.find(n.target)
		switch n.kind {
		case "sharedStrings":
			s.texts = target
		case "styles":
			s.styles = target
		default:
			continue
		}
		if !ok {
			return nil, fmt.Errorf("%s is not in it", n.target)
		}
	}
	if err := a.sheets(s, byID); err != nil {
		return nil, err
	}
	return s, nil
}

// sheets reads the workbook's own part: its list of sheets and its epoch.
func (a *archive) sheets(s *structure, byID map[string]relation) error {
	r := newReader(a.parts[s.workbook])
	err := r.each(map[string]func() error{
		"workbookPr": func() (err error) {
			s.date1904, err = r.flag("date1904")
			return err
		},
		"definedName": func() error {
			n, named := r.attr("name")
			if !named {
				return r.fault("a name is not given")
			}
			to, err := r.words()
			s.defined = append(s.defined, definedName{n, to})
			return err
		},
		"sheet": func() error {
			var p sheetPart
			var ok bool
			if p.name, ok = r.attr("name"); !ok {
				return r.fault("a sheet has no name")
			}
			state, _ := r.attr("state")
			p.hidden = state == "hidden" || state == "veryHidden"
			if !p.hidden && state != "" && state != "visible" {
				return r.fault("a sheet is neither hidden nor not")
			}
			id := ""
			for _, at := range r.attrs {
				if string(local(at.name)) == "id" && len(at.name) > 2 {
					id = value(at.raw)
				}
			}
			n, ok := byID[id]
			if ok {
				p.part, ok = a.find(n.target)
			}
			if !ok {
				return fmt.Errorf("sheet %q is not in it", p.name)
			}
			p.cells = n.kind == "worksheet"
			s.sheets = append(s.sheets, p)
			return nil
		},
	})
	if err != nil {
		return fmt.Errorf("%s: %w", s.workbook, err)
	}
	for i := range s.sheets {
		if err := a.attached(&s.sheets[i]); err != nil {
			return err
		}
	}
	return nil
}

// attached reads what belongs to a sheet: its notes and tables.
func (a *archive) attached(p *sheetPart) error {
	rels, err := a.relations(p.part)
	if err != nil {
		return err
	}
	p.ids = map[string]bool{}
	for _, n := range rels {
		p.ids[n.id] = true
		if n.kind != "comments" && n.kind != "table" && n.kind != "vmlDrawing" || n.outside {
			continue
		}
		target, ok := a.find(n.target)
		if !ok {
			return fmt.Errorf("%s is not in it", n.target)
		}
		switch n.kind {
		case "comments":
			p.notes = target
		case "table":
			p.tables = append(p.tables, target)
		}
	}
	return nil
}
