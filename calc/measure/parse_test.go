package measure

import (
	"errors"
	"math"
	"slices"
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
		if err != nil || got != Inches(inches) || got != millimetres(mm) {
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
	test("3 - 4 - 6", 40.75, 1035.05)
	test("-3-4-6", -40.75, -1035.05)
	test("-4-6", 4.75, 120.65) // feet left blank
	test("3-4-6½", 40.8125, 1036.6375)
	test("3.4.6", 40.75, 1035.05) // set apart so that no spreadsheet makes a date of it
	test("3/4/6", 40.75, 1035.05)
	test("3:4:6+", 40.8125, 1036.6375)
	test("3 4 6", 40.75, 1035.05)
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
	test(`-3' 4"`, feet, -40)
	test(`3' 4¹⁄₂"`, feet, 40.5)
	test(`3’ 4¾’’`, feet, 40.75)
	test(`3'4''`, feet, 40)
	test(`3 ft. 4 3/4 ins.`, feet, 40.75)
	test(`3' 4 - 3/4"`, feet, 40.75)
	test("3,5 ft", feet, 42)
	test("3-4-3/4", feet, 40.75)
	test("40.75", feet, 40.75)
	inch := Form{Unit: InInches, Notation: InchesFractions}
	test("40 3/4", inch, 40.75)
	test("40\u00a03⁄4", inch, 40.75)
	test("4½", inch, 4.5)
	test("5/8", inch, 0.625)
	test("9/32", inch, 0.28125)
	test("4-3/4", inch, 4.75)
	test("4/4", inch, 1) // boards sold by quarters
	test("5/4", inch, 1.25)
	test("4 - ½", inch, 4.5)
	test("2 1/3", inch, 7.0/3)
	test("40.75", inch, 40.75)
	test("40 3/4", Form{Unit: InInches, Notation: Decimal}, 40.75)
	test("- 4.5", inch, -4.5)
	test("(4.5)", inch, -4.5)
	test("３.５", inch, 3.5)
	test("12.437500000000002", inch, 12.4375) // float noise
	mm := Form{Unit: InMillimetres, Notation: Decimal}
	test("254", mm, 10)
	test("1,270", mm, 50)
	test("25.4 cm", mm, 10)
	test("0,254 m", mm, 10)
	test("1,270 m", mm, 50)  // no hull has a thousand metres
	test("1,270 mm", mm, 50) // nobody writes thousandths of a millimetre
	test("102,5 mm", mm, 102.5/25.4)
	test("254 millimetres", mm, 10)
	test("12,345.5", mm, 12345.5/25.4)
	test(`10"`, mm, 10)
	comma := Form{Unit: InCentimetres, Notation: Decimal, DecimalComma: true}
	test("25,4", comma, 10)
	test("1.270,0", Form{Unit: InMillimetres, Notation: Decimal, DecimalComma: true}, 50)
	test("1 270,0", Form{Unit: InMillimetres, Notation: Decimal, DecimalComma: true}, 50)
	test("1.270", Form{Unit: InMillimetres, Notation: Decimal, DecimalComma: true}, 50)
	test("1,27", Form{Unit: InMetres, Notation: Decimal, DecimalComma: true}, 50)
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
	test("1-4⁴", 16.5) // the figure still raised
	test("0-1¹", 1.125)
	test("0-10", 10)
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
	test("", Form{Unit: InInches, Notation: Decimal}, NotRead)
	test("?", Form{Unit: InInches, Notation: Decimal}, NotRead)
	test("2006-03-04", eighths, DateSeen)
	test("3/4/2006", eighths, DateSeen)
	test("2006-03-04 00:00:00", eighths, DateSeen)
	test(`1' 41"`, feet, InchesOver) // a fraction that lost its bar
	test(`0' 101"`, feet, InchesOver)
	test(`2' 4|"`, feet, NotRead)
	test(`"`, feet, NotRead)
	test(`3.5' 4"`, feet, NotRead)
	test(`3' -4 1/2" x`, feet, NotRead)
	inches := Form{Unit: InInches, Notation: InchesFractions}
	test("4 9/8", inches, NotRead)
	test("10/6", inches, NotRead) // ten feet six, or one and two thirds
	test("4²", inches, NotRead)
	test("1,234", inches, TwoWays)
	test("5-1/2", Form{Unit: InFeet, Notation: InchesFractions}, TwoWays) // 5 1/2 ft, or 5 ft 0 1/2 in
	test("16-3/4", Form{Unit: InFeet, Notation: FeetInchesFractions}, TwoWays)
	test("1,234 cm", inches, TwoWays)
	test(`1,234"`, inches, TwoWays)
	test("1.234", Form{Unit: InInches, Notation: Decimal, DecimalComma: true}, TwoWays)
	test("5/8", Form{Unit: InMillimetres, Notation: Decimal}, NotRead)
	test("(-4)", inches, NotRead)
	test("inf", inches, NotRead)
	test("1e3", inches, NotRead)
	test("0x10", inches, NotRead)
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
	test(1035.1234, InMillimetres, millimetres(1035.1234), false)
	if _, _, err := (Form{}).Number(math.NaN()); err == nil {
		t.Error("a number with no unit was read")
	}
}

// A lone value is known by its own marks; the unit is only of a bare number.
func TestParseLength(t *testing.T) {
	test := func(text string, unit Unit, want Length) {
		t.Helper()
		if got, err := ParseLength(text, unit); err != nil || got != want {
			t.Errorf("%q: %v, %v; want %v", text, got, err, want)
		}
	}
	test("5/8", InInches, Inches(0.625))
	test("4.375", InInches, Inches(4.375))
	test("3-4-6", InMillimetres, Inches(40.75))
	test("3-4-6+", NoUnit, Inches(40.8125))
	test(`3' 4 3/4"`, NoUnit, Inches(40.75))
	test("3-4", InInches, 40*Inch)
	test("35 mm", InInches, 35*Millimetre)
	test("35", InMillimetres, 35*Millimetre)
	test("102,5", InMillimetres, millimetres(102.5))
	test("102,5 cm", InInches, millimetres(1025))
	test("1,035 m", InInches, millimetres(1035))
	test("1035 mm", InInches, millimetres(1035))
	test("103.5 cm", InInches, millimetres(1035))
	test("12,500", InMillimetres, 12500*Millimetre)
	test("1,5", InInches, Inches(1.5))
	test("4 ft", InMillimetres, 4*Foot)
	test("-1/16", InInches, -Sixteenth)

	refused := func(text string, unit Unit, want Fault) {
		t.Helper()
		got, err := ParseLength(text, unit)
		var fault *ReadError
		if !errors.As(err, &fault) || fault.Fault != want || fault.Text != text {
			t.Errorf("%q: %v, error %v; want fault %d", text, got, err, want)
		}
	}
	refused("", InInches, NotRead)
	refused("Stem", InInches, NotRead)
	refused("l'-l0 1/2 \"", InInches, NotRead)
	refused("12 by 4 mm", InInches, NotRead)
	refused("5/8", InMillimetres, NotRead)
	refused("1,234", InInches, TwoWays)
	refused("3' 12\"", InInches, InchesOver)
	refused("3-4-9", InInches, EighthsOver)
	refused("12", NoUnit, UnitOpen)
}

func TestMarkedUnit(t *testing.T) {
	test := func(text string, want Unit) {
		t.Helper()
		if got := MarkedUnit(text); got != want {
			t.Errorf("%q shows %v, want %v", text, got, want)
		}
	}
	test("35 mm", InMillimetres)
	test("3,5cm", InCentimetres)
	test("1,035 m", InMetres)
	test("2 metres", InMetres)
	test(`3' 4"`, InFeet)
	test("3 ft", InFeet)
	test(`4 3/4"`, InInches)
	test(`4,5"`, InInches)
	test("4 in.", InInches)
	test("40.75", NoUnit)
	test("3-4-6", NoUnit)
	test("Stem", NoUnit)
	test("main", NoUnit)
	test(`"`, NoUnit)
}

func TestNotations(t *testing.T) {
	test := func(text string, want ...Notation) {
		t.Helper()
		if got := Notations(text); !slices.Equal(got, want) {
			t.Errorf("%q could be %v, want %v", text, got, want)
		}
	}
	test("3-4-6", FeetInchesEighths)
	test("3-4-9", FeetInchesEighths) // in the notation, though the figures cannot be
	test("2006-03-04", FeetInchesEighths)
	test("1-44", OldPrint)
	test("1-4", FeetInchesFractions, OldPrint)
	test("40.75", Decimal)
	test("40", Decimal, InchesFractions, OldPrint)
	test("40 3/4", InchesFractions)
	test(`3' 4"`, FeetInchesFractions, InchesFractions)
	test("35 mm", Decimal)
	test("0", Decimal, InchesFractions, OldPrint)
	test("")
	test("-")
	test("Stem")
	test(`2' 4|"`)
}

func TestAbsent(t *testing.T) {
	for _, text := range []string{"-", "–", "—", "--", "...", "....", "…", ". . .", "n/a", "N/A", "#N/A", "nil", "None", " - "} {
		if !IsDash(text) {
			t.Errorf("%q is a dash", text)
		}
	}
	for _, text := range []string{"", " ", "0", "?", "-2", `"`, "x", ".", "do", "0-0-0"} {
		if IsDash(text) {
			t.Errorf("%q is no dash", text)
		}
	}
	for _, text := range []string{`"`, "”", "″", "〃", "''", `" "`, "do.", "Ditto", "-do-", ",,"} {
		if !IsDitto(text) {
			t.Errorf("%q is a ditto mark", text)
		}
	}
	for _, text := range []string{"", "-", `4"`, "'", "dot"} {
		if IsDitto(text) {
			t.Errorf("%q is no ditto mark", text)
		}
	}
}

func TestParseNumber(t *testing.T) {
	for text, want := range map[string]float64{
		"12.5": 12.5, "12,5": 12.5, "12 1/2": 12.5, "12½": 12.5, "1,234.5": 1234.5, "1.234,5": 1234.5,
		"-3": -3, "(3)": -3, "0": 0, " 7 ": 7, "1,234,567": 1234567,
	} {
		if got, err := ParseNumber(text); err != nil || got != want {
			t.Errorf("%q: %v, %v; want %v", text, got, err, want)
		}
	}
	for _, text := range []string{"", "-", "1,234", "inf", "NaN", "1e3", "0x1p4", "1_000", "3-4", "twelve"} {
		if got, err := ParseNumber(text); err == nil {
			t.Errorf("%q was read as %v", text, got)
		}
	}
}

func TestUnitNamed(t *testing.T) {
	for word, want := range map[string]Unit{"in": InInches, "(Ins.)": InInches, `″`: InInches, "ft.": InFeet, "’": InFeet, "MM": InMillimetres, "[cm]": InCentimetres, "m": InMetres, "": NoUnit, "degrees": NoUnit, "to 1": NoUnit} {
		if got := UnitNamed(word); got != want {
			t.Errorf("%q names %v, want %v", word, got, want)
		}
	}
}

func millimetres(n float64) Length { return times(n, Millimetre) }
