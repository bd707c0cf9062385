package hull

import (
	"fmt"
	"math"
	"slices"

	"strakebook/calc/fair"
	"strakebook/calc/finding"
)

// OffsetRepeat is a figure that stands twice running where its line, or its
// section, is steep on both sides of the two.
var OffsetRepeat = &finding.Kind{
	Code: "offset-repeat", Severity: finding.Warning, Title: "same figure twice where the line is steep",
	Why:    "A line that rises, stands still and rises again is not fair: one of the two figures was likely copied from beside it.",
	Remedy: "check both figures against the plan",
}

// steep is by how many of the table's steps a line must rise or fall from one
// place to the next, as it does on both sides, for a figure not to stand twice.
// Measured on the hulls of the detection test.
const steep = 12

// repeats is the figures that stand twice where the line or the section is steep.
// It needs no more than four figures, and no statistics.
func (c checked) repeats() []Doubt {
	var all []Doubt
	for i, l := range c.o.Lines {
		var run []fair.Spot
		for k := range c.x {
			if c.stands(i, k) && l.Values[k].Value > 0 {
				run = append(run, fair.Spot{Row: i, At: k})
			}
		}
		all = append(all, c.standstills(run, func(s fair.Spot) float64 { return c.x[s.At] })...)
	}
	family := c.o.family(Waterline)
	for k := range c.x {
		var run []fair.Spot
		for _, i := range family {
			if c.stands(i, k) && c.o.Lines[i].At.OK() && c.o.Lines[i].Values[k].Value > 0 {
				run = append(run, fair.Spot{Row: i, At: k})
			}
		}
		all = append(all, c.standstills(run, func(s fair.Spot) float64 { return c.o.Lines[s.Row].At.Value.Inches() })...)
	}
	return all
}

// standstills is those of one run of figures, of each pair the one without which
// the run is the straighter.
func (c checked) standstills(run []fair.Spot, at func(fair.Spot) float64) []Doubt {
	var all []Doubt
	slope := func(a, b fair.Spot) float64 { return (c.value(b) - c.value(a)) / (at(b) - at(a)) }
	for k := 1; k+2 < len(run); k++ {
		a, one, other, b := run[k-1], run[k], run[k+1], run[k+2]
		if c.value(one) != c.value(other) {
			continue
		}
		before, after := slope(a, one), slope(other, b)
		if before*after <= 0 || math.Min(math.Abs(before), math.Abs(after))*(at(other)-at(one)) < steep {
			continue
		}
		bad, good := one, other
		straighter := math.Abs(slope(a, one)-slope(one, b)) < math.Abs(slope(a, other)-slope(other, b))
		if x, y, ok := c.against(one, other); ok {
			straighter = y > x
		}
		if straighter {
			bad, good = other, one
		}
		d := Doubt{Kind: OffsetRepeat, Line: bad.Row, Station: bad.At, Reads: c.o.Lines[bad.Row].Values[bad.At], Or: []fair.Spot{good}}
		d.Text = fmt.Sprintf("%s at %s reads %q, the same as %s, between figures far apart", c.o.Lines[bad.Row].words(), c.o.called(bad.At), d.Reads.Text, c.named(good, bad))
		d.Copied = c.copied(bad)
		if !slices.ContainsFunc(all, func(e Doubt) bool { return e.Line == d.Line && e.Station == d.Station }) {
			all = append(all, d)
		}
	}
	return all
}

// against is how much speaks against each of two figures, the other withdrawn, in
// doubts; ok is false where nothing is made of one of them.
func (c checked) against(a, b fair.Spot) (x, y float64, ok bool) {
	sa, okA := c.judged.Without(a, b)
	sb, okB := c.judged.Without(b, a)
	if !okA || !okB {
		return 0, 0, false
	}
	return math.Abs(c.value(a)-sa.Value) / sa.Sd, math.Abs(c.value(b)-sb.Value) / sb.Sd, true
}
