package hull

import (
	"slices"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// table is the offsets as plain figures, in inches, with what cannot be used
// left out. It is what the sections and the long lines are drawn from.
type table struct {
	o       Offsets
	x       []float64 // of each station
	placed  bool      // the stations' places are known
	step    float64   // the table's resolution
	v       [][]float64
	ok      [][]bool
	breadth float64 // the greatest half-breadth
	near    float64 // a height below this lies on the base line
	lean    float64 // of the transom: aft for a unit up
	low     float64 // height of its foot
	pairs   []pair
}

// pair is the two lines that together are one line in space: its breadths and
// its heights. A line of the table is -1 where there is none.
type pair struct {
	role     Role
	out, up  int
	name     string
	slope    [2]float64 // of a diagonal: out and down for a unit along it
	diagonal bool
}

// newTable takes a table of true lengths as figures.
func newTable(o Offsets, r Rules) *table {
	o = evened(o)
	t := &table{o: o, step: o.Resolution.Inches(), near: r.NearBase.Inches()}
	if t.step <= 0 {
		t.step = measure.Eighth.Inches()
	}
	t.x, t.placed = places(o, r)
	for _, l := range o.Lines {
		v, ok := make([]float64, len(o.Stations)), make([]bool, len(o.Stations))
		for k := range o.Stations {
			if k < len(l.Values) && l.Values[k].OK() {
				v[k], ok[k] = l.Values[k].Value.Inches(), true
			}
		}
		t.v, t.ok = append(t.v, v), append(t.ok, ok)
	}
	for i, l := range o.Lines {
		switch l.View {
		case HalfBreadth:
			t.ends(i)
		case Height:
			t.onBase(i)
		}
	}
	t.breadth = t.greatest()
	t.pairs = slices.DeleteFunc(pairs(o), func(p pair) bool { return p.role == Buttock && t.beyond(o.Lines[p.up]) })
	t.ease()
	t.rake(r)
	return t
}

// evened is a table whose lines have a value for each station and no more.
func evened(o Offsets) Offsets {
	for i, l := range o.Lines {
		if len(l.Values) != len(o.Stations) {
			values := make([]source.Reading[measure.Length], len(o.Stations))
			copy(values, l.Values)
			l.Values = values
			o.Lines = append([]Line{}, o.Lines...)
			o.Lines[i] = l
		}
	}
	return o
}

// Without is the table with the figures that are not believed taken out, for
// drawing the hull: each is then drawn over from its neighbours.
func (o Offsets) Without(doubts []Doubt) Offsets {
	lines := append([]Line{}, o.Lines...)
	own := make([]bool, len(lines))
	for _, d := range doubts {
		if d.Line >= len(lines) || d.Station >= len(lines[d.Line].Values) {
			continue
		}
		if l := &lines[d.Line]; !own[d.Line] {
			l.Values, own[d.Line] = append([]source.Reading[measure.Length]{}, l.Values...), true
		}
		lines[d.Line].Values[d.Station].State = source.Blank
	}
	o.Lines = lines
	return o
}

// places is where each station lies, and whether that is known: as given, or by
// the spacing that is set.
func places(o Offsets, r Rules) ([]float64, bool) {
	x := make([]float64, len(o.Stations))
	given, set := true, r.StationSpacing > 0
	for i, s := range o.Stations {
		given = given && s.At.OK() && (i == 0 || s.At.Value > o.Stations[i-1].At.Value)
	}
	if !given && !set {
		return positions(o), false
	}
	steps := positions(o)
	for i, s := range o.Stations {
		if given {
			x[i] = s.At.Value.Inches()
		} else {
			x[i] = steps[i] * r.StationSpacing.Inches()
		}
	}
	for i := 1; i < len(x); i++ {
		if x[i] <= x[i-1] {
			return x, false
		}
	}
	return x, true
}

// ends leaves out the half-breadths that are not the hull's: those below
// nothing, and the noughts but for the one at which the line comes to the middle
// and ends.
func (t *table) ends(i int) {
	v, ok := t.v[i], t.ok[i]
	some := func(k int) bool { return k >= 0 && k < len(v) && ok[k] && v[k] > 0 }
	keep := make([]bool, len(v))
	for k := range v {
		keep[k] = ok[k] && (v[k] > 0 || v[k] == 0 && some(k-1) != some(k+1))
	}
	t.ok[i] = keep
}

// onBase fills in the heights left blank where a line lies on the base.
func (t *table) onBase(i int) {
	l := t.o.Lines[i]
	_, base := inside(l, Rules{NearBase: measure.Inches(t.near)})
	for _, b := range base {
		for k, v := range l.Values {
			if v.Cell == b.Cell && v.State == b.State && !t.ok[i][k] {
				t.v[i][k], t.ok[i][k] = 0, true
			}
		}
	}
}

// pairs matches the breadths of the deck, rabbet and chines with their heights,
// first with first.
func pairs(o Offsets) []pair {
	var all []pair
	for i, l := range o.Lines {
		switch {
		case l.Role == Waterline && l.View == HalfBreadth && l.At.OK():
			all = append(all, pair{role: Waterline, out: i, up: -1, name: l.Name})
		case l.Role == Buttock && l.View == Height && l.At.OK():
			all = append(all, pair{role: Buttock, out: -1, up: i, name: l.Name})
		case l.Role == DiagonalLine && l.At.OK() && l.Down.OK():
			all = append(all, pair{role: DiagonalLine, out: i, up: -1, name: l.Name, diagonal: true,
				slope: [2]float64{l.Down.Value.Cos(), l.Down.Value.Tan() * l.Down.Value.Cos()}})
		case l.Role == Deck || l.Role == Rabbet || l.Role == Keel || l.Role == Chine:
			all = match(all, i, l)
		}
	}
	return all
}

// match adds a line to the first pair of its role that lacks its view.
func match(all []pair, i int, l Line) []pair {
	for k := range all {
		p := &all[k]
		if p.role != l.Role {
			continue
		}
		if l.View == Height && p.up < 0 {
			p.up = i
			return all
		}
		if l.View == HalfBreadth && p.out < 0 {
			p.out = i
			return all
		}
	}
	p := pair{role: l.Role, out: -1, up: -1, name: l.Name}
	if l.View == Height {
		p.up = i
	} else {
		p.out = i
	}
	return append(all, p)
}

// place is where a line in space crosses a station; ok is false where it does
// not, or a figure it needs is missing.
func (t *table) place(p pair, k int) (at point, ok bool) {
	at.x = t.x[k]
	if p.diagonal {
		d := t.v[p.out][k]
		at.y, at.z = d*p.slope[0], t.o.Lines[p.out].At.Value.Inches()-d*p.slope[1]
		at.x += t.leans(k, at.z)
		return at, t.ok[p.out][k]
	}
	ok = true
	switch {
	case p.out >= 0 && t.ok[p.out][k]:
		at.y = t.v[p.out][k]
	case p.role == Buttock:
		at.y = t.o.Lines[p.up].At.Value.Inches()
	case p.role != Rabbet && p.role != Keel: // these lie in the middle where no breadth is given
		ok = false
	}
	switch {
	case p.up >= 0 && t.ok[p.up][k]:
		at.z = t.v[p.up][k]
	case p.role == Waterline:
		at.z = t.o.Lines[p.out].At.Value.Inches()
	default:
		ok = false
	}
	at.x += t.leans(k, at.z)
	return at, ok
}

// scaled is a table of fractions as true lengths: half-breadths by the half
// beam, heights by the draft. It is not ok where these are not set.
func scaled(o Offsets, r Rules) (Offsets, bool) {
	if !o.Fractions {
		return o, true
	}
	if r.HalfBeam <= 0 || r.Draft <= 0 {
		return o, false
	}
	scale := func(l, whole measure.Length) measure.Length { return whole.Times(float64(l) / float64(measure.Metre)) }
	o.Fractions = false
	lines := make([]Line, len(o.Lines))
	for i, l := range o.Lines {
		whole, across := r.HalfBeam, r.Draft
		if l.View == Height {
			whole, across = across, whole
		}
		l.At.Value = scale(l.At.Value, across)
		values := append(l.Values[:0:0], l.Values...)
		for k := range values {
			values[k].Value = scale(values[k].Value, whole)
		}
		l.Values = values
		lines[i] = l
	}
	o.Lines = lines
	o.Resolution, o.Step = scale(o.Resolution, max(r.HalfBeam, r.Draft)), scale(o.Step, max(r.HalfBeam, r.Draft))
	return o, true
}
