package bevel

import (
	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Doubt is how far the bevel at a mark can be trusted.
type Doubt uint8

// A mark's doubts.
const (
	Sure     Doubt = iota
	Doubtful       // its own reading is doubtful
	Leaning        // it lies between a doubtful reading and the next that is sure, or would be set otherwise without the doubtful ones
)

// doubts is the findings that say a reading, or a whole seam, may not be sawn to
// before it is lifted again. A reading beyond the saw's tilt is among them where the
// run of its seam says another.
var doubts = []*finding.Kind{Jump, Tilted, SidesApart, SidesOpposed, HullApart, HullGross, Counted}

// DoubtMarks says at every mark whether what is found leaves it in doubt, and finds the
// parallel battens anew without those marks, so that one wrong reading does not
// shift the batten of the whole plank. What the builder lets stand is a note, and no
// doubt.
func DoubtMarks(all []Schedule, found finding.List, r Rules) {
	why := map[source.Cell]*finding.Kind{}
	for _, f := range found {
		for _, k := range doubts {
			if f.Code != k.Code || f.Severity == finding.Note || k == Tilted && f.Suggests == "" {
				continue
			}
			for _, c := range append([]source.Cell{f.Cell}, f.Also...) {
				if c.Row > 0 {
					why[c] = k
				}
			}
		}
	}
	for i := range all {
		s := &all[i]
		if k, ok := why[s.Cell]; ok && !s.Computed {
			s.Doubt = k.Title
		}
		if s.doubtMarks(why) {
			s.lean(r)
			s.batten(r)
		}
	}
}

// doubtMarks marks those whose own reading is doubtful; any says there are some.
func (s *Schedule) doubtMarks(why map[source.Cell]*finding.Kind) (any bool) {
	for i := range s.Marks {
		m := &s.Marks[i]
		if _, ok := why[m.Read.Cell]; ok && m.Read.OK() && !m.Filled {
			m.Doubt, any = Doubtful, true
		}
	}
	return any
}

// lean marks those that rest on a doubtful reading: all from it to the next reading
// that is sure, on either side, though the interpolant should happen to set them no
// otherwise without it, and those farther off that it would. Beyond the sure readings
// at the ends of the seam nothing else is known.
func (s *Schedule) lean(r Rules) {
	var x, y []float64
	sure := make([]bool, len(s.Marks))
	for i, m := range s.Marks {
		x, y = append(x, m.At.Inches()), append(y, float64(m.Between))
		sure[i] = m.Read.OK() && !m.Filled && m.Doubt == Sure
	}
	beside := s.besideDoubt(sure)
	without := curve(x, y, sure)
	for i := range s.Marks {
		m := &s.Marks[i]
		if m.Doubt != Sure || sure[i] {
			continue
		}
		if beside[i] || without == nil || measure.Angle(without.Predict(x[i])).Round(r.Readout) != m.Between.Round(r.Readout) {
			m.Doubt = Leaning
		}
	}
}

// besideDoubt says of each mark whether, going either way along the seam, a doubtful
// reading or the seam's end is met before one that is sure.
func (s *Schedule) besideDoubt(sure []bool) []bool {
	beside := make([]bool, len(s.Marks))
	pass := func(i int, met *bool) {
		switch {
		case sure[i]:
			*met = false
		case s.Marks[i].Doubt == Doubtful:
			*met = true
		}
		beside[i] = beside[i] || *met
	}
	aft, fore := true, true
	for i := range s.Marks {
		pass(i, &aft)
		pass(len(s.Marks)-1-i, &fore)
	}
	return beside
}

// Sure is at how many marks the bevel is in no doubt.
func (s Schedule) Sure() int {
	n := 0
	for _, m := range s.Marks {
		if m.Doubt == Sure {
			n++
		}
	}
	return n
}

// Doubted says that the whole seam or some mark of it is in doubt.
func (s Schedule) Doubted() bool {
	return s.Doubt != "" || s.Sure() < len(s.Marks)
}
