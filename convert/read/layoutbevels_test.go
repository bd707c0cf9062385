package read

import (
	"strings"
)

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
