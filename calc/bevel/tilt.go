package bevel

import (
	"fmt"
	"math"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Beyond says that the saw cannot be tilted until its scale reads so much.
func (r Rules) Beyond(scale measure.Angle) bool { return math.Abs(float64(scale)) > float64(r.Tilt) }

// beyond is what is said of a bevel that the saw cannot be set to: what its scale
// would have to read, where the trial cuts make that another figure.
func (r Rules) beyond(bevel measure.Angle) string {
	text := fmt.Sprintf("beyond the saw's tilt of %s degrees", r.Tilt.Write())
	if scale := r.tilt(bevel); len(r.trials()) > 0 {
		text = fmt.Sprintf("for which its scale must read %s, %s", scale.Write(), text)
	}
	return text
}

// CheckTilts says once for the whole job which marks the saw cannot be set to, beside
// those at readings told of already: of bevels worked out, between readings, turned
// square to the edge, of shutters.
func CheckTilts(all []Schedule, told finding.List, r Rules) finding.List {
	known, marks := map[source.Cell]bool{}, 0
	for _, f := range told {
		if f.Code == Tilted.Code {
			known[f.Cell] = true
		}
	}
	var over []Schedule
	var worst Schedule
	var steepest Mark
	for _, s := range all {
		if s.AsOther {
			continue // as the side lifted
		}
		n := 0
		for _, m := range s.untold(known) {
			if !r.Beyond(m.Tilt) {
				continue
			}
			n++
			if math.Abs(float64(m.Tilt)) > math.Abs(float64(steepest.Tilt)) {
				worst, steepest = s, m
			}
		}
		if n > 0 {
			over, marks = append(over, s), marks+n
		}
	}
	if marks == 0 {
		return nil
	}
	f := at(Tilted, over)
	f.Do = "plan to plane the rest; set \"saw tilt\" if the saw can do more"
	where := "near " + worst.near(steepest)
	if steepest.Station != "" {
		where = "at " + worst.Places.Named(steepest.Station)
	}
	if len(over) > 1 {
		where = worst.name() + " " + where
	}
	f.Text = fmt.Sprintf("the saw cannot be set to %d of the marks of %s: the steepest, %s, is %s degrees, %s", marks, planks(over),
		where, steepest.sawn(r).Round(0.01).Write(), r.beyond(steepest.sawn(r)))
	return finding.List{f}
}

// untold is a schedule's marks but those at readings told of, and between stations
// where any is.
func (s Schedule) untold(known map[source.Cell]bool) []Mark {
	any := false
	for _, m := range s.Marks {
		any = any || m.Read.OK() && known[m.Read.Cell]
	}
	var all []Mark
	for _, m := range s.Marks {
		if m.Station == "" && any || m.Read.OK() && known[m.Read.Cell] {
			continue
		}
		all = append(all, m)
	}
	return all
}
