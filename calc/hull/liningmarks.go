package hull

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"gonum.org/v1/gonum/interp"

	"strakebook/calc/fair"
	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// byMarks lays the seams on the builder's own marks. Between the stations marked each
// strake's part of the girth runs smoothly from one to the next; before the first of
// all and after the last it keeps it. A strake left blank at a station where others are
// marked is drawn on by its own marks. Where the marks come to more than the girth the
// last strake has what remains of it.
func (h *hull) byMarks(l *lined, m SeamMarks) finding.List {
	n := len(m.Seams)
	l.names = make([]string, n)
	l.down = make([][]float64, n+1)
	l.down[0], l.shared = make([]float64, len(l.girth)), make([]bool, len(l.girth))
	for k := range l.girth {
		if l.sections[k] == nil {
			l.down[0][k] = math.NaN()
		}
	}
	var found finding.List
	middles := m.middles()
	at, first, last := h.markedAt(m), -1, -1
	if len(at) > 0 {
		first, last = at[0], at[len(at)-1]
	}
	for j, s := range m.Seams {
		l.names[j] = s.Strake
		marked := h.spread(m.Stations, s)
		if m.Kind == MarkWidths {
			h.ownPart(l, m, s, marked, first, last)
		}
		l.marked = append(l.marked, marked)
		l.down[j+1] = l.seamDown(m.Kind, j, marked, j == n-1, h.r.SumWithin.Inches())
		if odd := h.oddWidth(m, j, middles); len(odd) > 0 {
			found = append(found, odd...)
		} else {
			found = append(found, h.humps(l, m, s)...)
		}
		if m.Kind != MarkWidths {
			found = append(found, h.beyondGirth(l, m, s)...)
		}
	}
	at = slices.DeleteFunc(at, func(k int) bool { return l.sections[k] == nil })
	h.shareBetween(l, at)
	found = append(found, h.carryOn(l, m, first, last)...)
	l.markShared(m.Kind)
	for j, s := range m.Seams {
		found = append(found, h.widthGaps(m, s, l.marked[j], first, last)...)
	}
	return append(found, h.sums(l, m, at)...)
}

// seamDown is how far down the girth a seam lies by its marks at every station, NaN
// where they put it beyond the girth by more than widths may be out, or above the seam
// before it.
func (l *lined) seamDown(kind MarkKind, j int, marked []float64, last bool, within float64) []float64 {
	row := make([]float64, len(l.girth))
	for k, girth := range l.girth {
		switch {
		case l.sections[k] == nil:
			row[k] = math.NaN()
		case kind == MarkWidths:
			row[k] = l.down[j][k] + marked[k]
		case kind == MarkFromRabbet:
			row[k] = girth - marked[k]
		default:
			row[k] = marked[k]
		}
		if last && row[k] > girth && l.down[j][k] < girth {
			row[k] = girth // the last strake takes what remains to the rabbet
		}
		if row[k] > girth+within || row[k] < l.down[j][k] {
			row[k] = math.NaN()
		}
	}
	return row
}

// spread is a strake's marks at every station of the hull; NaN beyond them.
func (h *hull) spread(stations []Station, s SeamMark) []float64 {
	var x, v []float64
	for k, st := range h.o.Stations {
		for i, m := range stations {
			if strings.EqualFold(m.Name, st.Name) && i < len(s.Values) && s.Values[i].OK() {
				x, v = append(x, h.x[k]), append(v, s.Values[i].Value.Inches())
			}
		}
	}
	all := make([]float64, len(h.x))
	var c interp.FritschButland
	drawn := len(x) > 1 && increasing(x) && c.Fit(x, v) == nil
	for k, at := range h.x {
		all[k] = math.NaN()
		if drawn && at >= x[0] && at <= x[len(x)-1] {
			all[k] = c.Predict(at)
		}
	}
	return all
}

func increasing(x []float64) bool {
	for i := 1; i < len(x); i++ {
		if x[i] <= x[i-1] {
			return false
		}
	}
	return true
}

