package hull

import (
	"cmp"
	"math"
	"slices"

	"strakebook/calc/fair"
)

// sight is the table as its sections see it: at each station the points at which
// its lines cross the section, in steps of the table's resolution. It is the
// second opinion of the checks: a loftsman fairs a line, then sees whether the
// sections still will have it.
type sight struct {
	o       Offsets
	breadth []int        // of each line, the line whose half-breadths its points have; -1 where fixed
	height  []int        // of each line, the line whose heights they have; -1 where fixed
	fixed   []float64    // the fixed one of the two
	slant   [][2]float64 // of each diagonal, how far a step along it goes outwards and downwards; else nothing
	point   []bool       // whether the line has a point on the sections
	sees    []bool       // whether the section has an opinion of it
	chine   int          // the line of the chine's points, -1 for none
	order   [][]int      // at each station the lines that cross it, from the keel up
}

func newSight(o Offsets, rows []fair.Row) *sight {
	n := len(o.Lines)
	s := &sight{o: o, breadth: make([]int, n), height: make([]int, n), fixed: make([]float64, n), slant: make([][2]float64, n), point: make([]bool, n), sees: make([]bool, n), chine: -1}
	levels, known := o.levels(rows)
	for i, l := range o.Lines {
		s.breadth[i], s.height[i] = -1, -1
		switch {
		case l.View == HalfBreadth && l.Role == Waterline && levels != nil:
			s.breadth[i], s.fixed[i], s.point[i], s.sees[i] = i, levels[i], !math.IsNaN(levels[i]), !math.IsNaN(levels[i])
		case l.View == Height && l.Role == Buttock && l.At.OK():
			s.height[i], s.fixed[i], s.point[i], s.sees[i] = i, o.steps(l), true, true
		case l.Role == DiagonalLine && l.At.OK() && l.Down.OK() && known:
			s.slant[i], s.fixed[i], s.point[i], s.sees[i] = [2]float64{l.Down.Value.Cos(), l.Down.Value.Tan() * l.Down.Value.Cos()}, o.steps(l), true, true
		}
	}
	if y, z := o.line(HalfBreadth, Deck), o.line(Height, Deck); y >= 0 && z >= 0 {
		s.breadth[y], s.height[y], s.point[y], s.sees[y] = y, z, true, true
	}
	if y, z := o.line(HalfBreadth, Chine), o.line(Height, Chine); y >= 0 && z >= 0 {
		s.breadth[y], s.height[y], s.point[y], s.chine = y, z, true, y
	}
	if keel := max(o.line(Height, Rabbet), o.line(Height, Keel)); keel >= 0 {
		s.height[keel], s.point[keel] = keel, true
	}
	s.sort(rows)
	return s
}

// steps is where a line runs, in steps of the table's resolution.
func (o Offsets) steps(l Line) float64 { return float64(l.At.Value) / float64(max(1, o.Resolution)) }

// line is the first line of a view and role, -1 for none.
func (o Offsets) line(view View, role Role) int {
	return slices.IndexFunc(o.Lines, func(l Line) bool { return l.View == view && l.Role == role })
}

// levels is the height of each waterline in steps, NaN for any other line and
// for a waterline whose height is not known. Where none is known they are taken
// as evenly spaced in the table's order, a quarter of the greatest breadth
// apart: the sections are held against one another, and it is one measure for
// all of them; known is then false, for they are no heights that a diagonal could
// be held to.
func (o Offsets) levels(rows []fair.Row) (all []float64, known bool) {
	all = make([]float64, len(o.Lines))
	placed, count := 0, 0
	most := 0.0
	for i, l := range o.Lines {
		all[i] = math.NaN()
		if l.Role != Waterline || l.View != HalfBreadth {
			continue
		}
		if count++; l.At.OK() {
			all[i], placed = o.steps(l), placed+1
		}
		most = max(most, slices.Max(append([]float64{0}, rows[i].Y...)))
	}
	if placed > 0 || most == 0 {
		return all, true
	}
	n := 0.0
	for i, l := range o.Lines {
		if l.Role == Waterline && l.View == HalfBreadth {
			all[i], n = n*most/4, n+1
		}
	}
	return all, false
}

