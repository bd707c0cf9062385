package write

import (
	"strakebook/calc"
	"strakebook/convert/sheet"
)

// settings is every rule with its value, unit, meaning, default and source.
func settings(in Input) *page {
	p := table("Settings", "settings", col("Name", 24), col("Value", 18), col("Unit", 10), col("Default", 18), col("Meaning", 56), col("Source", 46))
	p.note("Change a value on a sheet of your own headed Setting, Value and run strakebook again.")
	now, was := in.Result.Rules, calc.DefaultRules()
	defaults := was.Settings()
	for i, s := range now.Settings() {
		p.line(text(s.Name), sheet.Cell{Kind: sheet.Text, Text: s.Value.String(), Style: sheet.Input}, text(s.Value.Unit()), text(defaults[i].Value.String()), words(s.Meaning), words(s.Source))
	}
	return p
}
