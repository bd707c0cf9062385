package read

import (
	"fmt"
	"strings"
	"testing"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
)

const widthHeadsOffsets = `
Offsets, feet-inches-eighths, to the outside of planking
Station | 0 | 2 | 4 | Transom
Distance from FP | 0-0-0 | 4-0-0 | 8-0-0 | 12-0-0
Half-breadths
WL 1 | 0-1-0 | 1-0-0 | 1-2-0 | 1-0-0
WL 2 | 0-2-0 | 1-2-0 | 1-4-0 | 1-2-0
`

// Widths by station are read under every heading that names a station of the book;
// under numbers that name none they are left and said.
func TestWidthsUnderTheirStations(t *testing.T) {
	for heads, want := range map[string]string{
		"Width at sta 0 | Width at sta 2 | Width at sta 4":             "4",
		"Width, sta. 0 (in) | Width, sta. 2 (in) | Width, sta. 4 (in)": "4",
		"Width 0 | Width 2 | Width 4":                                  "4",
		"W0 | W2 | W4":                                                 "4",
		"Width @ Sta. 0 | Width @ Sta. 2 | Width @ Sta. 4":             "4",
		"Sta. 0 | Sta. 2 | Sta. 4":                                     "4",
		"Width 1 | Width 3 | Width 5":                                  "column-unread@A2",
		"Width at sta 4 | Note | From whom":                            "column-unread@C1",
		"Width at sta 0 | Width at sta 2 | Width at Transom":           "4",
		"Width at sta 0 | Width at sta 2 | Width at station Transom":   "4",
		"Width at sta 0 | Width at sta 2 | Width at the transom (in)":  "4",
		"Width fwd | Width mid | Width aft":                            "column-unread@C1",
	} {
		rows := fmt.Sprintf("Strake | Thickness (in) | %s | Length\n", heads)
		for k := 1; k <= 4; k++ {
			rows += fmt.Sprintf("%d | 7/8 | 4 1/8 | 5 1/4 | 3 %d/8 | 20-0-0\n", k, k)
		}
		r := read(t, bookOf(sheetOf("Offsets", widthHeadsOffsets), sheetOf("Strakes", rows)), Options{})
		got := strings.Join(r.codes(finding.Warning), " ")
		if got == "" {
			for _, s := range r.job.Strakes {
				if len(s.Widths) != 3 || s.WidthAt[1].Name != "2" || s.Widths[1].Value != measure.Inches(5.25) || strings.Contains(strings.ToLower(heads), "transom") && s.WidthAt[2].Name != "Transom" {
					t.Errorf("%s: strake %s is %v wide at %v", heads, s.Name, s.Widths, s.WidthAt)
				}
			}
			got = fmt.Sprint(len(r.job.Strakes))
		}
		if got != want {
			t.Errorf("%s: %s, want %s", heads, got, want)
		}
	}
}

// The distances of bevels' stations from one of them, however the row is called, and
// along the edge where it stands below a seam.
func TestDistancesOfBevels(t *testing.T) {
	for _, label := range []string{"Distance", "Dist.", "Dist. from Fr 2", "From Fr 2", "Distance (ft-in-8ths)", "Distance from sta. 2", "Aft of Fr 2"} {
		r := read(t, bookOf(sheetOf("Bevels", `
Bevels, degrees off square
Strake | Edge | Fr 2 | Fr 4 | Fr 6 | Fr 8
`+label+` | | 0-0-0 | 2-6-0 | 5-0-0 | 7-6-0
2 | upper | 1 | 1 1/2 | 2 | 2
3 | upper | 1 | 1 1/4 | 2 | 2 1/4
`)), Options{})
		if codes := r.codes(finding.Warning); len(codes) > 0 || len(r.job.Bevels) != 1 || len(r.job.Bevels[0].Seams) != 2 {
			t.Errorf("%s: %v, %+v", label, codes, r.job.Bevels)
			continue
		}
		if at := r.job.Bevels[0].Stations[2].At; at.Value != 5*measure.Foot {
			t.Errorf("%s: frame 6 lies at %v", label, at.Value)
		}
	}
	r := read(t, bookOf(sheetOf("Bevels", `
Bevels, degrees off square
Strake | Edge | Sta 2 | Sta 4 | Sta 6 | Sta 8
2 | upper | 1 | 1 1/2 | 2 | 2
Distance | | 0-0-0 | 2-6-0 | 5-0-0 | 7-6-0
`)), Options{})
	if codes := r.codes(finding.Warning); len(codes) > 0 || r.job.Bevels[0].Seams[0].Along[1].Value != measure.Feet(2.5) {
		t.Errorf("along: %v, %+v", codes, r.job.Bevels)
	}
}
