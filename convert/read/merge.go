package read

import (
	"fmt"
	"slices"

	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/calc/stock"
)

// twice finds tables that hold the same figures over again, and leaves all but
// the first out of the job.
func (r *reader) twice() {
	kept := r.job.Offsets[:0:0]
	for i, o := range r.job.Offsets {
		if k, apart := r.like(kept, o); k >= 0 && (len(apart) == 0 || !r.otherSide(kept[k], o)) {
			first := kept[k]
			f := finding.Finding{Kind: TableTwice, Cell: o.Cell, Also: []source.Cell{first.Cell},
				Text: fmt.Sprintf("the offsets here hold the same figures as those at %s", first.Cell)}
			if len(apart) > 0 {
				f.Kind, f.Also = TablesDiffer, append(f.Also, apart...)
				f.Text = fmt.Sprintf("the offsets here hold the lines of those at %s over again, and %s otherwise, the first at %s: those at %s are worked by",
					first.Cell, plural(len(apart), "figure reads", "figures read"), apart[0].Ref(), first.Cell)
			}
			r.add(f)
			continue
		}
		kept = append(kept, r.job.Offsets[i])
	}
	r.job.Offsets = kept
	seen := map[string]source.Table{}
	for _, t := range r.tables {
		if t.Table == "settings" || t.Table == "guide" || t.Table == "offsets" || t.Digest == "" {
			continue
		}
		key := t.Table + "|" + t.Digest
		if first, again := seen[key]; again {
			r.add(finding.Finding{Kind: TableTwice, Cell: source.Cell{Book: t.Book, Sheet: t.Sheet},
				Text: fmt.Sprintf("the %s at %s hold the same figures as those at %s!%s", t.Table, t.Range, first.Sheet, first.Range)})
			r.dropped = append(r.dropped, t)
			continue
		}
		seen[key] = t
	}
	r.dropTwice()
}

// like is the table among some that has the lines of another over again: its
// index, and the cells of the figures that are not the same.
func (r *reader) like(among []hull.Offsets, o hull.Offsets) (k int, apart []source.Cell) {
	for k, first := range among {
		if !sameNames(first.Stations, o.Stations) {
			continue
		}
		same, apart, lines := 0, []source.Cell(nil), 0
		for _, l := range o.Lines {
			i := slices.IndexFunc(first.Lines, func(f hull.Line) bool { return keyOf(f) == keyOf(l) })
			if i < 0 {
				continue
			}
			lines++
			for n := range min(len(l.Values), len(first.Lines[i].Values)) {
				a, b := l.Values[n], first.Lines[i].Values[n]
				if a.State == b.State && a.Value == b.Value {
					same++
				} else {
					apart = append(apart, a.Cell)
				}
			}
		}
		if lines > 0 && lines == len(o.Lines) && 2*same >= same+len(apart) {
			return k, apart
		}
	}
	return -1, nil
}

// sameNames says that two tables have the same stations.
func sameNames(a, b []hull.Station) bool {
	return slices.EqualFunc(a, b, func(a, b hull.Station) bool { return a.Name == b.Name })
}

// dropTwice leaves out of the job what came from tables found before.
func (r *reader) dropTwice() {
	for _, t := range r.dropped {
		top, left, bottom, right, ok := corners(t.Range)
		in := func(c source.Cell) bool {
			return ok && c.Book == t.Book && c.Sheet == t.Sheet && c.Row >= top && c.Row <= bottom && c.Col >= left && c.Col <= right
		}
		r.job.Strakes = slices.DeleteFunc(r.job.Strakes, func(s hull.Strake) bool { return in(s.Cell) })
		r.job.Rack = slices.DeleteFunc(r.job.Rack, func(b stock.Board) bool { return in(b.Cell) })
		r.job.Wanted = slices.DeleteFunc(r.job.Wanted, func(w stock.Wanted) bool { return in(w.Cell) })
		r.job.Bevels = slices.DeleteFunc(r.job.Bevels, func(b bevel.Readings) bool { return in(b.Cell) })
		r.job.Seams = slices.DeleteFunc(r.job.Seams, func(s hull.SeamMarks) bool { return in(s.Cell) })
	}
}

