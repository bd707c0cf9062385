package scarf_test

import (
	"math"
	"testing"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/scarf"
	"strakebook/calc/source"
)

// Plain geometry (run n t, angle atan 1/n, cut face t sqrt(n2+1)); 1:12 is
// 4.76364 degrees in a published roof-pitch table, 1:15 is 3.8 and 1:8 is 7.1
// in a builder's published note; a 1/4 in plank at 8:1 scarfs over 2 in
// (sawtoothboatworks).
func TestGeometry(t *testing.T) {
	test := func(thick, slope, run, angle, face float64) {
		t.Helper()
		l := measure.Inches(thick)
		if got := scarf.Run(l, slope, 0).Inches(); math.Abs(got-run) > 1e-8 {
			t.Errorf("%v at %v:1 runs %v, want %v", thick, slope, got, run)
		}
		if got := float64(scarf.Angle(slope)); math.Abs(got-angle) > 5e-5 {
			t.Errorf("%v:1 is %v degrees, want %v", slope, got, angle)
		}
		if got := scarf.Face(l, slope, 0).Inches() / thick; math.Abs(got-face) > 5e-6 {
			t.Errorf("%v:1 has a face of %v t, want %v", slope, got, face)
		}
	}
	test(0.5, 4, 2, 14.0362, 4.12311)
	test(1.25, 5, 6.25, 11.3099, 5.09902)
	test(0.75, 6, 4.5, 9.4623, 6.08276)
	test(0.25, 8, 2, 7.1250, 8.06226)
	test(0.875, 10, 8.75, 5.7106, 10.04988)
	test(1, 12, 12, 4.7636, 12.04159)
	test(1.5, 15, 22.5, 3.8141, 15.03330)
	test(2, 20, 40, 2.8624, 20.02498)
	test(0.625, 7, 4.375, 8.1301, math.Sqrt(50))

	// Plain geometry, n times t: runs at 4, 8, 10 and 12 to 1.
	for _, row := range [][5]float64{
		{0.5, 2, 4, 5, 6}, {0.625, 2.5, 5, 6.25, 7.5}, {0.75, 3, 6, 7.5, 9}, {0.875, 3.5, 7, 8.75, 10.5},
		{1, 4, 8, 10, 12}, {1.25, 5, 10, 12.5, 15}, {1.5, 6, 12, 15, 18}, {2, 8, 16, 20, 24},
	} {
		for i, slope := range []float64{4, 8, 10, 12} {
			if got := scarf.Run(measure.Inches(row[0]), slope, 0).Inches(); got != row[i+1] {
				t.Errorf("%v in at %v:1 runs %v, want %v", row[0], slope, got, row[i+1])
			}
		}
	}

	// A builder's post gives about 6 in for 9 mm at 12:1; it is 108 mm.
	if got := scarf.Run(9*measure.Millimetre, 12, 0).Millimetres(); got != 108 {
		t.Errorf("9 mm at 12:1 runs %v mm, want 108", got)
	}
}

// Plain geometry: the gap is the cut face times the tangent of the difference.
func TestGap(t *testing.T) {
	test := func(thick, slope, want float64) {
		t.Helper()
		if got := scarf.Gap(measure.Inches(thick), slope, 0, 0.1).Inches(); math.Abs(got-want) > 5e-5 {
			t.Errorf("%v at %v:1: gap %v, want %v", thick, slope, got, want)
		}
	}
	test(0.625, 7, 0.0077)
	test(1, 12, 0.0210)
}

func TestNib(t *testing.T) {
	if got := scarf.Run(measure.Inch, 8, measure.Inch/16).Inches(); got != 7 {
		t.Errorf("1 in at 8:1 with nibs of 1/16 runs %v in, want 8 x 7/8 = 7", got)
	}
	_, found := scarf.Table([]scarf.Use{{Skin: hull.Planks, Thickness: measure.Inch, Slope: 12}}, scarf.Rules{Nib: measure.Inch / 2})
	if len(found) != 1 || found[0].Kind != scarf.NibThick {
		t.Errorf("a nib of half the thickness gave %v", found)
	}
}

