package bevel

import (
	"math"
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

func TestSeveralTrialCuts(t *testing.T) {
	r := DefaultRules()
	r.Readout = 0.01
	set := func(text string) error {
		for _, s := range r.Settings() {
			if s.Name == "trial cuts" {
				return s.Value.Set(text)
			}
		}
		t.Fatal("no such setting")
		return nil
	}
	for _, bad := range []string{"10", "ten cuts nine", "5 cuts 5; 6 cuts 4", "5 cuts 5; 5 cuts 5"} {
		if set(bad) == nil {
			t.Errorf("%q was taken", bad)
		}
	}
	if err := set("10 cuts 9.5; 0=0.25;-10 cuts -9"); err != nil {
		t.Fatal(err)
	}
	if got := (trialCuts{&r.Trials}).String(); got != "-10 cuts -9; 0 cuts 0.25; 10 cuts 9.5" {
		t.Errorf("written %q", got)
	}
	// Straight lines by hand: half way from .25 to 9.5 the scale reads 5; beyond, as before.
	for cut, reads := range map[measure.Angle]measure.Angle{0.25: 0, 9.5: 10, 4.875: 5, -9: -10, -4.375: -5, 11.35: 12} {
		if got := r.tilt(cut); math.Abs(float64(got-reads)) > 0.006 {
			t.Errorf("to cut %v: %v, want %v", cut, got, reads)
		}
	}
	if !r.beyondTrials(10) || r.beyondTrials(9.5) || !r.beyondTrials(-10) {
		t.Error("beyond the trials")
	}
	r.Readout = 0.25
	if _, found := Schedules(table(2, 5, 8, 10, 11), plank(1, 5), nil, nil, r); len(found) != 2 || found[0].Kind != TrialBeyond {
		t.Errorf("%v", found)
	}
}

// An offset measured across the kerf is to the plank's side less the kerf.
func TestOffsetAcrossTheKerf(t *testing.T) {
	r := DefaultRules()
	r.Offset, r.Kerf = measure.Inch/2, measure.Inch/8
	for to, want := range map[OffsetTo]measure.Length{KerfPlankSide: 4*measure.Inch + measure.Inch/2, KerfMiddle: 4*measure.Inch + 9*measure.Sixteenth, KerfFarSide: 4*measure.Inch + 5*measure.Eighth} {
		r.OffsetTo = to
		if got := Batten(5*measure.Inch, measure.Inch, 0, r); got != want {
			t.Errorf("to %d: %v, want %v", to, got, want)
		}
	}
}

// Planks planed to 15/16 are thinner than the inch listed: faces, batten and
// blade follow the wood on the bench.
func TestPlanedThickness(t *testing.T) {
	r := DefaultRules()
	r.Planed = 15 * measure.Sixteenth
	s, _ := Schedules(table(5, 5), plank(1, 5), nil, nil, r)
	if want := 0.9375 * math.Tan(5*math.Pi/180); math.Abs(s[0].Marks[0].Faces.Inches()-want) > 1e-6 {
		t.Errorf("faces %v, want %v", s[0].Marks[0].Faces, want)
	}
}

// A port plank is a starboard plank turned end for end, and a plank turned over
// is read from its other end.
func TestTurningAPlank(t *testing.T) {
	r := DefaultRules()
	for _, c := range []struct {
		side hull.Side
		edge Edge
		up   Face
		from string
	}{
		{hull.Starboard, Upper, Outside, "fore end"}, {hull.Port, Upper, Outside, "after end"},
		{hull.Starboard, Lower, Outside, "after end"}, {hull.Starboard, Upper, Inside, "after end"}, {hull.Port, Lower, Inside, "after end"},
	} {
		r.FaceUp = c.up
		if got := (Schedule{Side: c.side, Edge: c.edge}).ReadFrom(r); got != c.from {
			t.Errorf("%+v: %s", c, got)
		}
	}
	r.FaceUp = Outside
	over := r
	over.FaceUp = Inside
	for _, b := range []measure.Angle{-3, 0, 4} {
		if r.Lean(b) != over.Lean(-b) {
			t.Errorf("%v leans %s, turned over %s", b, r.Lean(b), over.Lean(-b))
		}
	}
	if r.Lean(4) != "in under" {
		t.Errorf("with the outside up and wider the blade leans %s", r.Lean(4))
	}
}

// A plank whose thickness is not known has no batten and no depth.
func TestNoBattenWithoutSize(t *testing.T) {
	s, _ := Schedules(table(1, 2, 3), nil, nil, nil, DefaultRules())
	if s[0].Depth != 0 || s[0].Marks[0].Batten != 0 || s[0].Marks[0].SetOut != 0 {
		t.Errorf("%+v", s[0])
	}
}
