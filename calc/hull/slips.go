package hull

import (
	"math"

	"strakebook/calc/measure"
)

// alikeInPrint is the figures most often taken for one another in print and
// hand. From memory.
var alikeInPrint = [10][]int{0: {6, 8}, 1: {7}, 2: {}, 3: {8, 5}, 4: {9}, 5: {6, 3}, 6: {5, 0}, 7: {1}, 8: {3, 0}, 9: {4}}

// parts takes a length apart as feet, inches, eighths and what is left.
func parts(l measure.Length) (feet, inches, eighths int, rest measure.Length) {
	return int(l / measure.Foot), int(l % measure.Foot / measure.Inch), int(l % measure.Inch / measure.Eighth), l % measure.Eighth
}

func join(feet, inches, eighths int) measure.Length {
	return measure.Length(feet)*measure.Foot + measure.Length(inches)*measure.Inch + measure.Length(eighths)*measure.Eighth
}

// slipped is several readings that one slip could have come from, which share
// its weight.
func slipped(reason string, weight float64, values ...measure.Length) []slip {
	var all []slip
	for _, v := range values {
		all = append(all, slip{Proposal{Value: v, Reason: reason}, weight / float64(len(values))})
	}
	return all
}

// imperialSlips is the readings that a slip could have made a value in feet,
// inches and eighths of.
func imperialSlips(v measure.Length) []slip {
	if v < 0 {
		return nil
	}
	feet, inches, eighths, rest := parts(v)
	all := slipped("one foot", 1, v+measure.Foot, v-measure.Foot)
	all = append(all, slipped("one inch", 1, v+measure.Inch, v-measure.Inch)...)
	all = append(all, slipped("half an inch", 1, v+measure.Inch/2, v-measure.Inch/2)...)
	if eighths < 12 && inches < 8 {
		all = append(all, slipped("inches and eighths changed places", 1, join(feet, eighths, inches)+rest)...)
	}
	places := []measure.Length{join(0, feet, inches) + rest}
	if feet == 0 {
		places = append(places, join(inches, eighths, 0)+rest)
	}
	all = append(all, slipped("figures slipped one place", 1, places...)...)
	all = append(all, misread(feet, inches, eighths, rest)...)
	all = append(all, anyFigure("the inches", "inches dropped", 12, inches, func(i int) measure.Length { return join(feet, i, eighths) + rest })...)
	return append(all, anyFigure("the eighths", "eighths dropped", 8, eighths, func(e int) measure.Length { return join(feet, inches, e) + rest })...)
}

// anyFigure puts any other figure in a place; where there is none it was dropped,
// which is done more often.
func anyFigure(reason, dropped string, n, have int, with func(int) measure.Length) []slip {
	var values []measure.Length
	for i := range n {
		if i != have {
			values = append(values, with(i))
		}
	}
	if have == 0 {
		return slipped(dropped, 1, values...)
	}
	return slipped(reason, 0.5, values...)
}

// misread changes one figure for one like it.
func misread(feet, inches, eighths int, rest measure.Length) []slip {
	var values []measure.Length
	for i, have := range []int{feet, inches % 10, eighths} {
		if have > 9 {
			continue
		}
		for _, like := range alikeInPrint[have] {
			p := [3]int{feet, inches, eighths}
			p[i] += like - have
			if p[1] < 12 && p[2] < 8 {
				values = append(values, join(p[0], p[1], p[2])+rest)
			}
		}
	}
	return slipped("one figure misread", 2, values...)
}

// decimalSlips is the readings that a slip could have made a decimal number of:
// the point moved, two figures changed about, one figure another.
func decimalSlips(v, step measure.Length) []slip {
	if v < 0 || step <= 0 {
		return nil
	}
	all := slipped("the decimal point", 1, v*10, v/10)
	var digits []int
	for rest := v / step; rest > 0; rest /= 10 {
		digits = append(digits, int(rest%10)) // the last first
	}
	var turned, like, other []measure.Length
	place := step
	for i, d := range digits {
		if i+1 < len(digits) {
			turned = append(turned, v+measure.Length(digits[i+1]-d)*place+measure.Length(d-digits[i+1])*place*10)
		}
		for n := range 10 {
			if n != d {
				other = append(other, v+measure.Length(n-d)*place)
			}
		}
		for _, n := range alikeInPrint[d] {
			like = append(like, v+measure.Length(n-d)*place)
		}
		if place > math.MaxInt64/100 {
			break
		}
		place *= 10
	}
	all = append(all, slipped("figures changed about", 1, turned...)...)
	all = append(all, slipped("one figure misread", 1, like...)...)
	return append(all, slipped("one figure", 1, other...)...)
}
