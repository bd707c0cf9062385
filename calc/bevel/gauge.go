package bevel

import (
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Reads is what the table's readings stand for: as it says itself, else as the
// rules do; off square where neither does and they do not lie about 90.
func (b Readings) Reads(r Rules) Gauge {
	if b.Gauge != GaugeUnstated {
		return b.Gauge
	}
	if r.Gauge != GaugeUnstated {
		return r.Gauge
	}
	if b.AboutNinety() {
		return GaugeUnstated
	}
	return OffSquare
}

// open says that the readings cannot be turned into bevels.
func (b Readings) open(r Rules) bool { return b.Reads(r) == GaugeUnstated }

// AboutNinety says that most readings of the table are a gauge's, about 90.
func (b Readings) AboutNinety() bool {
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
	g := b.Reads(r)
	for k := range b.Stations {
		if k < len(s.Readings) {
			if v, ok := g.offSquare(s.Readings[k]); ok {
				y[k], given[k] = float64(v), true
			}
		}
	}
	return y, given
}

// written is a bevel as the builder would write it in this table.
func (b Readings) written(v float64, r Rules) string {
	if b.Rise != 0 {
		return b.hullsOwn(v, r)
	}
	return b.onGauge(v, r).Round(b.step()).Write()
}

// hullsOwn is a bevel of the hull's as this table has it, to the hundredth that the
// card gives it to.
func (b Readings) hullsOwn(v float64, r Rules) string {
	own := b.onGauge(v, r).Round(hundredth).Write()
	if b.Rise != 0 {
		own += "°" // its own figures are of something else
	}
	return own
}

// hundredth is the step of the hull's own bevels as they are shown.
const hundredth = measure.Angle(0.01)

// onGauge is a bevel as the gauge of this table reads it.
func (b Readings) onGauge(v float64, r Rules) measure.Angle {
	switch b.Reads(r) {
	case OnInside:
		return 90 + measure.Angle(v)
	case OnOutside:
		return 90 - measure.Angle(v)
	}
	return measure.Angle(v)
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
