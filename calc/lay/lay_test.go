package lay

import (
	"slices"
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/scarf"
	"strakebook/calc/source"
)

const in = measure.Inch

// skin is so many strakes of one width, 20 ft long and an inch thick, to starboard.
func skin(k hull.Skin, count int, wide measure.Length) hull.Strake {
	return hull.Strake{Name: "1", Skin: k, Side: hull.Starboard, Count: source.Is(count), Thickness: source.Is(in), Width: source.Is(wide), Length: source.Is(240 * in)}
}

// A joint's place is the middle of its scarf: half of its run goes on each piece it
// joins. Of a plank of 20 ft with scarfs of 12 in at 90 and 160 in the pieces are 96, 82
// and 86 in long point to long point, by hand.
func TestCut(t *testing.T) {
	run := Runs([]hull.Strake{skin(hull.Planks, 1, 5*in)}, scarf.DefaultRules())[0]
	run.Joints = []measure.Length{90 * in, 160 * in}
	run.Cut()
	if want := []measure.Length{96 * in, 82 * in, 86 * in}; !slices.Equal(run.Pieces, want) {
		t.Errorf("%v, want %v", run.Pieces, want)
	}
}

// Of boards that give 126 in, and no piece under 100, a plank of 240 in with scarfs of 12
// in can be made up in one way alone, joined at 120: each piece has half of the scarf
// beyond that.
func TestChainsGiveHalfAScarfToEach(t *testing.T) {
	run := Runs([]hull.Strake{skin(hull.Planks, 1, 5*in)}, scarf.DefaultRules())[0]
	r := DefaultRules()
	r.LeastPlank = 100 * in
	ways, all := chains(&run, 126*in, r)
	if !all || len(ways) != 1 || !slices.Equal(ways[0], []measure.Length{120 * in}) {
		t.Errorf("%d ways", len(ways))
	}
}

// Down the side by hand: of strips of 2 in and planks of 5 the first plank lies over
// strips 1 to 3, the second over 3 to 5.
func TestSkinsOverEachOther(t *testing.T) {
	runs := Runs([]hull.Strake{skin(hull.Strips, 5, 2*in), skin(hull.Planks, 2, 5*in)}, scarf.DefaultRules())
	var down []measure.Length
	for _, r := range runs {
		down = append(down, r.Down/in)
	}
	if want := []measure.Length{0, 2, 4, 6, 8, 0, 5}; !slices.Equal(down, want) {
		t.Fatalf("%v in down, want %v", down, want)
	}
	r := DefaultRules()
	r.SkinsClear = measure.Foot
	for plank, want := range map[int][]int{5: {0, 1, 2}, 6: {2, 3, 4}} {
		var over []int
		for _, n := range Neighbours(runs, r)[plank] {
			if runs[n.Of].Skin == hull.Strips {
				over = append(over, n.Of)
			}
		}
		if !slices.Equal(over, want) {
			t.Errorf("%s lies over strips %v, want %v", runs[plank].words(), over, want)
		}
	}
}
