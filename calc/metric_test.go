package calc

import (
	"math"
	"testing"

	"strakebook/calc/measure"
	"strakebook/calc/setting"
)

// TestRoundMetric holds the round defaults of a yard in millimetres to those in feet
// and inches, of which each is within a fifteenth, and to what the builder gives.
func TestRoundMetric(t *testing.T) {
	now, was := DefaultRules(), DefaultRules()
	now.RoundMetric(func(name string) bool { return name == "joint grid" })
	defaults, changed := was.Settings(), 0
	for i, s := range now.Settings() {
		if s.Value.String() == defaults[i].Value.String() {
			continue
		}
		if s.Name == "paper" {
			if s.Value.String() != "a4" {
				t.Errorf("the paper is %s", s.Value)
			}
			continue
		}
		changed++
		a, b := inches(t, s), inches(t, defaults[i])
		if _, ok := roundMetric[s.Name]; !ok || math.Abs(a/b-1) > 1.0/15 {
			t.Errorf("%s is %v in, was %v", s.Name, a, b)
		}
	}
	if changed != len(roundMetric)-1 || now.Lay.Grid != was.Lay.Grid || now.Bevel.Step != 300*measure.Millimetre {
		t.Errorf("%d of %d changed, joint grid %v, mark step %v", changed, len(roundMetric), now.Lay.Grid, now.Bevel.Step)
	}
}

func inches(t *testing.T, s setting.Setting) float64 {
	t.Helper()
	v, err := measure.ParseNumber(s.Value.String())
	if err != nil {
		t.Fatal(err)
	}
	return v
}
