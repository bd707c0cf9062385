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
// What is made least is the squares of the moves and of the third differences,
// these counted less where they are more than rounding explains: there the hull
// itself bends.
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
	runs    []third
	in      [][]int // by figure: the differences it stands in
}

// third is a third difference of four figures.
type third struct {
	figures [4]int
	w       [4]float64
	weight  float64
	family  family
	place   [2]int // twice the station and the line its middle lies at, to find those around it
}

// family is differences alike enough to tell of each other: those along the
// waterlines, along the buttocks, up the sections, and along each line that
// stands alone.
type family struct {
	role   Role
	across bool
	line   int
}

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
		e.fixed[i] = v == 0 // on the middle line or the base
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
// of its buttocks, as far as there is no chine between them.
func (e *easing) acrossLines(k int, lines []int, f family) {
	var r easeRun
	for rank, i := range lines {
		n, at := e.at[i][k], e.t.o.Lines[i].At.Value.Inches()
		last := len(r.x) - 1
		if n < 0 || last >= 0 && (at <= r.x[last] || e.t.chineWithin(k, f.role, r.x[last], at)) {
			e.differences(r, f)
			r = easeRun{}
		}
		if n >= 0 {
			r.add(n, at, [2]int{k, rank})
		}
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

// differences adds the third differences of a run of figures. Those on a flat
// stay.
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
	for i := 0; i+3 < len(r.figures); i++ {
		d := third{figures: [4]int(r.figures[i : i+4]), family: f, place: [2]int{r.place[i+1][0] + r.place[i+2][0], r.place[i+1][1] + r.place[i+2][1]}}
		sum := 0.0
		for a := range 4 {
			d.w[a] = 1
			for b := range 4 {
				if a != b {
					d.w[a] /= r.x[i+a] - r.x[i+b]
				}
			}
			sum += d.w[a] * d.w[a]
		}
		for a := range d.w {
			d.w[a] *= math.Sqrt(20 / sum) // as 1 3 3 1 at even spacing
		}
		for _, n := range d.figures {
			e.in[n] = append(e.in[n], len(e.runs))
		}
		e.runs = append(e.runs, d)
	}
}

func (e *easing) bend(d third) float64 {
	sum := 0.0
	for a, n := range d.figures {
		sum += d.w[a] * e.v[n]
	}
	return sum
}
