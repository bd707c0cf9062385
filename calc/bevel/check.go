package bevel

import (
	"fmt"
	"math"

	"strakebook/calc/fair"
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
	for _, s := range b.Seams {
		found = append(found, checkSeam(b, s, r)...)
	}
	return found
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

// gauge is what the table's readings stand for.
func (b Readings) gauge(r Rules) Gauge {
	if b.Gauge != GaugeUnstated {
		return b.Gauge
	}
	if r.Gauge != GaugeUnstated {
		return r.Gauge
	}
	if b.aboutNinety() {
		return GaugeUnstated
	}
	return OffSquare
}

// open says that the readings cannot be turned into bevels.
func (b Readings) open(r Rules) bool { return b.gauge(r) == GaugeUnstated }

// aboutNinety says that most readings of the table are a gauge's, about 90.
func (b Readings) aboutNinety() bool {
	about, all := 0, 0
	for _, s := range b.Seams {
		for _, v := range s.Readings {
			if v.OK() {
				all++
				if ninety(v.Value) {
					about++
				}
			}
		}
	}
	return 2*about > all
}

func ninety(a measure.Angle) bool { return a > 45 && a < 135 }

// offSquare is a reading as degrees off square, + where the outside face is the
// wider; ok is false where there is none, or it is of the other kind.
func (g Gauge) offSquare(v source.Reading[measure.Angle]) (measure.Angle, bool) {
	if !v.OK() || g == GaugeUnstated || ninety(v.Value) != (g != OffSquare) {
		return 0, false
	}
	switch g {
	case OnInside:
		return v.Value - 90, true
	case OnOutside:
		return 90 - v.Value, true
	}
	return v.Value, true
}

// values is a seam's bevels off square, and which stations have one.
func (b Readings) values(s Seam, r Rules) (y []float64, given []bool) {
	y, given = make([]float64, len(b.Stations)), make([]bool, len(b.Stations))
	g := b.gauge(r)
	for k := range b.Stations {
		if k < len(s.Readings) {
			if v, ok := g.offSquare(s.Readings[k]); ok {
				y[k], given[k] = float64(v), true
			}
		}
	}
	return y, given
}

func checkSeam(b Readings, s Seam, r Rules) finding.List {
	var found finding.List
	y, given := b.values(s, r)
	first, last := span(given)
	faired, t := fair.Studentised(y, given, float64(b.Resolution))
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
			found = append(found, finding.Finding{Kind: Gap, Cell: v.Cell, Suggests: "about " + measure.Angle(faired[k]).Round(b.Resolution).Write(),
				Text: fmt.Sprintf("%s has no reading at station %s", s.name(), station)})
		case given[k] && math.Abs(y[k]) > float64(r.Tilt):
			found = append(found, finding.Finding{Kind: Tilted, Cell: v.Cell, Reads: v.Text, Suggests: "about " + b.written(faired[k], r),
				Text: fmt.Sprintf("%s at station %s reads %q, beyond the saw's tilt of %s degrees", s.name(), station, v.Text, r.Tilt.Write())})
		case given[k] && alarm(t, k, r):
			found = append(found, finding.Finding{Kind: Jump, Cell: v.Cell, Reads: v.Text, Suggests: "about " + b.written(faired[k], r),
				Text: fmt.Sprintf("%s at station %s reads %q, off the run of its neighbours", s.name(), station, v.Text)})
		}
	}
	found = append(found, repeats(b, s, y, given, t)...)
	return append(found, counts(b, s, given)...)
}

// written is a bevel as the builder would write it in this table.
func (b Readings) written(v float64, r Rules) string {
	a := measure.Angle(v)
	switch b.gauge(r) {
	case OnInside:
		a = 90 + a
	case OnOutside:
		a = 90 - a
	}
	return a.Round(b.Resolution).Write()
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

// span is the first and last station with a bevel; first > last where none has.
func span(given []bool) (first, last int) {
	first, last = len(given), -1
	for k, ok := range given {
		if ok {
			first, last = min(first, k), k
		}
	}
	return first, last
}

// repeats notes a reading equal to the one before where the bevel changes by two
// steps of the gauge or more a station: an equal pair elsewhere is usual.
func repeats(b Readings, s Seam, y []float64, given []bool, t []float64) finding.List {
	var found finding.List
	for k := 2; k+1 < len(y); k++ {
		if given[k-2] && given[k-1] && given[k] && given[k+1] && y[k] == y[k-1] &&
			math.Abs(t[k-2]) < 3.5 && math.Abs(t[k+1]) < 3.5 &&
			math.Abs(y[k+1]-y[k-2])/3 >= 2*float64(b.Resolution) {
			v := s.Readings[k]
			found = append(found, finding.Finding{Kind: Repeated, Cell: v.Cell, Reads: v.Text, Also: []source.Cell{s.Readings[k-1].Cell},
				Text: fmt.Sprintf("%s reads %q at both station %s and station %s", s.name(), v.Text, b.Stations[k-1].Name, b.Stations[k].Name)})
		}
	}
	return found
}

// counts compares the readings with the stations.
func counts(b Readings, s Seam, given []bool) finding.List {
	if extra := len(s.Readings) - len(b.Stations); extra > 0 {
		return finding.List{{Kind: Counted, Cell: s.Readings[len(b.Stations)].Cell,
			Text: fmt.Sprintf("%s has %d readings for %d stations", s.name(), len(s.Readings), len(b.Stations))}}
	}
	first, last := span(given)
	if first > last || (first == 0 && last == len(given)-1) {
		return nil
	}
	return finding.List{{Kind: HoodEnd, Cell: s.Cell,
		Text: fmt.Sprintf("%s is read from station %s to station %s only", s.name(), b.Stations[first].Name, b.Stations[last].Name)}}
}
