package write

import (
	"fmt"

	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// usedAt is what one table was read by.
type usedAt struct {
	value string
	at    source.Cell
}

// used is what each table of the books was read by, for the conventions that a
// table's own words may state: what is set holds over them.
func (in Input) used(name string) []usedAt {
	var all []usedAt
	r := in.Result.Rules
	for _, b := range in.Job.Bevels {
		switch name {
		case "bevels read":
			all = append(all, usedAt{b.Reads(r.Bevel).String(), b.Cell})
		case "lifted in station plane":
			all = append(all, usedAt{map[bool]string{true: "yes", false: "no"}[b.Lifted(r.Bevel)], b.Cell})
		}
	}
	for _, o := range in.Job.Offsets {
		if name == "offsets are to" {
			all = append(all, usedAt{o.To(r.Hull).String(), o.Cell})
		}
	}
	return all
}

// convention is a setting's value as the tables were read by it, and where it comes
// from; apart is the tables, each with its own, where they differ.
func (in Input) convention(name, value, from string) (now, by string, apart []usedAt) {
	all := in.used(name)
	for _, u := range all {
		if u.value != all[0].value {
			return "by table, below", "the books' own words", all
		}
	}
	if len(all) == 0 || all[0].value == value {
		return value, from, nil
	}
	return all[0].value, fmt.Sprintf("the books' own words or figures, %s", all[0].at), nil
}

// conventionRows is a line for each table that was read by a value of its own.
func (p *page) conventionRows(name string, apart []usedAt) {
	for _, u := range apart {
		p.line(text(name+", "+u.at.String()), text(u.value), sheet.Cell{}, sheet.Cell{}, words("what this table was read by"), words("the book's own words or figures"))
	}
}
