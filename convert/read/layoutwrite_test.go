package read

import (
	"fmt"
	"math/rand/v2"
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

// talk is a sheet of words and odd figures that are no table.
func (l *laidOut) talk() {
	s := l.sheetNamed("Notes")
	s.Set(2, 1, plainText("Called the mill on Tuesday about the larch, they have 40 boards"))
	s.Set(4, 2, plainText("Phone"))
	s.Set(4, 3, plainFigures(5551234, ""))
	s.Set(6, 1, plainText("paid"))
	s.Set(6, 2, plainFigures(125.5, "0.00"))
}
