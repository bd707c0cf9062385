package calc

import (
	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/scarf"
	"strakebook/calc/stock"
)

// Work checks a job and works out all that can be worked out of it, in the
// order of the work: the hull, the bevels, the joints and boards, the scarfs.
func Work(j Job) (Result, finding.List) {
	j.Rules = j.Rules.inUnits()
	r := Result{Rules: j.Rules}
	strakes, found := r.drawHull(&j)
	found = append(found, hull.CheckStrakes(strakes, j.Rules.Hull)...)
	found = append(found, hull.CheckAlike(j.Strakes)...)
	found = append(found, r.lifted(j, strakes)...)
	found = append(found, r.shutters(j, strakes)...)
	found = append(found, r.planks(j.Bevels, strakes)...)
	found = append(found, bevel.CheckCards(r.Bevels, strakes, j.Rules.Bevel)...)
	found = append(found, bevel.CheckTilts(r.Bevels, found, j.Rules.Bevel)...)
	found = append(found, bevel.CheckLaid(r.Bevels, r.Hull, j.Rules.Bevel)...)
	runs := lay.Runs(strakes, j.Rules.Scarf)
	r.widen(runs, j.Rack)
	found = append(found, lay.Place(runs, places(j), &j.Rules.Lay)...)
	runs = append(runs, stock.WantedRuns(j.Wanted)...)
	found = append(found, stock.CheckWanted(j.Wanted, j.Rules.Stock)...)
	var f finding.List
	r.Runs, r.Plan, f = stock.Work(runs, j.Rack, j.Before, j.Rules.Lay, j.Rules.Stock)
	found = append(found, f...)
	found = append(found, stock.CheckPlaned(r.Plan, j.Rules.Bevel.Planed, j.Rules.Stock)...)
	r.spilePieces()
	r.Scarfs, f = scarf.Table(uses(r.Runs), j.Rules.Scarf)
	return r, append(found, f...)
}

// lifted checks the bevels lifted and works out what is sawn by them: first on the
// sides they were lifted on, then on those that go by the other.
func (r *Result) lifted(j Job, strakes []hull.Strake) (found finding.List) {
	told := make([]finding.List, len(j.Bevels))
	for i, b := range j.Bevels {
		f := bevel.Check(b, j.Rules.Bevel)
		schedules, more := bevel.Schedules(b, strakes, places(j), r.Hull, j.Rules.Bevel)
		told[i] = append(f, more...)
		hull.Keep(told[i], j.Decisions)
		bevel.DoubtMarks(schedules, told[i], j.Rules.Bevel)
		r.Bevels = append(r.Bevels, schedules...)
		found = append(found, told[i]...)
	}
	have := r.Bevels
	for i, b := range j.Bevels {
		schedules := bevel.OtherSide(b, have, strakes, places(j), r.Hull, j.Rules.Bevel)
		bevel.DoubtMarks(schedules, told[i], j.Rules.Bevel)
		r.Bevels = append(r.Bevels, schedules...)
	}
	return found
}

// places is every station whose position the offsets or a list of positions give.
func places(j Job) []hull.Station {
	var all []hull.Station
	for _, o := range j.Offsets {
		all = append(all, o.Stations...)
	}
	return append(all, j.Stations...)
}

// uses is the scarfs the runs need.
func uses(runs []lay.Run) []scarf.Use {
	var all []scarf.Use
	for _, r := range runs {
		if r.Given {
			continue
		}
		all = append(all, scarf.Use{Skin: r.Skin, Thickness: r.Through(), Width: r.Wide, Slope: r.Slope, Joints: len(r.Joints), Cell: r.Cell})
	}
	return all
}
