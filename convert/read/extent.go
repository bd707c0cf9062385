package read

import (
	"regexp"
	"slices"
	"strings"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// gapRows is how many blank rows a table may have inside it.
const gapRows = 2

// extent takes in the rows that belong to the names: figures, titles and units
// among them, up to the names or headings of another table, or to more blank
// rows than a table has inside it.
func (r *reader) extent(t *stationTable) {
	t.labels = t.labelColumns()
	rows, _ := t.size()
	if edge, ok := t.edgeOf(t.head, t.left); ok {
		rows = min(rows, edge.Bottom)
	}
	blank, titled := 0, false
	for row := t.head + 1; row <= rows; row++ {
		figures, others, units := t.count(row)
		label := t.label(row)
		switch {
		case figures+others+units == 0 && label == "":
			if blank++; blank > gapRows {
				return
			}
			continue
		case label != "" && figures > 0 && r.positions(t, label, row):
		case r.repeats(t, row):
			if titled || r.newTitle(t, row) {
				return // another table of the same stations
			}
			t.again = append(t.again, row)
		case r.heads(t, row):
			return
		case figures == 0 && others == 0 && units > 0:
			t.units = append(t.units, row)
		case figures == 0:
			words := t.words(row)
			block := r.block(words)
			switch {
			case block != "":
				t.blocks[row] = words
				titled = true
			case others > 1, blank > 0 && len(t.lines) > 0 && r.titles(words):
				return // the words of what comes next
			case r.words.has(label, "waterline", "buttock") && strings.ContainsAny(label, "0123456789") && len(label) < 20:
				t.lines = append(t.lines, row) // a line whose figures are all blank
			default:
				if blank++; blank > gapRows { // a remark is no bridge to what stands beyond
					return
				}
				continue
			}
		case others > figures, blank > 0 && len(t.lines) > 0 && r.lineMeaning(label) == "" && (figures*2 < len(t.names) || r.allLines(t)):
			return // of a table beside
		default:
			t.lines = append(t.lines, row)
			titled = false
		}
		blank = 0
	}
}

// allLines says that every line so far is named as a line of the hull.
func (r *reader) allLines(t *stationTable) bool {
	return !slices.ContainsFunc(t.lines, func(row int) bool { return r.lineMeaning(t.label(row)) == "" && !r.sums(t, row) })
}

// count is how many figures, other words and units a row holds under the names.
func (t *stationTable) count(row int) (figures, others, units int) {
	for _, col := range t.between(row, t.left, t.right) {
		c := t.see(row, col)
		switch {
		case !filled(c):
		case c.Kind != sheet.Text || figure(c.Text):
			figures++
		default:
			if _, ok := bareUnit(c.Text); ok {
				units++
			} else {
				others++
			}
		}
	}
	return figures, others, units
}

// figure says that a text may be a figure of a table, readable or not.
func figure(t string) bool {
	if measure.IsDash(t) || measure.IsDitto(t) || t == "?" || len(measure.Notations(t)) > 0 {
		return true
	}
	if _, err := measure.ParseAngle(t); err == nil {
		return true
	}
	t = measure.Fold(t)
	if len(t) > 14 || !strings.ContainsAny(t, "0123456789'\"") {
		return false
	}
	letters := 0
	for _, c := range t {
		if c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' {
			letters++
		}
	}
	return letters <= 2
}

// repeats says that a row is the names over again.
func (r *reader) repeats(t *stationTable, row int) bool {
	same := 0
	for _, n := range t.names {
		c := t.see(row, n.col)
		if again, ok := r.stationName(c); ok && again.text == n.text {
			same++
		} else if filled(c) {
			return false
		}
	}
	return same*10 >= len(t.names)*9
}

// newTitle says that the words beside or just over a row of repeated names make
// it the head of another table.
func (r *reader) newTitle(t *stationTable, row int) bool {
	if named := t.block(t.swap(row, t.left)); named != "" && named != t.block(t.swap(t.head, t.left)) {
		return true // the book gives the two a name each
	}
	for up := row; up >= row-1 && up > t.head; up-- {
		if up < row && slices.Contains(t.lines, up) {
			break
		}
		for _, col := range t.labels {
			c := t.see(up, col)
			if c.Kind == sheet.Text && text(c) != text(t.see(t.head, col)) && (r.titles(c.Text) || r.block(c.Text) != "") {
				return true
			}
		}
		for _, col := range t.between(up, t.left, t.right) {
			if c := t.see(up, col); up < row && c.Kind == sheet.Text && r.titles(c.Text) {
				return true
			}
		}
	}
	return false
}

