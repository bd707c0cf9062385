package stock

import (
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
)

// HiGHS proved in 7.4 s that the rules of plank_A26's side cannot all be kept
// with joints on a grid of 12 in, and found plans without breach of the others
// (testdata/worked/stock/optima.csv).
func TestJudgeRow(t *testing.T) {
	for _, c := range []struct {
		name string
		grid float64
		want lay.Verdict
	}{{"A26_s20", 12, lay.Impossible}, {"A26_s8", 12, lay.Possible}, {"A26_s8", 6, lay.Possible}, {"B36_s6", 12, lay.Possible}, {"B36_s12", 12, lay.Possible}, {"B36_s24", 12, lay.Possible}} {
		j := open(t, c.name).job(c.grid)
		runs, rack, lr, r := j.runs, j.rack, j.lr, j.r
		var row []lay.Run
		var longest []measure.Length
		h := build(runs, rack, lr, r, true)
		for i := range runs {
			if runs[i].Side == hull.Starboard {
				row, longest = append(row, runs[i]), append(longest, measure.Length(h.classes[h.of[i]].longest))
			}
		}
		if got, last := lay.Judge(row, longest, lr); got != c.want {
			t.Errorf("%s on %v in: %v at %d, want %v", c.name, c.grid, got, last, c.want)
		}
	}
}
