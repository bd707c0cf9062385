// Package calc is the order of the work on one page: a job as read goes in, the
// tables and findings come out. It touches no files, clock, environment or
// spreadsheet.
package calc

import (
	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/scarf"
	"strakebook/calc/stock"
)

// Job is what the builder's books hold. Any part may be absent.
type Job struct {
	Offsets []hull.Offsets
	Bevels  []bevel.Readings
	Strakes []hull.Strake
	Rack    []stock.Board
	Rules   Rules
}

// Result is what was worked out of a job. Parts that could not be are empty.
type Result struct {
	Rules  Rules
	Runs   []lay.Run // every strake, both sides
	Plan   stock.Plan
	Scarfs []scarf.Row
	Bevels []bevel.Schedule
	Hull   *hull.Shape
	Fair   []hull.LineReport
}

// Findings is kept beside the result.
type Findings = finding.List
