package hull

import (
	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Hung is one girth measured to the edge last hung.
type Hung struct {
	Skin    Skin
	Strake  string
	Side    Side
	Station string
	Girth   source.Reading[measure.Length]
	From    HungFrom
	Corner  Corner
	Cell    source.Cell // of the row
}

// HungFrom is the line a girth is measured from.
type HungFrom uint8

// The two lines.
const (
	FromSheer HungFrom = iota
	FromRabbet
)

// String is the line's word.
func (f HungFrom) String() string { return [...]string{"sheer", "rabbet"}[f] }

// Corner is the corner of a plank's edge that is measured to.
type Corner uint8

// The two corners.
const (
	InsideCorner Corner = iota
	OutsideCorner
)

// String is the corner's word.
func (c Corner) String() string { return [...]string{"inside", "outside"}[c] }

// HungRow is how the work stands at one station.
type HungRow struct {
	Skin     Skin
	Strake   string // the one last hung
	Side     Side
	Station  string
	From     HungFrom
	Corner   Corner
	Measured measure.Length
	Wanted   measure.Length // what the lining-off line says
	Ahead    measure.Length // farther from the sheer than the line; behind where below nothing
	Next     []NextWidth    // of the planks to hang next
	Back     int            // planks until the work is back on the line
	Cell     source.Cell
}

// NextWidth is the width of one of the next planks at the station.
type NextWidth struct {
	Strake string
	Width  measure.Length
	SetOut measure.Length // wider than lined off: the batten set out; in where below nothing
}

// What the work as hung finds.
var (
	HungOpen = &finding.Kind{
		Code: "hung-open", Severity: finding.Warning, Title: "no lining-off line for what is hung",
		Why:    "Ahead and behind are told against where the edge should lie.",
		Remedy: "give offsets, marks of the seams, or the strakes' widths by station",
	}
	HungOff = &finding.Kind{
		Code: "hung-off", Severity: finding.Warning, Title: "work too far off its line",
		Why:    "Within the limit a plank the next planks cannot bring it back, and the seams below will show it.",
		Remedy: "spread the difference over more planks, or line off afresh from here",
	}
	HungOdd = &finding.Kind{
		Code: "hung-odd", Severity: finding.Warning, Title: "one girth off the run of its neighbours",
		Why:    "An edge hangs fair: one station out of the run is more likely measured wrong than hung wrong.",
		Remedy: "measure it again",
	}
)

// AsHung works out, for every girth measured, how far the work is ahead of or
// behind its lining-off line and how wide the next planks must be to bring it
// back. The line is the hull's where that is known, else the builder's marks, else
// the widths in the list of strakes added up; s may be nil.
func (s *Shape) AsHung(hung []Hung, strakes []Strake, marks []SeamMarks, r Rules) ([]HungRow, finding.List) {
	var all []HungRow
	var found finding.List
	open := map[string]bool{}
	for _, g := range hung {
		if !g.Girth.OK() {
			continue
		}
		line, ok := s.lineOf(g, strakes, marks)
		if !ok {
			if key := string(g.Skin) + g.Strake; !open[key] {
				open[key] = true
				found = append(found, finding.Finding{Kind: HungOpen, Cell: g.Cell, Reads: g.Strake,
					Text: "where the edge of " + words(g) + " should lie at " + s.called(g.Station) + " is not known"})
			}
			continue
		}
		row := HungRow{Skin: g.Skin, Strake: g.Strake, Side: g.Side, Station: g.Station, From: g.From, Corner: g.Corner,
			Measured: g.Girth.Value, Wanted: line.wanted, Cell: g.Girth.Cell}
		row.Ahead = row.Measured - row.Wanted
		if g.From == FromRabbet {
			row.Ahead = -row.Ahead
		}
		row.plan(line, r)
		all = append(all, row)
	}
	return all, append(found, hungFindings(s, all, r)...)
}

func words(g Hung) string {
	if g.Skin == "" {
		return "strake " + g.Strake
	}
	return string(g.Skin) + " " + g.Strake
}

// plan shares the difference out among the next planks, no more to each than the
// limit.
func (row *HungRow) plan(line hungLine, r Rules) {
	left := -row.Ahead
	n := max(1, r.BackAfter)
	each := left.Times(1 / float64(n))
	if left != 0 {
		row.Back = n
	}
	if limit := r.MostAPlank; limit > 0 && each.Abs() > limit {
		row.Back = int((left.Abs() + limit - 1) / limit)
		each = max(-limit, min(limit, each))
	}
	for i, next := range line.next {
		if i == n {
			break
		}
		row.Next = append(row.Next, NextWidth{Strake: next.Strake, Width: next.Width + each, SetOut: each})
	}
}
