package fair

// Alone is how far each value from one place to another is off what its own row
// makes of it, in doubts; 0 elsewhere, and where the row makes nothing of it.
func Alone(rows []Row, r Rules, scale float64, from, to int) [][]float64 {
	return scores(rows, from, to, func(l line, k int) float64 {
		says, ok := l.along(k, scale, r.Least)
		if !ok {
			return 0
		}
		return says.score(l.y[k])
	})
}

// Raw is how far each of them is off the cubic through its neighbours, in what
// rounding explains; 0 where there are too few.
func Raw(rows []Row, r Rules, scale float64, from, to int) [][]float64 {
	return scores(rows, from, to, func(l line, k int) float64 { return l.rawAt(k, r.Least, scale) })
}

// raw is how far each value of a row of n places is off.
func (l line) raw(n, least int, scale float64) []float64 {
	all := make([]float64, n)
	for k, at := range l.at {
		all[at] = l.rawAt(k, least, scale)
	}
	return all
}

func (l line) rawAt(k, least int, scale float64) float64 {
	p, n := l.piece(k)
	if len(p.x) < max(least, 5) {
		return 0
	}
	y, gauge := p.leaveOut(n, 4)
	return (p.y[n] - y) / gauge / scale
}

func scores(rows []Row, from, to int, score func(l line, k int) float64) [][]float64 {
	all := make([][]float64, len(rows))
	for i, row := range rows {
		all[i] = make([]float64, len(row.Y))
		l := newLine(row)
		for k, at := range l.at {
			if at >= from && at <= to {
				all[i][at] = score(l, k)
			}
		}
	}
	return all
}

// Scale is the scatter of a table of rows.
func Scale(rows []Row, r Rules) float64 { return scale(rows, r) }

// Place is where a row's k-th place would have to lie for its value to be on the
// cubic through its neighbours, between the places beside it, and how steep the
// cubic is there; ok is false where there is no such place.
func Place(row Row, at int) (x, steep float64, ok bool) {
	l := newLine(row)
	k := l.index(at)
	if k < 1 || k > len(l.x)-2 || len(l.x) < 5 {
		return 0, 0, false
	}
	y := l.y[k]
	lo, hi := l.x[k-1], l.x[k+1]
	off := func(x float64) float64 {
		p := l
		p.x = append([]float64{}, l.x...)
		p.x[k] = x
		v, _, _ := p.through(k, p.about(k, 4), 4)
		return v - y
	}
	a, b := off(lo), off(hi)
	if a == 0 || b == 0 || (a > 0) == (b > 0) {
		return 0, 0, false
	}
	steep = (b - a) / (hi - lo)
	for range 40 {
		mid := (lo + hi) / 2
		if v := off(mid); (v > 0) == (a > 0) {
			lo = mid
		} else {
			hi = mid
		}
	}
	return (lo + hi) / 2, steep, true
}
