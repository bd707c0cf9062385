package hull

import (
	"fmt"
	"math"
	"strings"

	"strakebook/calc/fair"
	"strakebook/calc/finding"
	"strakebook/calc/measure"
)

// hungLine is where an edge should lie at a station, and the planks below it.
type hungLine struct {
	wanted measure.Length
	next   []NextWidth // as lined off
}

// lineOf finds the lining-off line of a measured edge.
func (s *Shape) lineOf(g Hung, strakes []Strake, marks []SeamMarks) (hungLine, bool) {
	if line, ok := s.linedOff(g); ok {
		return line, true
	}
	for _, m := range marks {
		if (g.Skin == "" || m.Skin == g.Skin) && (m.Side == BothSides || g.Side == BothSides || m.Side == g.Side) {
			if line, ok := marked(g, m); ok {
				return line, true
			}
		}
	}
	return listed(g, strakes)
}

// linedOff is the hull's own line, of the side that is hung.
func (s *Shape) linedOff(g Hung) (hungLine, bool) {
	l, k, ok := s.StrakeOf(g.Skin, g.Strake, g.Side)
	if !ok {
		return hungLine{}, false
	}
	at := s.station(g.Station)
	if at < 0 || !l.Seams[k+1].Points[at].Crosses {
		return hungLine{}, false
	}
	p := l.Seams[k+1].Points[at]
	line := hungLine{wanted: p.Girth}
	whole := l.girths[at]
	if g.Corner == OutsideCorner {
		if !p.known {
			return hungLine{}, false
		}
		line.wanted, whole = p.outer, p.outerWhole
	}
	if g.From == FromRabbet {
		line.wanted = whole - line.wanted
	}
	for _, next := range l.Strakes[k+1:] {
		if w := next.Widths[at]; w > 0 {
			line.next = append(line.next, NextWidth{Strake: next.Name, Width: w})
		}
	}
	return line, true
}

// marked is the line by the builder's marks, which know no corners: they are
// taken to be where the girth was measured.
func marked(g Hung, m SeamMarks) (hungLine, bool) {
	at := -1
	for i, st := range m.Stations {
		if strings.EqualFold(st.Name, g.Station) {
			at = i
		}
	}
	value := func(j int) (measure.Length, bool) {
		v := m.Seams[j].Values
		if at >= len(v) {
			return 0, false
		}
		return v[at].Value, v[at].OK()
	}
	if at < 0 || (m.Kind == MarkFromRabbet) != (g.From == FromRabbet) {
		return hungLine{}, false
	}
	var line hungLine
	found, before := false, measure.Length(0)
	for j := range m.Seams {
		v, ok := value(j)
		if !ok {
			return line, found
		}
		width := v
		if m.Kind != MarkWidths {
			width = (v - before).Abs()
			before = v
		}
		switch {
		case found:
			line.next = append(line.next, NextWidth{Strake: m.Seams[j].Strake, Width: width})
		case m.Kind == MarkWidths:
			line.wanted += v
		default:
			line.wanted = v
		}
		found = found || strings.EqualFold(m.Seams[j].Strake, g.Strake)
	}
	return line, found
}

// listed is the line by the widths of the list of strakes, from the sheer down: those of
// the skin and side that the strake is listed on.
func listed(g Hung, strakes []Strake) (hungLine, bool) {
	plank, ok := Listed(strakes, g.Skin, g.Strake, g.Side)
	if g.From == FromRabbet || !ok {
		return hungLine{}, false
	}
	var line hungLine
	found := false
	for _, s := range strakes {
		if s.Skin != plank.Skin || s.Side != BothSides && plank.Side != BothSides && s.Side != plank.Side {
			continue
		}
		w, ok := s.widthAt(g.Station)
		if !ok {
			return line, found
		}
		for _, name := range s.Names() {
			if found {
				line.next = append(line.next, NextWidth{Strake: name, Width: w})
				continue
			}
			line.wanted += w
			found = strings.EqualFold(name, g.Strake)
		}
	}
	return line, found
}

// widthAt is a strake's width at a station: as listed there, else its one width.
func (s Strake) widthAt(station string) (measure.Length, bool) {
	for i, st := range s.WidthAt {
		if strings.EqualFold(st.Name, station) && i < len(s.Widths) && s.Widths[i].OK() {
			return s.Widths[i].Value, true
		}
	}
	return s.Width.Value, s.Width.OK() && len(s.WidthAt) == 0
}

// hungFindings says which edges are too far off to be brought back within the
// limit, the worst station of each, and which girths are out of the run.
func hungFindings(s *Shape, rows []HungRow, r Rules) finding.List {
	var found finding.List
	for from := 0; from < len(rows); {
		to := from
		for to < len(rows) && rows[to].Strake == rows[from].Strake && rows[to].Skin == rows[from].Skin && rows[to].Side == rows[from].Side {
			to++
		}
		edge := rows[from:to]
		worst := 0
		for i, row := range edge {
			if row.Back > edge[worst].Back {
				worst = i
			}
		}
		if w := edge[worst]; w.Back > max(1, r.BackAfter) {
			found = append(found, finding.Finding{Kind: HungOff, Cell: w.Cell,
				Text: fmt.Sprintf("%s at %s is %s %s its line: at %s a plank it takes %d planks to be back on it, more than %d",
					name(w), s.called(w.Station), r.Units.Small(w.Ahead.Abs()), aheadWord(w.Ahead), r.Units.Small(r.MostAPlank), w.Back, max(1, r.BackAfter))})
		}
		found = append(found, odd(s, edge, r)...)
		from = to
	}
	return found
}

func name(w HungRow) string { return words(Hung{Skin: w.Skin, Strake: w.Strake}) }

func aheadWord(l measure.Length) string {
	if l < 0 {
		return "behind"
	}
	return "ahead of"
}

// odd finds the girth of an edge that lies off the curve of its neighbours, by
// how far they are ahead.
func odd(s *Shape, edge []HungRow, r Rules) finding.List {
	row := fair.Row{}
	for i, e := range edge {
		x := float64(i)
		if s != nil {
			if k := s.station(e.Station); k >= 0 {
				x = s.Stations[k].At.Inches()
			}
		}
		if i > 0 && x <= row.X[i-1] {
			return nil // not in the order of the stations
		}
		row.X, row.Y, row.Given = append(row.X, x), append(row.Y, e.Ahead.Inches()), append(row.Given, true)
	}
	worst, off := -1, r.SeamWithin.Inches()
	for i := range edge {
		if want, ok := fair.Fill(without(row, i), i); ok && math.Abs(row.Y[i]-want) > off {
			worst, off = i, math.Abs(row.Y[i]-want)
		}
	}
	if worst < 0 {
		return nil
	}
	e := edge[worst]
	return finding.List{{Kind: HungOdd, Cell: e.Cell, Reads: r.Units.Long(e.Measured),
		Text: fmt.Sprintf("%s at %s is %s %s its line, off the run of its neighbours", name(e), s.called(e.Station), r.Units.Small(e.Ahead.Abs()), aheadWord(e.Ahead))}}
}
