package hull

import (
	"fmt"
	"math"

	"strakebook/calc/finding"
)

// carried is how the seams go on beyond the builder's marks at one end of the hull:
// each keeps its part of the girth.
type carried struct {
	from  int       // the last station marked
	share []float64 // by seam; NaN for one that does not reach that station
}

// carryOn draws the seams on beyond the first and the last station marked (-1: none), as far as
// there are sections: each keeps its part of the girth there, and where the stem or
// the stern post cuts the sections short ends on it.
func (h *hull) carryOn(l *lined, m SeamMarks, first, last int) finding.List {
	if first < 0 {
		return nil
	}
	var found finding.List
	for way, from := range [2]int{first, last} {
		step := 2*way - 1
		if !l.sectionBeyond(from, step) || l.sections[from] == nil {
			continue
		}
		l.carried[way] = l.keep(from)
		for k := from + step; h.has(k); k += step {
			l.drawShares(k, l.carried[way].share)
			l.shared[k] = true
		}
		end := [2]string{"forward of", "abaft"}[way]
		found = append(found, finding.Finding{Kind: MarksShort, Cell: m.at(m.place(h.o.Stations[from].Name)),
			Text: fmt.Sprintf("the %s skin is marked at no %s %s %s: there each strake keeps its part of the girth at %s", l.skin, h.o.Places, end, h.o.called(from), h.o.called(from))})
	}
	return found
}

// sectionBeyond says that there is a section beyond a station.
func (l *lined) sectionBeyond(k, step int) bool {
	for k += step; k >= 0 && k < len(l.sections); k += step {
		if l.sections[k] != nil {
			return true
		}
	}
	return false
}

// keep is each seam's part of the girth at a station.
func (l *lined) keep(from int) *carried {
	o := &carried{from: from}
	reach := min(l.bow.reach[from], l.stern.reach[from])
	for _, row := range l.down {
		o.share = append(o.share, row[from]/l.girth[from]*reach)
	}
	return o
}

// drawShares lays the seams of one station at their parts of the girth, as far as
// the section reaches.
func (l *lined) drawShares(k int, share []float64) {
	reach := min(l.bow.reach[k], l.stern.reach[k])
	for j, part := range share {
		switch {
		case l.sections[k] == nil, math.IsNaN(part), reach < 1 && part > reach*(1-1e-9):
			l.down[j][k] = math.NaN()
		default:
			l.down[j][k] = l.girth[k] * min(1, part/reach)
		}
	}
}

// shareBeyond is the part of the girth by which a seam whose last station is k goes
// on with a step; not ok where it goes by marks or widths there.
func (l *lined) shareBeyond(j, k, step int) (float64, bool) {
	if l.share != nil {
		return l.share[j], true
	}
	o := l.carried[(step+1)/2]
	if o == nil || math.IsNaN(o.share[j]) || (k-o.from)*step < 0 {
		return 0, false
	}
	return o.share[j], true
}
