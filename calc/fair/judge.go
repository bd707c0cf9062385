package fair

import (
	"math"
	"slices"
)

// Measured, see DefaultRules.
const (
	shared  = 0.5 // how much of what the neighbouring rows are off at a place is doubt of a row's own say there
	plainer = 0.7 // so many doubts more alarm where only the finer scale shows them
)

// table is rows being judged: what is left of them and the score of each value.
type table struct {
	rows   []Row
	lines  []line
	rules  Rules
	scale  float64
	second Second
	sound  map[Spot]bool // values given back for good
	raw    [][]float64   // how far each value is off its row's cubic, in scales
	z      [][]float64   // how far it is off what is made of it, in doubts
}

// Judge finds the values that are not believed. A row's own say, by itself or by
// what sets it apart from the rows beside it, and a second opinion, where there is
// one, are weighed by their doubts; where they contradict each other, one of them
// rests on a bad value itself, and only what both say counts. The worst is
// withdrawn and the rest judged anew, and a value withdrawn earlier is given back
// when it proves to have been led astray by another.
func Judge(rows []Row, r Rules, second Second) Judged {
	t := newTable(rows, r, second)
	flags := t.flag(nil)
	if len(flags) > 0 {
		flags = t.finer(flags)
	}
	flags = t.prune(flags)
	flags = t.single(t.acquit(flags))
	for _, g := range t.regions(1) {
		if s, ok := t.culprit(g); ok {
			flags = append(flags, Flag{Spot: s})
			t.withdraw(s, false)
		}
	}
	regions := t.regions(2)
	for i := range flags {
		f := &flags[i]
		t.give(f.Spot, true)
		f.Says, _, f.Alone = t.judge(f.Row, f.At)
		t.give(f.Spot, false)
	}
	return Judged{Scale: t.scale, Flags: flags, Regions: regions, table: t}
}

func newTable(rows []Row, r Rules, second Second) *table {
	t := &table{rules: r, sound: map[Spot]bool{}, second: second, scale: scale(rows, r), raw: make([][]float64, len(rows)), z: make([][]float64, len(rows))}
	for i, row := range rows {
		row.Given = slices.Clone(row.Given)
		t.rows, t.lines = append(t.rows, row), append(t.lines, newLine(row))
		t.z[i] = make([]float64, len(row.Y))
	}
	t.score()
	return t
}

// score judges every value as the rows stand.
func (t *table) score() {
	for i, l := range t.lines {
		t.raw[i] = l.raw(len(t.rows[i].Y), t.rules.Least, t.scale)
	}
	for i, row := range t.rows {
		for k := range row.Y {
			_, t.z[i][k], _ = t.judge(i, k)
		}
	}
}

// flag withdraws values until nothing alarms, those flagged withdrawn already.
func (t *table) flag(flags []Flag) []Flag {
	taken := make([]int, len(t.rows))
	for _, f := range flags {
		taken[f.Row]++
	}
	for range 2 * len(t.rows) * t.rules.PerRow { // values given back are not tried for ever
		worst, ok := t.worst(taken)
		if !ok {
			break
		}
		bad, or := t.explain(worst)
		if taken[bad.Row] >= t.rules.PerRow {
			bad, or = worst, nil
		}
		flags = append(flags, Flag{Spot: bad, Or: or})
		taken[bad.Row]++
		t.withdraw(bad, false)
		flags = slices.DeleteFunc(flags, func(f Flag) bool {
			if f.Spot == bad || math.Abs(t.alone(f.Spot)) >= t.rules.Alarm {
				return false
			}
			taken[f.Row]--
			t.withdraw(f.Spot, true)
			return true
		})
	}
	return flags
}

// finer judges the table anew in its scale without the values withdrawn: bad ones
// make it look rougher than it is. What shows only now must show the plainer.
func (t *table) finer(flags []Flag) []Flag {
	s := scale(t.rows, t.rules)
	if s >= t.scale {
		return flags
	}
	t.scale = s
	t.score()
	t.rules.Alarm += plainer
	flags = t.flag(flags)
	t.rules.Alarm -= plainer
	return flags
}

// prune gives back the values that look sound with all the others withdrawn, and
// whose withdrawal quiets nothing any more.
func (t *table) prune(flags []Flag) []Flag {
	none := make([]int, len(t.rows))
	return slices.DeleteFunc(flags, func(f Flag) bool {
		if math.Abs(t.alone(f.Spot)) >= t.rules.Alarm {
			return false
		}
		_, before := t.worst(none)
		t.withdraw(f.Spot, true)
		if _, after := t.worst(none); !after || before {
			return true
		}
		t.withdraw(f.Spot, false)
		return false
	})
}

