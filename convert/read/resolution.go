package read

import (
	"math"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// resolution is the smallest step in which a table's lengths are given.
func resolution(form measure.Form, decimals int, values []measure.Length) measure.Length {
	switch {
	case form.Notation != measure.Decimal:
		return coarser(inchPart(values, measure.SixtyFourth), values, 8, 4, 2)
	case form.Unit == measure.InInches || form.Unit == measure.InFeet:
		if s := inchPart(values, 1); s > 1 {
			return coarser(s, values, 8, 4, 2)
		}
	}
	unit := form.Unit.Length()
	if unit == 0 {
		unit = measure.Metre
	}
	for ; decimals < 6; decimals++ { // as many places as the figures themselves have
		if inSteps(values, float64(unit)/math.Pow10(decimals)) {
			break
		}
	}
	return coarser(max(1, unit.Times(math.Pow10(-decimals))), values, 1000, 500, 100, 50, 10, 5, 2)
}

// stepOfBoth is the step of two parts of one table: the finer, unless that is of
// figures too few to tell, which keep to the coarser as well.
func stepOfBoth(a, b hull.Offsets) measure.Length {
	if a.Resolution < b.Resolution {
		a, b = b, a
	}
	if b.Resolution == 0 || a.Form.Metric() == b.Form.Metric() && inSteps(given(b.Lines), float64(a.Resolution)) {
		return a.Resolution
	}
	return b.Resolution
}

// inchPart is the largest part of an inch from an eighth down that lengths are given in;
// the last where they are in none.
func inchPart(values []measure.Length, last measure.Length) measure.Length {
	for _, s := range []measure.Length{measure.Eighth, measure.Sixteenth, 2 * measure.SixtyFourth, measure.SixtyFourth} {
		if inSteps(values, float64(s)) {
			return s
		}
	}
	return last
}

// coarser is the largest of so many times a step that the figures of a table keep to,
// as to quarters of an inch or to fives of a unit: that none of twenty falls between
// by chance is one case in a million.
func coarser(step measure.Length, values []measure.Length, times ...measure.Length) measure.Length {
	const enough = 20
	figures := 0
	for _, v := range values {
		if v != 0 {
			figures++
		}
	}
	if figures < enough {
		return step
	}
	for _, n := range times {
		if inSteps(values, float64(n*step)) {
			return n * step
		}
	}
	return step
}

// inSteps says that lengths are whole numbers of a step: a slip or two does not make a
// table finer.
func inSteps(values []measure.Length, step float64) bool {
	odd := 0
	for _, v := range values {
		if n := float64(v) / step; math.Abs(n-math.Round(n)) > 0.01 {
			odd++
		}
	}
	return odd*50 <= len(values)
}
