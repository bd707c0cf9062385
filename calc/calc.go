// Package calc is the order of the work on one page: a job as read goes in, the
// tables and findings come out. It touches no files, clock, environment or
// spreadsheet.
package calc

import (
	"strakebook/calc/bevel"
	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/scarf"
	"strakebook/calc/source"
	"strakebook/calc/stock"
)

// Job is what the builder's books hold. Any part may be absent.
type Job struct {
	Offsets   []hull.Offsets
	Stations  []hull.Station // of lists of positions, in the order in which they lie
	Bevels    []bevel.Readings
	Strakes   []hull.Strake
	Rack      []stock.Board
	Wanted    []stock.Wanted   // pieces of given lengths, beside those of the strakes
	Before    []stock.Before   // the pieces of a plan made before, to begin from
	Seams     []hull.SeamMarks // the builder's own marks of where seams run
	Hung      []hull.Hung      // girths measured to edges hung
	Gaps      []hull.Gap       // openings measured for the last planks
	Rules     Rules
	Decisions []Decision // on figures of the offsets, and those to let a finding stand; those of other cells are read already

	SetInBook []SetInBook // settings and prices that the builder changed in the new book itself, or gave on the command line

	TakeProposals bool // the likeliest reading is taken of every offset that one is proposed of
}

// Places is what the book calls its stations.
func (j Job) Places() hull.Places {
	switch {
	case len(j.Offsets) > 0:
		return j.Offsets[0].Places
	case len(j.Bevels) > 0:
		return j.Bevels[0].Places
	}
	return hull.AtStations
}

// SetInBook is one value that the builder changed in the new book itself, or gave on the
// command line, and what his own tables, or the defaults, have in its place.
type SetInBook struct {
	Name, Before string
	Cell         source.Cell // of a price, the board it is of
	Commanded    bool        // given on the command line, of this book or of one before it
}

// Decision is what the builder wrote beside a finding on a Warnings sheet that
// was handed back.
type Decision = hull.Decision

// Result is what was worked out of a job. Parts that could not be are empty.
type Result struct {
	Rules  Rules
	Runs   []lay.Run // every strake, both sides
	Plan   stock.Plan
	Scarfs []scarf.Row
	Bevels []bevel.Schedule
	Guides []bevel.Guide // the battens the bevels are sawn by, as few as serve
	Spiled []hull.Spiled // every strake lined off, laid out flat
	Hull   *hull.Shape
	Hung   []hull.HungRow
	Fair   []hull.LineReport // of every line of every table of offsets, in their order

	Offsets  []hull.Offsets       // as worked with: as read, but for what was decided
	Stations []hull.StationReport // how fair the lines are at each station of each table
	Queries  []hull.Query         // to the designer, of the tables as read
	Decided  []hull.Decided
}
