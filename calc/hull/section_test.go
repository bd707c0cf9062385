package hull

import (
	"fmt"
	"math"
	"strconv"
	"testing"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// shipHull is a Series 60 parent hull (F. H. Todd, David Taylor Model Basin Report
// 1712, 1963; the files under testdata/worked/offsets) at 48 in half beam, B/T 2.5
// and L/B 7.5: half-breadths are fractions of their own waterline's greatest,
// which is given as a fraction of the half beam.
func shipHull(t *testing.T, name string) (Offsets, Rules) {
	o := worked(t, name, measure.Form{Unit: measure.Fractions, Notation: measure.Decimal}, measure.Millimetre, true)
	most := len(o.Stations) - 1
	if o.Stations[most].Name != "MaxBm" {
		t.Fatal("no greatest breadths")
	}
	for i := range o.Lines {
		share, err := strconv.ParseFloat(o.Lines[i].Name, 64)
		if err != nil {
			t.Fatal(err)
		}
		o.Lines[i].At = source.Is(measure.Metre.Times(share)) // of the draft
		whole := o.Lines[i].Values[most].Value.Millimetres() / 1000
		for k := range o.Lines[i].Values {
			o.Lines[i].Values[k].Value = o.Lines[i].Values[k].Value.Times(whole)
		}
	}
	o = dropStation(o, "MaxBm")
	o.Fractions = true
	r := DefaultRules()
	r.HalfBeam, r.Draft, r.StationSpacing = 48*measure.Inch, measure.Inches(38.4), 36*measure.Inch
	return o, r
}

// swell is how far the table's own figures show a greatest or a least between two
// neighbours beyond them both: as a parabola through three points does, those two and
// the next on either side, where its top lies between the two. It is nothing where
// the figures show none.
func swell(c *curve, i int) float64 {
	most := 0.0
	for _, k := range []int{i - 1, i} {
		if k < 0 || k+2 >= len(c.p) {
			continue
		}
		t, y := c.t[k:k+3], [3]float64{c.p[k].y, c.p[k+1].y, c.p[k+2].y}
		d0, d1 := (y[1]-y[0])/(t[1]-t[0]), (y[2]-y[1])/(t[2]-t[1])
		bend := (d1 - d0) / (t[2] - t[0])
		if bend == 0 {
			continue
		}
		top := (t[0]+t[1])/2 - d0/(2*bend)
		if top <= c.t[i] || top >= c.t[i+1] {
			continue
		}
		at := y[0] + (top-t[0])*(d0+bend*(top-t[1]))
		most = max(most, at-max(c.p[i].y, c.p[i+1].y), min(c.p[i].y, c.p[i+1].y)-at)
	}
	return most
}

// TestSeries60 draws a ship with a flat bottom, a wall side and a bulging stern:
// the sections pass no farther beyond their neighbours than the table's step, from
// the greatest or least that its figures show there where they do, and are as long as
// a line of many short pieces.
func TestSeries60(t *testing.T) {
	for _, name := range []string{"05", "07"} {
		o, r := shipHull(t, name)
		s, found := Work(o, nil, r)
		if s == nil {
			t.Fatal(found)
		}
		full, _ := scaled(o, r)
		h := draw(full, r)
		step := h.step
		for k, sec := range h.sections {
			if sec.line == nil {
				continue
			}
			c := sec.line
			dense := 0.0
			last := c.p[0]
			for i := range len(c.t) - 1 {
				p, q := c.p[i], c.p[i+1]
				slack := step + swell(c, i) + 1e-9
				for j := 1; j <= 200; j++ {
					at := c.at(c.t[i] + (c.t[i+1]-c.t[i])*float64(j)/200)
					dense += at.from(last)
					last = at
					if at.y > max(p.y, q.y)+slack || at.y < min(p.y, q.y)-slack {
						t.Fatalf("%s: station %s passes beyond %v and %v at %v", name, h.o.Stations[k].Name, p, q, at)
					}
				}
			}
			if name == "05" && k == 0 {
				continue // the file's quarter waterline reads 10, ten times the ship's breadth
			}
			near(t, "girth", c.length(), dense, 1e-5*dense)
		}
		// No keel is given: amidships the girth is that of bilge and side, from the
		// breadth at the base, more than straight across and less than the corner.
		mid := s.Stations[s.station("10")].Girth.Inches()
		base := full.Lines[0].Values[s.station("10")].Value.Inches()
		if mid > 48-base+1.5*38.4 || mid < math.Hypot(48-base, 1.5*38.4) {
			t.Errorf("girth amidships %.2f", mid)
		}
		if len(found) == 0 || found[0].Kind != GirthFrom {
			t.Errorf("found %v", found)
		}
	}
}

// TestFractionsNeedSize says what a table of fractions needs.
func TestFractionsNeedSize(t *testing.T) {
	o, r := shipHull(t, "05")
	r.Draft = 0
	if s, found := Work(o, nil, r); s != nil || len(found) != 1 || found[0].Kind != HullUnworked {
		t.Errorf("found %v", found)
	}
}

// TestMirror turns a hull end for end: girths and lengths are the same from the
// other end.
func TestMirror(t *testing.T) {
	for _, f := range append(tuned(), held()...) {
		o := f.offsets()
		a, _ := Work(o, planked(), DefaultRules())
		b, _ := Work(turned(o), planked(), DefaultRules())
		n := len(a.Stations)
		for k := range a.Stations {
			near(t, f.name+" girth", b.Stations[n-1-k].Girth.Inches(), a.Stations[k].Girth.Inches(), 1e-4)
		}
		square := map[string]float64{}
		for _, x := range b.Board {
			square[fmt.Sprint(x.Role, x.Line, n-1-x.Place)] = float64(x.Square)
		}
		for _, x := range a.Board { // the other face may stand on the line
			other, ok := square[fmt.Sprint(x.Role, x.Line, x.Place)]
			if !ok || math.Abs(math.Abs(other)-math.Abs(float64(x.Square))) > 1e-3 {
				t.Errorf("%s: %s at station %s is bevelled %v, from the other end %v", f.name, x.Line, x.Station, x.Square, other)
			}
		}
		for i := range a.Lines {
			near(t, f.name+" "+a.Lines[i].Name, b.Lines[i].Length.Inches(), a.Lines[i].Length.Inches(), 1e-3)
		}
		for i, l := range a.Linings {
			for j, seam := range l.Seams {
				near(t, fmt.Sprint(f.name, " seam ", j), b.Linings[i].Seams[j].Length.Inches(), seam.Length.Inches(), 1e-2)
			}
		}
	}
}

// turned is a table turned end for end.
func turned(o Offsets) Offsets {
	n := len(o.Stations)
	end := o.Stations[n-1].At.Value
	out := o
	out.Stations, out.Lines = nil, nil
	for k := range n {
		s := o.Stations[n-1-k]
		s.At.Value = end - s.At.Value
		out.Stations = append(out.Stations, s)
	}
	for _, l := range o.Lines {
		values := make([]source.Reading[measure.Length], n)
		for k := range n {
			values[k] = l.Values[n-1-k]
		}
		l.Values = values
		out.Lines = append(out.Lines, l)
	}
	return out
}

// TestScale makes a hull of a table twenty times as big with a
// step twenty times as coarse: girths and seams are twenty times as long, and turn
// as much.
func TestScale(t *testing.T) {
	list := []Strake{{Name: "1-8", Skin: Planks, Count: source.Is(8)}}
	small, _ := Work(wigley(measure.Foot, measure.Eighth), list, DefaultRules())
	r := DefaultRules()
	r.NearBase *= 20
	big, _ := Work(wigley(20*measure.Foot, 20*measure.Eighth), list, r)
	for j, seam := range small.Linings[0].Seams {
		near(t, "seam", big.Linings[0].Seams[j].Length.Inches(), 20*seam.Length.Inches(), 1e-3)
		for k, p := range seam.Points {
			near(t, "seam's bevel", float64(big.Linings[0].Seams[j].Points[k].Bevel), float64(p.Bevel), 1e-4)
		}
	}
	for k := range small.Stations {
		near(t, "girth", big.Stations[k].Girth.Inches(), 20*small.Stations[k].Girth.Inches(), 1e-5)
	}
	for i := range small.Board {
		near(t, "bevel", float64(big.Board[i].Square), float64(small.Board[i].Square), 1e-6)
	}
}

// TestConverge draws ever more stations and levels: the girths and the sheer come
// nearer the true ones.
func TestConverge(t *testing.T) {
	last, lastLength := math.Inf(1), math.Inf(1)
	for _, n := range []int{6, 11, 21, 41} {
		s, _ := Work(wigleyTable(measure.Metre, measure.Nanometre, n, n/2), nil, DefaultRules())
		worst := 0.0
		for k, g := range s.Stations {
			worst = max(worst, math.Abs(g.Girth.Millimetres()/1000-wigleyGirth(20*float64(k)/float64(n-1)-10)))
		}
		if worst > last/4 {
			t.Errorf("with %d stations the girths are out by %g, before %g", n, worst, last)
		}
		last = worst
		for _, l := range s.Lines {
			if l.Role == Deck { // 2 x 10.402288194, by quadrature
				off := math.Abs(l.Length.Millimetres()/1000 - 2*10.402288194)
				if off > max(lastLength/4, 1e-6) {
					t.Errorf("with %d stations the sheer is out by %g, before %g", n, off, lastLength)
				}
				lastLength = off
			}
		}
	}
}

// TestViews says that two views of one hull agree, and that a buttock's heights
// taken from the wrong base do not.
func TestViews(t *testing.T) {
	for _, f := range append(tuned(), held()...) {
		h := draw(f.offsets(), DefaultRules())
		for _, x := range h.viewsApart() {
			t.Errorf("%s: %s", f.name, x.Text)
		}
	}
	o := tuned()[0].offsets()
	for i, l := range o.Lines {
		if l.Name == "Buttock 2" {
			for k := range l.Values {
				o.Lines[i].Values[k].Value += 2 * measure.Inch
			}
		}
	}
	_, found := Work(o, nil, DefaultRules())
	n := 0
	for _, f := range found {
		if f.Kind == ViewsApart {
			n++
		}
	}
	if n != 1 {
		t.Errorf("a buttock 2 in too high is told of %d times", n)
	}
}

// benchHull is a round-bilged hull of so many stations, with a strip skin of so
// many strips a side under it.
func benchHull(stations, seams int) (Offsets, []Strake) {
	f := roundBilge("bench", 480, 72, 66, stations, measure.Eighth)
	return f.offsets(), []Strake{
		{Name: "A", Skin: Strips, Thickness: source.Is(5 * measure.Eighth), Count: source.Is(seams), Width: source.Is(measure.Inches(108 / float64(seams)))},
	}
}

// BenchmarkWork is the cost of a hull of 60 seams and 30 stations, and of less
// and more: linear in both.
func BenchmarkWork(b *testing.B) {
	for _, n := range [][2]int{{30, 15}, {30, 30}, {30, 60}, {30, 120}, {15, 60}, {60, 60}} {
		o, list := benchHull(n[0], n[1])
		b.Run(fmt.Sprintf("stations=%d/seams=%d", n[0], n[1]), func(b *testing.B) {
			for b.Loop() {
				Work(o, list, DefaultRules())
			}
		})
	}
}

// TestUnits writes one table in inches and in millimetres: the hull is the same
// to the nanometre.
func TestUnits(t *testing.T) {
	o := wigley(measure.Foot, measure.SixtyFourth) // whole in both
	a, _ := Work(o, planked(), DefaultRules())
	o.Form = measure.Form{Unit: measure.InInches, Notation: measure.Decimal}
	b, _ := Work(o, planked(), DefaultRules())
	if len(a.Moulds) == 0 || len(a.Moulds) != len(b.Moulds) {
		t.Fatalf("%d and %d figures of moulds", len(a.Moulds), len(b.Moulds))
	}
	for i, m := range a.Moulds {
		if m != b.Moulds[i] {
			t.Errorf("%v and %v", m, b.Moulds[i])
		}
	}
	for i, l := range a.Linings {
		for k, s := range l.Strakes {
			if s.Length != b.Linings[i].Strakes[k].Length {
				t.Errorf("%s %s: %v and %v", l.Skin, s.Name, s.Length, b.Linings[i].Strakes[k].Length)
			}
		}
	}
}
