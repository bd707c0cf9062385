package bevel

import (
	"fmt"
	"math"

	"strakebook/calc/fair"
	"strakebook/calc/finding"
	"strakebook/calc/source"
)

// Check says what is missing or doubtful in a table of bevels.
func Check(b Readings, r Rules) finding.List {
	var found finding.List
	if b.open(r) {
		found = append(found, finding.Finding{Kind: GaugeOpen, Cell: b.Cell,
			Text: "the readings lie about 90 and the book does not say on which face the gauge's stock lay"})
	}
	jumps := map[source.Cell]bool{}
	for _, s := range b.Seams {
		for _, f := range checkSeam(b, s, r) {
			jumps[f.Cell] = true
			found = append(found, f)
		}
	}
	return append(found, sides(b, jumps, r)...)
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

func checkSeam(b Readings, s Seam, r Rules) finding.List {
	var found finding.List
	y, given := b.values(s, r)
	first, last := span(given)
	faired, t := fair.Studentised(y, given, float64(b.Resolution))
	between := inside(b.spaced(), y, given)
	for k, v := range s.Readings {
		if k >= len(b.Stations) {
			break
		}
		station := b.Stations[k].Name
		switch {
		case v.OK() && !given[k] && !b.open(r):
			found = append(found, finding.Finding{Kind: Mixed, Cell: v.Cell, Reads: v.Text,
				Text: fmt.Sprintf("%s at station %s reads %q among readings %s", s.name(), station, v.Text, b.gauge(r))})
		case v.State == source.Blank && k > first && k < last:
			found = append(found, finding.Finding{Kind: Gap, Cell: v.Cell, Suggests: "about " + b.written(between[k], r),
				Text: fmt.Sprintf("%s has no reading at station %s", s.name(), station)})
		case given[k] && math.Abs(y[k]) > float64(r.Tilt):
			found = append(found, finding.Finding{Kind: Tilted, Cell: v.Cell, Reads: v.Text, Suggests: "about " + b.written(faired[k], r),
				Text: fmt.Sprintf("%s at station %s reads %q, beyond the saw's tilt of %s degrees", s.name(), station, v.Text, r.Tilt.Write())})
		case given[k] && alarm(t, k, r):
			found = append(found, finding.Finding{Kind: Jump, Cell: v.Cell, Reads: v.Text, Suggests: "about " + b.written(faired[k], r),
				Text: fmt.Sprintf("%s at station %s reads %q, off the run of its neighbours", s.name(), station, v.Text)})
		}
	}
	found = append(found, repeats(b, s, y, given, t, r)...)
	return append(found, counts(b, s, given)...)
}

// alarm says that a reading's score alarms and is the greatest within two places.
func alarm(t []float64, k int, r Rules) bool {
	if math.Abs(t[k]) < r.Alarm {
		return false
	}
	for i := max(0, k-2); i <= min(len(t)-1, k+2); i++ {
		if math.Abs(t[i]) > math.Abs(t[k]) {
			return false
		}
	}
	return true
}
