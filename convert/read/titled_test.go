package read

import (
	"testing"

	"strakebook/calc/hull"
)

// A table under the title of one line is of that line, where its own headings name the
// views alone: in one view down the stations, or in both as a list.
func TestTitleNamesTheLine(t *testing.T) {
	r := read(t, bookOf(sheetOf("Sheer and profile", `
Sheer line (ft-in-8ths)||
Station|Height above base|Half-breadth
0|4-6-0|0-1-0
1|4-1-5|1-4-0
2|3-10-2|2-2-2
3|3-7-5|2-8-4
||
Profile of the rabbet, height above base||
Station|Height above base|
0|4-6-0|
1|1-4-7|
2|1-0-5|
3|1-0-1|`)), Options{})
	seen := map[hull.Role][]hull.View{}
	for _, o := range r.job.Offsets {
		for _, l := range o.Lines {
			if len(l.Values) != 4 {
				t.Errorf("%q has %d figures", l.Name, len(l.Values))
			}
			seen[l.Role] = append(seen[l.Role], l.View)
		}
	}
	if len(seen[hull.Deck]) != 2 || len(seen[hull.Rabbet]) != 1 || seen[hull.Rabbet][0] != hull.Height || len(seen) != 2 {
		t.Errorf("read as %v", seen)
	}
}
