package hull

import (
	"math"
	"slices"

	"strakebook/calc/fair"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Proposal is a likely reading of a doubtful offset and why.
type Proposal struct {
	Value  measure.Length
	Reason string
	Other  source.Cell // of the figure it changed places with, which then has this one's
}

// Of the readings proposed none is likelier by so many times than the last of
// them, and there are no more than so many. Measured on the hulls of the
// detection test.
const (
	likelier      = 25
	mostProposals = 3
)

// slip is a reading out of which a slip of pen, eye or keyboard makes the one
// that stands there. Weight is how often such a slip is made; where it may have
// come from any of several readings they share it.
type slip struct {
	Proposal
	weight float64
}

// propose finds the readings a doubtful value may have been made of that the
// line and the section would take, the likeliest first. Of a value that is the
// same as one beside it, it says so and proposes nothing: it was copied, and the
// right one is nowhere to be seen.
func (c checked) propose(d *Doubt, says fair.Opinion) {
	s := fair.Spot{Row: d.Line, At: d.Station}
	if d.Copied = c.copied(s); d.Copied != "" {
		return
	}
	steps := float64(max(1, c.o.Resolution))
	within := math.Max(3*says.Sd, 2)
	var likely []slip
	for _, p := range append(c.swaps(s), c.slips(d.Reads.Value)...) {
		off := math.Abs(float64(p.Value)/steps - says.Value)
		if p.Value == d.Reads.Value || off > within || p.Value < 0 && c.o.Lines[d.Line].View == HalfBreadth {
			continue
		}
		z := off / math.Max(says.Sd, 0.5)
		p.weight *= math.Exp(-z * z / 2)
		likely = append(likely, p)
	}
	d.Proposals = ranked(likely)
	if len(d.Proposals) > 0 && d.Proposals[0].Other != (source.Cell{}) {
		if i, k, ok := c.o.find(d.Proposals[0].Other); ok {
			c.partners[fair.Spot{Row: i, At: k}] = true
		}
	}
}

// ranked is the likeliest readings, each once, with the reason that makes it the
// likeliest.
func ranked(likely []slip) []Proposal {
	slices.SortStableFunc(likely, func(a, b slip) int {
		switch {
		case a.weight > b.weight:
			return -1
		case a.weight < b.weight:
			return 1
		}
		return 0
	})
	var all []Proposal
	for _, p := range likely {
		same := func(q Proposal) bool { return q.Value == p.Value }
		if len(all) < mostProposals && p.weight*likelier >= likely[0].weight && !slices.ContainsFunc(all, same) {
			all = append(all, p.Proposal)
		}
	}
	return all
}

// slips is the readings that a slip of one figure could have made a value of.
func (c checked) slips(v measure.Length) []slip {
	all := []slip{{Proposal{Value: -v, Reason: "the sign"}, 1}}
	if c.o.Form.Unit >= measure.InMillimetres || c.o.Form.Notation == measure.Decimal {
		return append(all, decimalSlips(v, c.o.Resolution)...)
	}
	return append(all, imperialSlips(v)...)
}

// swaps is what a value would be if it had changed places with one beside it: at
// the next station of its line, or on the next line of its kind at its station.
// Both must fit where they would then stand, and the other not where it stands.
func (c checked) swaps(s fair.Spot) []slip {
	var all []slip
	for _, b := range c.beside(s) {
		here, okHere := c.judged.Without(s, b)
		there, okThere := c.judged.Without(b, s)
		if !okHere || !okThere {
			continue
		}
		mine, its := c.value(s), c.value(b)
		if takes(here, its) && takes(there, mine) && !takes(there, its) {
			reason := "changed places with " + c.o.called(b.At)
			if b.Row != s.Row {
				reason = "changed places with " + c.o.Lines[b.Row].Name
			}
			other := c.o.Lines[b.Row].Values[b.At]
			all = append(all, slip{Proposal{other.Value, reason, other.Cell}, 4})
		}
	}
	return all
}

// takes says that a value is within what an opinion may be out.
func takes(o fair.Opinion, steps float64) bool {
	return math.Abs(steps-o.Value) <= math.Max(3*o.Sd, 2)
}

// beside is the values given next to one: before and after it on its line, and at
// its station on the lines of its kind next to it.
func (c checked) beside(s fair.Spot) []fair.Spot {
	var all []fair.Spot
	for _, k := range []int{s.At - 1, s.At + 1} {
		if k >= 0 && k < len(c.o.Stations) && c.rows[s.Row].Given[k] {
			all = append(all, fair.Spot{Row: s.Row, At: k})
		}
	}
	for _, i := range c.rows[s.Row].Near[:min(2, len(c.rows[s.Row].Near))] {
		if c.rows[i].Given[s.At] {
			all = append(all, fair.Spot{Row: i, At: s.At})
		}
	}
	return all
}

// copied says what a value is the same as, though it is doubted there.
func (c checked) copied(s fair.Spot) string {
	v := c.o.Lines[s.Row].Values[s.At].Value
	for _, b := range c.beside(s) {
		if c.o.Lines[b.Row].Values[b.At].Value != v {
			continue
		}
		if b.Row == s.Row {
			return "the same figure as " + c.o.called(b.At) + ": perhaps copied"
		}
		return "the same figure as " + c.o.Lines[b.Row].Name + ": perhaps taken from the wrong line"
	}
	return ""
}

// value is a value in steps of the table's resolution.
func (c checked) value(s fair.Spot) float64 {
	return float64(c.o.Lines[s.Row].Values[s.At].Value) / float64(max(1, c.o.Resolution))
}
