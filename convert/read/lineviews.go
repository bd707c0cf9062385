package read

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// onlyView says that words name a view and nothing else: HT, half-breadth.
func (r *reader) onlyView(words string) bool {
	_, said := r.viewOf(words)
	return said && r.withoutViews(words) == ""
}

// withoutViews is a label without the words that name its view.
func (r *reader) withoutViews(label string) string {
	t := strings.ToLower(measure.Fold(label))
	hits := r.words.in(label)
	toks := tokens(label)
	for _, h := range hits {
		if h.meaning != "breadths" && h.meaning != "heights" {
			continue
		}
		// Words as they are in the label: between its points and hyphens.
		for _, w := range toks[h.from:h.to] {
			if at := strings.Index(t, w); at >= 0 {
				t = t[:at] + t[at+len(w):]
			}
		}
	}
	return strings.Trim(strings.Join(strings.Fields(strings.Trim(t, ".:,-() ")), " "), ".:,() ")
}

// viewOf is the view that words name.
func (r *reader) viewOf(words string) (hull.View, bool) {
	for _, h := range r.words.in(words) {
		switch h.meaning {
		case "heights":
			return hull.Height, true
		case "breadths":
			return hull.HalfBreadth, true
		case "diagonal":
			return hull.Diagonal, true
		}
	}
	// Deck H, Sheer Y, z rabbet: a letter beside the name of a line of its own.
	if t := tokens(words); len(t) > 1 && r.words.has(words, "deck", "sheer", "rabbet", "keel", "chine") {
		for _, w := range []string{t[0], t[len(t)-1]} {
			switch w {
			case "h", "z":
				return hull.Height, true
			case "y":
				return hull.HalfBreadth, true
			}
		}
	}
	return hull.HalfBreadth, false
}

// captionView is the view that a table's caption gives all of its lines, and the words
// that do: none where it names two.
func (r *reader) captionView(t *stationTable) (view hull.View, said bool, by string) {
	for _, words := range append(t.ownWords(), t.caption...) {
		if t.headsFigures(words) {
			continue // the heights that the lines lie at
		}
		heights, breadths := r.words.has(words, "heights"), r.words.has(words, "breadths")
		switch {
		case heights && breadths:
			return hull.HalfBreadth, false, ""
		case heights:
			return hull.Height, true, words
		case breadths:
			return hull.HalfBreadth, true, words
		}
	}
	return hull.HalfBreadth, false, ""
}

// headsFigures says that words head a column of labels that holds figures.
func (t *stationTable) headsFigures(words string) bool {
	return slices.ContainsFunc(t.labels, func(col int) bool {
		return text(t.title(t.head, col)) == words && slices.ContainsFunc(t.lines, func(row int) bool {
			c := t.see(row, col)
			return c.Kind == sheet.Number || c.Kind == sheet.Text && len(measure.Notations(c.Text)) > 0
		})
	})
}

// heightHeads is the headings of the columns that hold the heights at which lines
// lie.
func (r *reader) heightHeads(t *stationTable) []string {
	var all []string
	for _, c := range t.corner() {
		if r.words.has(c.Text, "heights") && t.headsFigures(text(c)) {
			all = append(all, text(c))
		}
	}
	return all
}

// viewsAsked reports the lines that may be heights or half-breadths. They are
// kept apart from the hull: only their smoothness is looked at.
func (r *reader) viewsAsked(lines []tableLine) {
	for i := range lines {
		l := &lines[i]
		if !l.open {
			continue
		}
		r.add(finding.Finding{Kind: ViewOpen, Cell: l.line.Cell, Reads: l.line.Name,
			Text: fmt.Sprintf("%q does not say whether it is heights or half-breadths", l.line.Name)})
	}
}
