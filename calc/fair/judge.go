package fair

import (
	"math"
	"slices"
)

// Second is another opinion of the value of a row at a place, from whatever
// else is known than the row itself; ok is false where there is none. It sees
// the rows with the values withdrawn so far not given.
type Second interface {
	Opinion(rows []Row, scale float64, row, at int) (Opinion, bool)
	Beside(rows []Row, row, at int) []int
}

// Measured, not published: fitted with the seeded faults of the hull's tests.
const (
	beside   = 0.5 // how much the neighbouring rows' own unfairness widens an opinion
	relieved = 0.7 // share of an alarm that must go when another value is withdrawn
	nearly   = 0.8 // share of the alarm at which that other value is the worse
)

// table is rows being judged: what is left of them and the score of each value.
type table struct {
	rows   []Row
	rules  Rules
	scale  float64
	second Second
	near   [][]int
	raw    [][]float64
	z      [][]float64
	whole  [][]Opinion
}

// Judge2 finds the values that spoil their rows by two opinions of each: the
// curve along its own row, and a second one from whatever else is known, which
// may be nil. Near, where not nil, is the rows beside each row. It names single
// values only: stretches that are not fair are left to Judge.
func Judge2(rows []Row, near [][]int, r Rules, second Second) Judged {
	t := table{rules: r, second: second, near: near, scale: scale(rows, r)}
	for _, row := range rows {
		t.rows = append(t.rows, Row{row.X, row.Y, slices.Clone(row.Given), row.Corner, row.Loose})
		t.z = append(t.z, make([]float64, len(row.Y)))
		t.whole = append(t.whole, make([]Opinion, len(row.Y)))
	}
	for i := range rows {
		raw := make([]float64, len(rows[i].Y))
		l := newLine(rows[i])
		if len(l.at) >= r.Least {
			for k, at := range l.at {
				y, gauge := l.through(k, 4)
				raw[at] = math.Abs(l.y[k]-y) / gauge / t.scale
			}
		}
		t.raw = append(t.raw, raw)
	}
	for i := range rows {
		t.judgeRow(i)
	}
	taken := make([]int, len(rows))
	var flags []Flag
	for range 200 {
		row, at := t.worst(taken)
		if row < 0 {
			break
		}
		row, at, or := t.explain(row, at)
		flags = append(flags, Flag{Row: row, At: at, Or: or})
		taken[row]++
		t.give(row, at, false)
		for i := 0; i < len(flags)-1; i++ {
			f := flags[i]
			t.rows[f.Row].Given[f.At] = true
			t.judgeOne(f.Row, f.At, newLine(t.rows[f.Row]))
			if math.Abs(t.z[f.Row][f.At]) < r.Alarm {
				taken[f.Row]--
				t.give(f.Row, f.At, true)
				flags = slices.Delete(flags, i, i+1)
				i--
				continue
			}
			t.rows[f.Row].Given[f.At] = false
			t.z[f.Row][f.At] = 0
		}
	}
	for i := range flags {
		f := &flags[i]
		t.rows[f.Row].Given[f.At] = true
		t.judgeOne(f.Row, f.At, newLine(t.rows[f.Row]))
		t.rows[f.Row].Given[f.At] = false
		o := t.whole[f.Row][f.At]
		f.Z, f.Faired, f.Gauge, f.Sure = t.z[f.Row][f.At], o.Value, o.Sd/t.scale, math.Abs(t.z[f.Row][f.At]) >= r.Sure
	}
	return Judged{Scale: t.scale, Flags: flags}
}

// give withdraws a value or gives it back, and judges all that looks to it anew.
func (t *table) give(row, at int, given bool) {
	t.rows[row].Given[at] = given
	t.judgeRow(row)
	for i := range t.rows {
		if i != row {
			l := newLine(t.rows[i])
			for k := max(0, at-3); k <= min(len(t.rows[i].Y)-1, at+3); k++ {
				t.judgeOne(i, k, l)
			}
		}
	}
}

