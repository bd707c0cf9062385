package read

import (
	"fmt"
	"regexp"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// readGrid reads one table of lines by stations as what it is, and ticks it off.
func (r *reader) readGrid(t stationTable) {
	guide, _ := r.guideFor(t.page, t.capRow(), t.capCol(), t.capRow()+1, t.capCol()+1)
	kind := r.gridKind(&t)
	if g := plainWords(guide.Table); g == "offsets" || g == "bevels" {
		kind = g
	}
	if kind == "bevels" {
		r.bevels(t)
	} else {
		r.offsets(t, guide)
	}
	last := t.head
	for _, row := range append(append([]int{t.position}, t.lines...), t.head) {
		last = max(last, row)
	}
	for row := t.head; row <= last; row++ {
		for _, col := range t.labelCols() {
			t.tick(row, col)
		}
		for col := t.left; col <= t.right; col++ {
			t.tick(row, col)
		}
	}
}

// gridKind tells a table of bevels from a table of offsets: by its caption, its
// labels, and how its figures are written.
func (r *reader) gridKind(t *stationTable) string {
	bevels, offsets := 0, 0
	if r.words.has(t.caption, "bevels") {
		bevels += 3
	}
	if r.words.has(t.caption, "offsets", "breadths", "heights") {
		offsets += 3
	}
	for _, row := range t.lines {
		switch r.lineMeaning(t.label(row)) {
		case "strake", "edge", "along":
			bevels++
		case "":
		default:
			offsets++
		}
		for col := t.left; col <= t.right; col++ {
			c := t.see(row, col)
			if c.Kind == sheet.Text {
				if strings.ContainsAny(measure.Fold(c.Text), "°") {
					bevels++
				} else if n := measure.Notations(c.Text); len(n) > 0 && n[0] == measure.FeetInchesEighths {
					offsets++
				}
			}
			if strings.Contains(c.Format, "°") {
				bevels++
			}
		}
	}
	if bevels > offsets {
		return "bevels"
	}
	return "offsets"
}

// stationsOf is the stations of a table with their positions where it has them.
func (r *reader) stationsOf(t *stationTable, form measure.Form) (stations []hull.Station, cols []int) {
	var positions []sheet.Cell
	if t.position > 0 {
		for col := t.left; col <= t.right; col++ {
			positions = append(positions, t.see(t.position, col))
		}
	}
	posForm := form
	if len(positions) > 0 {
		e := weigh(positions)
		said, _ := saysUnit(t.label(t.position))
		posForm, _, _ = decide(e, said, r.bare)
		if posForm.Unit == measure.NoUnit && posForm.Notation == measure.Decimal {
			posForm.Unit = form.Unit
		}
	}
	for col := t.left; col <= t.right; col++ {
		c := t.see(t.head, col)
		if c.Kind == sheet.Empty {
			if r.emptyColumn(t, col) {
				continue
			}
		}
		name, _, _, _ := r.stationName(c)
		if name == "" {
			name = text(c)
		}
		s := hull.Station{Name: name, Cell: t.place(t.head, col), Transom: r.words.of(c) == "transom"}
		if t.position > 0 {
			at, unread := length(t.see(t.position, col), posForm, t.place(t.position, col))
			if unread != nil {
				r.unreadable("position of station "+name, at, unread)
			}
			s.At = at
		}
		stations = append(stations, s)
		cols = append(cols, col)
	}
	r.space(stations)
	return stations, cols
}

func (r *reader) emptyColumn(t *stationTable, col int) bool {
	for _, row := range t.lines {
		if t.see(row, col).Kind != sheet.Empty {
			return false
		}
	}
	return true
}

// space places stations by the spacing that Settings give, where the table gives
// no positions and the stations' numbers are all known.
func (r *reader) space(stations []hull.Station) {
	spacing := r.rules.Hull.StationSpacing
	if spacing == 0 || len(stations) == 0 || stations[0].At.State != source.Blank {
		return
	}
	repeated := map[string]bool{}
	at := make([]measure.Length, len(stations))
	byNumber := true
	for i, s := range stations {
		m := stationText.FindStringSubmatch(strings.ToLower(s.Name))
		byNumber = byNumber && m != nil && !repeated[s.Name]
		repeated[s.Name] = true
		if m != nil {
			at[i] = spacing.Times(numberOf(m[1]))
			byNumber = byNumber && (i == 0 || at[i] > at[i-1])
		}
	}
	for i := range stations {
		if !byNumber {
			at[i] = spacing * measure.Length(i)
		}
		stations[i].At = source.Is(at[i])
	}
}

// offsets reads a table of offsets.
func (r *reader) offsets(t stationTable, guide sheet.GuideRow) {
	said, _ := saysUnit(t.caption)
	if corner, ok := saysUnit(t.cornerText()); ok {
		said = corner
	}
	if g, ok := guideForm(guide); ok {
		said = g
	}
	var cells []sheet.Cell
	for _, row := range t.lines {
		if r.summary(t.label(row)) {
			continue
		}
		for col := t.left; col <= t.right; col++ {
			cells = append(cells, t.see(row, col))
		}
	}
	e := weigh(cells)
	form, why, open := decide(e, said, r.bare)
	table := source.Table{Table: "offsets", Book: t.book.Name, Sheet: t.sheet.Name, Notation: form.Notation.String(), Evidence: why}
	o := hull.Offsets{Form: form, Cell: t.place(t.head, max(1, t.left-1))}
	if open {
		r.add(finding.Finding{Kind: UnitOpen, Cell: o.Cell, Text: "the offsets are numbers without a unit: their fairness is checked, and nothing is measured from them"})
		o.Form.Unit = measure.Fractions
	}
	o.Fractions = o.Form.Unit == measure.Fractions
	o.Surface = r.surface(t.caption, o.Cell)
	stations, cols := r.stationsOf(&t, o.Form)
	o.Stations = stations
	dates := r.datesOf(&t, o.Form, cols)
	block, last := "", ""
	for _, row := range r.rowsInOrder(&t) {
		if b, ok := t.blocks[row]; ok {
			block = b
			continue
		}
		label := t.label(row)
		if r.summary(label) {
			continue
		}
		if measure.IsDitto(firstWord(label)) {
			label = ditto(last, label)
		}
		last = label
		line := r.line(label, block, t.place(row, max(1, t.left-1)), o.Form, o)
		for _, col := range cols {
			line.Values = append(line.Values, r.offset(&t, row, col, o, line, dates))
		}
		o.Lines = append(o.Lines, line)
	}
	var values []measure.Length
	for _, l := range o.Lines {
		for _, v := range l.Values {
			if v.OK() {
				values = append(values, v.Value)
			}
			table.Digest += v.Text + ";"
		}
	}
	o.Resolution = resolution(o.Form, e, values)
	table.Stations, table.Lines = len(o.Stations), len(o.Lines)
	table.Unit = o.Form.Unit.String()
	if o.Form.Notation == measure.FeetInchesEighths || o.Form.Notation == measure.OldPrint {
		table.Unit = "feet"
	}
	table.Range = t.whole()
	table.Evidence = append(table.Evidence, "stations run "+map[bool]string{false: "across", true: "down"}[t.turned])
	r.tables = append(r.tables, table)
	r.job.Offsets = append(r.job.Offsets, o)
}

// rowsInOrder is the rows of figures and the title rows among them.
func (r *reader) rowsInOrder(t *stationTable) []int {
	isLine := map[int]bool{}
	last := t.head
	for _, row := range t.lines {
		isLine[row] = true
		last = row
	}
	var all []int
	for row := t.head + 1; row <= last; row++ {
		if _, block := t.blocks[row]; block || isLine[row] {
			all = append(all, row)
		}
	}
	return all
}

// whole is the table's range, labels included.
func (t *stationTable) whole() string {
	left := t.left
	if cols := t.labelCols(); len(cols) > 0 {
		left = cols[0]
	}
	last := t.head
	for _, row := range append([]int{t.position}, t.lines...) {
		last = max(last, row)
	}
	if t.turned {
		return grid{page: t.page}.block(left, t.head, t.right, last)
	}
	return t.block(t.head, left, last, t.right)
}

func (t *stationTable) cornerText() string {
	var all []string
	for _, col := range t.labelCols() {
		all = append(all, text(t.see(t.head, col)))
	}
	return strings.Join(all, " ")
}

func guideForm(g sheet.GuideRow) (measure.Form, bool) {
	form, ok := bareUnit(g.Unit)
	if !ok {
		form, ok = saysUnit(g.Unit)
	}
	for n := measure.FeetInchesEighths; n <= measure.Decimal; n++ {
		if plainWords(g.Notation) == plainWords(n.String()) {
			form.Notation, ok = n, true
		}
	}
	return form, ok && (form.Unit != measure.NoUnit || form.Notation != measure.NoNotation)
}

func (r *reader) summary(label string) bool {
	m, _ := r.words.first(label)
	return m == "summary"
}

func firstWord(s string) string {
	if f := strings.Fields(s); len(f) > 0 {
		return f[0]
	}
	return ""
}

// ditto puts the words of the label above in place of a ditto mark.
func ditto(last, label string) string {
	head, _, _ := strings.Cut(last, " ")
	return head + strings.TrimPrefix(label, firstWord(label))
}

var levelText = regexp.MustCompile(`\d[^a-z]*(?:in|ins|inches|ft|feet|mm|cm|m)?\.?`)

// line makes a line of the table from its label and the title over it.
func (r *reader) line(label, block string, at source.Cell, form measure.Form, o hull.Offsets) hull.Line {
	l := hull.Line{Name: label, Cell: at}
	marked := ""
	switch {
	case r.words.has(label, "heights"):
		marked = "heights"
	case r.words.has(label, "breadths"):
		marked = "breadths"
	}
	switch m := r.lineMeaning(label); m {
	case "rabbet":
		l.Role, l.View = hull.Rabbet, hull.Height
	case "keel":
		l.Role, l.View = hull.Keel, hull.Height
	case "chine":
		l.Role = hull.Chine
	case "diagonal":
		l.Role, l.View = hull.DiagonalLine, hull.Diagonal
	case "buttock":
		l.Role, l.View = hull.Buttock, hull.Height
	case "sheer":
		l.Role, l.View = hull.Deck, hull.Height
	case "deck":
		l.Role = hull.Deck
	case "waterline", "breadths", "heights", "":
		l.Role = hull.Waterline
	}
	if l.Role != hull.Buttock && l.Role != hull.DiagonalLine {
		switch {
		case marked == "heights" || marked == "" && block == "heights":
			l.View = hull.Height
			if l.Role == hull.Waterline {
				l.Role = hull.OtherLine
			}
		case marked == "breadths" || block == "breadths":
			l.View = hull.HalfBreadth
		}
	}
	if l.Role == hull.Waterline || l.Role == hull.Buttock {
		l.At = r.level(label, form, at, o)
		if l.Role == hull.Waterline && r.lineMeaning(label) == "" && !l.At.OK() && strings.ContainsFunc(label, func(c rune) bool { return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' }) && marked == "" && block == "" {
			l.Role = hull.OtherLine
		}
	}
	if l.Name == "" {
		l.Name = "line in row " + fmt.Sprint(at.Row)
	}
	return l
}

// level is the height of a waterline or the distance out of a buttock that its
// label gives: a length with its unit, or in the table's own notation where the
// label is nothing else.
func (r *reader) level(label string, form measure.Form, at source.Cell, o hull.Offsets) source.Reading[measure.Length] {
	none := source.Reading[measure.Length]{Cell: at}
	_, rest := r.words.first(label)
	if m, again := r.words.first(rest); m != "" {
		rest = again
	}
	for _, t := range []string{measure.Fold(label), rest} {
		if t == "" {
			continue
		}
		if measure.MarkedUnit(t) != measure.NoUnit {
			if v, err := measure.ParseLength(t, measure.NoUnit); err == nil {
				return source.Reading[measure.Length]{Value: v, State: source.Given, Text: t, Cell: at}
			}
		}
		if n := measure.Notations(t); len(n) > 0 && n[0] == measure.FeetInchesEighths {
			if v, err := (measure.Form{Notation: measure.FeetInchesEighths}).Length(t); err == nil {
				return source.Reading[measure.Length]{Value: v, State: source.Given, Text: t, Cell: at}
			}
		}
	}
	if found := levelText.FindString(strings.ToLower(measure.Fold(label))); found != "" && measure.MarkedUnit(found) != measure.NoUnit {
		if v, err := measure.ParseLength(found, measure.NoUnit); err == nil {
			return source.Reading[measure.Length]{Value: v, State: source.Given, Text: found, Cell: at}
		}
	}
	if v, err := (measure.Form{Unit: form.Unit, Notation: measure.Decimal}).Length(measure.Fold(label)); err == nil && form.Unit != measure.NoUnit {
		return source.Reading[measure.Length]{Value: v, State: source.Given, Text: label, Cell: at}
	}
	return none
}

// offset reads one figure of the table.
func (r *reader) offset(t *stationTable, row, col int, o hull.Offsets, l hull.Line, dates dated) source.Reading[measure.Length] {
	c, at := t.see(row, col), t.place(row, col)
	if c.Kind == sheet.Date || c.Kind == sheet.Time {
		return r.date(c, at, o.Form, dates, fmt.Sprintf("%s of %s", l.View, l.Name))
	}
	v, unread := length(c, o.Form, at)
	if unread != nil {
		r.unreadable(fmt.Sprintf("%s of %s", l.View, l.Name), v, unread)
	}
	if c.Struck != "" {
		r.add(finding.Finding{Kind: TextStruck, Cell: at, Reads: c.Struck, Text: fmt.Sprintf("%q is struck out and was taken as withdrawn", c.Struck)})
	}
	return v
}
