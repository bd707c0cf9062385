package scarf

import (
	"cmp"
	"fmt"
	"slices"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Row is one line of the scarf table: all the scarfs of one skin, thickness
// and slope.
type Row struct {
	Skin      hull.Skin
	Thickness measure.Length
	Width     measure.Length // the greatest, for the glue area
	Slope     float64        // n of n to 1
	Run       measure.Length // along the plank
	Angle     measure.Angle  // of the fence: atan(1/n); 1 in n as rise over run
	Face      measure.Length // along the cut
	GlueArea  float64        // of one joint at the greatest width, square inches
	Joints    int
	ForeCuts  int            // on the fore-end saw: one a joint
	AfterCuts int            // on the after-end saw: one a joint
	Gap       measure.Length // at the feather for the fence difference of the rules
}

// Use is so many scarfs of one kind.
type Use struct {
	Skin      hull.Skin
	Thickness measure.Length
	Width     measure.Length
	Slope     float64
	Joints    int
	Cell      source.Cell
}

// Steep is a scarf steeper than the rule chosen.
var Steep = &finding.Kind{
	Code: "scarf-steep", Severity: finding.Warning, Title: "scarf steeper than the rule",
	Why:    "A steep scarf puts end grain to end grain: a plain butt keeps about a quarter of the wood's strength (Wood Handbook ch. 10), and a scarf comes near it as it steepens.",
	Remedy: "flatten the slope, or have the designer pass it and set \"least scarf slope\"",
}

// NibThick is a nib that leaves no scarf.
var NibThick = &finding.Kind{
	Code: "scarf-nib", Severity: finding.Error, Title: "nib leaves no scarf",
	Why:    "Two nibs of half the thickness leave nothing to glue but end grain.",
	Remedy: "set \"scarf nib\" to less than half the thinnest plank",
}

// Table adds up the scarfs of each skin, thickness and slope, in the order of
// the skins as they come and then by thickness.
func Table(uses []Use, r Rules) ([]Row, finding.List) {
	var rows []Row
	var found finding.List
	var skins []hull.Skin
	for _, u := range uses {
		if !slices.Contains(skins, u.Skin) {
			skins = append(skins, u.Skin)
		}
		i := slices.IndexFunc(rows, func(w Row) bool {
			return w.Skin == u.Skin && w.Thickness == u.Thickness && w.Slope == u.Slope
		})
		if i < 0 {
			found = append(found, check(u, r)...)
			rows = append(rows, Row{
				Skin: u.Skin, Thickness: u.Thickness, Slope: u.Slope,
				Run: Run(u.Thickness, u.Slope, r.Nib), Angle: Angle(u.Slope),
				Face: Face(u.Thickness, u.Slope, r.Nib),
				Gap:  Gap(u.Thickness, u.Slope, r.Nib, r.FenceError),
			})
			i = len(rows) - 1
		}
		w := &rows[i]
		w.Width = max(w.Width, u.Width)
		w.GlueArea = w.Width.Inches() * w.Face.Inches()
		w.Joints += u.Joints
		w.ForeCuts, w.AfterCuts = w.Joints, w.Joints
	}
	slices.SortStableFunc(rows, func(a, b Row) int {
		return cmp.Or(cmp.Compare(slices.Index(skins, a.Skin), slices.Index(skins, b.Skin)),
			cmp.Compare(a.Thickness, b.Thickness), cmp.Compare(a.Slope, b.Slope))
	})
	return rows, found
}

func check(u Use, r Rules) finding.List {
	var found finding.List
	if u.Slope < r.LeastSlope {
		found = append(found, finding.Finding{
			Kind: Steep, Cell: u.Cell,
			Text:     fmt.Sprintf("%s scarfs of %g to 1 are steeper than %g to 1", u.Skin, u.Slope, r.LeastSlope),
			Reads:    fmt.Sprintf("%g", u.Slope),
			Suggests: fmt.Sprintf("%g to 1 or flatter", r.LeastSlope),
		})
	}
	if 2*r.Nib >= u.Thickness {
		found = append(found, finding.Finding{
			Kind: NibThick, Cell: u.Cell,
			Text: fmt.Sprintf("a nib of %s in leaves no scarf on %s stock of %s in", measure.InchesText(r.Nib), u.Skin, measure.InchesText(u.Thickness)),
		})
	}
	return found
}
