package read

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// laidOut is a clean job as one builder lays it out: the sheets, and what stands
// in which cell.
type laidOut struct {
	job      cleanJob
	style    int // how stations' names are written
	rnd      *rand.Rand
	book     *sheet.Book
	settings string   // what Settings say of bare numbers, "" for nothing
	damaged  bool     // of the family that may lack a unit, or hold what a spreadsheet took for dates
	lacking  bool     // it does
	how      []string // what was chosen, to tell a failure by
	lengths  map[source.Cell]wanted
	angles   map[source.Cell]wantedAngle
	levels   map[source.Cell]measure.Length // by the label's place, where it is told
}

// wanted is what a cell of the offsets stands for.
type wanted struct {
	value   measure.Length
	station string
	role    hull.Role
	view    hull.View
	level   measure.Length
}

type wantedAngle struct {
	value           float64
	station, strake string
	edge            string
}

// hand is how one table's lengths are written.
type hand struct {
	name  string
	unit  string // what a heading or caption says; "" where the figures say it
	write func(measure.Length) sheet.Cell
}

func plainText(t string) sheet.Cell { return sheet.Cell{Kind: sheet.Text, Text: t} }

func plainFigures(v float64, format string) sheet.Cell {
	return sheet.Cell{Kind: sheet.Number, Number: v, Text: plainNumber(v), Format: format}
}

// hands is the ways lengths are written, in feet and inches or in metric.
func hands(metric bool) []hand {
	number := func(unit measure.Unit, format string) func(measure.Length) sheet.Cell {
		return func(l measure.Length) sheet.Cell {
			return plainFigures(float64(l)/float64(unit.Length()), format)
		}
	}
	words := func(f func(measure.Length) string) func(measure.Length) sheet.Cell {
		return func(l measure.Length) sheet.Cell { return plainText(f(l)) }
	}
	if metric {
		return []hand{
			{"millimetres", "mm", number(measure.InMillimetres, "0")},
			{"centimetres", "cm", number(measure.InCentimetres, "")},
			{"metres", "metres", number(measure.InMetres, "0.000")},
			{"marked millimetres", "", words(func(l measure.Length) string { return plainNumber(l.Millimetres()) + " mm" })},
			{"millimetres by their format", "", number(measure.InMillimetres, `0" mm"`)},
			{"comma metres", "metres", words(func(l measure.Length) string {
				return strings.ReplaceAll(fmt.Sprintf("%.3f", l.Millimetres()/1000), ".", ",")
			})},
		}
	}
	return []hand{
		{"eighths", "", words(measure.EighthsText)},
		{"eighths said", "ft-in-8ths", words(measure.EighthsText)},
		{"feet and inches", "", words(measure.FeetInchesText)},
		{"curly feet and inches", "", words(func(l measure.Length) string {
			return strings.NewReplacer("'", "\u2032", `"`, "\u2033", " 1/2", "½", " 1/4", "¼", " 3/4", "¾").Replace(measure.FeetInchesText(l))
		})},
		{"decimal inches", "inches", number(measure.InInches, "0.000")},
		{"inches as fractions", "inches", number(measure.InInches, "# ?/?")},
		{"inches as words", "inches", words(measure.InchesText)},
		{"decimal feet", "feet", number(measure.InFeet, "")},
		{"eighths turned into dates", "", dated3(monthDayYear)},
		{"eighths turned into dates, day first", "", dated3(dayMonthYear)},
		{"eighths turned into dates, year first", "", dated3(yearMonthDay)},
	}
}

// hand is one of the ways lengths are written: of those that leave them whole, but in
// a damaged book.
func (l *laidOut) hand() hand {
	all := hands(l.job.metric)
	if !l.damaged {
		all = slices.DeleteFunc(all, func(h hand) bool { return strings.Contains(h.name, "dates") })
	}
	return all[l.rnd.IntN(len(all))]
}

// dated3 writes eighths as a spreadsheet leaves them that takes what it can for
// dates in an order: those that make no date stay text.
func dated3(o order) func(measure.Length) sheet.Cell {
	return func(l measure.Length) sheet.Cell {
		feet, inches, eighths := int(l/measure.Foot), int(l%measure.Foot/measure.Inch), int(l%measure.Inch/measure.Eighth)
		year, month, day := eighths, feet, inches
		switch o {
		case dayMonthYear:
			month, day = inches, feet
		case yearMonthDay:
			year, month, day = feet, inches, eighths
		}
		c := dateCell(fmt.Sprintf("20%02d-%02d-%02d", year, month, day))
		if c.Number == 0 || l%measure.Eighth != 0 {
			return plainText(measure.EighthsText(l))
		}
		return c
	}
}

