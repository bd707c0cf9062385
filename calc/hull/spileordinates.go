package hull

import (
	"cmp"
	"math"
	"slices"
	"sort"

	"strakebook/calc/measure"
)

// ordinates is the heights of the edges above the lower edge of the board, at the
// stations and at even steps between.
func (d *developed) ordinates(way, edge flat, step float64) []Ordinate {
	turn := func(p flat) flat {
		q := p.minus(edge)
		return flat{q.x*way.x + q.y*way.y, way.across(q)}
	}
	lines := [4][]flat{}
	start := math.Inf(1)
	for i, line := range [][]flat{d.upper, d.lower, d.outU, d.outL} {
		for _, p := range line {
			q := turn(p)
			lines[i] = append(lines[i], q)
			start = min(start, q.x)
		}
	}
	bevels := [2][]flat{along(lines[0], d.bevelU), along(lines[1], d.bevelL)}
	end := min(lines[0][len(lines[0])-1].x, lines[1][len(lines[1])-1].x)
	var all []Ordinate
	add := func(x float64, station string) {
		o := Ordinate{At: measure.Inches(x - start), Station: station}
		for i, to := range []*measure.Length{&o.Upper, &o.Lower, &o.UpperO, &o.LowerO} {
			*to = measure.Inches(height(lines[i], x))
		}
		o.BevelU, o.BevelLo = measure.Radians(height(bevels[0], x)), measure.Radians(height(bevels[1], x))
		all = append(all, o)
	}
	places := []ordinatePlace{{max(lines[0][0].x, lines[1][0].x), d.stations[0]}}
	for i := 1; i < len(lines[0])-1; i++ {
		if d.stations[i] != "" {
			places = append(places, ordinatePlace{lines[0][i].x, d.stations[i]})
		}
	}
	places = append(places, ordinatePlace{end, d.stations[len(d.stations)-1]})
	for x := start + step; step > 0 && x < end; x += step {
		clear := true
		for _, p := range places {
			clear = clear && math.Abs(p.x-x) > step/4
		}
		if clear {
			places = append(places, ordinatePlace{x, ""})
		}
	}
	slices.SortStableFunc(places, func(a, b ordinatePlace) int { return cmp.Compare(a.x, b.x) })
	for _, p := range places {
		add(p.x, p.station)
	}
	return all
}

// ordinatePlace is a place along the board at which heights are given.
type ordinatePlace struct {
	x       float64
	station string
}

// height is the height of a line at a place along the board, level beyond its
// ends.
func height(line []flat, x float64) float64 {
	i := 1 + sort.Search(len(line)-2, func(i int) bool { return line[i+1].x >= x })
	a, b := line[i-1], line[i]
	if b.x == a.x {
		return b.y
	}
	return a.y + (b.y-a.y)*max(0, min(1, (x-a.x)/(b.x-a.x)))
}

// outline is every corner of both faces.
func (d *developed) outline() []flat {
	var all []flat
	for _, edge := range [][]flat{d.upper, d.lower, d.outU, d.outL} {
		all = append(all, edge...)
	}
	return all
}
