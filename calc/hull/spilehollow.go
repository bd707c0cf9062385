package hull

import (
	"fmt"

	"strakebook/calc/finding"
)

// SpileHollow is a plank whose back would have to be hollowed by most of its
// thickness: it lies across a corner of the section.
var SpileHollow = &finding.Kind{
	Code: "spile-hollow", Severity: finding.Warning, Title: "plank across a corner of the section",
	Why:    "A plank does not lie over a chine, nor round a turn so sharp: it would be hewn from a board far thicker than itself.",
	Remedy: "line the seams off anew, one of them along the chine, or narrower planks at the turn; thicker stock or less dressing is no remedy",
}

// mostHollow is the part of a plank's thickness beyond which its hollow is told of:
// our choice.
const mostHollow = 0.75

// corners says how many of a skin's planks would be hollowed by most of their
// thickness, with the worst.
func (s *Shape) corners(l *Lining, all []Spiled, strakes []Strake, r Rules) finding.List {
	worst, n := Spiled{}, 0
	for _, p := range all {
		if thick := p.Thick - p.Worked; p.Skin == Strips || p.Thick == 0 || p.Hollow.Abs().Inches() <= mostHollow*thick.Inches() {
			continue
		}
		n++
		if p.Hollow.Abs() > worst.Hollow.Abs() {
			worst = p
		}
	}
	if n == 0 {
		return nil
	}
	listed, _ := Listed(strakes, worst.Skin, worst.Strake, worst.Side)
	write := r.Units.Small
	text := fmt.Sprintf("%s %s straddles a chine or too sharp a turn: its back would be hollowed %s%s, and it is %s thick",
		worst.Skin, worst.Strake, write(worst.Hollow.Abs()), s.hollowAt(l, worst), write(worst.Thick-worst.Worked))
	if n > 1 {
		text += fmt.Sprintf("; %d of the skin's strakes %s so", n, is(n))
	}
	return finding.List{{Kind: SpileHollow, Cell: listed.Cell, Reads: worst.Strake, Text: text}}
}

// hollowAt is the station at which a strake is hollowest, in words.
func (s *Shape) hollowAt(l *Lining, p Spiled) string {
	for _, k := range l.Strakes {
		for i, h := range k.Hollows {
			if k.Name == p.Strake && h == p.Hollow {
				return " at " + s.called(s.Stations[i].Name)
			}
		}
	}
	return ""
}
