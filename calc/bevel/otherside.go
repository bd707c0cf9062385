package bevel

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
)

// What is lifted or measured on one side of the hull only.
var (
	OneSided = &finding.Kind{
		Code: "bevel-one-side", Severity: finding.Note, Title: "bevels lifted on one side only",
		Why:    "A hull built fair reads alike on both sides; one that is not wants its own bevels on each.",
		Remedy: "lift a few bevels on the other side to see that it is alike, or set \"bevels alike\" to no and take it from the hull",
	}
	GapOneSided = &finding.Kind{
		Code: "bevel-gap-side", Severity: finding.Warning, Title: "shutter's gap measured on one side only",
		Why:    "A shutter is fitted to what is left open, and no two sides are left open alike.",
		Remedy: "measure the gap on the other side before that shutter is sawn",
	}
)

// OtherSide lays out the planks of a table whose bevels were lifted on one side only
// for the other side too: the same bevels at the same distances from the same
// station, mirrored. Have is all schedules there are from what was lifted; a plank
// that is not in the list for that side is let be.
func OtherSide(b Readings, have []Schedule, strakes []hull.Strake, places []hull.Station, shape *hull.Shape, r Rules) []Schedule {
	if !r.Alike || b.open(r) {
		return nil
	}
	j := b.judge(r)
	b.Seams = slices.Clone(b.Seams)
	any := false
	for i := range b.Seams {
		s := &b.Seams[i]
		side := s.Side.Other()
		ok := side != s.Side && has(have, s.Skin, s.Strake, s.Side) && !has(have, s.Skin, s.Strake, side)
		s.Side = side
		if _, listed := hull.Listed(strakes, s.Skin, s.Strake, s.Side); !ok || !listed {
			j.readings.Given[i] = make([]bool, len(j.readings.Given[i]))
			continue
		}
		any = true
	}
	if !any {
		return nil
	}
	made, _ := schedules(b, j, strakes, places, shape, r) // what is found of them is found of the side lifted
	for i := range made {
		made[i].AsOther = true
	}
	return made
}

// OtherShutters is the rows of shutters whose gap was measured on one side only, as
// they are on the other.
func OtherShutters(rows []hull.ShutterRow, strakes []hull.Strake) []hull.ShutterRow {
	var all []hull.ShutterRow
	for _, row := range rows {
		if row.Side == hull.BothSides {
			continue
		}
		measured := slices.ContainsFunc(rows, func(o hull.ShutterRow) bool {
			return o.Skin == row.Skin && o.Side != row.Side && strings.EqualFold(o.Strake, row.Strake)
		})
		row.Side = row.Side.Other()
		if _, listed := hull.Listed(strakes, row.Skin, row.Strake, row.Side); listed && !measured {
			all = append(all, row)
		}
	}
	return all
}

// checkOneSided says once which planks are sawn on one side by what was lifted on the
// other, and which shutters.
func checkOneSided(all []Schedule) finding.List {
	var lifted, gaps []Schedule
	for _, s := range all {
		switch {
		case s.AsOther && s.Shutter:
			gaps = append(gaps, s)
		case s.AsOther:
			lifted = append(lifted, s)
		}
	}
	var found finding.List
	if len(lifted) > 0 {
		f := at(OneSided, lifted)
		f.Text = fmt.Sprintf("%s: lifted on the other side only, and sawn as that side mirrored", planks(lifted))
		found = append(found, f)
	}
	if len(gaps) > 0 {
		f := at(GapOneSided, gaps)
		f.Text = fmt.Sprintf("%s: the gap was measured on the other side only", planks(gaps))
		found = append(found, f)
	}
	return found
}
