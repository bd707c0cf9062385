package hull

import (
	"fmt"
	"strconv"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// checkStations looks at the stations' names and positions.
func checkStations(o Offsets, r Rules) finding.List {
	var found finding.List
	seen := map[string]Station{}
	last := source.Reading[measure.Length]{}
	placed, step := 0, wholeStep(o)
	for i, s := range o.Stations {
		if first, twice := seen[s.Name]; twice && s.Name != "" {
			found = append(found, finding.Finding{Kind: StationRepeated, Cell: s.Cell, Reads: s.Name,
				Text: fmt.Sprintf("%s %q is named twice", o.Places, s.Name), Also: []source.Cell{first.Cell}})
		} else {
			seen[s.Name] = s
		}
		if s.At.OK() {
			placed++
			if last.OK() && s.At.Value <= last.Value {
				found = append(found, finding.Finding{Kind: StationOrder, Cell: s.At.Cell, Reads: s.At.Text,
					Text: fmt.Sprintf("%s lies no farther aft than the %s before it", o.Places.Named(s.Name), o.Places)})
			}
			last = s.At
		}
		found = append(found, checkRun(o, i, step)...)
	}
	switch {
	case r.StationSpacing > 0:
	case placed == 0:
		found = append(found, finding.Finding{Kind: StationUnplaced, Cell: o.Cell,
			Text: fmt.Sprintf("the %ss have no positions: the checks take them as evenly spaced by their names, and no length or bevel is worked out", o.Places)})
	case placed < len(o.Stations):
		found = append(found, finding.Finding{Kind: StationUnplaced, Cell: o.Cell,
			Text: fmt.Sprintf("some %ss have no position: the checks take the %ss as evenly spaced by their names", o.Places, o.Places)})
	}
	return found
}

// checkRun looks for whole-number stations left out just before station i, in a
// run of stations that go up by so much.
func checkRun(o Offsets, i int, step float64) finding.List {
	if i == 0 {
		return nil
	}
	a, okA := number(o.Stations[i-1].Name)
	b, okB := number(o.Stations[i].Name)
	switch {
	case !okA || !okB || step != 1:
		return nil
	case b < a:
		if o.Stations[i].At.OK() {
			return nil
		}
		return finding.List{{Kind: StationOrder, Cell: o.Stations[i].Cell, Reads: o.Stations[i].Name,
			Text: fmt.Sprintf("%s comes after %s", o.called(i), o.called(i-1))}}
	case b-a <= 1 || b-a > 4 || repeatedName(o, i-1) || repeatedName(o, i):
		return nil
	}
	first, last := strconv.Itoa(int(a)+1), strconv.Itoa(int(b+0.999)-1)
	which := o.Places.Named(first)
	if last != first {
		which = fmt.Sprintf("%ss %s to %s", o.Places, first, last)
	}
	return finding.List{{Kind: StationMissing, Cell: o.Stations[i].Cell, Reads: o.Stations[i].Name,
		Text: fmt.Sprintf("%s is missing between %s and %s", which, o.called(i-1), o.called(i))}}
}

// repeatedName says that station i has the name of another: one of the two was
// meant to fill a gap.
func repeatedName(o Offsets, i int) bool {
	for k, s := range o.Stations {
		if k != i && s.Name == o.Stations[i].Name {
			return true
		}
	}
	return false
}

// wholeStep is the step most neighbouring station names differ by; 0 for none.
func wholeStep(o Offsets) float64 {
	steps := map[float64]int{}
	best := 0.0
	for i := 1; i < len(o.Stations); i++ {
		a, okA := number(o.Stations[i-1].Name)
		b, okB := number(o.Stations[i].Name)
		if okA && okB {
			d := b - a
			if steps[d]++; steps[d] > steps[best] || best == 0 {
				best = d
			}
		}
	}
	return best
}

// number reads a station's name as a number: 3, 3.5, 3 1/2.
func number(name string) (float64, bool) {
	name = measure.Fold(name)
	if v, err := strconv.ParseFloat(name, 64); err == nil {
		return v, true
	}
	whole, half, ok := strings.Cut(name, " ")
	v, err := strconv.ParseFloat(whole, 64)
	if ok && err == nil && half == "1/2" {
		return v + 0.5, true
	}
	return 0, false
}

// positions is where each station lies for fairness: as given; else by the
// stations' numbers; else evenly, a station a step.
func positions(o Offsets) []float64 {
	x := make([]float64, len(o.Stations))
	byAt, byName := true, true
	for i, s := range o.Stations {
		v, ok := number(s.Name)
		byAt = byAt && s.At.OK() && (i == 0 || s.At.Value > o.Stations[i-1].At.Value)
		byName = byName && (ok || s.Transom) && (i == 0 || v > x[i-1])
		x[i] = v
	}
	for i, s := range o.Stations {
		switch {
		case byAt:
			x[i] = s.At.Value.Inches()
		case !byName:
			x[i] = float64(i)
		}
	}
	return x
}
