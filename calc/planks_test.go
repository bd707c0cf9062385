package calc

import (
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// TestBoardsCoverTheShapes says that by either way of working the boards asked for
// are as wide as the shapes laid out flat, and thick enough for the hollow of the
// back, as the shapes say it; and that pieces got out to the sweep each have a shape.
func TestBoardsCoverTheShapes(t *testing.T) {
	const hair = measure.Millimetre / 200 // what Up lets be
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
			if way == hull.Sprung && run.Wide+hair < whole.Straight {
				t.Errorf("sprung %s: board %v for %v", run.Name, run.Wide, whole.Straight)
			}
			if whole.Hollow.Abs() >= j.Rules.Hull.HollowFrom && run.Hollow+hair < whole.Hollow.Abs() {
				t.Errorf("%s: hollow %v, allowed for %v", run.Name, whole.Hollow, run.Hollow)
			}
			if whole.Thick != run.Thick+run.Hollow {
				t.Errorf("%s: its shape needs a thickness of %v, its board is asked for %v", run.Name, whole.Thick, run.Thick+run.Hollow)
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

// TestBoardsByTheBooksOwnRule rounds what is asked of a board: a plank of 150 mm worked
// out as 150.0015 asks for 150 in a book in millimetres, and 34.7997 mm of hollow for
// 34.8; in one in feet 5.2501 in asks for 5 1/4 and 5.252 in for 5 17/64.
func TestBoardsByTheBooksOwnRule(t *testing.T) {
	for _, c := range []struct {
		units      measure.Style
		from, want measure.Length
	}{
		{measure.StyleMM, 150_001_521, 150 * measure.Millimetre},
		{measure.StyleMM, 34_799_676, 34_800_000},
		{measure.StyleMM, 168_410_006, 168_500_000},
		{measure.StyleFeet, measure.Inches(5.2501), measure.Inches(5.25)},
		{measure.StyleFeet, measure.Inches(5.2520), measure.Inches(5.265625)},
		{measure.StyleFeet, 0, 0},
	} {
		r := hull.Rules{Units: c.units}
		if got := r.Up(c.from); got != c.want {
			t.Errorf("%v in %s: %v, want %v", c.from.Millimetres(), c.units, got.Millimetres(), c.want.Millimetres())
		}
	}
}
