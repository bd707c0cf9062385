package bevel

import (
	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/setting"
)

// Face is a face of a plank.
type Face uint8

// The two faces.
const (
	Outside Face = iota
	Inside
)

// Rules is what a yard may set about its bevels and its saw.
type Rules struct {
	Gauge        Gauge          // of tables that do not say
	InStation    bool           // readings of tables that do not say were lifted in the station plane, not square to the edge
	Sawn         Edge           // the edge that meets the plank already hung
	Shared       bool           // both edges of a seam take half of its turn, and Sawn none alone
	Readout      measure.Angle  // the saw's smallest step of tilt
	Tilt         measure.Angle  // the most the saw tilts
	Turn         measure.Angle  // the most the tilt can be turned in a foot
	Step         measure.Length // between marks
	HullWithin   measure.Angle  // a lifted bevel may differ from the hull's own by so much; 0: not compared
	FromHull     bool           // schedules are worked out from the hull where none were lifted
	Alike        bool           // planks lifted on one side only are sawn on the other as that side mirrored
	SidesWithin  measure.Angle  // port and starboard may differ by so much; 0: not compared
	Alarm        float64        // a reading of so many scatters is looked into
	SawFaired    bool           // saw the faired bevels, not those read
	Batten       measure.Length // thickness of the guide batten the saw rides on; 0: it rides on the plank
	BattenWithin measure.Length // one batten serves planks whose edges agree within this
	Offset       measure.Length // of the kerf off the batten, to the plank's side of the kerf
	OffsetTo     OffsetTo       // what Offset is measured to
	Kerf         measure.Length // of the saw that bevels
	Planed       measure.Length // thickness of the planks on the bench as planed and measured; 0: as listed, and what is worked of the back
	FaceUp       Face           // on the saw's bench
	DepthSpare   measure.Length // of blade beyond the plank
	Trials       []Trial        // trial cuts, by what they cut; empty: none but the one below
	TrialReads   measure.Angle  // a trial cut: the scale read this,
	TrialCuts    measure.Angle  // and the saw cut this; both 0: none made
	Units        measure.Style  // of what findings say
}

// DefaultRules is what holds where the book and the command line say nothing.
func DefaultRules() Rules {
	return Rules{
		Sawn:         Upper,             // common practice, no source: hung from the sheer down
		Readout:      0.25,              // common practice, no source: a quarter of a degree shows
		Tilt:         15,                // our choice
		Turn:         2,                 // our choice
		Step:         measure.Foot,      // our choice
		HullWithin:   0.5,               // our choice: twice what a gauge shows
		FromHull:     true,              // our choice
		Alike:        true,              // common practice, no source: port as starboard
		SidesWithin:  1,                 // our choice: four times what a gauge shows
		Alarm:        4.6,               // our choice, measured: under 1 % of clean seams alarm at a scatter of 0.15 degree
		BattenWithin: measure.Inch / 32, // our choice: what a saw's fence holds
		Offset:       measure.Inch / 2,  // common practice, no source
		Kerf:         measure.Inch / 8,  // common practice, no source
		DepthSpare:   measure.Inch / 8,  // common practice, no source: a hair more
	}
}

