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

// What the checks of whole stations and lines find.
var (
	StationOff = &finding.Kind{
		Code: "station-off", Severity: finding.Warning, Title: "station off its place",
		Why:    "Where all the lines would be fair with one station moved, its position is wrong and the figures are right, unless a knuckle is drawn there: the figures alone cannot tell the two apart.",
		Remedy: "check the station's position against the plan before anything is set up; if a knuckle is drawn there, leave it",
	}
	StationSwapped = &finding.Kind{
		Code: "station-swapped", Severity: finding.Warning, Title: "two stations changed places",
		Why:    "Two columns copied under each other's heads give two moulds that are each right and stand in the wrong place.",
		Remedy: "check the heads of both columns against the plan",
	}
	StationsUnfair = &finding.Kind{
		Code: "stations-unfair", Severity: finding.Warning, Title: "whole stations wrong, which is not known",
		Why:    "Where most lines are unfair at the same stations it is the stations and not single figures; with few of them several changes would make the lines as fair.",
		Remedy: "check the heads, the order and the positions of the stations against the plan",
	}
	StationSlipped = &finding.Kind{
		Code: "station-slipped", Severity: finding.Warning, Title: "column slipped a row",
		Why:    "A column copied a row too high or too low gives each line the figure of the next.",
		Remedy: "copy the column again from the designer's table",
	}
	LineSwapped = &finding.Kind{
		Code: "line-swapped", Severity: finding.Warning, Title: "two lines changed places",
		Why:    "Two rows under each other's names are each fair, and every section between them is not.",
		Remedy: "check the names of both lines against the plan",
	}
)

// pairs is the stations that may have changed places: each two, in a long table each
// with one that speaks against itself.
func (w whole) pairs(suspects []int) [][2]int {
	var all [][2]int
	may := func(k int) bool { return !w.o.Stations[k].Transom && !slices.Contains(w.stations, k) }
	for a := range w.o.Stations {
		for b := a + 1; b < len(w.o.Stations); b++ {
			if may(a) && may(b) && (len(w.x) < longTable || slices.Contains(suspects, a) || slices.Contains(suspects, b)) {
				all = append(all, [2]int{a, b})
			}
		}
	}
	return all
}

// swap is the table with two stations' figures in each other's place.
func (w whole) swap(a, b int) whole {
	t := whole{o: w.o.copied(), x: w.x, lines: w.lines, stations: []int{a, b}}
	for i := range t.o.Lines {
		v := t.o.Lines[i].Values
		v[a], v[b] = v[b], v[a]
	}
	t.found = finding.Finding{Kind: StationSwapped, Cell: w.o.Stations[a].Cell, Also: []source.Cell{w.o.Stations[b].Cell},
		Text: fmt.Sprintf("the lines are fair if the figures of %s and %s change places", w.o.called(a), w.o.called(b))}
	return t
}

// slips is the table with a station's figures of one view moved up or down a row,
// all of them or from the first that is off.
func (w whole) slips(k int, z [][]float64) []whole {
	var all []whole
	for from := 0; from < len(w.o.Lines); {
		to := from + 1
		for to < len(w.o.Lines) && w.o.Lines[to].View == w.o.Lines[from].View {
			to++
		}
		first, last := to, from
		for i := from; i < to; i++ {
			if math.Abs(z[i][k]) >= wholeScore {
				first, last = min(first, i), i
			}
		}
		if to-from >= wholeLeast {
			for _, s := range [][2]int{{from, to}, {first, to}, {from, last + 1}} {
				if s[1]-s[0] >= wholeLeast {
					all = append(all, w.slip(k, s[0], s[1], 1), w.slip(k, s[0], s[1], -1))
				}
			}
		}
		from = to
	}
	return all
}

// slip is the table with the figures of the lines from one to another at a
// station moved a row on or back; the row left empty has none.
func (w whole) slip(k, from, to, step int) whole {
	t := whole{o: w.o.copied(), x: w.x, lines: w.lines, stations: []int{k}}
	word := "down"
	if step > 0 {
		word = "up" // what is moved on had slipped up
	}
	for i := from; i < to; i++ {
		v := source.Reading[measure.Length]{}
		if j := i - step; j >= from && j < to {
			v = w.o.Lines[j].Values[k]
		}
		t.o.Lines[i].Values[k] = v
	}
	t.found = finding.Finding{Kind: StationSlipped, Cell: w.o.Stations[k].Cell, Also: []source.Cell{w.o.Lines[from].Values[k].Cell, w.o.Lines[to-1].Values[k].Cell},
		Text: fmt.Sprintf("the figures of %s seem to have slipped %s a row, from %s to %s", w.o.called(k), word, w.o.Lines[from].words(), w.o.Lines[to-1].words())}
	return t
}

// moves is the table with a station where most of its lines would have it.
func (w whole) moves(k int, rows []fair.Row) []whole {
	var places []float64
	var steeps []float64
	for _, row := range rows {
		if x, steep, ok := fair.Place(row, k); ok {
			places, steeps = append(places, x), append(steeps, math.Abs(steep))
		}
	}
	if len(places) < wholeLeast {
		return nil
	}
	t := whole{o: w.o.copied(), x: slices.Clone(w.x), lines: w.lines, stations: []int{k}}
	t.x[k] = middleOf(places, steeps)
	if way := (t.x[k] - w.x[k-1]) / (w.x[k+1] - w.x[k-1]); way < wholeNear || way > 1-wholeNear {
		return nil
	}
	t.found = finding.Finding{Kind: StationOff, Cell: w.o.Stations[k].Cell, Reads: w.o.Stations[k].At.Text,
		Text: fmt.Sprintf("the lines are fair if %s lies about %.0f per cent of the way from %s to %s, or else all of them have a knuckle there", w.o.called(k),
			100*(t.x[k]-w.x[k-1])/(w.x[k+1]-w.x[k-1]), w.o.called(k-1), w.o.called(k+1))}
	if at := w.o.Stations[k].At; at.OK() {
		t.found.Cell = at.Cell
		t.o.Stations[k].At.Value = measure.Inches(t.x[k]).Round(measure.Inch / 2)
		t.found.Suggests = "about " + w.o.Form.Write(t.o.Stations[k].At.Value)
	}
	return []whole{t}
}

// middleOf is the weighted middle of values.
func middleOf(values, weights []float64) float64 {
	order := make([]int, len(values))
	total := 0.0
	for i := range order {
		order[i] = i
		total += weights[i]
	}
	slices.SortStableFunc(order, func(a, b int) int {
		switch {
		case values[a] < values[b]:
			return -1
		case values[a] > values[b]:
			return 1
		}
		return 0
	})
	sum := 0.0
	for _, i := range order {
		if sum += weights[i]; 2*sum >= total {
			return values[i]
		}
	}
	return values[order[len(order)-1]]
}

// swapLines is the table with two lines' figures in each other's place.
func (w whole) swapLines(i, j int) whole {
	t := whole{o: w.o.copied(), x: w.x, lines: slices.Clone(w.lines)}
	a, b := w.o.Lines[i], w.o.Lines[j]
	a.At, b.At = b.At, a.At
	t.o.Lines[i], t.o.Lines[j] = b, a
	t.lines[i], t.lines[j] = w.lines[j], w.lines[i]
	t.found = finding.Finding{Kind: LineSwapped, Cell: w.o.Lines[i].Cell, Also: []source.Cell{w.o.Lines[j].Cell},
		Text: fmt.Sprintf("the sections are fair if the figures of %s and %s change places", w.o.Lines[i].words(), w.o.Lines[j].bare())}
	return t
}
