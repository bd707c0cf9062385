// Package finding holds what there is to say about the builder's books:
// findings are data, made by the checks and shown elsewhere. It knows nothing
// of the trades that find, nor of the sheets and screens that show.
package finding

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/source"
)

// Severity says how bad a finding is.
type Severity uint8

// The three severities.
const (
	Note    Severity = iota // nothing to do
	Warning                 // look at it; the tables were worked out
	Error                   // a value or a table was left out because of it
)

// String is the severity's word.
func (s Severity) String() string { return [...]string{"note", "warning", "error"}[s] }

// Kind is one kind of finding, declared once beside the check that makes it.
// Codes are noun-fault in lower case and are never renamed or used again.
type Kind struct {
	Code     string
	Severity Severity
	Title    string // what it is, a few words
	Why      string // why it matters, whole sentences
	Remedy   string // what to do, in the imperative, in the yard's words
}

// Finding is one thing found at one place.
type Finding struct {
	*Kind
	Cell     source.Cell
	Text     string // one lower-case clause, values quoted as written, no place, no full stop
	Reads    string // the value as written
	Suggests string // what the neighbours say, "" where nothing is suggested
	Do       string // what to do here, where Kind.Remedy is too general
	Also     []source.Cell
	Decision string // the builder's word on it that holds, as it stands on the Warnings sheet
}

// ToDo is the remedy to show: the finding's own, else its kind's.
func (f Finding) ToDo() string { return cmp.Or(f.Do, f.Remedy) }

// Kept is a warning that the builder lets stand: a note of what it was, of the
// same code and at the same cell, so that his word finds it again.
func (f Finding) Kept() Finding {
	kind := *f.Kind
	kind.Severity = Note
	f.Kind, f.Decision = &kind, "keep"
	f.Text = "kept as decided: " + f.Text
	f.Do = "nothing, or write undo to be warned again"
	return f
}

// List is findings in the order they were found.
type List []Finding

// Sort puts the worst first, then by place, keeping the order of equals.
func (l List) Sort() {
	slices.SortStableFunc(l, func(a, b Finding) int {
		return cmp.Or(
			cmp.Compare(b.Severity, a.Severity),
			cmp.Compare(a.Cell.Book, b.Cell.Book),
			cmp.Compare(a.Cell.Sheet, b.Cell.Sheet),
			cmp.Compare(a.Cell.Row, b.Cell.Row),
			cmp.Compare(a.Cell.Col, b.Cell.Col),
			cmp.Compare(a.Code, b.Code),
		)
	})
}

// Count is how many findings are of the severity.
func (l List) Count(s Severity) int {
	n := 0
	for _, f := range l {
		if f.Severity == s {
			n++
		}
	}
	return n
}

// Tally is how many there are of each severity, in words: "1 error, 0 warnings,
// 4 notes".
func (l List) Tally() string {
	words := make([]string, 0, 3)
	for _, s := range []Severity{Error, Warning, Note} {
		n, plural := l.Count(s), "s"
		if n == 1 {
			plural = ""
		}
		words = append(words, fmt.Sprintf("%d %s%s", n, s, plural))
	}
	return strings.Join(words, ", ")
}
