package read

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// countText is a count with the word that lists of pieces put after it: 12 off,
// 4 pcs, or the multiplying mark: x2. Pairs and sets are more than they say, and
// are asked.
var countText = regexp.MustCompile(`^(?:(\d+) ?(?:off|of|pcs?\.?|pieces?|nr\.?|no\.?|nos\.?|ea\.?|each|x|×)|(?:x|×|no\.?|qty\.?) ?(\d+))$`)

// strakes reads a list of strakes. An empty skin is that of the row above, as
// lists are often kept.
func (r *reader) strakes(t *records) {
	table := t.found("strakes")
	t.runHeaded()
	r.otherSizes(t)
	both := r.ofBothSides(t)
	cols := r.lengths(t, &table, "thickness", "width", "length", portLength, starboardLength, "start", "scarfrun")
	skin := hull.Skin("")
	for _, c := range t.caption {
		if skin = r.skinIn(c); skin != "" {
			break
		}
	}
	widths, first := r.widthColumns(t), len(r.job.Strakes)
	outer := outside(r.wordsOfWidths(t))
	for _, row := range t.rows {
		name := t.text(row, "strake")
		if name == "" {
			r.unnamed(t, row, "strake")
			continue
		}
		if s := skinOf(t.text(row, "skin")); s != "" {
			skin = s
		}
		if skin == "" {
			skin = hull.Planks
		}
		what := func(field string) string { return fmt.Sprintf("%s of %s %s", field, skin, name) }
		if r.countsNone(t, row, fmt.Sprintf("%s %s", skin, name)) {
			continue
		}
		size := func(field string) source.Reading[measure.Length] {
			return r.ofStrake(r.length(t, row, field, cols, what(field)), what(field))
		}
		s := hull.Strake{
			Name: name, Skin: skin, Side: sideOf(t.text(row, "side")), Species: t.text(row, "species"),
			From: t.text(row, "from"), To: t.text(row, "to"), Cell: t.page.cell(row, t.cols["strake"]),
			Count:     r.count(t, row, "count", what("count")),
			Thickness: size("thickness"),
			Width:     size("width"),
			Length:    size("length"),
			Start:     r.length(t, row, "start", cols, what("start")),
			Slope:     r.slope(t, row, what("scarf slope")),
		}
		s.Slope = r.runOfScarf(t, row, cols, s.Slope, what("run of scarfs"))
		if both != "" {
			s.Count = r.aSide(s.Count, s.Side, what("count"))
		}
		s.Clear = r.clear(t, row, cols, what("stretch without joints"))
		s.Widths, s.WidthAt = widths(row, what("width"))
		r.outsides[s.Cell] = outer
		table.Digest += fmt.Sprint(s.Name, s.Skin, s.Side, s.Thickness.Value, s.Width.Value, s.Length.Value, ";")
		r.job.Strakes = append(r.job.Strakes, r.sided(t, row, cols, s)...)
	}
	r.spanned(r.job.Strakes[first:])
	r.tableRead()
	r.tables = append(r.tables, table)
}

// unnamed reports a row of a list that does not say what it is a row of.
func (r *reader) unnamed(t *records, row int, field string) {
	r.add(finding.Finding{Kind: RowUnnamed, Cell: t.page.cell(row, t.cols[field]), Text: fmt.Sprintf("a row of the %s names no %s and was left", t.kind.name, field)})
}

// wordsOfWidths is what heads the widths of a list, stands over it, and is remarked
// beside it.
func (r *reader) wordsOfWidths(t *records) []string {
	remarks, _ := t.page.sheetWords()
	words := slices.Concat(t.caption, remarks)
	if col, ok := t.cols["width"]; ok {
		words = append(words, t.heads[col])
	}
	for _, n := range t.names {
		words = append(words, t.heads[n.col])
	}
	return words
}

