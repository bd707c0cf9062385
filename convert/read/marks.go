package read

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

var (
	hungText   = regexp.MustCompile(`\b(as hung|hung|last hung)\b`)
	rabbetText = regexp.MustCompile(`\bfrom (the )?(rabbet|keel)\b`)
	sheerText  = regexp.MustCompile(`\bfrom (the )?(sheer|deck)\b`)
	outerText  = regexp.MustCompile(`\boutside (corner|edge)\b`)
)

// marks reads a table of strakes by stations that holds lengths: the strakes'
// widths, the builder's marks of the seams, or girths measured to edges hung.
func (r *reader) marks(t *stationTable) {
	words := strings.ToLower(measure.Fold(strings.Join(append(t.ownWords(), t.caption...), "\n")))
	d, stations, cols := r.marksForm(t)
	read := r.seamReader(t)
	corner := t.place(t.head, t.labelAt())
	kind, ok := measuredFrom(t, words)
	if !ok {
		r.add(finding.Finding{Kind: ConventionOpen, Cell: corner, Text: "girths by station are given, and nothing says whether from the sheer or from the rabbet"})
		return
	}
	if outer := outside(strings.Split(words, "\n")); t.kind == "widths" && outer != "" {
		r.outsideAsked(outer, corner)
		return
	}
	table := t.found(t.kind, d)
	table.Stations = len(stations)
	hung := t.kind == "marks" && hungText.MatchString(words)
	var all []hull.SeamMarks
	for _, row := range t.lines {
		if r.sums(t, row) {
			r.summarised(t, row)
			continue
		}
		s := read(row)
		mark := hull.SeamMark{Strake: s.Strake, Cell: s.Cell}
		for _, col := range cols {
			what := fmt.Sprintf("%s of %s %s", map[bool]string{true: "width", false: "girth"}[t.kind == "widths"], s.Skin, s.Strake)
			v := r.lengthAt(t.see(row, col), d, t.place(row, col), what)
			mark.Values = append(mark.Values, v)
			table.Digest += v.Text + ";"
		}
		table.Lines++
		if hung {
			r.hungRow(mark, s.Skin, s.Side, stations, kind, outerText.MatchString(words))
			continue
		}
		k := slices.IndexFunc(all, func(m hull.SeamMarks) bool { return m.Skin == s.Skin && m.Side == s.Side })
		if k < 0 {
			k = len(all)
			all = append(all, hull.SeamMarks{Kind: kind, Skin: s.Skin, Side: s.Side, Stations: slices.Clone(stations), Cell: corner})
		}
		all[k].Seams = append(all[k].Seams, mark)
	}
	r.tableRead()
	r.tables = append(r.tables, table)
	r.job.Seams = append(r.job.Seams, all...)
}

// marksForm is how a table of marks is written, its stations and their columns.
func (r *reader) marksForm(t *stationTable) (d decision, stations []hull.Station, cols []int) {
	said, two := r.formOf(t.page, t.ownWords(), t.caption)
	if f, ok := r.guideForm(t.page, t); ok {
		said, two = f, false
	}
	_, cols, _ = quietly(r, func() ([]hull.Station, []int, []name) { return r.stationsOf(t, measure.Form{}) })
	var cells []sheet.Cell
	var rows [][]sheet.Cell
	for _, row := range t.lines {
		line := t.cells(row, cols)
		rows, cells = append(rows, line), append(cells, line...)
	}
	e := weigh(cells)
	d = r.formed(e, said, r.bare, false)
	d.torn(e, two)
	if d.open {
		r.add(finding.Finding{Kind: UnitOpen, Cell: t.place(t.head, t.labelAt()), Text: fmt.Sprintf("the %s by station are numbers without a unit", t.kind)})
	}
	stations, cols, _ = r.stationsOf(t, d.form)
	d.dates = datesOf(rows, d.form)
	return d, stations, cols
}

// measuredFrom is what the marks of a table are, by its words; not ok where they do
// not say from where girths were measured.
func measuredFrom(t *stationTable, words string) (kind hull.MarkKind, ok bool) {
	switch {
	case t.kind == "widths":
		return hull.MarkWidths, true
	case rabbetText.MatchString(words):
		return hull.MarkFromRabbet, true
	}
	return hull.MarkFromSheer, sheerText.MatchString(words)
}

// hungRow takes one strake's girths as hung.
func (r *reader) hungRow(m hull.SeamMark, skin hull.Skin, side hull.Side, stations []hull.Station, kind hull.MarkKind, outer bool) {
	h := hull.Hung{Skin: skin, Strake: m.Strake, Side: side, Cell: m.Cell}
	if kind == hull.MarkFromRabbet {
		h.From = hull.FromRabbet
	}
	if outer {
		h.Corner = hull.OutsideCorner
	}
	for i, s := range stations {
		h.Station, h.Girth = s.Name, m.Values[i]
		r.job.Hung = append(r.job.Hung, h)
	}
}

// widthsByStation gives the strakes of the list their widths by station, where a
// table of widths names no strake that the list does not; the rest are the
// builder's marks.
func (r *reader) widthsByStation() {
	var kept []hull.SeamMarks
	for _, m := range r.job.Seams {
		if m.Kind != hull.MarkWidths || !r.listed(m) {
			kept = append(kept, m)
			continue
		}
		for _, seam := range m.Seams {
			for i := range r.job.Strakes {
				s := &r.job.Strakes[i]
				if lacksWidths(*s, seam, m) {
					s.Widths, s.WidthAt = seam.Values, m.Stations
				}
			}
		}
	}
	r.job.Seams = kept
}

// listed says that every strake of a table of widths is in the list of strakes,
// without widths by station of its own.
func (r *reader) listed(m hull.SeamMarks) bool {
	for _, seam := range m.Seams {
		if !slices.ContainsFunc(r.job.Strakes, func(s hull.Strake) bool { return lacksWidths(s, seam, m) }) {
			return false
		}
	}
	return len(m.Seams) > 0
}

// lacksWidths says that a strake of the list is the one that marks are of, and has no
// widths by station of its own.
func lacksWidths(s hull.Strake, seam hull.SeamMark, m hull.SeamMarks) bool {
	return strings.EqualFold(s.Name, seam.Strake) && s.Skin == m.Skin && (s.Side == m.Side || m.Side == hull.BothSides) && s.Widths == nil
}
