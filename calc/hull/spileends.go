package hull

import (
	"math"

	"strakebook/calc/measure"
)

// endCut is how the first or the last rung stands to the edge of the board, which
// runs in a direction, and to what it lands on. A joint is cut square to the run
// of the strake there, and so at an angle to the board.
func (d *developed) endCut(i int, way flat) EndCut {
	run := d.run[min(i, 1)]
	e := EndCut{Joint: run.length() > 0}
	across := d.upper[i].minus(d.lower[i])
	if e.Joint {
		across = flat{-run.y, run.x}
	}
	if across.length() > 1e-6 {
		off := math.Atan2(across.x*way.x+across.y*way.y, way.across(across))
		if i == 0 {
			off = -off // longer forward
		}
		e.Off = measure.Radians(off)
	}
	r := d.rungs[i]
	end, inward := r.upper.minus(r.lower), d.inward(i)
	out := end.cross(inward)
	if e.Joint || out.length() == 0 {
		return e
	}
	out = out.unit()
	if i > 0 {
		out = out.times(-1) // inward is forward there
	}
	e.Stem = max(r.upper.y, r.lower.y) <= d.stem
	onto := d.onto(end, e.Stem)
	if onto.dot(inward) > 0 {
		onto = onto.times(-1)
	}
	// The cut goes on beyond the inside face's corner where it leans back over it.
	e.Bevel = measure.Radians(math.Asin(max(-1, min(1, -onto.dot(out)))))
	e.Meets = 90 - max(e.Bevel, -e.Bevel)
	return e
}

// onto is the way square to what an end lands on: the middle line's plane, the
// transom where the end lies in that rather than plumb, or a plumb station.
func (d *developed) onto(end point, stem bool) point {
	switch {
	case stem:
		return point{y: 1}
	case math.Abs(end.dot(d.transom)) < math.Abs(end.x):
		return d.transom
	}
	return point{x: 1}
}

// inward is the way the middle of the strake goes in from its first or its last
// rung, by the bend of the two next to it.
func (d *developed) inward(i int) point {
	next, beyond := i+1, i+2
	if i > 0 {
		next, beyond = i-1, i-2
	}
	at := func(i int) point { return d.rungs[i].upper.plus(d.rungs[i].lower) }
	way := at(next).minus(at(i))
	if beyond < 0 || beyond >= len(d.rungs) {
		return way
	}
	far := at(beyond).minus(at(i))
	a, b := way.length(), far.length()
	if a < 1e-9 || b-a < 1e-9 {
		return way
	}
	return way.times(b / a).minus(far.times(a / b)).times(1 / (b - a))
}

// way is the way aft of the laid-out strake's middle at a rung, or between two.
func (d *developed) way(at float64) flat {
	i := min(int(at), len(d.rungs)-2)
	along := func(i int) flat {
		a, b := max(0, i-1), min(len(d.upper)-1, i+1)
		way := d.upper[b].plus(d.lower[b]).minus(d.upper[a].plus(d.lower[a]))
		return way.times(1 / max(way.length(), 1e-9))
	}
	part := at - float64(i)
	return along(i).times(1 - part).plus(along(i + 1).times(part))
}
