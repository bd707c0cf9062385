package hull

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

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
