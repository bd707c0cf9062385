package hull

import (
	"math"
	"testing"

	"strakebook/calc/measure"
)

// TestEase holds the eased figures of hulls of formulas to what they say they
// are: every one still rounds to what was read, and together they lie nearer the
// true ones.
func TestEase(t *testing.T) {
	sum, hulls := 0.0, 0.0
	for _, h := range append(tuned(), held()...) {
		if h.scatter > 0 {
			continue
		}
		exact := *h
		exact.resolution = measure.Nanometre
		eased, whole := newTable(h.offsets(), DefaultRules()), exact.offsets()
		read, moved := 0.0, 0.0
		for i, l := range eased.o.Lines {
			for k, v := range l.Values {
				if !eased.ok[i][k] || !whole.Lines[i].Values[k].OK() {
					continue
				}
				if math.Abs(eased.v[i][k]-v.Value.Inches()) > eased.step/2+1e-9 {
					t.Fatalf("%s: %s moved from %v to %v", h.name, l.Name, v.Value.Inches(), eased.v[i][k])
				}
				want := whole.Lines[i].Values[k].Value.Inches()
				read += math.Pow(v.Value.Inches()-want, 2)
				moved += math.Pow(eased.v[i][k]-want, 2)
			}
		}
		share := math.Sqrt(moved / read)
		if share > 1 {
			t.Errorf("%s: eased figures lie %.3f as far off as those read", h.name, share)
		}
		sum, hulls = sum+share, hulls+1
	}
	t.Logf("eased figures lie %.3f as far off as those read", sum/hulls)
	if sum/hulls > 0.9 {
		t.Errorf("easing brings little: %.3f", sum/hulls)
	}
}

// A figure between two of the table's steps was not rounded to them, and stays as
// it was read.
func TestEaseLeavesFinerFigures(t *testing.T) {
	o := held()[0].offsets()
	o.Resolution *= 64
	eased, finer := newTable(o, DefaultRules()), 0
	for i, l := range o.Lines {
		for k, v := range l.Values {
			if eased.ok[i][k] && v.Value%o.Resolution != 0 {
				finer++
				if math.Abs(eased.v[i][k]-v.Value.Inches()) > 1e-9 {
					t.Fatalf("%s moved from %v to %v", l.Name, v.Value.Inches(), eased.v[i][k])
				}
			}
		}
	}
	if finer < 20 {
		t.Errorf("only %d figures are finer than the step", finer)
	}
}
