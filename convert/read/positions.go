package read

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// positionsOf fills in where the stations of a table lie: from its row of
// positions, else its row of spacings.
func (r *reader) positionsOf(t *stationTable, stations []hull.Station, cols []int, form measure.Form) {
	row, what := t.position, "position"
	if row == 0 {
		row, what = t.spacing, "spacing"
	}
	if row == 0 {
		return
	}
	cells := t.cells(row, cols)
	said, ok := headUnit(t.label(row))
	if !ok && len(t.lines) == 0 {
		said, _ = r.formOf(t.page, t.ownWords(), t.caption)
	}
	var d decision
	if r.bare != measure.NoUnit && form.Unit != measure.NoUnit && form.Unit != measure.Fractions {
		d = decide(weigh(cells), said, form.Unit, true) // what the table around it says holds over Settings
	} else {
		d = r.formed(weigh(cells), said, r.bare, true)
	}
	if d.form.Unit == measure.NoUnit && (d.open || d.form.Notation == measure.Decimal) {
		d.form.Unit = form.Unit // that of the table around it
	}
	if form.Unit == measure.Fractions && !ok {
		d.form.Unit, r.bared = r.bare, true
	}
	if d.open = d.open && d.form.Unit == measure.NoUnit; d.open {
		r.add(finding.Finding{Kind: UnitOpen, Cell: t.place(row, t.left), Text: fmt.Sprintf("the %ss of the stations are numbers without a unit", what)})
	}
	d.dates = datesOf([][]sheet.Cell{cells}, d.form)
	all := make([]source.Reading[measure.Length], len(stations))
	for i, col := range cols {
		all[i] = r.lengthAt(cells[i], d, t.place(row, col), fmt.Sprintf("%s of %s", what, r.calls[stations[i].Cell].places().Named(stations[i].Name)))
	}
	r.tableRead()
	if what == "spacing" {
		if !summed(all) {
			r.add(finding.Finding{Kind: SpacingOpen, Cell: t.place(row, t.left), Text: "a spacing stands at every station: nothing says whether it is to the station before or the one after"})
			return
		}
	}
	for i := range stations {
		stations[i].At = all[i]
	}
}

// summed makes positions of the spacings between stations. There is one spacing
// fewer than stations: the first or the last cell is blank or nought. It is not
// ok where there are as many.
func summed(all []source.Reading[measure.Length]) bool {
	n := len(all)
	if n < 2 {
		return false
	}
	none := func(v source.Reading[measure.Length]) bool {
		return !v.OK() && v.State != source.Unread || v.OK() && v.Value == 0
	}
	first, last := none(all[0]), none(all[n-1])
	if first == last {
		return false
	}
	at, known := measure.Length(0), true
	steps := append([]source.Reading[measure.Length]{}, all...)
	for i := range all {
		if i > 0 {
			step := steps[i]
			if last {
				step = steps[i-1]
			}
			known = known && step.OK()
			at += step.Value
		}
		all[i] = source.Reading[measure.Length]{Text: steps[i].Text, Cell: steps[i].Cell}
		if known {
			all[i].Value, all[i].State = at, source.Given
		}
	}
	return true
}

// placesOf reads a table that holds nothing but where stations lie.
func (r *reader) placesOf(t *stationTable) {
	stations, cols, _ := r.stationsOf(t, measure.Form{})
	for _, s := range stations {
		r.place(s.Name, s.Cell, s.At)
	}
	var d decision
	if row := max(t.position, t.spacing); row > 0 {
		d = r.formed(weigh(t.cells(row, cols)), measure.Form{}, r.bare, true)
	}
	table := t.found("positions", d)
	table.Stations, table.Lines = len(stations), 1
	r.tables = append(r.tables, table)
}

// place keeps where a station lies, as a table of positions has it.
func (r *reader) place(name string, station source.Cell, at source.Reading[measure.Length]) {
	key := r.keyOf(name, station)
	if first, again := r.at[key]; again && first.OK() && at.OK() && first.Value != at.Value {
		r.add(finding.Finding{Kind: PositionTwice, Cell: at.Cell, Also: []source.Cell{first.Cell}, Reads: at.Text, Suggests: first.Text,
			Text: fmt.Sprintf("%s is given two positions, %q and %q", r.calls[station].places().Named(name), first.Text, at.Text)})
		return
	}
	if at.OK() {
		r.at[key] = at
	}
}

