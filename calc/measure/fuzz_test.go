package measure

import (
	"math"
	"testing"
)

// forms is a form of every notation and unit that is written.
var forms = []Form{
	{Notation: FeetInchesEighths},
	{Notation: OldPrint},
	{Unit: InInches, Notation: FeetInchesFractions},
	{Unit: InInches, Notation: InchesFractions},
	{Unit: InInches, Notation: Decimal},
	{Unit: InInches, Notation: Decimal, DecimalComma: true},
	{Unit: InFeet, Notation: Decimal},
	{Unit: InMillimetres, Notation: Decimal},
	{Unit: InMillimetres, Notation: Decimal, DecimalComma: true},
	{Unit: InCentimetres, Notation: Decimal},
	{Unit: InMetres, Notation: Decimal},
	{Unit: InMetres, Notation: Decimal, DecimalComma: true},
	{Unit: Fractions, Notation: Decimal},
}

// stepOf is the step to which Write says a form is written.
func stepOf(f Form) Length {
	switch f.Notation {
	case FeetInchesEighths:
		return Sixteenth
	case OldPrint:
		return Eighth
	case FeetInchesFractions, InchesFractions:
		return SixtyFourth
	}
	return f.Unit.step()
}

// What is written reads back the same in every form; and a text, whatever it
// holds, never makes a reader panic or give an error without its text.
func FuzzLength(f *testing.F) {
	for _, s := range []string{"3-4-6", "1-44", "1-4⁴", `3' 4 3/4"`, "40 3/4", "4¹⁄₂", "1,035 m", "(2)", "٣", "-", "1.2.3", "2006-03-04"} {
		f.Add(s, int64(1035))
	}
	f.Add("", int64(-88)) // eleven inches in old print
	f.Add("", int64(9))
	f.Fuzz(func(t *testing.T, text string, n int64) {
		if once := Fold(text); Fold(once) != once {
			t.Errorf("%q folds to %q and that to %q", text, once, Fold(once))
		}
		for u := NoUnit; u <= Fractions; u++ {
			for k := NoNotation; k <= Decimal; k++ {
				if _, err := (Form{Unit: u, Notation: k}).Length(text); err != nil && err.(*ReadError).Text != text {
					t.Errorf("%q: the error says %q", text, err.(*ReadError).Text)
				}
			}
			_, _ = ParseLength(text, u)
		}
		_, _, _ = IsDash(text), IsDitto(text), MarkedUnit(text)
		for _, form := range forms {
			l := Length(n%1_000_000) * stepOf(form)
			written := form.Write(l)
			got, err := form.Length(written)
			if doubt, ok := err.(*ReadError); ok && doubt.Fault == TwoWays {
				continue // 1.234 in a table of decimal commas is asked, not guessed
			}
			if err != nil || got != l {
				t.Errorf("%+v: wrote %d as %q, read %d, %v", form, l, written, got, err)
			}
		}
	})
}

// Every sixteenth of a long plank, and every eighth in old print, comes back.
func TestWrittenReadsBack(t *testing.T) {
	for _, form := range forms {
		for n := Length(-300); n <= 2000; n++ {
			l := n * stepOf(form)
			written := form.Write(l)
			if got, err := form.Length(written); err != nil || got != l {
				t.Fatalf("%+v: wrote %d as %q, read %d, %v", form, l, written, got, err)
			}
		}
	}
}

func TestWrite(t *testing.T) {
	test := func(form Form, l Length, want string) {
		t.Helper()
		if got := form.Write(l); got != want {
			t.Errorf("%+v writes %d as %q, want %q", form, l, got, want)
		}
	}
	eighths := Form{Notation: FeetInchesEighths}
	test(eighths, Inches(40.75), "3-4-6")
	test(eighths, Inches(40.8125), "3-4-6+")
	test(eighths, Inches(40.80), "3-4-6+")
	test(eighths, Inches(11.99), "1-0-0") // the rounding is carried
	test(eighths, -Inches(0.25), "-0-0-2")
	test(Form{Notation: OldPrint}, Inches(16.5), "1-44")
	test(Form{Notation: OldPrint}, Inches(11), "0-110")
	test(Form{Notation: OldPrint}, Inches(1.125), "0-011")
	feet := Form{Unit: InInches, Notation: FeetInchesFractions}
	test(feet, Inches(40.75), `3' 4 3/4"`)
	test(feet, Inches(40.015625), `3' 4 1/64"`)
	test(feet, Inches(40.02), `3' 4 1/32"`)
	test(feet, Inches(11.999), `1' 0"`)
	test(Form{Unit: InInches, Notation: InchesFractions}, Inches(0.625), "5/8")
	test(Form{Unit: InInches, Notation: Decimal}, Inches(40.015625), "40.015625")
	test(Form{Unit: InInches, Notation: Decimal}, Inches(40.123456), "40.1235")
	test(Form{Unit: InInches, Notation: Decimal}, 300*Inch, "300")
	test(Form{Unit: InMillimetres, Notation: Decimal, DecimalComma: true}, Inches(0.5), "12,7")
	test(Form{Unit: InMetres, Notation: Decimal}, 1035*Millimetre, "1.035")
	if got := Inches(40.75).String(); got != "40.75 in" {
		t.Errorf("in messages 40 3/4 in is %q", got)
	}
}

func FuzzAngle(f *testing.F) {
	f.Add("2°30'", 2.5)
	f.Add("(2 1/2)", -0.001)
	f.Add("2,5", 90.0)
	f.Fuzz(func(t *testing.T, text string, v float64) {
		if a, err := ParseAngle(text); err == nil && !(a >= -360 && a <= 360) {
			t.Errorf("%q was read as %v", text, a)
		}
		if v < -360 || v > 360 || v != v {
			return
		}
		a := Angle(v).Round(0.25)
		if got, err := ParseAngle(a.Write()); err != nil || math.Abs(float64(got-a)) > 1e-9 {
			t.Errorf("wrote %v as %q, read %v, %v", a, a.Write(), got, err)
		}
	})
}
