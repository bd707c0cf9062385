package stock

// summarize adds the plan up: what is used, net and waste by the pieces that have
// a board. One that breaks rules may come to less than any that keeps them.
func (a *answer) summarize(r Rules, priced, broken bool) {
	p := &a.plan
	s := &p.Summary
	s.Bound, s.TotalBound = a.bound.value(), a.whole.value()
	left := false // a strake the bound reckons with, by lengths taken down to an inch, and the plan has not
	for i := range a.runs {
		s.Joints += len(a.runs[i].Joints)
		left = left || a.left(i)
	}
	s.Pieces, s.Boards, s.Priced = len(p.Pieces), len(p.Cuts), priced
	for _, piece := range p.Pieces {
		if piece.Board < 0 {
			s.Unserved++
			s.Lacking += piece.Length
			continue
		}
		s.NetFeet += piece.Feet()
	}
	for _, c := range p.Cuts {
		s.Bought += c.Board.Length.Value
		s.Used += c.Used
		s.BoardFeet += c.Board.Feet(r)
		s.Spent += c.Cost
	}
	s.Total = s.Spent + r.JointCost*float64(s.Joints)
	if priced {
		s.Cost = s.Spent
	}
	if s.BoardFeet > 0 && s.NetFeet > 0 {
		s.WasteOfBought = 100 * float64(s.BoardFeet-s.NetFeet) / float64(s.BoardFeet)
		s.WasteOnNet = 100 * float64(s.BoardFeet-s.NetFeet) / float64(s.NetFeet)
	}
	switch {
	case s.Unserved > 0 || left || len(p.Cuts) == 0:
		s.Bound, s.TotalBound = 0, 0
	case broken:
		s.Bound, s.TotalBound = min(s.Bound, s.Spent), min(s.TotalBound, s.Total)
	}
}
