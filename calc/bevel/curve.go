package bevel

import "gonum.org/v1/gonum/interp"

// curve is the monotone interpolant of Fritsch and Butland (1984) through what
// is given: no overshoot is sawn. It is nil for fewer than two values or places
// that do not increase.
func curve(x, y []float64, given []bool) *interp.FritschButland {
	var xs, ys []float64
	for k, ok := range given {
		if ok {
			if n := len(xs); n > 0 && x[k] <= xs[n-1] {
				return nil
			}
			xs, ys = append(xs, x[k]), append(ys, y[k])
		}
	}
	if len(xs) < 2 {
		return nil
	}
	var c interp.FritschButland
	if err := c.Fit(xs, ys); err != nil {
		return nil
	}
	return &c
}

// inside is the values with the gaps between them filled by the monotone
// interpolant. Nothing is filled before the first or after the last.
func inside(x, y []float64, given []bool) []float64 {
	all := append([]float64{}, y...)
	c := curve(x, y, given)
	if c == nil {
		return all
	}
	first, last := span(given)
	for k := first; k <= last; k++ {
		if !given[k] {
			all[k] = c.Predict(x[k])
		}
	}
	return all
}
