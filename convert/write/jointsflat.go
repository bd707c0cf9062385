package write

import (
	"fmt"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// jointsFlat is a side of each skin laid flat: strakes down from the sheer,
// stations across, scarfs to scale. Port is drawn where it is planned apart.
func jointsFlat(in Input, figures, jointed *page) []picture {
	var all []picture
	for _, skin := range in.skins() {
		for _, side := range []hull.Side{hull.Starboard, hull.Port} {
			if side == hull.Port && !in.Result.Rules.Lay.Unlike && in.has(skin, hull.Starboard) {
				continue
			}
			if d, ok := flat(in, figures, jointed, skin, side); ok {
				all = append(all, d)
			}
		}
	}
	return all
}

func (in Input) skins() []hull.Skin {
	var all []hull.Skin
	seen := map[hull.Skin]bool{}
	for _, r := range in.Result.Runs {
		if !seen[r.Skin] {
			seen[r.Skin] = true
			all = append(all, r.Skin)
		}
	}
	return all
}

func (in Input) has(skin hull.Skin, side hull.Side) bool {
	for _, r := range in.Result.Runs {
		if r.Skin == skin && r.Side == side {
			return true
		}
	}
	return false
}

// perFar makes half of a length in inches or millimetres a length on a picture.
func perFar(u measure.Style) string {
	if u == measure.StyleMM {
		return "/2000"
	}
	return "/24"
}

// flat is one side of one skin.
func flat(in Input, figures, jointed *page, skin hull.Skin, side hull.Side) (picture, bool) {
	u := in.units()
	name := fmt.Sprintf("Joints, %s %s", skin, side)
	like := " The other side is as this one."
	if in.Result.Rules.Lay.Unlike || !in.has(skin, hull.Port) {
		like = ""
	}
	d := picture{name: name, shows: "The side laid flat: strakes down from the sheer, scarfs as thick lines of their own length, " + in.places().String() + "s across as dashes." + like + " Crosses: joints nearer to another than the rules allow."}
	var strakes, scarfs, rings []point
	lowest := 0.0
	breaches := in.breaches()
	for i := range in.Result.Runs {
		r := &in.Result.Runs[i]
		if r.Skin != skin || r.Side != side {
			continue
		}
		y := float64(r.Order)
		lowest = max(lowest, y)
		strakes = append(strakes, point{x: far(r.Start, u), y: y}, point{x: far(r.Start+r.Length, u), y: y}, gap)
		for k, bad := range breaches[i] {
			at := r.Start + r.Joints[k]
			half := "{" + jointed.called + "}!" + jointed.at("Scarf run", i) + perFar(u)
			scarfs = append(scarfs, point{far(at, u) - far(r.Scarf, u)/2, y, figure(far(at, u)) + "-" + half}, point{far(at, u) + far(r.Scarf, u)/2, y, figure(far(at, u)) + "+" + half}, gap)
			if bad {
				rings = append(rings, point{x: far(at, u), y: y})
			}
		}
	}
	if len(strakes) == 0 {
		return d, false
	}
	stations := stationLines(in, lowest+1, u)
	for _, l := range []struct {
		name string
		pen  sheet.Pen
		all  []point
	}{{in.places().String() + "s", sheet.Dashed, stations}, {"strakes", sheet.Grey, strakes}, {"scarfs", sheet.Heavy, scarfs}, {"too near", sheet.Crosses, rings}} {
		if len(l.all) > 0 {
			d.chart.Lines = append(d.chart.Lines, figures.points(name, l.name, l.pen, l.all))
		}
	}
	x, _ := values(append(stations, strakes...))
	d.chart.X = axis("along, "+farUnit(u), x...)
	d.chart.Y = sheet.Axis{Title: "strake from the sheer", From: 0, To: lowest + 1, Step: even((lowest + 1) / 12), Downwards: true}
	d.chart.Y.Step = max(1, d.chart.Y.Step)
	return d, true
}

// stationLines is the stations as lines across the strakes.
func stationLines(in Input, down float64, u measure.Style) []point {
	var all []point
	for _, o := range in.Job.Offsets {
		for _, s := range o.Stations {
			if s.At.OK() {
				all = append(all, point{x: far(s.At.Value, u)}, point{x: far(s.At.Value, u), y: down}, gap)
			}
		}
	}
	return all
}
