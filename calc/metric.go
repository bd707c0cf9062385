package calc

// roundMetric is the defaults that a yard working in millimetres has in round
// figures, in the order of the settings. What matters to the work alone, as a kerf
// or an allowance, stays as its source has it.
var roundMetric = map[string]string{
	"mould thickness":      "19 mm",
	"widths within":        "6 mm",
	"seams within":         "10 mm",
	"widest topside plank": "150 mm",
	"widest bilge plank":   "200 mm",
	"widest bottom plank":  "250 mm",
	"narrowest plank":      "40 mm",
	"most a plank":         "3 mm",
	"ordinates every":      "300 mm",
	"mark step":            "300 mm",
	"plank joints apart":   "1200 mm", // 1.2 m as the old yacht rule is quoted
	"strip joints apart":   "600 mm",
	"least plank piece":    "1800 mm",
	"least strip piece":    "1200 mm",
	"joint grid":           "25 mm",
	"end trim":             "100 mm",
	"longest piece":        "4800 mm", // softwood is sold by the 300 mm
}

// RoundMetric sets the defaults in round millimetres, but for the settings that
// are given.
func (r *Rules) RoundMetric(given func(name string) bool) {
	for _, s := range r.Settings() {
		if value, ok := roundMetric[s.Name]; ok && !given(s.Name) {
			_ = s.Value.Set(value) // that it is taken is held by a test
		}
	}
	if !given("paper") {
		r.Yard.Paper = A4
	}
}
