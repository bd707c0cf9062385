package hull

import "math"

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
	e := easing{t: t}
	e.number()
	for i := range t.v {
		e.alongHull(i)
	}
	for k := range t.x {
		e.acrossLines(k, Waterline)
		e.acrossLines(k, Buttock)
	}
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
}

func (e *easing) number() {
	for i, row := range e.t.v {
		at := make([]int, len(row))
		for k := range row {
			at[k] = -1
			if e.t.ok[i][k] {
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
}

// alongHull takes the differences of one line along the hull.
func (e *easing) alongHull(i int) {
	var run []int
	var x []float64
	for k := range e.t.x {
		if n := e.at[i][k]; n >= 0 {
			if len(run) > 0 && e.t.o.chineBetween(e.t.o.Lines[i], k) {
				e.differences(run, x)
				run, x = nil, nil
			}
			run, x = append(run, n), append(x, e.t.x[k])
		}
	}
	e.differences(run, x)
}

// acrossLines takes the differences of a station's waterlines or buttocks, up or
// out, as far as there is no chine between them.
func (e *easing) acrossLines(k int, role Role) {
	var run []int
	var x []float64
	last := math.Inf(-1)
	for {
		next, at := -1, math.Inf(1)
		for i, p := range e.t.pairs {
			line := max(p.out, p.up)
			if p.role != role {
				continue
			}
			if a := e.t.o.Lines[line].At.Value.Inches(); a > last && a < at {
				next, at = i, a
			}
		}
		if next < 0 {
			break
		}
		p := e.t.pairs[next]
		n := e.at[max(p.out, p.up)][k]
		if n < 0 || len(run) > 0 && e.t.chineWithin(k, role, last, at) {
			e.differences(run, x)
			run, x = nil, nil
		}
		if n >= 0 {
			run, x = append(run, n), append(x, at)
		}
		last = at
	}
	e.differences(run, x)
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

// differences adds the third differences of a run of figures. Those on a flat
// stay.
func (e *easing) differences(run []int, x []float64) {
	values := make([]float64, len(run))
	for i, n := range run {
		values[i] = e.read[n]
	}
	for i, flat := range level(values, e.t.step) {
		if flat {
			e.fixed[run[i]], e.fixed[run[i+1]] = true, true
		}
	}
	first := len(e.runs)
	for i := 0; i+3 < len(run); i++ {
		d := third{figures: [4]int(run[i : i+4])}
		sum := 0.0
		for a := range 4 {
			w := 1.0
			for b := range 4 {
				if a != b {
					w /= x[i+a] - x[i+b]
				}
			}
			d.w[a] = w
			sum += w * w
		}
		for a := range d.w {
			d.w[a] *= math.Sqrt(20 / sum) // as 1 3 3 1 at even spacing
		}
		for _, n := range d.figures {
			e.in[n] = append(e.in[n], len(e.runs))
		}
		e.runs = append(e.runs, d)
	}
	e.weigh(e.runs[first:])
}

// Around each difference so many others of its run tell how far the hull itself
// bends there, and it is never taken to bend less than so many steps. Both are
// our choice: measured on thirteen hulls of formulas, the eased figures lie on
// the mean 9 % nearer the true ones than those read, and on none farther.
const (
	around    = 2
	leastBend = 0.54
)

// weigh sets how much each difference of a run counts: less the more the
// differences around it are greater than rounding makes them.
func (e *easing) weigh(run []third) {
	rounding := e.t.step * e.t.step / 12
	least := leastBend * leastBend * e.t.step * e.t.step
	for i := range run {
		sum, n := 0.0, 0.0
		for j := max(0, i-around); j <= min(len(run)-1, i+around); j++ {
			d := e.bend(run[j])
			sum, n = sum+d*d, n+1
		}
		run[i].weight = rounding / max(sum/n-20*rounding, least)
	}
}

func (e *easing) bend(d third) float64 {
	sum := 0.0
	for a, n := range d.figures {
		sum += d.w[a] * e.v[n]
	}
	return sum
}

// sweeps is how often every figure is moved to where the sum is least: after so
// many what is left to gain is long waves of little slope.
const sweeps = 100

// settle moves the figures one after another, again and again.
func (e *easing) settle() {
	half := e.t.step / 2
	for range sweeps {
		for n := range e.v {
			if e.fixed[n] || len(e.in[n]) == 0 {
				continue
			}
			pull, stiff := e.v[n]-e.read[n], 1.0
			for _, i := range e.in[n] {
				d := e.runs[i]
				for a, m := range d.figures {
					if m == n {
						pull += d.weight * d.w[a] * e.bend(d)
						stiff += d.weight * d.w[a] * d.w[a]
					}
				}
			}
			v := e.v[n] - pull/stiff
			e.v[n] = max(e.read[n]-half, min(e.read[n]+half, v))
		}
	}
	for i, at := range e.at {
		for k, n := range at {
			if n >= 0 {
				e.t.v[i][k] = e.v[n]
			}
		}
	}
}
