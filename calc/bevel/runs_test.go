package bevel

import (
	"math"
	"math/rand/v2"
	"sort"
)

// Seams of our own, by which the finding of odd readings is tuned and measured.
// A family is tables of seams that lie side by side, a bevel a station.

// smoothRuns is seams that stand alone: a rise or fall and a swell, of any
// strength, from 8 to 24 stations.
func smoothRuns(seed uint64, n int) [][][]float64 {
	r := rand.New(rand.NewPCG(seed, 2))
	var all [][][]float64
	for range n {
		y := make([]float64, 8+r.IntN(17))
		from, to := 6*r.Float64()-2, 6*r.Float64()-2
		middle, over := r.Float64(), 0.15+0.4*r.Float64()
		swell, at, width := 3*r.Float64()-1, r.Float64(), 0.15+0.4*r.Float64()
		for i := range y {
			t := float64(i) / float64(len(y)-1)
			y[i] = from + (to-from)/(1+math.Exp(-(t-middle)/over*4)) + swell*math.Exp(-(t-at)*(t-at)/width/width)
		}
		all = append(all, [][]float64{y})
	}
	return all
}

// section is how far out a hull's section is, from 0 to 1 of its breadth, a share
// of the way up its depth; along runs from -1 at the bow to 1 at the stern.
type section func(along, up float64) float64

// hullSeams is the bevels of a hull's seams, lined off in equal shares of the
// girth, at so many stations.
func hullSeams(stations, strakes int, beam, depth float64, breadth func(along float64) float64, s section) [][]float64 {
	all := make([][]float64, strakes-1)
	for i := range stations {
		along := (-1 + (2*float64(i)+1)/float64(stations)) * 0.97
		const parts = 2000
		var y, z, girth [parts + 1]float64
		for k := range y {
			up := float64(k) / parts
			y[k], z[k] = beam*breadth(along)*s(along, up), depth*up
			if k > 0 {
				girth[k] = girth[k-1] + math.Hypot(y[k]-y[k-1], z[k]-z[k-1])
			}
		}
		seamY, seamZ := make([]float64, strakes+1), make([]float64, strakes+1)
		for k := range seamY {
			w := girth[parts] * float64(k) / float64(strakes)
			j := max(1, min(sort.SearchFloat64s(girth[:], w), parts))
			f := (w - girth[j-1]) / (girth[j] - girth[j-1])
			seamY[k], seamZ[k] = y[j-1]+f*(y[j]-y[j-1]), z[j-1]+f*(z[j]-z[j-1])
		}
		for k := 1; k < strakes; k++ {
			below := math.Atan2(seamZ[k]-seamZ[k-1], seamY[k]-seamY[k-1])
			above := math.Atan2(seamZ[k+1]-seamZ[k], seamY[k+1]-seamY[k])
			all[k-1] = append(all[k-1], (above-below)*180/math.Pi)
		}
	}
	return all
}

// double is a double-ender with sections of a power, sharper to the ends.
func double(power, bow float64, stations, strakes int) [][]float64 {
	return hullSeams(stations, strakes, 2.5, 2,
		func(along float64) float64 { return 1 - math.Pow(math.Abs(along), bow) },
		func(along, up float64) float64 { return 1 - math.Pow(1-up, power*(1-0.35*along*along)) })
}

// transom is a hull with a hollow flared bow, a full stern and tumblehome there.
func transom(flare, round float64, stations, strakes int) [][]float64 {
	return hullSeams(stations, strakes, 7.5, 7,
		func(along float64) float64 { t := (along + 1) / 2; return (1 - math.Exp(-3.6*t) - 0.15*t*t*t) / 0.86 },
		func(along, up float64) float64 {
			t := (along + 1) / 2
			f := flare * math.Exp(-t*t/0.07)
			tumble := 0.1 * t * t
			return (1-math.Pow(1-up, round-0.8*math.Exp(-t*t/0.1)))*(1-0.4*f) + 0.4*f*up*up*up - tumble*up*up
		})
}

// tuning is the tables the rules were chosen on.
func tuning() [][][]float64 {
	all := smoothRuns(1, 1500)
	for _, n := range []int{9, 16, 26} {
		all = append(all, double(2, 2, n, 28), double(3.5, 2.5, n, 24), double(5, 3, n, 30))
	}
	return all
}

// Tables that no rule was chosen on.
func heldAlone() [][][]float64 { return smoothRuns(99, 1000) }

func heldBeside() [][][]float64 {
	var all [][][]float64
	for _, n := range []int{10, 15, 22} {
		all = append(all, double(2.6, 2.2, n, 26), double(4.2, 2, n, 28), transom(1, 2.6, n, 28), transom(0.5, 3.2, n, 32))
	}
	return all
}
