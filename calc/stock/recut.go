package stock

import (
	"cmp"
	"slices"
)

// lot is pieces of one length.
type lot struct {
	units  int // length with a kerf, in the units of the list, taken up
	demand int
}

// cutter cuts a list of pieces of given lengths, no joints to choose, from the
// sticks of one pool: by the least cost of cutting them in fractions of sticks,
// whole sticks of that taken and what is left solved anew.
type cutter struct {
	lots  []lot // the longest first
	holds []int // of each kind of stick, in units, taken down
	costs []float64
	left  []int // of each kind; negative for as many as are wanted
	best  []float64
	from  []int32 // of each capacity: the copies of the lot last taken, by lot
}

// mostUnits bounds the size of the tables.
const mostUnits = 20_000

// relax is the least cost in fractions of sticks for the demand, and the columns
// with how often each is cut; false where no free stick holds some lot.
func (c *cutter) relax(demand []int) (cols []column, total float64, ok bool) {
	var rows []int // lots asked for
	for i, n := range demand {
		if n > 0 {
			rows = append(rows, i)
		}
	}
	var counted []int
	rowOf := make([]int, len(c.holds))
	for k := range c.holds {
		rowOf[k] = -1
		if c.left[k] >= 0 {
			rowOf[k] = len(rows) + len(counted)
			counted = append(counted, k)
		}
	}
	s := newSimplex(len(rows), len(counted))
	for r, i := range rows {
		best, n := -1, 0
		for k, h := range c.holds {
			if q := min(demand[i], h/c.lots[i].units); c.left[k] < 0 && q > 0 && (best < 0 || c.costs[k]*float64(n) < c.costs[best]*float64(q)) {
				best, n = k, q
			}
		}
		if best < 0 {
			return nil, 0, false
		}
		col := column{kind: best, cost: c.costs[best], count: make([]int32, len(rows))}
		col.count[r] = int32(n)
		s.basis[r] = col
		s.inverse[r][r] = 1 / float64(n)
		s.value[r] = float64(demand[i]) / float64(n)
	}
	for n, k := range counted {
		r := len(rows) + n
		s.basis[r] = column{kind: -2}
		s.inverse[r][r], s.value[r] = 1, float64(c.left[k])
	}
	for range 200 + 40*len(rows) {
		s.prices()
		if !c.step(s, rows, demand, rowOf) {
			break
		}
	}
	for r := range s.basis {
		if b := s.basis[r]; b.kind >= 0 && s.value[r] > 1e-9 {
			whole := make([]int32, len(c.lots))
			for q, n := range b.count {
				whole[rows[q]] = n
			}
			cols = append(cols, column{kind: b.kind, cost: b.cost, count: whole, x: s.value[r]})
		}
	}
	return cols, s.total(), true
}

// step brings in the column that gains most; false where none gains.
func (c *cutter) step(s *simplex, rows, demand []int, rowOf []int) bool {
	for r := range rows {
		if s.dual[r] < -1e-9 { // more of a size than is asked for costs nothing
			return s.enter(column{kind: -1, count: make([]int32, len(rows))}, r)
		}
	}
	for _, r := range rowOf {
		if r >= 0 && s.dual[r] > 1e-9 {
			return s.enter(column{kind: -2, count: make([]int32, len(rows))}, r)
		}
	}
	c.fill(s.dual, rows, demand)
	best, gain := -1, 1e-7
	for k, h := range c.holds {
		g := c.best[h] - c.costs[k]
		if r := rowOf[k]; r >= 0 {
			g += s.dual[r]
		}
		if g > gain*max(1, c.costs[k]) {
			best, gain = k, g
		}
	}
	if best < 0 {
		return false
	}
	return s.enter(column{kind: best, cost: c.costs[best], count: c.pattern(c.holds[best], rows)}, rowOf[best])
}

// fill finds, for every capacity, the most that pieces are worth at the duals,
// none more often than it is asked for.
func (c *cutter) fill(dual []float64, rows, demand []int) {
	most := slices.Max(c.holds)
	if len(c.best) < most+1 {
		c.best = make([]float64, most+1)
	}
	if len(c.from) < (most+1)*len(rows) {
		c.from = make([]int32, (most+1)*len(c.lots))
	}
	best := c.best[:most+1]
	clear(best)
	for r, i := range rows {
		from := c.from[r*(most+1) : (r+1)*(most+1)]
		clear(from)
		u, worth := c.lots[i].units, dual[r]
		if worth <= 1e-12 {
			continue
		}
		n := min(demand[i], most/u)
		for cap := most; cap >= u; cap-- {
			for q := 1; q <= n && q*u <= cap; q++ {
				if v := best[cap-q*u] + float64(float64(q)*worth); v > best[cap]+1e-12 {
					best[cap], from[cap] = v, int32(q)
				}
			}
		}
	}
}

// pattern is the pieces that fill found for a capacity.
func (c *cutter) pattern(hold int, rows []int) []int32 {
	most := slices.Max(c.holds)
	count := make([]int32, len(rows))
	for r := len(rows) - 1; r >= 0; r-- {
		q := c.from[r*(most+1)+hold]
		count[r] = q
		hold -= int(q) * c.lots[rows[r]].units
	}
	return count
}

// cut is whole columns that serve the demand, and the least cost in fractions.
func (c *cutter) cut() (out []column, bound float64, ok bool) {
	demand := make([]int, len(c.lots))
	rest := 0
	for i, l := range c.lots {
		demand[i] = l.demand
		rest += l.demand
	}
	for round := 0; rest > 0; round++ {
		cols, total, ok := c.relax(demand)
		if !ok {
			return nil, 0, false
		}
		if round == 0 {
			bound = total
		}
		slices.SortStableFunc(cols, func(a, b column) int {
			return cmp.Or(cmp.Compare(b.x-float64(int(b.x)), a.x-float64(int(a.x))), cmp.Compare(filled(c, b), filled(c, a)))
		})
		took := false
		for i, col := range cols {
			n := int(col.x + 1e-6)
			if n == 0 && !took && i == len(cols)-1 {
				col, n = cols[0], 1
			}
			for ; n > 0; n-- {
				if !c.take(&col, demand) {
					break
				}
				took = true
				for _, q := range col.count {
					rest -= int(q)
				}
				out = append(out, column{kind: col.kind, cost: col.cost, count: slices.Clone(col.count)})
			}
		}
		if !took {
			col := cols[0]
			for i := range col.count {
				col.count[i] = min(col.count[i], int32(demand[i]))
			}
			if !c.take(&col, demand) {
				return nil, 0, false
			}
			for _, q := range col.count {
				rest -= int(q)
			}
			out = append(out, col)
		}
	}
	return out, bound, true
}

// filled is how full a column is.
func filled(c *cutter, col column) int {
	n := 0
	for i, q := range col.count {
		n += int(q) * c.lots[i].units
	}
	return n - c.holds[col.kind]
}

// take serves a column once, cut down to what is still asked for; false where
// nothing of it is, or its stick is used up.
func (c *cutter) take(col *column, demand []int) bool {
	if c.left[col.kind] == 0 {
		return false
	}
	any := false
	for i, q := range col.count {
		if int(q) > demand[i] {
			return false
		}
		any = any || q > 0
	}
	if !any {
		return false
	}
	for i, q := range col.count {
		demand[i] -= int(q)
	}
	if c.left[col.kind] > 0 {
		c.left[col.kind]--
	}
	return true
}
