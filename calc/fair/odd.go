package fair

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/mat"
)

// Readings is rows of readings that one hand took at the same places.
type Readings struct {
	X          []float64   // of the places, increasing
	Y          [][]float64 // a row each; Y means something only where Given
	Given      [][]bool
	Beside     [][]int // of each row: the rows that should run much like it
	Resolution float64 // the smallest step the readings are given in
}

// Odd is a reading that lies off the smooth run of its row.
type Odd struct {
	Row, At int
	T       float64 // how far off, in the row's own scatters
	Faired  float64 // what the run says there without it
}

// The differences that a smooth run holds small: a row bends slowly, and rows side
// by side part slowly.
const (
	bends = 3
	parts = 1
)

// Least is the fewest readings a row is judged by.
const Least = 6

// How readings are judged: figures measured on the seams of hulls and on smooth
// runs of our own, with readings scattered and rounded; none is published.
const (
	grain       = 0.6  // the scatter is never believed to be less than this share of the resolution,
	belief      = 6    // and counts as much as so many readings against what the row itself shows
	easedBeside = 0.25 // with rows beside it a row alarms at so many scatters less
	sharedAlarm = 1.5  // where the rows beside it do not depart alike: so many less apart from them
	apartAlarm  = 0.25 // and apart from them alone at so many less
)

// OddReadings finds the readings that lie off the smooth run of their row by
// more than alarm scatters. Each row is faired at true spacing by the smoother of
// third differences, and a reading is judged by how much its withdrawal eases the
// row against the scatter of the rest. Where a row has others beside it, it is
// judged by what sets it apart from them too: the hull's own shape, which they
// share, falls out, and a reading at a row's end shows as well as one inside. The
// oddest reading of all is withdrawn first, so that it casts no doubt on its
// neighbours along the row or beside it. Rows of fewer than Least readings are not
// judged.
func (r Readings) OddReadings(alarm float64) []Odd {
	r.check()
	j := judging{Readings: r, hats: newHats(r.X, bends, 1), between: newHats(r.X, parts, 1), alarm: alarm, taken: make([]int, len(r.Y))}
	for _, g := range r.Given {
		j.given = append(j.given, append([]bool{}, g...))
	}
	j.scatter = j.presumed()
	worst := make([]suspect, len(r.Y))
	for i := range worst {
		worst[i] = j.suspect(i)
	}
	var all []Odd
	for {
		row := 0
		for i := range worst {
			if worst[i].score > worst[row].score {
				row = i
			}
		}
		if len(worst) == 0 || worst[row].score < 1 {
			return all
		}
		w := worst[row]
		all = append(all, Odd{Row: row, At: w.at, T: w.t, Faired: r.Y[row][w.at] - w.off})
		j.given[row][w.at] = false
		j.taken[row]++
		for i := range worst {
			if i == row || slices.Contains(j.beside(i), row) {
				worst[i] = j.suspect(i)
			}
		}
	}
}

// Faired is a row as faired at true spacing through its readings, less those
// withdrawn; it covers every place. Of fewer than three readings it is the row
// itself.
func (r Readings) Faired(row int, withdrawn ...int) []float64 {
	r.check()
	given := without(r.Given[row], withdrawn...)
	hat := newHats(r.X, bends, 1).of(given)
	if hat == nil {
		return append([]float64{}, r.Y[row]...)
	}
	return apply(hat, r.Y[row], given)
}

func (r Readings) check() {
	if len(r.Y) != len(r.Given) || len(r.Beside) != 0 && len(r.Beside) != len(r.Y) {
		panic("fair: rows of readings differ in number")
	}
	for i := range r.Y {
		if len(r.Y[i]) != len(r.X) || len(r.Given[i]) != len(r.X) {
			panic("fair: rows of readings differ in length")
		}
	}
}

// judging is readings while they are judged.
type judging struct {
	Readings
	hats    hats // of a row
	between hats // of the difference between rows
	alarm   float64
	scatter float64 // presumed of a row before it is looked at
	given   [][]bool
	taken   []int // readings withdrawn from each row
}

// presumed is the scatter of the middle one of the rows, where there are several.
func (j judging) presumed() float64 {
	least := grain * j.Resolution
	var all []float64
	for i, y := range j.Y {
		n := count(j.given[i])
		if hat := j.hats.of(j.given[i]); n >= Least && hat != nil {
			rough, _ := eases(hat, y, j.given[i])
			all = append(all, math.Sqrt(rough/float64(n-3)))
		}
	}
	if len(all) < 3 {
		return least
	}
	return max(least, Median(all))
}

// suspect is the reading of a row that is likeliest to be odd: it is, from a
// score of 1.
type suspect struct {
	at       int
	score, t float64
	off      float64 // from the run of the others
}

func (j judging) suspect(row int) suspect {
	first := j.look(row)
	if first.score == 0 || first.score >= 1 {
		return first
	}
	// Two odd readings hide each other: each makes the rest look scattered.
	j.given[row][first.at] = false
	second := j.look(row)
	j.given[row][first.at] = true
	if second.score < 1 {
		return first
	}
	j.given[row][second.at] = false
	again := j.look(row)
	j.given[row][second.at] = true
	if again.score >= 1 && again.at == first.at {
		return second
	}
	return first
}

// look finds the likeliest reading of a row as it stands.
func (j judging) look(row int) suspect {
	given := j.given[row]
	n := count(given)
	hat := j.hats.of(given)
	if n < Least || hat == nil || j.taken[row] > (n+j.taken[row])/5 {
		return suspect{}
	}
	alone := j.view(hat, j.Y[row], given, 1, bends)
	beside, known := j.against(row)
	best := suspect{}
	for k := range given {
		if !given[k] {
			continue
		}
		spread, limit := alone.spread[k], j.alarm
		both := known && beside.seen[k]
		if both {
			spread, limit = min(spread, beside.spread[k]), j.alarm-easedBeside
		}
		t, score := alone.ease[k]/spread, alone.ease[k]/spread/limit
		if both {
			against := beside.ease[k] / spread
			if against < j.alarm-sharedAlarm {
				score = 0
			}
			if beside.rows[k] > 1 { // of two rows alone it cannot be said which is odd
				score, t = max(score, against/(j.alarm-apartAlarm)), max(t, against)
			}
		}
		if score > best.score {
			off := departure(hat, j.Y[row], given, k)
			best = suspect{at: k, score: score, t: math.Copysign(t, off), off: off}
		}
	}
	return best
}

// view looks at values whose variance is so many times a reading's.
func (j judging) view(hat *mat.Dense, y []float64, given []bool, share float64, order int) view {
	rough, ease := eases(hat, y, given)
	v := view{seen: given, ease: make([]float64, len(y)), spread: make([]float64, len(y))}
	freedom := float64(count(given) - order - 1)
	for k := range y {
		left := max(0, rough-ease[k]) / share
		v.ease[k] = math.Sqrt(ease[k] / share)
		v.spread[k] = math.Sqrt((belief*j.scatter*j.scatter + left) / (belief + freedom))
	}
	return v
}
