package write

import (
	"fmt"
	"strings"

	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
	"strakebook/calc/stock"
	"strakebook/convert/sheet"
)

// cutList is every piece, in the order of the work, with the saw that each end
// goes to and its board. A line is drawn above each strake's first.
func cutList(in Input) *page {
	u := in.units()
	p := table("Cut list", "cut list", col("Mark", 11), col("Skin", 7), col("Strake", 7), col("Side", 10), col("Piece", 7), col("Species", 13),
		col("Thickness, "+unit(u), 10), col("Width, "+unit(u), 8))
	for _, c := range lengths("Length", u, 11) {
		p.add(c)
	}
	for _, c := range []column{col("Fore end", 25), col("After end", 27), col("Board", 9), col("Stick", 6), col("Note", 28)} {
		p.add(c)
	}
	p.worked(col("No.", 7), col("Joint to joint, "+unit(u), 12), col("Dressed, "+unit(u), 9), col("Scarf run, "+unit(u), 11), col("Mean width, "+unit(u), 9), col("Board feet", 9))
	p.csv = true
	p.empty = "No pieces: a list of strakes with thickness, width and length is needed."
	if len(in.Job.Strakes)+len(in.Job.Wanted) > 0 {
		p.empty = "No pieces: Warnings says what keeps those listed from being cut."
	}
	blanks := "Blanks are cross-cut square, then scarfed."
	if in.Result.Rules.Stock.ShareCuts {
		blanks = "Where the Stock sheet draws one slant between two pieces, that cut serves the scarfs of both; other ends are cross-cut square, then scarfed. A piece whose note says turned lies on its stick end for end and inside face up."
	}
	p.note("Lengths are long point to long point, both scarfs included. " + blanks + " Stick is the line of the Stock sheet the piece is cut from.")
	p.note("Lengths follow the scarf slopes and the nib on the Settings sheet; where the joints fall, and so Joint to joint, wants strakebook run again.")
	p.note("Width is one for all pieces of a strake: the widest that any of them could need wherever its joints fall.")
	p.note("Thickness is the plank's own. Where its back is worked to the hull its board is dressed thicker, is scarfed and sawn to its bevel so, and the back is worked last: the note says by how much.")
	runs, sticks, turned := in.runs(), in.sticks(), in.turned()
	p.lines(len(in.Result.Plan.Pieces), func(p *page, i int) []sheet.Cell { return pieceLine(in, p, runs, sticks[i], turned[i], i) })
	return p
}

// pieceLine is one piece.
func pieceLine(in Input, p *page, runs map[runKey]lay.Run, on int, turned bool, i int) []sheet.Cell {
	u, q := in.units(), in.Result.Plan.Pieces[i]
	board, note, stick, feet := "", "", sheet.Cell{}, sheet.Cell{}
	if q.Board >= 0 {
		board, stick = in.Result.Plan.Cuts[q.Board].Mark, whole(on)
		if turned {
			note = "turned"
		}
		feet = livef(number(float64(q.Feet()), sheet.Measure), "%s*%s*%s/144", inches(p.here("Thickness"), u), inches(p.here("Width"), u), inches(p.here("Length"), u))
	} else if len(in.Job.Rack) > 0 {
		note = "no board was found"
	}
	if q.Hollow > 0 {
		note = joined(note, fmt.Sprintf("dress to %s, work back %s once sawn", u.Small(q.Dressed()), u.Small(q.Hollow)))
	}
	if need, ok := in.pieceNeeds(q); ok && need < q.Width {
		note = joined(note, fmt.Sprintf("width is the strake's: this piece needs %s", u.Small(need)))
	}
	run := runs[keyOf(q.Skin, q.Strake, q.Side)]
	row := cells([]sheet.Cell{text(q.Mark), text(string(q.Skin)), text(q.Strake), text(sideOf(q)), text(fmt.Sprintf("%d of %d", q.Place, q.Of)), text(q.Species),
		small(q.Thickness, u), small(q.Width, u)},
		p.length("Length", q.Length, u, p.here("Joint to joint")+ends(q)+p.here("Scarf run")+[]string{"/2", "/2", ""}[scarfed(q)]),
		[]sheet.Cell{text(sawn(q, q.Fore, "fore-end saw")), text(sawn(q, q.Aft, "after-end saw")), text(board), stick, words(note), whole(i + 1),
			small(q.Length-halves(q), u), small(q.Dressed(), u), livef(small(q.Scarf, u), "%s*MAX(0,%s-2*%s)", slope(in, run), p.here("Dressed"), set("scarf nib")), small(q.Mean, u), feet})
	if q.Place == 1 {
		ruled(row)
	}
	return row
}

// pieceNeeds is the width of board that a piece got out to the sweep needs by its own
// shape, where it is laid out.
func (in Input) pieceNeeds(q stock.Piece) (measure.Length, bool) {
	if in.Result.Rules.Hull.Planking != hull.ToSweep {
		return 0, false
	}
	for _, s := range in.Result.Spiled {
		if s.Piece == q.Place && s.Skin == q.Skin && strings.EqualFold(s.Strake, q.Strake) && s.Side == q.Side {
			return in.Result.Rules.Hull.Up(s.Board), true
		}
	}
	return 0, false
}

// joined is two remarks as one; either may be "".
func joined(a, b string) string {
	if a == "" || b == "" {
		return a + b
	}
	return a + "; " + b
}

// square is the ends of a piece that is given: it has no scarfs.
const square = "square"

// sideOf is the side of the hull a piece is for; "" where it is given for neither.
func sideOf(q stock.Piece) string {
	if q.Given {
		return ""
	}
	return q.Side.String()
}

// sawn is an end and the saw it goes to: its own, whichever way the feathers point.
func sawn(q stock.Piece, e stock.End, saw string) string {
	if q.Given {
		return square
	}
	switch e {
	case stock.Butt:
		return "butt, square"
	case stock.FeatherInside:
		return "feather inside, " + saw
	case stock.FeatherOutside:
		return "feather outside, " + saw
	}
	return "hood end, fitted"
}

// scarfed is how many of a piece's ends are scarfed.
func scarfed(q stock.Piece) int {
	n := 0
	for _, e := range []stock.End{q.Fore, q.Aft} {
		if e != stock.Hood {
			n++
		}
	}
	return n
}

// halves is what a piece has beyond the middles of its joints.
func halves(q stock.Piece) measure.Length {
	switch scarfed(q) {
	case 0:
		return 0
	case 1:
		if q.Fore == stock.Hood {
			return q.Scarf - q.Scarf/2
		}
		return q.Scarf / 2
	}
	return q.Scarf
}

// ends joins the scarfs' halves to the rest of a piece's formula.
func ends(q stock.Piece) string {
	if scarfed(q) == 0 {
		return "+0*"
	}
	return "+"
}

// ruled draws a line above a row.
func ruled(row []sheet.Cell) {
	for i := range row {
		row[i].Rule = true
	}
}

// runKey is one strake on one side, whatever the case of its name.
type runKey struct {
	skin   hull.Skin
	strake string
	side   hull.Side
}

func keyOf(skin hull.Skin, strake string, side hull.Side) runKey {
	return runKey{skin, strings.ToLower(strake), side}
}

func (in Input) runs() map[runKey]lay.Run {
	all := map[runKey]lay.Run{}
	for _, r := range in.Result.Runs {
		all[keyOf(r.Skin, r.Name, r.Side)] = r
	}
	return all
}
