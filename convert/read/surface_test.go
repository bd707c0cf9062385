package read

import (
	"fmt"
	"testing"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
)

// What the words about a table say of the surface and of the planking's thickness.
func TestSurfaceSaid(t *testing.T) {
	for words, want := range map[string]struct {
		surface hull.Surface
		told    bool
	}{
		`Offsets are to inside of 3/4" planking`:             {hull.InsidePlanking, true},
		`All lines to the outside of ¾” planking.`:           {hull.OutsidePlanking, true},
		`Lines are to the outside of 20 mm plank`:            {hull.OutsidePlanking, true},
		`Offsets to outside of planking. Planking 20 mm.`:    {hull.OutsidePlanking, true},
		`Planking 7/8 in. cedar, lines to outside of plank`:  {hull.OutsidePlanking, true},
		`Offsets to the inside of plank`:                     {hull.InsidePlanking, false},
		`Planking is 1 1/8" thick`:                           {hull.SurfaceUnstated, true},
		`1 in. cedar planking`:                               {hull.SurfaceUnstated, true},
		`Planking to be 2 men's work`:                        {hull.SurfaceUnstated, false},
		`Offsets are not to the outside of planking`:         {hull.SurfaceUnstated, false},
		`Leave the plank in 3 in. of sand outside the house`: {hull.SurfaceUnstated, false},
	} {
		r := read(t, bookOf(sheetOf("Offsets", "Table of offsets, ft-in-8ths\nStation|0|1|2|3\nHB deck|0-4-0|1-2-4|1-9-0|1-10-2\n\n"+words)), Options{})
		if len(r.job.Offsets) != 1 {
			t.Fatalf("%q: %d tables", words, len(r.job.Offsets))
		}
		told := false
		for _, f := range r.found {
			told = told || f.Kind == ConventionRead && f.Reads == words
		}
		if got := r.job.Offsets[0].Surface; got != want.surface || told != want.told {
			t.Errorf("%q: %v, thickness told %v: %v", words, got, told, r.codes(0))
		}
	}
}

// What the words about bevels say of the plane they were lifted in; what is denied says
// nothing, and what leaves it open is asked.
func TestPlaneSaid(t *testing.T) {
	for words, want := range map[string]string{
		"Bevels, degrees from square, lifted along the frame":                              "true []",
		"Bevels, degrees off square, lifted athwartships":                                  "true []",
		"Bevels off square; in the plane of the frames":                                    "true []",
		"Bevels off square; lifted in the plane of the moulds, not square to the edge":     "true []",
		"Bevels off square, mould plane":                                                   "true []",
		"Bevels, degrees, not lifted in the station plane":                                 "false []",
		"Bevels, degrees, square to the edge, not in the plane of the frames":              "false []",
		"Bevels off square; lifted square to the station plane":                            "false [convention-open@B2]",
		"Bevels off square; not lifted square to the edge":                                 "false [convention-open@B2]",
		"Bevels, degrees, lifted off the frames in the mould loft":                         "false []",
		"Bevels, degrees off square; taken in the shop and read at the frames on the skin": "false []",
	} {
		r := read(t, bookOf(sheetOf("Bevels", words+"\nStrake|Edge|Sta. 1|Sta. 2|Sta. 3\n3|upper|2|2|2\n4|upper|2|2|2")), Options{})
		if got := fmt.Sprint(r.job.Bevels[0].InStation, r.codes(finding.Error)); got != want {
			t.Errorf("%s: %s, want %s", words, got, want)
		}
	}
}
