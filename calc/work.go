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
	for _, b := range j.Bevels {
		f := bevel.Check(b, j.Rules.Bevel)
		schedules, more := bevel.Schedules(b, strakes, places(j), r.Hull, j.Rules.Bevel)
		f = append(f, more...)
		hull.Keep(f, j.Decisions)
		bevel.DoubtMarks(schedules, f, j.Rules.Bevel)
		r.Bevels = append(r.Bevels, schedules...)
		found = append(found, f...)
	}
	found = append(found, r.shutters(j, strakes)...)
	found = append(found, r.planks(j.Bevels, strakes)...)
	found = append(found, bevel.CheckLaid(r.Bevels, r.Hull, j.Rules.Bevel)...)
	runs := lay.Runs(strakes, j.Rules.Scarf)
	r.widen(runs, j.Rack)
	found = append(found, lay.Place(runs, places(j), &j.Rules.Lay)...)
	runs = append(runs, stock.WantedRuns(j.Wanted)...)
	found = append(found, stock.CheckWanted(j.Wanted, j.Rules.Stock)...)
	var f finding.List
	r.Runs, r.Plan, f = stock.Work(runs, j.Rack, j.Before, j.Rules.Lay, j.Rules.Stock)
	found = append(found, f...)
	r.spilePieces()
	r.Scarfs, f = scarf.Table(uses(r.Runs), j.Rules.Scarf)
	if found = append(found, f...); len(j.Offsets) > 0 && j.Offsets[0].Frames {
		found = atFrames(found)
	}
	return r, found
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
		all = append(all, scarf.Use{Skin: r.Skin, Thickness: r.Thick, Width: r.Wide, Slope: r.Slope, Joints: len(r.Joints), Cell: r.Cell})
	}
	return all
}
