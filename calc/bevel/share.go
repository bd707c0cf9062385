package bevel

import (
	"math"
	"strings"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// Guide is one guide batten shaped to serve several planks, hung one after
// another on one side: its edge lies within the rule's tolerance of where each of
// them wants it, once it is shifted bodily in or out for each.
type Guide struct {
	Skin   hull.Skin
	Side   hull.Side
	Edge   Edge
	Planks []GuidePlank
	Edges  []GuideEdge
	Off    measure.Length // the most that a plank's edge departs from what it wants
}

// GuidePlank is one plank that a batten serves.
type GuidePlank struct {
	Strake string
	Shift  measure.Length // of the whole batten from where the first plank has it: + out, - in
}

// GuideEdge is the batten's edge at one station: its distance from the first
// plank's free edge.
type GuideEdge struct {
	Station string
	From    measure.Length
}

// Guides finds the battens needed: each is kept for as many planks in the order
// of hanging as it serves within the rule's tolerance. Planks without a size, or
// with readings in doubt, are left out.
func Guides(schedules []Schedule, r Rules) []Guide {
	var all []Guide
	var open *trialGuide
	for _, s := range schedules {
		edge := s.edges()
		if s.Thickness <= 0 || s.Width <= 0 || len(edge) < 2 || s.Doubted() {
			continue
		}
		if open != nil && open.takes(s, edge, r.BattenWithin) {
			continue
		}
		if open != nil {
			all = append(all, open.guide())
		}
		open = newGuide(s, edge)
	}
	if open != nil {
		all = append(all, open.guide())
	}
	return all
}

// edges is where the batten's edge is wanted at each station.
func (s Schedule) edges() []GuideEdge {
	var all []GuideEdge
	for _, m := range s.Marks {
		if m.Station != "" {
			all = append(all, GuideEdge{m.Station, m.Batten})
		}
	}
	return all
}

// trialGuide is a batten while planks are tried on it: at each station the
// farthest in and the farthest out that the planks so far want it, shifted to the
// first.
type trialGuide struct {
	Guide
	low, high []measure.Length
	shifted   []GuideEdge
}

func newGuide(s Schedule, edge []GuideEdge) *trialGuide {
	g := &trialGuide{shifted: edge}
	g.Skin, g.Side, g.Edge = s.Skin, s.Side, s.Edge
	g.Planks = []GuidePlank{{Strake: s.Strake}}
	for _, e := range edge {
		g.low, g.high = append(g.low, e.From), append(g.high, e.From)
	}
	return g
}

// takes adds a plank to the batten if it serves that one too. The plank's shift is
// the one that leaves the least to share.
func (g *trialGuide) takes(s Schedule, edge []GuideEdge, within measure.Length) bool {
	if s.Skin != g.Skin || s.Side != g.Side || s.Edge != g.Edge || len(edge) != len(g.shifted) {
		return false
	}
	least, most := measure.Length(math.MaxInt64), measure.Length(math.MinInt64)
	for i, e := range edge {
		if !strings.EqualFold(e.Station, g.shifted[i].Station) {
			return false
		}
		middle := (g.low[i] + g.high[i]) / 2
		least, most = min(least, e.From-middle), max(most, e.From-middle)
	}
	shift := (least + most) / 2
	low, high := make([]measure.Length, len(edge)), make([]measure.Length, len(edge))
	for i, e := range edge {
		low[i], high[i] = min(g.low[i], e.From-shift), max(g.high[i], e.From-shift)
		if high[i]-low[i] > 2*within {
			return false
		}
	}
	g.low, g.high = low, high
	g.Planks = append(g.Planks, GuidePlank{Strake: s.Strake, Shift: shift})
	return true
}

// guide is the batten as it is to be shaped: midway between what its planks want.
func (g *trialGuide) guide() Guide {
	for i, e := range g.shifted {
		g.Edges = append(g.Edges, GuideEdge{e.Station, (g.low[i] + g.high[i]) / 2})
		g.Off = max(g.Off, (g.high[i]-g.low[i]+1)/2)
	}
	return g.Guide
}
