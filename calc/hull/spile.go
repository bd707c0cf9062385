package hull

import (
	"fmt"
	"math"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
)

// SpileUnfit is a straight-edged plank that will not lie.
var SpileUnfit = &finding.Kind{
	Code: "spile-unfit", Severity: finding.Warning, Title: "straight-edged plank will not lie",
	Why:    "A plank sprung edgewise farther than the wood allows lifts off the frames along one edge, or breaks.",
	Remedy: "get the plank out to its sweep, in shorter pieces or from a wider board, or line off narrower",
}

// Sawn is which of a plank's edges take the bevel.
type Sawn uint8

// The edges that take the bevel: as planks are hung from the sheer down the upper
// one meets the plank already hung.
const (
	SawnUpper Sawn = iota
	SawnLower
	SawnShared // half each
)

// Planking is how planks are got out.
type Planking uint8

// The two ways of working.
const (
	Sprung  Planking = iota // boards scarfed straight, the whole strake sprung edgewise
	ToSweep                 // pieces got out to the sweep
)

// String is the way's words.
func (p Planking) String() string { return [...]string{"sprung", "to the sweep"}[p] }

// Spiled is the shape of a strake laid out flat.
type Spiled struct {
	Skin      Skin
	Strake    string
	Side      Side
	Piece     int // from one, fore to aft; 0 for the whole strake
	Length    measure.Length
	Ordinates []Ordinate
	Sny       measure.Length // how far the upper edge leaves a straight line: + where it hangs towards the keel
	Board     measure.Length // width of the narrowest straight board that encloses both faces
	Straight  measure.Length // width of the straight board it is sprung from: its own at its widest
	Back                     // of the plank
	Thick     measure.Length // of its board as dressed, for the thickness and the back; 0 where that is not listed
	Twist     measure.Angle  // from end to end, the upper edge outward going aft
	Strain    float64        // edgewise, of a straight-edged plank sprung to it
	Lies      bool           // a straight-edged plank will
	LiesWidth measure.Length // the widest that would
	Fore      EndCut
	After     EndCut
	shape     developed
}

// Ordinate is the heights of a plank's edges at one place along the lower edge of
// its board.
type Ordinate struct {
	At              measure.Length // from the board's fore end
	Station         string         // that crosses the upper edge here, "" at the even steps
	Upper, Lower    measure.Length // on the inside face
	UpperO, LowerO  measure.Length // on the outside face
	BevelU, BevelLo measure.Angle  // of the two edges, as sawn
}

// EndCut is how a strake's end is cut.
type EndCut struct {
	Off   measure.Angle // off square to the board's edge, plus where the upper corner is the longer
	Meets measure.Angle // between the plank and the middle line's plane, or at a transom the station's
	Bevel measure.Angle // of that cut off square to the plank, plus where the outside face is the longer
	Stem  bool          // it ends on the middle line
	Joint bool          // it meets the next piece, square to the run of the strake; Meets and Bevel are then none
}

// Spile develops every strake that is lined off. The list of strakes gives their
// thickness; where it does not the outside face is taken as the inside one.
func (s *Shape) Spile(strakes []Strake, sawn Sawn, r Rules) ([]Spiled, finding.List) {
	if s == nil {
		return nil, nil
	}
	var all []Spiled
	var found finding.List
	for i := range s.Linings {
		l := &s.Linings[i]
		from := len(all)
		for k := range l.Strakes {
			if p, ok := s.spile(l, k, thickOf(l, k, strakes), sawn, r); ok {
				all = append(all, p)
			}
		}
		found = append(append(found, unfit(all[from:], strakes, s.Form, r)...), s.corners(l, all[from:], strakes, r)...)
	}
	return all, found
}

// thickOf is the thickness of a strake by the list; 0 where it has none.
func thickOf(l *Lining, k int, strakes []Strake) measure.Length {
	s, _ := Listed(strakes, l.Skin, l.Strakes[k].Name, l.Side)
	return s.Thickness.Or(0)
}

// spile develops one strake.
func (s *Shape) spile(l *Lining, k int, thick measure.Length, sawn Sawn, r Rules) (Spiled, bool) {
	upper, lower := &l.Seams[k], &l.Seams[k+1]
	if upper.run == nil || lower.run == nil {
		return Spiled{}, false
	}
	back := l.Strakes[k].Back
	if l.Skin == Strips {
		back.Worked = 0
	}
	board := thick
	if thick > 0 {
		board += back.Worked
	}
	d := s.layOut(l, k, (board - back.Rounded()).Inches(), back.Worked > 0, sawn)
	d.stem, d.transom = closed*s.halfBeam().Inches(), s.transom
	p := Spiled{Skin: l.Skin, Strake: l.Strakes[k].Name, Side: l.Side, Back: back, Thick: board, shape: d}
	p.measure(r)
	p.Twist = measure.Radians(twist(d.rungs))
	return p, true
}

