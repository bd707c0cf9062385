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
	Bevels    []bevel.Readings
	Strakes   []hull.Strake
	Rack      []stock.Board
	Seams     []hull.SeamMarks // the builder's own marks of where seams run
	Hung      []hull.Hung      // girths measured to edges hung
	Rules     Rules
	Decisions []Decision
}

// Decision is what the builder wrote beside a finding on a Warnings sheet that
// was handed back.
type Decision struct {
	Cell  source.Cell // the cell the finding is about
	Code  string
	Take  bool   // the first thing suggested
	Value string // a value of the builder's own
}

// Result is what was worked out of a job. Parts that could not be are empty.
type Result struct {
	Rules  Rules
	Runs   []lay.Run // every strake, both sides
	Plan   stock.Plan
	Scarfs []scarf.Row
	Bevels []bevel.Schedule
	Hull   *hull.Shape
	Hung   []hull.HungRow
	Fair   []hull.LineReport
}
