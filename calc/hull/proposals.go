package hull

import (
	"math"

	"strakebook/calc/fair"
	"strakebook/calc/measure"
)

// Proposal is a likely reading of a doubtful offset and why.
type Proposal struct {
	Value  measure.Length
	Reason string
}

// propose finds the slips of pen, eye and keyboard that would make a doubtful
// value out of one near the faired curve, the likeliest first, three at most. Of
// a value that equals its neighbour it says so and proposes nothing.
func propose(o Offsets, doubt *Doubt, f fair.Flag, scale float64, rows []fair.Row) {
	l := o.Lines[f.Row]
	v := l.Values[f.At].Value
	faired := measure.Length(f.Says.Value * float64(o.Resolution))
	tolerance := max(measure.Length(3*f.Says.Sd*float64(o.Resolution)), 2*o.Resolution)
	if equalsNeighbour(o, f) {
		doubt.Copied = "the same figure as its neighbour: perhaps copied"
		return
	}
	var all []Proposal
	add := func(value measure.Length, reason string) {
		if (value-faired).Abs() > tolerance || value == v || len(all) == 3 {
			return
		}
		for _, p := range all {
			if p.Value == value {
				return
			}
		}
		all = append(all, Proposal{value, reason})
	}
	add(-v, "the sign")
	for _, d := range []int{-1, 1} {
		if w, ok := swapped(o, f, rows, d, tolerance); ok {
			add(w, "changed places with station "+o.Stations[f.At+d].Name)
		}
	}
	if o.Form.Unit >= measure.InMillimetres || o.Form.Notation == measure.Decimal {
		decimalSlips(v, o, add)
	} else {
		add(v+measure.Foot, "one foot")
		add(v-measure.Foot, "one foot")
		feet, inches, eighths, rest := parts(v)
		add(join(feet, eighths, inches)+rest, "inches and eighths changed places")
		add(join(inches, eighths, 0)+rest, "figures slipped one place")
		add(join(0, feet, inches)+rest, "figures slipped one place")
		add(v+measure.Inch, "one inch")
		add(v-measure.Inch, "one inch")
		misread(feet, inches, eighths, rest, add)
		add(v+measure.Inch/2, "half an inch")
		add(v-measure.Inch/2, "half an inch")
	}
	doubt.Proposals = all
}

// parts takes a length apart as feet, inches, eighths and what is left.
func parts(l measure.Length) (feet, inches, eighths int, rest measure.Length) {
	return int(l / measure.Foot), int(l % measure.Foot / measure.Inch), int(l % measure.Inch / measure.Eighth), l % measure.Eighth
}

func join(feet, inches, eighths int) measure.Length {
	return measure.Length(feet)*measure.Foot + measure.Length(inches)*measure.Inch + measure.Length(eighths)*measure.Eighth
}

// misread changes one figure of feet-inches-eighths, those most alike in print
// and hand first.
func misread(feet, inches, eighths int, rest measure.Length, add func(measure.Length, string)) {
	for _, alike := range [][]int{{1, 7}, {3, 8}, {5, 6}, {0, 6}, {4, 9}, {3, 5}, {0, 8}} {
		for _, pair := range [][2]int{{alike[0], alike[1]}, {alike[1], alike[0]}} {
			for i, have := range []int{feet, inches, eighths} {
				if have == pair[0] && (i < 2 || pair[1] < 8) {
					p := [3]int{feet, inches, eighths}
					p[i] = pair[1]
					add(join(p[0], p[1], p[2])+rest, "one figure misread")
				}
			}
		}
	}
	for e := range 8 {
		add(join(feet, inches, e)+rest, "the eighths")
	}
	for i := range 12 {
		add(join(feet, i, eighths)+rest, "the inches")
	}
}

// decimalSlips moves the point and changes one figure of a decimal number.
func decimalSlips(v measure.Length, o Offsets, add func(measure.Length, string)) {
	add(v*10, "the decimal point")
	add(v/10, "the decimal point")
	for step := o.Resolution; step > 0 && step <= v.Abs()*10+1; step *= 10 {
		digit := measure.Length(math.Mod(math.Floor(float64(v.Abs())/float64(step)), 10))
		for d := range measure.Length(10) {
			if d != digit {
				add(v+(d-digit)*step, "one figure")
			}
		}
	}
}

// swapped says that a value and its neighbour's would both fit if they changed
// places, the neighbour's own place being judged by the curve without both.
func swapped(o Offsets, f fair.Flag, rows []fair.Row, d int, tolerance measure.Length) (measure.Length, bool) {
	at := f.At + d
	row := rows[f.Row]
	if at < 0 || at >= len(row.Given) || !row.Given[at] {
		return 0, false
	}
	bare := fair.Row{X: row.X, Y: row.Y, Given: append([]bool{}, row.Given...)}
	bare.Given[f.At], bare.Given[at] = false, false
	here, okHere := fair.Fill(bare, f.At)
	there, okThere := fair.Fill(bare, at)
	within := func(steps, want float64) bool {
		return math.Abs(steps-want)*float64(o.Resolution) <= float64(tolerance)
	}
	if !okHere || !okThere || !within(row.Y[at], here) || !within(row.Y[f.At], there) || within(row.Y[at], there) {
		return 0, false
	}
	return o.Lines[f.Row].Values[at].Value, true
}

// equalsNeighbour says that a doubtful value is that of the next station.
func equalsNeighbour(o Offsets, f fair.Flag) bool {
	values := o.Lines[f.Row].Values
	for _, k := range []int{f.At - 1, f.At + 1} {
		if k >= 0 && k < len(values) && values[k].OK() && values[k].Value == values[f.At].Value {
			return true
		}
	}
	return false
}
