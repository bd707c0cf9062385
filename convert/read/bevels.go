package read

import (
	"fmt"
	"math"
	"strings"

	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// bevels reads a table of bevels: a seam a row, a reading a station.
func (r *reader) bevels(t stationTable) {
	said, _ := saysUnit(t.caption)
	corner := t.place(t.head, max(1, t.left-1))
	b := bevel.Readings{Cell: corner, Gauge: r.gaugeOf(t.caption, corner)}
	low := strings.ToLower(t.caption)
	b.InStation = strings.Contains(low, "station plane") || strings.Contains(low, "plane of the station")
	stations, cols := r.stationsOf(&t, said)
	b.Stations = stations
	var readings []measure.Angle
	strake, skin := "", skinOf(t.page.sheet.Name)
	if s := skinIn(t.caption); s != "" {
		skin = s
	}
	if skin == "" || skin == hull.Skin(plainWords(t.page.sheet.Name)) {
		skin = hull.Planks
	}
	for _, row := range t.lines {
		label := t.label(row)
		if r.summary(label) {
			continue
		}
		if r.lineMeaning(label) == "along" && r.words.has(label, "along") {
			r.along(&t, row, cols, &b)
			continue
		}
		s := r.seam(&t, row, &strake, skin)
		for _, col := range cols {
			v := r.angle(t.see(row, col), t.place(row, col), s)
			s.Readings = append(s.Readings, v)
			if v.OK() {
				readings = append(readings, v.Value)
			}
		}
		for col := t.right + 1; ; col++ { // readings written beyond the last station
			c := t.see(row, col)
			if c.Kind != sheet.Number && (c.Kind != sheet.Text || !figure(c)) {
				break
			}
			s.Readings = append(s.Readings, r.angle(c, t.place(row, col), s))
			t.tick(row, col)
		}
		b.Seams = append(b.Seams, s)
	}
	b.Resolution = step(readings)
	r.tables = append(r.tables, source.Table{Table: "bevels", Book: t.book.Name, Sheet: t.sheet.Name, Range: t.whole(),
		Stations: len(b.Stations), Lines: len(b.Seams), Unit: "degrees", Notation: b.Gauge.String(),
		Evidence: []string{fmt.Sprintf("read to %s degree", b.Resolution.Write())}})
	r.job.Bevels = append(r.job.Bevels, b)
}

// step is the gauge's smallest step, from the readings themselves.
func step(readings []measure.Angle) measure.Angle {
	for _, s := range []float64{1, 0.5, 0.25, 0.1, 0.05} {
		odd := 0
		for _, v := range readings {
			if n := math.Abs(float64(v)) / s; math.Abs(n-math.Round(n)) > 1e-6 {
				odd++
			}
		}
		if odd*50 <= len(readings) {
			return measure.Angle(s)
		}
	}
	return 0.01
}

// seam is a row's strake, edge and side. A row that names no strake belongs to
// the one above.
func (r *reader) seam(t *stationTable, row int, strake *string, skin hull.Skin) bevel.Seam {
	s := bevel.Seam{Skin: skin, Cell: t.place(row, max(1, t.left-1))}
	name := ""
	for _, col := range t.labelCols() {
		c := t.see(row, col)
		if c.Kind == sheet.Empty {
			continue
		}
		words := strings.Fields(strings.NewReplacer(",", " ", "/", " ").Replace(measure.Fold(text(c))))
		for _, w := range words {
			switch low := strings.Trim(strings.ToLower(w), ".():"); {
			case low == "upper" || low == "top" || low == "u":
				s.Edge = bevel.Upper
			case low == "lower" || low == "bottom" || low == "l":
				s.Edge = bevel.Lower
			case sideOf(low) != hull.BothSides:
				s.Side = sideOf(low)
			case low == "edge" || low == "both" || low == "bevel" || low == "bevels" || low == "seam" || low == "no" || low == "strake" || low == "":
			case skinOf(low) == hull.Strips || skinOf(low) == hull.Planks:
				s.Skin = skinOf(low)
			default:
				name = strings.TrimSpace(name + " " + w)
			}
		}
	}
	if name != "" {
		*strake = name
	}
	s.Strake = *strake
	return s
}

// skinIn is the skin that a caption's words name.
func skinIn(caption string) hull.Skin {
	for _, w := range strings.Fields(plainWords(caption)) {
		if s := skinOf(w); s == hull.Strips || s == hull.Planks {
			return s
		}
	}
	return ""
}

// angle reads one reading. A time is minutes and seconds of no angle: 2:30
// typed for two and a half degrees is asked about.
func (r *reader) angle(c sheet.Cell, at source.Cell, s bevel.Seam) source.Reading[measure.Angle] {
	v := source.Reading[measure.Angle]{Text: text(c), Cell: at}
	unread := func(expected, suggests string) {
		v.State = source.Unread
		r.add(finding.Finding{Kind: AngleUnread, Cell: at, Reads: v.Text, Suggests: suggests,
			Text: fmt.Sprintf("bevel of %s %s reads %q: expected %s", s.Skin, s.Strake, v.Text, expected)})
	}
	switch c.Kind {
	case sheet.Number:
		if math.Abs(c.Number) > 360 {
			unread("degrees", "")
			break
		}
		v.Value, v.State, v.Text = measure.Angle(c.Number), source.Given, plainNumber(c.Number)
	case sheet.Text:
		if measure.IsDash(c.Text) {
			v.State = source.Dash
			break
		}
		a, err := measure.ParseAngle(c.Text)
		if err != nil {
			unread("degrees such as 2.5 or 2 1/2", "")
			break
		}
		v.Value, v.State = a, source.Given
	case sheet.Time:
		unread("degrees, and the cell holds a time of day", "perhaps "+measure.Angle(c.Number*24).Round(0.01).Write())
	case sheet.Date, sheet.Fault, sheet.Bool:
		unread("degrees", "")
	default:
		if c.Formula != "" {
			unread("a value: open the book and save it so that its formulas are worked out", "")
		}
	}
	return v
}

// along reads a row of distances along the edge, which belongs to the seam above.
func (r *reader) along(t *stationTable, row int, cols []int, b *bevel.Readings) {
	if len(b.Seams) == 0 {
		return
	}
	var cells []sheet.Cell
	for _, col := range cols {
		cells = append(cells, t.see(row, col))
	}
	said, _ := saysUnit(t.label(row))
	form, _, open := decide(weigh(cells), said, r.bare)
	if open {
		r.add(finding.Finding{Kind: UnitOpen, Cell: t.place(row, max(1, t.left-1)), Text: "the distances along the edge are numbers without a unit"})
		return
	}
	s := &b.Seams[len(b.Seams)-1]
	for _, col := range cols {
		v, unread := length(t.see(row, col), form, t.place(row, col))
		if unread != nil {
			r.unreadable("distance along the edge", v, unread)
		}
		s.Along = append(s.Along, v)
	}
}
