package bevel

import (
	"math"
	"strings"
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
	if r.beyondTrials(10) <= 0 || r.beyondTrials(9.5) > 0 || r.beyondTrials(-10) <= 0 {
		t.Error("beyond the trials")
	}
	r.Readout = 0.25
	all, _ := Schedules(table(2, 5, 8, 10, 11), plank(1, 5), nil, nil, r)
	found := CheckLaid(all, nil, r)
	if len(found) != 2 || found[1].Kind != TrialBeyond || !strings.Contains(found[1].Text, "3 marks of plank 3 upper edge lie beyond the trial cuts, plank 3 upper edge at station E the farthest at 11 degrees") {
		t.Errorf("%v", found)
	}
}

// The scale is worked from the bevel itself and rounded once. By hand, between the
// cuts of 0 at .25 and 5 at 5.5: 2.627 wants (2.627 - .25) 5 / 5.25 = 2.2638, and the
// nearest quarter, 2.25, cuts .25 + 2.25 x 5.25 / 5 = 2.6125. The bevel rounded first,
// 2.75, would ask for 2.38 and so 2.50, which cuts 2.875.
func TestScaleRoundedOnce(t *testing.T) {
	r := DefaultRules()
	r.Trials = []Trial{{-3, -3}, {0, 0.25}, {5, 5.5}}
	s, _ := Schedules(table(2.627, 2.627), plank(1, 5), nil, nil, r)
	if m := s[0].Marks[0]; m.Tilt != 2.25 || m.Set != 2.75 {
		t.Errorf("set %v, scale %v, want 2.75 and 2.25", m.Set, m.Tilt)
	}
	cuts := func(reads measure.Angle) measure.Angle { // by the trials, the other way about
		if reads < 0 {
			return 0.25 + reads*3.25/3
		}
		return 0.25 + reads*5.25/5
	}
	for b := measure.Angle(-3); b < 6; b += 0.013 {
		reads := r.tilt(b)
		off := math.Abs(float64(cuts(reads) - b))
		for _, other := range []measure.Angle{reads - r.Readout, reads + r.Readout} {
			if math.Abs(float64(cuts(other)-b)) < off-1e-9 {
				t.Fatalf("%v: the scale at %v cuts %v, and at %v nearer", b, reads, cuts(reads), other)
			}
		}
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
// blade follow the wood on the bench. Strips keep their own thickness.
func TestPlanedThickness(t *testing.T) {
	r := DefaultRules()
	r.Planed = 15 * measure.Sixteenth
	s, _ := Schedules(table(5, 5), plank(1, 5), nil, nil, r)
	if want := 0.9375 * math.Tan(5*math.Pi/180); math.Abs(s[0].Marks[0].Faces.Inches()-want) > 1e-6 {
		t.Errorf("faces %v, want %v", s[0].Marks[0].Faces, want)
	}
	strip := plank(0.625, 5)[0]
	strip.Skin = hull.Strips
	if got := r.thickness(strip, hull.Back{}); got != 5*measure.Eighth {
		t.Errorf("a strip %v thick", got)
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
