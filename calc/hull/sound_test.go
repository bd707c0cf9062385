package hull

import (
	"math"
	"math/rand/v2"
	"testing"

	"strakebook/calc/measure"
)

// flatFloor is a hull, drawn for these tests, whose sections leave the keel level or
// nearly, so that its waterlines end blunt on the profile: hollow at the ends, the
// fuller towards amidships the lesser least is. rise is the profile's at bow and
// stern and its dip amidships, of a depth of 60; full is how early the deck is full.
func flatFloor(l, beam, s float64, n int, sheer [2]float64, rise [3]float64, p, full, most, least float64, res measure.Length) *formHull {
	h := &formHull{name: "flat floor", length: l, stations: even(n), resolution: res}
	h.sheer = func(u float64) float64 { return s * (84 - sheer[0]*u + sheer[1]*u*u) }
	h.profile = func(u float64) float64 {
		return s * (30 + rise[0]*pow(1-u, p) - rise[1]*math.Sin(math.Pi*u) + rise[2]*pow(u, p-2))
	}
	deck := func(u float64) float64 {
		return s*1.5 + (beam-s*1.5)*pow(math.Sin(math.Pi*0.86*pow(u, full)), 0.8)
	}
	h.half = func(u, z float64) float64 {
		t := (z - h.profile(u)) / (h.sheer(u) - h.profile(u))
		return s*1.5 + (deck(u)-s*1.5)*pow(t, most-(most-least)*math.Sin(math.Pi*u*0.9))
	}
	return h
}

// anyHull is a sound hull of one of seven forms, its size, spacing, fullness and
// resolution drawn.
func anyHull(form int, rng *rand.Rand) *formHull {
	f := func(a, b float64) float64 { return a + (b-a)*rng.Float64() }
	res := []measure.Length{measure.Eighth, measure.Sixteenth, measure.Millimetre}[rng.IntN(3)]
	l := f(120, 700)
	beam, depth, n := l*f(0.11, 0.2), l*f(0.09, 0.18), 8+rng.IntN(18)
	switch form {
	case 0:
		return roundBilge("round bilge", l, beam, depth, n, res)
	case 1:
		return hardChine("hard chine", l, beam, depth, n, res)
	case 2:
		return hollowBow("hollow bow", l, beam, depth, n, res)
	case 3:
		return tumblehome("tumblehome", l, beam, depth, n, res)
	case 4:
		return transomBoat("transom", l, beam, depth, n, res)
	case 5:
		return doubleEnder("double-ender", l, beam, depth, n, res)
	}
	s := depth / 60
	h := flatFloor(l, beam, s, n, [2]float64{f(15, 28), f(8, 18)}, [3]float64{f(25, 45), f(2, 8), f(8, 24)}, f(4, 7), f(0.8, 1.1), f(0.9, 1.3), f(0.35, 0.7), res)
	levels := 4 + rng.IntN(6)
	h.waters, h.buttocks = steps(s*33, s*45/float64(levels), s*78), steps(beam/4, beam/4, 0.76*beam)
	return h
}

// Of the figures of sound hulls drawn at random no more than one in 1,000 is named,
// and of no form more than 1.5, be they of those the checks were fitted on or others.
// Of hulls of few stations whose sections change fast a station may look misplaced.
func TestSoundHulls(t *testing.T) {
	const forms = 7
	each := 10
	if *full {
		each = 100
	}
	for set, seed := range []uint64{77, 78} {
		named, values, other, hulls := [forms]int{}, [forms]int{}, 0, 0
		for form := range forms {
			name := ""
			for n := range each {
				h := anyHull(form, rand.New(rand.NewPCG(seed, uint64(n*forms+form))))
				name = h.name
				o := h.offsets()
				for _, l := range o.Lines {
					for _, v := range l.Values {
						if v.OK() {
							values[form]++
						}
					}
				}
				e := Examine(o, DefaultRules())
				named[form] += len(e.Doubts)
				other += len(aboveNote(e.Found)) - len(e.Doubts)
				hulls++
			}
			t.Logf("kept apart: %v: %-12s %5d values, %2d named (%.2f in 1,000)", set == 1, name, values[form], named[form], 1000*share(named[form], values[form]))
			if got := 1000 * share(named[form], values[form]); got > 1.5 {
				t.Errorf("%s: %.2f figures named in 1,000", name, got)
			}
		}
		total := func(all [forms]int) (sum int) {
			for _, n := range all {
				sum += n
			}
			return sum
		}
		got := 1000 * share(total(named), total(values))
		t.Logf("kept apart: %v: %.2f figures named in 1,000 of %d, %d other findings of %d hulls", set == 1, got, total(values), other, hulls)
		if got > 1 || other > hulls/20 {
			t.Errorf("%.2f figures named in 1,000, %d other findings of %d hulls", got, other, hulls)
		}
	}
}

// Two tables of a builder's, a cutter in eighths and a launch in tenths of a
// millimetre, both computed from one form: sound, and nothing is said of them.
func TestBluntWaterlineEnds(t *testing.T) {
	rise, sheer := [3]float64{40, 6, 16}, [2]float64{22, 14}
	cutter := flatFloor(408, 62, 1, 11, sheer, rise, 6, 0.9, 1.1, 0.45, measure.Eighth)
	cutter.waters, cutter.buttocks = steps(36, 6, 66), steps(12, 12, 36)
	s := 9000 / 25.4 / 408
	launch := flatFloor(408*s, 62*s, s, 11, sheer, rise, 6, 0.9, 1.1, 0.45, measure.Millimetre/10)
	launch.waters, launch.buttocks = steps(800/25.4, 200/25.4, 1400/25.4), steps(300/25.4, 300/25.4, 600/25.4)
	for _, h := range []*formHull{cutter, launch} {
		for _, f := range aboveNote(Examine(h.offsets(), DefaultRules()).Found) {
			t.Errorf("%s [%s]", f.Text, f.Code)
		}
	}
}
