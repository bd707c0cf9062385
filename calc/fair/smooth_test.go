package fair

import (
	"math"

	"gonum.org/v1/gonum/mat"
)

// Studentised fairs a run of readings at even places by the third-difference
// penalised smoother with weight one, and scores how far each reading lies from
// it: t is in scales of the run's own scatter, never less than 0.6 of the
// resolution. Readings not given take no part and their t is 0; the faired
// values cover every place. Fewer than five readings are returned as they are
// with scores of 0.
func Studentised(y []float64, given []bool, resolution float64) (faired, t []float64) {
	if len(y) != len(given) {
		panic("fair: readings and given differ in length")
	}
	n := len(y)
	faired, t = append([]float64{}, y...), make([]float64, n)
	count := 0
	for _, g := range given {
		if g {
			count++
		}
	}
	if count < 5 {
		return faired, t
	}
	hat := smoother(given)
	var residuals []float64
	for i := range n {
		sum := 0.0
		for k := range n {
			if given[k] {
				sum += hat.At(i, k) * y[k]
			}
		}
		faired[i] = sum
		if given[i] {
			t[i] = 1.2 * (y[i] - sum) / math.Sqrt(max(1e-9, 1-hat.At(i, i)))
			residuals = append(residuals, math.Abs(t[i]))
		}
	}
	spread := max(1.4826*Median(residuals), 0.6*resolution)
	for i := range t {
		t[i] /= spread
	}
	return faired, t
}

// smoother is the hat matrix (W + D'D)^-1 W of third differences.
func smoother(given []bool) *mat.Dense {
	n := len(given)
	a := mat.NewDense(n, n, nil)
	w := mat.NewDense(n, n, nil)
	for i, g := range given {
		if g {
			a.Set(i, i, 1)
			w.Set(i, i, 1)
		}
	}
	third := [4]float64{-1, 3, -3, 1}
	for i := 0; i+3 < n; i++ {
		for p, dp := range third {
			for q, dq := range third {
				a.Set(i+p, i+q, a.At(i+p, i+q)+dp*dq)
			}
		}
	}
	var hat mat.Dense
	if err := hat.Solve(a, w); err != nil {
		return w // fewer than three readings: callers never ask
	}
	return &hat
}
