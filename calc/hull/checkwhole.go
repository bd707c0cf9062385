package hull

import (
	"fmt"
	"math"
	"slices"

	"strakebook/calc/fair"
	"strakebook/calc/finding"
	"strakebook/calc/source"
)

// When a whole station is looked into, and when what would mend it is believed.
// Measured on the hulls of the detection tests.
const (
	wholeScore   = 4    // a value so many doubts off speaks against its station
	wholeLeast   = 3    // so many of them at least
	wholeShare   = 0.5  // and this share of those of its view
	wholeScatter = 2.0  // steps of scatter in a table that hides its own bad stations
	wholeMends   = 0.2  // what mends it leaves at most this share of the alarm about it
	wholeRival   = 0.8  // and at most this share of the departures that the next best leaves
	wholeCap     = 10.0 // no value counts for more doubts
	wholeMost    = 3    // so many in one table
	wholeReach   = 3    // stations on either side that a bad one is seen from
	wholeEases   = 8.0  // steps that the figures of a line are off together, at the least, to speak against stations
	wholeNear    = 0.08 // of the space between its neighbours: no station is set so close to one of them
	longTable    = 24   // in one of so many it hardly tells in the table's scatter
)

// whole is a table with one whole station or line put where it would be fair.
type whole struct {
	o        Offsets
	x        []float64
	lines    []int // of each line, which of the table as read it is
	stations []int // that were touched: nothing is said of single figures there
	found    finding.Finding
	gain     float64 // by how much less its figures depart from the cubics through their neighbours
}

// misplaced finds the stations and lines that are wrong as a whole: a station off
// its place, two that changed places, a column slipped a row, two lines that
// changed places. It gives the table as it would be fair, so that the rest can be
// judged, the stations touched, and one finding of each.
func misplaced(o Offsets, x []float64, r Rules) (whole, finding.List) {
	w := whole{o: o, x: x, lines: make([]int, len(o.Lines))}
	for i := range w.lines {
		w.lines[i] = i
	}
	var found finding.List
	for range wholeMost {
		next, some, ok := w.mendStation(r)
		if !ok {
			found = append(found, some...)
			next, ok = w.mendLines()
		}
		if !ok {
			break
		}
		next.stations = append(slices.Clone(w.stations), next.stations...)
		found = append(found, next.found)
		w = next
	}
	return w, found
}

// mendStation finds what would make the lines fair about a station: of all that may
// have happened to whole stations, that which leaves the figures departing least from
// the cubics through their neighbours. All are held to the one measure, and to the
// same stations as the next best, so that none wins by its own scatter or reach.
func (w whole) mendStation(r Rules) (best whole, unnamed finding.List, ok bool) {
	rows := w.o.rows(w.x)
	scale := fair.Scale(rows, r.Fair)
	z := fair.Raw(rows, r.Fair, scale, 0, len(w.x))
	suspects := w.suspects(rows, z)
	if len(suspects) == 0 && scale < wholeScatter {
		return best, nil, false
	}
	now := offTogether(rows, r, 0, len(w.x))
	var trials []whole
	weigh := func(t whole) {
		from, to := t.reach()
		t.gain = total(now, from, to) - total(offTogether(t.o.alone(t.x), r, from, to), from, to)
		if t.gain > best.gain {
			best, ok = t, true
		}
		t.o = Offsets{} // of all but the best no more than the weight is wanted
		trials = append(trials, t)
	}
	for _, p := range w.pairs(suspects) {
		weigh(w.swap(p[0], p[1]))
	}
	for _, k := range suspects {
		for _, t := range slices.Concat(w.slips(k, z), w.moves(k, rows)) {
			weigh(t)
		}
	}
	switch {
	case !ok:
	case best.mends(rows, r, scale) && best.alone(now, trials):
		return best, nil, true
	case best.eases(rows, r):
		return best, w.unnamed(best), false
	}
	return best, nil, false
}

// eases says that a trial halves the departures of several lines about the stations it
// touches, and of all together: something there is wrong as a whole.
func (t whole) eases(rows []fair.Row, r Rules) bool {
	from, to := t.reach()
	before, after := fair.Raw(rows, r.Fair, 1, from, to), fair.Raw(t.o.alone(t.x), r.Fair, 1, from, to)
	lines, was, is := 0, 0.0, 0.0
	for i := range before {
		a, b := sumOf(before[i]), sumOf(after[i])
		if was, is = was+a, is+b; a >= wholeEases && 2*b <= a {
			lines++
		}
	}
	return lines >= wholeLeast && 2*lines >= len(before) && 2*is <= was
}

// sumOf is how far the figures of a line are off together.
func sumOf(z []float64) float64 {
	sum := 0.0
	for _, v := range z {
		sum += math.Abs(v)
	}
	return sum
}

