package setting

import (
	"testing"

	"strakebook/calc/measure"
)

type rules struct {
	slope, spares float64
	between       int
	tilt          measure.Angle
	kerf          measure.Length
	sawn          bool
	edge          uint8
	job           string
}

func (r *rules) all() map[string]Setting {
	return map[string]Setting{
		"slope":   {Value: Number(&r.slope, "to 1", 1, 50)},
		"spares":  {Value: Number(&r.spares, "per cent", 0, 200)},
		"between": {Value: Count(&r.between, 0, 10)},
		"tilt":    {Value: Angle(&r.tilt, -45, 45)},
		"kerf":    {Value: Length(&r.kerf, 0, measure.Foot)},
		"sawn":    {Value: YesNo(&r.sawn)},
		"edge":    {Value: Choice(&r.edge, "not stated", "upper", "lower")},
		"job":     {Value: Text(&r.job)},
	}
}

func TestSet(t *testing.T) {
	var r rules
	test := func(name, text, unit, want string) {
		t.Helper()
		s := r.all()[name]
		if err := s.SetIn(text, unit); err != nil || s.Value.String() != want {
			t.Errorf("%s: %q in %q: %s, %v; want %s", name, text, unit, s.Value.String(), err, want)
		}
	}
	for _, text := range []string{"12", "12:1", "12 to 1", "1 in 12", "1:12", "1/12", "12,0"} {
		test("slope", text, "", "12")
	}
	test("slope", "7.5", "to 1", "7.5")
	test("slope", "7,5", ":1", "7.5")
	test("spares", "10 %", "", "10")
	test("spares", "12½ per cent", "", "12.5")
	test("spares", "15", "%", "15")
	test("between", "3", "", "3")
	test("between", "3.0", "", "3")
	test("tilt", "2°30'", "", "2.5")
	test("tilt", "-2 1/2", "deg.", "-2.5")
	test("kerf", "3/32", "", "0.09375")
	test("kerf", "3/32", "inches", "0.09375")
	test("kerf", "2.54", "mm", "0.1")
	test("kerf", "0,254", "cm", "0.1")
	test("kerf", "2.54 mm", "", "0.1")
	test("kerf", "2.54 mm", "in", "0.1") // the mark holds over the column
	test("kerf", "1/2", "ft", "6")
	test("sawn", "Yes", "", "yes")
	test("sawn", "off", "", "no")
	test("edge", "UPPER", "", "upper")
	test("job", "  Hull 14 ", "", "Hull 14")
}

func TestRefused(t *testing.T) {
	r := rules{slope: 8, between: 2, kerf: measure.Inch, edge: 1}
	before := r
	for _, c := range []struct{ name, text, unit string }{
		{"slope", "0.5", ""}, {"slope", "60", ""}, {"slope", "nan", ""}, {"slope", "1e1", ""}, {"slope", "0x8", ""},
		{"slope", "", ""}, {"slope", "12:2", ""}, {"slope", "8", "mm"}, {"slope", "8 mm", ""},
		{"spares", "10 in", ""}, {"spares", "10", "in"},
		{"between", "2.5", ""}, {"between", "11", ""}, {"between", "-1", ""}, {"between", "2", "in"},
		{"tilt", "46", ""}, {"tilt", "steep", ""}, {"tilt", "5", "in"},
		{"kerf", "13", ""}, {"kerf", "-1/8", ""}, {"kerf", "1,234", ""}, {"kerf", "1/8", "mm"}, {"kerf", "1", "degrees"}, {"kerf", "thin", ""},
		{"sawn", "maybe", ""}, {"edge", "middle", ""},
	} {
		if err := r.all()[c.name].SetIn(c.text, c.unit); err == nil || r != before {
			t.Errorf("%s: %q in %q was taken: %+v", c.name, c.text, c.unit, r)
			r = before
		}
	}
}

// What a setting writes it reads back the same, be it set in millimetres.
func TestWrittenReadsBack(t *testing.T) {
	r := rules{slope: 7.3, spares: 12.5, between: 3, tilt: 0.1, kerf: 3 * measure.Millimetre, sawn: true, edge: 2, job: "Hull 14"}
	var again rules
	for name, s := range r.all() {
		if err := again.all()[name].SetIn(s.Value.String(), s.Value.Unit()); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
	if again != r {
		t.Errorf("wrote %+v, read %+v", r, again)
	}
}

// A length is told in the figures that a rule has, in the unit asked for.
func TestTold(t *testing.T) {
	var r rules
	for _, c := range []struct {
		kerf   measure.Length
		metric bool
		want   string
	}{
		{100 * measure.Millimetre, false, "3.937 in"}, {100 * measure.Millimetre, true, "100 mm"},
		{measure.Eighth, false, "0.125 in"}, {measure.Eighth, true, "3.175 mm"}, {measure.Inches(4.5599999), false, "4.56 in"},
	} {
		r.kerf = c.kerf
		if got := r.all()["kerf"].Told(c.metric); got != c.want {
			t.Errorf("%v told %q, want %q", c.kerf, got, c.want)
		}
	}
	if got := r.all()["slope"].Told(true); got != "0 to 1" {
		t.Errorf("a slope is told %q", got)
	}
}

func TestWords(t *testing.T) {
	var r rules
	for name, want := range map[string]int{"edge": 3, "sawn": 2, "kerf": 0, "job": 0} {
		if got := r.all()[name].Words(); len(got) != want {
			t.Errorf("%s may be %v, want %d words", name, got, want)
		}
	}
}
