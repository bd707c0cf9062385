package bevel

import (
	"fmt"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Check says what is missing or doubtful in a table of bevels.
func Check(b Readings, r Rules) finding.List {
	var found finding.List
	if b.open(r) {
		found = append(found, finding.Finding{Kind: GaugeOpen, Cell: b.Cell,
			Text: "the readings lie about 90 and the book does not say on which face the gauge's stock lay"})
	}
	j := b.judge(r)
	told := map[source.Cell]bool{}
	for i, s := range b.Seams {
		for _, f := range checkSeam(b, i, s, j, r) {
			told[f.Cell] = true
			found = append(found, f)
		}
	}
	return append(found, sides(b, told, r)...)
}

// name is the seam as findings name it.
func (s Seam) name() string {
	name := fmt.Sprintf("%s %s", s.Skin, s.Strake)
	if s.Edge != EdgeUnstated {
		name += " " + s.Edge.String() + " edge"
	}
	if s.Side != 0 {
		name += " " + s.Side.String()
	}
	return name
}

// checkSeam looks at one seam's readings, one after another.
func checkSeam(b Readings, i int, s Seam, j judged, r Rules) finding.List {
	y, given := j.readings.Y[i], j.readings.Given[i]
	found, out := counts(b, i, s, j)
	if out {
		j.odd[i] = nil // readings a station out are not each odd
	}
	first, last := span(given)
	between := inside(j.readings.X, y, given)
	for k, v := range s.Readings {
		if k >= len(b.Stations) {
			break
		}
		station := b.called(k)
		odd, isOdd := j.odd[i][k]
		switch {
		case v.OK() && !given[k] && !b.open(r):
			found = append(found, finding.Finding{Kind: Mixed, Cell: v.Cell, Reads: v.Text,
				Text: fmt.Sprintf("%s at %s reads %q among readings %s", s.name(), station, v.Text, b.Reads(r))})
		case (v.State == source.Blank || v.State == source.Dash) && k > first && k < last: // a dash is for where a seam is not, and this one runs on
			found = append(found, finding.Finding{Kind: Gap, Cell: v.Cell, Reads: v.Text, Suggests: "about " + b.written(between[k], r),
				Text: fmt.Sprintf("%s has no reading at %s", s.name(), station)})
		case given[k] && r.Beyond(r.tilt(measure.Angle(y[k]))):
			f := finding.Finding{Kind: Tilted, Cell: v.Cell, Reads: v.Text,
				Text: fmt.Sprintf("%s at %s reads %q, %s", s.name(), station, v.Text, r.beyond(measure.Angle(y[k])))}
			if isOdd {
				f.Suggests = b.likely(s, odd, y, given, r)
			}
			found = append(found, f)
		case isOdd:
			found = append(found, finding.Finding{Kind: Jump, Cell: v.Cell, Reads: v.Text, Suggests: b.likely(s, odd, y, given, r),
				Text: fmt.Sprintf("%s at %s reads %q, off the run of its neighbours", s.name(), station, v.Text)})
		}
	}
	return append(found, repeats(b, s, y, given, j.odd[i])...)
}
