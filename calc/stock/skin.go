package stock

import (
	"math"
	"slices"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// SkinSum is what one skin of one species comes to: both sides as listed.
type SkinSum struct {
	Skin    hull.Skin
	Species string
	Pieces  int
	Strakes int               // of its pieces, none for pieces that are given
	ByMost  int               // of the strakes, those reckoned by their greatest width: the hull gives no others
	Feet    measure.BoardFeet // in the pieces
	Density float64           // pounds a cubic foot at 12 per cent moisture; 0 where the species is not known
	Weight  float64           // pounds of the hung strakes; 0 where the species is not known
	Scarfs  float64           // square feet of scarf to be glued, between the nibs
	Seams   float64           // square feet of edges between neighbours, one face of each seam
	Faying  float64           // square feet of inside faces: glued whole where the skin lies on another
	Glue    float64           // by the spread set, in its measure; 0 where none is set
}

// gravity is the specific gravity of species at 12 per cent moisture: oven-dry
// mass over volume at 12 per cent. Wood Handbook, FPL-GTR-190 tables 4-3, 4-4
// and FPL-GTR-282 table 4-3; teak, mahogany, khaya and sapele worked from their
// green gravity by GTR-282 equation 4-11.
// Red cedar by itself is taken for western red cedar, as boatyards say it: common
// practice, no source.
var gravity = map[string]float64{
	"douglas fir": 0.48, "douglas-fir": 0.48, "white oak": 0.68, "longleaf pine": 0.59, "western red cedar": 0.32, "western redcedar": 0.32,
	"red cedar": 0.32, "atlantic white cedar": 0.32, "northern white cedar": 0.31, "yellow cedar": 0.44, "alaska cedar": 0.44,
	"port orford cedar": 0.43, "port-orford cedar": 0.43, "sitka spruce": 0.40, "western larch": 0.52, "black locust": 0.69,
	"teak": 0.574, "mahogany": 0.472, "khaya": 0.443, "sapele": 0.600, "tamarack": 0.53,
}

// density is pounds a cubic foot at 12 per cent moisture: GTR-282 equation 4-14,
// 1000 G (1 + 12/100) kg a cubic metre.
func density(name string) float64 { return gravity[species(name)] * 1.12 * 62.4280 }

// skins adds the runs up by skin and species.
func (a *answer) skins(r Rules) {
	for i := range a.runs {
		run := &a.runs[i]
		if len(run.Pieces) == 0 {
			continue
		}
		k := slices.IndexFunc(a.plan.Skins, func(s SkinSum) bool { return s.Skin == run.Skin && species(s.Species) == species(run.Species) })
		if k < 0 {
			k = len(a.plan.Skins)
			a.plan.Skins = append(a.plan.Skins, SkinSum{Skin: run.Skin, Species: run.Species, Density: density(run.Species)})
		}
		s := &a.plan.Skins[k]
		t, l := run.Thick.Feet(), run.Length.Feet()
		area := run.Mean(0, run.Length).Feet() * l
		s.Pieces += len(run.Pieces)
		for _, p := range run.Pieces {
			s.Feet += measure.BoardFeet(t * run.Wide.Feet() * p.Feet() * 12)
		}
		s.Weight += s.Density * t * area
		if run.Given {
			continue // what it is glued to is not said
		}
		s.Strakes++
		if len(run.Breadth) == 0 {
			s.ByMost++
		}
		face := 0.0 // of a scarf, along its cut, between the nibs
		if run.Scarf > 0 {
			face = run.Scarf.Feet() * math.Hypot(1, 1/run.Slope)
		}
		for _, at := range run.Joints {
			s.Scarfs += run.Across(at).Feet() * face
		}
		if run.Order > 1 { // the upper edge of the first is glued to nothing
			s.Seams += a.edge(i)
		}
		s.Faying += area
	}
	for k := range a.plan.Skins {
		s := &a.plan.Skins[k]
		area := s.Scarfs + s.Seams
		if s.Skin != hull.Strips {
			area += s.Faying
		}
		s.Glue = r.Spread.Over(area)
	}
}

// edge is the square feet of the seam above a run that are glued: as long as the shorter
// and as thick as the thinner of its neighbours, where the one above is among the runs.
func (a *answer) edge(i int) float64 {
	run := &a.runs[i]
	long, thick := run.Length, run.Thick
	if i > 0 {
		if above := &a.runs[i-1]; above.Skin == run.Skin && above.Side == run.Side && above.Order == run.Order-1 {
			long, thick = min(long, above.Length), min(thick, above.Thick)
		}
	}
	return long.Feet() * thick.Feet()
}
