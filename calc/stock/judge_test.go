package stock

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// judge holds a plan to the rules of the trade. It is written from the rules and
// uses nothing of the search: pieces make up their strakes, joints keep their
// distances or are named as broken, and every board can be sawn as planned.
type judge struct {
	t    testing.TB
	runs []lay.Run
	rack []Board
	plan Plan
	lr   lay.Rules
	r    Rules

	stations []hull.Station
}

func (j judge) fault(format string, args ...any) { j.t.Helper(); j.t.Errorf(format, args...) }

func (j judge) all(found finding.List) {
	j.t.Helper()
	j.strakes()
	j.joints(found)
	j.boards()
	j.bill()
}

// strakes: lengths add up, no piece too short, ends clear.
func (j judge) strakes() {
	at := 0
	marks := map[string]bool{}
	for _, r := range j.runs {
		if len(r.Pieces) == 0 {
			continue
		}
		sum := measure.Length(0)
		for k, l := range r.Pieces {
			sum += l
			least := j.lr.LeastPlank
			if r.Skin == hull.Strips {
				least = j.lr.LeastStrip
			}
			if len(r.Pieces) > 1 && l < least {
				j.fault("%s %s: piece of %v", r.Skin, r.Name, l.Inches())
			}
			p := j.plan.Pieces[at]
			at++
			if p.Length != l || p.Strake != r.Name || p.Side != r.Side || p.Place != k+1 || p.Of != len(r.Pieces) || marks[p.Mark] {
				j.fault("piece %s: %+v", p.Mark, p)
			}
			marks[p.Mark] = true
			if (p.Fore == Hood) != (k == 0) || (p.Aft == Hood) != (k == len(r.Pieces)-1) {
				j.fault("ends of %s", p.Mark)
			}
		}
		if sum != r.Length+r.Scarf*measure.Length(len(r.Joints)) {
			j.fault("%s %s: pieces come to %v for %v and %d scarfs", r.Skin, r.Name, sum.Inches(), r.Length.Inches(), len(r.Joints))
		}
		for _, x := range r.Joints {
			if x < j.lr.EndZone || r.Length-x < j.lr.EndZone || !j.falls(r.Start, x) {
				j.fault("%s %s: joint at %v", r.Skin, r.Name, x.Inches())
			}
		}
	}
	if at != len(j.plan.Pieces) {
		j.fault("%d pieces for %d", len(j.plan.Pieces), at)
	}
}

// falls says that a joint lies where it may: on a step of the grid, or to a
// thirty-second of an inch on a station or in the middle of a frame space.
func (j judge) falls(start, x measure.Length) bool {
	at := start.Inches() + x.Inches()
	near := func(v float64) bool { return math.Abs(v) <= 1./32+1e-9 }
	switch f := j.lr.Frames.Inches(); {
	case j.lr.On == lay.OnStations:
		return slices.ContainsFunc(j.stations, func(s hull.Station) bool { return near(at - s.At.Value.Inches()) })
	case j.lr.On == lay.OnFrameSpaces:
		return near(at - (math.Floor(at/f)+0.5)*f)
	}
	return x%j.lr.Grid == 0
}

