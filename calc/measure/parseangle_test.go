package measure

import (
	"math"
	"testing"
)

func TestAngles(t *testing.T) {
	test := func(text string, want Angle) {
		t.Helper()
		if got, err := ParseAngle(text); err != nil || math.Abs(float64(got-want)) > 1e-12 {
			t.Errorf("%q: %v, %v; want %v", text, got, err, want)
		}
	}
	test("2.5", 2.5)
	test("2 1/2°", 2.5)
	test("2½", 2.5)
	test("2°30'", 2.5)
	test("2º 30′", 2.5)
	test("(2)", -2)
	test("-2", -2)
	test("−2°15'", -2.25)
	test("92 1/2", 92.5)
	test("2,5", 2.5)
	test("+1/4 deg", 0.25)
	test("2:30", 2.5)
	test("2° 7,5'", 2.125)
	test("2,125", 2.125)
	test("(2 1/2°)", -2.5)
	test("(2)°", -2)
	test("(2°30')", -2.5)
	test("- 2", -2)
	test("0", 0)
	test("90", 90)
	for _, bad := range []string{"", "l.5", "2°75'", "steep", "400", "(-2)", "400°30'", "2-30", "2:75", "nan", "1,234,5"} {
		if got, err := ParseAngle(bad); err == nil {
			t.Errorf("%q was read as %v", bad, got)
		}
	}
}
