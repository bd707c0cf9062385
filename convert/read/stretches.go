package read

import (
	"cmp"
	"fmt"
	"regexp"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// unusable reads the stretches of a board that are not to be used, from its own
// end, in order: two columns, a column of texts such as "knots 4-0-0 to 5-2-0", or
// a remark that names what is wrong and where. Bare numbers are in the unit of the
// board's length.
func (r *reader) unusable(t *records, row int, cols map[string]column, what string) []hull.Reach {
	var all []hull.Reach
	from := r.length(t, row, "badfrom", cols, "beginning of the "+what)
	to := r.length(t, row, "badto", cols, "end of the "+what)
	switch {
	case from.OK() && to.OK():
		all = append(all, hull.Reach{From: from.Value, To: to.Value})
	case from.OK() && to.State == source.Blank, to.OK() && from.State == source.Blank:
		r.add(finding.Finding{Kind: LengthUnread, Cell: cmp.Or(from.Cell, to.Cell), Reads: from.Text + to.Text, Text: fmt.Sprintf("one end of the %s is not given", what)})
	}
	form := cols["length"].form
	if c, at, ok := t.cell(row, "bad"); ok && filled(c) && !soundText.MatchString(measure.Fold(text(c))) {
		said, fine := stretches(text(c), form)
		all = append(all, said...)
		if !fine {
			r.add(finding.Finding{Kind: LengthUnread, Cell: at, Reads: text(c),
				Text: fmt.Sprintf("%s reads %q: expected two lengths such as %s to %s", what, text(c), form.Write(4*measure.Foot), form.Write(5*measure.Foot))})
		}
	}
	if c, _, ok := t.cell(row, "note"); ok && c.Kind == sheet.Text && flawText.MatchString(strings.ToLower(c.Text)) {
		said, _ := stretches(c.Text, form)
		all = append(all, said...)
	}
	slices.SortStableFunc(all, func(a, b hull.Reach) int { return cmp.Compare(a.From, b.From) })
	return all
}

var (
	soundText = regexp.MustCompile(`(?i)^(-|–|none|no|nil|n/a|sound|clear)$`)
	flawText  = regexp.MustCompile(`\b(bad|knots?|unsound|unusable|checks?|checked|shakes?|splits?|rot|rotten|sap|sapwood|wane|waney|defects?|flaws?)\b`)
)

// stretches is every "4-0-0 to 5-2-0" of a text, whatever words stand about them;
// fine is false where it holds none, or other figures.
func stretches(text string, form measure.Form) (all []hull.Reach, fine bool) {
	fine = true
	for _, part := range strings.FieldsFunc(strings.ReplaceAll(strings.ReplaceAll(measure.Fold(text), ", ", ";"), " and ", ";"), func(c rune) bool { return c == ';' }) {
		if !strings.ContainsAny(part, "0123456789") {
			continue // words beside it
		}
		before, after, two := strings.Cut(part, " to ")
		from, okA := edgeOfText(strings.Fields(before), form, true)
		to, okB := edgeOfText(strings.Fields(after), form, false)
		if !two || !okA || !okB {
			fine = false
			continue
		}
		all = append(all, hull.Reach{From: from, To: to})
	}
	return all, fine && len(all) > 0
}

// edgeOfText is the length that some words end with, or begin with.
func edgeOfText(words []string, form measure.Form, ends bool) (measure.Length, bool) {
	for n := len(words); n > 0; n-- {
		some := words[:n]
		if ends {
			some = words[len(words)-n:]
		}
		t := strings.Join(some, " ")
		if l, err := form.Length(t); err == nil {
			return l, true
		}
		if all := measure.Notations(t); len(all) == 1 && all[0] == measure.FeetInchesEighths {
			if l, err := (measure.Form{Notation: all[0]}).Length(t); err == nil {
				return l, true
			}
		}
	}
	return 0, false
}
