package read

import "strakebook/calc/finding"

// Kinds is every kind of finding that reading makes.
func Kinds() []*finding.Kind {
	return []*finding.Kind{
		LengthDate, LengthDateAsked, LengthUnread, LengthImpossible, LengthTwoWays, LengthChosen, PointInches, PointMinutes, UnitOpen, UnitAgainst, AngleUnread, AngleTime, NumberUnread,
		FormulaUnworked, SettingUnknown, SettingUnread, SettingTwice, TableTwice, TablesDiffer, TableUnknown, LayoutOpen,
		StationUnnamed, SpacingOpen, PositionTwice, ViewOpen, LineUnplaced, ValueTwice, RowUnnamed, StrakeRange, StrakeNone,
		SheetUnused, CellsUnused, ColumnUnused, SummaryLeft, SheetHidden, RowsHidden, NotesUnread, TextStruck,
		ConventionRead, ConventionTwo, ConventionOpen, FileLocked, NumberAsText, NumberKept, ShownOtherwise,
		GuideUnread, GuideUnmet, DecisionTaken, DecisionMoved, PlanBefore, FlawUnplaced, BoxFollowed, BoxAgainst, BoxLeft, TableEdge, OffsetsLeft, ListOpen, FramesOpen, ColumnUnread, PositionOpen,
	}
}

// What reading finds of tables as wholes.
var (
	TablesDiffer = &finding.Kind{
		Code: "table-differs", Severity: finding.Error, Title: "two copies of a table that differ",
		Why:    "Two revisions of one table stand in the books; only the first is worked by, and it may be the wrong one.",
		Remedy: "take the old one out, or skip it in the guide",
	}
	TableUnknown = &finding.Kind{
		Code: "table-unknown", Severity: finding.Warning, Title: "figures by station that nothing explains",
		Why:    "They may be offsets or bevels, or no part of the hull at all: taken for the wrong thing they would spoil every table.",
		Remedy: "write over them what they are, or name the table in a guide",
	}
	LayoutOpen = &finding.Kind{
		Code: "layout-open", Severity: finding.Error, Title: "table whose stations may run across or down",
		Why:    "Read the wrong way about, every line would be a section and every section a line.",
		Remedy: "write Station over the stations' names, or say in a guide which way they run",
	}
	UnitAgainst = &finding.Kind{
		Code: "unit-against", Severity: finding.Warning, Title: "heading that names another unit than the figures are written in",
		Why:    "The figures hold their own unit and were read by it; the heading may belong to another revision.",
		Remedy: "put the heading right",
	}
	ViewOpen = &finding.Kind{
		Code: "line-view", Severity: finding.Warning, Title: "line that may be heights or half-breadths",
		Why:    "A line of the wrong view bends every section it crosses, so it is left out of the sections.",
		Remedy: "write height or half-breadth beside its name, or as a title over the lines",
	}
	LineUnplaced = &finding.Kind{
		Code: "line-unplaced", Severity: finding.Warning, Title: "figures whose place is not given",
		Why:    "A figure that belongs to no line, seam or height cannot be used.",
		Remedy: "put it beside what it belongs to",
	}
	ValueTwice = &finding.Kind{
		Code: "value-twice", Severity: finding.Warning, Title: "figure given a second time",
		Why:    "Only one of the two can be right; the first is used.",
		Remedy: "take one of them out",
	}
	RowUnnamed = &finding.Kind{
		Code: "row-unnamed", Severity: finding.Warning, Title: "row of a list without a name",
		Why:    "What it is a row of cannot be told, so it was left.",
		Remedy: "fill in the name, or clear the row",
	}
	StationUnnamed = &finding.Kind{
		Code: "station-unnamed", Severity: finding.Warning, Title: "column of figures without a station's name",
		Why:    "Marks are made from the stations' names: a mould without one cannot be called out.",
		Remedy: "write the station's name over the column",
	}
	SpacingOpen = &finding.Kind{
		Code: "spacing-open", Severity: finding.Error, Title: "station spacings that can be read in two ways",
		Why:    "There is one spacing fewer than there are stations; with as many, each may be to the station before or the one after.",
		Remedy: "leave the first cell blank where each is from the station before, the last where it is to the next",
	}
	PositionTwice = &finding.Kind{
		Code: "position-twice", Severity: finding.Warning, Title: "station with two positions",
		Why:    "A mould stands in one place only; the first position is used.",
		Remedy: "put one of them right",
	}
	FramesOpen = &finding.Kind{
		Code: "frames-open", Severity: finding.Error, Title: "figures at frames among offsets at stations",
		Why:    "Frames are set where the builder wants them and stations where the designer drew them: frame 4 is seldom station 4.",
		Remedy: "give their positions, or a row of distances beside them; if they are the same places, set \"frames are stations\" to yes",
	}
	SettingTwice = &finding.Kind{
		Code: "setting-twice", Severity: finding.Warning, Title: "setting given two values",
		Why:    "Only one can hold; the first does.",
		Remedy: "take one of them out",
	}
	ColumnUnused = &finding.Kind{
		Code: "column-unused", Severity: finding.Note, Title: "column of a heading not known here",
		Why:    "What is in it was not used.",
		Remedy: "nothing, unless it should have been: name it as the tables of the starter book do",
	}
	ColumnUnread = &finding.Kind{
		Code: "column-unread", Severity: finding.Warning, Title: "column of widths, prices or stretches that cannot be read",
		Why:    "Its heading names widths or prices, and not at which stations or of how much they are, or where boards are sound and not where they are otherwise: what is in it was not used.",
		Remedy: "head widths by two or more stations of the offsets, as \"Width at sta. 2\", or the greatest alone \"Width\"; prices by what they are of: each, per board foot, per running foot or metre, per cubic metre; stretches of boards by what is not to be used",
	}
	SummaryLeft = &finding.Kind{
		Code: "summary-left", Severity: finding.Note, Title: "the table's own summary",
		Why:    "Totals, greatest breadths and areas are no rows of a table and were left.",
		Remedy: "nothing",
	}
	NotesUnread = &finding.Kind{
		Code: "note-unread", Severity: finding.Note, Title: "notes on figures",
		Why:    "A note may say that a figure is in doubt: notes are carried over and not read.",
		Remedy: "read them",
	}
	ConventionTwo = &finding.Kind{
		Code: "convention-two", Severity: finding.Warning, Title: "words that state a convention two ways",
		Why:    "Read by the wrong one every figure is wrong alike. What Settings, the guide or the command line say holds over the book's words; between two words of the book neither was taken.",
		Remedy: "strike out the one that does not hold, or set it in Settings",
	}
	ConventionOpen = &finding.Kind{
		Code: "convention-open", Severity: finding.Error, Title: "convention not stated",
		Why:    "The figures mean one thing or the other by it, and were left.",
		Remedy: "write it over the table",
	}
	AngleTime = &finding.Kind{
		Code: "angle-time", Severity: finding.Warning, Title: "bevel the spreadsheet had turned into a time of day",
		Why:    "A typed 2:30 becomes a time; hours and minutes were read as degrees and minutes.",
		Remedy: "check what it was read as, and write it again in a cell kept as text",
	}
	DecisionTaken = &finding.Kind{
		Code: "decision-taken", Severity: finding.Note, Title: "cell read as decided on the Warnings sheet",
		Why:    "The cell could not be read, or not surely: the table is read with the decision in its place.",
		Remedy: "nothing, or write the figure into the table itself",
	}
)