// layOut lays a job out as some builder might: one that a person reads with certainty,
// or one of a damaged book.
func layOut(seed uint64, damaged bool) *laidOut {
	rnd := rand.New(rand.NewPCG(seed, 7))
	l := &laidOut{job: drawJob(rnd), rnd: rnd, damaged: damaged, book: &sheet.Book{Name: "yard.xlsx", Kind: "xlsx"},
		lengths: map[source.Cell]wanted{}, angles: map[source.Cell]wantedAngle{}, levels: map[source.Cell]measure.Length{}}
	l.style = rnd.IntN(6)
	l.offsets()
	if rnd.IntN(2) == 0 {
		l.bevels()
	}
	if l.settings != "" {
		s := l.sheetNamed("Settings")
		for i, t := range []string{"Setting", "Value", "bare numbers", l.settings} {
			s.Set(1+i/2, 1+i%2, plainText(t))
		}
	}
	if rnd.IntN(2) == 0 {
		l.strakes()
	}
	if rnd.IntN(2) == 0 {
		l.rack()
	}
	if rnd.IntN(3) == 0 {
		l.talk()
	}
	return l
}

func (l *laidOut) say(what string, args ...any) {
	l.how = append(l.how, fmt.Sprintf(what, args...))
	l.lacking = l.lacking || strings.Contains(l.how[len(l.how)-1], "dates")
}

func (l *laidOut) one(of ...string) string { return of[l.rnd.IntN(len(of))] }

func (l *laidOut) maybe(oneIn int) bool { return l.rnd.IntN(oneIn) == 0 }

// sheetNamed is a new sheet.
func (l *laidOut) sheetNamed(name string) *sheet.Sheet {
	s := &sheet.Sheet{Name: name}
	l.book.Sheets = append(l.book.Sheets, s)
	return s
}

// board is a table being laid out on a sheet, seen with its stations across.
type board struct {
	sheet     *sheet.Sheet
	top, left int
	turned    bool
}

// place is a place of the table as one of the sheet.
func (b board) place(row, col int) (int, int) {
	if b.turned {
		row, col = col, row
	}
	return b.top + row, b.left + col
}

func (b board) set(row, col int, c sheet.Cell) {
	r, k := b.place(row, col)
	b.sheet.Set(r, k, c)
}

func (b board) cell(row, col int) source.Cell {
	r, k := b.place(row, col)
	return source.Cell{Book: "yard.xlsx", Sheet: b.sheet.Name, Row: r, Col: k}
}

// merge joins cells of one row or column of the table.
func (b board) merge(row, col, toRow, toCol int) {
	t, l := b.place(row, col)
	u, r := b.place(toRow, toCol)
	if t != u || l != r {
		b.sheet.Merged = append(b.sheet.Merged, sheet.Range{Top: t, Left: l, Bottom: u, Right: r})
	}
}

// offsets lays out the table of offsets: whole, its heights and half-breadths in
// two, or as one long list.
func (l *laidOut) offsets() {
	h := l.hand()
	l.say("offsets in %s", h.name)
	if h.unit != "" && h.unit != "ft-in-8ths" && l.maybe(4) {
		l.say("unit left to Settings")
		if l.settings = strings.TrimSuffix(h.unit, "etres"); l.damaged && l.maybe(3) {
			l.settings, l.lacking = "", true
			l.say("which do not say")
		}
		h.unit = ""
	}
	switch l.rnd.IntN(8) {
	case 0:
		l.long(h)
	case 1:
		l.say("heights on a sheet of their own")
		var heights, breadths []cleanLine
		for _, line := range l.job.lines {
			if line.view == hull.Height {
				heights = append(heights, line)
			} else {
				breadths = append(breadths, line)
			}
		}
		l.grid(l.sheetNamed("Half-breadths"), h, breadths, "Half-breadths")
		l.grid(l.sheetNamed("Heights"), h, heights, "Heights above base")
	default:
		l.grid(l.sheetNamed(l.one("Offsets", "Lines", "Sheet1")), h, l.job.lines, "")
	}
}