// unnamed says where whole stations are wrong in one of several ways that would mend
// them about as well.
func (w whole) unnamed(best whole) finding.List {
	a, b := best.stations[0], best.stations[len(best.stations)-1]
	if a == b {
		a, b = max(0, a-1), min(len(w.x)-1, b+1)
	}
	return finding.List{{Kind: StationsUnfair, Cell: w.o.Stations[a].Cell, Also: []source.Cell{w.o.Stations[b].Cell},
		Text: fmt.Sprintf("most lines are not fair about %s to %s, as if whole stations had changed places or lay off theirs: the figures cannot tell which", w.o.called(a), w.o.called(b))}}
}

// alone says that no other trial near it does nearly as well.
func (t whole) alone(now []float64, trials []whole) bool {
	from, to := t.reach()
	for _, other := range trials {
		a, b := other.reach()
		if b < from || a > to || slices.Equal(t.stations, other.stations) && t.found.Kind == other.found.Kind {
			continue
		}
		rival := wholeRival
		if t.found.Kind == StationOff && other.found.Kind == StationOff {
			rival = 1 // two stations side by side are moved by nearly the same figures
		}
		if both := total(now, min(a, from), max(b, to)); both-t.gain > rival*(both-other.gain) {
			return false
		}
	}
	return true
}

// mends says that a trial does away with nearly all the alarm about the stations
// it touches: as their lines would have it, or as the plain cubic would, since a
// bad station makes its neighbours doubt themselves.
func (t whole) mends(rows []fair.Row, r Rules, scale float64) bool {
	mended := t.o.rows(t.x)
	if len(t.x) < longTable {
		scale = fair.Scale(mended, r.Fair)
	}
	from, to := t.reach()
	return enough(cost(fair.Alone(rows, r.Fair, scale, from, to)), cost(fair.Alone(mended, r.Fair, scale, from, to))) ||
		enough(cost(fair.Raw(rows, r.Fair, scale, from, to)), cost(fair.Raw(mended, r.Fair, scale, from, to)))
}

// enough says that the alarm of several lines, and of all together, is all but
// gone: of one line alone a figure is wrong, not its station.
func enough(before, after []float64) bool {
	lines := 0
	for i := range before {
		if before[i] >= wholeScore*wholeScore && after[i] <= wholeMends*before[i] {
			lines++
		}
	}
	return lines >= wholeLeast && total(after, 0, len(after)) <= wholeMends*total(before, 0, len(before))
}

// cost is the alarm of each line.
func cost(z [][]float64) []float64 {
	all := make([]float64, len(z))
	for i, row := range z {
		for _, v := range row {
			if v = math.Abs(v); v > 2 {
				all[i] += math.Pow(min(v, wholeCap), 2)
			}
		}
	}
	return all
}

// reach is the stations from which those that a trial touches are seen.
func (t whole) reach() (from, to int) {
	return t.stations[0] - wholeReach, t.stations[len(t.stations)-1] + wholeReach
}

// offTogether is, of each station from one to another, how far its figures together are
// off the cubics through their neighbours, in what rounding explains.
func offTogether(rows []fair.Row, r Rules, from, to int) []float64 {
	all := make([]float64, len(rows[0].X))
	for _, row := range fair.Raw(rows, r.Fair, 1, from, to) {
		for k, v := range row {
			all[k] += math.Abs(v)
		}
	}
	return all
}

func total(all []float64, from, to int) float64 {
	sum := 0.0
	for _, v := range all[max(0, from):min(len(all), to+1)] {
		sum += v
	}
	return sum
}

// quiet is the scatter of the quieter half of a table, in that of the whole: in a
// short table one bad station spoils so many values that it hides itself.
func quiet(z [][]float64) float64 {
	var all []float64
	for _, row := range z {
		for _, v := range row {
			if v != 0 {
				all = append(all, math.Abs(v))
			}
		}
	}
	if len(all) == 0 {
		return 1
	}
	slices.Sort(all)
	return min(1, all[len(all)/4]/0.3186) // the quarter of a normal scatter
}

// suspects is the stations at which most lines of one view speak against their
// figures.
func (w whole) suspects(rows []fair.Row, z [][]float64) []int {
	var all []int
	score := wholeScore * quiet(z)
	for k := range w.o.Stations {
		if slices.Contains(w.stations, k) {
			continue
		}
		var off, have [Diagonal + 1]int
		for i := range z {
			view := w.o.Lines[i].View
			if rows[i].Given[k] {
				have[view]++
			}
			if math.Abs(z[i][k]) >= score {
				off[view]++
			}
		}
		for view := range off {
			if off[view] >= wholeLeast && float64(off[view]) >= wholeShare*float64(have[view]) {
				all = append(all, k)
				break
			}
		}
	}
	return all
}
