package stock

import (
	"fmt"
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Books no yard has: each must come to an end with a plan or findings, and what
// plan there is must keep the rules.
func TestOddBooks(t *testing.T) {
	strake := func(n int, feet float64) (all []hull.Strake) {
		for i := range n {
			all = append(all, hull.Strake{Name: fmt.Sprint(i + 1), Skin: hull.Planks, Thickness: in(1), Width: in(5), Length: in(12*feet + float64(i%7)), Species: "larch"})
		}
		return all
	}
	mill := []Board{board("a", "larch", 1.25, 6, 16, 0), board("b", "larch", 1.25, 6, 20, 0)}
	var many []Board
	for i := range 10_000 {
		b := board(fmt.Sprint("r", i), "larch", 1.25, 6+float64(i%9)/8, 8+float64(i*37%1440)/120, 1)
		b.Price = source.Is(20 + float64(i%13))
		many = append(many, b)
	}
	huge := board("h", "larch", 1.25, 6, 16, 0)
	huge.Length = source.Is(measure.Feet(5e6))
	free := board("f", "larch", 1.25, 6, 16, 0)
	free.Price = source.Is(-3.0)
	dear := board("d", "larch", 1.25, 6, 16, 0)
	dear.Price = source.Is(1e300)
	short := board("s", "larch", 1.25, 6, 16, 0)
	short.Bad = []hull.Reach{{From: -measure.Foot, To: 40 * measure.Foot}}
	for name, c := range map[string]struct {
		strakes []hull.Strake
		rack    []Board
	}{
		"no strakes":             {nil, mill},
		"2,000 strakes":          {strake(1000, 45), mill},
		"10,000 boards":          {strake(20, 45), many},
		"a strake of 5,000 ft":   {strake(1, 5000), mill},
		"a strake of a mile":     {strake(2, 5280), mill},
		"a strake of an inch":    {strake(2, 1./12), mill},
		"a board of 1,000 miles": {strake(4, 40), []Board{huge}},
		"a negative price":       {strake(4, 40), []Board{free}},
		"a price beyond reason":  {strake(4, 40), []Board{dear}},
		"no sound stretch":       {strake(4, 40), []Board{short}},
	} {
		t.Run(name, func(t *testing.T) {
			lr, r := lay.DefaultRules(), DefaultRules()
			at := cpu()
			runs, plan, found := Work(lay.Runs(c.strakes, scarfRules(0)), c.rack, nil, lr, r)
			j := judge{t: t, runs: runs, rack: c.rack, plan: plan, lr: lr, r: r}
			j.strakes()
			j.joints(found)
			j.boards()
			if len(runs) > 0 && plan.Summary.Boards == 0 && len(found) == 0 {
				t.Error("no plan and no finding")
			}
			t.Log(cpu()-at, plan.Summary.Boards, "boards", len(found), "findings")
		})
	}
}
