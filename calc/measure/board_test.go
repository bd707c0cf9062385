package measure

import (
	"math"
	"testing"
)

// Sources: Danforth, Mechanical Processes ("Lumber Measurement"); Navy
// Engineering Aid Basic; King, Elements of Woodwork; AHEC "Measurement"; NHLA
// rule summary (gophuongdong.com); and dealers' published examples.
func TestBoardFeet(t *testing.T) {
	test := func(source string, n int, thick, wide, feet, want, within float64) {
		t.Helper()
		got := float64(n) * float64(Board(Inches(thick), Inches(wide), Feet(feet)))
		if math.Abs(got-want) > within {
			t.Errorf("%s: %d of %v x %v x %v ft: %v bf, want %v", source, n, thick, wide, feet, got, want)
		}
	}
	test("Danforth, under an inch counts as one", 12, 0.5, 8, 12, 96, 0)
	test("Danforth", 80, 1.5, 6, 16, 960, 0)
	test("Navy EA Basic asks, worked here", 1, 2, 4, 14, 28.0/3, 1e-9)
	test("westcoastlands", 1, 3, 8, 10, 20, 0)
	test("atxholiday", 1, 2, 6, 8, 8, 0)
	test("inman.com, printed to hundredths", 1, 2, 10, 14, 23.33, 0.005)
	test("veryfocus, printed 32.88 (cut, not rounded)", 1, 4, 8, 148.0/12, 32.88, 0.01)
	test("furnituremaking.us", 1, 1, 3, 8, 2, 0)
	test("Danforth's bill, answer worked here", 40, 2, 6, 16, 640, 0)
	test("Danforth's bill, answer worked here", 30, 1, 12, 14, 420, 0)
	test("woodworkings.ca", 1, 1, 6, 12, 6, 0)
	test("King, a foot of 2 x 4", 1, 2, 4, 1, 2.0/3, 1e-9)
	test("King, a foot of 2 x 6", 1, 2, 6, 1, 1, 1e-9)
	test("King, a foot of 2 x 12", 1, 2, 12, 1, 2, 1e-9)
	test("AHEC, unrounded", 1, 2, 6.25, 8, 8.33, 0.005)
	test("King, a foot of 2 x 8", 1, 2, 8, 1, 4.0/3, 1e-9)

	hard := func(source string, thick, wide, feet float64, down bool, want float64) {
		t.Helper()
		if got := float64(HardwoodBoard(Inches(thick), Inches(wide), Feet(feet), down)); got != want {
			t.Errorf("%s: %v bf, want %v", source, got, want)
		}
	}
	hard("AHEC: surface measure 4 1/6 is 4", 2, 6.25, 8, true, 8)
	hard("NHLA: 4 1/3 is 4", 1, 6.5, 8, true, 4)
	hard("NHLA: 8 x 12 is 8", 1, 8, 12, true, 8)
	hard("NHLA: 10 10/12 is 11", 1, 10, 13, true, 11)
	hard("King: 8 3/4 in by 12 ft", 1, 8.75, 12, true, 9)
	hard("King: 9 1/4 in by 12 ft", 1, 9.25, 12, true, 9)
	hard("King: of two boards on the half, one down", 1, 8.5, 12, true, 8)
	hard("King: and one up", 1, 8.5, 12, false, 9)
}
