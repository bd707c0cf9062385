package fair

// Departures is, for each place of a row, how far its value lies from the cubic
// through its neighbours and the growth of rounding in that; ok is false where
// there is no value or fewer than five.
func Departures(row Row) (off, gauge []float64, ok []bool) {
	l := newLine(row)
	off, gauge, ok = make([]float64, len(row.X)), make([]float64, len(row.X)), make([]bool, len(row.X))
	for k, at := range l.at {
		if p, i := l.piece(k); len(p.x) >= 5 {
			y, g := p.leaveOut(i, 4)
			off[at], gauge[at], ok[at] = p.y[i]-y, g, true
		}
	}
	return off, gauge, ok
}

// Fill is what the cubic through the nearest given values says at a place of
// the row, whose own value takes no part; ok is false with fewer than four
// given, or none on one side.
func Fill(row Row, at int) (y float64, ok bool) {
	l := newLine(row)
	if k := l.index(at); k >= 0 {
		l = l.without(k)
	}
	before := 0
	for before < len(l.x) && l.x[before] < row.X[at] {
		before++
	}
	if len(l.x) < 4 || before == 0 || before == len(l.x) {
		return 0, false
	}
	from := max(0, min(before-2, len(l.x)-4))
	var w [4]float64
	Weights(l.x[from:from+4], row.X[at], w[:])
	for i := range w {
		y += w[i] * l.y[from+i]
	}
	return y, true
}
