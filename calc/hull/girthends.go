package hull

import (
	"fmt"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// doubted says that a line of one of the roles is given at a station and left out
// since a figure of it is not believed.
func (h *hull) doubted(k int, roles ...Role) bool {
	for _, role := range roles {
		for _, l := range h.o.Lines {
			if l.Role == role && l.Values[k].State == source.Blank && strings.TrimSpace(l.Values[k].Text) != "" {
				return true
			}
		}
	}
	return false
}

// doubtedEnds says at which stations the girth lacks its end because a figure there is
// doubted, and not because none is given.
func (h *hull) doubtedEnds() finding.List {
	var found finding.List
	var foot, head []string
	for k, s := range h.sections {
		if s.line == nil {
			continue
		}
		if s.from == OtherLine && h.doubted(k, Rabbet, Keel) {
			foot = append(foot, h.o.called(k))
		}
		if !s.toDeck && h.doubted(k, Deck) {
			head = append(head, h.o.called(k))
		}
	}
	if len(foot) > 0 {
		found = append(found, finding.Finding{Kind: GirthFrom, Cell: h.o.Cell, Do: "decide the doubted figure of the rabbet or keel there",
			Text: fmt.Sprintf("the rabbet or keel is given and doubted at %s and left out: the girth there starts from the lowest line", strings.Join(foot, ", "))})
	}
	if len(head) > 0 {
		found = append(found, finding.Finding{Kind: GirthTo, Cell: h.o.Cell, Do: "decide the doubted figure of the deck there",
			Text: fmt.Sprintf("the deck is given and doubted at %s and left out: the girth there ends at the highest line", strings.Join(head, ", "))})
	}
	return found
}

// ButtockOutside is a buttock that lies outside the hull.
var ButtockOutside = &finding.Kind{
	Code: "buttock-outside", Severity: finding.Warning, Title: "buttock outside the hull",
	Why:    "A buttock farther out than the hull is wide crosses nothing: its place is in another unit than the table, or its name is a number and no place.",
	Remedy: "write the buttock's distance out with its unit, as in Buttock 6 in",
}

// beyond says that a line is a buttock farther out than any half-breadth of the table.
func (t *table) beyond(l Line) bool {
	return l.Role == Buttock && l.At.OK() && t.breadth > 0 && l.At.Value.Inches() > t.breadth+t.step
}

// greatest is the greatest half-breadth of the table.
func (t *table) greatest() float64 {
	widest := 0.0
	for i, l := range t.o.Lines {
		for k, ok := range t.ok[i] {
			if ok && l.View == HalfBreadth {
				widest = max(widest, t.v[i][k])
			}
		}
	}
	return widest
}

// buttocksOutside is the buttocks that are left out since they lie outside the hull.
func (h *hull) buttocksOutside() finding.List {
	var found finding.List
	for _, l := range h.o.Lines {
		if !h.beyond(l) {
			continue
		}
		f := finding.Finding{Kind: ButtockOutside, Cell: l.Cell, Reads: l.Name,
			Text: fmt.Sprintf("%s is read as %s out and left out of the sections: the hull is %s at its widest", l.Name, h.r.Units.Long(l.At.Value), h.r.Units.Long(measure.Inches(h.breadth)))}
		if inches := l.At.Value / 12; h.o.Form.Unit == measure.InFeet && inches.Inches() <= h.breadth {
			f.Suggests = fmt.Sprintf("%.4g in", inches.Inches())
		}
		found = append(found, f)
	}
	return found
}
