package read

import "strakebook/calc/finding"

// Kinds is every kind of finding that reading makes.
func Kinds() []*finding.Kind {
	return []*finding.Kind{
		LengthDate, LengthDateAsked, LengthUnread, LengthImpossible, LengthTwoWays, UnitOpen, AngleUnread, NumberUnread,
		FormulaUnworked, SettingUnknown, SettingUnread, TableTwice, SheetUnused, CellsUnused, SheetHidden, RowsHidden, TextStruck, ConventionRead, FileLocked, NumberAsText, ShownOtherwise,
		GuideUnread, GuideUnmet,
	}
}

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
		Why:    "In the old printing 0-11 is 11 in. or 1 1/8 in.",
		Remedy: "write it as feet-inches-eighths",
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
	ShownOtherwise = &finding.Kind{
		Code: "number-shown", Severity: finding.Warning, Title: "number shown otherwise than it is stored",
		Why:    "The stored number is used; whoever reads the sheet sees another.",
		Remedy: "widen the number format, or write the figure that is meant",
	}
)
