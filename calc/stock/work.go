package stock

import (
	"fmt"

	"strakebook/calc/finding"
	"strakebook/calc/lay"
)

// Work places the joints of every run and finds the boards its pieces are cut
// from. It returns the runs with their joints, in the order they came. Before is
// the pieces of a plan made before, to begin from: the new one comes to no more
// wherever the old one still stands.
func Work(runs []lay.Run, rack []Board, before []Before, lr lay.Rules, r Rules) ([]lay.Run, Plan, finding.List) {
	priced := allPriced(rack)
	out := append([]lay.Run{}, runs...)
	h := build(out, rack, lr, r, priced)
	found := checkRack(rack, h.needs, r)
	if len(rack) == 0 && len(runs) > 0 {
		found = append(found, finding.Finding{Kind: NoRack, Text: fmt.Sprintf(
			"the book holds no boards: pieces are cut to %s at most and boards are not chosen", r.Units.Long(r.Longest))})
	} else if len(rack) > 0 && !priced {
		found = append(found, finding.Finding{Kind: NoPrice, Cell: rack[0].Cell, Text: "some boards have no price: the least board feet are sought, not the least cost"})
	}
	found = append(found, noStock(out, h, rack, r)...)
	a := newAnswer(h, out, rack)
	if len(before) > 0 {
		a.begin = byMark(before)
	}
	parts := h.parts()
	a.watch.told = r.Told
	for i := range parts {
		a.watch.expect(parts[i].moves(r.Tries))
	}
	for _, part := range parts {
		a.solve(part, r)
	}
	found = append(found, a.unlaid(lr)...)
	broken := lay.Check(out, lr)
	found = append(found, broken...)
	found = append(found, lay.CheckRows(out, a.longest(), lr)...)
	a.cut(r, priced)
	found = append(found, a.unserved(r)...)
	a.stays(r)
	a.skins(r)
	a.plan.Order = order(a.plan.Cuts, rack, r)
	a.summarize(r, priced, len(broken) > 0)
	return out, a.plan, found
}

func allPriced(rack []Board) bool {
	for _, b := range rack {
		if !b.Price.OK() {
			return false
		}
	}
	return len(rack) > 0
}
