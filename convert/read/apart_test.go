package read

import (
	"testing"

	"strakebook/calc/hull"
)

// A line is the same on both sides, and no line is another.
func TestLinesAlike(t *testing.T) {
	key := func(name string) lineKey { return keyOf(hull.Line{Name: name}) }
	for _, same := range [][2]string{{"Port WL 300", "Starboard WL 300"}, {"WL 300", "WL 300 stbd"}, {"Deck", "deck"}} {
		if key(same[0]) != key(same[1]) {
			t.Errorf("%q is not %q", same[0], same[1])
		}
	}
	for _, other := range [][2]string{{"WL +6", "WL -6"}, {"WL 1", "WL 1.5"}, {"WL 3 1/2", "WL 31/2"}, {"Buttock P", "Buttock S"}} {
		if key(other[0]) == key(other[1]) {
			t.Errorf("%q is taken for %q", other[0], other[1])
		}
	}
}