func TestTable(t *testing.T) {
	rows, found := scarf.Table([]scarf.Use{
		{Skin: hull.Strips, Thickness: measure.Inches(0.625), Width: measure.Inches(1.75), Slope: 7, Joints: 211},
		{Skin: hull.Planks, Thickness: measure.Inch, Width: measure.Inches(5), Slope: 3, Joints: 2},
		{Skin: hull.Strips, Thickness: measure.Inches(0.625), Width: measure.Inches(1.5), Slope: 7, Joints: 300},
	}, scarf.DefaultRules())
	if len(rows) != 2 {
		t.Fatalf("%d rows, want 2", len(rows))
	}
	if r := rows[0]; r.Joints != 511 || r.Width != measure.Inches(1.75) {
		t.Errorf("strips: %+v", r)
	}
	if want := 1.75 * 0.625 * math.Sqrt(50); math.Abs(rows[0].GlueArea-want) > 1e-6 {
		t.Errorf("glue area %v, want %v", rows[0].GlueArea, want)
	}
	if want := (300*1.5 + 211*1.75) * 0.625 * math.Sqrt(50); math.Abs(rows[0].GlueAll-want) > 1e-4 {
		t.Errorf("glue area of all joints %v, want %v", rows[0].GlueAll, want)
	}
	if len(found) != 1 || found[0].Kind != scarf.Steep {
		t.Errorf("3 to 1 planks gave %v, want one scarf-steep", found)
	}
}

func TestChecks(t *testing.T) {
	cell := func(row int) source.Cell { return source.Cell{Sheet: "Strakes", Row: row, Col: 6} }
	use := func(row int, slope float64) scarf.Use {
		return scarf.Use{Skin: hull.Planks, Thickness: measure.Inch, Width: 5 * measure.Inch, Slope: slope, Joints: 2, Cell: cell(row)}
	}
	rows, found := scarf.Table([]scarf.Use{use(2, 12), use(3, 3), use(4, 120), use(5, 3), use(6, 0), use(7, math.NaN()), use(8, -12), use(9, math.NaN())}, scarf.DefaultRules())
	want := []struct {
		kind *finding.Kind
		row  int
		also int
	}{{scarf.Steep, 3, 1}, {scarf.Flat, 4, 0}, {scarf.NoSlope, 6, 0}, {scarf.NoSlope, 7, 1}, {scarf.NoSlope, 8, 0}}
	if len(found) != len(want) {
		t.Fatalf("%d findings, want %d: %v", len(found), len(want), found)
	}
	for i, w := range want {
		if f := found[i]; f.Kind != w.kind || f.Cell.Row != w.row || len(f.Also) != w.also {
			t.Errorf("finding %d: %s at %v with %v beside it, want %s at row %d", i, f.Code, f.Cell, f.Also, w.kind.Code, w.row)
		}
	}
	for _, r := range rows {
		if r.Run < 0 || r.Face < 0 || r.Gap < 0 || (!(r.Slope > 0) && r.Run != 0) {
			t.Errorf("%g to 1: run %v, face %v, gap %v", r.Slope, r.Run, r.Face, r.Gap)
		}
	}
}

// Outside feathers that point aft lie at the after ends of pieces, so that the fore
// ends have theirs on the inside face.
func TestHands(t *testing.T) {
	if scarf.PointAft.OutsideFore() || !scarf.PointForward.OutsideFore() {
		t.Error("outside feathers that point aft lie at the after end")
	}
}

func TestSettings(t *testing.T) {
	r := scarf.DefaultRules()
	names := map[string]bool{}
	for _, s := range r.Settings() {
		if names[s.Name] || s.Name == "" || s.Meaning == "" || s.Source == "" {
			t.Errorf("setting %+v", s)
		}
		names[s.Name] = true
		if err := s.SetIn(s.Value.String(), s.Value.Unit()); err != nil {
			t.Errorf("%s does not read its own default: %v", s.Name, err)
		}
	}
	if r != scarf.DefaultRules() {
		t.Errorf("the defaults set again are %+v", r)
	}
	strip, plank := r.Slope(hull.Strips, source.Reading[float64]{}), r.Slope(hull.Planks, source.Reading[float64]{})
	if own := r.Slope(hull.Planks, source.Is(10.0)); strip != 7 || plank != 12 || own != 10 {
		t.Errorf("slopes %v, %v and its own %v; want 7, 12 and 10", strip, plank, own)
	}
}
