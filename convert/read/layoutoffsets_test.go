package read

import (
	"fmt"
	"math/rand/v2"
	"strings"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

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
