package bevel

import "strakebook/calc/finding"

// What the checks of bevels find.
var (
	Gap = &finding.Kind{
		Code: "bevel-gap", Severity: finding.Warning, Title: "reading missing inside a seam",
		Why:    "The saw's tilt must be known at every station it passes.",
		Remedy: "lift the bevel there; until then the smooth run of its neighbours is sawn, and marked",
	}
	Jump = &finding.Kind{
		Code: "bevel-jump", Severity: finding.Warning, Title: "reading off the run of its neighbours",
		Why:    "Bevels change slowly along a plank; one that jumps opens a seam on one face for the whole of a frame space.",
		Remedy: "lift the bevel there again",
	}
	Tilted = &finding.Kind{
		Code: "bevel-tilt", Severity: finding.Warning, Title: "bevel beyond the saw's tilt",
		Why:    "The saw cannot be set to it; the rest must come off with the plane.",
		Remedy: "lift it again, or plan to plane the rest; set \"saw tilt\" if the saw can do more",
	}
	Mixed = &finding.Kind{
		Code: "bevel-mixed", Severity: finding.Error, Title: "reading about 90 among readings off square",
		Why:    "Whether 92 means 2 or -2 depends on the face the gauge's stock lay on: the wrong one cuts a wrong plank.",
		Remedy: "write it off square like the others, or set \"bevels read\"",
	}
	GaugeOpen = &finding.Kind{
		Code: "bevel-gauge", Severity: finding.Error, Title: "gauge face not stated",
		Why:    "With the stock on the inside face 92 is a bevel of 2; on the outside face it is -2.",
		Remedy: "set \"bevels read\" to the face the gauge's stock lay on",
	}
	Counted = &finding.Kind{
		Code: "bevel-count", Severity: finding.Warning, Title: "readings do not match the stations",
		Why:    "One reading skipped or written twice shifts every one after it by a station.",
		Remedy: "count the readings along the plank against the stations",
	}
	Repeated = &finding.Kind{
		Code: "bevel-repeat", Severity: finding.Note, Title: "same reading twice where the bevel changes fast",
		Why:    "It may be the same reading written twice.",
		Remedy: "look at the two stations once more",
	}
	Turned = &finding.Kind{
		Code: "bevel-turn", Severity: finding.Warning, Title: "bevel changes faster than the saw can be turned",
		Why:    "Between two marks the tilt must follow the bevel by hand while the plank moves.",
		Remedy: "slow the feed there and set marks closer, or set \"most turn\"",
	}
	StrakeUnknown = &finding.Kind{
		Code: "bevel-strake", Severity: finding.Warning, Title: "bevels of a strake that is not listed",
		Why:    "Without the strake's thickness and width the faces and the batten cannot be worked out.",
		Remedy: "list the strake, or write its name as the list has it",
	}
	AlongOpen = &finding.Kind{
		Code: "bevel-along", Severity: finding.Note, Title: "distance along the edge taken from the station spacing",
		Why:    "Along a plank that runs at an angle to the middle line the marks lie farther apart than the stations.",
		Remedy: "give a row of distances along the edge, or place the marks from the station marks on the plank itself",
	}
	Unplaced = &finding.Kind{
		Code: "bevel-unplaced", Severity: finding.Error, Title: "stations of the bevels have no positions",
		Why:    "Marks cannot be laid along the plank without them.",
		Remedy: "give positions in the offsets, a row of distances, or set \"station spacing\"",
	}
	HoodEnd = &finding.Kind{
		Code: "bevel-hood", Severity: finding.Note, Title: "no reading to the hood end",
		Why:    "Beyond the last reading nothing is known, and a guess cuts a wrong end.",
		Remedy: "lift the bevel at the hood end, or leave it square and fit it by hand",
	}
	SidesApart = &finding.Kind{
		Code: "bevel-sides", Severity: finding.Warning, Title: "port and starboard read differently",
		Why:    "A hull built fair reads alike on both sides: where it does not, one reading is wrong or the sides differ.",
		Remedy: "lift the bevel again on both sides; set \"sides within\" if the hull is so",
	}
	SidesOpposed = &finding.Kind{
		Code: "bevel-sides-sign", Severity: finding.Warning, Title: "one side read with the sign changed",
		Why:    "Bevels are + where the outside face is the wider on either side of the hull; the sign turned about cuts the seam open on the outside.",
		Remedy: "check on which face the gauge's stock lay on each side, and turn the sign of the side that is wrong",
	}
	TrialBeyond = &finding.Kind{
		Code: "bevel-trial", Severity: finding.Note, Title: "bevels beyond the trial cuts",
		Why:    "How the saw's scale errs there was not tried.",
		Remedy: "make a trial cut at the steepest bevel to either hand",
	}
)
