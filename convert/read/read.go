// Package read turns sheets into a job: it finds the builder's tables by what
// they hold, decides how each is written, and reads every value with the cell
// it came from. What cannot be read with certainty is a finding, never a guess.
// It knows sheets and the trades' nouns, but no files.
package read

import (
	"fmt"
	"strings"

	"strakebook/calc"
	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// Options says how books are to be read.
type Options struct {
	Set      []string         // name=value, over what the book says
	Guide    []sheet.GuideRow // over what is found
	Headings string           // the words a heading may bear: templates/headings.csv
}

// reader is one reading of some books.
type reader struct {
	words  words
	rules  calc.Rules
	pages  []*page
	job    calc.Job
	tables []source.Table
	found  finding.List
	guide  []sheet.GuideRow
	bare   measure.Unit // of a bare number, by Settings
}

// Books reads books as one job. It returns the tables found, those that the
// guide says to leave among them.
func Books(books []*sheet.Book, o Options) (calc.Job, []source.Table, finding.List) {
	r := &reader{words: newWords(o.Headings), rules: calc.DefaultRules(), guide: o.Guide}
	for _, b := range books {
		for _, s := range b.Sheets {
			switch {
			case ours(b, s.Name):
				r.back(newPage(b, s))
			default:
				r.pages = append(r.pages, newPage(b, s))
			}
		}
	}
	for _, p := range r.pages {
		r.guided(p)
		r.records(p, settingsTable)
		r.records(p, guideTable)
	}
	r.set(o.Set)
	r.bare = r.rules.Yard.Bare
	for _, p := range r.pages {
		r.guided(p)
		r.records(p, strakesTable)
		r.records(p, rackTable)
		r.grids(p)
	}
	for _, p := range r.pages {
		r.leftovers(p)
	}
	r.twice()
	r.checkGuide()
	r.job.Rules = r.rules
	r.scaled()
	return r.job, r.tables, r.found
}

// ours says that a sheet is one of those we write.
func ours(b *sheet.Book, name string) bool {
	for _, n := range b.Names {
		if n.Sheet == name && strings.HasPrefix(n.Name, sheet.OursPrefix) {
			return true
		}
	}
	return false
}

func (r *reader) add(f finding.Finding) { r.found = append(r.found, f) }

// twice finds tables that say the same thing over again.
func (r *reader) twice() {
	seen := map[string]source.Table{}
	for _, t := range r.tables {
		if t.Skip || (t.Table != "offsets" && t.Table != "strakes") {
			continue
		}
		key := fmt.Sprint(t.Table, "|", t.Lines, "|", t.Stations, "|", t.Digest)
		if first, again := seen[key]; again {
			r.add(finding.Finding{Kind: TableTwice, Cell: source.Cell{Book: t.Book, Sheet: t.Sheet},
				Text: fmt.Sprintf("the %s at %s hold the same figures as those at %s!%s", t.Table, t.Range, first.Sheet, first.Range)})
			continue
		}
		seen[key] = t
	}
}

// unreadable reports a length that could not be read.
func (r *reader) unreadable(what string, v source.Reading[measure.Length], err *measure.ReadError) {
	kind := LengthUnread
	suggests := ""
	switch err.Fault {
	case measure.InchesOver, measure.EighthsOver, measure.TooFar:
		kind = LengthImpossible
	case measure.TwoWays:
		kind = LengthTwoWays
		for i, w := range err.Ways {
			if i > 0 {
				suggests += " or "
			}
			suggests += measure.FeetInchesText(w)
		}
	}
	r.add(finding.Finding{Kind: kind, Cell: v.Cell, Reads: v.Text, Suggests: suggests,
		Text: fmt.Sprintf("%s reads %q: expected %s", what, err.Text, err.Expected)})
}
