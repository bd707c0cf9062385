package hull

import (
	"fmt"
	"slices"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Work draws the hull from its offsets and works out what follows: sections,
// girths, true lengths, and how each skin in the list of strakes is lined off.
// What could not be worked out is found with what it would need; the shape is
// nil where no section could be drawn.
//
// Marks, where given, are the builder's own of where the seams run.
func Work(o Offsets, strakes []Strake, r Rules, marks ...SeamMarks) (*Shape, finding.List) {
	full, ok := scaled(o, r)
	if !ok {
		return nil, finding.List{{Kind: HullUnworked, Cell: o.Cell,
			Text: "the offsets are fractions: sections, girths and lengths are not worked out",
			Do:   "set \"half beam\" and \"draft\""}}
	}
	if n := full.adrift(); n > 1 {
		return nil, finding.List{{Kind: HullUnworked, Cell: o.Cell,
			Text: fmt.Sprintf("where the waterlines and buttocks lie is not given for any of the %d: without them a section is a straight line from deck to rabbet, and none is drawn", n),
			Do:   "write each waterline's height above base, and each buttock's distance out, beside its name"}}
	}
	h := draw(full, r)
	if h == nil {
		return nil, finding.List{{Kind: HullUnworked, Cell: o.Cell,
			Text: fmt.Sprintf("no %s has the two lines a section needs: sections, girths and lengths are not worked out", o.Places),
			Do:   "give half-breadths at two waterlines or more, with the deck and the rabbet in both views"}}
	}
	s := h.shape()
	found := h.gaps()
	n := h.newNet()
	skins, f := h.skinThicknesses(strakes)
	s.Skins = skins
	on := h.skinned(n, h.depths(skins))
	s.Moulds, s.Board = h.moulds(n, on), h.board(n)
	if h.placed && s.Surface != SurfaceUnstated {
		found = append(found, f...)
	}
	found = append(found, h.unskinned(on)...)
	linings, f := h.linings(strakes, marks, on)
	s.Linings = linings
	return s, append(found, f...)
}

// adrift is how many waterlines and buttocks there are where none has a place and
// nothing else tells the shape of a section between deck and rabbet; 0 otherwise.
func (o Offsets) adrift() int {
	n := 0
	for _, l := range o.Lines {
		switch l.Role {
		case Waterline, Buttock:
			n++
			if l.At.OK() {
				return 0
			}
		case Chine, DiagonalLine:
			return 0
		}
	}
	return n
}

// hull is the hull as drawn, in inches.
type hull struct {
	*table
	r        Rules
	sections []section // a station each
}

// draw draws the sections; nil where there is none.
func draw(o Offsets, r Rules) *hull {
	h := &hull{table: newTable(o, r), r: r}
	some := false
	for k := range o.Stations {
		s := h.section(k)
		some = some || s.line != nil
		h.sections = append(h.sections, s)
	}
	if !some {
		return nil
	}
	return h
}

// shape is the hull's sections, girths and lengths as lengths.
func (h *hull) shape() *Shape {
	s := &Shape{Surface: h.o.To(h.r), Form: h.o.Form, Step: max(h.o.Step, h.o.Resolution), Places: h.o.Places, Raked: h.leaning(len(h.x) - 1), Lines: h.lengths(), transom: h.facing(len(h.x) - 1)}
	for k, st := range h.o.Stations {
		g := Girth{Name: st.Name, At: measure.Inches(h.x[k])}
		if !h.placed {
			g.At = st.At.Value
		}
		sec := h.sections[k]
		if sec.line != nil {
			g.Girth = measure.Inches(sec.line.length())
			g.From, g.To = h.name(sec.points[0]), h.name(sec.points[len(sec.points)-1])
			drawn := Section{Station: st.Name, At: g.At, Drawn: sec.drawn()}
			for _, c := range sec.points {
				drawn.Points = append(drawn.Points, Point{Out: measure.Inches(c.y), Up: measure.Inches(c.z), Line: h.name(c)})
			}
			s.Sections = append(s.Sections, drawn)
		}
		if sec.line == nil {
			g.Lacks = h.lacks(k)
		}
		s.Stations = append(s.Stations, g)
	}
	return s
}

// lacks is why no section could be drawn at a station.
func (h *hull) lacks(k int) string {
	for _, l := range h.o.Lines {
		if l.Values[k].OK() {
			return "too few offsets"
		}
	}
	return "no offsets"
}

// name is the line of the table a point of a section lies on.
func (h *hull) name(c crossed) string {
	if c.role == Waterline || c.role == Buttock || c.role == DiagonalLine || c.role == OtherLine {
		return h.pairs[c.pair].name
	}
	return c.role.String()
}

// gaps says what the drawing lacked and what was made of it.
func (h *hull) gaps() finding.List {
	var found finding.List
	if !h.placed && slices.ContainsFunc(h.o.Stations, func(s Station) bool { return s.At.OK() }) {
		// With none placed at all the check of the stations has said so.
		found = append(found, finding.Finding{Kind: HullUnworked, Cell: h.o.Cell,
			Text: fmt.Sprintf("the positions of the %ss are not all known, or not in order: girths are worked out, lengths and bevels are not", h.o.Places),
			Do:   "put the row of positions right, or set \"station spacing\""})
	}
	found = append(found, h.unused()...)
	found = append(found, h.viewsApart()...)
	foot, head, outside := 0, 0, 0
	var loose []source.Cell
	found = append(found, h.buttocksOutside()...)
	for k, s := range h.sections {
		outside += s.outside
		switch {
		case s.line == nil && len(s.points) > 0 && k > 0 && k < len(h.sections)-1:
			loose = append(loose, h.o.Stations[k].Cell)
		case s.line != nil && s.from == OtherLine && !h.doubted(k, Rabbet, Keel):
			foot++
		}
		if s.line != nil && !s.toDeck && !h.doubted(k, Deck) {
			head++
		}
	}
	found = append(found, h.doubtedEnds()...)
	if foot > 0 {
		found = append(found, finding.Finding{Kind: GirthFrom, Cell: h.o.Cell,
			Text: fmt.Sprintf("no rabbet or keel height is given at %d %ss: their girths start from the lowest line", foot, h.o.Places)})
	}
	if head > 0 {
		found = append(found, finding.Finding{Kind: GirthTo, Cell: h.o.Cell,
			Text: fmt.Sprintf("the deck is not given in both views at %d %ss: their girths end at the highest line", head, h.o.Places)})
	}
	if len(loose) > 0 {
		text := fmt.Sprintf("%d %ss have too few offsets to draw a section through", len(loose), h.o.Places)
		if len(loose) == 1 {
			text = fmt.Sprintf("the %s has too few offsets to draw a section through", h.o.Places)
		}
		found = append(found, finding.Finding{Kind: SectionThin, Cell: loose[0], Also: loose[1:], Text: text})
	}
	if outside > 0 {
		found = append(found, finding.Finding{Kind: SectionBeyond, Cell: h.o.Cell,
			Text: fmt.Sprintf("%d offsets lie above the deck or below the rabbet at their %s and are left out of the sections", outside, h.o.Places)})
	}
	return found
}

// unused is the lines of the table that take no part in the sections.
func (h *hull) unused() finding.List {
	var found finding.List
	for _, l := range h.o.Lines {
		switch {
		case l.Role == DiagonalLine && l.Unread != "":
			found = append(found, finding.Finding{Kind: LineUnused, Cell: l.Cell, Reads: l.Name,
				Text: fmt.Sprintf("%s is not used in the sections: %q is not understood", l.Name, l.Unread)})
		case l.Role == DiagonalLine && !(l.At.OK() && l.Down.OK()):
			found = append(found, finding.Finding{Kind: LineUnused, Cell: l.Cell, Reads: l.Name,
				Text: fmt.Sprintf("%s is not used in the sections: its height on the centre line or its angle is not given", l.Name)})
		case (l.Role == Waterline || l.Role == Buttock) && !l.At.OK():
			found = append(found, finding.Finding{Kind: LineUnused, Cell: l.Cell, Reads: l.Name,
				Text: fmt.Sprintf("%s is not used in the sections: where it lies is not given", l.Name),
				Do:   "write its height above base, or its distance out, beside its name"})
		case l.Role == OtherLine:
			found = append(found, finding.Finding{Kind: LineUnused, Cell: l.Cell, Reads: l.Name,
				Text: fmt.Sprintf("%s is not used in the sections: what line it is is not known", l.Name),
				Do:   "name it as a waterline, buttock, deck, rabbet, keel or chine"})
		}
	}
	for _, p := range h.pairs {
		if (p.role == Deck || p.role == Chine) && (p.out < 0 || p.up < 0) {
			view, i := "heights", p.out
			if p.out < 0 {
				view, i = "half-breadths", p.up
			}
			found = append(found, finding.Finding{Kind: LineUnused, Cell: h.o.Lines[i].Cell, Reads: p.name,
				Text: fmt.Sprintf("%s is not used in the sections: its %s are not given", p.name, view),
				Do:   "add its line in the other view"})
		}
	}
	return found
}
