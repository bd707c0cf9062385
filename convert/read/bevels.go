package read

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strings"

	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// bevels reads a table of bevels: a seam a row, a reading a station.
func (r *reader) bevels(t *stationTable) {
	corner := t.place(t.head, t.labelAt())
	r.alongRows(t)
	b := bevel.Readings{Cell: corner}
	stations, cols, _ := r.stationsOf(t, measure.Form{})
	b.Stations = stations
	in := r.riseOf(t.wordsAbout(), t.page, corner)
	read := r.seamReader(t)
	var readings []measure.Angle
	digest := ""
	for _, row := range t.lines {
		label := t.label(row)
		switch {
		case r.sums(t, row):
			r.summarised(t, row)
			continue
		case r.isAlong(label):
			r.along(t, row, cols, &b)
			continue
		}
		s := read(row)
		if r.edgeOdd(s) {
			continue
		}
		for _, col := range cols {
			v := r.angle(t.see(row, col), t.place(row, col), s, in)
			s.Readings = append(s.Readings, v)
			digest += v.Text + ";"
			if v.OK() {
				readings = append(readings, v.Value)
			}
		}
		r.beyond(t, row, &s, in)
		b.Seams = append(b.Seams, s)
	}
	b.Gauge, b.InStation = r.gauge(t.wordsAbout(), t.page, b), r.inStation(t.wordsAbout(), t.page, corner)
	if r.riseTold(in, &b); b.Rise == 0 {
		r.pointedBevels(t.page, &b)
	}
	r.signSaid(t.wordsAbout(), t.page, &b)
	b.Resolution = in.step(readings)
	table := t.found("bevels", decision{})
	table.Stations, table.Lines, table.Digest = len(b.Stations), len(b.Seams), digest
	table.Unit, table.Notation = "degrees", b.Gauge.String()
	table.Evidence = append([]string{fmt.Sprintf("read to %s degree", b.Resolution.Write())}, table.Evidence...)
	r.tables = append(r.tables, table)
	r.job.Bevels = append(r.job.Bevels, b)
}

// gaugeOfGuide is what the guide says bevels stand for.
func (r *reader) gaugeOfGuide() bevel.Gauge {
	if r.now == nil {
		return bevel.GaugeUnstated
	}
	for g := bevel.OffSquare; g <= bevel.OnOutside; g++ {
		if first, _, _ := strings.Cut(r.now.Notation, ";"); plainWords(first) == plainWords(g.String()) {
			return g
		}
	}
	return bevel.GaugeUnstated
}

