package hull

import (
	"cmp"
	"math"
	"slices"
)

// ease moves each figure of the table by no more than half its last step, to
// make the lines along the hull and the sections as fair as the table allows: a
// figure rounded to an eighth stands for anything within a sixteenth of it, and
// bevels drawn through the rounded figures themselves are out by more than a
// batten would be. Every figure still rounds to what was read.
//
// What is made least is the squares of the moves and of the third and fourth
// differences, these counted less where they are more than rounding explains: there
// the hull itself bends. A line that bends evenly has third differences of its own
// and hardly a fourth.
func (t *table) ease() {
	e := newEasing(t)
	waters, buttocks := e.ranked(Waterline), e.ranked(Buttock)
	for i := range t.v {
		f, rank := family{line: i}, 0
		if r := slices.Index(waters, i); r >= 0 {
			f, rank = family{role: Waterline, line: -1}, r
		} else if r := slices.Index(buttocks, i); r >= 0 {
			f, rank = family{role: Buttock, line: -1}, r
		}
		e.alongHull(i, f, rank)
	}
	for k := range t.x {
		e.acrossLines(k, waters, family{role: Waterline, across: true, line: -1})
		e.acrossLines(k, buttocks, family{role: Buttock, across: true, line: -1})
	}
	e.weigh()
	e.settle()
}

// easing is the figures that may move and the differences they stand in.
type easing struct {
	t       *table
	at      [][]int // by line and station: the figure's number, -1 where there is none
	v, read []float64
	fixed   []bool
	runs    []difference
	in      [][]int // by figure: the differences it stands in
}

// difference is a third difference of four figures or a fourth of five.
type difference struct {
	figures []int
	w       []float64
	weight  float64
	family  family
	place   [2]int // twice the station and the line its middle lies at, to find those around it
}

// family is differences of one order alike enough to tell of each other: those
// along the waterlines, along the buttocks, up the sections, and along each line
// that stands alone.
type family struct {
	role   Role
	across bool
	line   int
	order  int
}

// squares is the squares of what a difference of an order counts its figures by,
// together: of 1 3 3 1 and of 1 4 6 4 1.
var squares = [...]float64{3: 20, 4: 70}

// newEasing numbers the figures of a table.
func newEasing(t *table) *easing {
	e := &easing{t: t}
	for i, row := range t.v {
		at := make([]int, len(row))
		for k := range row {
			at[k] = -1
			if t.ok[i][k] {
				at[k] = len(e.v)
				e.v = append(e.v, row[k])
			}
		}
		e.at = append(e.at, at)
	}
	e.read = append([]float64{}, e.v...)
	e.fixed = make([]bool, len(e.v))
	e.in = make([][]int, len(e.v))
	for i, v := range e.v {
		steps := v / t.step                                              // one between two steps was not rounded to them
		e.fixed[i] = v == 0 || math.Abs(steps-math.Round(steps)) > 0.005 // nought is on the middle line or the base
	}
	return e
}

// ranked is the waterlines from the lowest up, or the buttocks from the middle
// out.
func (e *easing) ranked(role Role) []int {
	var all []int
	for _, p := range e.t.pairs {
		if p.role == role {
			all = append(all, max(p.out, p.up))
		}
	}
	slices.SortStableFunc(all, func(a, b int) int {
		return cmp.Compare(e.t.o.Lines[a].At.Value, e.t.o.Lines[b].At.Value)
	})
	return all
}

// alongHull takes the differences of one line along the hull.
func (e *easing) alongHull(i int, f family, rank int) {
	var r easeRun
	for k := range e.t.x {
		n := e.at[i][k]
		if n < 0 {
			continue
		}
		if len(r.figures) > 0 && e.t.o.chineBetween(e.t.o.Lines[i], k) {
			e.differences(r, f)
			r = easeRun{}
		}
		r.add(n, e.t.x[k], [2]int{k, rank})
	}
	e.differences(r, f)
}

