package hull

import (
	"fmt"
	"math"
	"slices"

	"strakebook/calc/fair"
	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// LineReport is how fair one line of the table is.
type LineReport struct {
	Line      string
	View      View
	Roughness float64 // middle departure, in the table's resolution
	Largest   float64 // departure from fair, in the table's resolution
	Station   string  // where the largest is
	Smallest  measure.Length
	Departure []measure.Length // reads less faired, a station each
	Given     []bool           // whether the station has a departure
	Cells     []source.Cell    // of the values, a station each
	Findings  int              // above a note at its figures or its head
}

// checked is a table with what was made of it, for its findings.
type checked struct {
	whole     // whole stations and lines put where they would be fair
	rows      []fair.Row
	judged    fair.Judged
	withdrawn map[fair.Spot]bool
	partners  map[fair.Spot]bool // values that one found wrong is proposed to have changed places with
}

// checkFairness finds the stations and lines wrong as a whole, the values that
// spoil their lines, and the lines that are not fair.
func checkFairness(o Offsets, r Rules) Report {
	w, found := misplaced(o, positions(o), r)
	rows := w.o.rows(w.x)
	c := checked{w, rows, fair.Judge(rows, r.Fair, newSight(w.o, rows)), map[fair.Spot]bool{}, map[fair.Spot]bool{}}
	for _, f := range c.judged.Flags {
		c.withdrawn[f.Spot] = true
	}
	e := Report{Scale: c.judged.Scale, Found: slices.Concat(found, c.endings(), c.unfair()), Doubts: slices.Concat(c.impossible(), c.jumps(), c.valleys())}
	for _, d := range c.repeats() {
		if !e.doubted(fair.Spot{Row: d.Line, At: d.Station}) && !e.doubted(d.Or[0]) {
			e.Doubts = append(e.Doubts, d)
		}
	}
	for i := range e.Doubts {
		d := &e.Doubts[i]
		e.Found = append(e.Found, d.Finding(c.o))
		d.Line = c.lines[d.Line]
		d.Or = slices.Clone(d.Or)
		for n := range d.Or {
			d.Or[n].Row = c.lines[d.Or[n].Row]
		}
	}
	e.Lines = make([]LineReport, len(o.Lines))
	for i, l := range c.reports() {
		for k, v := range o.Lines[c.lines[i]].Values {
			l.Cells[k] = v.Cell
		}
		e.Lines[c.lines[i]] = l
	}
	return e
}

// doubted says that a figure is doubted already.
func (e Report) doubted(s fair.Spot) bool {
	return slices.ContainsFunc(e.Doubts, func(d Doubt) bool { return d.Line == s.Row && d.Station == s.At })
}

// touched says that nothing is said of a station's figures: they were moved as a
// whole.
func (c checked) touched(station int) bool { return slices.Contains(c.stations, station) }

// impossible is the half-breadths no hull can have: less than nothing, or nothing
// inside a line. A negative one is judged without its sign.
func (c checked) impossible() []Doubt {
	var all []Doubt
	for i, l := range c.o.Lines {
		first, last := ends(l)
		for k, v := range l.Values {
			d := Doubt{Line: i, Station: k, Reads: v}
			switch {
			case l.View != HalfBreadth || !v.OK() || c.touched(k) || c.o.kept(v.Cell):
				continue
			case v.Value < 0:
				d.Kind = OffsetNegative
			case v.Value == 0 && k > first && k < last:
				d.Kind = OffsetZero
			default:
				continue
			}
			s := fair.Spot{Row: i, At: k}
			if says, ok := c.judged.Without(s); ok {
				d.Faired, d.HasFaired = c.o.length(says.Value), true
				c.propose(&d, says)
			}
			if v.Value < 0 && !c.withdrawn[s] {
				d.Proposals = []Proposal{{Value: -v.Value, Reason: "the sign"}}
			}
			all = append(all, d)
		}
	}
	return all
}

// jumps is the values not believed.
func (c checked) jumps() []Doubt {
	var all []Doubt
	for _, f := range c.judged.Flags {
		v := c.o.Lines[f.Row].Values[f.At]
		if c.touched(f.At) || v.Value < 0 && c.o.Lines[f.Row].View == HalfBreadth {
			continue
		}
		d := Doubt{Kind: OffsetJump, Line: f.Row, Station: f.At, Reads: v, Faired: c.o.length(f.Says.Value), HasFaired: true, Or: f.Or}
		c.propose(&d, f.Says)
		all = append(all, d)
	}
	return all
}

// unfair is the stretches that no single value explains. Heights are left out: a
// rabbet's forefoot and a buttock's ends turn as sharply as a corner.
func (c checked) unfair() finding.List {
	var found finding.List
	for _, g := range c.judged.Regions {
		l := c.o.Lines[g.Row]
		if l.View == Height || slices.ContainsFunc(c.stations, func(k int) bool { return k >= g.From && k <= g.To }) {
			continue
		}
		found = append(found, finding.Finding{Kind: OffsetUnfair, Cell: l.Values[g.From].Cell, Also: []source.Cell{l.Values[g.To].Cell},
			Text: fmt.Sprintf("%s is not fair, or has a corner, between %s and %s", l.words(), c.o.called(g.From), c.o.called(g.To))})
	}
	return found
}

// length is a number of steps as a length, to the table's resolution.
func (o Offsets) length(steps float64) measure.Length {
	return measure.Length(math.Round(steps)) * max(1, o.Resolution)
}

// fill is what the neighbours along the line say of a place.
func (o Offsets) fill(i, k int) (measure.Length, bool) {
	v, ok := fair.Fill(o.row(i, positions(o)), k)
	return o.length(v), ok
}

// reports is the fairness of every line, values found bad counted in it.
func (c checked) reports() []LineReport {
	o, rows, judged := c.o, c.rows, c.judged
	all := make([]LineReport, len(rows))
	for i, row := range rows {
		clean := fair.Row{X: row.X, Y: row.Y, Given: slices.Clone(row.Given)}
		for k := range clean.Given {
			if c.touched(k) || c.withdrawn[fair.Spot{Row: i, At: k}] {
				clean.Given[k] = false
			}
		}
		off, gauge, ok := fair.Departures(clean)
		rep := LineReport{Line: o.Lines[i].Name, View: o.Lines[i].View, Given: ok, Departure: make([]measure.Length, len(off)),
			Cells: make([]source.Cell, len(off))}
		var sizes []float64
		for k := range off {
			rep.Cells[k] = o.Lines[i].Values[k].Cell
			if o.kept(rep.Cells[k]) {
				if says, is := judged.Without(fair.Spot{Row: i, At: k}); is {
					off[k], ok[k] = row.Y[k]-says.Value, true
				}
			} else if c.withdrawn[fair.Spot{Row: i, At: k}] {
				for _, f := range judged.Flags {
					if f.Row == i && f.At == k {
						off[k], ok[k] = row.Y[k]-f.Says.Value, true
					}
				}
			} else if ok[k] {
				sizes = append(sizes, math.Abs(off[k]/gauge[k]))
			}
			if ok[k] {
				rep.Departure[k] = o.length(off[k])
				if math.Abs(off[k]) > math.Abs(rep.Largest) {
					rep.Largest, rep.Station = off[k], o.Stations[k].Name
				}
			}
		}
		if len(sizes) > 0 {
			slices.Sort(sizes)
			rep.Roughness = sizes[len(sizes)/2]
			// Inside a line at even spacing rounding grows by 1.394 in the cubic.
			rep.Smallest = o.length(math.Ceil(4.5 * judged.Scale * 1.394))
		}
		all[i] = rep
	}
	return all
}
