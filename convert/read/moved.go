package read

import (
	"fmt"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// DecisionMoved is a decision followed to the place that its row or column moved to.
var DecisionMoved = &finding.Kind{
	Code: "decision-moved", Severity: finding.Note, Title: "decision followed to where its row stands now",
	Why:    "Rows or columns were put in, taken out or changed places since it was written: what begins its row and heads its column stands together in one place only, with the same reading.",
	Remedy: "nothing, if it is the same figure; else write undo in its place on the Warnings sheet",
}

// follow takes a decision to where what begins its row and heads its column stands
// now; where it stands in that place still, or that cannot be told for certain, it is
// left where it was.
func (r *reader) follow(p *page, w *warned) {
	d := &w.decision
	if p.moved(*w) == "" {
		return
	}
	to, ok := p.nowAt(*w)
	if !ok {
		return
	}
	r.add(finding.Finding{Kind: DecisionMoved, Cell: to, Reads: d.Reads,
		Text: fmt.Sprintf("the decision on %q at %s is followed here, where %q stands now", d.Code, d.Cell.Ref(), w.beside)})
	d.Cell = to
}

// moved is why a decision may not be of the cell that stands in its place now, "" where
// it is. One blank is like another, and so are two equal figures: the row and column
// must be those it was written of. Of a blank they must be known.
func (p *page) moved(w warned) string {
	d := w.decision
	now := p.sheet.Beside(d.Cell.Row, d.Cell.Col)
	was, _ := sheet.Alone(w.beside)
	switch {
	case w.beside == "" && d.Reads == "" && d.Text != "":
		return "the cell was blank, and the Warnings sheet does not say of which row and column it was"
	case w.beside == "" || strings.EqualFold(was, now) || strings.EqualFold(w.beside, now):
		return ""
	}
	return fmt.Sprintf("in its place stands %q now and %q when it was written", now, was)
}

// nowAt is the one cell of the sheet that is known by the row and column a decision was
// written of, if that was the only one then as well and reads as it did: no decision is
// ever followed to another plank.
func (p *page) nowAt(w warned) (source.Cell, bool) {
	was, alone := sheet.Alone(w.beside)
	if !alone {
		return source.Cell{}, false
	}
	if p.ones == nil {
		p.ones = p.sheet.Ones()
	}
	one := p.ones[strings.ToLower(was)]
	if one.Of != 1 {
		return source.Cell{}, false
	}
	w.decision.Cell = p.cell(one.Row, one.Col)
	c := p.raw(one.Row, one.Col)
	switch _, changed := p.changed(w); {
	case w.decision.Reads == "":
		return w.decision.Cell, w.decision.Text != "" && !filled(c)
	default:
		return w.decision.Cell, !changed && !measure.IsDitto(c.Text)
	}
}
