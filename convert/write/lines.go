package write

import (
	"slices"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// bodyPlan is the sections seen from ahead and astern at one scale both ways, the
// fore body to the right and the after body to the left.
func bodyPlan(in Input, figures *page) []picture {
	if in.Result.Hull == nil || len(in.Result.Hull.Sections) == 0 {
		return nil
	}
	u := in.units()
	const name = "Body plan"
	d := picture{name: name, shows: "Sections at the " + in.places().String() + "s named at their ends, the fore body to the right of the centre line and the after body to the left, one scale both ways. Crosses: offsets that a warning is about."}
	var every []point
	middle := middleStation(in.Result.Hull.Sections)
	hand, fore, after := map[string]float64{}, map[int][]point{}, map[int][]point{}
	for i, s := range in.Result.Hull.Sections {
		side := 1.0
		if i > middle {
			side = -1
		}
		hand[s.Station] = side
		line := outline(s, side, u)
		if len(line) < 2 {
			continue
		}
		every = append(every, line...)
		if side > 0 {
			fore[len(d.chart.Lines)] = line
		} else {
			after[len(d.chart.Lines)] = line
		}
		d.chart.Lines = append(d.chart.Lines, figures.points(name, s.Station, sheet.Solid, line))
	}
	if len(every) == 0 {
		return nil
	}
	if rings := ringed(in, func(o hull.Offsets, l hull.Line, k int) (point, bool) {
		v, at := far(l.Values[k].Value, u), far(l.At.Value, u)
		side := hand[o.Stations[k].Name]
		switch {
		case side == 0 || !l.At.OK():
			return point{}, false
		case l.View == hull.HalfBreadth:
			return point{x: side * v, y: at}, true
		case l.View == hull.Height:
			return point{x: side * at, y: v}, true
		}
		return point{}, false
	}); len(rings) > 0 {
		d.chart.Lines = append(d.chart.Lines, figures.points(name, "to look at", sheet.Crosses, rings))
		every = append(every, rings...)
	}
	x, y := values(d.bulk(every))
	for _, v := range x {
		x = append(x, -v)
	}
	y = append(y, 1.05*slices.Max(y)) // room for names
	d.chart.X, d.chart.Y, d.chart.Equal = axis("half-breadth, "+farUnit(u), x...), axis("height above base, "+farUnit(u), y...), true
	d.spread(figures, name, fore)
	d.spread(figures, name, after)
	return []picture{d}
}

// middleStation is the last section of the fore body: the last before the middle
// of the length.
func middleStation(all []hull.Section) int {
	half := (all[0].At + all[len(all)-1].At) / 2
	middle := 0
	for i, s := range all {
		if s.At <= half {
			middle = i
		}
	}
	return middle
}

// outline is a section's curve on one hand, thinned to what print shows.
func outline(s hull.Section, side float64, u measure.Style) []point {
	drawn := s.Drawn
	if len(drawn) == 0 {
		drawn = s.Points
	}
	step := max(1, len(drawn)/28)
	var all []point
	for i, p := range drawn {
		if i%step == 0 || i == len(drawn)-1 {
			all = append(all, point{x: side * far(p.Out, u), y: far(p.Up, u)})
		}
	}
	return all
}

// ringed is the places of the offsets that a warning or an error is about.
func ringed(in Input, place func(hull.Offsets, hull.Line, int) (point, bool)) []point {
	doubt := doubts(in.Findings)
	var all []point
	for _, o := range in.Job.Offsets {
		for _, l := range o.Lines {
			for k, v := range l.Values {
				if worst, found := doubt[v.Cell]; !found || worst < finding.Warning || !v.OK() || k >= len(o.Stations) {
					continue
				}
				if at, ok := place(o, l, k); ok {
					all = append(all, at)
				}
			}
		}
	}
	return all
}

// halfBreadthPlan is the waterlines and the deck seen from above.
func halfBreadthPlan(in Input, figures *page) []picture {
	return plan(in, figures, "Half-breadth plan", "Waterlines and the deck from above, at the "+in.places().String()+"s' positions; the scale across is its own. Crosses: offsets that a warning is about.", "half-breadth", hull.HalfBreadth)
}

// sheerPlan is the sheer, the buttocks and the profile seen from the side.
func sheerPlan(in Input, figures *page) []picture {
	return plan(in, figures, "Sheer plan", "The sheer, buttocks and rabbet from the side, at the "+in.places().String()+"s' positions; the scale up is its own. Crosses: offsets that a warning is about.", "height above base", hull.Height)
}

// plan is the table's lines of one view along the hull.
func plan(in Input, figures *page, name, shows, up string, view hull.View) []picture {
	u := in.units()
	d, named := picture{name: name, shows: shows}, map[int][]point{}
	var every []point
	for _, o := range in.Job.Offsets {
		for i, l := range o.Lines {
			if l.View != view {
				continue
			}
			var all []point
			for k, v := range l.Values {
				switch {
				case k >= len(o.Stations) || !o.Stations[k].At.OK():
				case v.OK():
					all = append(all, point{x: far(o.Stations[k].At.Value, u), y: far(v.Value, u)})
				case v.State == source.Dash && len(all) > 0:
					all = append(all, gap)
				}
			}
			if len(all) < 2 {
				continue
			}
			pen := []sheet.Pen{sheet.Solid, sheet.Dashed}[i%2]
			if l.Role == hull.Deck || l.Role == hull.Rabbet || l.Role == hull.Keel {
				pen = sheet.Heavy
			}
			every = append(every, all...)
			named[len(d.chart.Lines)] = all
			d.chart.Lines = append(d.chart.Lines, figures.points(name, l.Name, pen, all))
		}
	}
	if len(every) == 0 {
		return nil
	}
	if rings := ringed(in, func(o hull.Offsets, l hull.Line, k int) (point, bool) {
		return point{x: far(o.Stations[k].At.Value, u), y: far(l.Values[k].Value, u)}, l.View == view && o.Stations[k].At.OK()
	}); len(rings) > 0 {
		d.chart.Lines = append(d.chart.Lines, figures.points(name, "to look at", sheet.Crosses, rings))
	}
	x, y := values(d.bulk(every))
	d.chart.X, d.chart.Y = roomy(axis("along, "+farUnit(u), x...)), axis(up+", "+farUnit(u), y...)
	d.label(figures, name, named)
	return []picture{d}
}
