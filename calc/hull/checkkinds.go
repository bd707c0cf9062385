package hull

import "strakebook/calc/finding"

// What the checks of stations find.
var (
	StationRepeated = &finding.Kind{
		Code: "station-repeated", Severity: finding.Warning, Title: "station named twice",
		Why:    "Two columns of one name cannot both be right, and a figure may be marked at the wrong mould.",
		Remedy: "give the station its own name",
	}
	StationOrder = &finding.Kind{
		Code: "station-order", Severity: finding.Warning, Title: "station out of order",
		Why:    "Positions must increase aft; a station out of order bends every line that crosses it.",
		Remedy: "check the station's name and position against the plan",
	}
	StationMissing = &finding.Kind{
		Code: "station-missing", Severity: finding.Warning, Title: "station missing from the run",
		Why:    "A station left out is a mould that will not be made, or a column lost in copying.",
		Remedy: "add the station's column, or rename the stations if none was ever drawn there",
	}
	StationBlank = &finding.Kind{
		Code: "station-blank", Severity: finding.Warning, Title: "station without offsets",
		Why:    "A column left empty is a mould that cannot be made.",
		Remedy: "fill in the station from the designer's table, or take the column out",
	}
	StationUnplaced = &finding.Kind{
		Code: "station-unplaced", Severity: finding.Note, Title: "stations without positions",
		Why:    "Fairness and lengths need true spacing; uneven spacing taken as even looks like a wrong offset.",
		Remedy: "add a row of positions, or set \"station spacing\"",
	}
)

// What the checks of offsets find.
var (
	OffsetGap = &finding.Kind{
		Code: "offset-gap", Severity: finding.Warning, Title: "offset missing inside a line",
		Why:    "A blank inside a line is a point the batten has nothing to pass through.",
		Remedy: "fill it in from the designer's table; write a dash if the line is not there",
	}
	OffsetOnBase = &finding.Kind{
		Code: "offset-on-base", Severity: finding.Note, Title: "heights left blank along the base",
		Why:    "Where a line has come down to the base its heights are often left out.",
		Remedy: "nothing, if the line lies on the base there",
	}
	OffsetJump = &finding.Kind{
		Code: "offset-jump", Severity: finding.Warning, Title: "offset far off the curve of its neighbours",
		Why:    "One wrong figure makes a hollow or a hump in the mould, and is felt in every plank that crosses it.",
		Remedy: "check the figure against the plan and ask the designer before lofting",
	}
	OffsetUnfair = &finding.Kind{
		Code: "offset-unfair", Severity: finding.Warning, Title: "line not fair, or a corner",
		Why:    "No single figure explains the unfairness: there may be a knuckle by design, or two wrong figures side by side.",
		Remedy: "spring a batten through these stations; if a corner is drawn there, leave it",
	}
	OffsetValley = &finding.Kind{
		Code: "offset-valley", Severity: finding.Warning, Title: "hollow where a line should rise and fall once",
		Why:    "Along a waterline and up a section the half-breadth rises to one greatest and then falls; a hollow in it is nearly always a wrong figure.",
		Remedy: "check this figure and the higher ones on both sides of it",
	}
	OffsetZero = &finding.Kind{
		Code: "offset-zero", Severity: finding.Warning, Title: "zero half-breadth inside a line",
		Why:    "A hull has no width of nothing between two sections: a zero there stands for a blank or a wrong figure.",
		Remedy: "write the figure, or leave the cell blank if there is none",
	}
	OffsetNegative = &finding.Kind{
		Code: "offset-negative", Severity: finding.Warning, Title: "negative half-breadth",
		Why:    "Half-breadths are measured out from the centre line and are never below nothing.",
		Remedy: "check the sign",
	}
	OffsetsSurface = &finding.Kind{
		Code: "offsets-surface", Severity: finding.Note, Title: "surface of the offsets not stated",
		Why:    "Offsets to the outside of planking make moulds too big by the planking, and the other way about.",
		Remedy: "ask the designer and set \"offsets are to\"",
	}
)

// What the checks of strakes find.
var (
	StrakeRepeated = &finding.Kind{
		Code: "strake-repeated", Severity: finding.Warning, Title: "strake named twice",
		Why:    "Two strakes of one name get one set of marks, and pieces are hung in the wrong place.",
		Remedy: "give each strake of a skin and side its own name",
	}
	StrakeNoThickness = &finding.Kind{
		Code: "strake-thickness", Severity: finding.Error, Title: "strake without thickness",
		Why:    "Scarfs, bevels and boards all follow from the thickness.",
		Remedy: "write the finished thickness",
	}
	StrakeNoWidth = &finding.Kind{
		Code: "strake-width", Severity: finding.Error, Title: "strake without width",
		Why:    "No board can be chosen for a piece of no width.",
		Remedy: "write the width on the inside face, the greatest where it tapers",
	}
	StrakeNoLength = &finding.Kind{
		Code: "strake-length", Severity: finding.Error, Title: "strake without length",
		Why:    "Joints and pieces follow from the length from hood end to hood end.",
		Remedy: "write the length, or give offsets it can be worked out from",
	}
	StrakeOdd = &finding.Kind{
		Code: "strake-odd", Severity: finding.Warning, Title: "strake of unlikely size",
		Why:    "A figure in the wrong column or unit makes a strake no yard would saw.",
		Remedy: "check the figure and its unit",
	}
)