// joints: every pair too near is named, and nothing else is.
func (j judge) joints(found finding.List) {
	in := func(l measure.Length) float64 { return l.Inches() }
	broken := 0
	for i, a := range j.runs {
		for _, x := range a.Joints {
			for _, z := range a.Clear {
				if x > z.From && x < z.To {
					broken++
				}
			}
		}
		for _, b := range j.runs[i+1:] {
			if a.Side != b.Side {
				continue
			}
			apart := int(math.Abs(float64(a.Order - b.Order)))
			for _, x := range a.Joints {
				for _, y := range b.Joints {
					d := math.Abs(in(a.Start) + in(x) - in(b.Start) - in(y))
					bay := in(j.lr.Frames) > 0 && math.Floor((in(a.Start)+in(x))/in(j.lr.Frames)+1e-9) == math.Floor((in(b.Start)+in(y))/in(j.lr.Frames)+1e-9)
					bad := false
					switch scarf := max(in(a.Scarf), in(b.Scarf)); {
					case a.Skin != b.Skin:
						over := a.Down < b.Down+b.Face && b.Down < a.Down+a.Face
						bad = over && d < in(j.lr.SkinsClear)-1e-6
					case a.Skin == hull.Strips:
						bad = apart == 1 && d < in(j.lr.StripNeighbours)-1e-6 || apart <= j.lr.StripBetween && d < scarf-1e-6 && !(apart == 1 && j.lr.StripNeighbours > 0)
					case j.lr.Plank == lay.ScarfedPlanks:
						bad = apart == 1 && d < in(j.lr.PlankNeighbours)-1e-6 || apart <= j.lr.PlankBetween && d < scarf-1e-6 && !(apart == 1 && j.lr.PlankNeighbours > 0)
					case j.lr.Plank == lay.Butts:
						bad = apart == 1 && d < 60-1e-6 || apart == 2 && d < 48-1e-6 || apart <= 3 && bay
					default:
						bad = apart == 1 && d < 3*in(j.lr.Frames)-1e-6 || apart <= 3 && bay
					}
					if bad {
						broken++
					}
				}
			}
		}
	}
	named := 0
	for _, f := range found {
		if f.Kind == lay.JointNear || f.Kind == lay.JointBay || f.Kind == lay.JointZone {
			named++
		}
	}
	if named != broken {
		j.fault("%d joints named for %d that break rules", named, broken)
	}
}

// boards: each piece comes off one board, which is thick, wide, long and sound
// enough and there.
func (j judge) boards() {
	times := make([]int, len(j.plan.Pieces))
	rows := make([]int, len(j.rack))
	for k, c := range j.plan.Cuts {
		b := c.Board
		rows[c.Row]++
		if len(c.Pieces) == 0 || len(c.Lane) != len(c.Pieces) || len(c.From) != len(c.Pieces) {
			j.fault("board %s: %+v", c.Mark, c)
		}
		wide := measure.Length(0)
		for i, n := range c.Pieces {
			p := &j.plan.Pieces[n]
			times[n]++
			if p.Board != k {
				j.fault("%s is on board %d, said to be on %d", p.Mark, k, p.Board)
			}
			t, w := p.Thickness, p.Width
			if p.Skin == hull.Strips && !j.r.StripsFlat {
				t, w = w, t
			}
			wide = max(wide, w)
			dresses := j.r.Dressing
			if rough := b.Thickness.Value.Inches(); j.r.DressBy == ByQuarters && rough <= 1.5 {
				dresses = measure.Inches(0.1875)
			} else if j.r.DressBy == ByQuarters {
				dresses = measure.Inches(0.25)
			}
			if b.Thickness.Value < t+dresses {
				j.fault("%s is too thick for %s", p.Mark, c.Mark)
			}
			if p.Species != "" && b.Species != "" && !strings.EqualFold(strings.TrimSpace(p.Species), strings.TrimSpace(b.Species)) {
				j.fault("%s of %s from %s", p.Mark, p.Species, b.Species)
			}
			from, to := c.From[i], c.From[i]+p.Length
			if from < j.r.EndTrim/2 || to > b.Length.Value-(j.r.EndTrim-j.r.EndTrim/2) {
				j.fault("%s from %v to %v of a board of %v", p.Mark, from.Inches(), to.Inches(), b.Length.Value.Inches())
			}
			for _, bad := range b.Bad {
				if from < bad.To && to > bad.From {
					j.fault("%s from %v to %v over a bad stretch", p.Mark, from.Inches(), to.Inches())
				}
			}
			if c.Lane[i] < 1 || c.Lane[i] > c.Lanes {
				j.fault("lane %d of %d", c.Lane[i], c.Lanes)
			}
		}
		if n := measure.Length(c.Lanes); n*wide+(n-1)*j.r.RipKerf+j.r.Edging > b.Width.Value {
			j.fault("%s: %d lanes of %v from %v", c.Mark, c.Lanes, wide.Inches(), b.Width.Value.Inches())
		}
		j.sticks(k)
	}
	for n, k := range times {
		if k > 1 || (k == 1) != (j.plan.Pieces[n].Board >= 0) {
			j.fault("%s cut %d times", j.plan.Pieces[n].Mark, k)
		}
	}
	for i, n := range rows {
		if !j.rack[i].Free() && n > j.rack[i].Count.Value {
			j.fault("%d boards of row %d, which holds %d", n, i+1, j.rack[i].Count.Value)
		}
	}
}

