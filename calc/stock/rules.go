package stock

import (
	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/setting"
)

// Rules is what a yard may set about its lumber.
type Rules struct {
	Units      measure.Style // of the lengths that findings name
	RipKerf    measure.Length
	CrossKerf  measure.Length
	EndTrim    measure.Length // of a board, both ends together
	DressBy    DressBy
	Dressing   measure.Length // rough thickness beyond finished
	Edging     measure.Length // of a board's width, both edges together
	StripsFlat bool           // strips are ripped with the board's thickness as their thickness
	JointCost  float64        // what a joint costs to make, in the rack's money
	Spares     float64        // per cent of boards ordered beyond the plan
	Hardwood   bool           // board feet of hardwood by surface measure to the whole foot
	Longest    measure.Length // piece, where there is no rack to say
	ShareCuts  bool           // one slanted cut serves the ends of two pieces
	Spread     Spread         // of glue; 0 for not set
	Tries      int            // moves of the search: more take longer and may save lumber

	Told func(part float64) // is told how far the search is, from 0 to 1; nil: nobody asks
}

// DefaultRules is what holds where the book and the command line say nothing.
func DefaultRules() Rules {
	return Rules{
		RipKerf:   measure.Inch / 8,  // common practice, no source
		CrossKerf: measure.Inch / 8,  // common practice, no source
		EndTrim:   4 * measure.Inch,  // our choice: checks at both ends
		Dressing:  measure.Inch / 8,  // Griffith, Advanced Projects in Woodwork: at least 1/8 in for mill planing
		Edging:    measure.Inch / 4,  // Griffith: 1/4 in of width on a rough cutting list
		Tries:     4000,              // our choice: well under a second for sixty strakes
		Longest:   16 * measure.Foot, // our choice: softwood is commonly sold to 16 ft and beyond
	}
}

// Settings lists the rules under the names the Settings sheet gives them.
func (r *Rules) Settings() []setting.Setting {
	const cp = "common practice, no source"
	return []setting.Setting{
		{Name: "rip kerf", Meaning: "wood the rip saw takes", Source: cp, Value: setting.Length(&r.RipKerf, 0, measure.Inch)},
		{Name: "cross-cut kerf", Meaning: "wood the cross-cut saw takes", Source: cp, Value: setting.Length(&r.CrossKerf, 0, measure.Inch)},
		{Name: "end trim", Meaning: "lost off a board for checks, both ends together", Source: "our choice", Value: setting.Length(&r.EndTrim, 0, 4*measure.Foot)},
		{Name: "dressing by", Meaning: "allowance: the dressing allowance; quarters: what rough hardwood loses surfaced on two sides, 3/16 in to 6/4 and 1/4 in beyond", Source: "the allowance is our choice; quarters by the tables of engineeringtoolbox and woodbin, S2S", Value: setting.Choice(&r.DressBy, "allowance", "quarters")},
		{Name: "dressing allowance", Meaning: "rough thickness wanted beyond the finished; 0 where the rack is dressed", Source: "Griffith, Advanced Projects in Woodwork: at least 1/8 in for mill planing", Value: setting.Length(&r.Dressing, 0, 2*measure.Inch)},
		{Name: "edge allowance", Meaning: "lost off a board's width in straightening it, both edges together", Source: "Griffith, Advanced Projects in Woodwork: 1/4 in", Value: setting.Length(&r.Edging, 0, 4*measure.Inch)},
		{Name: "strips flat", Meaning: "no: strips are ripped off a board's edge, its thickness becoming their width; yes: its thickness becomes their thickness; either way the faces that are ripped are not dressed: list a strip as it leaves the saw", Source: cp, Value: setting.YesNo(&r.StripsFlat)},
		{Name: "joint cost", Meaning: "what one more joint may cost in lumber, in the rack's money", Source: "our choice", Value: setting.Number(&r.JointCost, "", 0, 1e6)},
		{Name: "spares", Meaning: "boards ordered beyond the plan", Source: "our choice", Value: setting.Number(&r.Spares, "per cent", 0, 200)},
		{Name: "hardwood measure", Meaning: "yes: board feet by surface measure to the whole foot times thickness", Source: "NHLA rules, as the American Hardwood Export Council gives them", Value: setting.YesNo(&r.Hardwood)},
		{Name: "share slanted cuts", Meaning: "yes: where two pieces follow each other from a board, one slanted cut serves the scarfs of both; no: blanks are cross-cut square, then scarfed", Source: "our choice", Value: setting.YesNo(&r.ShareCuts)},
		{Name: "glue spread", Meaning: "glue a square foot of joint, or a square metre, in whatever measure it is bought by: 0.05 lb a square foot, 250 g/m2; 0: not worked out", Source: "the glue maker's: none is claimed here", Value: spread{&r.Spread}},
		{Name: "tries", Meaning: "how long to look for a plan of less lumber, and for the least it could be: more tries take longer", Source: "our choice", Value: setting.Count(&r.Tries, 1, 10_000_000)},
		{Name: "longest piece", Meaning: "where there is no rack to say", Source: "our choice", Value: setting.Length(&r.Longest, 4*measure.Foot, 60*measure.Foot)},
	}
}

// Kinds is every kind of finding this trade makes.
func Kinds() []*finding.Kind {
	return []*finding.Kind{Incomplete, Absurd, Delivery, Thin, Narrow, Unused, NoSpecies, NoThick, NoWide, NoLong, Out, NoRack, NoPrice, PieceSize, PlanedOver}
}