// worst is the value that is off by most, if it is enough to alarm.
func (t *table) worst(taken []int) (s Spot, ok bool) {
	most := t.rules.Alarm
	for i, z := range t.z {
		if taken[i] >= t.rules.PerRow {
			continue
		}
		for k, v := range z {
			if math.Abs(v) >= most && !t.sound[Spot{i, k}] {
				s, ok, most = Spot{i, k}, true, math.Abs(v)
			}
		}
	}
	return s, ok
}

// give withdraws a value or gives it back.
func (t *table) give(s Spot, given bool) {
	t.rows[s.Row].Given[s.At] = given
	t.lines[s.Row] = newLine(t.rows[s.Row])
}

// withdraw is give, and judges anew all that looks to the value: its row, and
// the sections that its place and those beside it are judged by.
func (t *table) withdraw(s Spot, given bool) {
	t.give(s, given)
	t.raw[s.Row] = t.lines[s.Row].raw(len(t.rows[s.Row].Y), t.rules.Least, t.scale)
	for k := range t.rows[s.Row].Y {
		_, t.z[s.Row][k], _ = t.judge(s.Row, k)
	}
	for i := range t.rows {
		if i == s.Row {
			continue
		}
		for k := max(0, s.At-2); k <= min(len(t.rows[i].Y)-1, s.At+2); k++ {
			_, t.z[i][k], _ = t.judge(i, k)
		}
	}
}

// alone is the score of a withdrawn value with all the others as they stand.
func (t *table) alone(s Spot) float64 {
	t.give(s, true)
	_, z, _ := t.judge(s.Row, s.At)
	t.give(s, false)
	return z
}

// judge is what is made of a value and how far it is off; alone says that only
// the second opinion has a say. A value not given scores nothing.
func (t *table) judge(row, at int) (says Opinion, z float64, alone bool) {
	if !t.rows[row].Given[at] {
		return Opinion{}, 0, false
	}
	y := t.rows[row].Y[at]
	l := t.lines[row]
	first, ok := l.along(l.index(at), t.scale, t.rules.Least)
	if ok {
		if m := t.common(row, at); m > 1 {
			first.Sd *= math.Sqrt(1 + shared*(m*m-1))
		}
	}
	if b, is := t.beside(row, at); is && (!ok || first.taken || b.Sd < first.Sd) {
		first, ok = rowSays{Opinion: b}, true
	}
	var second Opinion
	okToo := false
	if t.second != nil {
		second, okToo = t.second.Opinion(t.rows, t.scale, row, at)
	}
	if t.rows[row].Above {
		first.Opinion, second = first.atLeastNought(), second.atLeastNought()
	}
	switch {
	case ok && okToo:
		return weigh(first, second, y)
	case ok:
		return first.Opinion, first.score(y), false
	case okToo:
		return second, second.score(y), true
	}
	return Opinion{}, 0, false
}

// weigh is what a row and a second opinion together make of a value.
func weigh(first rowSays, second Opinion, y float64) (says Opinion, z float64, alone bool) {
	if first.taken {
		// The row would take the value. If it would take the second opinion's as
		// well it cannot tell; if not, the second opinion is led astray.
		if second.Value < first.lo-3*second.Sd || second.Value > first.hi+3*second.Sd {
			return first.Opinion, 0, false
		}
		return second, second.score(y), true
	}
	if math.Abs(first.Value-second.Value) <= 3*math.Hypot(first.Sd, second.Sd) {
		a, b := 1/(first.Sd*first.Sd), 1/(second.Sd*second.Sd)
		says = Opinion{(first.Value*a + second.Value*b) / (a + b), 1 / math.Sqrt(a+b)}
		return says, says.score(y), false
	}
	za, zb := first.score(y), second.score(y)
	switch {
	case za*zb <= 0:
		return first.Opinion, 0, false
	case math.Abs(za) < math.Abs(zb):
		return first.Opinion, za, false
	}
	return second, zb, false
}

// score is how far a value is off an opinion of it, in what that may be out.
func (o Opinion) score(y float64) float64 { return (y - o.Value) / o.Sd }

// impossible is how much of what an opinion is below nought is doubt of it.
const impossible = 0.5

// atLeastNought is an opinion of a value that is not below nought: it is the more in
// doubt the farther below it is.
func (o Opinion) atLeastNought() Opinion {
	if o.Value < 0 {
		o.Sd, o.Value = math.Hypot(o.Sd, impossible*o.Value), 0
	}
	return o
}

// common is how far the rows near a row are off their own curves at a place: a
// turn of the whole hull is no fault of one row. Fewer than three have no say.
func (t *table) common(row, at int) float64 {
	var all [8]float64
	n := 0
	for _, j := range t.rows[row].Near {
		if t.rows[j].Given[at] && t.raw[j][at] != 0 && n < len(all) {
			all[n] = math.Abs(t.raw[j][at])
			n++
		}
	}
	if n < 3 {
		return 0
	}
	slices.Sort(all[:n])
	return all[(n-1)/2]
}
