package read

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// part is lines of one table that are written alike: all of them, unless titles
// or labels within say units of their own.
type part struct {
	said measure.Form
	dec  decision
	rows []int
}

// offsets reads a table of offsets.
func (r *reader) offsets(t *stationTable) {
	said, two, forced := r.offsetsUnit(t)
	lines := r.linesOf(t)
	_, cols, sums := quietly(r, func() ([]hull.Station, []int, []name) { return r.stationsOf(t, measure.Form{}) })
	if said == (measure.Form{}) && !two && t.ofMaxima(sums, lines, cols) {
		said = measure.Form{Unit: measure.Fractions}
	}
	parts := r.partsOf(t, lines, cols, said, two, forced)
	main := slices.MaxFunc(parts, func(a, b part) int { return len(a.rows) - len(b.rows) })
	table := t.found("offsets", main.dec)
	table.Mixed = len(parts) > 1
	o := hull.Offsets{Form: main.dec.form, Cell: t.place(t.head, t.labelAt())}
	open := r.offsetsAsked(main.dec, two, o.Cell)
	if open {
		o.Form.Unit = measure.Fractions
		for i := range parts {
			parts[i].dec.form.Unit = measure.Fractions
		}
	}
	o.Fractions = o.Form.Unit == measure.Fractions
	o.Surface = r.surfaceOf(t.wordsAbout(), t.page, o.Cell)
	o.Stations, _, _ = r.stationsOf(t, o.Form)
	table.Digest = r.lineFigures(t, lines, parts, cols, open)
	r.chosen(lines)
	r.tableRead()
	r.levels(lines, t, o.Form)
	r.diagonalsSaid(lines)
	r.asMeasured(lines, o.Form)
	for _, s := range sums {
		r.maxima(t, s, lines, o)
	}
	for _, l := range lines {
		o.Lines = append(o.Lines, l.line)
	}
	r.viewsAsked(lines)
	r.sidingsIn(lines, t)
	o.Resolution = resolution(o.Form, t.decimals(lines, cols), given(o.Lines))
	r.textNumbers(t, cols, o.Form)
	table.Stations, table.Lines = len(o.Stations), len(o.Lines)
	r.tables = append(r.tables, table)
	r.keep(o, t.wordsOver)
}

// offsetsUnit is how a table of offsets is said to be written, whether two units are
// said, and whether it is the guide that says. What heads the lines' own heights says
// their unit, and the figures' where nothing else does.
func (r *reader) offsetsUnit(t *stationTable) (said measure.Form, two, forced bool) {
	if said, forced = r.guideForm(t.page, t); forced {
		return said, false, true
	}
	heads, own := r.heightHeads(t), t.ownWords()
	own = slices.DeleteFunc(own, func(w string) bool { return slices.Contains(heads, w) })
	said, two = r.formOf(t.page, own, append(slices.Clone(t.caption), heads...))
	if said == (measure.Form{}) && !two {
		said = r.titleForm(t)
	}
	return said, two, false
}

// titleForm is how the one title of offsets on a sheet says that they are written, for a
// part of them under a title of its own that says nothing of it: Half-breadths.
func (r *reader) titleForm(t *stationTable) (said measure.Form) {
	for _, w := range t.titlesOver() {
		if r.words.has(w, "offsets") {
			return measure.Form{} // a table of its own
		}
	}
	_, titles := t.sheetWords()
	for _, w := range titles {
		form, ok, two := says(w)
		switch {
		case !r.words.has(w, "offsets"):
		case !ok, two, said != (measure.Form{}) && said != form:
			return measure.Form{}
		default:
			said = form
		}
	}
	return said
}

// offsetsAsked tells of figures that are written otherwise than their heading says,
// and asks for a unit where the table has none: it is open.
func (r *reader) offsetsAsked(d decision, two bool, at source.Cell) (open bool) {
	open = d.open || two && d.unmarked && d.form.Unit == measure.NoUnit && d.form.Notation >= measure.InchesFractions
	if open {
		r.add(finding.Finding{Kind: UnitOpen, Cell: at, Text: "the offsets are numbers without a unit: nothing is measured from them"})
	}
	if d.against != "" {
		r.add(finding.Finding{Kind: UnitAgainst, Cell: at, Reads: d.against,
			Text: fmt.Sprintf("the heading says %s, and the figures are written in %s", d.against, d.form.Notation)})
	}
	return open
}

