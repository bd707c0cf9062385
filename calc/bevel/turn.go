package bevel

import (
	"fmt"
	"math"

	"strakebook/calc/finding"
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
	return finding.List{{Kind: Turned, Cell: seam.Cell,
		Text: fmt.Sprintf("%s changes by %s degrees a foot near station %s, more than %s", seam.name(), m.PerFoot.Write(), station, r.Turn.Write())}}
}
