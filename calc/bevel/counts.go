package bevel

import (
	"fmt"
	"math"

	"strakebook/calc/finding"
	"strakebook/calc/source"
)

// surely is how much nearer, in squares of the gauge's step, readings must come
// to those beside them for a station's shift to be told: our choice.
const surely = 8

// shifted is the station from which on a seam's readings are those of the seams
// beside it a station out, as where one was skipped in writing, or written twice.
func shifted(b Readings, i, by int, j judged) (station int, ok bool) {
	beside, has := j.mean(i)
	y, given := j.readings.Y[i], j.readings.Given[i]
	step := float64(b.step())
	// Off is how far the reading k lies from the seams beside it, so many stations on.
	off := func(k, by int) (float64, bool) {
		at := k + by
		if !given[k] || at < 0 || at >= len(y) || !has[at] {
			return 0, false
		}
		d := min(math.Abs(y[k]-beside[at]), 4*step) // one odd reading shall not decide
		return d * d, true
	}
	gain, most := 0.0, surely*step*step
	for from := len(y) - 1; from > 0; from-- {
		was, okWas := off(from, 0)
		is, okIs := off(from, by)
		if okWas && okIs {
			if gain += was - is; gain > most {
				station, most, ok = from, gain, true
			}
		}
	}
	return station, ok
}

// mean is the mean of the seams beside one, a station each, and where they have
// one.
func (j judged) mean(i int) (v []float64, has []bool) {
	n := len(j.readings.X)
	v, has = make([]float64, n), make([]bool, n)
	for k := range v {
		count := 0
		for _, o := range j.readings.Beside[i] {
			if j.readings.Given[o][k] {
				v[k], count = v[k]+j.readings.Y[o][k], count+1
			}
		}
		if has[k] = count > 0; has[k] {
			v[k] /= float64(count)
		}
	}
	return v, has
}

// counts compares the readings with the stations; out says that the seam is seen
// to lie a station out.
func counts(b Readings, i int, s Seam, j judged) (found finding.List, out bool) {
	first, last := span(j.readings.Given[i])
	lacks := short(b, i, s, j)
	switch {
	case len(s.Readings) > len(b.Stations):
		text := fmt.Sprintf("%s has %d readings for %d %ss", s.name(), len(s.Readings), len(b.Stations), b.Places)
		at, out := shifted(b, i, -1, j)
		if out {
			text += fmt.Sprintf(": from %s on they fit the strakes beside it a %s back, as if one was written twice", b.called(at), b.Places)
		}
		return finding.List{{Kind: Counted, Cell: s.Readings[len(b.Stations)].Cell, Also: []source.Cell{s.Cell}, Text: text}}, out
	case first > last || first == 0 && last == len(b.Stations)-1:
		return nil, false
	case lacks >= 0:
		text := fmt.Sprintf("%s has no reading at %s, where the other strakes have", s.name(), b.called(lacks))
		at, out := shifted(b, i, 1, j)
		if out {
			text += fmt.Sprintf(": from %s on its readings fit theirs a %s on, as if one was skipped", b.called(at), b.Places)
		}
		return finding.List{{Kind: Counted, Cell: s.Readings[lacks].Cell, Also: []source.Cell{s.Cell}, Text: text}}, out
	}
	return finding.List{{Kind: HoodEnd, Cell: s.Cell,
		Text: fmt.Sprintf("%s is read from %s to %s only", s.name(), b.called(first), b.called(last))}}, false
}

// short is an end station left blank at which most other seams are read; -1 for
// none. A dash says that the strake is not there.
func short(b Readings, i int, s Seam, j judged) int {
	for _, k := range []int{len(b.Stations) - 1, 0} {
		if k >= len(s.Readings) || s.Readings[k].State != source.Blank {
			continue
		}
		read := 0
		for o := range b.Seams {
			if o != i && j.readings.Given[o][k] {
				read++
			}
		}
		if read > 1 && 2*read > len(b.Seams) {
			return k
		}
	}
	return -1
}
