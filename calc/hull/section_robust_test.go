package hull

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// TestNothingStops spoils hulls in every way a table can be spoilt, from a fixed
// seed, and works them out: nothing panics and no length is without sense.
func TestNothingStops(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 4))
	hulls := append(tuned(), held()...)
	worked := 0
	for i := range 400 {
		f := *hulls[i%len(hulls)]
		f.stations = even(2 + rng.IntN(9))
		o := f.offsets()
		spoil(&o, rng)
		list := []Strake{
			{Name: "A", Skin: Strips, Thickness: source.Is(measure.Inches(rng.Float64() * 3)), Width: source.Is(measure.Inches(8 * rng.Float64())), Count: source.Is(rng.IntN(40))},
			{Name: "1-9", Skin: Planks, Side: Side(rng.IntN(3)), Thickness: source.Is(measure.Inches(rng.Float64() * 3)), Count: source.Is(9)},
		}
		r := DefaultRules()
		r.LiningPlanks, r.LiningStrips = Method(rng.IntN(4)), Method(rng.IntN(4))
		r.MouldSquare = rng.IntN(2) == 0
		if len(o.Lines) > 0 && rng.IntN(3) == 0 {
			r.StripsFrom = o.Lines[rng.IntN(len(o.Lines))].Name
			r.PlanksFrom = o.Lines[rng.IntN(len(o.Lines))].Name
		}
		if len(o.Stations) > 0 && rng.IntN(3) == 0 {
			o.Stations[len(o.Stations)-1].Transom = true
			r.TransomRake = measure.Angle(150*rng.Float64() - 75)
		}
		what := fmt.Sprintf("case %d, %s", i, f.name)
		s, _ := Work(o, list, r, spoiltMarks(o, rng))
		s.Runs(list, r)
		s.AsHung([]Hung{{Skin: Planks, Strake: "3", Station: "1", Girth: source.Is(measure.Foot), From: HungFrom(rng.IntN(2)), Corner: Corner(rng.IntN(2))}}, list, nil, r)
		spiled, _ := s.Spile(list, Sawn(rng.IntN(3)), r)
		if s == nil {
			continue
		}
		most := 100000 * measure.Foot
		for _, g := range s.Stations {
			if g.Girth < 0 || g.Girth > most {
				t.Errorf("%s: girth %v", what, g.Girth)
			}
		}
		for _, l := range s.Linings {
			for _, seam := range l.Seams {
				if seam.Length < 0 || seam.Length > most {
					t.Errorf("%s: seam %s is %v long", what, seam.Name, seam.Length)
				}
				if seam.run != nil && math.IsNaN(seam.run.length()) {
					t.Errorf("%s: seam %s has places that are no numbers", what, seam.Name)
				}
			}
		}
		worked++
		for _, p := range spiled {
			if math.IsNaN(p.shape.upper[len(p.shape.upper)-1].x) || math.IsNaN(p.Strain) {
				t.Errorf("%s: %s %s laid out to no numbers", what, p.Skin, p.Strake)
			}
			p.Between(1, 1, p.Length/4, p.Length/2, r)
		}
	}
	if worked < 200 {
		t.Errorf("only %d of the hulls could be worked out", worked)
	}
}

// spoil makes some of a table's figures blank, dashes, wrong or mad, turns lines
// into others, and takes lines and positions away.
func spoil(o *Offsets, rng *rand.Rand) {
	for i := range o.Lines {
		l := &o.Lines[i]
		for k := range l.Values {
			v := &l.Values[k]
			switch rng.IntN(40) {
			case 0:
				v.State = source.Blank
			case 1:
				v.State = source.Dash
			case 2:
				v.State, v.Value = source.Given, 0
			case 3:
				v.State, v.Value = source.Given, -v.Value
			case 4:
				v.State, v.Value = source.Given, v.Value*10
			case 5:
				v.State, v.Value = source.Given, l.Values[0].Value
			}
		}
		switch rng.IntN(30) {
		case 0:
			l.Role = Role(rng.IntN(8))
		case 1:
			l.At.State = source.Blank
		case 2:
			l.Values = l.Values[:rng.IntN(len(l.Values))]
		case 3:
			l.Down = source.Is(measure.Angle(90 * rng.Float64()))
		}
	}
	for range rng.IntN(3) {
		if i := rng.IntN(len(o.Lines)); rng.IntN(2) == 0 {
			o.Lines = append(o.Lines[:i:i], o.Lines[i+1:]...)
		} else {
			o.Lines = append(o.Lines, o.Lines[i]) // a line twice
		}
	}
	switch rng.IntN(8) {
	case 0:
		o.Stations[rng.IntN(len(o.Stations))].At.State = source.Blank
	case 1:
		o.Stations[0].At.Value = o.Stations[len(o.Stations)-1].At.Value
	case 2:
		o.Surface = Surface(rng.IntN(4))
	case 3:
		o.Resolution = 0
	case 4:
		o.Stations, o.Lines = nil, nil
	}
}

// spoiltMarks is widths of a few strakes, most of them sensible.
func spoiltMarks(o Offsets, rng *rand.Rand) SeamMarks {
	m := SeamMarks{Skin: Planks, Kind: MarkKind(rng.IntN(3)), Stations: o.Stations}
	for j := range rng.IntN(5) {
		s := SeamMark{Strake: fmt.Sprint(j + 1)}
		for range o.Stations {
			v := source.Is(measure.Inches(float64(j+1) * 8 * rng.Float64()))
			if rng.IntN(5) == 0 {
				v.State = source.Blank
			}
			s.Values = append(s.Values, v)
		}
		m.Seams = append(m.Seams, s)
	}
	return m
}
