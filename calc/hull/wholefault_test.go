package hull

import (
	"maps"
	"slices"
	"testing"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// wholeFault is a fault of a whole station or line, and the finding it is to give.
type wholeFault struct {
	kind string
	o    Offsets
	code string
	at   []source.Cell // any of these
}

// wholeFaults is every such fault that can be made in a table: a station inside
// the run moved by a share of its space, changed about with the next, its
// half-breadths a row too high or too low, two neighbouring waterlines changed
// about.
func wholeFaults(o Offsets) []wholeFault {
	var all []wholeFault
	last := len(o.Stations) - 1
	for last > 0 && o.Stations[last].Transom {
		last--
	}
	for k := 1; k < last; k++ {
		for _, share := range []struct {
			kind string
			of   float64
		}{{"moved 10 %", 0.1}, {"moved 25 %", 0.25}, {"moved 50 %", -0.5}} {
			if !o.Stations[k].At.OK() {
				continue
			}
			p := clone(o)
			space := float64(o.Stations[k+1].At.Value - o.Stations[k].At.Value)
			if share.of < 0 {
				space = float64(o.Stations[k].At.Value - o.Stations[k-1].At.Value)
			}
			p.Stations[k].At.Value += measure.Length(share.of * space)
			all = append(all, wholeFault{share.kind, p, "station-off", []source.Cell{o.Stations[k].Cell, o.Stations[k].At.Cell}})
		}
		if k+1 < last {
			p := clone(o)
			for i := range p.Lines {
				v := p.Lines[i].Values
				v[k], v[k+1] = v[k+1], v[k]
			}
			all = append(all, wholeFault{"stations swapped", p, "station-swapped", []source.Cell{o.Stations[k].Cell}})
		}
		for _, step := range []int{-1, 1} {
			p := clone(o)
			from := slices.IndexFunc(p.Lines, func(l Line) bool { return l.View == HalfBreadth })
			changed := 0
			for i := from; i < len(p.Lines); i++ {
				v := source.Reading[measure.Length]{State: source.Blank, Cell: o.Lines[i].Values[k].Cell}
				if j := i + step; j >= from && j < len(p.Lines) {
					v = o.Lines[j].Values[k]
					v.Cell = o.Lines[i].Values[k].Cell
				}
				if v.Value != o.Lines[i].Values[k].Value {
					changed++
				}
				p.Lines[i].Values[k] = v
			}
			if changed > 3 {
				all = append(all, wholeFault{"slipped a row", p, "station-slipped", []source.Cell{o.Stations[k].Cell}})
			}
		}
	}
	for i := range o.Lines {
		if i+1 < len(o.Lines) && o.Lines[i].Role == Waterline && o.Lines[i+1].Role == Waterline {
			p := clone(o)
			p.Lines[i].Values, p.Lines[i+1].Values = p.Lines[i+1].Values, p.Lines[i].Values
			all = append(all, wholeFault{"waterlines swapped", p, "line-swapped", []source.Cell{o.Lines[i].Cell}})
		}
	}
	return all
}

// wholeFloors is the share of faults of each kind that is to be named, of the tables
// fitted on and of those kept apart: what is reached, less three in a hundred.
var wholeFloors = map[string][2]float64{
	"moved 10 %": {0.35, 0.44}, "moved 25 %": {0.61, 0.67}, "moved 50 %": {0.79, 0.80},
	"slipped a row": {0.83, 0.81}, "stations swapped": {0.89, 0.89}, "waterlines swapped": {0.95, 0.93},
}

// aloneFloors is the same of those that give that one finding and no other.
var aloneFloors = map[string][2]float64{
	"moved 10 %": {0.34, 0.45}, "moved 25 %": {0.58, 0.66}, "moved 50 %": {0.76, 0.77},
	"slipped a row": {0.83, 0.75}, "stations swapped": {0.88, 0.86}, "waterlines swapped": {0.95, 0.93},
}

// TestWholeFaults: a fault of a whole station or line gives one finding, of it. A
// station moved where the lines run straight, or a row slipped where they lie
// together, is not to be seen. Without -full one table in thirty is worked.
func TestWholeFaults(t *testing.T) {
	type count struct{ made, named, alone, other int }
	for set, apart := range []bool{false, true} {
		by := map[string]*count{}
		step := 29
		if *full {
			step = 1
		}
		n := 0
		for _, table := range tables(t, apart) {
			for _, f := range wholeFaults(table.o) {
				if n++; n%step != 0 {
					continue
				}
				c := by[f.kind]
				if c == nil {
					c = &count{}
					by[f.kind] = c
				}
				c.made++
				found := Examine(f.o, DefaultRules()).Found
				right, others := f.told(found)
				c.other += others
				if right {
					c.named++
					if others == 0 {
						c.alone++
					}
				}
			}
		}
		t.Logf("KEPT APART: %v", apart)
		for _, kind := range slices.Sorted(maps.Keys(by)) {
			c := by[kind]
			t.Logf("  %-20s %4d  named %.3f  with nothing else %.3f  other findings a table %.2f", kind, c.made, share(c.named, c.made), share(c.alone, c.made), share(c.other, c.made))
			if got := share(c.named, c.made); *full && got < wholeFloors[kind][set] {
				t.Errorf("%s: %.3f named, was %.3f", kind, got, wholeFloors[kind][set])
			}
			if got := share(c.alone, c.made); *full && got < aloneFloors[kind][set] {
				t.Errorf("%s: %.3f named with nothing else, was %.3f", kind, got, aloneFloors[kind][set])
			}
		}
		all := count{}
		for _, c := range by {
			all.made, all.named, all.alone = all.made+c.made, all.named+c.named, all.alone+c.alone
		}
		if share(all.alone, all.named) < 0.96 { // reached: .99 and .97
			t.Errorf("%d named, of which %d with nothing else", all.named, all.alone)
		}
		if got := share(all.named, all.made); got < 0.68 {
			t.Errorf("%.3f named", got)
		}
	}
}

// told says whether the finding the fault is to give is among those found, and how
// many others are, other than of the cells it left blank.
func (f wholeFault) told(found finding.List) (right bool, others int) {
	for _, g := range found {
		switch {
		case g.Severity == finding.Note || g.Code == "offset-gap" || g.Code == "station-blank":
		case g.Code == f.code && slices.Contains(f.at, g.Cell):
			right = true
		default:
			others++
		}
	}
	return right, others
}
