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
// board's length. Where one cannot be read the board is unsure: nothing is cut of it.
func (r *reader) unusable(t *records, row int, cols map[string]column, what string) (all []hull.Reach, unsure bool) {
	from := r.length(t, row, "badfrom", cols, "beginning of the "+what)
	to := r.length(t, row, "badto", cols, "end of the "+what)
	switch {
	case from.OK() && to.OK():
		all = append(all, hull.Reach{From: from.Value, To: to.Value})
	case from.OK() && to.State == source.Blank, to.OK() && from.State == source.Blank:
		unsure = true
		r.add(finding.Finding{Kind: LengthUnread, Cell: cmp.Or(from.Cell, to.Cell), Reads: from.Text + to.Text, Text: fmt.Sprintf("one end of the %s is not given: the board is left out", what)})
	case from.State == source.Unread || to.State == source.Unread:
		unsure = true // said where it was read
	}
	form := cols["length"].form
	if c, at, ok := t.cell(row, "bad"); ok && filled(c) && !soundText.MatchString(measure.Fold(text(c))) {
		said, over, fine := stretches(text(c), form)
		all = append(all, said...)
		if fine {
			r.flaws(over, what, at, form)
		} else {
			unsure = true
			expected := fmt.Sprintf("two lengths such as %s to %s", form.Write(4*measure.Foot), form.Write(5*measure.Foot))
			if len(said) == 0 && isSound(text(c)) {
				expected = "where the board is not to be used, and this is where it is sound"
			}
			r.add(finding.Finding{Kind: LengthUnread, Cell: at, Reads: text(c), Do: "write from where to where the flaw lies, from the board's own end",
				Text: fmt.Sprintf("%s reads %q: expected %s; the board is left out", what, text(c), expected)})
		}
	}
	if c, at, ok := t.cell(row, "note"); ok && c.Kind == sheet.Text {
		said, over := []hull.Reach(nil), parts(c.Text)
		if flawText.MatchString(strings.ToLower(c.Text)) {
			said, over, _ = stretches(c.Text, form)
		}
		all = append(all, said...)
		if isSound(c.Text) && stretchText.MatchString(measure.Fold(c.Text)) && len(all) == 0 {
			r.add(finding.Finding{Kind: FlawUnplaced, Cell: at, Reads: c.Text,
				Text: fmt.Sprintf("%s: %q tells where the board is sound and not where it is otherwise, and pieces may be laid over the rest", what, c.Text)})
		}
		if !from.OK() || !to.OK() { // else it says what lies there
			r.flaws(over, what, at, form)
		}
	}
	slices.SortStableFunc(all, func(a, b hull.Reach) int { return cmp.Compare(a.From, b.From) })
	return all, unsure
}

var (
	goodText    = regexp.MustCompile(`\b(good|sound|usable|clear|clean|fine|free)\b`)
	butText     = regexp.MustCompile(`\b(not|no|but|except|excepting|save)\b`)
	stretchText = regexp.MustCompile(`\d['"]? to \d`)
	soundText   = regexp.MustCompile(`(?i)^(-|–|none|no|nil|n/a|sound|clear|clean|good|ok|okay)$`)
	noFlaw      = regexp.MustCompile(`\b(no|not|nil|none|free|without|clear)\b`)
	shapeText   = regexp.MustCompile(`\b(stains?|stained|crook|crooked|bowed|cup|cupped|twisted|warped|wind|pith|worm|wormholes?|decay|decayed|resin pockets?|pitch pockets?)\b`)
	flawText    = regexp.MustCompile(`\b(bad|knots?|unsound|unusable|checks?|checked|shakes?|splits?|rot|rotten|sap|sapwood|wane|waney|defects?|flaws?)\b`)
)

// isSound says that words tell where a board is good, and of nothing wrong with it.
func isSound(part string) bool {
	t := strings.ToLower(part)
	return goodText.MatchString(t) && !butText.MatchString(t) && !flawText.MatchString(t) && !shapeText.MatchString(t)
}

// flaws tells of what is said to be wrong with a board and not from where to where.
func (r *reader) flaws(said []string, what string, at source.Cell, form measure.Form) {
	var all []string
	for _, part := range said {
		t := strings.ToLower(part)
		if (flawText.MatchString(t) || shapeText.MatchString(t)) && !noFlaw.MatchString(t) {
			all = append(all, strings.TrimSpace(part))
		}
	}
	if len(all) > 0 {
		reads := strings.Join(all, "; ")
		r.add(finding.Finding{Kind: FlawUnplaced, Cell: at, Reads: reads,
			Text: fmt.Sprintf("%s: %q does not say from where to where, and pieces may be laid over it", what, reads),
			Do:   fmt.Sprintf("write from where to where, from the board's own end: knots %s to %s; nothing where it matters to no piece", form.Write(4*measure.Foot), form.Write(5*measure.Foot))})
	}
}

// parts is what a text says, one by one.
func parts(text string) []string {
	return strings.FieldsFunc(strings.NewReplacer(", ", ";", " and ", ";").Replace(measure.Fold(text)), func(c rune) bool { return c == ';' })
}

// stretches is every "4-0-0 to 5-2-0" of a text, whatever words stand about them, and
// what it says over; fine is false where it holds none, or other figures.
func stretches(text string, form measure.Form) (all []hull.Reach, over []string, fine bool) {
	fine = true
	for _, part := range parts(text) {
		before, after, two := strings.Cut(part, " to ")
		from, okA := edgeOfText(strings.Fields(before), form, true)
		to, okB := edgeOfText(strings.Fields(after), form, false)
		if two && okA && okB && !isSound(part) {
			all = append(all, hull.Reach{From: from, To: to})
			continue
		}
		over = append(over, part)
		fine = fine && !strings.ContainsAny(part, "0123456789") // else words beside it
	}
	return all, over, fine && len(all) > 0
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

// FlawUnplaced is what is wrong with a board, and not where.
var FlawUnplaced = &finding.Kind{
	Code: "flaw-unplaced", Severity: finding.Warning, Title: "flaw of a board that has no place",
	Why:    "Pieces are laid clear of the stretches that are given: of a flaw without one nothing is known, and one may be laid over it.",
	Remedy: "write from where to where it lies, from the board's own end",
}
