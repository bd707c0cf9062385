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

// How far the hull itself bends at a difference is told by those of its family so
// many stations and lines around it, and is never taken to be less than so many
// steps nor than a share of what it is in the whole family. All three are our
// choice: measured on thirteen hulls of formulas the eased figures lie on the mean
// 7 % nearer the true ones than those read and on none farther, and the computed
// seam bevels of three others in eighths are out by half a degree at the worst.
const (
	around    = 6
	leastBend = 0.17
	ofFamily  = 0.1
)

// bends is the squares of a family's differences by station and line, as far as
// there are any.
type bends struct {
	square [][]float64
	there  [][]bool
}

// weigh sets how much each difference counts: less the more those around it are
// greater than rounding makes them.
func (e *easing) weigh() {
	lines := 2 * (len(e.t.v) + 1)
	families := map[family]*bends{}
	for _, d := range e.runs {
		f := families[d.family]
		if f == nil {
			f = &bends{}
			for range 2 * len(e.t.x) {
				f.square, f.there = append(f.square, make([]float64, lines)), append(f.there, make([]bool, lines))
			}
			families[d.family] = f
		}
		b := e.bend(d)
		f.square[d.place[0]][d.place[1]], f.there[d.place[0]][d.place[1]] = b*b, true
	}
	rounding := e.t.step * e.t.step / 12
	least := leastBend * leastBend * e.t.step * e.t.step
	for i, d := range e.runs {
		f := families[d.family]
		here := f.mean(d.place[0]-2*around, d.place[0]+2*around, d.place[1]-2*around, d.place[1]+2*around, math.Inf(1))
		// A few great bends must not speak for the whole: none counts for more than
		// rounding alone would make it.
		whole := f.mean(0, 2*len(e.t.x)-1, 0, lines-1, 20*e.t.step*e.t.step)
		e.runs[i].weight = rounding / max(here-20*rounding, ofFamily*(whole-20*rounding), least)
	}
}

// mean is the mean square of the differences in a window of stations and lines,
// none counting for more than most.
func (b *bends) mean(fromStation, toStation, fromLine, toLine int, most float64) float64 {
	sum, n := 0.0, 0.0
	for k := max(0, fromStation); k <= min(len(b.square)-1, toStation); k++ {
		for l := max(0, fromLine); l <= min(len(b.square[k])-1, toLine); l++ {
			if b.there[k][l] {
				sum, n = sum+min(most, b.square[k][l]), n+1
			}
		}
	}
	return sum / n
}

// settle moves the figures to where the sum is least, then holds those that came
// to more than half a step at their half and moves the rest again.
func (e *easing) settle() {
	half := e.t.step / 2
	for range 8 {
		e.solve()
		over := false
		for n := range e.v {
			if d := e.v[n] - e.read[n]; math.Abs(d) > half {
				e.v[n], e.fixed[n], over = e.read[n]+math.Copysign(half, d), true, true
			}
		}
		if !over {
			break
		}
	}
	for i, at := range e.at {
		for k, n := range at {
			if n >= 0 {
				e.t.v[i][k] = max(e.read[n]-half, min(e.read[n]+half, e.v[n]))
			}
		}
	}
}

// solve moves the figures that are not held to where the sum is least, by
// conjugate gradients, each scaled by its own stiffness.
func (e *easing) solve() {
	n := len(e.v)
	stiff, left, way := make([]float64, n), make([]float64, n), make([]float64, n)
	for i := range stiff {
		stiff[i] = 1
		for _, r := range e.in[i] {
			d := e.runs[r]
			for a, m := range d.figures {
				if m == i {
					stiff[i] += d.weight * d.w[a] * d.w[a]
				}
			}
		}
	}
	// What is left of the slope of the sum, and the way down it.
	pull := e.pull(e.v)
	dot := 0.0
	for i := range left {
		if !e.fixed[i] {
			left[i] = e.read[i] - e.v[i] - pull[i]
		}
		way[i] = left[i] / stiff[i]
		dot += left[i] * way[i]
	}
	first := dot
	for range 2 * n {
		if dot <= 1e-20*first || dot == 0 {
			return
		}
		pull = e.pull(way)
		down := 0.0
		for i := range way {
			down += way[i] * (way[i] + pull[i])
		}
		step, next := dot/down, 0.0
		for i := range way {
			e.v[i] += step * way[i]
			if !e.fixed[i] {
				left[i] -= step * (way[i] + pull[i])
			}
			next += left[i] * left[i] / stiff[i]
		}
		for i := range way {
			way[i] = left[i]/stiff[i] + next/dot*way[i]
		}
		dot = next
	}
}

// pull is how the weighed differences of values draw on each of them.
func (e *easing) pull(v []float64) []float64 {
	all := make([]float64, len(v))
	for _, d := range e.runs {
		b := 0.0
		for a, n := range d.figures {
			b += d.w[a] * v[n]
		}
		for a, n := range d.figures {
			all[n] += d.weight * d.w[a] * b
		}
	}
	return all
}
