package hull

import (
	"cmp"
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
		row := make([]float64, len(l.girth))
		for k, girth := range l.girth {
			switch {
			case l.sections[k] == nil:
				row[k] = math.NaN()
			case m.Kind == MarkWidths:
				row[k] = l.down[j][k] + marked[k]
			case m.Kind == MarkFromRabbet:
				row[k] = girth - marked[k]
			default:
				row[k] = marked[k]
			}
			if j == n-1 && row[k] > girth && l.down[j][k] < girth {
				row[k] = girth // the last strake takes what remains to the rabbet
			}
			if row[k] > girth+h.r.SumWithin.Inches() || row[k] < l.down[j][k] {
				row[k] = math.NaN()
			}
		}
		l.down[j+1] = row
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

// sums holds the widths at every station, those marked and those drawn between and
// beyond them, against the girth there. A skin whose widths do not add up is told of
// once, at the station farthest out, with every other that is out after it, the
// farthest first.
func (h *hull) sums(l *lined, m SeamMarks, at []int) finding.List {
	if m.Kind != MarkWidths {
		return nil
	}
	var all []sumOff
	over := false
	for k := range h.o.Stations {
		sum, girth, ok := h.sum(l, m, k)
		if off := sum - girth; ok && off.Abs() > h.r.SumWithin {
			all = append(all, sumOff{k, sum, girth})
			over = over || off > 0
		}
	}
	if len(all) == 0 {
		return nil
	}
	slices.SortStableFunc(all, func(a, b sumOff) int { return cmp.Compare(b.off().Abs(), a.off().Abs()) })
	worst := all[0]
	f := finding.Finding{Kind: LiningSum, Cell: h.cellNear(m, at, worst.at)}
	as := " as drawn"
	if slices.Contains(at, worst.at) {
		as, f.Reads, f.Suggests = "", h.write(worst.sum), h.write(worst.girth)
	}
	f.Text = fmt.Sprintf("the %s widths%s at %s add up to %s, %s than the girth %s", l.skin, as, h.o.called(worst.at), h.write(worst.sum), h.offBy(worst), l.where())
	if as != "" {
		f.Text += " of " + h.write(worst.girth)
	}
	var others []string
	for _, o := range all[1:] {
		others = append(others, fmt.Sprintf("at %s %s", h.o.called(o.at), h.offBy(o)))
		if c := h.cellNear(m, at, o.at); c != f.Cell && !slices.Contains(f.Also, c) {
			f.Also = append(f.Also, c)
		}
	}
	if len(others) > 0 {
		f.Text += "; " + strings.Join(others, ", ")
	}
	if over {
		f.Text += fmt.Sprintf(": where they are more, %s %s is drawn with what remains to the rabbet", l.skin, m.Seams[len(m.Seams)-1].Strake)
	}
	return finding.List{f}
}

// sumOff is a station whose widths together are not its girth.
type sumOff struct {
	at         int // of the hull
	sum, girth measure.Length
}

func (o sumOff) off() measure.Length { return o.sum - o.girth }

// offBy is how far the widths of a station are off its girth, in words.
func (h *hull) offBy(o sumOff) string {
	if o.off() < 0 {
		return h.write(-o.off()) + " less"
	}
	return h.write(o.off()) + " more"
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

// cellNear is the cell of the first strake's mark at the station marked that is nearest
// to one of the hull.
func (h *hull) cellNear(m SeamMarks, at []int, k int) source.Cell {
	if len(at) == 0 {
		return m.at(-1)
	}
	near := slices.MinFunc(at, func(a, b int) int {
		return cmp.Compare(math.Abs(h.x[a]-h.x[k]), math.Abs(h.x[b]-h.x[k]))
	})
	return m.at(m.place(h.o.Stations[near].Name))
}

// sum is the widths at one station together, those marked and those drawn, and the
// girth there; not ok where one of them is missing.
func (h *hull) sum(l *lined, m SeamMarks, k int) (sum, girth measure.Length, ok bool) {
	if l.sections[k] == nil {
		return 0, 0, false
	}
	i := m.place(h.o.Stations[k].Name)
	for j, s := range m.Seams {
		switch w := l.marked[j][k]; {
		case i >= 0 && i < len(s.Values) && s.Values[i].OK():
			sum += s.Values[i].Value
		case math.IsNaN(w):
			return 0, 0, false
		default:
			sum += measure.Inches(w)
		}
	}
	return sum, measure.Inches(l.girth[k]), true
}
