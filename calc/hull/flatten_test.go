package hull

import (
	"fmt"
	"math"
	"testing"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// TestBevelsGoWithTheRound says that as the sections of a hull are flattened, all
// its seam bevels go to nought in step: a slab leaning half an inch an inch, its
// sections bulging by less and less.
func TestBevelsGoWithTheRound(t *testing.T) {
	worst := func(bulge float64) float64 {
		h := surfaceHull{360, func(float64) float64 { return 0 }, func(float64) float64 { return 60 },
			func(x, z float64) float64 { return z/2 + bulge*z*(60-z)/900 }}
		s, _ := Work(tabled(h, 12, measure.Millimetre/100), []Strake{{Name: "P", Skin: Planks, Count: source.Is(8)}}, DefaultRules())
		most, n := 0.0, 0
		for _, seam := range s.Linings[0].Seams {
			for _, p := range seam.Points {
				if p.HasBevel {
					most, n = max(most, math.Abs(float64(p.Bevel))), n+1
				}
			}
		}
		if n < 7*19 {
			t.Fatal(fmt.Sprint("only ", n, " bevels"))
		}
		return most
	}
	before := worst(8)
	if before < 2 {
		t.Fatalf("a bulge of 8 in turns by %v only", before)
	}
	for _, bulge := range []float64{4, 2, 1, 0} {
		now := worst(bulge)
		if now > 0.6*before+0.01 {
			t.Errorf("bulge %v: %.3f after %.3f", bulge, now, before)
		}
		before = now
	}
	if before > 0.01 {
		t.Errorf("a flat side turns by %v", before)
	}
}
