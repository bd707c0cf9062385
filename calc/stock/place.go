package stock

import "strakebook/calc/measure"

// arrange puts the pieces of a lane in the order they come off it: in the order
// of hanging, or, where slanted cuts are shared, so that as many as can be are: a
// piece with one hood end, those scarfed at both ends, another with one hood end,
// the rest of those in pairs.
func arrange(pieces []Piece, all []int) []int {
	var whole, half, both []int
	for _, k := range all {
		switch pieces[k].slants() {
		case 0:
			whole = append(whole, k)
		case 1:
			half = append(half, k)
		default:
			both = append(both, k)
		}
	}
	var out []int
	if len(half) > 0 {
		out = append(out, half[0])
		half = half[1:]
	}
	out = append(out, both...)
	return append(append(out, half...), whole...)
}

// place says where along the board each piece of a lane begins, from the
// board's own end. A piece that shares the slanted cut of the one before begins
// so much before that one ends.
func (c *Cut) place(from measure.Length, pieces []Piece, shared []measure.Length, r Rules) {
	at, free := from, 0 // free: the end last cut is a scarf that another may share
	before := measure.Length(0)
	first := len(c.From)
	for i := first; i < len(c.Pieces); i++ {
		p := &pieces[c.Pieces[i]]
		n, save := p.slants(), shared[i-first]
		joined := i > first && free > 0 && n > 0 && save > 0 && save == before
		if joined {
			at -= save
			n--
		}
		c.From = append(c.From, at)
		at += p.Length + r.CrossKerf
		free, before = n, shared[i-first]
	}
}
