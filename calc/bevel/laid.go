package bevel

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/source"
)

// CheckLaid says of all schedules, once for the whole job, which of their marks are
// laid out by the station spacing, why, and how far out they may be; and which
// bevels lie beyond the trial cuts.
func CheckLaid(all []Schedule, shape *hull.Shape, r Rules) finding.List {
	return append(checkAlong(all, shape, r), checkTrials(all, r)...)
}

func checkAlong(all []Schedule, shape *hull.Shape, r Rules) finding.List {
	var bySpacing, past []Schedule
	for _, s := range all {
		switch {
		case s.AlongFrom == AlongSpaced:
			bySpacing = append(bySpacing, s)
		case len(s.Past) > 0:
			past = append(past, s)
		}
	}
	var found finding.List
	if len(bySpacing) > 0 {
		f := at(AlongOpen, bySpacing)
		why := "no hull is drawn to take them from"
		if shape != nil && len(shape.Linings) > 0 {
			why = fmt.Sprintf("the hull as drawn has no such edge through their %ss", bySpacing[0].Places)
		}
		// 1/cos 10 - 1 = 1.54 in 100: plain geometry.
		f.Text = fmt.Sprintf("no distances along the edge are given for %s and %s: marks are laid out by the %s spacing, and fall 1.5 short in 100 on a plank at 10 degrees to the middle line", planks(bySpacing), why, bySpacing[0].Places)
		found = append(found, f)
	}
	if len(past) > 0 {
		f := at(AlongOpen, past)
		worst := slices.MaxFunc(past, func(a, b Schedule) int { return int(max(-1, min(1, a.PastOff-b.PastOff))) })
		may := "less than the table's own step"
		if worst.PastOff >= shape.Form.Finest() {
			may = r.Units.As(shape.Form, worst.PastOff)
		}
		f.Text = fmt.Sprintf("%s lies past the seam as drawn of %s: from the seam's end the marks go by the %s spacing, and may be out by %s",
			worst.Places.Named(strings.Join(worst.Past, ", ")), planks(past), worst.Places, may)
		found = append(found, f)
	}
	return found
}

// checkTrials names the bevel farthest beyond the trial cuts, and counts the rest.
func checkTrials(all []Schedule, r Rules) finding.List {
	var untried []Schedule
	var worst Schedule
	var steepest Mark
	most, marks := 0.0, 0
	for _, s := range all {
		before := marks
		for _, m := range s.Marks {
			by := r.beyondTrials(m.sawn(r))
			if by <= 0 {
				continue
			}
			marks++
			if by > most {
				most, worst, steepest = by, s, m
			}
		}
		if marks > before {
			untried = append(untried, s)
		}
	}
	if marks == 0 {
		return nil
	}
	f := at(TrialBeyond, untried)
	f.Reads = trialCuts{&r.Trials}.String()
	where := "near " + worst.near(steepest)
	if steepest.Station != "" {
		where = "at " + worst.Places.Named(steepest.Station)
	}
	f.Text = fmt.Sprintf("%d marks of %s lie beyond the trial cuts, %s %s the farthest at %s degrees: the scale is taken to go on as between the last two",
		marks, planks(untried), worst.name(), where, steepest.sawn(r).Round(0.01).Write())
	return finding.List{f}
}

// near is the station whose mark lies next before one between stations.
func (s Schedule) near(m Mark) string {
	name := s.From
	for _, o := range s.Marks {
		if o.Station != "" && o.At <= m.At {
			name = o.Station
		}
	}
	return s.Places.Named(name)
}

// name is a schedule's plank and edge as findings name them.
func (s Schedule) name() string {
	return Seam{Strake: s.Strake, Skin: s.Skin, Side: s.Side, Edge: s.Edge}.name()
}

// planks names up to four edges, and says how many more there are.
func planks(all []Schedule) string {
	var names []string
	for _, s := range all {
		names = append(names, s.name())
	}
	names = slices.Compact(names)
	if more := len(names) - 3; more > 1 {
		return fmt.Sprintf("%s and %d more edges", strings.Join(names[:3], ", "), more)
	}
	return strings.Join(names, ", ")
}

// at is a finding of one kind at the cells of schedules, each cell once.
func at(k *finding.Kind, all []Schedule) finding.Finding {
	f := finding.Finding{Kind: k, Cell: all[0].Cell}
	for _, s := range all[1:] {
		if s.Cell != f.Cell && !slices.Contains(f.Also, s.Cell) && s.Cell != (source.Cell{}) {
			f.Also = append(f.Also, s.Cell)
		}
	}
	return f
}
