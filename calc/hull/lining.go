package hull

import (
	"fmt"
	"slices"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// SeamMarks is the builder's own marks of where the seams of a skin run.
type SeamMarks struct {
	Skin     Skin
	Side     Side
	Kind     MarkKind
	Surface  Surface // the one they were measured on; unstated: that of the skin
	Stations []Station
	Seams    []SeamMark // from the sheer down
	Cell     source.Cell
}

// SeamMark is the marks of one strake: its width at each station, or the girth
// to its lower edge.
type SeamMark struct {
	Strake string
	Values []source.Reading[measure.Length] // a station each
	Cell   source.Cell
}

// MarkKind is what marks are.
type MarkKind uint8

// The kinds of marks.
const (
	MarkWidths     MarkKind = iota // of the strakes
	MarkFromSheer                  // girth from the sheer down to the strake's lower edge
	MarkFromRabbet                 // girth from the rabbet up to it
)

// lined is one skin of one side being lined off, in inches.
type lined struct {
	skin     Skin
	side     Side
	on       Surface
	by       Method
	names    []string
	sections []*curve    // on the skin's surface, a station each; nil where there is none
	beyond   []*curve    // the sections that lie beyond the middle line
	outer    []*curve    // on the surface of its outer face; nil where that is not known
	leaning  *curve      // the section of a transom off plumb; among sections it stands as the body plan shows it
	girth    []float64   // a station each
	marked   [][]float64 // the builder's marks by strake at every station, drawn on between his own
	shared   []bool      // of marks, a station each: each strake has its part of the girth there, by the stations marked
	carried  [2]*carried // of marks that stop short of the bow, or the stern
	share    []float64   // of lining off in shares, by seam: the part of the whole girth above it
	down     [][]float64 // by seam and station: girth from the sheer; NaN where it does not cross
	want     [][]float64 // of parallel strakes: down as if the hull went on
	from     string      // of parallel strakes: the line of the offsets they start on, "" the sheer
	first    int         // and the strake below it
	bow      endLine
	stern    endLine
	edges    [2]*curve        // rabbet and sheer, once drawn
	fair     *curve           // girth by place along the hull, once drawn
	loose    []measure.Length // of each seam drawn: how far its ends may lie off along it
	cell     source.Cell
}

// linings lines off every skin of the list of strakes.
func (h *hull) linings(strakes []Strake, marks []SeamMarks, on skinned) ([]Lining, finding.List) {
	if !h.placed {
		return nil, nil
	}
	var all []Lining
	var found finding.List
	for _, g := range groups(strakes, marks) {
		l := h.newLined(g, marks, on)
		found = append(found, h.divide(l, g.strakes, marks)...)
		lining := h.lining(l)
		h.bevels(&lining)
		found = append(found, h.garboards(&lining, strakes)...)
		found = append(found, h.widths(lining, l)...)
		found = append(found, h.uneven(lining, l)...)
		all = append(all, lining)
	}
	return all, append(found, unusedMarks(groups(strakes, marks), marks)...)
}

// unusedMarks says which marks a skin is not lined off by, others being given of it.
func unusedMarks(all []group, marks []SeamMarks) finding.List {
	used, skins := map[int]bool{}, map[Skin]bool{}
	for _, g := range all {
		if i := marksFor(g, marks); i >= 0 {
			used[i], skins[g.skin] = true, true
		}
	}
	var found finding.List
	for i, m := range marks {
		if len(m.Seams) > 0 && skins[m.Skin] && !used[i] {
			found = append(found, finding.Finding{Kind: HullUnworked, Cell: m.Cell, Do: "leave one set of marks to each side of the skin",
				Text: fmt.Sprintf("the seams of the %s skin are marked more than once: it is lined off by others than these, which are not used", m.Skin)})
		}
	}
	return found
}

// group is the rows of one skin that hang on one side, or on both alike.
type group struct {
	skin    Skin
	side    Side
	strakes []Strake
}

// groups is the list of strakes by skin, and by side where the sides differ or were
// marked apart.
func groups(strakes []Strake, marks []SeamMarks) []group {
	var all []group
	var skins []Skin
	for _, s := range strakes {
		if !slices.Contains(skins, s.Skin) {
			skins = append(skins, s.Skin)
		}
	}
	for _, skin := range skins {
		var both, port, starboard []Strake
		for _, s := range strakes {
			if s.Skin != skin {
				continue
			}
			switch s.Side {
			case Port:
				port = append(port, s)
			case Starboard:
				starboard = append(starboard, s)
			default:
				both = append(both, s)
				port, starboard = append(port, s), append(starboard, s)
			}
		}
		marked := func(side Side) bool {
			return slices.ContainsFunc(marks, func(m SeamMarks) bool { return m.Skin == skin && m.Side == side && len(m.Seams) > 0 })
		}
		if len(port) == len(both) && len(starboard) == len(both) && !(marked(Port) && marked(Starboard)) {
			all = append(all, group{skin, BothSides, both})
			continue
		}
		if len(starboard) > 0 {
			all = append(all, group{skin, Starboard, starboard})
		}
		if len(port) > 0 {
			all = append(all, group{skin, Port, port})
		}
	}
	return all
}

// newLined makes ready to line off a group on its surface.
func (h *hull) newLined(g group, marks []SeamMarks, on skinned) *lined {
	l := &lined{skin: g.skin, side: g.side, on: h.surfaceOf(g.skin, on), by: h.method(g, marks)}
	if len(g.strakes) > 0 {
		l.cell = g.strakes[0].Cell
	}
	for _, s := range g.strakes {
		l.names = append(l.names, s.Names()...)
	}
	if m, ok := marksOf(g, marks); ok && m.Surface != SurfaceUnstated && on.sections[m.Surface] != nil {
		l.on = m.Surface
	}
	l.sections, l.beyond = on.sections[l.on], on.beyond[l.on]
	if l.on == SurfaceUnstated || l.sections == nil {
		l.sections, l.beyond = h.own(), nil
	}
	if last := len(l.sections) - 1; h.leaning(last) && l.sections[last] != nil {
		// The widths of strakes are measured across them, not along its slope.
		l.leaning = l.sections[last]
		l.sections = slices.Clone(l.sections)
		l.sections[last] = l.leaning.plumb(h.x[last])
	}
	switch {
	case l.skin != Strips || on.sections[BetweenSkins] == nil:
		l.outer = on.sections[OutsidePlanking]
	default:
		l.outer = on.sections[BetweenSkins]
	}
	for _, c := range l.sections {
		if c == nil {
			l.girth = append(l.girth, 0)
			continue
		}
		l.girth = append(l.girth, c.length())
	}
	l.bow, l.stern = h.endLine(l, 1), h.endLine(l, -1)
	return l
}

// own is the sections on the surface of the offsets.
func (h *hull) own() []*curve {
	all := make([]*curve, len(h.sections))
	for k, s := range h.sections {
		all[k] = s.line
	}
	return all
}

// surfaceOf is the surface a skin's inside faces lie on, on which it is lined
// off: strips on the moulds, what is laid over them between the skins.
func (h *hull) surfaceOf(skin Skin, on skinned) Surface {
	want := InsidePlanking
	if skin != Strips && on.sections[BetweenSkins] != nil {
		want = BetweenSkins
	}
	if on.sections[want] != nil {
		return want
	}
	return h.o.To(h.r)
}

// method is how a group is lined off.
func (h *hull) method(g group, marks []SeamMarks) Method {
	if _, ok := marksOf(g, marks); ok {
		return ByMarks
	}
	way := h.r.LiningPlanks
	if g.skin == Strips {
		way = h.r.LiningStrips
	}
	if way == ByShares || way == ByWidths {
		return way
	}
	every := len(g.strakes) > 0
	for _, s := range g.strakes {
		every = every && len(s.WidthAt) > 1
	}
	switch {
	case every:
		return ByMarks
	case g.skin == Strips:
		return ByWidths
	}
	return ByShares
}

// marksOf is the builder's marks for a group.
func marksOf(g group, marks []SeamMarks) (SeamMarks, bool) {
	if i := marksFor(g, marks); i >= 0 {
		return marks[i], true
	}
	return SeamMarks{}, false
}

// marksFor is the place of the marks for a group, -1 where there are none.
func marksFor(g group, marks []SeamMarks) int {
	return slices.IndexFunc(marks, func(m SeamMarks) bool {
		return m.Skin == g.skin && (m.Side == BothSides || g.side == BothSides || m.Side == g.side) && len(m.Seams) > 0
	})
}

// divide finds where the seams lie at every station.
func (h *hull) divide(l *lined, strakes []Strake, marks []SeamMarks) finding.List {
	switch l.by {
	case ByMarks:
		if m, ok := marksOf(group{skin: l.skin, side: l.side}, marks); ok {
			return h.byMarks(l, m)
		}
		return h.byMarks(l, listedMarks(l, strakes))
	case ByWidths:
		return h.byWidths(l, strakes)
	}
	return h.byShares(l, strakes)
}
