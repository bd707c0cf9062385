package hull

import (
	"fmt"
	"math"
	"slices"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// WidthGap is a width by station that the list lacks where the strakes about it
// have theirs.
var WidthGap = &finding.Kind{
	Code: "width-gap", Severity: finding.Warning, Title: "width missing at a station",
	Why:    "A width left out is drawn by the batten's guess, or leaves the strakes below it without a seam to start from.",
	Remedy: "measure the width and write it",
}

// MarksShort is marks that do not reach the ends of the hull.
var MarksShort = &finding.Kind{
	Code: "marks-short", Severity: finding.Warning, Title: "marks that stop short of the ends",
	Why:    "Towards the ends strakes taper as the girth does only where the builder lets them: what is drawn there is a guess.",
	Remedy: "mark the seams, or write the widths, at the stations towards the ends too",
}

// oddPart is how much, of what the strakes about it say, a width of a strake
// inside the skin may be wider or narrower: our choice.
const oddPart = 0.25

// middles is the middle one of the widths marked at each station; 0 where fewer
// than four are.
func (m SeamMarks) middles() []float64 {
	all := make([]float64, len(m.Stations))
	for i := range m.Stations {
		var w []float64
		for _, s := range m.Seams {
			if i < len(s.Values) && s.Values[i].OK() {
				w = append(w, s.Values[i].Value.Inches())
			}
		}
		if len(w) >= 4 {
			slices.Sort(w)
			all[i] = w[len(w)/2]
		}
	}
	return all
}

// usual is what the strakes about it say of each width of a strake: the middle one
// at the station in the proportion the strake has to the others along the hull;
// nothing where too few are marked.
func (m SeamMarks) usual(s SeamMark, middles []float64) []float64 {
	var parts []float64
	for i, v := range s.Values {
		if i < len(middles) && middles[i] > 0 && v.OK() {
			parts = append(parts, v.Value.Inches()/middles[i])
		}
	}
	if m.Kind != MarkWidths || len(parts) < 3 {
		return nil
	}
	slices.Sort(parts)
	all := make([]float64, len(middles))
	for i := range middles {
		all[i] = middles[i] * parts[len(parts)/2]
	}
	return all
}

// oddest is the place of the width that lies farthest off what the strakes about
// it say, and how far it lies above that; not ok where none is known.
func (s SeamMark) oddest(usual []float64) (at int, off float64, ok bool) {
	for i, v := range s.Values {
		if i >= len(usual) || usual[i] == 0 || !v.OK() {
			continue
		}
		if d := v.Value.Inches() - usual[i]; !ok || math.Abs(d) > math.Abs(off) {
			at, off, ok = i, d, true
		}
	}
	return at, off, ok
}

// oddWidth finds the width that is far from what the strakes about it say. A sheer
// strake or a garboard has a shape of its own and is not held to the others.
func (h *hull) oddWidth(m SeamMarks, j int, middles []float64) finding.List {
	if j == 0 || j == len(m.Seams)-1 {
		return nil
	}
	s := m.Seams[j]
	usual := m.usual(s, middles)
	at, off, ok := s.oddest(usual)
	if !ok || math.Abs(off) <= max(h.r.SeamWithin.Inches(), oddPart*usual[at]) {
		return nil
	}
	word := "wider"
	if off < 0 {
		word = "narrower"
	}
	v := s.Values[at]
	return finding.List{{Kind: SeamHollow, Cell: v.Cell, Reads: v.Text, Suggests: "about " + h.write(measure.Inches(usual[at])), Do: "check the figure, and spring a batten through the marks before lining off",
		Text: fmt.Sprintf("strake %s is %s %s at %s than the strakes about it say", s.Strake, h.write(measure.Inches(math.Abs(off))), word, h.o.Places.Named(m.Stations[at].Name))}}
}

// ownPart draws a strake's widths at the stations at its ends where others are
// marked and it is left blank: in proportion to the girth from its nearest width.
// Where a dash says that it has ended nothing is drawn.
func (h *hull) ownPart(l *lined, m SeamMarks, s SeamMark, marked []float64, from, to int) {
	for _, step := range []int{1, -1} {
		k := from
		if step < 0 {
			k = to
		}
		end := k
		for h.has(k) && math.IsNaN(marked[k]) {
			k += step
		}
		if !h.has(k) || l.girth[k] == 0 {
			return
		}
		part := marked[k] / l.girth[k]
		for k -= step; (k-end)*step >= 0; k -= step {
			i := m.place(h.o.Stations[k].Name)
			if i >= 0 && i < len(s.Values) && s.Values[i].State == source.Dash {
				break
			}
			marked[k] = part * l.girth[k]
		}
	}
}

// widthGaps finds the marks that a strake lacks between or beyond its own, where others
// have theirs.
func (h *hull) widthGaps(m SeamMarks, s SeamMark, drawn []float64, from, to int) finding.List {
	first, last := -1, -1
	for i, st := range m.Stations {
		if i < len(s.Values) && s.Values[i].OK() && h.station(st.Name) >= 0 {
			if first < 0 {
				first = i
			}
			last = i
		}
	}
	what := "mark"
	if m.Kind == MarkWidths {
		what = "width"
	}
	var found finding.List
	for i, st := range m.Stations {
		k := h.station(st.Name)
		if k < from || k > to || i >= len(s.Values) || s.Values[i].OK() || s.Values[i].State == source.Unread {
			continue
		}
		f := finding.Finding{Kind: WidthGap, Cell: s.Values[i].Cell, Text: fmt.Sprintf("strake %s has no %s at %s", s.Strake, what, h.o.Places.Named(st.Name))}
		switch {
		case first >= 0 && i > first && i < last && !math.IsNaN(drawn[k]):
			f.Suggests = "about " + h.write(measure.Inches(drawn[k]))
			f.Text += fmt.Sprintf(": %s is drawn, between those at %ss %s and %s", h.write(measure.Inches(drawn[k])), h.o.Places, m.Stations[first].Name, m.Stations[last].Name)
		case !math.IsNaN(drawn[k]):
			f.Suggests = "about " + h.write(measure.Inches(drawn[k]))
			f.Text += fmt.Sprintf(": %s is drawn, for its part of the girth where it is marked", h.write(measure.Inches(drawn[k])))
			f.Do = "write the width, or a dash where the strake has ended"
		case m.Kind == MarkWidths:
			f.Text += ": the strakes below it are not drawn there"
			f.Do = "write the width, or give the seams as girths from the sheer where a strake ends"
		default:
			continue
		}
		if f.Cell.Row == 0 {
			f.Cell = s.Cell
		}
		found = append(found, f)
	}
	return found
}
