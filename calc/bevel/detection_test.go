package bevel

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// slip is one way in which a reading goes wrong; it says whether it did.
type slip struct {
	name string
	do   func(y []float64, k int, r *rand.Rand) bool
}

func by(degrees float64) slip {
	return slip{fmt.Sprintf("%.1f deg", degrees), func(y []float64, k int, r *rand.Rand) bool {
		if r.IntN(2) == 0 {
			degrees = -degrees
		}
		y[k] += degrees
		return true
	}}
}

var slips = []slip{by(1), by(1.5), by(2), by(3),
	{"swapped", func(y []float64, k int, _ *rand.Rand) bool {
		if k+1 == len(y) || math.Abs(y[k]-y[k+1]) < 0.75 {
			return false
		}
		y[k], y[k+1] = y[k+1], y[k]
		return true
	}},
	{"hand", func(y []float64, k int, _ *rand.Rand) bool {
		y[k] = -y[k]
		return math.Abs(y[k]) >= 1
	}},
	{"decimal", func(y []float64, k int, _ *rand.Rand) bool {
		was := y[k]
		y[k] = math.Round(was/10*4) / 4
		return math.Abs(was-y[k]) >= 1
	}},
}

// lifted is a table of seams as read: to a quarter of a degree, with the scatter
// of a hand-held gauge.
func lifted(seams [][]float64, scatter float64, r *rand.Rand) [][]float64 {
	all := make([][]float64, len(seams))
	for i, s := range seams {
		for _, v := range s {
			all[i] = append(all[i], math.Round((v+scatter*r.NormFloat64())*4)/4)
		}
	}
	return all
}

// sheet makes a table of readings of neighbouring strakes.
func sheet(rows [][]float64) Readings {
	b := Readings{Resolution: 0.25, Gauge: OffSquare}
	for k := range rows[0] {
		b.Stations = append(b.Stations, hull.Station{Name: fmt.Sprint(k), At: source.Is(measure.Feet(float64(4 * k)))})
	}
	for i, row := range rows {
		s := Seam{Strake: fmt.Sprint(i + 2), Skin: hull.Planks, Edge: Upper}
		for k, v := range row {
			s.Readings = append(s.Readings, source.Reading[measure.Angle]{Value: measure.Angle(v), State: source.Given,
				Text: measure.Angle(v).Write(), Cell: source.Cell{Row: i + 1, Col: k + 1}})
		}
		b.Seams = append(b.Seams, s)
	}
	return b
}

// jumps is the places at which Check finds a reading off its run, by row.
func jumps(rows [][]float64) map[int][]int {
	all := map[int][]int{}
	for _, f := range Check(sheet(rows), DefaultRules()) {
		if f.Kind == Jump {
			all[f.Cell.Row-1] = append(all[f.Cell.Row-1], f.Cell.Col-1)
		}
	}
	return all
}

// tally is what came of many tries.
type tally struct{ tried, found, wrong, ends, endsFound int }

func (t tally) recall() float64    { return float64(t.found) / float64(max(1, t.tried)) }
func (t tally) precision() float64 { return float64(t.found) / float64(max(1, t.found+t.wrong)) }
func (t tally) end() float64       { return float64(t.endsFound) / float64(max(1, t.ends)) }

// measured runs slips of one kind through tables: one slip in the middle one of
// three neighbouring seams, or in the seam itself where it stands alone.
func measured(tables [][][]float64, scatter float64, s slip, times int) tally {
	r := rand.New(rand.NewPCG(7, 9))
	var t tally
	for range times {
		for _, table := range tables {
			for i := range table {
				near := table[max(0, i-1):min(len(table), i+2)]
				rows, at := lifted(near, scatter, r), min(i, 1)
				k := r.IntN(len(rows[at]))
				if !s.do(rows[at], k, r) {
					continue
				}
				t.tried++
				end := k < 2 || k >= len(rows[at])-2
				if end {
					t.ends++
				}
				hit := false
				for row, places := range jumps(rows) {
					for _, c := range places {
						if row == at && (c == k || s.name == "swapped" && c == k+1) {
							hit = true
						} else {
							t.wrong++
						}
					}
				}
				if hit {
					t.found++
					if end {
						t.endsFound++
					}
				}
			}
		}
	}
	return t
}

// alarmed is the share of clean seams in which anything is found.
func alarmed(tables [][][]float64, scatter float64, times int) float64 {
	r := rand.New(rand.NewPCG(5, 3))
	n, all := 0, 0
	for range times {
		for _, table := range tables {
			n += len(jumps(lifted(table, scatter, r)))
			all += len(table)
		}
	}
	return float64(n) / float64(all)
}

// TestDetection measures how well odd bevel readings are found, on seams that no
// rule was chosen on, and holds the figures so that they cannot get worse unseen.
// The whole table is printed by: go test ./calc/bevel -run TestDetection -v
func TestDetection(t *testing.T) {
	for _, family := range []struct {
		name   string
		tables [][][]float64
		times  int
	}{{"held: alone", heldAlone(), 1}, {"held: hulls, seams beside", heldBeside(), 2}} {
		m, clean := measured(family.tables, 0.15, by(1.5), family.times), alarmed(family.tables, 0.15, family.times)
		if m.recall() < 0.82 || m.precision() < 0.97 {
			t.Errorf("%s: recall %.3f at precision %.3f, below .82 at .97", family.name, m.recall(), m.precision())
		}
		if clean > 0.02 {
			t.Errorf("%s: %.1f %% of clean seams alarmed, more than 2", family.name, 100*clean)
		}
	}
	if !testing.Verbose() {
		return
	}
	var out strings.Builder
	for _, family := range []struct {
		name   string
		tables [][][]float64
		times  int
	}{{"tuned on", tuning(), 1}, {"held: alone", heldAlone(), 3}, {"held: hulls, seams beside", heldBeside(), 4}} {
		for _, scatter := range []float64{0, 0.15, 0.25} {
			fmt.Fprintf(&out, "%s, scatter %.2f: clean seams alarmed %.1f %%\n", family.name, scatter, 100*alarmed(family.tables, scatter, family.times))
			for _, s := range slips {
				m := measured(family.tables, scatter, s, family.times)
				fmt.Fprintf(&out, "  %-8s recall %.2f (two at each end %.2f) precision %.3f of %d\n", s.name, m.recall(), m.end(), m.precision(), m.tried)
			}
		}
	}
	t.Log("\n" + out.String())
}

// The readings of 60 seams at 30 stations, checked and laid out.
func BenchmarkSeams(b *testing.B) {
	var table [][]float64
	for range 3 {
		table = append(table, transom(1, 2.6, 30, 21)...)
	}
	readings := sheet(lifted(table, 0.15, rand.New(rand.NewPCG(1, 1))))
	strakes := []hull.Strake{}
	for _, s := range readings.Seams {
		strakes = append(strakes, hull.Strake{Name: s.Strake, Skin: s.Skin, Thickness: source.Is(measure.Inch), Width: source.Is(5 * measure.Inch)})
	}
	for b.Loop() {
		Check(readings, DefaultRules())
		Schedules(readings, strakes, nil, nil, DefaultRules())
	}
}
