package scarf

import (
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/setting"
	"strakebook/calc/source"
)

// Rules is what a yard may set about its scarfs.
type Rules struct {
	Units      measure.Style  // of the lengths that findings name
	StripSlope float64        // n of n to 1
	PlankSlope float64        // n of n to 1
	Nib        measure.Length // thickness left at each feather; 0 for a feather edge
	LeastSlope float64        // warn of anything steeper
	MostSlope  float64        // warn of anything flatter
	FenceError measure.Angle  // by which the two saws' fences may differ
	Feathers   Feathers       // the way the outside feathers point
}

// DefaultRules is what holds where the book and the command line say nothing.
func DefaultRules() Rules {
	return Rules{
		StripSlope: 7,        // common practice, no source: 5/8 in strips in a glued skin
		PlankSlope: 12,       // Wood Handbook FPL-GTR-190 ch. 10: 1 in 12 or flatter is strongest
		Nib:        0,        // our choice: a plain glued scarf has feather edges
		LeastSlope: 4,        // old yacht rule for planks, quoted by Souppez, "The Strength of Scarf Joints"
		MostSlope:  20,       // the flattest in the same: Birmingham, 95 per cent at 20 to 1
		FenceError: 0.1,      // our choice: the step in which a fence's error is quoted
		Feathers:   PointAft, // common practice, no source
	}
}

// Settings lists the rules under the names the Settings sheet gives them.
func (r *Rules) Settings() []setting.Setting {
	return []setting.Setting{
		{Name: "strip scarf slope", Meaning: "run of a strip's scarf for each unit of thickness, where the list of strakes gives none of its own; on the command line it holds over the list", Source: "common practice, no source", Value: setting.Number(&r.StripSlope, "to 1", 1, 50)},
		{Name: "plank scarf slope", Meaning: "run of a plank's scarf for each unit of thickness, where the list of strakes gives none of its own; on the command line it holds over the list", Source: "Wood Handbook FPL-GTR-190 ch. 10: 1 in 12 or flatter is strongest", Value: setting.Number(&r.PlankSlope, "to 1", 1, 50)},
		{Name: "scarf nib", Meaning: "thickness left at each feather; 0 for a feather edge", Source: "our choice", Value: setting.Length(&r.Nib, 0, 2*measure.Inch)},
		{Name: "least scarf slope", Meaning: "scarfs steeper than this are warned of", Source: "old yacht rule for planks, quoted by Souppez, The Strength of Scarf Joints", Value: setting.Number(&r.LeastSlope, "to 1", 1, 50)},
		{Name: "most scarf slope", Meaning: "scarfs flatter than this are warned of, as slips of the pen", Source: "the flattest that Souppez quotes, The Strength of Scarf Joints", Value: setting.Number(&r.MostSlope, "to 1", 1, 200)},
		{Name: "fence difference", Meaning: "by which the fences of the two saws may differ: the gap at the feather is given for it", Source: "our choice", Value: setting.Angle(&r.FenceError, 0, 5)},
		{Name: "outside feathers point", Meaning: "the way the feathers on the outside face point", Source: "common practice, no source", Value: setting.Choice(&r.Feathers, "aft", "forward")},
	}
}

// Slope is the slope of a skin's scarfs where the strake gives none of its own.
func (r Rules) Slope(skin hull.Skin, given source.Reading[float64]) float64 {
	if skin == hull.Strips {
		return given.Or(r.StripSlope)
	}
	return given.Or(r.PlankSlope)
}

// Kinds is every kind of finding this trade makes.
func Kinds() []*finding.Kind { return []*finding.Kind{Steep, Flat, NoSlope, NibThick} }
