package read

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// The hull is drawn from one set of lines, both sides alike. Lines given over
// again, as of the other side, are a table of their own; every table that is no
// part of the first is said.

// OffsetsLeft is offsets that the hull is not drawn from.
var OffsetsLeft = &finding.Kind{
	Code: "offsets-left", Severity: finding.Warning, Title: "offsets that the hull is not drawn from",
	Why:    "The hull is drawn from one set of lines, both sides alike: where these differ from them, moulds and planks will not fit.",
	Remedy: "take out those that do not hold, or work each set as a job of its own, leaving the other out in a guide",
}

// lineKey is what a line is, whichever side it was measured on.
type lineKey struct {
	name string
	view hull.View
	role hull.Role
}

func keyOf(l hull.Line) lineKey {
	var words []string
	for _, w := range strings.Fields(strings.ToLower(measure.Fold(l.Name))) { // signs and all: WL +6 is not WL -6
		if len(w) < 2 || sideOf(w) == hull.BothSides {
			words = append(words, w)
		}
	}
	return lineKey{strings.Join(words, " "), l.View, l.Role}
}

// keep takes a table of offsets into the job, lines that it gives over again as a
// table apart. Over is the words that stand over a line, the nearest first.
func (r *reader) keep(o hull.Offsets, over func(hull.Line) []string) {
	seen := map[lineKey]bool{}
	again := o
	again.Stations, again.Lines = slices.Clone(o.Stations), nil
	once := o.Lines[:0:0]
	for _, l := range o.Lines {
		if k := keyOf(l); seen[k] {
			again.Lines = append(again.Lines, l)
		} else {
			seen[k] = true
			once = append(once, l)
		}
	}
	o.Lines = once
	if len(o.Lines) > 0 {
		r.sides[o.Cell] = sideIn(append([]string{o.Lines[0].Name}, over(o.Lines[0])...))
	}
	r.job.Offsets = append(r.job.Offsets, o)
	if len(again.Lines) > 0 {
		again.Cell = again.Lines[0].Cell
		r.keep(again, over)
	}
}

// wordsOver is the words of a table over one of its lines, the nearest first.
func (t *stationTable) wordsOver(l hull.Line) []string {
	var all []string
	line, _ := t.swap(l.Cell.Row, l.Cell.Col)
	for row := line; row >= t.head; row-- {
		all = append(all, t.words(row))
	}
	return append(all, t.caption...)
}

// otherSide says that two tables are of the two sides.
func (r *reader) otherSide(a, b hull.Offsets) bool {
	p, q := r.sides[a.Cell], r.sides[b.Cell]
	return p != q && p != hull.BothSides && q != hull.BothSides
}

// inBookOrder puts the tables of offsets in the order in which they stand in the
// books: the hull is drawn from the first.
func (r *reader) inBookOrder() {
	page := func(c source.Cell) int {
		return slices.IndexFunc(r.pages, func(p *page) bool { return p.book.Name == c.Book && p.sheet.Name == c.Sheet })
	}
	slices.SortStableFunc(r.job.Offsets, func(a, b hull.Offsets) int {
		return cmp.Or(page(a.Cell)-page(b.Cell), a.Cell.Row-b.Cell.Row, a.Cell.Col-b.Cell.Col)
	})
}

// left reports every table of offsets that the hull is not drawn from.
func (r *reader) left() {
	for i, o := range r.job.Offsets {
		if i == 0 {
			continue
		}
		first := r.job.Offsets[0]
		text := fmt.Sprintf("the offsets here are no part of those at %s, which the hull is drawn from", first.Cell)
		if r.otherSide(first, o) {
			text = fmt.Sprintf("the offsets here are of the %s side: the hull is drawn from those of the %s side at %s, both sides alike", r.sides[o.Cell], r.sides[first.Cell], first.Cell)
		}
		f := finding.Finding{Kind: OffsetsLeft, Cell: o.Cell, Also: []source.Cell{first.Cell}, Text: text}
		if r.otherPlaces(first, o) {
			f.Kind = FramesOpen
			f.Text = fmt.Sprintf("the offsets here are given at %ss and those at %s at %ss: nothing says that these are the same places, so the hull is drawn from the latter alone",
				r.callOf(o.Stations).places(), first.Cell, r.callOf(first.Stations).places())
			f.Do = "if they are the same places, call them alike or set \"frames are stations\" to yes; else take out those that do not hold"
		}
		r.add(f)
	}
}
