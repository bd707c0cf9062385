package hull

import (
	"fmt"
	"math"
	"testing"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// TestWigleyShares holds the seams of six equal strakes to those of the closed
// girth: heights below the waterline at x = 0 and x = 5, by quadrature.
func TestWigleyShares(t *testing.T) {
	s, found := Work(wigley(measure.Metre, measure.Millimetre/100), []Strake{{Name: "1-6", Skin: Planks, Count: source.Is(6)}}, DefaultRules())
	for _, f := range found {
		if f.Kind != MouldSurface && f.Kind != StrakeWide {
			t.Error(f.Text)
		}
	}
	l := s.Linings[0]
	if l.By != ByShares || l.On != OutsidePlanking || len(l.Strakes) != 6 || len(l.Seams) != 7 || l.Strakes[5].Name != "6" {
		t.Fatalf("%v on %v, %d strakes", l.By, l.On, len(l.Strakes))
	}
	for _, c := range []struct {
		station int
		z       []float64
		width   float64
	}{
		{10, []float64{0, 0.523343, 0.934829, 1.263277, 1.540076, 1.782399, 2}, 0.558579},
		{15, []float64{0, 0.463220, 0.867056, 1.208814, 1.503791, 1.764666, 2}, 0.477393},
	} {
		for j, z := range c.z {
			near(t, fmt.Sprintf("seam %d at station %d", j, c.station), 2-l.Seams[j].Points[c.station].Up.Millimetres()/1000, z, 2e-4)
		}
		for _, k := range l.Strakes {
			near(t, "width", k.Widths[c.station].Millimetres()/1000, c.width, 1e-4)
		}
	}
	near(t, "sheer", l.Seams[0].Length.Millimetres()/1000, 2*10.402288194, 1e-3)
	along, ok := s.SeamAlong(Planks, "1", BothSides, true, []string{"10", "15", "20"})
	if !ok {
		t.Fatal("no distances along the sheer")
	}
	near(t, "half the waterline", along[2].Millimetres()/1000, 10.402288194, 1e-3)
}

// TestNoHull asks an unknown hull for what it cannot say.
func TestNoHull(t *testing.T) {
	var s *Shape
	if along, ok := s.SeamAlong(Planks, "1", Port, true, []string{"1"}); ok {
		t.Errorf("along %v", along)
	}
}

// TestSharesAddUp says that on every hull the equal shares of a station add up to
// its girth, whatever ends on the stem.
func TestSharesAddUp(t *testing.T) {
	for _, f := range append(tuned(), held()...) {
		s, _ := Work(f.offsets(), planked(), DefaultRules())
		for _, l := range s.Linings {
			if l.By != ByShares {
				continue
			}
			for k := range s.Stations {
				sum, crossing := measure.Length(0), 0
				for _, w := range l.Strakes {
					if w.Widths[k] > 0 {
						sum, crossing = sum+w.Widths[k], crossing+1
					}
				}
				whole := l.Seams[0].Points[k].Crosses && l.Seams[len(l.Seams)-1].Points[k].Crosses
				if whole && (crossing != len(l.Strakes) || sum == 0) {
					t.Errorf("%s: %d strakes at station %s", f.name, crossing, s.Stations[k].Name)
				}
				last := l.Strakes[0].Widths[k]
				for _, w := range l.Strakes {
					if d := (w.Widths[k] - last).Abs(); w.Widths[k] > 0 && d > 10 {
						t.Fatalf("%s: widths %v and %v at station %s", f.name, last, w.Widths[k], s.Stations[k].Name)
					}
				}
			}
		}
	}
}

// TestParallelStrips lays strips 3 in wide on a quarter of a cone: so many at its
// greatest end, running out along the rabbet as it narrows, each as long as the
// cone has girth for it.
func TestParallelStrips(t *testing.T) {
	o := roundOffsets(func(x float64) float64 { return 36 - x/10 })
	s, _ := Work(o, []Strake{{Name: "strips", Skin: Strips, Width: source.Is(3 * measure.Inch), Thickness: source.Is(measure.Inch / 2)}}, DefaultRules())
	l := s.Linings[0]
	if l.On != InsidePlanking || l.By != ByWidths {
		t.Fatalf("%v on %v", l.By, l.On)
	}
	girth := func(x float64) float64 { return (36 - x/10 - 0.5*math.Hypot(1, 0.1)) * math.Pi / 2 }
	if want := int(math.Ceil(girth(0) / 3)); len(l.Strakes) != want {
		t.Errorf("%d strips, want %d", len(l.Strakes), want)
	}
	for k := range s.Stations {
		sum := measure.Length(0)
		for _, w := range l.Strakes {
			sum += w.Widths[k]
		}
		near(t, "widths together", sum.Inches(), girth(12*float64(k)), 0.01)
	}
	// The fifteenth seam lies 45 in down and runs out where the girth is 45.
	for j, seam := range l.Seams {
		x := (36 - 0.5*math.Hypot(1, 0.1) - float64(3*j)/(math.Pi/2)) * 10
		if x > 0 && x < 120 {
			end := seam.run.p[len(seam.run.p)-1]
			near(t, fmt.Sprintf("end of seam %d", j), end.x, x, 0.1)
		}
	}
}

// TestMarks lines off by the builder's own marks: girths from the sheer with one
// out of the run, and widths that do not add up at one station.
func TestMarks(t *testing.T) {
	o := roundOffsets(func(float64) float64 { return 36 })
	marks := SeamMarks{Skin: Planks, Kind: MarkWidths, Stations: o.Stations}
	for j := range 8 {
		m := SeamMark{Strake: fmt.Sprint("P", j+1)}
		for k := range o.Stations {
			w := 36 * math.Pi / 2 / 8
			if j == 2 && k == 4 {
				w += 1
			}
			m.Values = append(m.Values, source.Is(measure.Inches(w)))
		}
		marks.Seams = append(marks.Seams, m)
	}
	s, found := Work(o, []Strake{{Name: "x", Skin: Planks, Count: source.Is(8)}}, DefaultRules(), marks)
	if l := s.Linings[0]; l.By != ByMarks || l.Strakes[3].Name != "P4" || len(l.Seams) != 9 {
		t.Fatalf("%v", l.By)
	}
	kinds := map[string]int{}
	for _, f := range found {
		kinds[f.Code]++
	}
	if kinds["lining-sum"] != 1 || kinds["seam-hollow"] != 1 {
		t.Errorf("found %v", kinds)
	}
}
