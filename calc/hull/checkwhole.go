package hull

import (
	"math"
	"slices"

	"strakebook/calc/fair"
	"strakebook/calc/finding"
)

// When a whole station is looked into, and when what would mend it is believed.
// Measured on the hulls of the detection test.
const (
	wholeScore = 4    // a value so many doubts off speaks against its station
	wholeLeast = 3    // so many of them at least
	wholeShare = 0.5  // and this share of those of its view
	wholeMends = 0.2  // what mends it leaves at most this share of the alarm about it
	wholeCap   = 10.0 // no value counts for more doubts
	wholeMost  = 3    // so many in one table
	wholeReach = 3    // stations on either side that a bad one is seen from
	longTable  = 24   // in one of so many it hardly tells in the table's scatter
)

// whole is a table with one whole station or line put where it would be fair.
type whole struct {
	o        Offsets
	x        []float64
	lines    []int // of each line, which of the table as read it is
	stations []int // that were touched: nothing is said of single figures there
	found    finding.Finding
	cost     float64
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
		next, ok := w.mendStation(r)
		if !ok {
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

// mendStation finds the station that speaks against itself and what would mend it
// best.
func (w whole) mendStation(r Rules) (best whole, ok bool) {
	rows := w.o.rows(w.x)
	scale := fair.Scale(rows, r.Fair)
	z := fair.Raw(rows, r.Fair, scale, 0, len(w.x))
	for _, k := range w.suspects(rows, z) {
		for _, t := range slices.Concat(w.swaps(k), w.slips(k, z), w.moves(k, rows)) {
			if w.mends(&t, rows, r, scale) && (!ok || t.cost < best.cost) {
				best, ok = t, true
			}
		}
	}
	return best, ok
}

// mends says that a trial does away with nearly all the alarm about the stations
// it touches: as their lines would have it, or as the plain cubic would, since a
// bad station makes its neighbours doubt themselves.
func (w whole) mends(t *whole, rows []fair.Row, r Rules, scale float64) bool {
	mended := t.o.rows(t.x)
	if len(t.x) < longTable {
		scale = fair.Scale(mended, r.Fair)
	}
	from, to := t.stations[0]-wholeReach, t.stations[len(t.stations)-1]+wholeReach
	alone, raw := cost(fair.Alone(mended, r.Fair, scale, from, to)), cost(fair.Raw(mended, r.Fair, scale, from, to))
	t.cost = total(alone) + total(raw)
	return enough(cost(fair.Alone(rows, r.Fair, scale, from, to)), alone) || enough(cost(fair.Raw(rows, r.Fair, scale, from, to)), raw)
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
	return lines >= wholeLeast && total(after) <= wholeMends*total(before)
}

func total(all []float64) float64 {
	sum := 0.0
	for _, v := range all {
		sum += v
	}
	return sum
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
