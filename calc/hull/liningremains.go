package hull

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
)

// leftOver is the stretches of the hull's length on which more than a width is
// left between the last of parallel strakes and the rabbet. Between stations the
// girth is that of the fair line through all of them.
func (h *hull) leftOver(l *lined, width measure.Length) []Reach {
	want, w := l.want[len(l.want)-1], width.Inches()
	var all []Reach
	last, before := -1, 0.0 // the station before and what is left there over the width
	for k := range h.x {
		girth, ok := h.girthTo(l, k)
		if !ok {
			continue
		}
		over := girth - want[k] - w
		at := measure.Inches(h.x[k])
		switch {
		case over > 0 && last < 0:
			all = append(all, Reach{From: at, To: at})
		case over > 0 && before <= 0:
			all = append(all, Reach{From: h.between(l, k, last, want, w), To: at})
		case over > 0:
			all[len(all)-1].To = at
		case before > 0:
			all[len(all)-1].To = h.between(l, last, k, want, w)
		}
		last, before = k, over
	}
	return all
}

// girthTo is the girth at a station, that of the stem itself where the hull comes
// to the middle line there; not ok where no strake can reach the station.
func (h *hull) girthTo(l *lined, k int) (float64, bool) {
	switch {
	case l.sections[k] != nil:
		return l.girth[k], true
	case k != l.bow.first && k != l.stern.first || !h.closedAt(k) || len(h.sections[k].points) == 0:
		return 0, false
	case h.sections[k].line != nil:
		return h.sections[k].line.length(), true
	}
	return 0, true
}

// between is where, from a station at which more than a width is left towards one
// at which less is, it comes down to that width.
func (h *hull) between(l *lined, k, to int, want []float64, width float64) measure.Length {
	girth, _ := h.girthTo(l, to)
	part := 0.0
	if l.sections[k] != nil {
		part, _ = h.usedUp(l, k, to, want[k]+width, want[to]+width, girth)
	}
	return measure.Inches(h.x[k] + part*(h.x[to]-h.x[k]))
}

// remains says where girth is left below the last strake, and from where to where
// tapering strakes or a stealer must take it up.
func (h *hull) remains(l Lining, from *lined) finding.List {
	if len(l.Tapers) == 0 {
		return nil
	}
	text := fmt.Sprintf("below the last %s as much as %s remains: tapering strakes must take it up %s", l.Skin, h.write(slices.Max(l.Left)), h.stretches(l.Tapers))
	if len(l.Stealers) > 0 {
		text += fmt.Sprintf(", or stealers %s, where it is %s or more", h.stretches(l.Stealers), h.write(max(h.r.SumWithin, h.r.NarrowestPlank)))
	}
	return finding.List{{Kind: LiningSum, Cell: from.cell, Text: text}}
}

// stretches is stretches of the hull's length in words.
func (h *hull) stretches(all []Reach) string {
	var words []string
	for _, r := range all {
		words = append(words, fmt.Sprintf("from %s to %s", h.whereabouts(r.From), h.whereabouts(r.To)))
	}
	return strings.Join(words, " and ")
}

// whereabouts is a place along the hull as so far from the station nearest to it.
func (h *hull) whereabouts(at measure.Length) string {
	near := 0
	for k := range h.x {
		if math.Abs(h.x[k]-at.Inches()) < math.Abs(h.x[near]-at.Inches()) {
			near = k
		}
	}
	name := h.o.called(near)
	switch off := (at - measure.Inches(h.x[near])).Round(2 * h.o.Form.Finest()); {
	case off > 0:
		return h.write(off) + " abaft " + name
	case off < 0:
		return h.write(-off) + " forward of " + name
	}
	return name
}