// humps finds the mark at which a seam has a hollow or a hump: the one farthest off
// the curve of its neighbours, and farther than the yard allows. Between stations
// far apart the girth itself bends more than a curve through a few marks does: a
// hump shows in the parts of the girth too.
func (h *hull) humps(l *lined, m SeamMarks, s SeamMark) finding.List {
	row, most := fair.Row{}, 0.0
	var at []int
	for i, st := range m.Stations {
		if k := h.station(st.Name); k >= 0 && i < len(s.Values) && s.Values[i].OK() && (len(row.X) == 0 || h.x[k] > row.X[len(row.X)-1]) {
			row.X, row.Y, row.Given = append(row.X, h.x[k]), append(row.Y, s.Values[i].Value.Inches()), append(row.Given, true)
			at = append(at, i)
		}
	}
	worst, off := farthest(row, h.r.SeamWithin)
	if off == 0 {
		return nil
	}
	parts := fair.Row{X: row.X, Y: slices.Clone(row.Y), Given: row.Given}
	for _, girth := range l.girth {
		most = max(most, girth)
	}
	for n, i := range at {
		if girth := l.girth[h.station(m.Stations[i].Name)]; girth > 0 {
			parts.Y[n] *= most / girth
		}
	}
	if _, off := farthest(parts, h.r.SeamWithin); off == 0 {
		return nil
	}
	v := s.Values[at[worst]]
	word := "hump"
	if (off < 0) != (m.Kind == MarkFromRabbet) {
		word = "hollow"
	}
	return finding.List{{Kind: SeamHollow, Cell: v.Cell, Reads: v.Text, Suggests: "about " + h.write(v.Value-measure.Inches(off)),
		Text: fmt.Sprintf("the seam below strake %s has a %s at %s", s.Strake, word, h.o.Places.Named(m.Stations[at[worst]].Name))}}
}

// beyondGirth finds the mark that lies farthest beyond the other end of the
// girth.
func (h *hull) beyondGirth(l *lined, m SeamMarks, s SeamMark) finding.List {
	worst, most := -1, h.r.SumWithin
	girth := func(i int) measure.Length { return measure.Inches(l.girth[h.station(m.Stations[i].Name)]) }
	for i, st := range m.Stations {
		k := h.station(st.Name)
		if k < 0 || l.sections[k] == nil || i >= len(s.Values) || !s.Values[i].OK() {
			continue
		}
		if over := s.Values[i].Value - girth(i); over > most {
			worst, most = i, over
		}
	}
	if worst < 0 {
		return nil
	}
	return finding.List{{Kind: LiningSum, Cell: s.Values[worst].Cell, Reads: s.Values[worst].Text,
		Text: fmt.Sprintf("the seam below strake %s is marked %s beyond the girth at %s, which is %s %s", s.Strake,
			h.write(most), h.o.Places.Named(m.Stations[worst].Name), h.write(girth(worst)), l.where())}}
}

// without is a row with one value withdrawn.
func without(r fair.Row, i int) fair.Row {
	r.Given = append([]bool{}, r.Given...)
	r.Given[i] = false
	return r
}

// station is the place of the station of a name, -1 where there is none.
func (h *hull) station(name string) int {
	for k, s := range h.o.Stations {
		if strings.EqualFold(s.Name, name) {
			return k
		}
	}
	return -1
}

// place is the place of a station among those marked; -1 where it is none.
func (m SeamMarks) place(station string) int {
	return slices.IndexFunc(m.Stations, func(s Station) bool { return strings.EqualFold(s.Name, station) })
}

// at is the cell of the first strake's mark at a station.
func (m SeamMarks) at(i int) source.Cell {
	if v := m.Seams[0].Values; i >= 0 && i < len(v) && v[i].Cell.Row > 0 {
		return v[i].Cell
	}
	return m.Seams[0].Cell
}
