package hull

import (
	"strakebook/calc/fair"
	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/setting"
)

// Rules is what a yard may set about the hull and its offsets.
type Rules struct {
	Units          measure.Style // of the lengths that findings name
	Fair           fair.Rules
	StationSpacing measure.Length // where the table gives no positions; 0 for not set
	OffsetsTo      Surface        // where the table does not say
	HalfBeam       measure.Length // of a table of fractions; 0 for not set
	Draft          measure.Length // of a table of fractions; 0 for not set
	NearBase       measure.Length // a height below this lies on the base line
	MouldThickness measure.Length
	MouldFace      MouldFace // the one that stands on the station line
	MouldSquare    bool      // moulds are left square on the edge, not bevelled
	LiningPlanks   Method
	LiningStrips   Method
	StripsFrom     string         // the line of the offsets that the first strip lies along; "" the sheer
	PlanksFrom     string         // the same of parallel planks
	SumWithin      measure.Length // widths may differ so much from the girth together
	SeamWithin     measure.Length // a mark may lie so far off the curve of its neighbours
	LightWater     measure.Length // height of the light waterline; 0 for not set
	WidestTopside  measure.Length
	WidestBilge    measure.Length
	WidestBottom   measure.Length
	NarrowestPlank measure.Length
	Lengths        Lengths        // which length of a strake to go by
	LengthWithin   float64        // per cent a typed length may differ from the hull's
	ExtraAtEnds    measure.Length // left on at each end of a strake
	BackAfter      int            // planks in which the work is to be back on its line
	MostAPlank     measure.Length // a plank may be made wider or narrower by
	ViewsWithin    float64        // two views of a point may lie apart by so many of the table's steps
	Planking       Planking       // how planks are got out
	EdgeStrain     float64        // the most a plank may be strained edgewise
	HollowFrom     measure.Length // a hollow in the back of less is not worked; 0: every one is
	OrdinateStep   measure.Length // between ordinates of a spiled shape
	FloorToBase    measure.Length // of a hull built upside down; 0 for right way up
	TransomRake    measure.Angle  // how far the transom leans aft going up
}

// DefaultRules is what holds where the book and the command line say nothing.
func DefaultRules() Rules {
	return Rules{
		Fair:           fair.DefaultRules(),
		NearBase:       measure.Inch / 2,     // our choice: a rabbet that has come down to the base is straight from there
		SumWithin:      measure.Inch / 4,     // our choice: what a skin of planks takes up unnoticed
		SeamWithin:     3 * measure.Eighth,   // our choice: a hollow the eye sees
		WidestTopside:  6 * measure.Inch,     // Great Lakes insurers' rules 1866, Outside Plank
		WidestBilge:    8 * measure.Inch,     // the same
		WidestBottom:   10 * measure.Inch,    // the same
		NarrowestPlank: 3 * measure.Inch / 2, // common practice, no source
		LengthWithin:   1,                    // our choice: 3 in on a 25 ft strake
		BackAfter:      3,                    // common practice, no source
		MostAPlank:     measure.Eighth,       // common practice, no source
		ViewsWithin:    2,                    // our choice
		EdgeStrain:     0.002,                // our choice: half of what softwoods bend before they set, from memory
		HollowFrom:     measure.Sixteenth,    // our choice: less is taken up by the bedding
		OrdinateStep:   measure.Foot,         // common practice, no source
		MouldThickness: 3 * measure.Inch / 4, // common practice, no source
	}
}

