package calc

import (
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// TestBoardsCoverTheShapes says that by either way of working the boards asked for
// are as wide as the shapes laid out flat, and thick enough for the hollow of the
// back; and that pieces got out to the sweep each have a shape.
func TestBoardsCoverTheShapes(t *testing.T) {
	for _, way := range []hull.Planking{hull.Sprung, hull.ToSweep} {
		j := wigleyJob()
		j.Rules.Hull.Planking = way
		r, _ := Work(j)
		if len(r.Spiled) < 6 || len(r.Runs) != 12 {
			t.Fatalf("%s: %d shapes of %d strakes", way, len(r.Spiled), len(r.Runs))
		}
		pieces := 0
		for _, run := range r.Runs {
			whole, ok := r.spiled(run)
			if !ok {
				t.Fatalf("%s: %s has no shape", way, run.Name)
			}
			if way == hull.Sprung && run.Wide < whole.Straight {
				t.Errorf("sprung %s: board %v for %v", run.Name, run.Wide, whole.Straight)
			}
			if whole.Hollow.Abs() >= j.Rules.Hull.HollowFrom && run.Hollow < whole.Hollow.Abs() {
				t.Errorf("%s: hollow %v, allowed for %v", run.Name, whole.Hollow, run.Hollow)
			}
			for _, s := range r.Spiled {
				if s.Piece > 0 && s.Strake == run.Name && s.Side == run.Side {
					pieces++
					if s.Board > run.Wide+measure.SixtyFourth {
						t.Errorf("%s piece %d: board %v for %v", run.Name, s.Piece, run.Wide, s.Board)
					}
					if s.Board < s.Straight-measure.Sixteenth {
						t.Errorf("%s piece %d: to the sweep %v, straight %v", run.Name, s.Piece, s.Board, s.Straight)
					}
				}
			}
		}
		want := 0
		if way == hull.ToSweep {
			want = len(r.Plan.Pieces)
		}
		if pieces != want {
			t.Errorf("%s: %d shapes of pieces, want %d", way, pieces, want)
		}
	}
}