// beyond takes the readings written beyond the last station: how many there are
// is held against the stations.
func (r *reader) beyond(t *stationTable, row int, s *bevel.Seam, in rise) {
	for col := t.right + 1; !slices.Contains(t.group, col); col++ {
		c := t.see(row, col)
		if c.Kind != sheet.Number && (c.Kind != sheet.Text || !figure(c.Text)) {
			return
		}
		s.Readings = append(s.Readings, r.angle(c, t.place(row, col), *s, in))
		t.tick(row, col)
	}
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

// seamText is a seam named by the two strakes it lies between.
var seamText = regexp.MustCompile(`^(\d+) ?[-/&] ?(\d+)$`)

// angle reads one reading, of degrees or of the rise that its table is in. What was
// typed as 2:30 for two and a half degrees a spreadsheet takes for a time of day.
func (r *reader) angle(c sheet.Cell, at source.Cell, s bevel.Seam, in rise) source.Reading[measure.Angle] {
	v := source.Reading[measure.Angle]{Text: text(c), Cell: at}
	what := fmt.Sprintf("bevel of %s %s", s.Skin, s.Strake)
	unread := func(expected, suggests string) {
		v.State = source.Unread
		r.add(finding.Finding{Kind: AngleUnread, Cell: at, Reads: v.Text, Suggests: suggests,
			Text: fmt.Sprintf("%s reads %q: expected %s", what, v.Text, expected)})
	}
	rising := c.Kind == sheet.Number || c.Kind == sheet.Text && !measure.IsDash(c.Text)
	switch {
	case in.open:
		v.State = source.Unread
		if c.Kind == sheet.Empty {
			v.State = source.Blank
		}
		return v
	case in.one != 0 && rising:
		a, expected := in.angle(c)
		if v.Value, v.State = a, source.Given; expected != "" {
			unread(expected, "")
		}
		r.struck(c, at)
		return v
	case rising && c.Kind == sheet.Number && strings.HasSuffix(c.Text, "%"):
		unread("degrees, and the cell is shown per cent", "")
		return v
	case rising && fineFraction.MatchString(measure.Fold(c.Text)):
		unread("degrees, such as 2.5 or 2 1/2, or words over the table that say of what this is a part: 1/8 in. to the inch is a bevel of 7.13 degrees", "")
		r.struck(c, at)
		return v
	}
	switch c.Kind {
	case sheet.Number:
		if math.Abs(c.Number) > 180 {
			unread("degrees", "")
			break
		}
		v.Value, v.State = measure.Angle(c.Number), source.Given
		if shown, err := measure.ParseAngle(c.Text); c.Format != "" && err == nil && math.Abs(float64(shown-v.Value)) > 0.13 {
			r.add(finding.Finding{Kind: ShownOtherwise, Cell: at, Reads: v.Text, Suggests: plainNumber(c.Number),
				Text: fmt.Sprintf("%s is shown as %q, and the number stored is %s", what, v.Text, plainNumber(c.Number))})
		}
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
		a := measure.Angle(c.Number * 24)
		if minutes := float64(a) * 60; c.Number < 0 || a >= 24 || math.Abs(minutes-math.Round(minutes)) > 1e-4 {
			unread("degrees, and the cell holds a time of day", "")
			break
		}
		v.Value, v.State = measure.Angle(math.Round(float64(a)*60)/60), source.Given
		r.add(finding.Finding{Kind: AngleTime, Cell: at, Reads: v.Text, Suggests: v.Value.Write(),
			Text: fmt.Sprintf("%s is stored as a time of day, %s, and was read as %s degrees", what, v.Text, v.Value.Write())})
	case sheet.Date:
		_, month, day := calendar(c.Number)
		unread("degrees, and the cell holds a date", strings.Join(twoParts(month, day, measure.Form{}), " or "))
	case sheet.Fault, sheet.Bool:
		unread("degrees", "")
	default:
		if c.Formula != "" {
			unread("a value: open the book and save it so that its formulas are worked out", "")
		}
	}
	r.struck(c, at)
	return v
}

// isAlong says that a label below a seam is of distances along its edge.
func (r *reader) isAlong(label string) bool {
	return r.words.has(label, "along") || r.distances(label) || fromEnd(label)
}

// alongRows takes a row of distances below the first seam as along its edge where others
// of the table have such rows too, and not as where the stations lie.
func (r *reader) alongRows(t *stationTable) {
	if t.position == 0 || len(t.lines) == 0 || t.position < t.lines[0] {
		return
	}
	if slices.ContainsFunc(t.lines, func(row int) bool { return r.isAlong(t.label(row)) }) {
		t.lines = append(t.lines, t.position)
		slices.Sort(t.lines)
		t.position = 0
	}
}

// along reads a row of distances along the edge, which belongs to the seam above
// it.
func (r *reader) along(t *stationTable, row int, cols []int, b *bevel.Readings) {
	if len(b.Seams) == 0 {
		r.add(finding.Finding{Kind: LineUnplaced, Cell: t.place(row, t.labelAt()), Reads: t.label(row), Text: "distances along an edge stand above every seam: whose they are is not known"})
		return
	}
	cells := t.cells(row, cols)
	said, ok := headUnit(t.label(row))
	if !ok {
		said, _ = r.formOf(t.page, t.ownWords(), t.caption)
	}
	d := r.formed(weigh(cells), said, r.bare, true)
	if d.open {
		r.add(finding.Finding{Kind: UnitOpen, Cell: t.place(row, t.labelAt()), Text: "the distances along the edge are numbers without a unit"})
		return
	}
	s := &b.Seams[len(b.Seams)-1]
	d.dates = datesOf([][]sheet.Cell{cells}, d.form)
	for i, col := range cols {
		s.Along = append(s.Along, r.lengthAt(cells[i], d, t.place(row, col), "distance along the edge"))
	}
	switch from := originOf(t.label(row)); {
	case len(s.Along) == 0:
	case from == fromAft:
		fromOtherEnd(s.Along)
		r.alongSaid[s.Along[0].Cell] = true
	case from == fromFore:
		r.alongSaid[s.Along[0].Cell] = true
	}
	r.tableRead()
}