// Settings lists the rules under the names the Settings sheet gives them.
func (r *Rules) Settings() []setting.Setting {
	return []setting.Setting{
		{Name: "station spacing", Meaning: "between stations, where the offsets give no positions; 0: not set", Source: "the designer's", Value: setting.Length(&r.StationSpacing, 0, 100*measure.Foot)},
		{Name: "offsets are to", Meaning: "the surface the offsets are measured to; set, it holds over what the words about a table say", Source: "the designer's: asked, never assumed", Value: setting.Choice(&r.OffsetsTo, "not stated", "outside of planking", "between the skins", "inside of planking")},
		{Name: "half beam", Meaning: "half the beam, for a table of fractions; 0: not set", Source: "the designer's", Value: setting.Length(&r.HalfBeam, 0, 200*measure.Foot)},
		{Name: "draft", Meaning: "the draft, for waterlines named as fractions of it; 0: not set", Source: "the designer's", Value: setting.Length(&r.Draft, 0, 100*measure.Foot)},
		{Name: "near base", Meaning: "a height less than this lies on the base line", Source: "our choice", Value: setting.Length(&r.NearBase, 0, measure.Foot)},
		{Name: "planks lined off", Meaning: "how planks are lined off: as listed (by their widths by station where given, else in shares of the girth as their greatest widths listed, equal where none is), equal shares of the girth, or parallel strakes of the widths listed from the sheer or a line of the offsets down", Source: "common practice, no source", Value: setting.Choice(&r.LiningPlanks, "as listed", "builder's marks", "equal shares", "parallel strakes")},
		{Name: "strips lined off", Meaning: "how strips are lined off: as listed (parallel), equal shares or parallel strakes", Source: "common practice, no source", Value: setting.Choice(&r.LiningStrips, "as listed", "builder's marks", "equal shares", "parallel strakes")},
		{Name: "strips from", Meaning: "the line of the offsets the first strip is laid along, as the offsets name it; empty: the sheer", Source: "common practice, no source", Value: setting.Text(&r.StripsFrom)},
		{Name: "planks from", Meaning: "of parallel planks: the line of the offsets they are laid from, down and up, as the offsets name it; empty: the sheer", Source: "common practice, no source", Value: setting.Text(&r.PlanksFrom)},
		{Name: "widths within", Meaning: "how far a station's widths together may differ from its girth", Source: "our choice", Value: setting.Length(&r.SumWithin, 0, measure.Foot)},
		{Name: "seams within", Meaning: "how far a mark of a seam may lie off the curve of its neighbours", Source: "our choice", Value: setting.Length(&r.SeamWithin, 0, measure.Foot)},
		{Name: "light waterline", Meaning: "height of the light waterline above base, where the topsides begin; 0: not set", Source: "the designer's", Value: setting.Length(&r.LightWater, 0, 100*measure.Foot)},
		{Name: "widest topside plank", Meaning: "above the light waterline; 0: no limit", Source: "Great Lakes insurers' rules 1866, Outside Plank", Value: setting.Length(&r.WidestTopside, 0, 3*measure.Foot)},
		{Name: "widest bilge plank", Meaning: "from the light waterline to the turn of the bilge; 0: no limit", Source: "Great Lakes insurers' rules 1866, Outside Plank", Value: setting.Length(&r.WidestBilge, 0, 3*measure.Foot)},
		{Name: "widest bottom plank", Meaning: "below the turn of the bilge; 0: no limit", Source: "Great Lakes insurers' rules 1866, Outside Plank", Value: setting.Length(&r.WidestBottom, 0, 3*measure.Foot)},
		{Name: "narrowest plank", Meaning: "at any station; 0: no limit", Source: "common practice, no source", Value: setting.Length(&r.NarrowestPlank, 0, 3*measure.Foot)},
		{Name: "strake lengths", Meaning: "which length of a strake to go by where the list gives one and the hull is known: typed or computed", Source: "our choice", Value: setting.Choice(&r.Lengths, "typed", "computed")},
		{Name: "lengths within", Meaning: "how far, in per cent, a typed length may differ from the hull's before it is asked about", Source: "our choice", Value: setting.Number(&r.LengthWithin, "%", 0, 100)},
		{Name: "extra at ends", Meaning: "left on at each end of a strake beyond its hood end, in computed lengths", Source: "the builder's", Value: setting.Length(&r.ExtraAtEnds, 0, 10*measure.Foot)},
		{Name: "back on the line after", Meaning: "planks in which work ahead of or behind its lining-off line is to be back on it", Source: "common practice, no source", Value: setting.Count(&r.BackAfter, 1, 50)},
		{Name: "most a plank", Meaning: "a plank may be made wider or narrower than lined off by", Source: "common practice, no source", Value: setting.Length(&r.MostAPlank, 0, measure.Foot)},
		{Name: "views within", Meaning: "how far two views of a point may lie apart, square to the curve, beyond what the spacing of the stations explains", Source: "our choice", Value: setting.Number(&r.ViewsWithin, "steps of the table", 0, 100)},
		{Name: "planks got out", Meaning: "sprung (boards scarfed straight and the whole strake sprung edgewise) or to the sweep (pieces got out to their shape)", Source: "the builder's", Value: setting.Choice(&r.Planking, "sprung", "to the sweep")},
		{Name: "edgewise strain", Meaning: "the most a straight-edged plank may be strained edgewise when it is sprung: 4 w s / l^2, w its width and s the spring in the length l", Source: "our choice", Value: setting.Number(&r.EdgeStrain, "", 0, 0.1)},
		{Name: "hollow from", Meaning: "a hollow in the back of a plank of less than this is not worked: its board need be no thicker for it, and its width is round the hull, as of a plank drawn to it", Source: "our choice", Value: setting.Length(&r.HollowFrom, 0, measure.Foot)},
		{Name: "ordinates every", Meaning: "step between the ordinates of a spiled shape; 0: at the stations only", Source: "common practice, no source", Value: setting.Length(&r.OrdinateStep, 0, 100*measure.Foot)},
		{Name: "mould thickness", Meaning: "of the stuff the moulds are got out of", Source: "common practice, no source", Value: setting.Length(&r.MouldThickness, 0, measure.Foot)},
		{Name: "mould face", Meaning: "the face that stands on the station line: standing (fore face where the hull widens going aft and after face where it narrows, so that the bevels stand), fore or after", Source: "common practice, no source", Value: setting.Choice(&r.MouldFace, "standing", "fore", "after")},
		{Name: "mould edges square", Meaning: "the moulds' edges are left square, not bevelled to the planking", Source: "the builder's", Value: setting.YesNo(&r.MouldSquare)},
		{Name: "floor to base", Meaning: "height of the base line above the floor where the hull is built upside down: heights for the moulds are then from the floor; 0: right way up", Source: "the builder's", Value: setting.Length(&r.FloorToBase, 0, 100*measure.Foot)},
		{Name: "transom rake", Meaning: "how far the transom leans aft off plumb going up, - forward: its position is then that of its foot and its figures those of the body plan; 0: plumb", Source: "the designer's", Value: setting.Angle(&r.TransomRake, -75, 75)},
		{Name: "fairness alarm", Meaning: "an offset is looked into when it lies this many times the table's own scatter off the curve of its neighbours", Source: "our choice, measured: one sound value in 6,500 flagged", Value: setting.Number(&r.Fair.Alarm, "scatters", 2, 50)},
	}
}

// Kinds is every kind of finding this trade makes.
func Kinds() []*finding.Kind {
	checks := []*finding.Kind{
		StationRepeated, StationOrder, StationMissing, StationBlank, StationUnplaced, StationOff, StationSwapped, StationsUnfair, StationSlipped, LineSwapped,
		OffsetGap, OffsetEnding, OffsetOnBase, OffsetJump, OffsetUnfair, OffsetValley, OffsetRepeat, OffsetZero, OffsetNegative, OffsetsSurface, OffsetDecided, DecisionIdle,
		StrakeRepeated, StrakeNoThickness, StrakeNoWidth, StrakeNoLength, StrakeOdd, StrakeUnlike, WidthGap, MarksShort,
	}
	return append(checks, shapeKinds()...)
}
