package write

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"strakebook/calc/lay"
	"strakebook/calc/measure"
	"strakebook/calc/stock"
	"strakebook/convert/sheet"
)

// stick is what is cut from one lane of a board, from its own end on.
type stick struct {
	on         []int            // indexes into Plan.Pieces
	from       []measure.Length // where each begins along the board
	turned     []bool           // each lies with its after end nearer the board's own end
	saved      []measure.Length // by each on the slanted cut it shares with the one before it
	used, left measure.Length
	follows    bool // the formulas on the sheet come to these figures
}

// onStick is a lane's pieces with what they take and leave.
func onStick(in Input, c stock.Cut, lane int) stick {
	r := in.Result.Rules.Stock
	var s stick
	for i, k := range c.Pieces {
		if c.Lane[i] == lane {
			s.on, s.from = append(s.on, k), append(s.from, c.From[i])
			s.turned, s.saved = append(s.turned, c.Turned[i]), append(s.saved, c.Saved[i])
			s.used += in.Result.Plan.Pieces[k].Length - c.Saved[i]
		}
	}
	s.used += r.CrossKerf * measure.Length(max(0, len(s.on)-1))
	s.left = c.Board.Length.Value - r.EndTrim - s.used
	s.follows = len(c.Board.Bad) == 0
	for _, b := range c.Board.Bad {
		s.left -= b.To - b.From
	}
	s.left = max(s.left, 0)
	return s
}

// marks is the pieces as they come off, a turned one said to be.
func (s stick) marks(in Input) []string {
	var all []string
	for i, k := range s.on {
		all = append(all, marked(&in.Result.Plan.Pieces[k], s.turned[i]))
	}
	return all
}

func marked(q *stock.Piece, turned bool) string {
	if turned {
		return q.Mark + " turned"
	}
	return q.Mark
}

// saving is what the i-th piece of a stick saves on the cut it shares with the one
// before it, as a formula: the slope, kerf and nib are those of the Settings sheet.
func (d *drawer) saving(s stick, i int) string {
	q := &d.in.Result.Plan.Pieces[s.on[i]]
	n := slope(d.in, d.runs[keyOf(q.Skin, q.Strake, q.Side)])
	return fmt.Sprintf("MAX(0,%s*(%s-4*%s)+%s*(1-SQRT(%s*%s+1)))", n, figure(inUnits(q.Dressed(), d.in.units())), set("scarf nib"), set("cross-cut kerf"), n, n)
}

// takes is what a stick's pieces take, as a formula.
func (d *drawer) takes(s stick, p, list *page) string {
	formula := fmt.Sprintf("SUMIFS(%s,%s,%s)", list.span("Length"), list.span("Stick"), p.here("Stick"))
	if n := len(s.on) - 1; n > 0 {
		formula += fmt.Sprintf("+%d*%s", n, set("cross-cut kerf"))
	}
	for i := range s.on {
		if s.saved[i] > 0 {
			formula += "-" + d.saving(s, i)
		}
	}
	return formula
}

// mostOfStick is how many letters of a drawing go into its column.
const mostOfStick = 61

// scale is how much of a stick one letter of its drawing stands for, in inches or
// millimetres: as little as lets the longest board into the column.
func (in Input) scale() (each float64, of measure.Length) {
	each, step, unit := 4.0, 2.0, measure.Inch
	if in.units() == measure.StyleMM {
		each, step, unit = 100, 50, measure.Millimetre
	}
	longest := measure.Length(0)
	for _, b := range in.Job.Rack {
		longest = max(longest, b.Length.Value)
	}
	for float64(longest) > mostOfStick*each*float64(unit) {
		each += step
	}
	return each, measure.Length(each * float64(unit))
}

func (in Input) scaleWords() string {
	each, _ := in.scale()
	return fmt.Sprintf("a letter %v %s", each, unit(in.units()))
}

// drawer draws sticks to one scale.
type drawer struct {
	in       Input
	runs     map[runKey]lay.Run
	stations []measure.Length
	each     float64        // inches or millimetres a letter
	of       measure.Length // the same
}

func (in Input) drawer() *drawer {
	d := &drawer{in: in, runs: in.runs(), stations: in.stationsAt()}
	d.each, d.of = in.scale()
	return d
}

// stationsAt is where the stations lie, by the offsets or a list of them.
func (in Input) stationsAt() []measure.Length {
	var all []measure.Length
	list := slices.Clone(in.Job.Stations)
	for _, o := range in.Job.Offsets {
		list = append(list, o.Stations...)
	}
	for _, s := range list {
		if s.At.OK() {
			all = append(all, s.At.Value)
		}
	}
	return all
}

func (d *drawer) letters(l measure.Length) int {
	return int(math.Round(float64(l) / float64(d.of)))
}

