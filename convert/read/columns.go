package read

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// column is how the lengths of one column are written.
type column struct {
	decision
	places int                                   // most places after the point of its numbers
	as     func(*source.Reading[measure.Length]) // what its words make of a figure; nil: what is written
}

// lengths decides each length column of a table by itself; one that says nothing
// of its unit is in that of its neighbour, thickness and width alike.
func (r *reader) lengths(t *records, table *source.Table, fields ...string) map[string]column {
	fields = slices.DeleteFunc(slices.Clone(fields), func(f string) bool { _, ok := t.cols[f]; return !ok })
	all := map[string]column{}
	said, two := r.formOf(t.page, nil, t.caption)
	if two {
		said = measure.Form{}
	}
	for _, f := range fields {
		if f == "thickness" || f == "width" {
			t.partsOfInch(f)
		}
		all[f] = r.lengthColumn(t, f, said, two)
	}
	for _, pair := range [][2]string{{"thickness", "width"}, {"width", "thickness"}, {portLength, starboardLength}, {starboardLength, portLength}, {"badfrom", "length"}, {"badto", "length"}} {
		c, ok := all[pair[0]]
		by, fine := all[pair[1]]
		if ok && fine && c.open && !by.open && by.form.Unit != measure.NoUnit {
			c.open, c.form.Unit = false, by.form.Unit
			c.why = append(c.why, "its neighbour, the "+pair[1]+", is in "+by.form.Unit.String())
			all[pair[0]] = c
		}
	}
	r.lengthsTold(t, table, fields, all)
	r.sizesSaid(t)
	return all
}

// lengthColumn decides one length column by its own figures, its heading and what the
// caption says.
func (r *reader) lengthColumn(t *records, field string, said measure.Form, two bool) column {
	own := said
	if form, ok := t.said[field]; ok {
		own = form
	}
	bare := r.bare
	if field == "length" && t.cols[field] == t.size && own.Unit < measure.InMillimetres {
		own, bare = measure.Form{}, measure.NoUnit // 1 x 6 x 12 is of inches, and feet long
	}
	if r.now != nil {
		if form, ok := fieldOfGuide(*r.now, field); ok {
			own = form
		}
	}
	r.fineColumn(t, t.cols[field])
	cells, _ := t.column(field)
	e := weigh(cells)
	d := r.formed(e, own, bare, field != "thickness" && field != "width")
	_, _, open := says(t.heads[t.cols[field]])
	d.torn(e, open || two && own == said)
	return column{decision: d, places: e.decimal}
}

// lengthsTold tells how the length columns are written, and asks for the units of those
// that are open.
func (r *reader) lengthsTold(t *records, table *source.Table, fields []string, all map[string]column) {
	var units []string
	open := false
	for _, f := range fields {
		c, at := all[f], t.page.cell(t.head, t.cols[f])
		open = open || c.open
		if c.open {
			r.add(finding.Finding{Kind: UnitOpen, Cell: at,
				Text: fmt.Sprintf("the column %q of the %s holds numbers without a unit", t.heads[t.cols[f]], table.Table)})
		}
		if c.against != "" {
			r.add(finding.Finding{Kind: UnitAgainst, Cell: at, Reads: c.against,
				Text: fmt.Sprintf("the heading says %s, and the figures are written in %s", c.against, c.form.Notation)})
		}
		cells, places := t.column(f)
		r.pointed(c.decision, fmt.Sprintf("column %q", t.heads[t.cols[f]]), cells, places)
		for _, w := range c.why {
			table.Evidence = append(table.Evidence, f+": "+w)
		}
		if c.form.Unit != measure.NoUnit {
			units = append(units, f+" "+c.form.Unit.String())
		}
		if c.form.Notation > 0 && (table.Notation == "" || f == "length") {
			table.Notation = c.form.Notation.String()
		}
	}
	table.Unit = oneUnit(units)
	if open {
		table.Unit = strings.Join(units, "; ") // a unit that is open is not that of the others
	}
}

// oneUnit is the units of some columns as show prints them: one word where they
// are alike.
func oneUnit(units []string) string {
	word := ""
	for i, u := range units {
		_, w, _ := strings.Cut(u, " ")
		if i > 0 && w != word {
			return strings.Join(units, "; ")
		}
		word = w
	}
	return word
}

// length reads one length field of a record. Where its column's unit is open it
// is unread, and the column has been reported.
func (r *reader) length(t *records, row int, field string, cols map[string]column, what string) source.Reading[measure.Length] {
	c, at, ok := t.cell(row, field)
	if !ok {
		return source.Reading[measure.Length]{}
	}
	v := r.lengthAt(c, cols[field].decision, at, what)
	if as := cols[field].as; as != nil && v.OK() {
		as(&v)
	}
	return v
}

// number reads a bare number field.
func (r *reader) number(t *records, row int, field, what string) source.Reading[float64] {
	c, at, ok := t.cell(row, field)
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
		f, err := measure.ParseNumber(strings.NewReplacer("$", "", "£", "", "€", "").Replace(c.Text))
		if err != nil || f > 1e12 || f < -1e12 {
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
	v := source.Reading[float64]{}
	if c, at, _ := t.cell(row, field); c.Kind == sheet.Text && countText.MatchString(strings.ToLower(measure.Fold(c.Text))) {
		m := countText.FindStringSubmatch(strings.ToLower(measure.Fold(c.Text)))
		n, err := strconv.ParseFloat(m[1]+m[2], 64)
		v = source.Reading[float64]{Value: n, State: source.Given, Text: text(c), Cell: at}
		if err != nil {
			v.State = source.Unread
		}
	} else {
		v = r.number(t, row, field, what)
	}
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
