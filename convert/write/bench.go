package write

import (
	"fmt"
	"strings"

	"strakebook/calc/bevel"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// bench is how a plank lies on the saw's bench: the end its marks are called out
// from on each side, and the hand the blade leans to.
func bench(s bevel.Schedule, r bevel.Rules) string {
	from := readFrom(s, r)
	if s.Side == hull.BothSides {
		starboard, port := s, s
		starboard.Side, port.Side = hull.Starboard, hull.Port
		from = fmt.Sprintf("%s to starboard, %s to port", readFrom(starboard, r), readFrom(port, r))
	}
	return fmt.Sprintf("Saw from %s; + leans the blade %s the plank, - %s it.", from, r.Lean(1), r.Lean(-1))
}

// atSaw is how thick a plank lies on the saw's bench where that is not as thick as it
// will be, its back being worked once it is sawn, or that a back that wants it is let be;
// nothing where it is.
func atSaw(s bevel.Schedule, u measure.Style) []string {
	if s.Worked == 0 && s.LetBe.Abs() >= measure.Sixteenth {
		return []string{fmt.Sprintf("Its back is left flat, as \"hollow from\" has it: widths are round the hull, as of a plank drawn to it; lying flat it stands off by %s.", u.Small(s.LetBe.Abs()))}
	}
	if s.Worked == 0 || s.Thickness == 0 {
		return nil
	}
	how := "hollowed"
	if s.Rounded > 0 {
		how = "rounded"
	}
	lines := []string{fmt.Sprintf("Sawn from the board as dressed, %s thick; then its back is %s by %s.", u.Small(s.Thickness), how, u.Small(s.Worked))}
	if s.Less > 0 {
		places := 3
		if u == measure.StyleMM {
			places = 1
		}
		lines = append(lines, fmt.Sprintf("Widths are straight across the board: up to %.*f %s less than round the back as worked.", places, inUnits(s.Less, u), unit(u)))
	}
	if s.Rounded > 0 {
		lines = append(lines, "Width and batten are to the corners of the back as rounded.")
	}
	if lacks := s.Listed + s.Worked - s.Thickness; lacks > 0 && s.Listed > 0 {
		lines = append(lines, fmt.Sprintf("As planed it is %s too thin for that.", u.Small(lacks)))
	}
	return lines
}

// loose is how far bevels worked out from the hull may be out for the table's step;
// "" where that is less than the saw shows, or they were lifted.
func loose(s bevel.Schedule, in Input) string {
	if s.Within < in.Result.Rules.Bevel.Readout {
		return ""
	}
	u := in.units() // a step is said in the units of its table
	switch metric := len(in.Job.Offsets) > 0 && in.Job.Offsets[0].Form.Metric(); {
	case metric:
		u = measure.StyleMM
	case u == measure.StyleMM:
		u = measure.StyleFeet
	}
	return fmt.Sprintf("Offsets to %s leave them about %s degrees loose either way on a plank so wide: lift some before it is sawn.", u.Small(s.Step), s.Within.Round(0.1).Write())
}

// lying heads the thickness and width of a plank on its card.
func lying(s bevel.Schedule) string {
	if s.Worked > 0 {
		return "Board"
	}
	return "Plank"
}

// mind is what to mind at the saw, on every card.
const mind = "Guard on, hold-downs set, hands clear; try each tilt on waste."

// readFrom is the end a card is called out from. Its marks stand from the fore end aft:
// from the other end it is read upward, and each change then goes the other way.
func readFrom(s bevel.Schedule, r bevel.Rules) string {
	end := s.ReadFrom(r)
	if end == "after end" {
		return "the after end (read upward, each change the other way)"
	}
	return "the " + end
}

// crossing says at a mark that the blade leans to the other hand from it on, the way
// the card is read; where it is read either way, which.
func crossing(s bevel.Schedule, m bevel.Mark, r bevel.Rules) string {
	const said = "passes through square: the other hand from here"
	switch down := s.ReadFrom(r) != "after end"; {
	case s.Side == hull.BothSides && m.Crossing && m.CrossingBack:
		return said + ", read either way"
	case s.Side == hull.BothSides && m.Crossing:
		return said + ", read downward"
	case s.Side == hull.BothSides && m.CrossingBack:
		return said + ", read upward"
	case s.Side != hull.BothSides && (down && m.Crossing || !down && m.CrossingBack):
		return said
	}
	return ""
}

// battenOf is which planks one guide batten serves, on the card of each.
func battenOf(in Input, s bevel.Schedule) string {
	u := in.units()
	for _, g := range in.Result.Guides {
		if g.Skin != s.Skin || g.Side != s.Side || g.Edge != s.Edge || len(g.Planks) < 2 {
			continue
		}
		for i, p := range g.Planks {
			if p.Strake != s.Strake {
				continue
			}
			if i > 0 {
				return shifted(g.Planks[0].Strake, p.Shift, g.Off, u)
			}
			var others []string
			for _, o := range g.Planks[1:] {
				others = append(others, o.Strake)
			}
			return fmt.Sprintf("One batten serves this plank and %s, shifted as their cards say.", strings.Join(others, ", "))
		}
	}
	return ""
}

// shifted is how the batten of another plank serves this one, in the figures that a rule
// shows: what they have nothing of is left out.
func shifted(of string, by, off measure.Length, u measure.Style) string {
	places, least := 3, measure.Inch/1000
	if u == measure.StyleMM {
		places, least = 1, measure.Millimetre/10
	}
	how := ", as it is"
	if by.Round(least) != 0 {
		way := "out"
		if by < 0 {
			way = "in"
		}
		how = fmt.Sprintf(", shifted %s %.*f %s", way, places, inUnits(by.Abs(), u), unit(u))
	}
	if off.Round(least) != 0 {
		how += fmt.Sprintf(": within %.*f %s", places, inUnits(off, u), unit(u))
	}
	return fmt.Sprintf("The batten of %s serves%s.", of, how)
}
