package stock

import (
	"fmt"
	"math/rand/v2"

	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
	"strakebook/calc/scarf"
	"strakebook/calc/source"
)

func scarfRules(seed int) scarf.Rules {
	r := scarf.DefaultRules()
	if seed%5 == 4 {
		r.Nib = measure.Inch / 16
	}
	return r
}

// randomBook is a small job of a builder's, some of it odd.
func randomBook(seed uint64) ([]hull.Strake, []Board, lay.Rules, Rules) {
	g := rand.New(rand.NewPCG(seed, 7))
	pick := func(all ...float64) float64 { return all[g.IntN(len(all))] }
	lr, r := lay.DefaultRules(), DefaultRules()
	lr.Plank = lay.PlankRule(g.IntN(3))
	lr.Frames = measure.Inches(pick(0, 10, 12, 16))
	lr.EndZone = measure.Inches(pick(0, 0, 24, 36))
	lr.Grid = measure.Inches(pick(1, 1, 0.25, 6, 12, 1/2.54))
	lr.Unlike = g.IntN(3) == 0
	lr.SkinsClear = measure.Inches(pick(0, 0, 0, 8))
	r.Tries = 200
	r.ShareCuts = g.IntN(3) == 0
	r.StripsFlat = g.IntN(3) == 0
	r.JointCost = pick(0, 0, 5)
	r.CrossKerf = measure.Inches(pick(0, 0.125, 0.25))
	species := []string{"larch", "Cedar", ""}
	var strakes []hull.Strake
	base := 12 * (14 + 40*g.Float64())
	odd := func(v float64) float64 { return v + g.Float64() }
	for i := range 1 + g.IntN(14) {
		s := hull.Strake{Name: fmt.Sprint(i + 1), Skin: hull.Planks, Thickness: in(pick(0.75, 1)), Width: in(pick(4, 5, 5.5, 7)), Length: in(odd(base - 3*float64(i))), Start: in(float64(g.IntN(20) - 4)), Species: species[g.IntN(20)/10]}
		if g.IntN(6) == 0 {
			from := measure.Inches(40 + base/2*g.Float64())
			s.Clear = []hull.Reach{{From: from, To: from + measure.Inches(30)}}
		}
		if g.IntN(8) == 0 {
			s.Side = hull.Side(g.IntN(3))
		}
		strakes = append(strakes, s)
	}
	if g.IntN(2) == 0 {
		strakes = append(strakes, hull.Strake{Name: "1-12", Skin: hull.Strips, Count: source.Is(12), Thickness: in(0.625), Width: in(1.5), Length: in(odd(base)), Species: "cedar"})
	}
	var rack []Board
	for i := range 3 + g.IntN(20) {
		b := board(fmt.Sprint("B", i), species[g.IntN(21)/10], pick(1, 1.25, 2), pick(5, 6, 8, 12), pick(6, 8, 10, 12, 14, 16, 18, 20), 0)
		if g.IntN(2) == 0 {
			b.Count = source.Is(g.IntN(12))
		}
		if g.IntN(5) == 0 {
			from := measure.Inches(100 * g.Float64())
			b.Bad = []hull.Reach{{From: from, To: from + 5*measure.Inch}}
		}
		b.Price, b.PerFoot = source.Is(2+4*g.Float64()), true
		if b.Count.OK() && i%3 == 0 {
			b.Price = source.Is(0.0) // paid for
		}
		if g.IntN(60) == 0 {
			b.Price = source.Reading[float64]{}
		}
		rack = append(rack, b)
	}
	return strakes, rack, lr, r
}

// randomList is a short list of pieces given by a builder.
func randomList(seed uint64) []Wanted {
	g := rand.New(rand.NewPCG(seed, 11))
	var list []Wanted
	for i := range 1 + g.IntN(6) {
		list = append(list, Wanted{Mark: fmt.Sprint("G", i%4), Species: []string{"larch", "cedar", ""}[g.IntN(3)], Thickness: in(0.75 + float64(g.IntN(3))/4),
			Width: in(2 + 4*g.Float64()), Length: in(10 + 120*g.Float64()), Count: source.Is(g.IntN(5))})
	}
	return list
}
