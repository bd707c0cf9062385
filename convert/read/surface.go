package read

import (
	"fmt"
	"strings"

	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// surface is the surface that a table's own words say its figures are to.
func (r *reader) surface(words string, at source.Cell) hull.Surface {
	t := strings.ToLower(measure.Fold(words))
	s := hull.SurfaceUnstated
	switch {
	case strings.Contains(t, "between the skins"), strings.Contains(t, "between skins"):
		s = hull.BetweenSkins
	case strings.Contains(t, "outside of plank"), strings.Contains(t, "outside of skin"), strings.Contains(t, "to outside"):
		s = hull.OutsidePlanking
	case strings.Contains(t, "inside of plank"), strings.Contains(t, "inside of strip"), strings.Contains(t, "to inside"), strings.Contains(t, "on the moulds"):
		s = hull.InsidePlanking
	}
	if s != hull.SurfaceUnstated {
		r.add(finding.Finding{Kind: ConventionRead, Cell: at, Text: fmt.Sprintf("the book says the offsets are to the %s", s)})
	}
	return s
}

// gaugeOf is what a table's own words say its readings stand for.
func (r *reader) gaugeOf(words string, at source.Cell) bevel.Gauge {
	t := strings.ToLower(measure.Fold(words))
	g := bevel.GaugeUnstated
	switch {
	case strings.Contains(t, "off square"):
		g = bevel.OffSquare
	case strings.Contains(t, "gauge") && strings.Contains(t, "inside face"):
		g = bevel.OnInside
	case strings.Contains(t, "gauge") && strings.Contains(t, "outside face"):
		g = bevel.OnOutside
	}
	if g != bevel.GaugeUnstated {
		r.add(finding.Finding{Kind: ConventionRead, Cell: at, Text: fmt.Sprintf("the book says the bevels are read: %s", g)})
	}
	return g
}
