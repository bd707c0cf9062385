package fair

import "gonum.org/v1/gonum/mat"

// view is what withdrawing each reading of a row would do.
type view struct {
	seen   []bool
	ease   []float64 // how far off it is, by how it would ease the row
	spread []float64 // the scatter of the rest
	rows   []int     // how many rows beside it was seen against
}

// against looks at what sets a row apart from the mean of those beside it.
func (j judging) against(row int) (view, bool) {
	both := append([]bool{}, j.given[row]...)
	apart, rows := make([]float64, len(both)), make([]int, len(both))
	share := 0.0
	for k := range both {
		sum := 0.0
		for _, b := range j.beside(row) {
			if j.given[b][k] {
				sum += j.Y[b][k]
				rows[k]++
			}
		}
		if both[k] = both[k] && rows[k] > 0; both[k] {
			apart[k] = j.Y[row][k] - sum/float64(rows[k])
			share += 1 + 1/float64(rows[k])
		}
	}
	n := count(both)
	hat := j.between.of(both)
	if n < Least || hat == nil {
		return view{}, false
	}
	v := j.view(hat, apart, both, share/float64(n), parts)
	v.rows = rows
	return v, true
}

// eases is how rough a row is about its smooth run, and by how much withdrawing
// each reading would ease it.
func eases(hat *mat.Dense, y []float64, given []bool) (rough float64, ease []float64) {
	smooth := apply(hat, y, given)
	ease = make([]float64, len(y))
	for k := range y {
		if given[k] {
			e := y[k] - smooth[k]
			rough += y[k] * e
			ease[k] = e * e / max(1e-9, 1-hat.At(k, k))
		}
	}
	return max(0, rough), ease
}

// departure is how far a reading lies off the run of the others.
func departure(hat *mat.Dense, y []float64, given []bool, at int) float64 {
	return (y[at] - apply(hat, y, given)[at]) / max(1e-9, 1-hat.At(at, at))
}

func apply(hat *mat.Dense, y []float64, given []bool) []float64 {
	all := make([]float64, len(y))
	for i := range all {
		for k := range y {
			if given[k] {
				all[i] += hat.At(i, k) * y[k]
			}
		}
	}
	return all
}

// beside is the rows beside one that have readings enough.
func (j judging) beside(row int) []int {
	var all []int
	if len(j.Beside) == 0 {
		return nil
	}
	for _, b := range j.Beside[row] {
		if count(j.given[b]) >= Least {
			all = append(all, b)
		}
	}
	return all
}

func without(given []bool, at ...int) []bool {
	all := append([]bool{}, given...)
	for _, k := range at {
		all[k] = false
	}
	return all
}

func count(given []bool) int {
	n := 0
	for _, g := range given {
		if g {
			n++
		}
	}
	return n
}
