package read

import (
	"slices"
	"testing"

	"strakebook/calc/finding"
	"strakebook/convert/sheet"
)

// A number whose format shows another is told of, and what is meant is suggested: the
// number stored or, where the format names a unit that is not the column's, what it
// shows.
func TestNumbersShownOtherwise(t *testing.T) {
	for _, c := range []struct {
		number       float64
		shown        string
		format, says string // "" where nothing is to be said
	}{
		{0.875, "0 7/8", "# ?/8", ""},
		{0.875, "0 4/4", "# ?/4", "0.875"},
		{0.875, "0  7/8 ", "# ??/??", ""},
		{0.875, "88%", "0%", "0.875"},
		{0.8125, "0.8", "0.0", ""}, // an eightieth of an inch off
		{0.75, "0.75 in", `0.00" in"`, ""},
		{19, "19 mm", `0" mm"`, "19 mm, as shown"},
		{1, "1 1/2", `0 "1/2"`, "1"},
	} {
		s := sheetOf("P", "Strake|Thickness (in)|Width (in)|Length (ft)\n1|1|5|20")
		s.Set(2, 2, sheet.Cell{Kind: sheet.Number, Number: c.number, Text: c.shown, Format: c.format})
		var said []string
		for _, f := range read(t, bookOf(s), Options{}).found {
			if f.Kind == ShownOtherwise && f.Severity == finding.Warning {
				said = append(said, f.Suggests)
			}
		}
		if want := []string{c.says}; len(said) != 0 && !slices.Equal(said, want) || len(said) == 0 && c.says != "" {
			t.Errorf("%v shown as %q: %q, want %q", c.number, c.shown, said, c.says)
		}
	}
}
