package hull

import (
	"math"
	"slices"
	"sort"
)

// developed is a strake laid out flat, in inches.
type developed struct {
	rungs        []rung
	upper, lower []flat    // on the inside face
	outU, outL   []flat    // on the outside face
	bevelU       []float64 // of the edges as sawn, radians
	bevelL       []float64
	stations     []string // of each rung, "" for none
	straight     bool     // laid out straight across, not as wide as along the back
	stem         float64  // an end no farther out than this is on the stem
	transom      point    // the way aft square to the last station
	run          [2]flat  // the way aft at the fore end and the after end, where they are joints
}

// rungParts is how many rungs a space between stations is laid out by.
const rungParts = 6

// layOut develops one strake with both faces. Flat, it is straight across from edge to
// edge, as a board is whose back is worked afterwards; else as wide as along its back.
func (s *Shape) layOut(l *Lining, k int, thick float64, flat bool, sawn Sawn) developed {
	upper, lower := &l.Seams[k], &l.Seams[k+1]
	d := developed{rungs: rungs(upper.run, lower.run, rungParts)}
	swell := s.along(upper, func(i int) (float64, bool) { return l.swell(k, i) })
	share := [...][2]float64{SawnUpper: {1, 0}, SawnLower: {0, 1}, SawnShared: {0.5, 0.5}}[sawn]
	bevelU := s.along(upper, func(i int) (float64, bool) { return upper.Points[i].Bevel.Radians(), upper.Points[i].HasBevel })
	bevelL := s.along(lower, func(i int) (float64, bool) { return lower.Points[i].Bevel.Radians(), lower.Points[i].HasBevel })
	stations := s.marks(upper)
	for i := range d.rungs {
		r := &d.rungs[i]
		if v := swell(r.s[0]); v > 1 {
			r.swell = v
		}
		d.bevelU = append(d.bevelU, share[0]*bevelU(r.s[0]))
		d.bevelL = append(d.bevelL, share[1]*bevelL(r.s[1]))
		for len(stations) > 0 && stations[0].s < r.s[0]-1e-6 {
			stations = stations[1:]
		}
		name := ""
		if len(stations) > 0 && stations[0].s < r.s[0]+1e-6 {
			name = stations[0].name
		}
		d.stations = append(d.stations, name)
	}
	across := d.rungs
	if d.straight = flat; flat {
		across = slices.Clone(d.rungs)
		for i := range across {
			across[i].swell = 1
		}
	}
	d.upper, d.lower = develop(across)
	d.outU = moved(d.upper, d.bevelU, thick)
	d.outL = moved(d.lower, d.bevelL, -thick)
	return d
}

// swell is how much longer the girth across a strake is than the straight
// distance, at a station.
func (l *Lining) swell(k, i int) (float64, bool) {
	a, b, w := l.Seams[k].Points[i], l.Seams[k+1].Points[i], l.Strakes[k].Widths[i]
	if !a.Crosses || !b.Crosses || w <= 0 {
		return 0, false
	}
	straight := math.Hypot((a.Out - b.Out).Inches(), (a.Up - b.Up).Inches())
	if straight == 0 {
		return 0, false
	}
	return w.Inches() / straight, true
}

// stationMark is where a station crosses an edge.
type stationMark struct {
	s    float64
	name string
	i    int
}

// marks is the stations along an edge from its fore end.
func (s *Shape) marks(seam *Seam) []stationMark {
	var all []stationMark
	for i, p := range seam.Points {
		if p.Crosses {
			all = append(all, stationMark{p.Along.Inches(), s.Stations[i].Name, i})
		}
	}
	return all
}

// along makes of a figure known at stations one along an edge: straight between,
// level beyond the first and the last; 0 where it is known nowhere.
func (s *Shape) along(seam *Seam, at func(i int) (float64, bool)) func(float64) float64 {
	var x, v []float64
	for _, m := range s.marks(seam) {
		if y, ok := at(m.i); ok {
			x, v = append(x, m.s), append(v, y)
		}
	}
	return func(p float64) float64 {
		i := sort.SearchFloat64s(x, p)
		switch {
		case len(x) == 0:
			return 0
		case i == 0:
			return v[0]
		case i == len(x):
			return v[len(v)-1]
		}
		return v[i-1] + (v[i]-v[i-1])*(p-x[i-1])/(x[i]-x[i-1])
	}
}