// widthColumns reads the widths by station of a list of strakes that has the
// stations among its headings.
func (r *reader) widthColumns(t *records) func(row int, what string) ([]source.Reading[measure.Length], []hull.Station) {
	if len(t.names) == 0 {
		return func(int, string) ([]source.Reading[measure.Length], []hull.Station) { return nil, nil }
	}
	for _, n := range t.names {
		r.useHead(t.page, t.head, n.col)
		if n.ofWidth && n.numbered && !n.worded {
			r.numbered[t.page.cell(t.head, n.col)] = true
		}
		r.call(t.page.cell(t.head, n.col), t.page.raw(t.head, n.col), t.heads[n.col])
		r.fineColumn(t, n.col)
	}
	var cells []sheet.Cell
	for _, row := range t.rows {
		for _, n := range t.names {
			cells = append(cells, t.page.at(row, n.col))
		}
	}
	said, ok := t.said["width"]
	if !ok {
		said, _ = r.formOf(t.page, nil, t.caption)
	}
	for col, h := range t.heads {
		if form, ok := headUnit(h); ok && r.words.has(h, "width") && col == t.names[0].col {
			said = form
		}
		if form, ok := widthUnit(h); ok && col == t.names[0].col {
			said = form
		}
	}
	if form, ok := t.said["widths"]; ok {
		said = form
	}
	d := r.formed(weigh(cells), said, r.bare, false)
	if d.open {
		r.add(finding.Finding{Kind: UnitOpen, Cell: t.page.cell(t.head, t.names[0].col), Text: "the widths by station are numbers without a unit"})
	}
	return func(row int, what string) (all []source.Reading[measure.Length], at []hull.Station) {
		any := false
		for _, n := range t.names {
			c := t.page.raw(row, n.col)
			t.page.use(row, n.col)
			any = any || filled(c)
			all = append(all, r.lengthAt(c, d, t.page.cell(row, n.col), what+" at station "+n.text))
			at = append(at, hull.Station{Name: n.text, Transom: n.transom, Cell: t.page.cell(t.head, n.col)})
		}
		if !any {
			return nil, nil
		}
		return all, at
	}
}

// clear reads the stretches in which no joint may fall: "12-0-0 to 16-0-0".
func (r *reader) clear(t *records, row int, cols map[string]column, what string) []hull.Reach {
	c, at, ok := t.cell(row, "clear")
	if !ok || c.Kind == sheet.Empty || measure.IsDash(c.Text) {
		return nil
	}
	form := cols["length"].form
	if f, ok := t.said["clear"]; ok {
		form = f
	}
	var all []hull.Reach
	for _, one := range strings.FieldsFunc(c.Text, func(r rune) bool { return r == ';' }) {
		from, to, ok := strings.Cut(measure.Fold(one), " to ")
		a, errA := form.Length(from)
		b, errB := form.Length(to)
		if !ok || errA != nil || errB != nil || b <= a {
			r.add(finding.Finding{Kind: LengthUnread, Cell: at, Reads: text(c), Text: fmt.Sprintf("%s reads %q: expected two lengths such as %s to %s", what, text(c), form.Write(10*measure.Foot), form.Write(14*measure.Foot))})
			continue
		}
		all = append(all, hull.Reach{From: a, To: b})
	}
	return all
}

// skinOf is the skin that a text names; "" for none.
func skinOf(text string) hull.Skin {
	t := plainWords(text)
	switch {
	case t == "":
		return ""
	case strings.Contains(t, "strip") || t == "first" || t == "first skin" || t == "inner":
		return hull.Strips
	case strings.Contains(t, "plank") || strings.Contains(t, "carvel") || t == "second" || t == "second skin" || t == "outer":
		return hull.Planks
	case len(strings.Fields(t)) > 2:
		return "" // a sentence, not a name
	}
	return hull.Skin(t)
}

// sideOf is the side that a text names; both where it names none.
func sideOf(text string) hull.Side {
	switch plainWords(text) {
	case "p", "port", "larboard":
		return hull.Port
	case "s", "stbd", "starboard", "sb":
		return hull.Starboard
	}
	return hull.BothSides
}
