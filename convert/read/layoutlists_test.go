package read

import (
	"strings"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

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
