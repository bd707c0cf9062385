package hull

import (
	"cmp"
	"fmt"
	"slices"

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
// note, and each figure that cannot be read, in the order of its stations, then
// its lines.
func (e Report) Queries(o Offsets) []Query {
	type ranked struct {
		Query
		station, line int
	}
	var all []ranked
	add := func(q Query, i, k int) {
		if i >= 0 {
			q.Line = o.Lines[i].words()
		}
		if k >= 0 {
			q.Station = o.Stations[k].Name
		}
		if i >= 0 && k >= 0 {
			q.Reads = cmp.Or(q.Reads, o.Lines[i].Values[k].Text)
			q.Before, q.After = o.along(i, k, -1), o.along(i, k, 1)
			q.Below, q.Above = o.across(i, k, -1), o.across(i, k, 1)
		}
		all = append(all, ranked{q, k, i})
	}
	for _, f := range e.Found {
		if f.Severity == finding.Note {
			continue
		}
		i, k, ok := o.find(f.Cell)
		if !ok {
			i = slices.IndexFunc(o.Lines, func(l Line) bool { return l.Cell == f.Cell })
			k = o.station(f.Cell)
		}
		add(Query{Cell: f.Cell, Text: f.Text, Reads: f.Reads, Suggests: f.Suggests}, i, k)
	}
	for i, l := range o.Lines {
		for k, v := range l.Values {
			if v.State != source.Unread {
				continue
			}
			q := Query{Cell: v.Cell, Text: fmt.Sprintf("%s at %s reads %q, which cannot be read", l.words(), o.called(k), v.Text)}
			if fair, ok := o.fill(i, k); ok {
				q.Suggests = "about " + o.Form.Write(fair)
			}
			add(q, i, k)
		}
	}
	slices.SortStableFunc(all, func(a, b ranked) int { return cmp.Or(cmp.Compare(a.station, b.station), cmp.Compare(a.line, b.line)) })
	queries := make([]Query, len(all))
	for i, q := range all {
		queries[i] = q.Query
	}
	return queries
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
