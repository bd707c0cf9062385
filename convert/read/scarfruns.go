package read

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// slopeText is a slope in words: 12:1, 1:12, 12 to 1, 1 in 12, 1/12.
var slopeText = regexp.MustCompile(`^(\d+(?:\.\d+)?) ?(?:[:/] ?|to |in )(\d+(?:\.\d+)?)$`)

// slope reads a scarf's slope: 12, 12:1, 1:12, 12 to 1, 1 in 12, 1/12. A number below
// one is the rise on a run of one.
func (r *reader) slope(t *records, row int, what string) source.Reading[float64] {
	c, at, ok := t.cell(row, "slope")
	if ok && c.Kind == sheet.Text {
		if m := slopeText.FindStringSubmatch(strings.ToLower(measure.Fold(c.Text))); m != nil {
			a, _ := strconv.ParseFloat(m[1], 64)
			b, _ := strconv.ParseFloat(m[2], 64)
			if n := max(a, b) / min(a, b); min(a, b) > 0 {
				return source.Reading[float64]{Value: n, State: source.Given, Text: text(c), Cell: at}
			}
		}
	}
	if c.Kind == sheet.Text && noneText.MatchString(plainWords(c.Text)) {
		r.add(finding.Finding{Kind: NumberUnread, Cell: at, Reads: text(c), Text: fmt.Sprintf("%s reads %q: expected a slope; what is longer than its boards is scarfed as set for its skin", what, text(c))})
		return source.Reading[float64]{State: source.Unread, Text: text(c), Cell: at}
	}
	v := r.number(t, row, "slope", what)
	if v.OK() && v.Value > 0 && v.Value < 1 {
		rise := v.Value
		v.Value = math.Round(1e6/rise) / 1e6
		r.add(finding.Finding{Kind: ConventionRead, Cell: at, Reads: v.Text, Text: fmt.Sprintf("%s reads %q, and is taken as %.4g to 1", what, v.Text, v.Value)})
	}
	return v
}

// runHeaded makes a column of scarfs that is headed with a unit of length one of their
// runs along the plank.
func (t *records) runHeaded() {
	col, ok := t.cols["slope"]
	form := t.said["slope"]
	if _, have := t.cols["scarfrun"]; !ok || have || form.Unit == measure.NoUnit || form.Unit == measure.Fractions {
		return
	}
	delete(t.cols, "slope")
	t.cols["scarfrun"], t.said["scarfrun"] = col, form
}

// runOfScarf keeps the run of a strake's scarfs: its slope follows once all that is set
// is read.
func (r *reader) runOfScarf(t *records, row int, cols map[string]column, slope source.Reading[float64], what string) source.Reading[float64] {
	v := r.length(t, row, "scarfrun", cols, what)
	if slope.State != source.Blank || !v.OK() {
		return slope
	}
	r.scarfRuns[v.Cell] = v.Value
	return source.Reading[float64]{State: source.Given, Text: v.Text, Cell: v.Cell}
}

// slopesOfRuns is the slopes that scarfs of a given run have: what slopes of a strake's
// thickness is the rest between its nibs.
func (r *reader) slopesOfRuns() {
	told := false
	for i := range r.job.Strakes {
		s := &r.job.Strakes[i]
		run, ok := r.scarfRuns[s.Slope.Cell]
		if !ok || !s.Slope.OK() {
			continue
		}
		thick := s.Thickness.Value - 2*r.rules.Scarf.Nib
		if !s.Thickness.OK() || thick <= 0 || run <= 0 {
			s.Slope.State = source.Unread
			r.add(finding.Finding{Kind: NumberUnread, Cell: s.Slope.Cell, Reads: s.Slope.Text,
				Text: fmt.Sprintf("the run of the scarfs of %s %s, %q, makes no slope on its thickness", s.Skin, s.Name, s.Slope.Text)})
			continue
		}
		s.Slope.Value = math.Round(1e6*float64(run)/float64(thick)) / 1e6
		if !told {
			told = true
			r.add(finding.Finding{Kind: ConventionRead, Cell: s.Slope.Cell, Reads: s.Slope.Text,
				Text: fmt.Sprintf("scarfs are given by their run along the plank: the first, %q, is %.4g to 1 on %s", s.Slope.Text, s.Slope.Value, r.rules.Scarf.Units.Small(s.Thickness.Value))})
		}
	}
}
