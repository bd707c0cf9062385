package scarf_test

import (
	"math"
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/scarf"
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
		{Skin: hull.Strips, Thickness: measure.Inches(0.625), Width: measure.Inches(1.5), Slope: 7, Joints: 300},
		{Skin: hull.Planks, Thickness: measure.Inch, Width: measure.Inches(5), Slope: 3, Joints: 2},
		{Skin: hull.Strips, Thickness: measure.Inches(0.625), Width: measure.Inches(1.75), Slope: 7, Joints: 211},
	}, scarf.DefaultRules())
	if len(rows) != 2 {
		t.Fatalf("%d rows, want 2", len(rows))
	}
	if r := rows[0]; r.Joints != 511 || r.ForeCuts != 511 || r.AfterCuts != 511 || r.Width != measure.Inches(1.75) {
		t.Errorf("strips: %+v", r)
	}
	if want := 1.75 * 0.625 * math.Sqrt(50); math.Abs(rows[0].GlueArea-want) > 1e-6 {
		t.Errorf("glue area %v, want %v", rows[0].GlueArea, want)
	}
	if len(found) != 1 || found[0].Kind != scarf.Steep {
		t.Errorf("3 to 1 planks gave %v, want one scarf-steep", found)
	}
}
