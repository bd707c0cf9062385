package stock

import (
	"math"
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
	"strakebook/calc/scarf"
)

// Pounds a cubic foot at 12 per cent, worked from the Wood Handbook's specific
// gravities; 34 for air-dry Douglas fir in an Oregon State University table and
// 42 for sapele as published agree to their last figure.
func TestDensity(t *testing.T) {
	for name, want := range map[string]float64{"Douglas fir": 33.6, "white oak": 47.5, "longleaf pine": 41.3, "Western Red Cedar": 22.4, "Western larch": 36.4, "teak": 40.1, "sapele": 42.0, "black locust": 48.2, "elm": 0} {
		if got := density(name); math.Abs(got-want) > 0.06 {
			t.Errorf("%s: %.2f lb a cubic foot, want %v", name, got, want)
		}
	}
}

// Two planks of 20 ft, 6 in by 1 in: 20 board feet, 20/12 of a cubic foot; 20 sq ft
// of inside face, 1 2/3 sq ft of the one seam between them. Of two boards of 1 1/4 x 8
// in x 22 ft, 18 1/3 board feet each, they leave 16 2/3: 5/11 of what is bought, 5/6 of
// what is in them. By hand.
func TestSkins(t *testing.T) {
	r := DefaultRules()
	r.Spread = Spread{Amount: 2}
	one := hull.Strake{Name: "1", Skin: hull.Planks, Side: hull.Port, Thickness: in(1), Width: in(6), Length: in(240), Species: "Douglas fir"}
	strakes := []hull.Strake{one, one}
	strakes[1].Name = "2"
	_, p, _ := Work(lay.Runs(strakes, scarf.DefaultRules()), []Board{board("a", "Douglas fir", 1.25, 8, 22, 0), board("b", "Douglas fir", 1.25, 8, 12, 2)}, nil, lay.DefaultRules(), r)
	s := p.Skins[0]
	for _, c := range []struct{ got, want float64 }{{float64(s.Feet), 20}, {s.Weight, 33.56 * 20 / 12}, {s.Faying, 20}, {s.Seams, 20. / 12}, {s.Glue, 2 * (20 + 20./12)},
		{float64(p.Summary.NetFeet), 20}, {float64(p.Summary.BoardFeet), 36 + 2./3}, {p.Summary.WasteOfBought, 500. / 11}, {p.Summary.WasteOnNet, 500. / 6}} {
		if math.Abs(c.got-c.want) > 0.01 {
			t.Errorf("%v, want %v", c.got, c.want)
		}
	}
	// The thinner of the two has the face they share.
	strakes[0].Thickness = in(0.75)
	thin, _, _ := Work(lay.Runs(strakes, scarf.DefaultRules()), nil, nil, lay.DefaultRules(), r)
	if a := (answer{runs: thin}); math.Abs(a.edge(1)-20*0.75/12) > 0.001 {
		t.Errorf("%v sq ft of a seam of 3/4 and 1 in, want 1.25", a.edge(1))
	}
	if len(p.Stay) != 1 || p.Stay[0].Count != 2 {
		t.Errorf("%+v stay, want both of b", p.Stay)
	}
}

// A plank of 20 ft by 1 in that tapers evenly from 6 in to 3 in by the hull: 7.5 sq
// ft of face, 7.5/12 of a cubic foot, its scarf 5.25 in wide at 5 ft and 3/4 in through
// between nibs of an eighth; its pieces on the whole 5.625 and 4.125 in. By hand.
func TestSkinsOfTaperingPlanks(t *testing.T) {
	nibs := scarf.DefaultRules()
	nibs.Nib = measure.Inch / 8
	run := lay.Runs([]hull.Strake{{Name: "1", Skin: hull.Planks, Side: hull.Port, Thickness: in(1), Width: in(6), Length: in(240), Species: "Douglas fir"}}, nibs)[0]
	a := answer{runs: []lay.Run{run, run}}
	for i := range a.runs {
		a.runs[i].Joints = []measure.Length{60 * measure.Inch}
		a.runs[i].Cut()
	}
	a.runs[0].Breadth = []hull.Breadth{{At: 0, Wide: 6 * measure.Inch}, {At: 20 * measure.Foot, Wide: 3 * measure.Inch}}
	a.skins(DefaultRules())
	slant := 0.75 * math.Sqrt(run.Slope*run.Slope+1) / 12
	s := a.plan.Skins[0]
	for _, c := range []struct{ got, want float64 }{{s.Weight, 33.56 * (7.5 + 10) / 12}, {s.Faying, 7.5 + 10}, {s.Scarfs, slant * (5.25 + 6) / 12}, {float64(s.Strakes), 2}, {float64(s.ByMost), 1}} {
		if math.Abs(c.got-c.want) > 0.01 {
			t.Errorf("%v, want %v", c.got, c.want)
		}
	}
	a.runs[0].Scarf = 0
	all := pieces(&a.runs[0])
	if all[0].Mean.Inches() != 5.625 || all[1].Mean.Inches() != 4.125 {
		t.Errorf("pieces of %v and %v on the whole", all[0].Mean, all[1].Mean)
	}
}

// A spread is read as glue makers and yards write it, and what is written is read
// back the same. 250 g/m2 over 100 sq ft: 250 x 9.290304 = 2322.576 g.
func TestSpread(t *testing.T) {
	for text, want := range map[string]Spread{
		"0.05":                    {Amount: 0.05},
		"0.05 a square foot":      {Amount: 0.05},
		"1/16 lb a square foot":   {0.0625, "lb", false},
		"0,05 lbs per sq. ft.":    {0.05, "lb", false},
		"0.05 lb/sq ft":           {0.05, "lb", false},
		"0.05 lb/ft2":             {0.05, "lb", false},
		"50 lb/1000 sq ft":        {0.05, "lb", false},
		"50 lb per 1,000 sq ft":   {0.05, "lb", false},
		"50 lb/msgl":              {0.05, "lb", false},
		"2 fl oz a square foot":   {2, "fl oz", false},
		"250 g/m2":                {250, "g", true},
		"250 g/m²":                {250, "g", true},
		"250 grams a sq. metre":   {250, "g", true},
		"0.25 kg/m2":              {0.25, "kg", true},
		"0.25kg per square meter": {0.25, "kg", true},
	} {
		var s, again Spread
		if err := (spread{&s}).Set(text); err != nil || math.Abs(s.Amount-want.Amount) > 1e-12 || s.Of != want.Of || s.Metre != want.Metre {
			t.Errorf("%q: %+v, %v", text, s, err)
		}
		if err := (spread{&again}).SetUnit(spread{&s}.String(), spread{&s}.Unit()); err != nil || again != s {
			t.Errorf("%q is written %s %s and read back %+v, %v", text, spread{&s}, spread{&s}.Unit(), again, err)
		}
	}
	for _, text := range []string{"", "lb", "-1", "0.05 lb", "0.05 lb/m3", "0.05 lb a foot", "nan", "5 mm"} {
		if s := (Spread{Amount: 7}); (spread{&s}).Set(text) == nil || s.Amount != 7 {
			t.Errorf("%q was taken: %+v", text, s)
		}
	}
	if got := (Spread{250, "g", true}).Over(100); math.Abs(got-2322.576) > 1e-9 {
		t.Errorf("250 g/m2 over 100 sq ft is %v g", got)
	}
}