// acrossLines takes the differences of a station's waterlines up to the deck, or
// of its buttocks, as far as there is no chine between them. The rabbet or the keel
// counts as a waterline where it lies not much farther below the first than the next
// lies above it.
func (e *easing) acrossLines(k int, lines []int, f family) {
	var r easeRun
	for rank, i := range lines {
		n, at := e.at[i][k], e.t.o.Lines[i].At.Value.Inches()
		last := len(r.x) - 1
		if n < 0 || last >= 0 && (at <= r.x[last] || e.t.chineWithin(k, f.role, r.x[last], at)) {
			e.differences(r, f)
			r = easeRun{}
		}
		if n < 0 {
			continue
		}
		if f.role == Waterline && len(r.x) == 0 && rank+1 < len(lines) {
			next := e.t.o.Lines[lines[rank+1]].At.Value.Inches()
			if foot, up, ok := e.footAt(k, at); ok && at-up <= 1.5*(next-at) {
				r.add(foot, up, [2]int{k, rank})
			}
		}
		r.add(n, at, [2]int{k, rank})
	}
	if n, at, ok := e.deckAt(k); ok && f.role == Waterline && len(r.x) > 1 {
		last := len(r.x) - 1
		switch space := r.x[last] - r.x[last-1]; {
		case e.t.chineWithin(k, f.role, r.x[last], at):
		case at-r.x[last] > space/4:
			r.add(n, at, [2]int{k, len(lines)})
		case at > r.x[last-1]: // as good as the highest waterline, and drawn in its place
			r.figures[last], r.x[last] = n, at
		}
	}
	e.differences(r, f)
}

// footAt is the figure of the breadth of the rabbet or the keel at a station, on
// the middle line where the table gives none, and its height; not ok where it is
// not below the waterline at a height, or a chine lies between.
func (e *easing) footAt(k int, water float64) (figure int, height float64, ok bool) {
	c := e.t.foot(k)
	if c == nil || c.z > water-1 || e.t.chineWithin(k, Waterline, c.z, water) {
		return 0, 0, false
	}
	if out := e.t.pairs[c.pair].out; out >= 0 && e.at[out][k] >= 0 {
		return e.at[out][k], c.z, true
	}
	e.v, e.read, e.fixed, e.in = append(e.v, 0), append(e.read, 0), append(e.fixed, true), append(e.in, nil)
	return len(e.v) - 1, c.z, true
}

// deckAt is the figure of the deck's breadth at a station and the deck's height.
func (e *easing) deckAt(k int) (figure int, height float64, ok bool) {
	for _, p := range e.t.pairs {
		if p.role == Deck && p.out >= 0 && p.up >= 0 && e.at[p.out][k] >= 0 && e.t.ok[p.up][k] {
			return e.at[p.out][k], e.t.v[p.up][k], true
		}
	}
	return 0, 0, false
}

// chineWithin says that a chine passes between two heights, or two distances out.
func (t *table) chineWithin(k int, role Role, from, to float64) bool {
	for _, p := range t.pairs {
		if at, ok := t.place(p, k); ok && p.role == Chine {
			where := at.z
			if role == Buttock {
				where = at.y
			}
			if from <= where && where <= to {
				return true
			}
		}
	}
	return false
}

// easeRun is figures in a row with their places.
type easeRun struct {
	figures []int
	x       []float64
	place   [][2]int
}

func (r *easeRun) add(n int, x float64, place [2]int) {
	r.figures, r.x, r.place = append(r.figures, n), append(r.x, x), append(r.place, place)
}

// differences adds the third and fourth differences of a run of figures. Those on
// a flat stay.
func (e *easing) differences(r easeRun, f family) {
	values := make([]float64, len(r.figures))
	for i, n := range r.figures {
		values[i] = e.read[n]
	}
	for i, flat := range level(values, e.t.step) {
		if flat {
			e.fixed[r.figures[i]], e.fixed[r.figures[i+1]] = true, true
		}
	}
	for f.order = range squares {
		for i := 0; squares[f.order] > 0 && i+f.order < len(r.figures); i++ {
			e.difference(r, f, i)
		}
	}
}

// difference adds the difference of the figures of a run from the one at i on.
func (e *easing) difference(r easeRun, f family, i int) {
	low, high := i+f.order/2, i+(f.order+1)/2
	d := difference{figures: r.figures[i : i+f.order+1], w: make([]float64, f.order+1), family: f,
		place: [2]int{r.place[low][0] + r.place[high][0], r.place[low][1] + r.place[high][1]}}
	sum := 0.0
	for a := range d.w {
		d.w[a] = 1
		for b := range d.w {
			if a != b {
				d.w[a] /= r.x[i+a] - r.x[i+b]
			}
		}
		sum += d.w[a] * d.w[a]
	}
	for a := range d.w {
		d.w[a] *= math.Sqrt(squares[f.order] / sum) // as 1 3 3 1 or 1 4 6 4 1 at even spacing
	}
	for _, n := range d.figures {
		e.in[n] = append(e.in[n], len(e.runs))
	}
	e.runs = append(e.runs, d)
}

// bend is what a difference comes to.
func (e *easing) bend(d difference) float64 {
	sum := 0.0
	for a, n := range d.figures {
		sum += d.w[a] * e.v[n]
	}
	return sum
}
