package read

import (
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
