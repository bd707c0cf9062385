package fair

import (
	"math"
	"slices"
)

// How the rows next to a row are weighed. Measured, see DefaultRules.
const (
	besideReach = 5   // values on either side of one that its row and those next to it are compared at
	besideSlack = 1.5 // departures that differ by so many times what rounding explains agree
	besideDoubt = 1.5 // how much of what they differ by beyond that is doubt,
	besideShare = 0.2 // and of what they are beyond it
	onwardDoubt = 2.0 // the same of the outermost row, which has others on one side only
	onwardShare = 0.3
	besideSure  = 0.9 // of the doubt so reckoned: on sound hulls no value of 33,000 was farther off than 3.7 of it
)

// beside is what a row makes of a value if it departs from its own curve there as
// the rows on either side of it do from theirs: on a fair surface one line does not
// bend by itself. The outermost of rows above nought is held against the one within
// it. ok is false where the rows have not the same values about it.
func (t *table) beside(row, at int) (o Opinion, ok bool) {
	r := t.rows[row]
	var others [2]int
	var weights [2]float64
	doubt := t.across
	switch {
	case len(r.Sides[0]) > 0 && len(r.Sides[1]) > 0:
		others = [2]int{r.Sides[0][0], r.Sides[1][0]}
		weights = between(r.Level, t.rows[others[0]].Level, t.rows[others[1]].Level)
	case r.Above && len(r.Sides[0]) > 1:
		others, weights, doubt = [2]int{r.Sides[0][0], r.Sides[0][0]}, [2]float64{1, 0}, t.onward
	default:
		return o, false
	}
	own, i := t.lines[row].piece(t.lines[row].index(at))
	apart, k := t.apart(own, i, row, others, weights)
	if k < 0 || len(own.x) < 5 || len(apart.x) < 5 || !slices.Equal(own.stencil(i), apart.stencil(k)) {
		return o, false
	}
	from := apart.about(k, 4)
	value, _, w := apart.through(k, from, 4)
	scale := t.scale * math.Sqrt(1+weights[0]*weights[0]+weights[1]*weights[1])
	departing, ok := doubt(row, at, own.stencil(i), w[:4])
	if !ok {
		return o, false
	}
	bends := bend * apart.disagree(k, from, value, w, scale)
	return Opinion{r.Y[at] - apart.y[k] + value,
		besideSure * math.Hypot(growth(w[:4])*scale, math.Hypot(bends, departing))}, true
}

// between is the weights of two rows in the straight line between them at a level.
func between(level, a, b float64) [2]float64 {
	return [2]float64{(b - level) / (b - a), (level - a) / (b - a)}
}

// apart is what sets a row apart from two others, each with its weight, about the
// i-th value of its own line; k is that value's place in it, -1 where the others
// have none there.
func (t *table) apart(own line, i, row int, others [2]int, weights [2]float64) (l line, k int) {
	a, b := t.rows[others[0]], t.rows[others[1]]
	k = -1
	for m := max(0, i-besideReach); m <= min(len(own.at)-1, i+besideReach); m++ {
		at := own.at[m]
		if !t.alike(at, row, others[0]) || !t.alike(at, row, others[1]) {
			continue
		}
		if m == i {
			k = len(l.at)
		}
		l.at, l.x, l.y = append(l.at, at), append(l.x, own.x[m]), append(l.y, own.y[m]-weights[0]*a.Y[at]-weights[1]*b.Y[at])
	}
	if k < 0 {
		return l, k
	}
	l.corner = slices.Concat(a.Corner, b.Corner)
	return l.piece(k)
}

// alike says that another row has a value at a place and has come to nothing there
// only if the row itself has: where a line has ended its nothing says little.
func (t *table) alike(at, row, other int) bool {
	r, o := t.rows[row], t.rows[other]
	return o.Given[at] && (!r.Above || (r.Y[at] == 0) == (o.Y[at] == 0))
}

// stencil is the places of the k-th value and of the four about it.
func (l line) stencil(k int) []int {
	from := l.about(k, 4)
	return l.at[from : from+5]
}

// across is how far what a row departs by may be from the straight line between the
// rows on either side of it: as those beyond them show it, or where there are none as
// the two differ; and by a share of the departures themselves. The places are those
// of the value and of the four about it, the weights those of the four.
func (t *table) across(row, at int, places []int, w []float64) (float64, bool) {
	sides, x := t.rows[row].Sides, t.rows[row].Level
	near := [2]float64{}
	for s := range near {
		near[s], _ = t.departs(row, sides[s][0], at, places, w)
	}
	rounding := besideSlack * growth(w) * t.scale
	doubt, known := 0.0, false
	for s := range near {
		if len(sides[s]) < 2 {
			continue
		}
		far, ok := t.departs(row, sides[s][1], at, places, w)
		if !ok {
			continue
		}
		// Of the three rows the middle one should lie on the line between the others.
		a, b, c := t.rows[sides[1-s][0]].Level, t.rows[sides[s][0]].Level, t.rows[sides[s][1]].Level
		m := between(b, a, c)
		differ := max(0, math.Abs(near[s]-m[0]*near[1-s]-m[1]*far)-rounding*math.Sqrt(1+m[0]*m[0]+m[1]*m[1]))
		doubt, known = max(doubt, differ*math.Abs((x-a)*(x-b)/((b-a)*(b-c)))), true
	}
	if !known {
		doubt = max(0, math.Abs(near[0]-near[1])-rounding*math.Sqrt2) / 2
	}
	most := max(0, math.Abs(near[0])-rounding, math.Abs(near[1])-rounding)
	return math.Hypot(besideDoubt*doubt, besideShare*most), true
}

// onward is the same for the outermost row, as the two rows within it differ; ok is
// false where the second cannot tell.
func (t *table) onward(row, at int, places []int, w []float64) (doubt float64, ok bool) {
	a, b := t.rows[row].Sides[0][0], t.rows[row].Sides[0][1]
	next, _ := t.departs(row, a, at, places, w)
	far, ok := t.departs(row, b, at, places, w)
	rounding := growth(w) * t.scale
	doubt = max(0, math.Abs(next-far)-rounding*math.Sqrt2) * math.Abs((t.rows[row].Level-t.rows[a].Level)/(t.rows[a].Level-t.rows[b].Level))
	return math.Hypot(onwardDoubt*doubt, onwardShare*max(0, math.Abs(next)-rounding, math.Abs(far)-rounding)), ok
}

// departs is how far another row departs at a place from its curve through the
// places about it; ok is false where it has not all of them or a corner among them.
func (t *table) departs(row, other, at int, places []int, w []float64) (off float64, ok bool) {
	o := t.rows[other]
	for _, c := range o.Corner {
		if c > places[0] && c <= places[len(places)-1] {
			return 0, false
		}
	}
	n := 0
	for _, p := range places {
		if !t.alike(p, row, other) {
			return 0, false
		}
		if p == at {
			off += o.Y[p]
			continue
		}
		off -= w[n] * o.Y[p]
		n++
	}
	return off, true
}
