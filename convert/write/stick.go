package write

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"strakebook/calc/measure"
	"strakebook/calc/stock"
	"strakebook/convert/sheet"
)

// stick is what is cut from one lane of a board, from its own end on.
type stick struct {
	on         []int            // indexes into Plan.Pieces
	from       []measure.Length // where each begins along the board
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
			s.used += in.Result.Plan.Pieces[k].Length
		}
	}
	s.used += r.CrossKerf * measure.Length(max(0, len(s.on)-1))
	s.left = c.Board.Length.Value - r.EndTrim - s.used
	s.follows = len(c.Board.Bad) == 0 && !r.ShareCuts
	for _, b := range c.Board.Bad {
		s.left -= b.To - b.From
	}
	s.left = max(s.left, 0)
	return s
}

func (s stick) marks(in Input) []string {
	var all []string
	for _, k := range s.on {
		all = append(all, in.Result.Plan.Pieces[k].Mark)
	}
	return all
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

// drawn is a stick drawn to scale: each piece its length in letters with its mark
// at the fore end, a bar at each cut, dots for what is left.
func (s stick) drawn(in Input, p, list *page) sheet.Cell {
	each, of := in.scale()
	letters := func(l measure.Length) int { return int(math.Round(float64(l) / float64(of))) }
	shown, formula := "|", `"|"`
	for _, k := range s.on {
		q := in.Result.Plan.Pieces[k]
		shown += padded(q.Mark, max(1, letters(q.Length)-1)) + "|"
		row := fmt.Sprintf("MATCH(%d,%s,0)", k+1, list.span("No."))
		formula += fmt.Sprintf(`&LEFT(INDEX(%s,%s)&REPT("-",199),MAX(1,ROUND(INDEX(%s,%s)/%v,0)-1))&"|"`, list.span("Mark"), row, list.span("Length"), row, each)
	}
	if n := letters(s.left) - 1; n > 0 {
		shown += strings.Repeat(".", n) + "|"
	}
	formula += fmt.Sprintf(`&IF(ROUND(%s/%v,0)>1,REPT(".",ROUND(%s/%v,0)-1)&"|","")`, p.here("Left"), each, p.here("Left"), each)
	return live(sheet.Cell{Kind: sheet.Text, Text: shown, Style: sheet.Stick}, formula)
}

// standing is a stick drawn piece by piece where each lies on its board, the bad
// stretches crossed out; it follows nothing.
func (s stick) standing(in Input, c stock.Cut) sheet.Cell {
	_, of := in.scale()
	at := func(l measure.Length) int { return int(math.Round(float64(l) / float64(of))) }
	line := []rune(strings.Repeat(".", max(1, at(c.Board.Length.Value))))
	lay := func(from, to measure.Length, with string) {
		a, b := max(0, at(from)), min(len(line), max(at(from)+1, at(to)))
		for i, r := range []rune(with + strings.Repeat(with[len(with)-1:], 199)) {
			if a+i < b {
				line[a+i] = r
			}
		}
	}
	for _, b := range c.Board.Bad {
		lay(b.From, b.To, "x")
	}
	order := make([]int, len(s.on))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return int(max(-1, min(1, s.from[a]-s.from[b]))) })
	for _, i := range order {
		q := in.Result.Plan.Pieces[s.on[i]]
		lay(s.from[i], s.from[i]+q.Length, "|"+q.Mark+"-")
	}
	return sheet.Cell{Kind: sheet.Text, Text: string(line) + "|", Style: sheet.Stick}
}

// padded is a mark with dashes after it, so many letters in all; cut where it is
// longer.
func padded(mark string, n int) string {
	r := []rune(mark)
	return string(r[:min(n, len(r))]) + strings.Repeat("-", max(0, min(n-len(r), 199)))
}
