package hull

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// TestWigleyShares holds the seams of six equal strakes to those of the closed
// girth: heights below the waterline at x = 0 and x = 5, by quadrature.
func TestWigleyShares(t *testing.T) {
	s, found := Work(wigley(measure.Metre, measure.Millimetre/100), []Strake{{Name: "1-6", Skin: Planks, Count: source.Is(6)}}, DefaultRules())
	for _, f := range found {
		if f.Kind != MouldSurface && f.Kind != StrakeWide && f.Kind != GarboardOpen {
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
	along, ok := s.SeamAlong(Planks, "1", BothSides, true, []Station{{Name: "10"}, {Name: "15"}, {Name: "20"}})
	if !ok {
		t.Fatal("no distances along the sheer")
	}
	near(t, "half the waterline", along[2].At.Millimetres()/1000, 10.402288194, 1e-3)
}

// TestNoHull asks an unknown hull for what it cannot say.
func TestNoHull(t *testing.T) {
	var s *Shape
	if along, ok := s.SeamAlong(Planks, "1", Port, true, []Station{{Name: "1"}}); ok {
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
				if off := (sum - l.girths[k]).Abs(); whole && (crossing != len(l.Strakes) || off > 10) {
					t.Errorf("%s: %d strakes at station %s, together %v off the girth", f.name, crossing, s.Stations[k].Name, off)
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

// TestDrawnAsListed lists six planks of 4, 5 and 6 in down a quarter of a round of 36
// in: they are drawn so wide at every station, and 56.549 - 30 in is left below them.
func TestDrawnAsListed(t *testing.T) {
	var list []Strake
	for i, wide := range []float64{4, 5, 6, 6, 5, 4} {
		list = append(list, Strake{Name: fmt.Sprint(i + 1), Skin: Planks, Width: source.Is(measure.Inches(wide))})
	}
	s, _ := Work(roundOffsetsEvery(1, func(float64) float64 { return 36 }), list, DefaultRules())
	for k := range s.Stations {
		for i, one := range s.Linings[0].Strakes {
			near(t, "width", one.Widths[k].Inches(), list[i].Width.Value.Inches(), 0.01)
		}
		near(t, "left below", s.Linings[0].Left[k].Inches(), 18*math.Pi-30, 0.01)
	}
}

// TestStripsOverTheSheer lays strips 5 in wide up a flat side from a level chine, under
// a sheer that stands 40 + 10 u^2 up, u = x/48 - 1: the seam 45 up runs out where 10 u^2
// is 5, 33.94 in from midships, and is so much short of 48 long at either end. Between
// stations a foot apart the sheer is taken straight, by which it is .34 in out.
func TestStripsOverTheSheer(t *testing.T) {
	o := flatSide()
	o.Surface = InsidePlanking
	r := DefaultRules()
	r.StripsFrom = "chine"
	s, _ := Work(o, []Strake{{Name: "strips", Skin: Strips, Width: source.Is(5 * measure.Inch)}}, r)
	seen := 0
	for _, seam := range s.Linings[0].Seams {
		if p := seam.Points[0]; p.Crosses && (p.Up-45*measure.Inch).Abs() < measure.Eighth {
			seen++
			near(t, "both ends of the seam", seam.Length.Inches(), 2*(48-48*math.Sqrt(0.5)), 0.8)
		}
	}
	if seen != 1 {
		t.Errorf("%d seams at 45 in", seen)
	}
}

// TestMarksOfEachSide marks two planks 5 in wide to starboard and 6 in to port, of a list
// for both sides alike: each side is lined off by its own marks, and its planks are as
// wide.
func TestMarksOfEachSide(t *testing.T) {
	o := roundOffsets(func(float64) float64 { return 36 })
	list := []Strake{{Name: "1-2", Skin: Planks, Count: source.Is(2)}}
	var marks []SeamMarks
	want := map[Side]measure.Length{Starboard: 5 * measure.Inch, Port: 6 * measure.Inch}
	for _, side := range []Side{Starboard, Port} {
		m := SeamMarks{Skin: Planks, Side: side, Stations: o.Stations}
		for j := range 2 {
			mark := SeamMark{Strake: fmt.Sprint(j + 1)}
			for range o.Stations {
				mark.Values = append(mark.Values, source.Is(want[side]))
			}
			m.Seams = append(m.Seams, mark)
		}
		marks = append(marks, m)
	}
	again := marks[1]
	again.Cell = source.Cell{Sheet: "Marks", Row: 9, Col: 1}
	s, found := Work(o, list, DefaultRules(), append(marks, again)...)
	if !slices.ContainsFunc(found, func(f finding.Finding) bool { return f.Kind == HullUnworked && f.Cell == again.Cell }) {
		t.Errorf("nothing is said of marks that are not used: %v", found)
	}
	runs, _ := s.Runs(list, DefaultRules())
	if len(runs) != 4 {
		t.Fatalf("%d planks of both sides", len(runs))
	}
	for _, r := range runs {
		if r.Width.Value != want[r.Side] {
			t.Errorf("%s to %s is %v wide, marked %v", r.Name, r.Side, r.Width.Value, want[r.Side])
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
	// The fifteenth seam lies 45 in down and runs out where the girth is 45. A seam g
	// down on a radius r turns about the axis by g/r: its length is the sum of sqrt(1 +
	// r'^2 (1 + (g/r)^2)), here over a thousand pieces.
	for j, seam := range l.Seams {
		x := min(120, (36-0.5*math.Hypot(1, 0.1)-float64(3*j)/(math.Pi/2))*10)
		if x <= 0 {
			continue
		}
		end, long := seam.run.p[len(seam.run.p)-1].x, 0.0
		near(t, fmt.Sprintf("end of seam %d", j), end, x, 0.1)
		for i := range 1000 {
			turn := float64(3*j) / (girth((float64(i)+0.5)*x/1000) * 2 / math.Pi)
			long += x / 1000 * math.Sqrt(1+0.01*(1+turn*turn))
		}
		near(t, fmt.Sprintf("length of seam %d", j), seam.Length.Inches(), long, 0.1)
	}
}

// TestParallelPlanks lays seven planks 7 in wide down a quarter of a cone, girth
// (36 - x/10) pi/2: 1/4 in or more is left below them as far as 46.47 in aft, 1 1/2
// in or more as far as 38.51, both between stations.
func TestParallelPlanks(t *testing.T) {
	o := roundOffsets(func(x float64) float64 { return 36 - x/10 })
	o.Surface = InsidePlanking
	r := DefaultRules()
	r.LiningPlanks = ByWidths
	list := []Strake{{Name: "1-7", Skin: Planks, Count: source.Is(7), Width: source.Is(7 * measure.Inch)}}
	s, found := Work(o, list, r)
	l := s.Linings[0]
	for k, left := range l.Left {
		want := (36-1.2*float64(k))*math.Pi/2 - 49
		near(t, fmt.Sprint("left at station ", k), left.Inches(), max(0, want), 1./64)
	}
	if len(l.Tapers) != 1 || len(l.Stealers) != 1 || l.Tapers[0].From != 0 || l.Stealers[0].From != 0 || l.First != 0 || l.From != "" {
		t.Fatalf("tapers %v, stealers %v", l.Tapers, l.Stealers)
	}
	near(t, "tapers end", l.Tapers[0].To.Inches(), 360-49.25*20/math.Pi, 0.01)
	near(t, "stealers end", l.Stealers[0].To.Inches(), 360-50.5*20/math.Pi, 0.01)
	said := ""
	for _, f := range found {
		if f.Kind == LiningSum {
			said += f.Text
		}
	}
	if want := "below the last plank as much as 7.5625 in remains: tapering strakes must take it up from station 0 to 1.5 in forward of station 4, or stealers from station 0 to 2.5 in abaft station 3, where it is 1.5 in or more"; said != want {
		t.Errorf("said %q, want %q", said, want)
	}

	// From a waterline, the uppermost two planks narrower: two lie above it, and the
	// third's upper edge along it at every station that has it.
	r.PlanksFrom = "wl 26"
	list = []Strake{{Name: "narrow", Skin: Planks, Width: source.Is(4 * measure.Inch)}, {Name: "1-9", Skin: Planks, Count: source.Is(9), Width: source.Is(7 * measure.Inch)}}
	s, _ = Work(o, list, r)
	l = s.Linings[0]
	if l.From != "WL 26" || l.First != 2 || l.Strakes[2].Name != "2" {
		t.Fatalf("from %q, first %d", l.From, l.First)
	}
	for k, p := range l.Seams[2].Points {
		radius := 36 - 1.2*float64(k)
		near(t, "the line's height", p.Up.Inches(), 26, 1e-3)
		near(t, "the line's girth", p.Girth.Inches(), radius*math.Asin(10/radius), 1e-3)
		near(t, "width below it", l.Strakes[2].Widths[k].Inches(), 7, 1e-6)
	}
	// A hull that comes to a plumb stem: the line goes on to the stem itself.
	r.StripsFrom = "WL 5"
	wig, _ := Work(wigley(measure.Foot, measure.SixtyFourth), planked()[:1], r)
	strips := wig.Linings[0]
	near(t, "the line on the stem", strips.Seams[strips.First].run.p[0].z, 15, 1e-3)
	r.PlanksFrom = "WL 99"
	_, found = Work(o, list, r)
	if !slices.ContainsFunc(found, func(f finding.Finding) bool { return f.Kind == HullUnworked && f.Reads == "WL 99" }) {
		t.Errorf("a line that is none is not told of: %v", found)
	}
}

// TestZones holds eight planks of a quarter of a round of radius 36, 7.07 in wide
// each, to a limit in every zone by turns: the middles of the first two lie above
// the light waterline at 24, those of the last four where the round is flatter than
// 45 degrees, two between.
func TestZones(t *testing.T) {
	o := roundOffsets(func(float64) float64 { return 36 })
	for _, c := range []struct {
		limit [3]measure.Length
		want  string
	}{
		{[3]measure.Length{7 * measure.Inch, 0, 0}, "2 of the plank skin's strakes are wider than 7 in in the topsides: "},
		{[3]measure.Length{0, 7 * measure.Inch, 0}, "2 of the plank skin's strakes are wider than 7 in in the bilge: "},
		{[3]measure.Length{0, 0, 7 * measure.Inch}, "4 of the plank skin's strakes are wider than 7 in in the bottom: "},
		{[3]measure.Length{8 * measure.Inch, 8 * measure.Inch, 8 * measure.Inch}, ""},
	} {
		r := DefaultRules()
		r.LightWater, r.WidestTopside, r.WidestBilge, r.WidestBottom = 24*measure.Inch, c.limit[0], c.limit[1], c.limit[2]
		_, found := Work(o, []Strake{{Name: "1-8", Skin: Planks, Count: source.Is(8)}}, r)
		said := ""
		for _, f := range found {
			if f.Kind == StrakeWide {
				said += f.Text
			}
		}
		if (c.want == "") != (said == "") || !strings.HasPrefix(said, c.want) || strings.Count(said, "wider") > 1 {
			t.Errorf("limits %v: %q", c.limit, said)
		}
	}
}

// TestUneven draws a Wigley hull's seams in equal shares, which are fair, and again
// with the half-breadths of its middle station 3 in a hundred too small: there the
// seams have a hollow, the lowest the deepest.
func TestUneven(t *testing.T) {
	list := []Strake{{Name: "1-8", Skin: Planks, Count: source.Is(8)}}
	o := wigley(measure.Foot, measure.Eighth)
	uneven := func() (all []string) {
		_, found := Work(o, list, DefaultRules())
		for _, f := range found {
			if f.Kind == SeamUneven {
				all = append(all, f.Text)
			}
		}
		return all
	}
	if said := uneven(); len(said) != 0 {
		t.Errorf("fair seams: %q", said)
	}
	for i, l := range o.Lines {
		if l.View == HalfBreadth {
			o.Lines[i].Values[10].Value = l.Values[10].Value.Times(0.97)
		}
	}
	if said := uneven(); len(said) != 1 || !strings.Contains(said[0], "the seam below 7 has a hollow of ") || !strings.HasSuffix(said[0], " at station 10") {
		t.Errorf("a station too slack: %q", said)
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
	// Where the widths overrun the girth the last plank has what remains of it.
	for k, w := range s.Linings[0].Strakes[7].Widths {
		want := 36 * math.Pi / 2 / 8
		if k == 4 {
			want--
		}
		near(t, fmt.Sprint("the last plank at station ", k), w.Inches(), want, 0.01)
	}
	kinds := map[string]int{}
	for _, f := range found {
		kinds[f.Code]++
		if want := "1 in more than the girth on the outside of planking: where they are more, plank P8 is drawn with what remains to the rabbet"; f.Kind == LiningSum && !strings.HasSuffix(f.Text, want) {
			t.Errorf("said %q, want %q", f.Text, want)
		}
	}
	if kinds["lining-sum"] != 1 || kinds["seam-hollow"] != 1 {
		t.Errorf("found %v", kinds)
	}
	// Next to the end the hump is named where it stands, though it shows farther in.
	close := marks
	close.Seams = slices.Clone(marks.Seams)
	close.Seams[2].Values = slices.Clone(marks.Seams[2].Values)
	close.Seams[2].Values[4] = close.Seams[2].Values[5]
	close.Seams[2].Values[1].Value += measure.Inch
	_, found = Work(o, []Strake{{Name: "x", Skin: Planks, Count: source.Is(8)}}, DefaultRules(), close)
	if !slices.ContainsFunc(found, func(f finding.Finding) bool {
		return f.Kind == SeamHollow && f.Text == "the seam below strake P3 has a hump at station 1"
	}) {
		t.Errorf("a hump next to the end: %v", found)
	}
	// The same seams as girths from the sheer and from the rabbet lie in the same
	// places.
	whole := s.Linings[0].girths
	for kind, from := range map[MarkKind]func(down, girth measure.Length) measure.Length{
		MarkFromSheer:  func(down, _ measure.Length) measure.Length { return down },
		MarkFromRabbet: func(down, girth measure.Length) measure.Length { return girth - down },
	} {
		girths := SeamMarks{Skin: Planks, Kind: kind, Stations: o.Stations}
		for j, m := range marks.Seams {
			to := SeamMark{Strake: m.Strake}
			for k := range o.Stations {
				to.Values = append(to.Values, source.Is(from(s.Linings[0].Seams[j+1].Points[k].Girth, whole[k])))
			}
			girths.Seams = append(girths.Seams, to)
		}
		same, _ := Work(o, []Strake{{Name: "x", Skin: Planks, Count: source.Is(8)}}, DefaultRules(), girths)
		for j, seam := range same.Linings[0].Seams {
			for k, p := range seam.Points {
				if want := s.Linings[0].Seams[j].Points[k]; p.Crosses != want.Crosses || (p.Girth-want.Girth).Abs() > 10 {
					t.Errorf("kind %d, seam %d at station %d: %v, want %v", kind, j, k, p.Girth, want.Girth)
				}
			}
		}
	}
}

// TestCarriedOn gives equal shares as widths at the stations amidships only: beyond
// them each strake keeps its part of the girth, so the seams come out as those of
// equal shares over the whole hull. A width left out at an end is drawn so too.
func TestCarriedOn(t *testing.T) {
	o := wigley(measure.Metre, measure.Millimetre/100)
	whole, _ := Work(o, []Strake{{Name: "1-6", Skin: Planks, Count: source.Is(6)}}, DefaultRules())
	var list []Strake
	for j, s := range whole.Linings[0].Strakes {
		one := Strake{Name: s.Name, Skin: Planks, Cell: source.Cell{Row: j + 1}}
		for k := 6; k <= 14; k++ {
			w := source.Is(s.Widths[k])
			if j == 2 && k < 8 {
				w = source.Reading[measure.Length]{}
			}
			one.Widths, one.WidthAt = append(one.Widths, w), append(one.WidthAt, Station{Name: whole.Stations[k].Name})
		}
		list = append(list, one)
	}
	s, found := Work(o, list, DefaultRules())
	for kind, want := range map[*finding.Kind]int{MarksShort: 2, WidthGap: 2, LiningSum: 0} {
		n := 0
		for _, f := range found {
			if f.Kind == kind {
				n++
			}
		}
		if n != want {
			t.Errorf("%s found %d times, not %d", kind.Code, n, want)
		}
	}
	for j, want := range whole.Linings[0].Strakes {
		got := s.Linings[0].Strakes[j]
		near(t, "length of "+want.Name, got.Length.Millimetres()/1000, want.Length.Millimetres()/1000, 1e-4)
		for k := range want.Widths {
			near(t, fmt.Sprintf("width of %s at station %d", want.Name, k), got.Widths[k].Millimetres()/1000, want.Widths[k].Millimetres()/1000, 1e-6)
		}
	}
}
