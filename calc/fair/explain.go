package fair

import "math"

// How two values are held against each other. Measured, see DefaultRules.
const (
	clears = 0.7 // withdrawing another value explains an alarm that it brings below this share
	itself = 0.8 // and the other is then bad itself from this share of the alarm on

	nearly      = 4    // another value is as likely that leaves so much more of the alarm about the place than the one blamed,
	nearlyShare = 0.08 // or this share of what that one does away with,
	quiet       = 1.5  // of which nothing below so many doubts counts
	loudest     = 8    // and nothing for more
)

// explain settles whether the worst value is bad or one of those it was judged
// by. Of two it is the one that is the worse when the other is withdrawn; and
// one that alone explains several alarms at its place is bad, though nothing
// tells how far. Or is the other that explains it nearly as well.
func (t *table) explain(worst Spot) (bad Spot, or []Spot) {
	bad = worst
	most, cleared := 0.0, 0
	alone := math.Abs(t.z[worst.Row][worst.At])
	likely := []Spot{worst}
	for _, c := range t.others(worst) {
		if t.sound[c] {
			continue
		}
		left := math.Abs(t.without(c, worst))
		if left >= clears*alone {
			continue
		}
		own := math.Abs(t.without(worst, c))
		n := 0
		if left < t.rules.Alarm {
			likely = append(likely, c)
			if c.Row != worst.Row {
				n = t.clearedToo(worst, c)
			}
		}
		if n > cleared || n == cleared && own > left && own >= itself*t.rules.Alarm && own > most {
			bad, most, cleared = c, own, n
		}
	}
	return bad, t.asLikely(worst, bad, likely)
}

// asLikely is the one of several values that would quiet the rows about the worst
// most, if it does so nearly as well as the one blamed.
func (t *table) asLikely(worst, bad Spot, likely []Spot) (or []Spot) {
	if len(likely) == 1 {
		return nil
	}
	rows := []int{worst.Row}
	if t.second != nil {
		rows = append(rows, t.second.Beside(t.rows, worst.Row, worst.At)...)
	}
	left := func(gone Spot) float64 {
		t.give(gone, false)
		defer t.give(gone, true)
		return t.alarmAbout(worst.At, rows)
	}
	before, blamed := t.alarmAbout(worst.At, rows), left(bad)
	least := blamed + max(nearly, nearlyShare*(before-blamed))
	for _, c := range likely {
		if c == bad {
			continue
		}
		if l := left(c); l < least || l == least && or == nil {
			or, least = []Spot{c}, l
		}
	}
	return or
}

// alarmAbout is how much speaks against the values of some rows about a place.
func (t *table) alarmAbout(at int, rows []int) float64 {
	sum := 0.0
	for _, i := range rows {
		for k := max(0, at-3); k <= min(len(t.rows[i].Y)-1, at+3); k++ {
			_, z, _ := t.judge(i, k)
			if z = min(math.Abs(z), loudest); z > quiet {
				sum += z * z
			}
		}
	}
	return sum
}

// others is the values that the worst was judged by: its neighbours on its row,
// and those the second opinion of it rests on.
func (t *table) others(worst Spot) []Spot {
	var all []Spot
	l := t.lines[worst.Row]
	here := l.index(worst.At)
	for k := max(0, here-3); k <= min(len(l.at)-1, here+3); k++ {
		if k != here {
			all = append(all, Spot{worst.Row, l.at[k]})
		}
	}
	if t.second == nil {
		return all
	}
	for _, i := range t.second.Beside(t.rows, worst.Row, worst.At) {
		if t.rows[i].Given[worst.At] && i != worst.Row {
			all = append(all, Spot{i, worst.At})
		}
	}
	return all
}

// clearedToo is how many other alarms at the place of the worst a value clears
// when it is withdrawn, that the worst itself does not.
func (t *table) clearedToo(worst, by Spot) int {
	n := 0
	for i := range t.rows {
		s := Spot{i, worst.At}
		if s == worst || s == by || math.Abs(t.z[i][s.At]) < t.rules.Alarm {
			continue
		}
		if math.Abs(t.without(by, s)) < t.rules.Alarm && math.Abs(t.without(worst, s)) >= t.rules.Alarm {
			n++
		}
	}
	return n
}

// without is the score of one value with another withdrawn.
func (t *table) without(gone, of Spot) float64 {
	t.give(gone, false)
	_, z, _ := t.judge(of.Row, of.At)
	t.give(gone, true)
	return z
}

// Without is what is made of a value with others withdrawn besides those
// flagged; ok is false where nothing is made of it.
func (j Judged) Without(s Spot, gone ...Spot) (says Opinion, ok bool) {
	t := j.table
	was := t.rows[s.Row].Given[s.At]
	var back []Spot
	for _, g := range gone {
		if g != s && t.rows[g.Row].Given[g.At] {
			back = append(back, g)
			t.give(g, false)
		}
	}
	t.give(s, true)
	says, _, _ = t.judge(s.Row, s.At)
	t.give(s, was)
	for _, g := range back {
		t.give(g, true)
	}
	return says, says.Sd > 0
}