// lineFigures reads the figures of every line and the place of each, and is all of
// them as written.
func (r *reader) lineFigures(t *stationTable, lines []tableLine, parts []part, cols []int, open bool) string {
	asked := map[int]bool{}
	var digest strings.Builder
	for i := range lines {
		l := &lines[i]
		p := parts[l.part]
		if p.dec.open && !open && !asked[l.part] {
			asked[l.part] = true
			r.add(finding.Finding{Kind: UnitOpen, Cell: l.line.Cell, Reads: l.line.Name, Text: fmt.Sprintf("%q and lines like it are numbers without a unit among others that have one", l.line.Name)})
		}
		r.placed(l, t, p.dec.form)
		what := fmt.Sprintf("%s of %s", l.line.View, l.line.Name)
		for _, col := range cols {
			v := r.lengthAt(t.see(l.row, col), p.dec, t.place(l.row, col), what)
			if open && v.OK() && v.Value != 0 && r.scaled() {
				v.State = source.Unread // a unit that is open is not a fraction of the beam
			}
			l.line.Values = append(l.line.Values, v)
			digest.WriteString(v.Text + ";")
		}
	}
	return digest.String()
}

// decimals is the most places that a figure of some lines is written with.
func (t *stationTable) decimals(lines []tableLine, cols []int) int {
	most := 0
	for _, l := range lines {
		most = max(most, weigh(t.cells(l.row, cols)).decimal)
	}
	return most
}

// quietly runs a reading whose findings are for a later one to make.
func quietly[A, B, C any](r *reader, f func() (A, B, C)) (A, B, C) {
	found, bare, two, doubted, between, bared := r.found, r.bareCells, r.twoWays, r.doubted, r.between, r.bared
	a, b, c := f()
	r.found, r.bareCells, r.twoWays, r.doubted, r.between, r.bared = found, bare, two, doubted, between, bared
	return a, b, c
}

// scaled says that the book gives what a table of fractions is multiplied by.
func (r *reader) scaled() bool { return r.rules.Hull.HalfBeam > 0 && r.rules.Hull.Draft > 0 }

func given(lines []hull.Line) []measure.Length {
	var all []measure.Length
	for _, l := range lines {
		for _, v := range l.Values {
			if v.OK() {
				all = append(all, v.Value)
			}
		}
	}
	return all
}

// partsOf groups the lines by what their own labels and titles say of their
// unit, and settles how each group is written.
func (r *reader) partsOf(t *stationTable, lines []tableLine, cols []int, said measure.Form, two, forced bool) []part {
	var parts []part
	for i := range lines {
		l := &lines[i]
		own := said
		if l.said != (measure.Form{}) && !forced {
			own = l.said
		}
		k := slices.IndexFunc(parts, func(p part) bool { return p.said == own })
		if k < 0 {
			k = len(parts)
			parts = append(parts, part{said: own})
		}
		parts[k].rows = append(parts[k].rows, l.row)
		l.part = k
	}
	for k := range parts {
		p := &parts[k]
		var cells []sheet.Cell
		var rows [][]sheet.Cell
		for _, row := range p.rows {
			line := t.cells(row, cols)
			rows = append(rows, line)
			cells = append(cells, line...)
		}
		r.dayCounts(t, p.rows, cols, cells)
		e := weigh(cells)
		p.dec = r.formed(e, p.said, r.bare, true)
		p.dec.torn(e, two)
		p.dec.dates = datesOf(rows, p.dec.form)
		var places []source.Cell
		for _, row := range p.rows {
			for _, col := range cols {
				places = append(places, t.place(row, col))
			}
		}
		r.pointed(p.dec, "offsets", cells, places)
	}
	if len(parts) == 0 {
		parts = []part{{said: said}}
	}
	return parts
}

// textNumbers notes the numbers that a table keeps as text.
func (r *reader) textNumbers(t *stationTable, cols []int, form measure.Form) {
	if form.Notation != measure.Decimal {
		return
	}
	var all []source.Cell
	texts, numbers := 0, 0
	for _, row := range t.lines {
		for _, col := range cols {
			switch c := t.see(row, col); {
			case c.Kind == sheet.Number:
				numbers++
			case c.Kind == sheet.Text && !measure.IsDash(c.Text) && measure.MarkedUnit(c.Text) == measure.NoUnit && !strings.Contains(c.Text, ","):
				all = append(all, t.place(row, col))
				texts++
			}
		}
	}
	if texts > 0 && numbers > 0 {
		r.add(finding.Finding{Kind: NumberAsText, Cell: all[0], Also: all[1:], Text: fmt.Sprintf("%s kept as text, at %s", plural(texts, "number is", "numbers are"), list(all))})
	}
}