// stationHead is a station's name as it heads its column.
func stationHead(style int, name string) sheet.Cell {
	if name == "X" || len(name) > 4 {
		return plainText(name)
	}
	switch style {
	case 1:
		return plainText("Sta. " + name)
	case 2:
		return plainText("Mould " + name)
	case 3:
		return plainText("No. " + name)
	case 4:
		return plainText(name)
	case 5:
		return plainText("Frame " + name)
	}
	var v float64
	fmt.Sscan(name, &v)
	return plainFigures(v, "")
}

// grid lays out lines by stations.
func (l *laidOut) grid(s *sheet.Sheet, h hand, lines []cleanLine, title string) {
	b := board{sheet: s, top: 1 + l.rnd.IntN(4), left: 1 + l.rnd.IntN(3), turned: l.maybe(2)}
	if b.turned {
		l.say("stations down")
	}
	if title == "" {
		title = l.one("Table of offsets", "OFFSETS", "Table of Offsets, Lines Plan No. 3", "")
	}
	if title != "" {
		if h.unit != "" && l.maybe(2) {
			title += l.one(" in ", ", all dimensions in ", " (") + h.unit
			if strings.Contains(title, "(") {
				title += ")"
			}
			h.unit = ""
		}
		s.Set(b.top, b.left, plainText(title))
		b.top += 1 + l.rnd.IntN(2)
	}
	if l.maybe(4) {
		s.Set(b.top, b.left, plainText(l.one("Designed for the yard, drawn 1925", "Scale 1 in. to the foot", "checked by hand")))
		b.top += 1 + l.rnd.IntN(2)
	}
	form := l.rnd.IntN(3) // how a line's view is told: in its label, by titles, in a column of its own
	if b.turned && form == 1 {
		form = 2
	}
	style := l.style
	labels := 1
	if form == 2 {
		labels = 2
	}
	row := 0
	if l.maybe(3) {
		b.set(row, labels, plainText(l.one("Stations", "Station", "Moulds")))
		if l.maybe(2) {
			b.merge(row, labels, row, labels+len(l.job.stations)-1)
		}
		row++
	} else if style == 0 || style == 4 || l.maybe(2) {
		b.set(row, labels-1, plainText(l.one("Station", "Stations", "Sta.")))
	}
	for i, name := range l.job.stations {
		b.set(row, labels+i, stationHead(style, name))
	}
	row++
	if h.unit != "" && (l.maybe(3) || title == "") {
		for i := range l.job.stations {
			b.set(row, labels+i, plainText(h.unit))
		}
		row++
		h.unit = ""
	}
	if l.job.at != nil {
		unit := h.unit
		if unit != "" {
			unit = " (" + unit + ")"
		}
		b.set(row, labels-1, plainText(l.one("Distance from FP", "Position", "From stem")+unit))
		for i, at := range l.job.at {
			b.set(row, labels+i, h.write(at))
		}
		row++
	}
	if h.unit != "" {
		s.Set(max(1, b.top-1), b.left, plainText(strings.TrimSpace(text(s.At(max(1, b.top-1), b.left))+" ("+h.unit+")")))
		if b.top == 1 {
			panic("no room for the unit")
		}
	}
	l.lines(b, row, labels, form, h, lines)
}

