package bevel

import (
	"fmt"
	"math"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
)

// turns finds the marks between which the bevel changes too fast, the worst of
// each seam.
func (s Schedule) turns(seam Seam, r Rules) finding.List {
	worst := -1
	for i, m := range s.Marks {
		if math.Abs(float64(m.PerFoot)) > float64(r.Turn) && (worst < 0 || math.Abs(float64(m.PerFoot)) > math.Abs(float64(s.Marks[worst].PerFoot))) {
			worst = i
		}
	}
	if worst < 0 {
		return nil
	}
	m := s.Marks[worst]
	station := m.Station
	for i := worst; station == ""; i-- {
		station = s.Marks[i].Station
	}
	turns, most := m.PerFoot.Write()+" degrees a foot", r.Turn.Write()
	if r.Units == measure.StyleMM {
		turns = m.PerFoot.PerMetre().Round(0.01).Write() + " degrees a metre"
		most = r.Turn.PerMetre().Round(0.01).Write() + " (" + most + " a foot)"
	}
	return finding.List{{Kind: Turned, Cell: seam.Cell,
		Text: fmt.Sprintf("%s changes by %s near %s, more than %s", seam.name(), turns, s.Places.Named(station), most)}}
}
