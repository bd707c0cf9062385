package read

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// cleanJob is a job as a designer draws it up, before a builder lays it out on
// sheets: what reading must give back.
type cleanJob struct {
	stations []string
	at       []measure.Length // positions; nil where the book gives none
	lines    []cleanLine
	metric   bool
	seams    []cleanSeam
	strakes  []cleanStrake
	boards   []cleanBoard
}

// cleanLine is one line of the offsets, a value a station, absent for a line that
// is not there.
type cleanLine struct {
	role   hull.Role
	view   hull.View
	level  measure.Length // of a waterline or buttock
	values []measure.Length
}

const absent = measure.Length(-1)

type cleanSeam struct {
	strake, edge string
	degrees      []float64
}

type cleanStrake struct {
	name                     string
	thickness, width, length measure.Length
	count                    int
	species                  string
}

type cleanBoard struct {
	mark                     string
	thickness, width, length measure.Length
	count                    int
	price                    float64
}

// drawJob draws up a job: a hull of smooth lines in whole eighths or whole
// millimetres, the bevels of some seams, a list of strakes and a rack.
func drawJob(rnd *rand.Rand) cleanJob {
	j := cleanJob{metric: rnd.IntN(3) == 0}
	step := measure.Eighth
	if j.metric {
		step = measure.Millimetre
	}
	n := 5 + rnd.IntN(14)
	spacing := measure.Foot + measure.Length(rnd.IntN(13))*measure.Inch
	if j.metric {
		spacing = measure.Length(300+50*rnd.IntN(10)) * measure.Millimetre
	}
	for i := range n {
		j.stations = append(j.stations, fmt.Sprint(i))
		j.at = append(j.at, spacing*measure.Length(i))
	}
	j.nameStations(rnd)
	n = len(j.stations)
	if rnd.IntN(3) == 0 {
		j.at = nil
	}
	beam := measure.Feet(2 + 4*rnd.Float64())
	high := measure.Feet(3 + 2*rnd.Float64())
	out := func(i int, z float64) measure.Length {
		x := (float64(i)+0.5)/float64(n)*2 - 1
		return beam.Times((1 - math.Pow(math.Abs(x), 2.3)) * math.Pow(z, 0.35+0.2*math.Abs(x))).Round(step)
	}
	level := measure.Foot / 2
	if j.metric {
		level = 150 * measure.Millimetre
	}
	for k := 1; k <= 3+rnd.IntN(4); k++ {
		l := cleanLine{role: hull.Waterline, view: hull.HalfBreadth, level: level * measure.Length(k)}
		for i := range n {
			v := out(i, math.Min(1, float64(l.level)/float64(high)))
			if v < measure.Inch || rnd.IntN(60) == 0 && k == 1 {
				v = absent
			}
			l.values = append(l.values, v)
		}
		j.lines = append(j.lines, l)
	}
	deckOut, deckUp := cleanLine{role: hull.Deck, view: hull.HalfBreadth}, cleanLine{role: hull.Deck, view: hull.Height}
	rabbet := cleanLine{role: hull.Rabbet, view: hull.Height}
	for i := range n {
		x := float64(i)/float64(n)*2 - 1
		deckOut.values = append(deckOut.values, out(i, 1))
		deckUp.values = append(deckUp.values, (high + high.Times(0.3*x*x)).Round(step))
		rabbet.values = append(rabbet.values, (measure.Inch + high.Times(0.2*x*x)).Round(step))
	}
	j.lines = append(j.lines, deckOut, deckUp, rabbet)
	for k := 1; k <= rnd.IntN(3); k++ {
		l := cleanLine{role: hull.Buttock, view: hull.Height, level: level * measure.Length(k)}
		for i := range n {
			x := float64(i)/float64(n)*2 - 1
			l.values = append(l.values, (measure.Inch.Times(4) + high.Times(0.25*x*x+0.1*float64(k))).Round(step))
		}
		j.lines = append(j.lines, l)
	}
	j.drawPlanking(rnd, n)
	return j
}

// nameStations doubles the stations at the bow, marks the one amidships, and adds
// a transom, as many a designer does.
func (j *cleanJob) nameStations(rnd *rand.Rand) {
	n := len(j.stations)
	if rnd.IntN(5) == 0 {
		j.stations = slices.Insert(j.stations, 1, "0.5")
		j.at = slices.Insert(j.at, 1, j.at[1]/2)
	}
	if rnd.IntN(6) == 0 {
		j.stations[len(j.stations)/2] = "X"
	}
	if rnd.IntN(5) == 0 {
		j.stations = append(j.stations, []string{"Transom", "Stern"}[rnd.IntN(2)])
		j.at = append(j.at, j.at[len(j.at)-1]+j.at[len(j.at)-1]/measure.Length(2*n)/measure.Inch*measure.Inch+measure.Inch)
		if j.metric {
			j.at[len(j.at)-1] = j.at[len(j.at)-2] + 120*measure.Millimetre
		}
	}
}

// drawPlanking draws up the bevels, strakes and boards.
func (j *cleanJob) drawPlanking(rnd *rand.Rand, n int) {
	size := func(least, most int) measure.Length {
		if j.metric {
			return measure.Length(10*(least+rnd.IntN(most-least))) * measure.Millimetre
		}
		return measure.Length(least+rnd.IntN(most-least)) * measure.Inch / 2
	}
	thickness := size(1, 3)
	if j.metric {
		thickness = measure.Length(15+rnd.IntN(10)) * measure.Millimetre
	}
	for s := 1; s <= 2+rnd.IntN(5); s++ {
		for _, edge := range []string{"upper", "lower"} {
			seam := cleanSeam{strake: fmt.Sprint(s), edge: edge}
			for i := range n {
				seam.degrees = append(seam.degrees, math.Round(4*(2+1.5*math.Sin(float64(i+s)/3)))/4)
			}
			j.seams = append(j.seams, seam)
		}
		j.strakes = append(j.strakes, cleanStrake{fmt.Sprint(s), thickness, size(8, 16), size(240, 400), 1 + rnd.IntN(3), []string{"cedar", "larch"}[rnd.IntN(2)]})
	}
	for b := range 2 + rnd.IntN(5) {
		j.boards = append(j.boards, cleanBoard{fmt.Sprint("R", b+1), thickness, size(12, 24), size(200, 500), 1 + rnd.IntN(9), float64(20 + rnd.IntN(80))})
	}
}