// lines lays out the lines of a grid from a row on.
func (l *laidOut) lines(b board, row, labels, form int, h hand, lines []cleanLine) {
	l.say("views told in form %d", form)
	ordered := []cleanLine{}
	for _, view := range []hull.View{hull.HalfBreadth, hull.Height} {
		for _, line := range lines {
			if line.view == view {
				ordered = append(ordered, line)
			}
		}
	}
	merged := l.maybe(2)
	view, from := hull.View(99), 0
	gap := l.maybe(6)
	for _, line := range ordered {
		label := l.label(line)
		word := map[hull.View][]string{hull.HalfBreadth: {"Half-breadths", "HB", "Half breadth", "Half-widths"}, hull.Height: {"Heights above base", "Ht", "Height", "Heights"}}[line.view]
		switch form {
		case 0:
			label = word[1+l.rnd.IntN(2)] + " " + label
		case 1:
			if line.view != view {
				if gap && view != 99 {
					row++
				}
				b.set(row, 0, plainText(word[0]))
				row++
			}
		case 2:
			if line.view != view {
				b.set(row, 0, plainText(word[0]))
				from = row
			} else if merged {
				b.merge(from, 0, row, 0)
				if n := len(b.sheet.Merged); from < row-1 && n > 1 {
					b.sheet.Merged = append(b.sheet.Merged[:n-2], b.sheet.Merged[n-1])
				}
			}
		}
		view = line.view
		b.set(row, labels-1, plainText(label))
		for i, v := range line.values {
			if v == absent {
				switch l.rnd.IntN(3) {
				case 0:
					b.set(row, labels+i, plainText("-"))
				case 1:
					b.set(row, labels+i, plainText("..."))
				}
				continue
			}
			b.set(row, labels+i, h.write(v))
			l.lengths[b.cell(row, labels+i)] = wanted{v, l.job.stations[i], line.role, line.view, line.level}
		}
		row++
		if gap && l.maybe(4) {
			row++
		}
	}
	if l.maybe(5) {
		b.set(row, labels-1, plainText(l.one("Sectional area", "Total", "Max")))
		for i := range l.job.stations {
			b.set(row, labels+i, plainFigures(100+float64(7*i), ""))
		}
		row++
	}
	if l.maybe(4) {
		b.set(row+1, 0, plainText(l.one("Deck is to the underside of the covering board.", "Diagonals are not given", "Ask about station 3")))
	}
	if l.maybe(4) {
		b.set(row/2, labels+len(l.job.stations)+2, plainText("see the note below"))
	}
}

// label is a line's name.
func (l *laidOut) label(line cleanLine) string {
	at := measure.EighthsText(line.level)
	switch {
	case l.job.metric:
		at = plainNumber(line.level.Millimetres()) + " mm"
	case l.maybe(2):
		at = plainNumber(line.level.Inches()) + l.one(`"`, " in.", " inches")
	}
	switch line.role {
	case hull.Waterline:
		return l.one("WL ", "W.L. ", "Waterline ") + at
	case hull.Buttock:
		return l.one("Buttock ", "Butt. ") + at
	case hull.Rabbet:
		return l.one("Rabbet", "rabbet line")
	}
	return l.one("Deck", "Sheer", "Deck at side")
}

// long lays the offsets out as one long list.
func (l *laidOut) long(h hand) {
	l.say("one long list")
	b := board{sheet: l.sheetNamed("Offsets list"), top: 2 + l.rnd.IntN(3), left: 1 + l.rnd.IntN(2)}
	b.sheet.Set(1, 1, plainText("Offsets"))
	unit := ""
	if h.unit != "" {
		unit = " (" + h.unit + ")"
	}
	for i, head := range []string{l.one("Station", "Mould"), l.one("Line", "Name of line"), "View", "Offset" + unit} {
		b.set(0, i, plainText(head))
	}
	row := 1
	for i, station := range l.job.stations {
		for _, line := range l.job.lines {
			if line.values[i] == absent {
				continue
			}
			b.set(row, 0, stationHead(l.style, station))
			label := "Deck"
			if line.role != hull.Deck {
				label = (&laidOut{job: l.job, rnd: rand.New(rand.NewPCG(1, 1))}).label(line)
			}
			b.set(row, 1, plainText(label))
			b.set(row, 2, plainText(map[hull.View]string{hull.HalfBreadth: "half-breadth", hull.Height: "height"}[line.view]))
			b.set(row, 3, h.write(line.values[i]))
			l.lengths[b.cell(row, 3)] = wanted{line.values[i], station, line.role, line.view, line.level}
			row++
		}
	}
}

