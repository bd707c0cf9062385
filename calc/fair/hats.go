package fair

import (
	"math"

	"gonum.org/v1/gonum/mat"
)

// hats is the smoothers of rows at the same places, by which of the places have
// readings: many rows share one.
type hats struct {
	x      []float64
	order  int     // of the differences that are held small
	weight float64 // how small
	known  map[string]*mat.Dense
}

func newHats(x []float64, order int, weight float64) hats {
	return hats{x, order, weight, map[string]*mat.Dense{}}
}

// of is the matrix that turns readings into their faired run:
// (W + weight D'D)^-1 W, where W is 1 at the places given and D the divided
// differences, scaled so that at even spacing they are plain differences. It is
// nil for so few readings that they have no run.
func (h hats) of(given []bool) *mat.Dense {
	mask := make([]byte, len(given))
	for i, g := range given {
		mask[i] = '0'
		if g {
			mask[i] = '1'
		}
	}
	if hat, ok := h.known[string(mask)]; ok {
		return hat
	}
	hat := h.make(given)
	h.known[string(mask)] = hat
	return hat
}

func (h hats) make(given []bool) *mat.Dense {
	n := len(given)
	if count(given) < h.order {
		return nil
	}
	a := mat.NewDense(n, n, nil)
	w := mat.NewDense(n, n, nil)
	for i, g := range given {
		if g {
			a.Set(i, i, 1)
			w.Set(i, i, 1)
		}
	}
	for i := 0; i+h.order < n; i++ {
		d := h.difference(i)
		for p, dp := range d {
			for q, dq := range d {
				a.Set(i+p, i+q, a.At(i+p, i+q)+h.weight*dp*dq)
			}
		}
	}
	var hat mat.Dense
	if err := hat.Solve(a, w); err != nil {
		return nil
	}
	return &hat
}

// difference is the weights of the divided difference of the places from i on,
// for the mean spacing of all places and for the reach of these.
func (h hats) difference(i int) []float64 {
	n := len(h.x)
	step := (h.x[n-1] - h.x[0]) / float64(n-1)
	scale := math.Sqrt((h.x[i+h.order] - h.x[i]) / (float64(h.order) * step))
	for k := 1; k <= h.order; k++ {
		scale *= float64(k) * step
	}
	d := make([]float64, h.order+1)
	for p := range d {
		d[p] = scale
		for q := range d {
			if q != p {
				d[p] /= h.x[i+p] - h.x[i+q]
			}
		}
	}
	return d
}