func (t *table) worst(taken []int) (row, at int) {
	row, most := -1, t.rules.Alarm
	for i, z := range t.z {
		if taken[i] >= t.rules.PerRow {
			continue
		}
		for k, v := range z {
			if math.Abs(v) >= most {
				row, at, most = i, k, math.Abs(v)
			}
		}
	}
	return row, at
}

func (t *table) judgeRow(i int) {
	l := newLine(t.rows[i])
	for k := range t.rows[i].Y {
		t.judgeOne(i, k, l)
	}
}

func (t *table) judgeOne(i, k int, l line) {
	t.z[i][k] = 0
	row := t.rows[i]
	if !row.Given[k] {
		return
	}
	var a, b Opinion
	okA, okB := false, false
	if len(l.at) >= t.rules.Least {
		a, okA = l.along(slices.Index(l.at, k), t.scale, t.rules)
		if m := t.common(i, k); m > 1 {
			a.Sd *= math.Sqrt(1 + beside*(m*m-1))
		}
	}
	if t.second != nil {
		b, okB = t.second.Opinion(t.rows, t.scale, i, k)
	}
	y := row.Y[k]
	switch {
	case okA && okB:
		both, agree := together(a, b)
		t.whole[i][k] = both
		t.z[i][k] = both.score(y)
		if !agree {
			za, zb := a.score(y), b.score(y)
			t.z[i][k] = 0
			if za*zb > 0 {
				t.z[i][k] = math.Copysign(min(math.Abs(za), math.Abs(zb)), za)
				if math.Abs(za) < math.Abs(zb) {
					t.whole[i][k] = a
				} else {
					t.whole[i][k] = b
				}
			}
		}
	case okA:
		t.whole[i][k], t.z[i][k] = a, a.score(y)
	case okB:
		t.whole[i][k], t.z[i][k] = b, b.score(y)
	}
}

// common is how far the neighbouring rows are off their own curves at a place.
func (t *table) common(i, k int) float64 {
	if t.near == nil {
		return 0
	}
	var all []float64
	for _, j := range t.near[i] {
		if t.rows[j].Given[k] && t.raw[j][k] > 0 {
			all = append(all, t.raw[j][k])
		}
	}
	if len(all) < 3 {
		return 0
	}
	slices.Sort(all)
	return all[(len(all)-1)/2]
}

type spot struct{ row, at int }

// explain settles whether the worst value is bad or one of those it was judged
// by: of two, the one that is the worse when the other is withdrawn.
func (t *table) explain(row, at int) (int, int, []int) {
	l := newLine(t.rows[row])
	here := slices.Index(l.at, at)
	var cands []spot
	for k := max(0, here-3); k <= min(len(l.at)-1, here+3); k++ {
		if k != here {
			cands = append(cands, spot{row, l.at[k]})
		}
	}
	if t.second != nil {
		for _, i := range t.second.Beside(t.rows, row, at) {
			if t.rows[i].Given[at] && i != row {
				cands = append(cands, spot{i, at})
			}
		}
	}
	best, most := spot{row, at}, 0.0
	var or []int
	alone := math.Abs(t.z[row][at])
	for _, c := range cands {
		left := math.Abs(t.without(c, spot{row, at}))
		if left >= relieved*alone {
			continue
		}
		own := math.Abs(t.without(spot{row, at}, c))
		if own > left && own >= nearly*t.rules.Alarm && own > most {
			best, most = c, own
		}
		if c.row == row && left < t.rules.Alarm && own >= 3 {
			or = append(or, c.at)
		}
	}
	or = slices.DeleteFunc(or, func(k int) bool { return best.row != row || k == best.at })
	if best != (spot{row, at}) && best.row == row {
		or = append(or, at)
	}
	return best.row, best.at, or
}

// without is the score of one value with another withdrawn.
func (t *table) without(gone, of spot) float64 {
	t.rows[gone.row].Given[gone.at] = false
	z := t.z[of.row][of.at]
	t.judgeOne(of.row, of.at, newLine(t.rows[of.row]))
	z, t.z[of.row][of.at] = t.z[of.row][of.at], z
	t.rows[gone.row].Given[gone.at] = true
	return z
}
