package stock

import (
	"fmt"
	"slices"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// PlanedOver is planks said to be planed thicker than the boards they are cut from.
var PlanedOver = &finding.Kind{
	Code: "planed-over", Severity: finding.Warning, Title: "planed thickness more than its rough board's",
	Why:    "Planing only takes off: the blade and the battens are worked out for planks thicker than these can be.",
	Remedy: "measure the planks on the bench again and set \"planed thickness\" to that, or cut them from thicker boards",
}

// CheckPlaned holds the thickness that the planks on the bench are said to have to the
// rough boards that the plan cuts them from.
func CheckPlaned(p Plan, planed measure.Length, r Rules) finding.List {
	var thin []Board
	pieces := 0
	for _, one := range p.Pieces {
		if one.Board < 0 || one.Skin == hull.Strips || one.Given {
			continue
		}
		b := p.Cuts[one.Board].Board
		if b.Thickness.Value >= planed {
			continue
		}
		pieces++
		if !slices.ContainsFunc(thin, func(o Board) bool { return o.Cell == b.Cell }) {
			thin = append(thin, b)
		}
	}
	if pieces == 0 {
		return nil
	}
	f := finding.Finding{Kind: PlanedOver, Cell: thin[0].Thickness.Cell, Reads: thin[0].Thickness.Text,
		Text: fmt.Sprintf("\"planed thickness\" is %s, and %d of the planks' pieces are cut from rough boards of less, of %s the first", r.Units.Small(planed), pieces, r.Units.Small(thin[0].Thickness.Value))}
	for _, b := range thin[1:] {
		f.Also = append(f.Also, b.Thickness.Cell)
	}
	return finding.List{f}
}