// moved is an edge moved to its left by the thickness times the tangent of its
// bevel: the same edge on the outside face.
func moved(edge []flat, bevel []float64, thick float64) []flat {
	out := make([]flat, len(edge))
	for i, p := range edge {
		way := edge[min(len(edge)-1, i+1)].minus(edge[max(0, i-1)])
		if way.length() == 0 {
			out[i] = p
			continue
		}
		way = way.times(1 / way.length())
		out[i] = p.plus(flat{-way.y, way.x}.times(thick * math.Tan(bevel[i])))
	}
	return out
}

// widest is the greatest width of either face, square to the strake's run.
func (d *developed) widest() float64 {
	wide := 0.0
	for i := range d.upper {
		way := d.way(float64(i))
		wide = max(wide, way.across(d.upper[i].minus(d.lower[i])), way.across(d.outU[i].minus(d.outL[i])))
	}
	return wide
}

// strain is the greatest edgewise strain of a straight-edged plank of a width
// sprung to the middle of the strake: 4 w s / l^2, s the spring in the length l,
// over the whole and over each half and the middle half.
func (d *developed) strain(wide float64) float64 {
	n := len(d.upper)
	middle := make([]flat, n)
	for i := range middle {
		middle[i] = d.upper[i].plus(d.lower[i]).times(0.5)
	}
	most := 0.0
	for _, part := range [][2]int{{0, n - 1}, {0, n / 2}, {n / 4, 3 * n / 4}, {n / 2, n - 1}} {
		if part[1]-part[0] < 2 {
			continue
		}
		run := middle[part[0] : part[1]+1]
		l := run[len(run)-1].minus(run[0]).length()
		if l > 0 {
			most = max(most, 4*wide*math.Abs(sny(run))/(l*l))
		}
	}
	return most
}

// along is a figure known at each place of a line, as heights along it.
func along(line []flat, figure []float64) []flat {
	all := make([]flat, len(line))
	for i := range line {
		all[i] = flat{line[i].x, figure[i]}
	}
	return all
}

// cut is the part of a strake between two distances along its upper edge.
func (d *developed) cut(from, to float64) (developed, bool) {
	start := d.rungs[0].s[0]
	end := d.rungs[len(d.rungs)-1].s[0]
	from, to = max(start, start+from), min(end, start+to)
	if to-from < 1 {
		return developed{}, false // less than an inch
	}
	out := developed{stem: d.stem, transom: d.transom}
	out.add(d, d.at(from))
	for i, r := range d.rungs {
		if r.s[0] > from+0.01 && r.s[0] < to-0.01 {
			out.add(d, float64(i))
		}
	}
	out.add(d, d.at(to))
	return out, true
}

// at is the rung at a distance along the upper edge, and the part of the way to
// the next.
func (d *developed) at(s float64) float64 {
	for i := 1; i < len(d.rungs); i++ {
		if a, b := d.rungs[i-1].s[0], d.rungs[i].s[0]; s <= b && b > a {
			return float64(i-1) + (s-a)/(b-a)
		}
	}
	return float64(len(d.rungs) - 1)
}

// add adds a rung of another laid-out strake, or a place between two of them.
func (d *developed) add(from *developed, at float64) {
	i := min(int(at), len(from.rungs)-2)
	part := at - float64(i)
	mix := func(p []flat) flat { return p[i].plus(p[i+1].minus(p[i]).times(part)) }
	number := func(v []float64) float64 { return v[i] + (v[i+1]-v[i])*part }
	a, b := from.rungs[i], from.rungs[i+1]
	d.rungs = append(d.rungs, rung{
		upper: a.upper.plus(b.upper.minus(a.upper).times(part)),
		lower: a.lower.plus(b.lower.minus(a.lower).times(part)),
		s:     [2]float64{a.s[0] + (b.s[0]-a.s[0])*part, a.s[1] + (b.s[1]-a.s[1])*part},
		swell: a.swell + (b.swell-a.swell)*part,
	})
	d.upper, d.lower = append(d.upper, mix(from.upper)), append(d.lower, mix(from.lower))
	d.outU, d.outL = append(d.outU, mix(from.outU)), append(d.outL, mix(from.outL))
	d.bevelU, d.bevelL = append(d.bevelU, number(from.bevelU)), append(d.bevelL, number(from.bevelL))
	name := ""
	switch part {
	case 0:
		name = from.stations[i]
	case 1:
		name = from.stations[i+1]
	}
	d.stations = append(d.stations, name)
}
