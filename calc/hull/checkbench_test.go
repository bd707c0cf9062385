package hull

import (
	"fmt"
	"testing"

	"strakebook/calc/measure"
)

// The cost of the checks of a table of 100 stations and 60 lines, as it is and with
// three wrong figures, and of one twice as long:
// go test ./calc/hull -bench Check -run none
func BenchmarkCheck(b *testing.B) {
	table := func(stations, lines int) Offsets {
		h := roundBilge("", 1200, 200, 190, stations, measure.Eighth)
		h.waters, h.buttocks = steps(190.0/float64(lines-13), 190.0/float64(lines-13), 190), steps(20, 20, 190)
		return h.offsets()
	}
	rules := DefaultRules()
	for _, c := range []struct{ stations, lines, faults int }{{50, 60, 0}, {100, 60, 0}, {200, 60, 0}, {100, 60, 3}, {100, 60, -1}} {
		o := table(c.stations, c.lines)
		for n := range c.faults {
			o.Lines[20+n].Values[30+10*n].Value += measure.Inch
		}
		if c.faults < 0 {
			o.Stations[40].At.Value += measure.Foot / 4
		}
		name := fmt.Sprintf("%d stations %d lines %d faults", c.stations, len(o.Lines), c.faults)
		if c.faults < 0 {
			name = fmt.Sprintf("%d stations %d lines one station moved", c.stations, len(o.Lines))
		}
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				Examine(o, rules)
			}
		})
	}
}