// titles says that words are the title of a table.
func (r *reader) titles(t string) bool {
	return r.words.has(t, "offsets", "bevels", "strake", "rack", "setting", "girths", "breadths", "heights", "width")
}

// heads says that a row is the headings of a list of records, or the names of
// another table of stations.
func (r *reader) heads(t *stationTable, row int) bool {
	meanings, names, filledCells := 0, 0, 0
	left := t.left
	if len(t.labels) > 0 {
		left = t.labels[0]
	}
	last := name{}
	rising := true
	for _, col := range t.between(row, left, t.right) {
		c := t.see(row, col)
		filledCells++
		if m := r.words.of(c); m != "" && m != "summary" && !slices.Contains(lineMeanings, m) {
			meanings++
		}
		if n, ok := r.stationName(c); ok && n.numbered && c.Kind == sheet.Text && n.worded {
			rising = rising && (names == 0 || n.number > last.number)
			names, last = names+1, n
		}
	}
	return meanings >= 3 && meanings*2 >= filledCells || names >= fewestNames && rising && names*2 > filledCells
}

// positions takes a row of station positions or spacings, which its label names.
func (r *reader) positions(t *stationTable, label string, row int) bool {
	if t.position == 0 && len(t.lines) == 0 && (r.distances(label) || fromEnd(label) && !r.words.has(label, lineMeanings...)) {
		t.position = row
		return true
	}
	hits := r.words.in(label)
	if len(hits) == 0 || r.words.has(label, lineMeanings...) {
		return false
	}
	for _, h := range hits {
		switch {
		case h.meaning == "spacing" && t.spacing == 0:
			t.spacing = row
			return true
		case h.meaning == "position" && t.position == 0:
			t.position = row
			return true
		}
	}
	return false
}

// distanceText is the label of a row that says how far the stations lie from one of
// them: Distance, Dist. from Fr 2, From sta. 0.
var distanceText = regexp.MustCompile(`^(?:dist(?:ance)?s?\.?(?: aft)?(?: (?:from|of) (.+))?|(?:from|aft of) (.+))$`)

// distances says that a label is such a one; above the first line it is of all.
func (r *reader) distances(label string) bool {
	t, _, _ := strings.Cut(inBrackets.ReplaceAllString(strings.ToLower(measure.Fold(label)), ""), ",")
	m := distanceText.FindStringSubmatch(strings.Trim(t, " :"))
	if m == nil {
		return false
	}
	if m[1]+m[2] == "" {
		return true
	}
	_, ok := r.nameIn(sheet.Cell{Kind: sheet.Text, Text: m[1] + m[2]})
	return ok
}

// block is the view that a title row within a table gives the lines below it.
func (r *reader) block(label string) string {
	t := tokens(label)
	hits := r.words.in(label)
	if len(hits) > 0 && hits[0].meaning == "diagonal" && hits[0].from == 0 {
		if anyAngle.MatchString(strings.ToLower(measure.Fold(label))) {
			return hits[0].meaning // and where those below it run
		}
	}
	if len(t) == 0 || len(t) > 9 {
		return ""
	}
	view, known := "", 0
	for _, h := range hits {
		switch h.meaning {
		case "breadths", "heights", "diagonal":
			if view == "" {
				view = h.meaning
			}
			known += h.to - h.from
		case "waterline", "buttock":
			if view == "" && len(hits) == 1 {
				view = map[string]string{"waterline": "breadths", "buttock": "heights"}[h.meaning]
			}
			known += h.to - h.from
		}
	}
	for _, w := range t {
		if digit(w[0]) {
			return ""
		}
		if slices.Contains(unitTokens, w) {
			known++
		}
	}
	if 2*known < len(t) {
		return "" // a remark
	}
	return view
}
