package scarf

import (
	"cmp"
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
	GlueAll   float64        // of all the joints, each at its own width, square inches
	Joints    int            // one cut each on the fore-end saw and on the after-end saw
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

// Table adds up the scarfs of each skin, thickness and slope, in the order of
// the skins as they come and then by thickness and slope. A fault is found once
// a line, at the first use, with the cells of the others beside it.
func Table(uses []Use, r Rules) ([]Row, finding.List) {
	var rows []Row
	var faults []finding.List // of each row
	var skins []hull.Skin
	for _, u := range uses {
		if !slices.Contains(skins, u.Skin) {
			skins = append(skins, u.Skin)
		}
		i := slices.IndexFunc(rows, func(w Row) bool {
			return w.Skin == u.Skin && w.Thickness == u.Thickness && (w.Slope == u.Slope || w.Slope != w.Slope && u.Slope != u.Slope)
		})
		if i < 0 {
			i = len(rows)
			rows = append(rows, row(u, r))
			faults = append(faults, check(u, r))
		}
		add(&rows[i], u)
		for k := range faults[i] {
			f := &faults[i][k]
			if u.Cell != f.Cell && !slices.Contains(f.Also, u.Cell) {
				f.Also = append(f.Also, u.Cell)
			}
		}
	}
	slices.SortStableFunc(rows, func(a, b Row) int {
		return cmp.Or(cmp.Compare(slices.Index(skins, a.Skin), slices.Index(skins, b.Skin)),
			cmp.Compare(a.Thickness, b.Thickness), cmp.Compare(a.Slope, b.Slope))
	})
	return rows, slices.Concat(faults...)
}

// row is a line of the table before anything is added up on it.
func row(u Use, r Rules) Row {
	return Row{
		Skin: u.Skin, Thickness: u.Thickness, Slope: u.Slope,
		Run: Run(u.Thickness, u.Slope, r.Nib), Angle: Angle(u.Slope),
		Face: Face(u.Thickness, u.Slope, r.Nib),
		Gap:  Gap(u.Thickness, u.Slope, r.Nib, r.FenceError),
	}
}

// add adds a use to its line.
func add(w *Row, u Use) {
	w.Width = max(w.Width, u.Width)
	w.GlueArea = w.Width.Inches() * w.Face.Inches()
	w.GlueAll += float64(u.Joints) * u.Width.Inches() * w.Face.Inches()
	w.Joints += u.Joints
}