// halfBeam is the greatest half-breadth of the hull.
func (s *Shape) halfBeam() measure.Length {
	wide := measure.Length(0)
	for _, sec := range s.Sections {
		for _, p := range sec.Points {
			wide = max(wide, p.Out)
		}
	}
	return wide
}

// measure works out of the laid-out edges what board they need, how far they bend
// and whether a straight-edged plank lies.
func (s *Spiled) measure(r Rules) {
	d := &s.shape
	s.Length = measure.Inches(max(d.rungs[len(d.rungs)-1].s[0]-d.rungs[0].s[0], d.rungs[len(d.rungs)-1].s[1]-d.rungs[0].s[1]))
	width, way, edge := narrowest(d.outline())
	s.Board = measure.Inches(width)
	wide := min(d.widest(), width) // a short strake may lie better aslant
	s.Straight = measure.Inches(wide)
	s.Sny = measure.Inches(sny(d.upper))
	s.Strain = d.strain(wide)
	s.Lies = s.Strain <= r.EdgeStrain
	if s.Strain > 0 {
		s.LiesWidth = measure.Inches(min(wide*r.EdgeStrain/s.Strain, 1000))
	}
	s.Ordinates = d.ordinates(way, edge, r.OrdinateStep.Inches())
	s.Fore, s.After = d.endCut(0, way), d.endCut(len(d.rungs)-1, way)
}

// Between is one of the pieces of a strake, between two distances along its upper
// edge from its fore end, long point to long point, with a board of its own.
func (s Spiled) Between(piece, pieces int, from, to measure.Length, r Rules) (Spiled, bool) {
	d, ok := s.shape.cut(from.Inches(), to.Inches())
	if !ok {
		return Spiled{}, false
	}
	if piece > 1 {
		d.run[0] = s.shape.way(s.shape.at(d.rungs[0].s[0]))
	}
	if piece < pieces {
		d.run[1] = s.shape.way(s.shape.at(d.rungs[len(d.rungs)-1].s[0]))
	}
	s.Piece, s.shape = piece, d
	s.measure(r)
	s.Twist = measure.Radians(twist(d.rungs))
	return s, true
}

// Widest is the width of board that holds any piece of a strake as long as the
// board, tried at every eighth of one; where no length is given, the whole strake.
func (s Spiled) Widest(board measure.Length, r Rules) measure.Length {
	if board <= 0 || board >= s.Length {
		return s.Board
	}
	widest := measure.Length(0)
	for from := measure.Length(0); ; from += board / 8 {
		from = min(from, s.Length-board)
		if d, ok := s.shape.cut(from.Inches(), (from + board).Inches()); ok {
			width, _, _ := narrowest(d.outline())
			widest = max(widest, measure.Inches(width))
		}
		if from >= s.Length-board {
			return widest
		}
	}
}

// unfit says how many of a skin's strakes a straight-edged plank will not lie to,
// with the worst.
func unfit(all []Spiled, strakes []Strake, form measure.Form, r Rules) finding.List {
	if r.Planking != Sprung || len(all) == 0 {
		return nil
	}
	worst, n := 0, 0
	for i, p := range all {
		if !p.Lies {
			n++
		}
		if p.Strain > all[worst].Strain {
			worst = i
		}
	}
	if n == 0 {
		return nil
	}
	p := all[worst]
	listed, _ := Listed(strakes, p.Skin, p.Strake, p.Side)
	return finding.List{{Kind: SpileUnfit, Reads: p.Strake, Cell: listed.Cell,
		Text: fmt.Sprintf("%d of the %s skin's strakes will not lie to a straight edge: %s must be sprung %s edgewise in %s, and no more than %s of width would take it",
			n, p.Skin, p.Strake, r.Units.As(form, p.Sny.Abs().Round(form.Finest())), r.Units.As(form, p.Length.Round(16*form.Finest())), r.Units.As(form, p.LiesWidth.Round(form.Finest())))}}
}

// sny is how far a laid-out edge leaves the straight line between its ends, plus
// where it hangs below it.
func sny(edge []flat) float64 {
	way := edge[len(edge)-1].minus(edge[0])
	if way.length() == 0 {
		return 0
	}
	way = way.times(1 / way.length())
	most := 0.0
	for _, p := range edge {
		if d := -way.across(p.minus(edge[0])); math.Abs(d) > math.Abs(most) {
			most = d
		}
	}
	return most
}

// twist is how far the strake turns about its own length from its first rung to
// its last, in radians.
func twist(rungs []rung) float64 {
	sum := 0.0
	for i := 1; i < len(rungs); i++ {
		a, b := rungs[i-1], rungs[i]
		along := b.upper.plus(b.lower).minus(a.upper.plus(a.lower))
		if along.length() < 1e-9 {
			continue
		}
		along = along.unit()
		across := func(r rung) point {
			w := r.upper.minus(r.lower)
			return w.minus(along.times(w.dot(along)))
		}
		p, q := across(a), across(b)
		if p.length() < 1e-6 || q.length() < 1e-6 {
			continue
		}
		sum += math.Atan2(q.cross(p).dot(along), p.dot(q))
	}
	return sum
}
