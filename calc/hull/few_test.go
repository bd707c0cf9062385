package hull

import (
	"fmt"
	"testing"

	"strakebook/calc/measure"
)

// fewMouldTables are boats of which a table gives so few moulds that no line can be
// judged along itself.
func fewMouldTables() []testTable {
	var all []testTable
	for _, n := range []int{3, 4, 5} {
		for _, h := range []*formHull{
			roundBilge("round bilge", 168, 30, 24, 9, measure.Eighth),
			hardChine("hard chine", 144, 26, 18, 9, measure.Eighth),
			doubleEnder("double-ender", 192, 30, 20, 9, measure.Eighth),
			hollowBow("hollow bow", 216, 36, 30, 9, measure.Sixteenth),
			transomBoat("transom", 144, 27, 20, 9, measure.Eighth),
		} {
			h.stations, h.transom = nil, false
			for k := range n {
				h.stations = append(h.stations, 0.15+0.7*float64(k)/float64(n-1))
			}
			all = append(all, testTable{fmt.Sprintf("%s, %d moulds", h.name, n), h.offsets()})
		}
	}
	return all
}

// With three to five moulds there are only the sections held against each other,
// hollows, and what no hull can have. What is named is in two cases of three the
// wrong figure itself, else one beside it; a sound table raises nothing.
func TestFewMoulds(t *testing.T) {
	each := 2
	if *full {
		each = 40
	}
	m := detect(t, fewMouldTables(), each)
	if testing.Verbose() {
		m.print(t)
	}
	recall, precision := 0.37, 0.61 // what is reached, less two in a hundred, and one of the whole
	if *full {
		recall, precision = 0.397, 0.66
	}
	if got := share(m.all.found, m.all.seeded); got < recall {
		t.Errorf("recall %.3f, floor %.3f", got, recall)
	}
	if got := share(m.right, m.flags); got < precision {
		t.Errorf("precision %.3f, floor %.3f", got, precision)
	}
	if m.cleanFlags+m.cleanFound > 0 {
		t.Errorf("untouched tables: %d values named, %d other findings", m.cleanFlags, m.cleanFound)
	}
}
