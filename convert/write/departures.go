package write

import (
	"fmt"
	"math"
	"slices"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// departures is how far each line's figures lie off fair, every line on its own
// level: what is wrong stands out of a line that should be nearly straight.
func departures(in Input, figures *page) []picture {
	u := in.units()
	const name = "Departures from fair"
	apart := even(math.Max(1, 4*typical(in, u)))
	d := picture{name: name, shows: fmt.Sprintf("Each line of the table as read less faired, at the %ss' positions, from the first line at the top down; one level to the next is %v %s. Crosses: beyond that, and drawn short of it.", in.places(), apart, steps(u))}
	var every, rings []point
	level, i := 0.0, -1
	for _, o := range in.Job.Offsets {
		for _, l := range o.Lines {
			if i++; i >= len(in.Result.Fair) || in.Result.Fair[i].Smallest == 0 {
				continue
			}
			level -= apart
			f := in.Result.Fair[i]
			var all []point
			for k, v := range f.Departure {
				if k >= len(o.Stations) || !o.Stations[k].At.OK() || k < len(f.Given) && !f.Given[k] {
					continue
				}
				by, at := stepsOf(v, u), far(o.Stations[k].At.Value, u)
				if shown := max(-0.9*apart, min(0.9*apart, by)); shown != by {
					rings, by = append(rings, point{x: at, y: level + shown}), shown
				}
				all = append(all, point{x: at, y: level + by})
			}
			if len(all) < 2 {
				continue
			}
			every = append(every, all...)
			c := figures.points(name, l.View.String()+" "+l.Name, sheet.Solid, all)
			name := figures.points(name, "   "+l.View.String()+" "+l.Name, sheet.NoPen, []point{{x: all[len(all)-1].x, y: level}}) // clear of a cross there
			name.End, name.Beside = 1, true
			d.chart.Lines = append(d.chart.Lines, c, name)
		}
	}
	if len(every) == 0 {
		return nil
	}
	if len(rings) > 0 {
		d.chart.Lines = append(d.chart.Lines, figures.points(name, "beyond", sheet.Crosses, rings))
	}
	x, _ := values(every)
	d.chart.X = roomy(axis("along, "+farUnit(u), x...))
	d.chart.Y = sheet.Axis{Title: fmt.Sprintf("off fair: a level is %v %s", apart, steps(u)), From: level - apart, To: 0, Step: apart, NoFigures: true}
	return []picture{d}
}

// stepsOf is a departure in eighths of an inch or millimetres.
func stepsOf(l measure.Length, u measure.Style) float64 {
	if u == measure.StyleMM {
		return l.Millimetres()
	}
	return l.Inches() * 8
}

// typical is a departure that most do not reach.
func typical(in Input, u measure.Style) float64 {
	var all []float64
	for _, f := range in.Result.Fair {
		for k, v := range f.Departure {
			if k >= len(f.Given) || f.Given[k] {
				all = append(all, math.Abs(stepsOf(v, u)))
			}
		}
	}
	if len(all) == 0 {
		return 0
	}
	slices.Sort(all)
	return all[len(all)*3/4]
}
