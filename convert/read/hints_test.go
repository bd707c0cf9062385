package read

import (
	"slices"
	"testing"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// What the book's own names are taken for: cells called as settings, and not
// those that only sound like one.
func TestNamesOfCells(t *testing.T) {
	named := func(name string, row, col int) sheet.Name {
		return sheet.Name{Name: name, Sheet: "Sheet1", Range: sheet.Range{Top: row, Left: col, Bottom: row, Right: col}}
	}
	book := bookOf(sheetOf("Sheet1", "spacing of moulds|900 mm\nbeam|4\nsaw|3|mm\nsaw offset|1/2|in\nsaw|5|mm\nboats|7"))
	book[0].Names = []sheet.Name{
		named("StationSpacing", 1, 2), named("half_beam", 2, 2), named("RipKerf", 3, 2),
		named("saw.offset", 4, 2), named("Kerf", 5, 2), named("Boats", 6, 2), named(sheet.OursPrefix+"1", 2, 2),
	}
	book[0].Names[6].Sheet = "another"
	r := read(t, book, Options{})
	rules := r.job.Rules
	if rules.Hull.StationSpacing != 900*measure.Millimetre || rules.Stock.RipKerf != 3*measure.Millimetre || rules.Bevel.Offset != measure.Inch/2 || rules.Hull.HalfBeam != 0 {
		t.Errorf("spacing %v, kerf %v, offset %v, half beam %v", rules.Hull.StationSpacing, rules.Stock.RipKerf, rules.Bevel.Offset, rules.Hull.HalfBeam)
	}
	if got, want := r.codes(finding.Note), []string{"setting-unread@B2", "setting-unknown@B5", "cells-unused@B6"}; !slices.Equal(got, want) {
		t.Errorf("%v and not %v: %v", got, want, r.found)
	}
}

// What stands on a settings sheet holds over a cell's name, and the two differing
// is said.
func TestNamedCellAgainstSettings(t *testing.T) {
	book := bookOf(sheetOf("Settings", "Setting|Value\nrip kerf|4 mm"), sheetOf("Saws", "kerf|3 mm"))
	book[0].Names = []sheet.Name{{Name: "RipKerf", Sheet: "Saws", Range: sheet.Range{Top: 1, Left: 2, Bottom: 1, Right: 2}}}
	r := read(t, book, Options{})
	if got := r.codes(finding.Note); r.job.Rules.Stock.RipKerf != 4*measure.Millimetre || !slices.Equal(got, []string{"setting-twice@B1"}) {
		t.Errorf("kerf %v, %v", r.job.Rules.Stock.RipKerf, got)
	}
}
