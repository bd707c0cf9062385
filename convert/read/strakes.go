package read

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// column is how the lengths of one column are written.
type column struct {
	form   measure.Form
	open   bool
	digest evidence
}

// lengths decides each length column of a table by itself.
func (r *reader) lengths(t *records, table *source.Table, fields ...string) map[string]column {
	all := map[string]column{}
	for _, f := range fields {
		if _, ok := t.cols[f]; !ok {
			continue
		}
		e := weigh(t.column(f))
		form, why, open := decide(e, t.said[f], r.bare)
		all[f] = column{form, open, e}
		if open {
			r.add(finding.Finding{Kind: UnitOpen, Cell: t.page.cell(t.head, t.cols[f]),
				Text: fmt.Sprintf("the column %q of the %s holds numbers without a unit", text(t.page.sheet.At(t.head, t.cols[f])), table.Table)})
		}
		for _, w := range why {
			table.Evidence = append(table.Evidence, f+": "+w)
		}
		if table.Unit == "" && form.Unit != measure.NoUnit {
			table.Unit = form.Unit.String()
		}
		if form.Notation > 0 && (table.Notation == "" || f == "length") {
			table.Notation = form.Notation.String()
		}
	}
	return all
}

// length reads one length field of a record. Where its column's unit is open it
// is unread, and the column has been reported.
func (r *reader) length(t *records, row int, field string, cols map[string]column, what string) source.Reading[measure.Length] {
	c, at, ok := t.see(row, field)
	if !ok {
		return source.Reading[measure.Length]{}
	}
	v, unread := length(c, cols[field].form, at)
	switch {
	case unread == nil:
	case unread.Fault == measure.UnitOpen && cols[field].open:
	case c.Kind == sheet.Date || c.Kind == sheet.Time:
		r.dateAsked(what, c, at, cols[field].form)
	default:
		r.unreadable(what, v, unread)
	}
	return v
}

// number reads a bare number field.
func (r *reader) number(t *records, row int, field, what string) source.Reading[float64] {
	c, at, ok := t.see(row, field)
	v := source.Reading[float64]{Text: text(c), Cell: at}
	if !ok {
		return v
	}
	switch {
	case c.Kind == sheet.Number:
		v.Value, v.State = c.Number, source.Given
	case c.Kind == sheet.Text && measure.IsDash(c.Text):
		v.State = source.Dash
	case c.Kind == sheet.Text:
		s := strings.NewReplacer("$", "", "£", "", "€", "", ",", "").Replace(measure.Fold(c.Text))
		f, err := strconv.ParseFloat(strings.TrimSpace(s), 64)
		if err != nil || f != f || f > 1e12 || f < -1e12 {
			v.State = source.Unread
			r.add(finding.Finding{Kind: NumberUnread, Cell: at, Reads: v.Text, Text: fmt.Sprintf("%s reads %q: expected a number", what, v.Text)})
			break
		}
		v.Value, v.State = f, source.Given
	case c.Kind != sheet.Empty || c.Formula != "":
		v.State = source.Unread
		r.add(finding.Finding{Kind: NumberUnread, Cell: at, Reads: v.Text, Text: fmt.Sprintf("%s reads %q: expected a number", what, v.Text)})
	}
	return v
}

// count reads a whole number field.
func (r *reader) count(t *records, row int, field, what string) source.Reading[int] {
	v := r.number(t, row, field, what)
	out := source.Reading[int]{State: v.State, Text: v.Text, Cell: v.Cell}
	if v.OK() {
		if v.Value != float64(int(v.Value)) || v.Value < 0 || v.Value > 100_000 {
			out.State = source.Unread
			r.add(finding.Finding{Kind: NumberUnread, Cell: v.Cell, Reads: v.Text, Text: fmt.Sprintf("%s reads %q: expected a whole number from 0 to 100000", what, v.Text)})
		}
		out.Value = int(v.Value)
	}
	return out
}

// strakes reads a list of strakes. An empty skin or side is that of the row
// above, as lists are often kept.
func (r *reader) strakes(t *records) {
	table := t.found("strakes")
	cols := r.lengths(t, &table, "thickness", "width", "length", "start")
	skin := skinOf(r.caption(t.page, t.head, t.left))
	for _, row := range t.rows {
		name := strings.TrimSpace(t.text(row, "strake"))
		if name == "" {
			continue
		}
		if s := skinOf(t.text(row, "skin")); s != "" {
			skin = s
		}
		if skin == "" {
			skin = hull.Planks
		}
		what := func(field string) string { return fmt.Sprintf("%s of %s %s", field, skin, name) }
		s := hull.Strake{
			Name: name, Skin: skin, Side: sideOf(t.text(row, "side")), Species: t.text(row, "species"),
			From: t.text(row, "from"), To: t.text(row, "to"), Cell: t.page.cell(row, t.cols["strake"]),
			Count:     r.count(t, row, "count", what("count")),
			Thickness: r.length(t, row, "thickness", cols, what("thickness")),
			Width:     r.length(t, row, "width", cols, what("width")),
			Length:    r.length(t, row, "length", cols, what("length")),
			Start:     r.length(t, row, "start", cols, what("start")),
			Slope:     r.slope(t, row, what("scarf slope")),
		}
		s.Clear = r.clear(t, row, cols, what("stretch without joints"))
		table.Digest += fmt.Sprint(s.Name, s.Skin, s.Side, s.Length.Value, ";")
		r.job.Strakes = append(r.job.Strakes, s)
	}
	r.tables = append(r.tables, table)
}

// slope reads a scarf's slope: 12, 12:1, 1:12, 12 to 1, 1 in 12.
func (r *reader) slope(t *records, row int, what string) source.Reading[float64] {
	c, at, ok := t.see(row, "slope")
	if ok && c.Kind == sheet.Text {
		if m := slopeText.FindStringSubmatch(strings.ToLower(measure.Fold(c.Text))); m != nil {
			a, _ := strconv.ParseFloat(m[1], 64)
			b, _ := strconv.ParseFloat(m[2], 64)
			if n := max(a, b) / min(a, b); min(a, b) > 0 {
				return source.Reading[float64]{Value: n, State: source.Given, Text: text(c), Cell: at}
			}
		}
	}
	return r.number(t, row, "slope", what)
}

var slopeText = regexp.MustCompile(`^(\d+(?:\.\d+)?) ?(?:: ?|to |in )(\d+(?:\.\d+)?)$`)

// clear reads the stretches in which no joint may fall: "12-0-0 to 16-0-0".
func (r *reader) clear(t *records, row int, cols map[string]column, what string) []hull.Reach {
	c, at, ok := t.see(row, "clear")
	if !ok || c.Kind == sheet.Empty || measure.IsDash(c.Text) {
		return nil
	}
	form := cols["length"].form
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
