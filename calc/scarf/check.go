package scarf

import (
	"fmt"

	"strakebook/calc/finding"
)

// Steep is a scarf steeper than the rule chosen.
var Steep = &finding.Kind{
	Code: "scarf-steep", Severity: finding.Warning, Title: "scarf steeper than the rule",
	Why:    "A steep scarf puts end grain to end grain: a plain butt keeps about a quarter of the wood's strength (Wood Handbook ch. 10), and a scarf comes near it as it steepens.",
	Remedy: "flatten the slope, or have the designer pass it and set \"least scarf slope\"",
}

// Flat is a scarf flatter than any in use.
var Flat = &finding.Kind{
	Code: "scarf-flat", Severity: finding.Warning, Title: "scarf flatter than any in use",
	Why:    "A slope so flat is more often a slip of the pen, 120 for 12, and every joint then spends that much more lumber.",
	Remedy: "write the slope again, or set \"most scarf slope\" if it is meant",
}

// NoSlope is a slope that makes no scarf.
var NoSlope = &finding.Kind{
	Code: "scarf-slope", Severity: finding.Error, Title: "slope makes no scarf",
	Why:    "A scarf needs a run along the plank. Without one its joints are worked out as butts, end to end.",
	Remedy: "give the slope as the run for one of thickness: 12 for 12 to 1",
}

// NibThick is a nib that leaves no scarf.
var NibThick = &finding.Kind{
	Code: "scarf-nib", Severity: finding.Error, Title: "nib leaves no scarf",
	Why:    "Two nibs of half the thickness leave nothing to glue but end grain. Without a scarf the joints are worked out as butts, end to end.",
	Remedy: "set \"scarf nib\" to less than half the thinnest plank",
}

// check judges one line of the table: its first use is named, the others that
// share the fault beside it.
func check(u Use, r Rules) finding.List {
	var found finding.List
	reads := fmt.Sprintf("%g", u.Slope)
	switch {
	case !sloped(u.Slope):
		found = append(found, finding.Finding{
			Kind: NoSlope, Cell: u.Cell, Reads: reads,
			Text: fmt.Sprintf("%s scarfs of %g to 1 are no scarfs", u.Skin, u.Slope),
		})
	case u.Slope < r.LeastSlope:
		found = append(found, finding.Finding{
			Kind: Steep, Cell: u.Cell, Reads: reads,
			Text:     fmt.Sprintf("%s scarfs of %g to 1 are steeper than %g to 1", u.Skin, u.Slope, r.LeastSlope),
			Suggests: fmt.Sprintf("%g to 1 or flatter", r.LeastSlope),
		})
	case r.MostSlope > 0 && u.Slope > r.MostSlope:
		found = append(found, finding.Finding{
			Kind: Flat, Cell: u.Cell, Reads: reads,
			Text: fmt.Sprintf("%s scarfs of %g to 1 are flatter than %g to 1", u.Skin, u.Slope, r.MostSlope),
		})
	}
	if u.Thickness > 0 && 2*r.Nib >= u.Thickness {
		found = append(found, finding.Finding{
			Kind: NibThick, Cell: u.Cell,
			Text: fmt.Sprintf("a nib of %s leaves no scarf on %s stock of %s", r.Units.Small(r.Nib), u.Skin, r.Units.Small(u.Thickness)),
		})
	}
	return found
}
