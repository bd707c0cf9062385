package stock

// column is one way of cutting one kind of stick: so many of each size.
type column struct {
	kind  int
	cost  float64
	count []int32 // by size
	x     float64 // how often it is cut
}

// simplex holds the least cost of covering a demand by columns, the columns made
// as they are wanted (Gilmore and Gomory 1961): the revised method with the
// inverse of the basis kept whole. Rows are the sizes, then the counted sticks.
// Products are rounded before they are added, so that every machine comes to the
// same.
type simplex struct {
	m, rows int
	inverse [][]float64
	basis   []column // of each row; kind -1 for what is over of a size, -2 for a counted stick left
	value   []float64
	dual    []float64
	scratch []float64
}

func newSimplex(m, counted int) *simplex {
	s := &simplex{m: m, rows: m + counted, basis: make([]column, m+counted)}
	s.inverse = make([][]float64, s.rows)
	for i := range s.inverse {
		s.inverse[i] = make([]float64, s.rows)
	}
	s.value, s.dual, s.scratch = make([]float64, s.rows), make([]float64, s.rows), make([]float64, s.rows)
	return s
}

// prices works the duals out: what one more of each size costs, and what one
// more of each counted stick saves, as a negative.
func (s *simplex) prices() {
	clear(s.dual)
	for i := range s.basis {
		if c := s.basis[i].cost; c != 0 {
			for k, v := range s.inverse[i] {
				s.dual[k] += float64(c * v)
			}
		}
	}
}

// enter brings a column into the basis; false where it would help without end.
func (s *simplex) enter(c column, row int) bool {
	d := s.scratch
	for i := range d {
		v := 0.0
		for k, n := range c.count {
			if n != 0 {
				v += float64(float64(n) * s.inverse[i][k])
			}
		}
		if row >= 0 {
			sign := 1.0
			if c.kind == -1 {
				sign = -1
			}
			v += float64(sign * s.inverse[i][row])
		}
		d[i] = v
	}
	out, least := -1, 0.0
	for i, v := range d {
		if v > 1e-9 {
			if r := s.value[i] / v; out < 0 || r < least-1e-12 || r < least+1e-12 && v > d[out] {
				out, least = i, r
			}
		}
	}
	if out < 0 {
		return false
	}
	pivot := d[out]
	for k := range s.inverse[out] {
		s.inverse[out][k] /= pivot
	}
	s.value[out] = least
	for i, v := range d {
		if i == out || v == 0 {
			continue
		}
		for k, w := range s.inverse[out] {
			s.inverse[i][k] -= float64(v * w)
		}
		s.value[i] = max(0, s.value[i]-float64(v*least))
	}
	s.basis[out] = c
	return true
}

// total is the cost now.
func (s *simplex) total() float64 {
	t := 0.0
	for i := range s.basis {
		t += float64(s.basis[i].cost * s.value[i])
	}
	return t
}