// join makes one table of offsets of those that are parts of one: of the same
// stations, or of some of them, with lines of their own. Heights and half-breadths
// are often kept apart, and the transom may be in one of them only.
func (r *reader) join() {
	var all []hull.Offsets
	for _, o := range r.job.Offsets {
		k := slices.IndexFunc(all, func(first hull.Offsets) bool { return r.parts(first, o) })
		if k < 0 {
			all = append(all, o)
			continue
		}
		first := &all[k]
		if len(o.Stations) > len(first.Stations) {
			*first = spread(*first, o.Stations)
		}
		o = spread(o, first.Stations)
		first.Lines = append(slices.Clone(first.Lines), o.Lines...)
		switch {
		case r.torn[first.Cell] || o.Surface == hull.SurfaceUnstated && !r.torn[o.Cell]:
		case r.torn[o.Cell]:
			first.Surface, r.torn[first.Cell] = hull.SurfaceUnstated, true
		case first.Surface == hull.SurfaceUnstated:
			first.Surface = o.Surface
		case o.Surface != first.Surface:
			first.Surface, r.torn[first.Cell] = hull.SurfaceUnstated, true
			r.add(finding.Finding{Kind: ConventionTwo, Cell: o.Cell, Also: []source.Cell{first.Cell}, Text: "two parts of the offsets are said to be to different surfaces"})
		}
		if o.Resolution > 0 && (first.Resolution == 0 || o.Resolution < first.Resolution) {
			first.Resolution = o.Resolution
		}
		for i := range first.Stations {
			if !first.Stations[i].At.OK() {
				first.Stations[i].At = o.Stations[i].At
			}
		}
	}
	for i := range all {
		all[i].Step = coarser(all[i])
		r.sidedTo(&all[i])
	}
	r.job.Offsets = all
}

// parts says that two tables of offsets are parts of one, and not of the two
// sides.
func (r *reader) parts(a, b hull.Offsets) bool {
	if r.otherSide(a, b) || r.otherPlaces(a, b) {
		return false
	}
	more, fewer := a.Stations, b.Stations
	if len(fewer) > len(more) {
		more, fewer = fewer, more
	}
	at, ok := among(more, fewer)
	if !ok || a.Fractions != b.Fractions {
		return false
	}
	for i, s := range fewer {
		if x, y := more[at[i]].At, s.At; x.OK() && y.OK() && x.Value != y.Value {
			return false
		}
	}
	for _, l := range b.Lines {
		if slices.ContainsFunc(a.Lines, func(f hull.Line) bool { return keyOf(f) == keyOf(l) }) {
			return false
		}
	}
	return true
}

// among is the places of some stations among more, in their order; not ok where
// one of them is not there, or where they are fewer than a table is known by.
func among(more, fewer []hull.Station) (at []int, ok bool) {
	from := 0
	for _, s := range fewer {
		i := slices.IndexFunc(more[from:], func(m hull.Station) bool { return m.Name == s.Name })
		if i < 0 {
			return nil, false
		}
		at = append(at, from+i)
		from += i + 1
	}
	return at, len(at) >= fewestNames || len(at) == len(more)
}

// spread is a table of offsets over more stations: its lines are blank at those
// it has not.
func spread(o hull.Offsets, stations []hull.Station) hull.Offsets {
	at, ok := among(stations, o.Stations)
	if !ok || len(at) == len(stations) {
		return o
	}
	out := o
	out.Stations, out.Lines = slices.Clone(stations), slices.Clone(o.Lines)
	for i, k := range at {
		if !out.Stations[k].At.OK() {
			out.Stations[k].At = o.Stations[i].At
		}
	}
	for n, l := range out.Lines {
		values := make([]source.Reading[measure.Length], len(stations))
		for k := range values {
			values[k].Cell = l.Cell // what is said of the blank is said at the line
		}
		for i, k := range at {
			values[k] = l.Values[i]
		}
		out.Lines[n].Values = values
	}
	return out
}
