package read

import (
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

// tableLine is a line of the offsets on its way from the sheet.
type tableLine struct {
	line                  hull.Line
	row                   int
	part                  int
	said                  measure.Form // its own unit
	height                string       // its height, in a column headed so; "" for none
	angle                 string       // a diagonal's angle, likewise
	over                  string       // the title over it
	viewBy                string       // the words that say its view
	heightHead, angleHead string       // the headings of those columns
	open                  bool         // nothing says whether these are heights or half-breadths
}

// linesOf is the lines of a table of offsets, as their labels and titles name
// them.
func (r *reader) linesOf(t *stationTable) []tableLine {
	isLine := map[int]bool{}
	last := t.head
	for _, row := range t.lines {
		isLine[row], last = true, row
	}
	var all []tableLine
	block, before := "", ""
	carried := map[int]string{}
	for row := t.head + 1; row <= last; row++ {
		if b, ok := t.blocks[row]; ok {
			block = b
			continue
		}
		if !isLine[row] {
			continue
		}
		l := r.labelled(t, row, carried, before)
		if r.sums(t, row) {
			r.summarised(t, row)
			continue
		}
		before = l.line.Name
		r.sense(&l, block, t)
		all = append(all, l)
	}
	return all
}

// labelled puts a line's label together from its label columns: titles that hold
// for the lines below are carried down, ditto marks stand for the words above.
func (r *reader) labelled(t *stationTable, row int, carried map[int]string, before string) tableLine {
	l := tableLine{row: row, line: hull.Line{Cell: t.place(row, t.labelAt())}}
	var parts []string
	blank := 0
	for _, col := range t.labels {
		c := t.title(row, col)
		word := text(c)
		if c.Kind == sheet.Empty {
			blank = col
		} else {
			carried[-col] = word
		}
		switch {
		case c.Kind == sheet.Empty:
			word = carried[col]
		case r.titleColumn(t, col):
			carried[col] = word
		}
		if word == "" {
			continue
		}
		if form, ok := bareUnit(word); ok && c.Kind == sheet.Text && !measure.IsDash(word) {
			l.said = form
			continue
		}
		head := text(t.title(t.head, col))
		if r.words.has(head, "bevels") && isAngle(c, word) {
			l.angle, l.angleHead = strings.ToLower(measure.Fold(word)), head
			continue
		}
		if c.Kind == sheet.Number || len(measure.Notations(word)) > 0 {
			if r.words.has(head, "heights") {
				l.height, l.heightHead = word, head
				continue
			}
			if m := r.lineMeaning(head); m == "waterline" || m == "buttock" {
				word = head + " " + word
			}
		}
		parts = append(parts, word)
	}
	if len(parts) == 1 && blank > 0 && carried[-blank] != "" && r.onlyView(parts[0]) {
		parts = []string{carried[-blank], parts[0]} // HB and HT under one name, written over the first
	}
	if len(parts) == 0 && l.height != "" {
		parts = []string{l.height}
	}
	name := r.undittoed(strings.Join(parts, " "), before)
	l.line.Name = name
	if form, ok := headUnit(unlevelled(name)); ok {
		l.said = form
	}
	return l
}

// undittoed is a label with the words of the one above in place of its ditto
// marks: those that name the view, else the first.
func (r *reader) undittoed(label, before string) string {
	words := strings.Fields(label)
	n := 0
	for n < len(words) && measure.IsDitto(words[n]) {
		n++
	}
	if n == 0 || before == "" {
		return label
	}
	above := strings.Fields(before)
	k := 1
	for k < len(above) && k < 4 && !r.words.has(strings.Join(above[:k], " "), "heights", "breadths", "diagonal") {
		k++
	}
	if !r.words.has(strings.Join(above[:k], " "), "heights", "breadths", "diagonal") {
		k = 1
	}
	return strings.Join(append(above[:k:k], words[n:]...), " ")
}

// titleColumn says that a column of labels holds nothing but titles that hold for
// the lines below them.
func (r *reader) titleColumn(t *stationTable, col int) bool {
	if len(t.labels) < 2 {
		return false
	}
	blanks := false
	for _, row := range t.lines {
		c := t.see(row, col)
		if c.Kind == sheet.Empty {
			blanks = true
		} else if c.Kind != sheet.Text || r.block(c.Text) == "" {
			return false
		}
	}
	return blanks
}

// levelText is a place within a label: the 6 in. of "WL 6 in.".
var levelText = regexp.MustCompile(`(\d+ )?\d[\d./]*[ -]?(inches|inch|ins|in|feet|ft|mm|cm|m|'|")?\.?(\s|$|\))`)

// unlevelled is a label without the places named in it, whose units are not
// those of the figures.
func unlevelled(label string) string {
	return levelText.ReplaceAllString(strings.ToLower(measure.Fold(label)), " ")
}

// sense makes a line what its label and the title over it say.
func (r *reader) sense(l *tableLine, block string, t *stationTable) {
	label := l.line.Name
	l.over = block
	if form, ok := saysUnit(block); ok && l.said == (measure.Form{}) {
		l.said = form
	}
	role, fixed := r.role(label)
	if line, of, ok := r.titled(t.titlesOver()); ok && len(t.lines) <= 2 && r.viewAlone(label) {
		role, fixed, l.line.Name = of, line, line+": "+label
	}
	l.line.Role, l.line.View = role, hull.HalfBreadth
	if l.height != "" && role == hull.Waterline {
		return // it lies at a height: a waterline's half-breadths
	}
	view, said := r.viewOf(label)
	l.viewBy = label
	if !said {
		view, said = r.viewOf(block)
		l.viewBy = block
	}
	if !said {
		view, said, l.viewBy = r.captionView(t)
	}
	if (role == hull.Keel || role == hull.Rabbet) && ofSidings(label) {
		view, said = hull.HalfBreadth, true
	}
	l.line.View = view
	switch {
	case role == hull.DiagonalLine:
		l.line.View = hull.Diagonal
	case role == hull.Buttock || role == hull.Keel && !said:
		l.line.View = hull.Height
	case fixed == "" && said && view == hull.Height && r.words.has(block, "heights", "buttock"):
		l.line.Role = hull.Buttock // a distance out under the title of the heights
	case fixed == "" && said && view == hull.Diagonal:
		l.line.Role = hull.DiagonalLine
	case role == hull.Waterline && said && view == hull.Height:
		l.line.Role = hull.OtherLine // heights of a waterline: no line of the hull
	case role == hull.Waterline:
		l.line.View = hull.HalfBreadth
	case !said:
		// Kept apart from the hull: only its smoothness is looked at.
		l.open = true
		l.line.Role, l.line.View = hull.OtherLine, hull.Height
	}
	if label == "" {
		l.line.Name = fmt.Sprintf("line in row %d", l.line.Cell.Row)
	}
}

// viewAlone says that a label names a view, or what heights are above, and no line.
func (r *reader) viewAlone(label string) bool {
	_, said := r.viewOf(label)
	return said && baseText.MatchString(r.withoutViews(label))
}

var baseText = regexp.MustCompile(`^((above|from|over|to)( the)? (base ?line|base|bl|lwl|datum)|(in|out) from( the)? (centre|center) ?line)?$`)

// titled is the one line of the hull that the nearest title over a table names, for a
// table that is of that line alone.
func (r *reader) titled(titles []string) (line string, role hull.Role, ok bool) {
	for _, title := range titles {
		var all []string
		for _, m := range []string{"rabbet", "keel", "chine", "sheer", "deck"} {
			if r.words.has(title, m) {
				all = append(all, m)
			}
		}
		if len(all) == 2 && all[0] == "rabbet" && slices.Contains(tokens(title), "profile") {
			all = all[:1] // the profile of the rabbet is no other line
		}
		switch {
		case len(all) > 1 || slices.Contains(tokens(title), "plan") || r.words.has(title, "waterline", "buttock", "diagonal"):
			return "", 0, false
		case len(all) == 1:
			role, _ := r.role(all[0])
			return all[0], role, true
		}
	}
	return "", 0, false
}

// titlesOver is the words that stand over a table, without what the book calls it and
// the name of its sheet.
func (t *stationTable) titlesOver() []string { return t.caption[:min(t.titles, len(t.caption))] }

// role is the role that a label gives its line, and the word for it; a label
// that is a place and nothing else is a waterline's unless a title says more.
func (r *reader) role(label string) (hull.Role, string) {
	m := r.lineMeaning(label)
	switch m {
	case "rabbet":
		return hull.Rabbet, m
	case "keel":
		return hull.Keel, m
	case "chine":
		return hull.Chine, m
	case "diagonal":
		return hull.DiagonalLine, m
	case "buttock":
		return hull.Buttock, m
	case "sheer", "deck":
		return hull.Deck, m
	case "waterline":
		return hull.Waterline, m
	}
	if placeOnly(r.withoutViews(label)) {
		return hull.Waterline, ""
	}
	return hull.OtherLine, "other"
}

// placeOnly says that words are a place and nothing else: 6 in., 0.25, 2a, DWL.
func placeOnly(words string) bool {
	return words == "" || placeText.MatchString(words) || len(measure.Notations(words)) > 0 || measure.MarkedUnit(words) != measure.NoUnit
}

var placeText = regexp.MustCompile(`^\d+ ?[ab]?$`)

// sums says that a row is the table's own summary: one of its labels is.
func (r *reader) sums(t *stationTable, row int) bool {
	return slices.ContainsFunc(t.labels, func(col int) bool {
		m, _ := r.words.first(text(t.see(row, col)))
		return m == "summary"
	})
}

// summarised notes a row of the table's own sums, which is left.
func (r *reader) summarised(t *stationTable, row int) {
	cells := []source.Cell{}
	for _, col := range t.between(row, t.left, t.right) {
		cells = append(cells, t.place(row, col))
	}
	if len(cells) > 0 {
		r.add(finding.Finding{Kind: SummaryLeft, Cell: cells[0], Text: fmt.Sprintf("%q is the table's own summary and no line of it: %s left", t.label(row), plural(len(cells), "figure was", "figures were"))})
	}
}
