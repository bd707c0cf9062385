package measure

import (
	"errors"
	"math"
	"testing"
)

// Check values worked from the definition of the notation: feet, inches,
// eighths (amateurboatbuilding.com, a designer's note: 2-3-4 is 27 1/2 in);
// + is a sixteenth more (diy-wood-boat.com: 0-6-2+ is 6 5/16 in); 1-07-4+ is
// 19 9/16 in, which one printed source gives wrongly as 19 7/16.
func TestFeetInchesEighths(t *testing.T) {
	form := Form{Notation: FeetInchesEighths}
	test := func(text string, inches, mm float64) {
		t.Helper()
		got, err := form.Length(text)
		if err != nil || got != Inches(inches) || got != Millimetres(mm) {
			t.Errorf("%s: %v in, %v; want %v in, %v mm", text, got.Inches(), err, inches, mm)
		}
	}
	test("0-6-2", 6.25, 158.75)
	test("0-6-2+", 6.3125, 160.3375)
	test("0-6-2-", 6.1875, 157.1625)
	test("2-3-4", 27.5, 698.5)
	test("10-2-2", 122.25, 3105.15)
	test("10-1-6", 121.75, 3092.45)
	test("13-0-2", 156.25, 3968.75)
	test("1-7-3+", 19.4375, 493.7125)
	test("1-07-4+", 19.5625, 496.8875)
	test("4-6-3+", 54.4375, 1382.7125)
	test("3-11-7+", 47.9375, 1217.6125)
	test("1-0-0-", 11.9375, 303.2125)
	test("0-15-3", 15.375, 390.525)
	test("3–4–6", 40.75, 1035.05)
	test("0", 0, 0)
}

func TestLengthTexts(t *testing.T) {
	test := func(text string, form Form, inches float64) {
		t.Helper()
		got, err := form.Length(text)
		if err != nil || got != Inches(inches) {
			t.Errorf("%q: %v in, %v; want %v in", text, got.Inches(), err, inches)
		}
	}
	feet := Form{Unit: InInches, Notation: FeetInchesFractions}
	test(`3' 4 3/4"`, feet, 40.75)
	test(`3’ 4¾”`, feet, 40.75)
	test(`3′ 4¾″`, feet, 40.75)
	test(`1'-10 1/2"`, feet, 22.5)
	test(`2'- 0 "`, feet, 24)
	test(`4'`, feet, 48)
	test(`3-4 3/4`, feet, 40.75)
	test(`4 3/4"`, feet, 4.75)
	test(`-0 5/8"`, feet, -0.625)
	inch := Form{Unit: InInches, Notation: InchesFractions}
	test("40 3/4", inch, 40.75)
	test("40\u00a03⁄4", inch, 40.75)
	test("4½", inch, 4.5)
	test("5/8", inch, 0.625)
	test("9/32", inch, 0.28125)
	mm := Form{Unit: InMillimetres, Notation: Decimal}
	test("254", mm, 10)
	test("1,270", mm, 50)
	test("25.4 cm", mm, 10)
	test("0,254 m", mm, 10)
	test(`10"`, mm, 10)
	comma := Form{Unit: InCentimetres, Notation: Decimal, DecimalComma: true}
	test("25,4", comma, 10)
	test("1.270,0", Form{Unit: InMillimetres, Notation: Decimal, DecimalComma: true}, 50)
}

// W. P. Stephens, Canoe and Boat Building (1889), plate XI: the last figure of
// the inches is eighths, so 1-44 is 1 ft 4 4/8 in and 0-115 is 11 5/8 in.
func TestOldPrint(t *testing.T) {
	form := Form{Notation: OldPrint}
	test := func(text string, inches float64) {
		t.Helper()
		if got, err := form.Length(text); err != nil || got != Inches(inches) {
			t.Errorf("%q: %v in, %v; want %v", text, got.Inches(), err, inches)
		}
	}
	test("1-44", 16.5)
	test("0-115", 11.625)
	test("0-4", 4)
	test("0-04", 0.5)
	test("103", 10.375)
	test("5", 5)
	test("1  34", 15.5)
	var fault *ReadError
	if _, err := form.Length("0-11"); !errors.As(err, &fault) || fault.Fault != TwoWays || len(fault.Ways) != 2 {
		t.Errorf("0-11 is 11 in or 1 1/8 in, got %v", err)
	}
}

