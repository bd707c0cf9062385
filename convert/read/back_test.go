package read

import (
	"slices"
	"strings"
	"testing"

	"strakebook/calc"
	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// decided is a book of offsets with a Warnings sheet of ours beside them.
func decided(where, suggests, decision, code string) []*sheet.Book {
	offsets := sheetOf("Offsets", `
Table of offsets in ft-in-8ths||||
Half-breadths|Station 0|Station 1|Station 2|Station 3
WL 1-0-0|0-1-0|1-2-0|2-0-4|2-4-0
WL 2-0-0|0-2-0|1-x-0|2-2-4|2-6-0`)
	ours := sheetOf("Warnings (2)", `
No.|How bad|Where|What|Reads|Suggests|What to do|Decision|Code`)
	for i, v := range []string{"1", "warning", where, "what", "1-x-0", suggests, "do", decision, code} {
		if c := cellOf("text:" + v); v != "" {
			ours.Set(2, i+1, c)
		}
	}
	b := bookOf(offsets, ours)
	b[0].Names = []sheet.Name{{Name: sheet.OursPrefix + "4", Sheet: "Warnings (2)", Range: sheet.Range{Top: 1, Left: 1, Bottom: 1, Right: 1}}}
	return b
}

func TestDecisionsAreHonoured(t *testing.T) {
	const foot = measure.Foot
	for _, c := range []struct {
		name, suggests, decision, code string
		want                           measure.Length // 0 for left unread
	}{
		{"a figure", "", "1-3-0", "length-unread", foot + 3*measure.Inch},
		{"what is suggested", "1-4-0 (the inches) or 1-5-0", "take", "length-unread", foot + 4*measure.Inch},
		{"what is suggested about", "about 1-4-0", "take", "length-unread", foot + 4*measure.Inch},
		{"the figure among words", "the same figure as station 8: perhaps copied; about 1-4-0", "take", "length-unread", foot + 4*measure.Inch},
		{"words alone", "the same figure as station 8: perhaps copied", "take", "length-unread", 0},
		{"nothing suggested", "", "take", "length-unread", 0},
		{"one of two that are as likely", "1-4-0 or 4-1-0", "take", "length-date-unread", 0},
		{"the only one", "1-4-0", "take", "length-date-unread", foot + 4*measure.Inch},
		{"what was decided before", "1-4-0", "", "decision-taken", foot + 4*measure.Inch},
		{"left as it is", "1-4-0", "leave", "length-unread", 0},
		{"nothing", "1-4-0", "", "length-unread", 0},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := read(t, decided("Offsets!C4", c.suggests, c.decision, c.code), Options{})
			if len(r.job.Offsets) != 1 {
				t.Fatalf("%d tables of offsets", len(r.job.Offsets))
			}
			v := r.job.Offsets[0].Lines[1].Values[1]
			if v.Value != c.want || v.OK() != (c.want != 0) {
				t.Errorf("read %v (%d), want %v", v.Value, v.State, c.want)
			}
			taken := r.found.Count(finding.Note) > 0 && has(r.found, "decision-taken", v.Cell)
			if taken != (c.want != 0) {
				t.Errorf("the decision is reported: %v", taken)
			}
		})
	}
}

// A decision is not followed where its cell holds another figure since, however it
// is written, and that is told.
func TestDecisionOfAnotherFigure(t *testing.T) {
	for _, c := range []struct {
		reads string
		cell  sheet.Cell
		still bool
		row   string // and column, where the Warnings sheet names them
	}{
		{"1-x-0", sheet.Cell{Kind: sheet.Text, Text: "1-x-0"}, true, "WL 2-0-0 / 0-2-0 / Station 1"},
		{"1-x-0", sheet.Cell{Kind: sheet.Text, Text: "1-x-0"}, false, "WL 3-0-0 / 0-2-0 / Station 1"},
		{"", sheet.Cell{}, true, "wl 2-0-0 / 0-2-0 / Station 1"},
		{"", sheet.Cell{}, false, "WL 2-0-0 / 0-2-0 / Station 2"},
		{"1-x-0", sheet.Cell{Kind: sheet.Text, Text: " 1-X-0"}, true, ""},
		{"1-x-0", sheet.Cell{Kind: sheet.Text, Text: "1-2-0"}, false, ""},
		{"3-8-0", sheet.Cell{Kind: sheet.Text, Text: "3' 8\""}, true, ""},
		{"3-8-0", sheet.Cell{Kind: sheet.Text, Text: "3-8-2"}, false, ""},
		{"86", sheet.Cell{Kind: sheet.Number, Number: 86, Text: "86.0"}, true, ""},
		{"86.1", sheet.Cell{Kind: sheet.Number, Number: 86.0625, Text: "86.0625"}, true, ""},
		{"86", sheet.Cell{Kind: sheet.Number, Number: 93.75, Text: "93.75"}, false, ""},
		{"", sheet.Cell{}, false, ""}, // of which blank it was cannot be told
		{"", sheet.Cell{Kind: sheet.Number, Number: 94.5, Text: "94.5"}, false, ""},
	} {
		book := decided("Offsets!C4", "", "1-3-0", "length-unread")
		book[0].Sheets[0].Set(4, 3, c.cell)
		book[0].Sheets[1].Set(2, 5, sheet.Cell{Kind: sheet.Text, Text: c.reads})
		if c.row != "" {
			book[0].Sheets[1].Set(1, 10, cellOf("text:Row and column"))
			book[0].Sheets[1].Set(2, 10, cellOf("text:"+c.row))
		}
		r := read(t, book, Options{})
		at := source.Cell{Book: book[0].Name, Sheet: "Offsets", Row: 4, Col: 3}
		if has(r.found, "decision-taken", at) != c.still || has(r.found, "decision-idle", at) == c.still {
			t.Errorf("decided of %q in %q, and %q stands there: %v", c.reads, c.row, c.cell.Text, r.codes(finding.Note))
		}
	}
}