// Settings lists the rules under the names the Settings sheet gives them.
func (r *Rules) Settings() []setting.Setting {
	return []setting.Setting{
		{Name: "bevels read", Meaning: "what the readings stand for: degrees off square, or a gauge about 90 with its stock on the inside or the outside face; set, it holds over what the words about a table say", Source: "the yard's: asked, never assumed, where readings lie about 90", Value: setting.Choice(&r.Gauge, "not stated", "off square", "gauge on the inside face", "gauge on the outside face")},
		{Name: "lifted in station plane", Meaning: "yes where bevels were lifted in the plane of the station instead of square to the edge; set, yes or no, it holds over what the words about a table say", Source: "the yard's", Value: setting.YesNo(&r.InStation)},
		{Name: "sawn edge", Meaning: "the edge that meets the plank already hung and takes the whole bevel; the other is square", Source: "common practice, no source: hung from the sheer down", Value: setting.Choice(&r.Sawn, "not stated", "upper", "lower")},
		{Name: "edges share", Meaning: "yes: the two edges of a seam take half of its turn each, and neither is square", Source: "the yard's", Value: setting.YesNo(&r.Shared)},
		{Name: "saw readout", Meaning: "smallest step of the saw's tilt", Source: "common practice, no source", Value: setting.Angle(&r.Readout, 0.01, 5)},
		{Name: "saw tilt", Meaning: "the most the saw tilts to either hand", Source: "our choice: the yard's saw decides", Value: setting.Angle(&r.Tilt, 1, 60)},
		{Name: "most turn", Meaning: "the most degrees the tilt can be turned in a foot of plank", Source: "our choice", Value: setting.Angle(&r.Turn, 0.1, 45)},
		{Name: "mark step", Meaning: "between marks along the sawn edge", Source: "our choice", Value: setting.Length(&r.Step, measure.Inch, 10*measure.Foot)},
		{Name: "lifted within", Meaning: "how far a lifted bevel may differ from the hull's own at its seam; 0: not compared", Source: "our choice: twice what a gauge shows", Value: setting.Angle(&r.HullWithin, 0, 45)},
		{Name: "bevels from hull", Meaning: "yes: planks whose bevels were not lifted get a schedule from the hull's own", Source: "our choice", Value: setting.YesNo(&r.FromHull)},
		{Name: "bevels alike", Meaning: "yes: a plank lifted on one side only is sawn on the other as that side mirrored; no: from the hull's own there", Source: "common practice, no source: port as starboard", Value: setting.YesNo(&r.Alike)},
		{Name: "sides within", Meaning: "how far the bevels of port and starboard may differ; 0: not compared", Source: "our choice", Value: setting.Angle(&r.SidesWithin, 0, 45)},
		{Name: "bevel alarm", Meaning: "a reading is looked into when it lies this many times the seam's own scatter off the smooth run of its neighbours", Source: "our choice, measured", Value: setting.Number(&r.Alarm, "scatters", 2, 50)},
		{Name: "saw faired bevels", Meaning: "yes: the faired bevels are sawn in place of those read", Source: "the yard's", Value: setting.YesNo(&r.SawFaired)},
		{Name: "batten thickness", Meaning: "of the guide batten the saw rides on; 0 where it rides on the plank", Source: "the yard's", Value: setting.Length(&r.Batten, 0, 4*measure.Inch)},
		{Name: "batten within", Meaning: "one guide batten serves the planks whose edges agree with it within this", Source: "our choice", Value: setting.Length(&r.BattenWithin, 0, measure.Inch)},
		{Name: "saw offset", Meaning: "from the batten's edge to the plank's side of the kerf", Source: "common practice, no source", Value: setting.Length(&r.Offset, 0, 12*measure.Inch)},
		{Name: "saw offset to", Meaning: "the part of the kerf that the offset is measured to", Source: "the yard's", Value: setting.Choice(&r.OffsetTo, "plank side", "middle", "far side")},
		{Name: "bevel kerf", Meaning: "wood the bevelling saw takes; it counts only where the offset is not to the plank's side", Source: "common practice, no source", Value: setting.Length(&r.Kerf, 0, measure.Inch)},
		{Name: "planed thickness", Meaning: "of the planks as they lie on the saw's bench, planed and measured, their backs not yet worked; 0: as listed, and what is worked of the back", Source: "the yard's", Value: setting.Length(&r.Planed, 0, 12*measure.Inch)},
		{Name: "face up", Meaning: "the face that lies up on the saw's bench", Source: "the yard's", Value: setting.Choice(&r.FaceUp, "outside", "inside")},
		{Name: "spare depth", Meaning: "of blade beyond the plank", Source: "common practice, no source", Value: setting.Length(&r.DepthSpare, 0, 2*measure.Inch)},
		{Name: "trial cuts", Meaning: "several trial cuts, what the scale read and what was cut: 10 cuts 9.75; 0 cuts 0.25. One alone is taken in proportion, and one under a degree as how far off the scale stands all along", Source: "the yard's", Value: trialCuts{&r.Trials}},
		{Name: "trial cut reads", Meaning: "tilt the saw's scale read at a trial cut; 0: none made, and one at square is given under \"trial cuts\"", Source: "the yard's", Value: setting.Angle(&r.TrialReads, -45, 45)},
		{Name: "trial cut cuts", Meaning: "bevel that trial cut measured; 0: none made", Source: "the yard's", Value: setting.Angle(&r.TrialCuts, -45, 45)},
	}
}

// Kinds is every kind of finding this trade makes.
func Kinds() []*finding.Kind {
	return []*finding.Kind{Gap, Jump, Tilted, Mixed, GaugeOpen, Counted, Repeated, Turned, StrakeUnknown, AlongOpen, Unplaced, HoodEnd, Plane, SidesApart, SidesOpposed, HullApart, HullStation, HullLoose, HullGross, TrialBeyond, OneSided, GapOneSided, EdgeOther, NoBevels}
}
