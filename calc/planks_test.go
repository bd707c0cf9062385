package calc

import (
	"fmt"
	"slices"
	"testing"

	"strakebook/calc/bevel"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/scarf"
	"strakebook/calc/source"
)

// TestBoardsCoverTheShapes says that by either way of working the boards asked for
// are as wide as the shapes laid out flat, and thick enough for the hollow of the
// back, as the shapes say it; and that pieces got out to the sweep each have a shape as
// long as the piece, but where 2 in were left on beyond the strake's own end.
func TestBoardsCoverTheShapes(t *testing.T) {
	const hair = measure.Millimetre / 200 // what Up lets be
	for _, way := range []hull.Planking{hull.Sprung, hull.ToSweep} {
		j := wigleyJob()
		j.Rules.Hull.Planking, j.Rules.Hull.ExtraAtEnds = way, 2*measure.Inch
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
			if !slices.ContainsFunc(r.Scarfs, func(s scarf.Row) bool { return s.Thickness == run.Thick+run.Hollow && s.Run == run.Scarf }) {
				t.Errorf("%s: no fence is set for boards of %v", run.Name, run.Thick+run.Hollow)
			}
			if run.Scarf != 12*(run.Thick+run.Hollow) { // 12 to 1, through the board as dressed
				t.Errorf("%s: a scarf of %v through %v", run.Name, run.Scarf, run.Thick+run.Hollow)
			}
			if whole.Thick != run.Thick+run.Hollow {
				t.Errorf("%s: its shape needs a thickness of %v, its board is asked for %v", run.Name, whole.Thick, run.Thick+run.Hollow)
			}
			for _, s := range r.Spiled {
				if s.Piece > 0 && s.Strake == run.Name && s.Side == run.Side {
					pieces++
					long := run.Pieces[s.Piece-1]
					if s.Piece == 1 || s.Piece == len(run.Pieces) {
						long -= 2 * measure.Inch
					}
					if (s.Length - long).Abs() > measure.Inch { // along its upper edge: the lower is a little longer or shorter
						t.Errorf("%s piece %d: a shape of %v for %v", run.Name, s.Piece, s.Length, long)
					}
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

// TestBoardCoversTheWiderFace lifts 5 degrees along a port plank 5 in wide and an inch
// thick, without offsets: its board is wider by tan 5 = .0875, to the next 64th 3/32,
// and the starboard one's is not, the sides not being alike. A shutter's gap measured
// to port, 5 1/4 in inside and wider outside by that at either edge, wants a board of 5 1/4
// and .175, to the next 64th 3/16, though 5 in are listed; and gives the starboard shutter
// a card that is in doubt.
func TestBoardCoversTheWiderFace(t *testing.T) {
	j := Job{Rules: DefaultRules(), Strakes: []hull.Strake{{Name: "1-2", Count: source.Is(2), Skin: hull.Planks,
		Thickness: source.Is(measure.Inch), Width: source.Is(5 * measure.Inch), Length: source.Is(10 * measure.Foot)}}}
	j.Rules.Bevel.Alike = false
	seam := bevel.Seam{Strake: "1", Skin: hull.Planks, Side: hull.Port, Edge: bevel.Upper}
	b := bevel.Readings{Gauge: bevel.OffSquare, Resolution: 0.25}
	for k := range 3 {
		name := fmt.Sprint(k)
		b.Stations = append(b.Stations, hull.Station{Name: name, At: source.Is(measure.Length(k) * 5 * measure.Foot)})
		seam.Readings = append(seam.Readings, source.Is(measure.Angle(5)))
		j.Gaps = append(j.Gaps, hull.Gap{Skin: hull.Planks, Strake: "2", Side: hull.Port, Station: name, Inside: source.Is(measure.Inches(5.25)), Outside: source.Is(measure.Inches(5.25 + 2*0.08749))})
	}
	b.Seams = []bevel.Seam{seam}
	j.Bevels, j.Stations = []bevel.Readings{b}, b.Stations
	r, _ := Work(j)
	outsideListed(t, j)
	for _, run := range r.Runs {
		want := 5 * measure.Inch
		switch {
		case run.Name == "2":
			want = 5*measure.Inch + 7*measure.Sixteenth
		case run.Side == hull.Port:
			want += 3 * measure.Inch / 32
		}
		if run.Wide != want {
			t.Errorf("%s %s: its board covers %v, want %v", run.Name, run.Side, run.Wide, want)
		}
	}
	shutters := 0
	for _, s := range r.Bevels {
		if s.Shutter {
			shutters++
			if other := s.Side == hull.Starboard; s.Doubted() != other || s.AsOther != other {
				t.Errorf("shutter to %s: doubt %q", s.Side, s.Doubt)
			}
		}
	}
	if shutters != 4 {
		t.Errorf("%d cards of shutters", shutters)
	}
}

// outsideListed has the same widths on the outside face: boards cover them and no more,
// the inside face is less by tan 5 degrees, .0875 in on an inch (by hand), and a batten
// 5 - 1/2 in wide serves at every bevel, set out nowhere. A shutter's gap is measured on
// both faces, and its card and board go by that.
func outsideListed(t *testing.T, j Job) {
	j.Strakes = slices.Clone(j.Strakes)
	j.Strakes[0].Outside = true
	r, _ := Work(j)
	for _, run := range r.Runs {
		if run.Name == "1" && run.Wide != 5*measure.Inch || run.Name == "2" && run.Wide != 5*measure.Inch+7*measure.Sixteenth {
			t.Errorf("%s %s, 5 in on the outside face: its board covers %v", run.Name, run.Side, run.Wide)
		}
	}
	for _, s := range r.Bevels {
		for _, m := range s.Marks {
			if s.Shutter {
				if m.Width != measure.Inches(5.25) {
					t.Errorf("a shutter %v wide inside, in a gap of 5.25", m.Width)
				}
				continue
			}
			if in := m.Width.Inches(); in < 4.9124 || in > 4.9126 || m.Batten != measure.Inches(4.5) || m.SetOut.Abs() > 1 {
				t.Errorf("5 in on the outside face: %v inside, batten %v, set out %v", m.Width, m.Batten, m.SetOut)
			}
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