// bevels lays out the table of bevels.
func (l *laidOut) bevels() {
	var b board
	switch first := l.book.Sheets[0]; l.rnd.IntN(4) {
	case 0:
		l.say("bevels below")
		b = board{sheet: first, top: len(first.Rows) + 3 + l.rnd.IntN(3), left: 1 + l.rnd.IntN(3)}
	case 1:
		l.say("bevels beside")
		right := 0
		for _, row := range first.Rows {
			right = max(right, len(row))
		}
		b = board{sheet: first, top: 2 + l.rnd.IntN(4), left: right + 2 + l.rnd.IntN(3)}
	default:
		b = board{sheet: l.sheetNamed(l.one("Bevels", "Sheet2")), top: 2 + l.rnd.IntN(4), left: 1 + l.rnd.IntN(3)}
	}
	b.sheet.Set(b.top-1, b.left, plainText(l.one("Bevels in degrees off square", "Bevels, degrees")))
	for i, head := range []string{"Plank", "Edge"} {
		b.set(0, i, plainText(head))
	}
	style := 1 + l.rnd.IntN(2)
	if l.style == 5 {
		style = 5 // frames are not stations
	}
	for i, name := range l.job.stations {
		b.set(0, 2+i, stationHead(style, name))
	}
	way := l.rnd.IntN(3)
	for k, seam := range l.job.seams {
		b.set(1+k, 0, plainText(seam.strake))
		b.set(1+k, 1, plainText(seam.edge))
		for i, v := range seam.degrees {
			c := plainFigures(v, "0.00")
			switch way {
			case 1:
				c = plainText(plainNumber(v) + "°")
			case 2:
				c = plainText(strings.NewReplacer(".25", " 1/4", ".5", " 1/2", ".75", " 3/4").Replace(plainNumber(v)))
				c.Text = strings.TrimPrefix(c.Text, "0 ")
			}
			b.set(1+k, 2+i, c)
			l.angles[b.cell(1+k, 2+i)] = wantedAngle{v, l.job.stations[i], seam.strake, seam.edge}
		}
	}
}

// listed is what a list of strakes or boards may hold, in any order.
type listed struct {
	head string
	cell func(i int) sheet.Cell
}

// list lays out a list with its columns in any order.
func (l *laidOut) list(name, title string, n int, cols []listed) {
	b := board{sheet: l.sheetNamed(name), top: 1 + l.rnd.IntN(4), left: 1 + l.rnd.IntN(3)}
	if b.top > 1 {
		b.sheet.Set(b.top-1, b.left, plainText(title))
	}
	l.rnd.Shuffle(len(cols)-1, func(i, k int) { cols[i+1], cols[k+1] = cols[k+1], cols[i+1] })
	for c, col := range cols {
		b.set(0, c, plainText(col.head))
		for i := range n {
			b.set(1+i, c, col.cell(i))
		}
	}
	if l.maybe(3) {
		b.set(n+1, 0, plainText("Total"))
	}
}

// sizes is the three sizes of strakes or boards, each in a hand of its own.
func (l *laidOut) sizes(of func(i int) [3]measure.Length) []listed {
	var all []listed
	for k, word := range []string{"Thickness", "Width", "Length"} {
		h := l.hand()
		head := word
		if h.unit != "" {
			head += l.one(" (", ", ") + h.unit
			if strings.Contains(head, "(") {
				head += ")"
			}
		}
		l.say("%s in %s", word, h.name)
		all = append(all, listed{head, func(i int) sheet.Cell { return h.write(of(i)[k]) }})
	}
	return all
}

func (l *laidOut) strakes() {
	all := l.job.strakes
	cols := []listed{{l.one("Strake", "Plank"), func(i int) sheet.Cell { return plainText(all[i].name) }}}
	cols = append(cols, l.sizes(func(i int) [3]measure.Length { return [3]measure.Length{all[i].thickness, all[i].width, all[i].length} })...)
	cols = append(cols,
		listed{"Count", func(i int) sheet.Cell { return plainFigures(float64(all[i].count), "") }},
		listed{l.one("Species", "Wood"), func(i int) sheet.Cell { return plainText(all[i].species) }})
	l.list("Planking", "List of strakes", len(all), cols)
}

func (l *laidOut) rack() {
	all := l.job.boards
	cols := []listed{{l.one("Mark", "Board"), func(i int) sheet.Cell { return plainText(all[i].mark) }}}
	cols = append(cols, l.sizes(func(i int) [3]measure.Length { return [3]measure.Length{all[i].thickness, all[i].width, all[i].length} })...)
	cols = append(cols,
		listed{l.one("Count", "Qty"), func(i int) sheet.Cell { return plainFigures(float64(all[i].count), "") }},
		listed{l.one("Price", "Price each"), func(i int) sheet.Cell { return plainFigures(all[i].price, "0.00") }})
	l.list("Rack", "Lumber rack", len(all), cols)
}

// talk is a sheet of words and odd figures that are no table.
func (l *laidOut) talk() {
	s := l.sheetNamed("Notes")
	s.Set(2, 1, plainText("Called the mill on Tuesday about the larch, they have 40 boards"))
	s.Set(4, 2, plainText("Phone"))
	s.Set(4, 3, plainFigures(5551234, ""))
	s.Set(6, 1, plainText("paid"))
	s.Set(6, 2, plainFigures(125.5, "0.00"))
}
