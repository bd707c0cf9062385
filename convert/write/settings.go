package write

import (
	"fmt"
	"slices"
	"strconv"

	"strakebook/calc"
	"strakebook/calc/bevel"
	"strakebook/calc/measure"
	"strakebook/calc/scarf"
	"strakebook/calc/setting"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// followed is the settings that the formulas of the new book follow, but for the
// slopes, which a yard may have by strake.
var followed = []string{"scarf nib", "fence difference", "batten thickness", "saw offset", "spare depth",
	"rip kerf", "cross-cut kerf", "end trim", "dressing by", "dressing allowance", "edge allowance", "spares", "hardwood measure", "glue spread"}

// settings is every rule with its value, unit, meaning, default and source, and
// after them the prices. Their values are named, for formulas to take.
func settings(in Input) *page {
	u := in.units()
	p := table("Settings", "settings", col("Name", 24), col("Value", 16), col("Unit", 12), col("Default", 16), col("Made with", 16), col("Meaning", 54), col("Source", 40))
	p.note("What stands in a box may be changed here, and all that follows from it follows: scarf runs and fences, lengths of pieces, what still fits, board feet, waste, costs, battens.")
	p.note("The other settings, where the joints fall, which board a piece comes from, the findings and the hull want strakebook run again: write the value in its place here, or on a sheet of your own headed Setting, Value, and hand this book back. Made with: what this book was worked out with, by which a change is known.")
	now, was := in.Result.Rules, calc.DefaultRules()
	if u == measure.StyleMM {
		was.RoundMetric(func(string) bool { return false })
	}
	defaults := was.Settings()
	for i, s := range now.Settings() {
		value, unit := settingCell(s, u)
		held, by, apart := in.convention(s.Name, s.Value.String(), s.Source)
		if held != s.Value.String() {
			value.Text = held
		}
		common, _ := settingCell(defaults[i], u)
		if slices.Contains(followed, s.Name) || in.slopeFollowed(s.Name) || s.Name == "bevel kerf" && now.Bevel.OffsetTo != bevel.KerfPlankSide {
			value.Style = sheet.Input
		}
		p.name(set(s.Name), "Value")
		if list := s.Words(); list != nil {
			at := sheet.Range{Top: len(p.rows) + 2, Left: 2, Bottom: len(p.rows) + 2, Right: 2}
			p.drop = append(p.drop, sheet.DropDown{Range: at, Words: list})
		}
		made := value
		if made.Style == sheet.Input {
			made.Style = common.Style
		}
		if held, ok := in.heldByBox(s.Name, source.Cell{}); ok {
			by = sheet.ByBox(held.Commanded, held.Before, "")
		}
		p.line(text(s.Name), value, text(unit), common, made, words(s.Meaning), words(by))
		p.conventionRows(s.Name, apart)
	}
	if in.Result.Plan.Summary.Priced {
		for i, b := range in.Job.Rack {
			unit, by, made := "a board", b.PricedAt(), number(b.Price.Value, sheet.Given)
			if b.PerFoot {
				unit = "a board foot"
			}
			if held, ok := in.heldByBox("price "+b.Called(i), b.Cell); ok {
				by = sheet.ByBox(held.Commanded, held.Before, by)
			}
			p.name(priceName(i), "Value")
			p.line(text("price "+b.Called(i)), number(b.Price.Value, sheet.Input), text(unit), sheet.Cell{}, made, words(b.PriceOf()), words(by))
		}
	}
	return p
}

// slopeFollowed says that a setting is a slope that a row of the Scarfs sheet
// follows.
func (in Input) slopeFollowed(name string) bool {
	return slices.ContainsFunc(in.Result.Scarfs, func(r scarf.Row) bool { return in.slopeFrom(r) == set(name) })
}

// settingCell is a setting's value: a figure where it is one, in millimetres where
// the yard writes so, and its unit.
func settingCell(s setting.Setting, u measure.Style) (sheet.Cell, string) {
	shown, unit := s.Value.String(), s.Value.Unit()
	v, err := strconv.ParseFloat(shown, 64)
	if err != nil || s.Name == "job" || s.Name == "date" {
		c := text(shown)
		c.Style = sheet.Words
		return c, unit
	}
	if unit == "in" && u == measure.StyleMM {
		v, unit = measure.Inches(v).Millimetres(), "mm"
	}
	return sheet.Cell{Kind: sheet.Number, Number: v, Style: sheet.Given}, unit
}

// heldByBox is what a value stands in place of that the builder changed in the new
// book itself, or gave on the command line.
func (in Input) heldByBox(name string, of source.Cell) (held calc.SetInBook, ok bool) {
	for _, s := range in.Job.SetInBook {
		if s.Name == name && s.Cell == of {
			return s, true
		}
	}
	return held, false
}

func priceName(row int) string { return fmt.Sprint(sheet.NamePrefix, "price_", row+1) }