// fillPositions gives stations without positions those of a table of positions,
// else those that the spacing gives.
func (r *reader) fillPositions() {
	for name, at := range r.at {
		r.job.Stations = append(r.job.Stations, hull.Station{Name: name, At: at, Cell: at.Cell})
	}
	slices.SortFunc(r.job.Stations, func(a, b hull.Station) int {
		return cmp.Or(cmp.Compare(a.At.Value, b.At.Value), strings.Compare(a.Name, b.Name))
	})
	fill := func(stations []hull.Station) {
		for _, s := range stations {
			if s.At.OK() {
				return
			}
		}
		for i := range stations {
			if at, ok := r.at[stations[i].Name]; ok {
				stations[i].At = at
			}
		}
		r.space(stations)
	}
	for _, stations := range r.stationRows() {
		fill(stations)
	}
}

// stationRows is the stations of every table that lines are given at.
func (r *reader) stationRows() (all [][]hull.Station) {
	for i := range r.job.Offsets {
		all = append(all, r.job.Offsets[i].Stations)
	}
	for i := range r.job.Bevels {
		all = append(all, r.job.Bevels[i].Stations)
	}
	for i := range r.job.Seams {
		all = append(all, r.job.Seams[i].Stations)
	}
	return all
}

// space places stations by the spacing that Settings give, where nothing gives
// positions and the stations' numbers are all known and rising.
func (r *reader) space(stations []hull.Station) {
	spacing := r.rules.Hull.StationSpacing
	if spacing == 0 || r.placeAsked || len(stations) == 0 || ofFrames(stations) {
		return
	}
	numbers := make([]float64, len(stations))
	for i, s := range stations {
		v, ok := r.countOf(stations, i)
		if !ok || s.At.State != source.Blank || i > 0 && v <= numbers[i-1] {
			return
		}
		numbers[i] = v
	}
	for i := range stations {
		if !math.IsInf(numbers[i], 0) {
			stations[i].At = source.Is(spacing.Times(numbers[i]))
		}
	}
}

// countOf is the number of a station counted aft: by its name; a perpendicular is the
// one before the first or behind the last, and X between 6 and 8 is 7. A stem or a
// transom at an end is beyond all numbers. Between others a name is nowhere.
func (r *reader) countOf(stations []hull.Station, i int) (float64, bool) {
	s, last := stations[i], len(stations)-1
	before, after, okB, okA := 0.0, 0.0, false, false
	if i > 0 {
		before, okB = r.countAft(stations[i-1].Name)
	}
	if i < last {
		after, okA = r.countAft(stations[i+1].Name)
	}
	perpendicular := len(tokens(s.Name)) == 1 && strings.HasSuffix(tokens(s.Name)[0], "p")
	v, ok := r.countAft(s.Name)
	switch {
	case ok:
		return v, true
	case i > 0 && i < last:
		return before + 1, okB && okA && after == before+2 && !s.Transom
	case i == 0 && endOf(s) == fromFore && perpendicular:
		return after - 1, okA
	case i == last && endOf(s) == fromAft && perpendicular:
		return before + 1, okB
	case i == 0 && endOf(s) == fromFore:
		return math.Inf(-1), true
	case i == last && endOf(s) == fromAft:
		return math.Inf(1), true
	}
	return 0, false
}

// countAft is the number of a station counted aft: numbers that run forward are
// counted back from the highest.
func (r *reader) countAft(name string) (float64, bool) {
	v, ok := stationNumber(name)
	if ok && r.forward > 0 {
		v = r.forward - v
	}
	return v, ok
}

// stationNumber is the number of a station by its name.
func stationNumber(name string) (float64, bool) {
	m := stationText.FindStringSubmatch(strings.ToLower(measure.Fold(name)))
	if m == nil {
		return 0, false
	}
	return numberOf(m[2]), true
}