func TestRefused(t *testing.T) {
	test := func(text string, form Form, want Fault) {
		t.Helper()
		got, err := form.Length(text)
		var fault *ReadError
		if !errors.As(err, &fault) || fault.Fault != want || fault.Text != text {
			t.Errorf("%q: %v in, error %v; want fault %d", text, got.Inches(), err, want)
		}
	}
	eighths := Form{Notation: FeetInchesEighths}
	test("3-4-8", eighths, EighthsOver)
	test("3-14-2", eighths, InchesOver)
	test("3-4", eighths, NotRead)
	test("12", eighths, NotRead)
	feet := Form{Notation: FeetInchesFractions}
	test(`l'-l0 1/2 "`, feet, NotRead)
	test(`4' Of"`, feet, NotRead)
	test(`V 41"`, feet, NotRead)
	test(`3' 12"`, feet, InchesOver)
	test("40.75", Form{Notation: Decimal}, UnitOpen)
	test("102,5", Form{Unit: InMillimetres, Notation: Decimal}, NotRead)
	test("4 3/0", Form{Unit: InInches, Notation: InchesFractions}, NotRead)
	test("99999999999", Form{Unit: InMetres, Notation: Decimal}, TooFar)
}

func TestNumber(t *testing.T) {
	test := func(v float64, unit Unit, want Length, snapped bool) {
		t.Helper()
		got, s, err := Form{Unit: unit, Notation: Decimal}.Number(v)
		if err != nil || got != want || s != snapped {
			t.Errorf("%v: %d snapped %v, %v; want %d snapped %v", v, got, s, err, want, snapped)
		}
	}
	test(12.4375, InInches, 12*Inch+7*Sixteenth, true)
	test(12.437500000000002, InInches, 12*Inch+7*Sixteenth, true)
	test(12.4376, InInches, Inches(12.4376), false)
	test(3.0625, InFeet, 3*Foot+3*Inch/4, true)
	test(1035.12, InMillimetres, 103512*Millimetre/100, true)
	test(1035.1234, InMillimetres, Millimetres(1035.1234), false)
	if _, _, err := (Form{}).Number(math.NaN()); err == nil {
		t.Error("a number with no unit was read")
	}
}

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
	for _, bad := range []string{"", "l.5", "2°75'", "steep", "400"} {
		if got, err := ParseAngle(bad); err == nil {
			t.Errorf("%q was read as %v", bad, got)
		}
	}
}

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
	test("woodworkings.ca", 1, 1, 6, 12, 6, 0)
	test("King, a foot of 2 x 8", 1, 2, 8, 1, 4.0/3, 1e-9)

	hard := func(source string, thick, wide, feet float64, down bool, want float64) {
		t.Helper()
		if got := float64(HardwoodBoard(Inches(thick), Inches(wide), Feet(feet), down)); got != want {
			t.Errorf("%s: %v bf, want %v", source, got, want)
		}
	}
	hard("AHEC: surface measure 4 1/6 is 4", 2, 6.25, 8, true, 8)
	hard("NHLA: 4 1/3 is 4", 1, 6.5, 8, true, 4)
	hard("NHLA: 10 10/12 is 11", 1, 10, 13, true, 11)
	hard("King: 8 3/4 in by 12 ft", 1, 8.75, 12, true, 9)
	hard("King: 9 1/4 in by 12 ft", 1, 9.25, 12, true, 9)
	hard("King: of two boards on the half, one down", 1, 8.5, 12, true, 8)
	hard("King: and one up", 1, 8.5, 12, false, 9)
}

func FuzzLength(f *testing.F) {
	for _, s := range []string{"3-4-6", "1-44", `3' 4 3/4"`, "40 3/4", "1,035 m", "(2)", "٣", "-"} {
		f.Add(s, int64(1035))
	}
	f.Fuzz(func(t *testing.T, text string, n int64) {
		for u := NoUnit; u <= Fractions; u++ {
			for k := NoNotation; k <= Decimal; k++ {
				_, _ = Form{Unit: u, Notation: k}.Length(text)
			}
		}
		l := Length(n%1_000_000) * Sixteenth
		for _, form := range []Form{
			{Notation: FeetInchesEighths}, {Unit: InInches, Notation: FeetInchesFractions},
			{Unit: InInches, Notation: InchesFractions}, {Unit: InInches, Notation: Decimal},
			{Unit: InInches, Notation: Decimal, DecimalComma: true},
		} {
			written := form.Write(l)
			if got, err := form.Length(written); err != nil || got != l {
				t.Errorf("%+v: wrote %d as %q, read %d, %v", form, l, written, got, err)
			}
		}
	})
}

func FuzzAngle(f *testing.F) {
	f.Add("2°30'", 2.5)
	f.Fuzz(func(t *testing.T, text string, v float64) {
		_, _ = ParseAngle(text)
		if v < -360 || v > 360 || v != v {
			return
		}
		a := Angle(v).Round(0.25)
		if got, err := ParseAngle(a.Write()); err != nil || math.Abs(float64(got-a)) > 1e-9 {
			t.Errorf("wrote %v as %q, read %v, %v", a, a.Write(), got, err)
		}
	})
}
