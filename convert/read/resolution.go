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
		return inchPart(values, measure.SixtyFourth)
	case form.Unit == measure.InInches || form.Unit == measure.InFeet:
		if s := inchPart(values, 1); s > 1 {
			return s
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
	return max(1, unit.Times(math.Pow10(-decimals)))
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

// coarser is the coarsest step that all figures of a table keep to, as quarters of an
// inch or fives of a unit: that none of twenty falls between by chance is one case in a
// million. The hull is drawn and checked to the resolution all the same: figures that
// are round may be meant so.
func coarser(o hull.Offsets) measure.Length {
	const enough = 20
	values, figures := given(o.Lines), 0
	for _, v := range values {
		if v != 0 {
			figures++
		}
	}
	times := []measure.Length{1000, 500, 100, 50, 10, 5, 2}
	if o.Resolution%measure.SixtyFourth == 0 {
		times = []measure.Length{8, 4, 2}
	}
	for _, n := range times {
		if figures >= enough && inSteps(values, float64(n*o.Resolution)) {
			return n * o.Resolution
		}
	}
	return o.Resolution
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
