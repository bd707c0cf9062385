package hull

import "strakebook/calc/finding"

// What drawing the hull finds.
var (
	HullUnworked = &finding.Kind{
		Code: "hull-unworked", Severity: finding.Warning, Title: "part of the hull not worked out",
		Why:    "Girths, lengths, moulds and bevels follow from the offsets only where these say enough.",
		Remedy: "give what is named, or leave it if the tables are not wanted",
	}
	SectionThin = &finding.Kind{
		Code: "section-thin", Severity: finding.Warning, Title: "too few offsets for a section",
		Why:    "A section is drawn through the lines that cross it; with one or none there is nothing to draw, and the seams pass over the station.",
		Remedy: "fill in the station from the designer's table",
	}
	SectionBeyond = &finding.Kind{
		Code: "section-beyond", Severity: finding.Warning, Title: "offsets above the deck or below the rabbet",
		Why:    "A half-breadth at a height the hull does not reach at that station contradicts the deck or the rabbet.",
		Remedy: "check the deck's and rabbet's heights against the plan there",
	}
	GirthFrom = &finding.Kind{
		Code: "girth-from", Severity: finding.Note, Title: "girths not from the rabbet",
		Why:    "Strakes are divided between the rabbet and the sheer; from another line the widths are not the planks'.",
		Remedy: "add the rabbet's or the keel's heights",
	}
	GirthTo = &finding.Kind{
		Code: "girth-to", Severity: finding.Note, Title: "girths not to the deck",
		Why:    "Strakes are divided between the rabbet and the sheer; to another line the widths are not the planks'.",
		Remedy: "add the deck's heights and half-breadths",
	}
	MouldSurface = &finding.Kind{
		Code: "mould-surface", Severity: finding.Note, Title: "moulds without deduction for planking",
		Why:    "A mould made to the outside of planking makes the boat bigger by the planking on every side.",
		Remedy: "ask the designer which surface the offsets are to and set \"offsets are to\"",
	}
	LineUnused = &finding.Kind{
		Code: "line-unused", Severity: finding.Note, Title: "line of offsets not used",
		Why:    "A line whose place is not known cannot be laid on the sections.",
		Remedy: "write beside its name, or in columns of their own, the height at which the diagonal leaves the centre line and its angle below level: Diagonal A, 4-0-0, 45 deg",
	}
)

// shapeKinds is every kind of finding that working out the hull makes.
func shapeKinds() []*finding.Kind {
	return []*finding.Kind{HullUnworked, SectionThin, SectionBeyond, GirthFrom, GirthTo, ViewsApart, MouldSurface, MouldThickness, ButtockOutside, LineUnused,
		LiningSum, SeamHollow, SeamUneven, StrakeWide, StrakeNarrow, StrakeRun, StrakeBetween, StrakeFromHull, HungOpen, HungOff, HungOdd, SpileUnfit, SpileHollow, ShutterOpen, GarboardOpen}
}