// drawn is a stick drawn to scale: each piece its length in letters, dots for what
// is left. One slant is drawn where two pieces share the cut.
func (d *drawer) drawn(s stick, p, list *page) sheet.Cell {
	shown, formula := "", `""`
	for i, k := range s.on {
		q := &d.in.Result.Plan.Pieces[k]
		near, far := leaning(q, s.turned[i])
		less, ends := "", 2
		if s.saved[i] > 0 {
			near, less, ends = "", "-"+d.saving(s, i), 1
		}
		n := max(1, d.letters(q.Length-s.saved[i])-ends)
		along := d.along(q, s.turned[i], s.saved[i], n)
		shown += near + padded(along, n) + far
		formula += fmt.Sprintf(`&"%s"&LEFT("%s"&REPT("-",199),MAX(1,ROUND((INDEX(%s,MATCH(%d,%s,0))%s)/%v,0)-%d))&"%s"`,
			near, strings.ReplaceAll(along, `"`, `""`), list.span("Length"), k+1, list.span("No."), less, d.each, ends, far)
	}
	if n := d.letters(s.left) - 1; n > 0 {
		shown += strings.Repeat(".", n) + "|"
	}
	formula += fmt.Sprintf(`&IF(ROUND(%s/%v,0)>1,REPT(".",ROUND(%s/%v,0)-1)&"|","")`, p.here("Left"), d.each, p.here("Left"), d.each)
	return live(sheet.Cell{Kind: sheet.Text, Text: shown, Style: sheet.Stick}, formula)
}

// leans is how an end is drawn, seen on the upper edge with the outside face up: a
// square, butted or hood end as a bar, a scarf as it slants.
func leans(e, aft stock.End) string {
	switch e {
	case stock.Hood, stock.Butt:
		return "|"
	case aft:
		return "/"
	}
	return `\`
}

// leaning is how a piece's ends are drawn as it lies; a half turn leaves a slant
// leaning as it was.
func leaning(q *stock.Piece, turned bool) (near, far string) {
	near, far = leans(q.Fore, stock.FeatherInside), leans(q.Aft, stock.FeatherOutside)
	if turned {
		return far, near
	}
	return near, far
}

// along is what is drawn along a piece between its ends, in n letters: its mark,
// with t for turned where there is no room for the word, dashes, and a cross where a station lies. What it saves is drawn with the piece
// before it.
func (d *drawer) along(q *stock.Piece, turned bool, saved measure.Length, n int) string {
	mark := []rune(marked(q, turned))
	if turned && len(mark) > n {
		mark = []rune(q.Mark + " t")
	}
	run, ok := d.runs[keyOf(q.Skin, q.Strake, q.Side)]
	if !ok || q.Given || q.Place > len(run.Joints)+1 {
		return string(mark)
	}
	from := run.Start
	if q.Place > 1 {
		from += run.Joints[q.Place-2] - run.Scarf/2
	}
	line := slices.Clone(mark)
	for _, x := range d.stations {
		if x <= from || x >= from+q.Length {
			continue
		}
		x -= from
		if turned {
			x = q.Length - x
		}
		at := d.letters(x - saved)
		if saved == 0 {
			at-- // the first letter is the piece's end
		}
		if at < len(mark) || at >= n {
			continue
		}
		for len(line) <= at {
			line = append(line, '-')
		}
		line[at] = '+'
	}
	return string(line)
}

// standing is a stick drawn piece by piece where each lies on its board, the bad
// stretches crossed out; it follows nothing.
func (d *drawer) standing(s stick, c stock.Cut) sheet.Cell {
	line := []rune(strings.Repeat(".", max(1, d.letters(c.Board.Length.Value))))
	lay := func(from, to measure.Length, with func(n int) string) {
		a := max(0, d.letters(from))
		n := max(1, d.letters(to)-a)
		for i, r := range []rune(with(n)) {
			if i < n && a+i < len(line) {
				line[a+i] = r
			}
		}
	}
	for _, b := range c.Board.Bad {
		lay(b.From, b.To, func(n int) string { return strings.Repeat("x", n) })
	}
	order := make([]int, len(s.on))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return int(max(-1, min(1, s.from[a]-s.from[b]))) })
	for _, i := range order {
		q := &d.in.Result.Plan.Pieces[s.on[i]]
		near, far := leaning(q, s.turned[i])
		ends := 2
		if s.saved[i] > 0 {
			near, ends = "", 1
		}
		lay(s.from[i]+s.saved[i], s.from[i]+q.Length, func(n int) string {
			n = max(0, n-ends)
			return near + padded(d.along(q, s.turned[i], s.saved[i], n), n) + far
		})
	}
	return sheet.Cell{Kind: sheet.Text, Text: string(line) + "|", Style: sheet.Stick}
}

// padded is a mark with dashes after it, so many letters in all; cut where it is
// longer.
func padded(mark string, n int) string {
	r := []rune(mark)
	return string(r[:min(n, len(r))]) + strings.Repeat("-", max(0, min(n-len(r), 199)))
}
