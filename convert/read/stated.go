package read

import (
	"fmt"

	"strakebook/calc/finding"
	"strakebook/calc/source"
)

// A convention may be stated in five places, and each holds over those before it:
// in the words over a table, by the book's Settings, in a box of the new book that
// is handed back, by the guide, and on the command line. Where none states it the default does.

// stated is who states a setting, in words, and the cell where a book does.
type stated struct {
	by string
	at source.Cell
}

// Those that hold over a table's own words.
const (
	bySettings = "the book's Settings"
	byBox      = "its box on the Settings sheet"
	byGuide    = "the guide"
	byCommand  = "the command line"
)

// says is who says what of a setting.
func (s stated) says(name, value string) string {
	return fmt.Sprintf("%q is %q by %s", name, value, s.by)
}

// cells is the cell of the book that states it, if one does.
func (s stated) cells() []source.Cell {
	if s.at == (source.Cell{}) {
		return nil
	}
	return []source.Cell{s.at}
}

// state keeps who states a setting; to say that it is not stated, or not known, is
// to state nothing.
func (r *reader) state(name string, who stated) {
	s := settingNamed(r.rules.Settings(), name)
	if s == nil {
		return
	}
	if v := s.Value.String(); v == "not stated" || v == "not known" {
		who = stated{}
	}
	r.stated[s.Name] = who
}

// spoken is what the words about a table say of a convention, and those words; two
// where they say different things.
type spoken[T comparable] struct {
	is  T
	by  string
	two bool
}

// over is the convention that a table is read by where one is set beside the book's
// words: what is set holds, and where the words say otherwise that is told.
func over[T comparable](r *reader, name string, set T, who stated, words spoken[T], table source.Cell, write func(T) string) T {
	says := fmt.Sprintf("the words about the table say %q", write(words.is))
	switch {
	case words.two:
		says = "the words about the table say two things"
	case words.by == "" || words.is == set:
		return set
	}
	f := finding.Finding{Kind: ConventionTwo, Cell: table, Also: who.cells(), Reads: words.by,
		Text: fmt.Sprintf("%s, and %s: %q was used", says, who.says(name, write(set)), write(set)),
		Do:   fmt.Sprintf("look which of the two is so: strike out the words that are not, or set %q right", name)}
	if who.by == byGuide {
		f.Kind, f.Do = ConventionRead, "" // it was written to put the book's words right
	}
	r.add(f)
	return set
}
