package calc

import (
	"strakebook/calc/finding"
	"strakebook/calc/hull"
)

// drawHull checks the offsets, draws the hull from the figures believed, lines off
// its skins, and returns the list of strakes with what the hull knows of each
// filled in: the rest of the work goes by that. Of several tables the first is
// drawn.
func (r *Result) drawHull(j *Job) ([]hull.Strake, finding.List) {
	believed, found := r.offsets(j)
	if len(believed) > 0 {
		shape, f := hull.Work(believed[0], j.Strakes, j.Rules.Hull, j.Seams...)
		r.Hull, found = shape, append(found, f...)
	}
	strakes, f := r.Hull.Runs(j.Strakes, j.Rules.Hull)
	found = append(found, f...)
	r.Hung, f = r.Hull.AsHung(j.Hung, strakes, j.Seams, j.Rules.Hull)
	return strakes, append(found, f...)
}

// offsets checks the tables of offsets, puts in place what was decided of their
// figures and checks them again: the job is worked with those. Returned are the
// tables without the figures that are not believed.
func (r *Result) offsets(j *Job) (believed []hull.Offsets, found finding.List) {
	left := j.Decisions
	for _, o := range j.Offsets {
		e := hull.Examine(o, j.Rules.Hull)
		r.Queries = append(r.Queries, e.Queries(o)...)
		if j.TakeProposals {
			left = append(left[:len(left):len(left)], e.Proposed(left)...)
		}
		now, done, others, f := hull.Decide(o, e, left)
		if len(done) > 0 {
			e = hull.Examine(now, j.Rules.Hull)
		}
		r.Offsets, r.Decided = append(r.Offsets, now), append(r.Decided, done...)
		r.Fair, r.Stations = append(r.Fair, e.Lines...), append(r.Stations, e.Stations(now)...)
		found, left = append(append(found, e.Found...), f...), others
		believed = append(believed, now.Without(e.Doubts))
	}
	j.Offsets = r.Offsets
	return believed, append(found, hull.Idle(left)...)
}
