package lay

import (
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/setting"
)

// PlankRule is which published rule keeps the planks' joints apart. They differ,
// so the yard chooses.
type PlankRule uint8

// The rules for planks.
const (
	ScarfedPlanks PlankRule = iota // old yacht rule, quoted by Souppez: 4 ft, three planks between in one plane
	Butts                          // Great Lakes insurers' rules of 1866: 5 ft, 4 ft with one between, none in one bay unless three lie between
	FrameSpaces                    // TB 55-1900-201-45/1 para 2-13a: three frame spaces, three strakes between in one bay
)

// Rules is what a yard may set about its joints.
type Rules struct {
	Units           measure.Style // of the lengths that findings name
	Plank           PlankRule
	PlankNeighbours measure.Length // scarfed planks: neighbours' scarfs at least this apart
	PlankBetween    int            // scarfed planks: so many planks between scarfs in one place
	Frames          measure.Length // frame spacing; 0 where there are no frames, and so no bay rule
	StripNeighbours measure.Length
	StripBetween    int
	LeastPlank      measure.Length // shortest piece
	LeastStrip      measure.Length
	EndZone         measure.Length // no joint nearer than this to a strake's ends
	On              On             // what joints fall on
	Grid            measure.Length // joints fall on whole steps of this
	SkinsClear      measure.Length // second skin's joints this clear of the first's; 0 for off
	Unlike          bool           // port planned apart from starboard
}

// DefaultRules is what holds where the book and the command line say nothing.
func DefaultRules() Rules {
	return Rules{
		PlankNeighbours: 4 * measure.Foot, // old yacht rule, 1.2 m, quoted by Souppez, "The Strength of Scarf Joints"
		PlankBetween:    3,                // the same
		StripNeighbours: 2 * measure.Foot, // common practice, no source
		StripBetween:    2,                // common practice, no source
		LeastPlank:      6 * measure.Foot, // TB 55-1900-201-45/1 para 2-12: six frame spaces, never under 5 ft
		LeastStrip:      4 * measure.Foot, // common practice, no source
		Grid:            measure.Inch,     // our choice
	}
}

// Settings lists the rules under the names the Settings sheet gives them.
func (r *Rules) Settings() []setting.Setting {
	const yacht = "old yacht rule, quoted by Souppez, The Strength of Scarf Joints"
	const cp = "common practice, no source"
	far := 40 * measure.Foot
	return []setting.Setting{
		{Name: "plank joint rule", Meaning: "scarfed planks: neighbours apart by \"plank joints apart\", so many planks between in one place; butts: 5 ft, 4 ft with one between, three between in one bay; frame spaces: three of them, three between in one bay", Source: "published rules differ: " + yacht + "; Great Lakes insurers' rules 1866; TB 55-1900-201-45/1 para 2-13", Value: setting.Choice(&r.Plank, "scarfed planks", "butts", "frame spaces")},
		{Name: "plank joints apart", Meaning: "least distance between scarfs of neighbouring planks", Source: yacht + " (1.2 m)", Value: setting.Length(&r.PlankNeighbours, 0, far)},
		{Name: "planks between", Meaning: "planks that must lie between two scarfs in one place", Source: yacht, Value: setting.Count(&r.PlankBetween, 0, 10)},
		{Name: "frame spacing", Meaning: "between frames; 0 where there are none, and no rule by bays", Source: "the designer's", Value: setting.Length(&r.Frames, 0, 10*measure.Foot)},
		{Name: "strip joints apart", Meaning: "least distance between scarfs of neighbouring strips", Source: cp, Value: setting.Length(&r.StripNeighbours, 0, far)},
		{Name: "strips between", Meaning: "strips that must lie between two scarfs in one place", Source: cp, Value: setting.Count(&r.StripBetween, 0, 10)},
		{Name: "least plank piece", Meaning: "shortest piece of a plank", Source: "TB 55-1900-201-45/1 para 2-12: six frame spaces, never under 5 ft", Value: setting.Length(&r.LeastPlank, measure.Inch, far)},
		{Name: "least strip piece", Meaning: "shortest piece of a strip", Source: cp, Value: setting.Length(&r.LeastStrip, measure.Inch, far)},
		{Name: "joint end zone", Meaning: "no joint nearer than this to the ends of a strake", Source: "our choice", Value: setting.Length(&r.EndZone, 0, far)},
		{Name: "joints on", Meaning: "what the middles of joints fall on: grid, steps of \"joint grid\"; stations, those of the offsets; frame spaces, their middles, by \"frame spacing\"", Source: "our choice", Value: setting.Choice(&r.On, "grid", "stations", "frame spaces")},
		{Name: "joint grid", Meaning: "joints fall on whole steps of this from the strake's fore end", Source: "our choice", Value: setting.Length(&r.Grid, measure.Inch/4, 4*measure.Foot)},
		{Name: "skins clear", Meaning: "joints of a later skin this clear of the joints of the skin before; 0: not asked for", Source: "our choice", Value: setting.Length(&r.SkinsClear, 0, far)},
		{Name: "port by itself", Meaning: "yes: port's joints are planned apart from starboard's; no: port as starboard", Source: "our choice", Value: setting.YesNo(&r.Unlike)},
	}
}

// Reach is how many strakes away a skin's rules look.
const Reach = 12

// Apart is the least distance between joints of strakes so many places apart,
// and the rule in words; 0 where the rules allow any. A scarf takes up its own
// run, so "in one place" means nearer than that.
func (r Rules) Apart(skin hull.Skin, places int, run measure.Length) (measure.Length, string) {
	switch {
	case skin == hull.Strips:
		return r.staggered(places, r.StripNeighbours, r.StripBetween, run, "strips")
	case r.Plank == ScarfedPlanks:
		return r.staggered(places, r.PlankNeighbours, r.PlankBetween, run, "planks")
	case r.Plank == Butts && places == 1:
		return 5 * measure.Foot, "neighbours' joints at least " + r.Units.Long(5*measure.Foot) + " apart"
	case r.Plank == Butts && places == 2:
		return 4 * measure.Foot, "joints with one strake between at least " + r.Units.Long(4*measure.Foot) + " apart"
	case r.Plank == FrameSpaces && places == 1 && r.Frames > 0:
		return 3 * r.Frames, "neighbours' joints at least three frame spaces apart"
	}
	return 0, ""
}

func (r Rules) staggered(places int, neighbours measure.Length, between int, run measure.Length, things string) (measure.Length, string) {
	switch {
	case places == 1 && neighbours > 0:
		return neighbours, "neighbours' scarfs at least " + r.Units.Long(neighbours) + " apart"
	case places <= between:
		return run, "at least " + number(between) + " " + things + " between scarfs in one place"
	}
	return 0, ""
}

// SameBay says that the rules forbid joints of strakes so many places apart in
// one frame bay, where there are frames.
func (r Rules) SameBay(skin hull.Skin, places int) bool {
	return skin != hull.Strips && r.Plank != ScarfedPlanks && r.Frames > 0 && places <= 3
}

// Least is the shortest piece of a skin.
func (r Rules) Least(skin hull.Skin) measure.Length {
	if skin == hull.Strips {
		return r.LeastStrip
	}
	return r.LeastPlank
}

// Kinds is every kind of finding this trade makes.
func Kinds() []*finding.Kind {
	return []*finding.Kind{JointNear, JointBay, JointZone, JointNone, JointUnfound, JointPlaces, PieceShort}
}
