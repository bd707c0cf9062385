package hull

import (
	"fmt"
	"math"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// byWidths lays parallel strakes of their own widths, from the sheer down or both
// ways from the line they are to start on. The last of those above the line has
// its lower edge on it.
func (h *hull) byWidths(l *lined, strakes []Strake) finding.List {
	var w []float64
	for _, s := range strakes {
		for range s.Names() {
			w = append(w, s.Widest().Inches())
		}
	}
	if len(w) == 0 || w[0] <= 0 {
		l.names = nil
		return finding.List{{Kind: HullUnworked, Cell: l.cell, Do: "write the strakes' width",
			Text: fmt.Sprintf("the %s skin is not lined off: its strakes have no width", l.skin)}}
	}
	start, found := h.startLine(l)
	most, above := 0.0, 0.0
	for k, girth := range l.girth {
		if l.sections[k] != nil {
			most, above = max(most, girth-start[k]), max(above, start[k])
		}
	}
	listed := len(w)
	if len(strakes) == 1 && !strakes[0].Count.OK() {
		listed = 0 // one row for the whole skin: its strakes are counted here
	}
	l.names, l.down, l.want = nil, nil, nil
	width := func(j int) float64 { return w[min(j, len(w)-1)] }
	at := 0.0
	for ; at > -above+1e-6 && l.first < mostAlike && width(l.first) > 0; l.first++ {
		at -= width(l.first)
	}
	for j := 0; ; j++ {
		row, want := make([]float64, len(l.girth)), make([]float64, len(l.girth))
		for k, girth := range l.girth {
			row[k], want[k] = start[k]+at, start[k]+at
			if l.sections[k] == nil || row[k] < -1e-9 || row[k] > girth*(1+1e-9) {
				row[k] = math.NaN()
			}
		}
		l.down, l.want = append(l.down, row), append(l.want, want)
		if at >= most-1e-6 || listed > 0 && j == listed || j == mostAlike || width(j) <= 0 {
			break
		}
		at += width(j)
		l.names = append(l.names, stripName(strakes, j, listed))
	}
	return append(found, h.countStrakes(l, listed, most-at)...)
}

// stripName is the name of the strake so many from the top.
func stripName(strakes []Strake, j, listed int) string {
	if listed == 0 {
		return fmt.Sprint(j + 1)
	}
	for _, s := range strakes {
		names := s.Names()
		if j < len(names) {
			return names[j]
		}
		j -= len(names)
	}
	return fmt.Sprint(j + 1)
}

// startLine is the girth from the sheer, at each station, of the line the strakes
// start on.
func (h *hull) startLine(l *lined) ([]float64, finding.List) {
	start := make([]float64, len(l.girth))
	name, set := h.r.PlanksFrom, "planks from"
	if l.skin == Strips {
		name, set = h.r.StripsFrom, "strips from"
	}
	if name == "" || strings.EqualFold(name, "sheer") {
		return start, nil
	}
	for _, p := range h.pairs {
		if !strings.EqualFold(p.name, name) {
			continue
		}
		for k, c := range l.sections {
			if c == nil {
				c = h.sections[k].line // of the stem itself, where no planking reaches the station
			}
			at, ok := h.place(p, k)
			at.x = h.x[k]
			if c == nil || !ok {
				start[k] = math.NaN()
				continue
			}
			start[k] = c.length() - c.lengthTo(c.closestTo(at))
		}
		fill(h.x, start)
		l.from = p.name
		return start, nil
	}
	return start, finding.List{{Kind: HullUnworked, Cell: l.cell, Reads: name, Do: fmt.Sprintf("name a line of the offsets in %q", set),
		Text: fmt.Sprintf("%ss are to start on %q, which is no line of the offsets: they are started at the sheer", l.skin, name)}}
}

// fill carries values on level, and straight between, to where they are not
// known.
func fill(x, v []float64) {
	last := -1
	for k := range v {
		if math.IsNaN(v[k]) {
			continue
		}
		for i := last + 1; i < k; i++ {
			if last < 0 {
				v[i] = v[k]
			} else {
				v[i] = v[last] + (v[k]-v[last])*(x[i]-x[last])/(x[k]-x[last])
			}
		}
		last = k
	}
	for i := last + 1; i < len(v); i++ {
		v[i] = 0
		if last >= 0 {
			v[i] = v[last]
		}
	}
}

// closestTo is the t of the place on the curve closest to a point near it.
func (c *curve) closestTo(p point) float64 {
	const parts = 8
	best, least := 0.0, math.Inf(1)
	for i := range len(c.t) - 1 {
		for j := range parts + 1 {
			t := c.t[i] + (c.t[i+1]-c.t[i])*float64(j)/parts
			if d := c.at(t).from(p); d < least {
				best, least = t, d
			}
		}
	}
	for range 10 { // square to the curve
		way := c.along(best)
		step := p.minus(c.at(best)).dot(way) / way.dot(way)
		best = max(0, min(c.t[len(c.t)-1], best+step))
		if math.Abs(step) < 1e-9 {
			break
		}
	}
	return best
}

// Widest is a strake's width where it is widest.
func (s Strake) Widest() measure.Length {
	w := s.Width.Value
	for _, v := range s.Widths {
		if v.OK() {
			w = max(w, v.Value)
		}
	}
	return w
}

// countStrakes says how many strakes the skin takes against those listed. Planks
// listed too few are told of by what remains below them.
func (h *hull) countStrakes(l *lined, listed int, left float64) finding.List {
	short := left > h.r.SumWithin.Inches()
	switch {
	case listed == 0 || short && l.skin != Strips:
		return nil
	case short:
		return finding.List{{Kind: LiningSum, Cell: l.cell,
			Text: fmt.Sprintf("the %d strips listed stop %s short of the rabbet at the fullest %s", listed, h.r.Units.Small(measure.Inches(left)), h.o.Places)}}
	case listed > len(l.names):
		return finding.List{{Kind: LiningSum, Cell: l.cell,
			Text: fmt.Sprintf("%d %ss a side cover the hull at its fullest %s and %d are listed", len(l.names), l.skin, h.o.Places, listed)}}
	}
	return nil
}

// listedMarks is the widths by station of the list of strakes as marks.
func listedMarks(l *lined, strakes []Strake) SeamMarks {
	m := SeamMarks{Skin: l.skin, Side: l.side, Cell: l.cell}
	for _, s := range strakes {
		if len(m.Stations) == 0 {
			m.Stations = s.WidthAt
		}
	}
	for _, s := range strakes {
		values := make([]source.Reading[measure.Length], len(m.Stations))
		for i, st := range m.Stations {
			for k, w := range s.WidthAt {
				if strings.EqualFold(w.Name, st.Name) && k < len(s.Widths) {
					values[i] = s.Widths[k]
				}
			}
		}
		for _, name := range s.Names() {
			m.Seams = append(m.Seams, SeamMark{Strake: name, Values: values, Cell: s.Cell})
		}
	}
	return m
}
