package hull

import (
	"cmp"

	"strakebook/calc/finding"
	"strakebook/calc/source"
)

// Query is one thing to ask the designer, in the table's own words.
type Query struct {
	Cell          source.Cell
	Line, Station string // "half-breadth of WL 3", "4"; "" where it is about more than one
	Reads         string // as written, "" where there is nothing
	Before, After string // the figures next to it on its line, as "3 reads 1-4-2"
	Below, Above  string // those at its station on the lines next to it, as "WL 2 reads 1-1-0"
	Text          string // what is doubtful
	Suggests      string
}

// Queries is what there is to ask of a table: everything found in it above a
// note, in the order of its stations, then its lines.
func (e Report) Queries(o Offsets) []Query {
	var all []Query
	for _, f := range e.Found {
		if f.Severity == finding.Note {
			continue
		}
		q := Query{Cell: f.Cell, Text: f.Text, Reads: f.Reads, Suggests: f.Suggests}
		if i, k, ok := o.find(f.Cell); ok {
			q.Line, q.Station = o.Lines[i].words(), o.Stations[k].Name
			q.Reads = cmp.Or(q.Reads, o.Lines[i].Values[k].Text)
			q.Before, q.After = o.along(i, k, -1), o.along(i, k, 1)
			q.Below, q.Above = o.across(i, k, -1), o.across(i, k, 1)
		} else if k := o.station(f.Cell); k >= 0 {
			q.Station = o.Stations[k].Name
		}
		all = append(all, q)
	}
	return all
}

// along is the figure nearest to a place on its line on one side.
func (o Offsets) along(i, k, step int) string {
	for k += step; k >= 0 && k < len(o.Stations); k += step {
		if v := o.Lines[i].Values[k]; v.OK() {
			return o.Stations[k].Name + " reads " + v.Text
		}
	}
	return ""
}

// across is the figure at a place's station on the nearest line of its view on
// one side.
func (o Offsets) across(i, k, step int) string {
	view := o.Lines[i].View
	for i += step; i >= 0 && i < len(o.Lines) && o.Lines[i].View == view; i += step {
		if v := o.Lines[i].Values[k]; v.OK() {
			return o.Lines[i].Name + " reads " + v.Text
		}
	}
	return ""
}

// station is the station a cell heads or gives the position of, -1 for none.
func (o Offsets) station(c source.Cell) int {
	for k, s := range o.Stations {
		if s.Cell == c || s.At.OK() && s.At.Cell == c {
			return k
		}
	}
	return -1
}