// bill: what is spent is what the boards come to and no less than the bound.
func (j judge) bill() {
	s := j.plan.Summary
	spent, unserved := 0.0, 0
	for _, c := range j.plan.Cuts {
		each := c.Board.Price.Value
		if c.Board.PerFoot {
			each *= max(1, c.Board.Thickness.Value.Inches()) * c.Board.Width.Value.Inches() * c.Board.Length.Value.Inches() / 144
		}
		if s.Priced {
			spent += each
		}
	}
	for _, p := range j.plan.Pieces {
		if p.Board < 0 {
			unserved++
		}
	}
	if s.Priced && math.Abs(spent-s.Spent) > 1e-6*spent || s.Unserved != unserved || s.Bound > s.Spent*(1+1e-6) && unserved == 0 {
		j.fault("spent %v, said %v, bound %v; %d unserved, said %d", spent, s.Spent, s.Bound, unserved, s.Unserved)
	}
}

// TestJudge holds the plans of many random books to the rules.
func TestJudge(t *testing.T) {
	n := 24
	if *figures {
		n = 3000
	}
	for seed := range n + 1 {
		if seed == n {
			seed = 404 // a strake that no chain makes up, but for a third of an inch
		}
		t.Run(fmt.Sprint(seed), func(t *testing.T) {
			strakes, rack, lr, r := randomBook(uint64(seed))
			if seed%5 == 2 {
				r.DressBy = ByQuarters
			}
			laid := lay.Runs(strakes, scarfRules(seed))
			stations := joinedOn(seed, &lr)
			lay.Place(laid, stations, &lr)
			if seed%3 == 0 { // pieces given, beside the strakes
				laid = append(laid, WantedRuns(randomList(uint64(seed)))...)
			}
			runs, plan, found := Work(laid, rack, nil, lr, r)
			judge{t, runs, rack, plan, lr, r, stations}.all(found)
			if !lr.Unlike {
				mirrored(t, runs)
			}
		})
	}
}

// joinedOn sets what the joints of a random book fall on, and the stations.
func joinedOn(seed int, lr *lay.Rules) []hull.Station {
	lr.On = [...]lay.On{lay.OnGrid, lay.OnStations, lay.OnGrid, lay.OnFrameSpaces}[seed%4]
	var all []hull.Station
	for i := range 40 { // a half space at the bow, and some that are in millimetres
		all = append(all, hull.Station{At: source.Is(measure.Inches(float64(18*i-9) + float64(seed%3)/25.4))})
	}
	return all
}

// mirrored: port as starboard.
func mirrored(t *testing.T, runs []lay.Run) {
	for _, a := range runs {
		for _, b := range runs {
			if a.Side == hull.Starboard && b.Side == hull.Port && a.Skin == b.Skin && a.Name == b.Name && a.Order == b.Order && a.Strake.Side == hull.BothSides && !slices.Equal(a.Joints, b.Joints) {
				t.Errorf("%s %s: %v and %v", a.Skin, a.Name, a.Joints, b.Joints)
			}
		}
	}
}