// A decision follows its row and column to where they stand now, if they named one cell
// alone when it was written and name one cell now, which reads the same; never to another.
func TestDecisionFollowsItsRow(t *testing.T) {
	const wl2, key = "WL 2-0-0|0-2-0|1-x-0|2-2-4|2-6-0", "WL 2-0-0 / 0-2-0 / Station 1"
	for _, c := range []struct {
		what, row, reads, word string
		rows                   []string // below the first line, the decided one of which was the first
		to                     int      // the row it is followed to; 0: it is not
	}{
		{"moved down", key, "1-x-0", "1-3-0", []string{"WL 1-6-0|0-1-4|1-x-0|2-1-4|2-5-0", wl2}, 5},
		{"moved far, figures as they were", key, "1-x-0", "1-3-0", []string{"WL 1-6-0|0-1-4|1-2-4|2-1-4|2-5-0", "WL 1-9-0|0-1-6|1-2-6|2-1-6|2-5-6", wl2}, 6},
		{"twice now", key, "1-x-0", "1-3-0", []string{"WL 1-6-0|0-1-4|1-x-0|2-1-4|2-5-0", wl2, wl2}, 0},
		{"twice then", key + " (one of 2)", "1-x-0", "1-3-0", []string{"WL 1-6-0|0-1-4|1-x-0|2-1-4|2-5-0", wl2}, 0},
		{"one of very many then", key + " (one of many)", "1-x-0", "1-3-0", []string{"WL 1-6-0|0-1-4|1-x-0|2-1-4|2-5-0", wl2}, 0},
		{"reads otherwise", key, "1-y-0", "1-3-0", []string{"WL 1-6-0|0-1-4|1-x-0|2-1-4|2-5-0", wl2}, 0},
		{"another line in its place", key, "1-x-0", "1-3-0", []string{"WL 3-0-0|0-2-0|1-x-0|2-2-4|2-6-0"}, 0},
		{"where it was", key, "1-x-0", "1-3-0", []string{wl2}, 4},
		{"a blank", key, "", "1-3-0", []string{"WL 1-6-0|0-1-4|1-2-4|2-1-4|2-5-0", "WL 2-0-0|0-2-0||2-2-4|2-6-0"}, 5},
		{"a blank filled since", key, "", "1-3-0", []string{"WL 1-6-0|0-1-4||2-1-4|2-5-0", wl2}, 0},
		{"a word", key, "1-x-0", "keep", []string{"WL 1-6-0|0-1-4|1-x-0|2-1-4|2-5-0", wl2}, 5},
	} {
		book := decided("Offsets!C4", "", c.word, "length-unread")
		more := sheetOf("", "\n"+strings.Join(c.rows, "\n"))
		book[0].Sheets[0].Rows = append(book[0].Sheets[0].Rows[:3:3], more.Rows...)
		ours := book[0].Sheets[1]
		ours.Set(2, 5, sheet.Cell{Kind: sheet.Text, Text: c.reads})
		ours.Set(1, 10, cellOf("text:Row and column"))
		ours.Set(2, 10, cellOf("text:"+c.row))
		r := read(t, book, Options{})
		at := source.Cell{Book: book[0].Name, Sheet: "Offsets", Row: c.to, Col: 3}
		followed := has(r.found, "decision-taken", at)
		if c.word == "keep" {
			followed = slices.ContainsFunc(r.job.Decisions, func(d calc.Decision) bool { return d.Cell == at && d.Stands() })
		}
		if followed != (c.to > 0) || has(r.found, "decision-moved", at) != (c.to > 4) || len(r.job.Decisions) > 1 || c.to == 0 && len(r.job.Decisions) > 0 {
			t.Errorf("%s: followed to row %d %v; %v", c.what, c.to, followed, r.codes(finding.Note))
		}
	}
}

// A decision on a cell that a later edit of the book has taken away harms nothing.
func TestDecisionOnNoCell(t *testing.T) {
	for _, where := range []string{"Offsets!ZZ900", "Gone!C4", "C4", "!", "Offsets!"} {
		r := read(t, decided(where, "", "1-3-0", "length-unread"), Options{})
		if len(r.job.Offsets) != 1 {
			t.Errorf("%s: %d tables of offsets", where, len(r.job.Offsets))
		}
	}
}

// A decision that is words, or on words, is not put in place of them, and is said.
func TestDecisionOnWords(t *testing.T) {
	for _, c := range [][2]string{{"Offsets!A1", "1-3-0"}, {"Offsets!C4", "ask the designer"}, {"Gone!C4", "1-3-0"}, {"", "see Bob"}, {"Offsets", "see Bob"}} {
		r := read(t, decided(c[0], "", c[1], "unit-open"), Options{})
		if n := r.found.Count(finding.Warning); n != 1 || r.job.Offsets[0].Lines[1].Values[1].OK() {
			t.Errorf("%v: %d warnings: %v", c, n, r.codes(finding.Note))
		}
	}
}

// has says that a finding of a code lies at a cell.
func has(all finding.List, code string, at source.Cell) bool {
	for _, f := range all {
		if f.Code == code && f.Cell == at {
			return true
		}
	}
	return false
}
