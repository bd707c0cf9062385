package read

import (
	"math"
	"testing"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
)

// Settings are read whichever way their names and values stand.
func TestSettingsLaidOut(t *testing.T) {
	for _, rows := range []string{
		"Setting|Value|Unit\nrip kerf|3|mm\nstation spacing|0.9|m\nplank scarf slope|10",
		"Setting|rip kerf|station spacing|plank scarf slope\nValue|3|0.9|10\nUnit|mm|m|",
		"rip kerf|station spacing|plank scarf slope\n3|0.9|10\nmm|m|",
		"rip kerf|station spacing|plank scarf slope\n3 mm|0.9 m|10",
		"rip kerf|3|mm\nstation spacing|0.9|m\nplank scarf slope|10",
		"rip kerf: 3 mm\nstation spacing = 900 mm\nplank scarf slope: 10",
	} {
		r := read(t, bookOf(sheetOf("Job", rows)), Options{})
		rules := r.job.Rules
		if rules.Stock.RipKerf != 3*measure.Millimetre || rules.Hull.StationSpacing != 900*measure.Millimetre || rules.Scarf.PlankSlope != 10 || len(r.found) > 0 {
			t.Errorf("%s\nkerf %v, spacing %v, slope %v, %v", rows, rules.Stock.RipKerf, rules.Hull.StationSpacing, rules.Scarf.PlankSlope, r.codes(finding.Note))
		}
	}
}

// A bare amount of glue is asked about as a bare length is: over a square foot it is
// ten times what it is over a square metre.
func TestBareGlueSpreadIsAskedAbout(t *testing.T) {
	for _, c := range []struct {
		row   string
		asked bool
		of    float64 // a square foot takes
	}{
		{"glue spread|250|", true, 0},
		{"bare numbers|mm|\nglue spread|250|", true, 0},
		{"bare numbers|inches|\nglue spread|0.05|", false, 0.05},
		{"glue spread|250|g/m2", false, 250 * 0.09290304}, // square metres in a square foot, exact
		{"glue spread|0.05|a square foot", false, 0.05},
		{"glue spread|0|", false, 0},
	} {
		r := read(t, bookOf(sheetOf("Job", "Setting|Value|Unit\nrip kerf|3|mm\n"+c.row)), Options{})
		if got := r.job.Rules.Stock.Spread.Over(1); math.Abs(got-c.of) > 1e-9 || (len(r.codes(finding.Error)) > 0) != c.asked {
			t.Errorf("%s: %v a square foot, %v", c.row, got, r.codes(finding.Note))
		}
	}
}
