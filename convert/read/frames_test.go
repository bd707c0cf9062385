package read

import (
	"fmt"
	"testing"
)

// Offsets at frames are no part of those at stations of the same numbers, unless the
// builder says so or both lie at the same positions.
func TestOffsetsAtFramesAndAtStations(t *testing.T) {
	const positions = "Position|0-0-0|3-0-0|6-0-0|9-0-0"
	for _, c := range []struct {
		head, at string
		set      []string
		tables   int
	}{
		{"Frame ", "", nil, 2},
		{"Station ", "", nil, 1},
		{"", "", nil, 1},
		{"Frame ", "", []string{"frames are stations=yes"}, 1},
		{"Frame ", positions, nil, 1},
		{"Frame ", "Position|0-0-0|2-0-0|4-0-0|6-0-0", nil, 2},
	} {
		r := read(t, bookOf(sheetOf("A", `
Half-breadths, feet-inches-eighths|Station 1|Station 2|Station 3|Station 4
`+positions+`
Sheer|1-0-0|2-0-0|2-6-0|2-4-0
WL 2-0-0|0-8-0|1-8-0|2-3-0|2-0-0`), sheetOf("B", fmt.Sprintf(`
Heights, feet-inches-eighths|%[1]s1|%[1]s2|%[1]s3|%[1]s4
%[2]s
Sheer|3-0-0|2-9-0|2-7-0|2-8-0
Rabbet|0-4-0|0-3-0|0-2-0|0-2-4`, c.head, c.at))), Options{Set: c.set})
		told := false
		for _, f := range r.found {
			told = told || f.Code == "frames-open" && f.Cell.Sheet == "B"
		}
		if len(r.job.Offsets) != c.tables || told != (c.tables == 2) {
			t.Errorf("%q %q %v: %d tables, told %v", c.head, c.at, c.set, len(r.job.Offsets), told)
		}
	}
}
