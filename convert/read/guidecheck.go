package read

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// GuideUnread is a field of a guide that says nothing known here.
var GuideUnread = &finding.Kind{
	Code: "guide-unread", Severity: finding.Warning, Title: "guide that cannot be read",
	Why:    "What a guide says holds over what is found. A word that is not understood changes nothing, and the table is read as if it were not there.",
	Remedy: "write the field as show writes it",
}

// GuideUnmet is a line of a guide that meets no table.
var GuideUnmet = &finding.Kind{
	Code: "guide-unmet", Severity: finding.Warning, Title: "guide for a table that is not there",
	Why:    "A guide made for another state of the book may leave the wrong cells out, or none.",
	Remedy: "write the guide again with show, and correct it",
}

// checkGuide looks at what the guide says, once every table has been read.
func (r *reader) checkGuide() {
	for _, g := range r.guide {
		cell := source.Cell{Sheet: g.Sheet}
		if p := r.pageOf(g.Sheet); p != nil {
			cell.Book = p.book.Name
		}
		for _, f := range unreadFields(g) {
			r.add(finding.Finding{Kind: GuideUnread, Cell: cell, Reads: f.reads,
				Text: fmt.Sprintf("the guide's %s for the %s reads %q: expected %s", f.name, tableWord(g), f.reads, f.expected)})
		}
		switch {
		case r.pageOf(g.Sheet) == nil:
			r.add(finding.Finding{Kind: GuideUnmet, Reads: g.Sheet,
				Text: fmt.Sprintf("the guide's line for the %s names a sheet %q, and there is none", tableWord(g), g.Sheet)})
		case !skips(g) && !r.meets(g):
			r.add(finding.Finding{Kind: GuideUnmet, Cell: cell, Reads: g.Range,
				Text: fmt.Sprintf("the guide has the %s at %q, and no table was found there", tableWord(g), g.Range)})
		}
	}
}

// tableWord names a guide's table in a finding.
func tableWord(g sheet.GuideRow) string {
	if t := plainWords(g.Table); t != "" {
		return t
	}
	return "table"
}

func (r *reader) pageOf(name string) *page {
	for _, p := range r.pages {
		if strings.EqualFold(p.sheet.Name, name) {
			return p
		}
	}
	return nil
}

// meets says that a table was found where the guide has one.
func (r *reader) meets(g sheet.GuideRow) bool {
	top, left, bottom, right, whole := corners(g.Range)
	return slices.ContainsFunc(r.tables, func(t source.Table) bool {
		if !strings.EqualFold(t.Sheet, g.Sheet) {
			return false
		}
		a, b, c, d, ok := corners(t.Range)
		return !whole || ok && top <= c && bottom >= a && left <= d && right >= b
	})
}

// field is one field of a guide that is not understood.
type field struct{ name, reads, expected string }

// unreadFields is the fields of a guide's line that say nothing known here. An
// empty field leaves the matter to what is found.
func unreadFields(g sheet.GuideRow) []field {
	var all []field
	see := func(name, reads, expected string, fine bool) {
		if strings.TrimSpace(reads) != "" && !fine {
			all = append(all, field{name, reads, expected})
		}
	}
	_, _, _, _, isRange := corners(g.Range)
	_, isNotation := formOfGuide(sheet.GuideRow{Notation: g.Notation})
	isNotation = isNotation || plainWords(g.Notation) == "not stated" || guideGauge(g.Notation)
	see("table", g.Table, strings.Join(guideTables[:len(guideTables)-1], ", ")+" or "+guideTables[len(guideTables)-1], slices.Contains(guideTables, plainWords(g.Table)))
	see("range", g.Range, "a block of cells such as B3:W14", isRange)
	see("stations", g.Stations, "across, down or how many there are", slices.Contains([]string{"across", "down"}, plainWords(g.Stations)) || strings.Trim(g.Stations, "0123456789 ") == "")
	see("unit", g.Unit, "feet, inches, mm, cm, m, fractions or degrees", isUnits(g.Unit))
	see("notation", g.Notation, "feet-inches-eighths, old print, feet and inches, inches and fractions, decimal or degrees and minutes", isNotation)
	see("skip", g.Skip, "yes or no", skips(g) || slices.Contains([]string{"no", "n", "false", "0"}, plainWords(g.Skip)))
	return all
}

// guideTables is the kinds of table a guide may name.
var guideTables = []string{"offsets", "bevels", "strakes", "rack", "pieces", "settings", "widths", "marks", "hung", "gaps", "positions", "guide"}

// isUnits says that a guide's unit is one, or a unit for each column of a list.
func isUnits(unit string) bool {
	for _, part := range strings.Split(unit, ";") {
		part = strings.TrimSpace(part)
		if _, word, two := strings.Cut(part, " "); two {
			part = word
		}
		if _, ok := bareUnit(part); !ok && plainWords(part) != "not known" {
			return false
		}
	}
	return true
}

// guideGauge says that a guide's notation is one of the ways bevels are read.
func guideGauge(notation string) bool {
	gauge, more, two := strings.Cut(notation, ";")
	switch plainWords(more) {
	case "decimal", degreesMinutes:
		notation = gauge
	default:
		if two {
			return false
		}
	}
	if plainWords(notation) == degreesMinutes {
		return true
	}
	for g := bevel.GaugeUnstated; g <= bevel.OnOutside; g++ {
		if plainWords(notation) == plainWords(g.String()) {
			return true
		}
	}
	return false
}
