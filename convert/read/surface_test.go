package read

import (
	"fmt"
	"strings"
	"testing"

	"strakebook/calc/bevel"
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

		`Add plank thickness 3/4 in to get to the outside of planking`:                 {hull.SurfaceUnstated, true},
		`Deduct planking to get to the inside of planking`:                             {hull.SurfaceUnstated, false},
		`Mark every waterline on the moulds`:                                           {hull.SurfaceUnstated, false},
		`Rabbet drawn to the outside of planking`:                                      {hull.SurfaceUnstated, false},
		`Deck line is to the outside of planking, other lines to the moulds`:           {hull.SurfaceUnstated, false},
		`Bedding compound between the skins`:                                           {hull.SurfaceUnstated, false},
		`Sheer batten to run to the outside, fair by eye`:                              {hull.SurfaceUnstated, false},
		`Offsets in feet to outside of planking; plank thickness not deducted`:         {hull.OutsidePlanking, false},
		`Offsets in feet. Not to outside of planking`:                                  {hull.SurfaceUnstated, false},
		`Offsets, between the skins`:                                                   {hull.BetweenSkins, false},
		`All half-breadths taken on the moulds. Mark every waterline on the moulds`:    {hull.InsidePlanking, false},
		`Jol "Zwaluw" - table of offsets, all in mm, to outside of planking`:           {hull.OutsidePlanking, false},
		`Lines to the inside of planking. Add planking to get the outside of planking`: {hull.InsidePlanking, false},
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

// What the words about bevels say of the gauge: a remark on the stock of planks or of
// battens says nothing of it.
func TestGaugeSaid(t *testing.T) {
	for words, want := range map[string]bevel.Gauge{
		"Planks got out of 5/4 stock; widths on the inside face":                                bevel.GaugeUnstated,
		"Batten stock 3/4 in; plank lies outside face up":                                       bevel.GaugeUnstated,
		"Gauge kept in the box; mark the inside face":                                           bevel.GaugeUnstated,
		"Gauge not on the outside face":                                                         bevel.GaugeUnstated,
		"Port lifted with the gauge on the inside face, starboard on the outside face":          bevel.GaugeUnstated,
		"Bevels with the blade on the inside face, stock along the outside face":                bevel.OnOutside,
		"Gauge stock on the outside face; widths on the inside face":                            bevel.OnOutside,
		"Stock of the gauge held on the skin":                                                   bevel.OnInside,
		"Lifted square to the edge; gauge with its stock flat against the inner face, degrees.": bevel.OnInside,
		"Gauge on the inside face, over 90 where the outside face is wider":                     bevel.OnInside,
	} {
		r := read(t, bookOf(sheetOf("Bevels", "Bevels, degrees\nStrake|Edge|Sta. 1|Sta. 2|Sta. 3\n3|upper|92|92|91\n4|upper|92|92|91\n\n"+words)), Options{})
		if got := r.job.Bevels[0].Gauge; got != want {
			t.Errorf("%s: %v, want %v", words, got, want)
		}
	}
}

// A sign that words have the other way about turns every reading; one that is not
// understood leaves them and is asked about.
func TestSignSaid(t *testing.T) {
	for words, want := range map[string]string{
		"degrees off square": "2 0 -1 []",
		"degrees off square, + where the outside face is the wider":                 "2 0 -1 []",
		"degrees off square, + where the inside face is the wider":                  "-2 0 1 []",
		"degrees off square, minus where the outside face is wider":                 "-2 0 1 []",
		"degrees off square (- where the outside is wider, + where the inside is)":  "-2 0 1 []",
		"degrees off square; - where the inside face is wider":                      "2 0 -1 []",
		"degrees off square, inside face wider is +":                                "-2 0 1 []",
		"degrees off square, positive where the outside is narrower":                "-2 0 1 []",
		"degrees off square, + on the round, - in a hollow":                         "2 0 -1 []",
		"degrees off square, + in a hollow":                                         "-2 0 1 []",
		"degrees off square - where the outside face is wider they are in red":      "0 0 0 [convention-open@B2]",
		"degrees off square, plus is an open bevel":                                 "0 0 0 [convention-open@B2]",
		"degrees off square, + where the inside face is wider, + outside wider too": "-2 0 1 []",
		"degrees off square, read to the inside face, 12 + 3 strakes":               "2 0 -1 []",
	} {
		r := read(t, bookOf(sheetOf("Bevels", "Bevels, "+words+"\nStrake|Edge|Sta. 1|Sta. 2|Sta. 3\n3|upper|2|0|-1\n4|upper|2|0|-1")), Options{})
		var all []string
		for _, v := range r.job.Bevels[0].Seams[1].Readings {
			if !v.OK() {
				v.Value = 0
			}
			all = append(all, v.Value.Write())
		}
		if got := fmt.Sprint(strings.Join(all, " "), " ", r.codes(finding.Error)); got != want {
			t.Errorf("%s: %s, want %s", words, got, want)
		}
	}
}
