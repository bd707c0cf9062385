package hull

import (
	"fmt"
	"strconv"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// StrakeRun is a strake whose typed length is not the hull's.
var StrakeRun = &finding.Kind{
	Code: "strake-run", Severity: finding.Warning, Title: "strake's length is not the hull's",
	Why:    "A strake cut to a length the hull does not have comes out short at the hood end, or wastes a scarf.",
	Remedy: "measure the run on the moulds; leave the length blank to have it worked out, or set \"strake lengths\"",
}

// StrakeBetween is a strake between stations that the hull, or the strake, has not.
var StrakeBetween = &finding.Kind{
	Code: "strake-between", Severity: finding.Warning, Title: "strake between stations that are not there",
	Why:    "Its length, and where its joints stand against its neighbours', are those of the whole run from hood end to hood end.",
	Remedy: "name two stations of the offsets that it reaches, the fore one first; or write its length",
}

// Lengths is which length of a strake the work goes by where there are two.
type Lengths uint8

// The lengths to go by.
const (
	LengthsTyped    Lengths = iota // the builder's own where given
	LengthsComputed                // the hull's wherever it is known
)

// String is the word.
func (l Lengths) String() string { return [...]string{"typed", "computed"}[l] }

// Runs is the list of strakes with what the hull knows of each filled in: its
// length with what is left on at the ends, its widths by station and where its
// fore end lies. A row that stands for several becomes a row each, since no two
// are alike. Typed lengths far from the hull's, on a row of several from that of the
// longest, are found. Without a hull the list
// is returned as it is.
func (s *Shape) Runs(strakes []Strake, r Rules) ([]Strake, finding.List) {
	if s == nil || len(s.Linings) == 0 {
		return strakes, nil
	}
	var all []Strake
	var found finding.List
	var given filled
	for _, row := range strakes {
		sides := s.sides(row)
		if sides == nil {
			all = append(all, row)
			continue
		}
		longest, loose := measure.Length(0), measure.Length(0)
		found = append(found, s.unbounded(row, sides[0], r)...)
		for _, side := range sides {
			for _, name := range row.Names() {
				one := row
				one.Name, one.Side, one.Count = name, side, source.Reading[int]{}
				run, off := s.fill(&one, r)
				if run > longest {
					longest, loose = run, off
				}
				given.see(row, one)
				all = append(all, one)
			}
		}
		found = append(found, s.typed(row, longest, loose, r)...)
	}
	return all, append(found, given.found()...)
}

// typed holds a row's typed length against the longest of its strakes, which may
// be so much longer or shorter for the rounding of the table.
func (s *Shape) typed(row Strake, run, loose measure.Length, r Rules) finding.List {
	if !row.Length.OK() || run == 0 || (row.Length.Value-run).Abs() <= run.Times(r.LengthWithin/100)+loose {
		return nil
	}
	runs := r.Units.As(s.Form, run.Round(2*s.Form.Finest()))
	return finding.List{{Kind: StrakeRun, Cell: row.Length.Cell, Reads: row.Length.Text, Suggests: runs,
		Text: fmt.Sprintf("%s %s is listed %s long and runs %s on the hull", row.Skin, row.Name, r.Units.As(s.Form, row.Length.Value), runs)}}
}

// sides is the sides a row's strakes are lined off on; nil where they are not.
func (s *Shape) sides(row Strake) []Side {
	var all []Side
	for _, l := range s.Linings {
		if l.Skin != row.Skin || len(l.Strakes) == 0 {
			continue
		}
		switch {
		case l.Side == row.Side || l.Side == BothSides:
			return []Side{row.Side}
		case row.Side == BothSides:
			all = append(all, l.Side)
		}
	}
	return all
}

// fill fills in one strake and returns its length on the hull, 0 where that is
// not known, and how far off it may be for the rounding of the table.
func (s *Shape) fill(one *Strake, r Rules) (run, loose measure.Length) {
	lining, k, ok := s.StrakeOf(one.Skin, one.Name, one.Side)
	if !ok || lining.Strakes[k].Length == 0 {
		return 0, 0
	}
	strake := lining.Strakes[k]
	run = s.between(lining, k, one.From, one.To) + 2*r.ExtraAtEnds
	if !one.Length.OK() || r.Lengths == LengthsComputed {
		one.Length = s.computed(run.RoundUp(2*s.Form.Finest()), one.Cell)
		if fore, _, ok := lining.Ends(k); ok && !one.Start.OK() {
			if a := s.station(one.From); a >= 0 {
				fore = s.Stations[a].At
			}
			one.Start = source.Is(fore)
		}
	}
	if len(one.WidthAt) == 0 && !one.Width.OK() {
		widest := measure.Length(0)
		for i, w := range strake.Widths {
			if w > 0 {
				one.Widths = append(one.Widths, source.Is(w.Round(s.Form.Finest()/4)))
				one.WidthAt = append(one.WidthAt, Station{Name: s.Stations[i].Name, At: source.Is(s.Stations[i].At)})
				widest = max(widest, w)
			}
		}
		if widest > 0 {
			one.Width = s.computed(widest.RoundUp(s.Form.Finest()), one.Cell)
		}
	}
	return run, max(lining.Seams[k].loose, lining.Seams[k+1].loose)
}

// computed is a figure of the hull's in place of one the list lacks: it stands at
// the strake's own cell.
func (s *Shape) computed(l measure.Length, at source.Cell) source.Reading[measure.Length] {
	r := source.Is(l)
	r.Text, r.Cell = s.Form.Write(l), at
	return r
}

// between is the length of a strake, or of its part between two stations where
// they are named and it crosses both: the longer of its edges.
func (s *Shape) between(l *Lining, k int, from, to string) measure.Length {
	if part := s.part(l, k, s.station(from), s.station(to)); part > 0 {
		return part
	}
	return l.Strakes[k].Length
}

// part is the length of a strake's part between two stations, -1 for its own end,
// along the longer of its edges; 0 where neither edge crosses both.
func (s *Shape) part(l *Lining, k, a, b int) measure.Length {
	if a < 0 && b < 0 {
		return l.Strakes[k].Length
	}
	longest := measure.Length(0)
	for _, seam := range l.Seams[k : k+2] {
		start, end := measure.Length(0), seam.Length
		if a >= 0 {
			if !seam.Points[a].Crosses {
				continue
			}
			start = seam.Points[a].Along
		}
		if b >= 0 {
			if !seam.Points[b].Crosses {
				continue
			}
			end = seam.Points[b].Along
		}
		longest = max(longest, end-start)
	}
	return longest
}

// unbounded asks about a row whose length is worked out between stations that the
// hull has not, or that its strake does not reach.
func (s *Shape) unbounded(row Strake, side Side, r Rules) finding.List {
	if row.From == "" && row.To == "" || row.Length.OK() && r.Lengths != LengthsComputed {
		return nil
	}
	why := ""
	for _, name := range []string{row.From, row.To} {
		if name != "" && s.station(name) < 0 {
			why = fmt.Sprintf("the offsets have no %s %q", s.Places, name)
		}
	}
	if why == "" {
		if l, k, ok := s.StrakeOf(row.Skin, row.Names()[0], side); !ok || s.part(l, k, s.station(row.From), s.station(row.To)) > 0 {
			return nil
		}
		why = "it has no such part"
	}
	return finding.List{{Kind: StrakeBetween, Cell: row.Cell,
		Text: fmt.Sprintf("%s %s is listed from %s to %s, and %s: it is taken from hood end to hood end",
			row.Skin, row.Name, orEnd(row.From, "its fore end"), orEnd(row.To, "its after end"), why)}}
}

// orEnd is a station in quotes, or the words for a strake's own end.
func orEnd(station, end string) string {
	if station == "" {
		return end
	}
	return strconv.Quote(station)
}

// Ends is how far aft a strake's fore end and after end lie, the farthest of its
// edges, from the same place as the stations. It is not ok where neither edge is
// drawn.
func (l *Lining) Ends(k int) (fore, after measure.Length, ok bool) {
	for _, seam := range l.Seams[k : k+2] {
		if seam.run == nil {
			continue
		}
		a, b := measure.Inches(seam.run.p[0].x), measure.Inches(seam.run.p[len(seam.run.p)-1].x)
		if !ok {
			fore, after, ok = a, b, true
		}
		fore, after = min(fore, a), max(after, b)
	}
	return fore, after, ok
}
