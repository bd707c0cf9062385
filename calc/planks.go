package calc

import (
	"strings"

	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
	"strakebook/calc/scarf"
	"strakebook/calc/stock"
)

// planks works out what is sawn of the strakes whose bevels were not lifted, which
// battens serve, and the shape of every strake laid out flat.
func (r *Result) planks(handed []bevel.Readings, strakes []hull.Strake) finding.List {
	made, found := bevel.Computed(r.Hull, strakes, r.Bevels, handed, r.Rules.Bevel)
	r.Bevels = append(r.Bevels, made...)
	r.Guides = bevel.Guides(r.Bevels, r.Rules.Bevel)
	spiled, f := r.Hull.Spile(strakes, r.Rules.Bevel.SawnEdges(), r.Rules.Hull)
	r.Spiled = spiled
	return append(found, f...)
}

// shutters works out what is sawn of the last planks, from their measured gaps.
func (r *Result) shutters(j Job, strakes []hull.Strake) finding.List {
	rows, found := r.Hull.Shutter(j.Gaps, strakes)
	made, f := bevel.OfShutters(rows, strakes, places(j), r.Hull, j.Rules.Bevel)
	r.Bevels = append(r.Bevels, made...)
	found = append(found, f...)
	made, _ = bevel.OfShutters(bevel.OtherShutters(rows, strakes), strakes, places(j), r.Hull, j.Rules.Bevel)
	for i := range made {
		made[i].AsOther, made[i].Doubt = true, bevel.GapOneSided.Title
	}
	r.Bevels = append(r.Bevels, made...)
	return found
}

// widen makes each run as wide as its board must be: it covers the wider face,
// and of planks got out to the sweep the shape of any piece that the longest board
// of the rack, or that may be bought, could hold. What it weighs and is glued over
// goes by the shape itself. What is worked of the back is of its board's thickness,
// and it is scarfed before that is done.
func (r *Result) widen(runs []lay.Run, rack []stock.Board) {
	longest := measure.Length(0)
	for _, b := range rack {
		longest = max(longest, b.Length.Value)
	}
	if longest == 0 {
		longest = r.Rules.Stock.Longest
	}
	for i := range runs {
		run := &runs[i]
		run.Wide = r.widerFace(*run)
		s, ok := r.spiled(*run)
		if ok {
			run.Breadth = s.Breadths(run.Length)
		}
		if !ok || run.Skin == hull.Strips {
			continue
		}
		need := s.Straight
		if r.Rules.Hull.Planking == hull.ToSweep {
			need = s.Widest(longest, r.Rules.Hull)
		}
		run.Wide = max(run.Wide, r.Rules.Hull.Up(need))
		run.Hollow = s.Worked
		run.Scarf = scarf.Run(run.Through(), run.Slope, r.Rules.Scarf.Nib)
	}
}

// widerFace is how wide a run's board must be for its wider face, by what is sawn of its
// edges, and of a shutter by its gap as measured.
func (r *Result) widerFace(run lay.Run) measure.Length {
	var beyond [bevel.Lower + 1]measure.Length // the face it is listed on, by edge
	for _, s := range r.Bevels {
		if !strings.EqualFold(s.Strake, run.Name) || s.Skin != "" && s.Skin != run.Skin || s.Side != hull.BothSides && s.Side != run.Side {
			continue
		}
		for _, m := range s.Marks {
			over := m.Faces
			switch {
			case s.Shutter:
				run.Wide = max(run.Wide, m.Width)
			case run.Outside:
				over = -over
			}
			beyond[s.Edge] = max(beyond[s.Edge], over)
		}
	}
	sum := measure.Length(0)
	for _, b := range beyond {
		sum += b
	}
	return run.Wide + r.Rules.Hull.Up(sum)
}

// spiled is the shape of a run's strake.
func (r *Result) spiled(run lay.Run) (hull.Spiled, bool) {
	for _, s := range r.Spiled {
		if s.Piece == 0 && s.Skin == run.Skin && strings.EqualFold(s.Strake, run.Name) && (s.Side == hull.BothSides || s.Side == run.Side) {
			return s, true
		}
	}
	return hull.Spiled{}, false
}

// spilePieces lays out the pieces of the planks that are got out to the sweep, each
// on a board of its own: after its strake, starboard before port.
func (r *Result) spilePieces() {
	if r.Rules.Hull.Planking != hull.ToSweep {
		return
	}
	for _, run := range r.Runs {
		whole, ok := r.spiled(run)
		if !ok || run.Skin == hull.Strips {
			continue
		}
		whole.Side = run.Side
		from := measure.Length(0)
		if over := run.Length - whole.Length; over > 0 { // left on at both ends
			from = -over / 2
		}
		for i, l := range run.Pieces {
			if one, ok := whole.Between(i+1, len(run.Pieces), from, from+l, r.Rules.Hull); ok {
				r.Spiled = append(r.Spiled, one)
			}
			from += l - run.Scarf
		}
	}
}
