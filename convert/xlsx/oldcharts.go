package xlsx

import (
	"bytes"
	"slices"
	"strings"

	"strakebook/convert/sheet"
)

// dropDrawings takes the drawings of our own sheets, and the charts on them, out
// of a book of ours that is written on again: the library takes out the sheets
// alone, and a book cut often would grow by them each time.
func (a *archive) dropDrawings(s *structure) error {
	for _, p := range s.sheets {
		if !s.ours(p.name) {
			continue
		}
		rels, err := a.relations(p.part)
		if err != nil {
			return err
		}
		for _, n := range rels {
			if n.kind != "drawing" || n.outside {
				continue
			}
			charts, err := a.relations(n.target)
			if err != nil {
				return err
			}
			for _, c := range charts {
				if c.kind == "chart" && !c.outside {
					a.drop(c.target)
				}
			}
			a.drop(relsOf(n.target))
			a.drop(n.target)
		}
	}
	return nil
}

// ours says that a sheet is one that we wrote.
func (s *structure) ours(name string) bool {
	return slices.ContainsFunc(s.defined, func(n definedName) bool {
		return strings.HasPrefix(n.name, sheet.OursPrefix) && strings.HasPrefix(n.refersTo, Quote(name)+"!")
	})
}

// drop takes a part out, and its entry in the list of types.
func (a *archive) drop(name string) {
	name, ok := a.find(name)
	if !ok {
		return
	}
	delete(a.parts, name)
	a.names = slices.DeleteFunc(a.names, func(n string) bool { return n == name })
	types, ok := a.find(contentTypes)
	if !ok {
		return
	}
	data := a.parts[types]
	for _, at := range typeEntry.FindAllIndex(data, -1) {
		if bytes.Contains(data[at[0]:at[1]], []byte(`PartName="/`+name+`"`)) {
			a.parts[types] = slices.Concat(data[:at[0]], data[at[1]:])
			return
		}
	}
}