// sort puts the points of each station in their order along the section. A
// section runs outwards along the floor and upwards along the side, so that the
// sum of breadth and height grows along it.
func (s *sight) sort(rows []fair.Row) {
	s.order = make([][]int, len(s.o.Stations))
	along := make([]float64, len(s.o.Lines))
	for k := range s.order {
		for i := range s.o.Lines {
			if y, z, ok := s.at(rows, i, k); ok {
				along[i] = y + z
				s.order[k] = append(s.order[k], i)
			}
		}
		slices.SortStableFunc(s.order[k], func(a, b int) int { return cmp.Compare(along[a], along[b]) })
	}
}

// at is where a line crosses the section at a station; ok is false where it does
// not, or its figure is withdrawn.
func (s *sight) at(rows []fair.Row, line, station int) (y, z float64, ok bool) {
	if !s.point[line] {
		return 0, 0, false
	}
	if d := s.slant[line]; d[0] != 0 {
		far := rows[line].Y[station]
		return far * d[0], s.fixed[line] - far*d[1], rows[line].Given[station]
	}
	if i := s.breadth[line]; i >= 0 {
		if !rows[i].Given[station] {
			return 0, 0, false
		}
		y = rows[i].Y[station]
	} else if s.height[line] >= 0 && s.o.Lines[line].Role == Buttock {
		y = s.fixed[line]
	}
	if i := s.height[line]; i >= 0 {
		if !rows[i].Given[station] {
			return 0, 0, false
		}
		return y, rows[i].Y[station], true
	}
	return y, s.fixed[line], true
}

// stencil is lines whose points lie about another's on the section.
type stencil struct {
	lines [4]int
	n     int
}

func stencilOf(lines ...int) stencil {
	s := stencil{n: len(lines)}
	copy(s.lines[:], lines)
	return s
}

// stencils are the sets of lines a line's point at a station is held against:
// the two next to it and two on either side; the next on one side with the
// second on the other, so that one bad point does not speak in all of them; and
// past the last point the line through the nearest two or three.
func (s *sight) stencils(rows []fair.Row, line, station int) []stencil {
	y, z, ok := s.at(rows, line, station)
	if !ok {
		return nil
	}
	var below, above []int // the nearest first
	for _, i := range s.order[station] {
		yi, zi, ok := s.at(rows, i, station)
		if i == line || !ok {
			continue
		}
		past := zi >= z
		switch s.o.Lines[line].Role {
		case Buttock:
			past = yi >= y
		case DiagonalLine:
			past = yi+zi >= y+z
		}
		if past || len(above) > 0 {
			if above = append(above, i); len(above) == 3 {
				break
			}
			continue
		}
		below = append(below, i)
	}
	slices.Reverse(below)
	var all []stencil
	b, a := len(below), len(above)
	if b >= 1 && a >= 1 {
		all = append(all, stencilOf(below[0], above[0]))
	}
	if b >= 2 && a >= 2 {
		all = append(all, stencilOf(below[1], below[0], above[0], above[1]))
	}
	if b >= 2 && a >= 1 {
		all = append(all, stencilOf(below[1], above[0]))
	}
	if b >= 1 && a >= 2 {
		all = append(all, stencilOf(below[0], above[1]))
	}
	if b == 0 && a >= 2 {
		all = append(all, stencilOf(above[0], above[1]))
	}
	if b == 0 && a >= 3 {
		all = append(all, stencilOf(above[0], above[1], above[2]))
	}
	if a == 0 && b >= 2 {
		all = append(all, stencilOf(below[1], below[0]))
	}
	if a == 0 && b >= 3 {
		all = append(all, stencilOf(below[2], below[1], below[0]))
	}
	return all
}

// Beside is the lines on whose figures the section's opinion of one rests.
func (s *sight) Beside(rows []fair.Row, line, station int) []int {
	if !s.sees[line] {
		return nil
	}
	var all []int
	for _, st := range s.stencils(rows, line, station) {
		for _, l := range st.lines[:st.n] {
			if s.slant[l][0] != 0 && l != line && !slices.Contains(all, l) {
				all = append(all, l)
			}
			for _, i := range [2]int{s.breadth[l], s.height[l]} {
				if i >= 0 && i != line && !slices.Contains(all, i) {
					all = append(all, i)
				}
			}
		}
	}
	if s.chine >= 0 && s.chineGiven(station) {
		for _, i := range [2]int{s.breadth[s.chine], s.height[s.chine]} {
			if i != line && !slices.Contains(all, i) {
				all = append(all, i)
			}
		}
	}
	slices.Sort(all)
	return all
}