// What reading finds.
var (
	LengthDate = &finding.Kind{
		Code: "length-date", Severity: finding.Warning, Title: "measurement the spreadsheet had turned into a date",
		Why:    "A typed 3-4-6 becomes a date; what is stored then is a count of days, and no measurement.",
		Remedy: "check what it was read as, and write it again in a cell kept as text",
	}
	LengthDateAsked = &finding.Kind{
		Code: "length-date-unread", Severity: finding.Error, Title: "measurement stored as a date",
		Why:    "A typed 3-4-6 becomes a date, and which figure was feet, inches or eighths cannot be told from one or two alone.",
		Remedy: "write the measurement again in a cell kept as text",
	}
	LengthUnread = &finding.Kind{
		Code: "length-unread", Severity: finding.Error, Title: "measurement that cannot be read",
		Why:    "A figure that is guessed at is worse than one that is missing.",
		Remedy: "write it in the notation of the rest of the table",
	}
	LengthImpossible = &finding.Kind{
		Code: "length-impossible", Severity: finding.Error, Title: "measurement with impossible figures",
		Why:    "Inches above 11 after feet and eighths above 7 are slips: which figure is wrong cannot be told.",
		Remedy: "check the figure against the plan",
	}
	LengthTwoWays = &finding.Kind{
		Code: "length-two-ways", Severity: finding.Error, Title: "measurement that reads two ways",
		Why:    "In the old printing 0-11 is 11 in. or 1 1/8 in.; among feet 5-1/2 is five feet and a half, or five feet and half an inch.",
		Remedy: "write it as feet-inches-eighths, or with marks: 5' 6\"",
	}
	PointInches = &finding.Kind{
		Code: "point-inches", Severity: finding.Warning, Title: "decimals of a foot that may be inches",
		Why:    "40.11 is 40 ft 1 5/16 in. or 40 ft 11 in.; a spreadsheet keeps 40.1 and 40.10 as one number, so it cannot be told later.",
		Remedy: "give the guide the notation decimal if they are decimals, else write feet and inches with marks: 40' 11\"",
	}
	PointMinutes = &finding.Kind{
		Code: "point-minutes", Severity: finding.Warning, Title: "decimals of a degree that may be minutes",
		Why:    "2.30 is 2 degrees 18 minutes or 2 degrees 30 minutes.",
		Remedy: "give the guide the notation decimal, or degrees and minutes",
	}
	LengthChosen = &finding.Kind{
		Code: "length-chosen", Severity: finding.Warning, Title: "measurement that reads two ways, told by its neighbours",
		Why:    "In the old printing 0-11 is 11 in. or 1 1/8 in.; only one of the two lies anywhere near the line.",
		Remedy: "check what it was read as",
	}
	UnitOpen = &finding.Kind{
		Code: "unit-open", Severity: finding.Error, Title: "numbers without a unit",
		Why:    "Thirty may be inches or millimetres: a guess makes every piece wrong.",
		Remedy: "write the unit in the heading or caption, or set \"bare numbers\"",
	}
	AngleUnread = &finding.Kind{
		Code: "angle-unread", Severity: finding.Error, Title: "bevel that cannot be read",
		Why:    "A bevel that is guessed at cuts a wrong plank.",
		Remedy: "write it in degrees, as 2.5 or 2 1/2",
	}
	NumberUnread = &finding.Kind{
		Code: "number-unread", Severity: finding.Error, Title: "number that cannot be read",
		Why:    "What it stands for is left out.",
		Remedy: "write a plain number",
	}
	FormulaUnworked = &finding.Kind{
		Code: "formula-unworked", Severity: finding.Warning, Title: "formula whose result was not in the file",
		Why:    "The file holds the formula but no result; what it was worked out to here may differ from what your spreadsheet shows.",
		Remedy: "open the book, let it work out, and save it",
	}
	SettingUnknown = &finding.Kind{
		Code: "setting-unknown", Severity: finding.Warning, Title: "setting of an unknown name",
		Why:    "A setting whose name is not known changes nothing.",
		Remedy: "write the name as the Settings sheet of a new book has it",
	}
	SettingUnread = &finding.Kind{
		Code: "setting-unread", Severity: finding.Error, Title: "setting that cannot be read",
		Why:    "The default holds in its place.",
		Remedy: "write a value of the kind expected",
	}
	TableTwice = &finding.Kind{
		Code: "table-twice", Severity: finding.Warning, Title: "the same table found twice",
		Why:    "Two copies of a table may differ, and only one can be worked by.",
		Remedy: "take one of them out, or skip it in the guide",
	}
	SheetUnused = &finding.Kind{
		Code: "sheet-unused", Severity: finding.Note, Title: "sheet without a table known here",
		Why:    "Nothing on it was used.",
		Remedy: "nothing, unless a table should have been found there: see strakebook show",
	}
	CellsUnused = &finding.Kind{
		Code: "cells-unused", Severity: finding.Note, Title: "figures outside of any table",
		Why:    "They were not used.",
		Remedy: "nothing, unless they belong to a table: see strakebook show",
	}
	SheetHidden = &finding.Kind{
		Code: "sheet-hidden", Severity: finding.Note, Title: "hidden sheet",
		Why:    "What is on it was read like any other.",
		Remedy: "look at it, or take it out",
	}
	RowsHidden = &finding.Kind{
		Code: "rows-hidden", Severity: finding.Note, Title: "hidden rows or columns in a table",
		Why:    "They were read like any others.",
		Remedy: "look at them, or take them out",
	}
	TextStruck = &finding.Kind{
		Code: "text-struck", Severity: finding.Warning, Title: "figures struck out",
		Why:    "What is struck out was taken as withdrawn.",
		Remedy: "clear it, or take the line through it away",
	}
	ConventionRead = &finding.Kind{
		Code: "convention-read", Severity: finding.Note, Title: "convention taken from the book's own words",
		Why:    "Figures are read by it.",
		Remedy: "nothing, if it is so",
	}
	FileLocked = &finding.Kind{
		Code: "file-locked", Severity: finding.Note, Title: "book open in a spreadsheet",
		Why:    "Changes not yet saved are not in the file.",
		Remedy: "save it and run again",
	}
	NumberAsText = &finding.Kind{
		Code: "number-text", Severity: finding.Note, Title: "numbers kept as text",
		Why:    "They were read as numbers; a spreadsheet's own sums leave them out.",
		Remedy: "nothing, if they are right",
	}
	NumberKept = &finding.Kind{
		Code: "number-kept", Severity: finding.Note, Title: "figures finer than a rule is marked",
		Why:    "They are worked with as they are stored; nothing was rounded.",
		Remedy: "nothing, if they were worked out; a figure read off a rule is a whole sixty-fourth",
	}
	ShownOtherwise = &finding.Kind{
		Code: "number-shown", Severity: finding.Warning, Title: "number shown otherwise than it is stored",
		Why:    "The stored number is used; whoever reads the sheet sees another.",
		Remedy: "widen the number format, or write the figure that is meant",
	}
)
