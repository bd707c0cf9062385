package bevel

import (
	"fmt"
	"math"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// pair is one seam read on both sides.
type pair struct{ starboard, port int }

// pairs is the seams of a table that are read on both sides.
func (b Readings) pairs() []pair {
	var all []pair
	for i, s := range b.Seams {
		if s.Side != hull.Starboard {
			continue
		}
		for k, p := range b.Seams {
			if p.Side == hull.Port && strings.EqualFold(p.Strake, s.Strake) && p.Skin == s.Skin && p.Edge == s.Edge {
				all = append(all, pair{i, k})
				break
			}
		}
	}
	return all
}

// sides compares port with starboard. Where most readings of one side are those
// of the other with the sign changed, the side was read on the other face; where
// the two differ all along, one finding says so; else each place is named that
// differs by more than the rule allows and is not a jump already found.
func sides(b Readings, jumps map[source.Cell]bool, r Rules) finding.List {
	if r.SidesWithin <= 0 {
		return nil
	}
	var found finding.List
	for _, p := range b.pairs() {
		starboard, port := b.Seams[p.starboard], b.Seams[p.port]
		ys, gs := b.values(starboard, r)
		yp, gp := b.values(port, r)
		var both, apart []int
		opposed, alike, sum := 0.0, 0.0, 0.0
		for k := range ys {
			if !gs[k] || !gp[k] {
				continue
			}
			both = append(both, k)
			opposed += math.Abs(ys[k] + yp[k])
			alike += math.Abs(ys[k] - yp[k])
			sum += yp[k] - ys[k]
			if math.Abs(ys[k]-yp[k]) > float64(r.SidesWithin) {
				apart = append(apart, k)
			}
		}
		switch n := len(both); {
		case len(apart) == 0:
		case n >= 4 && opposed < alike/4:
			found = append(found, finding.Finding{Kind: SidesOpposed, Cell: port.Cell, Also: []source.Cell{starboard.Cell},
				Text: fmt.Sprintf("%s reads as its starboard side does with the sign changed", port.name())})
		case n >= 4 && 5*len(apart) > 3*n:
			found = append(found, finding.Finding{Kind: SidesApart, Cell: port.Cell, Also: []source.Cell{starboard.Cell},
				Text: fmt.Sprintf("%s and its starboard side differ by more than %s degrees at %d of %d %ss, by %s on the average",
					port.name(), r.SidesWithin.Write(), len(apart), n, b.Places, measure.Angle(sum/float64(n)).Round(0.01).Write())})
		default:
			for _, k := range apart {
				v, w := port.Readings[k], starboard.Readings[k]
				if jumps[v.Cell] || jumps[w.Cell] {
					continue
				}
				found = append(found, finding.Finding{Kind: SidesApart, Cell: v.Cell, Reads: v.Text, Also: []source.Cell{w.Cell},
					Text: fmt.Sprintf("%s reads %q at %s and its starboard side %q", port.name(), v.Text, b.called(k), w.Text)})
			}
		}
	}
	return found
}
