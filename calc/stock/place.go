package stock

import "strakebook/calc/measure"

// lies is how a piece's ends lie on its board, from the board's own end: its fore
// end first, or where it is turned its after end first. It is turned end for end
// and face for face, the edge that is up staying up: a half turn, by which both
// slants lean as before and no feather changes its face.
func (p *Piece) lies(turned bool) (near, far End) {
	if turned {
		return p.Aft, p.Fore
	}
	return p.Fore, p.Aft
}

// row is the pieces of a lane as they lie along it.
type row struct {
	pieces []int
	turned []bool
}

func (w *row) add(turned bool, pieces ...int) {
	for _, k := range pieces {
		w.pieces, w.turned = append(w.pieces, k), append(w.turned, turned)
	}
}

// arrange puts the pieces of a lane in a row in which as many slanted cuts are
// shared as can be: a piece with one hood end, those scarfed at both ends, another
// with one hood end, the rest of those in pairs, scarf to scarf. Where two that
// meet have their scarfs at the same end, one of them is turned.
func arrange(pieces []Piece, all []int) row {
	var whole, foremost, aftmost, both []int
	for _, k := range all {
		switch p := &pieces[k]; {
		case p.slants() == 0:
			whole = append(whole, k)
		case p.Fore == Hood:
			foremost = append(foremost, k)
		case p.Aft == Hood:
			aftmost = append(aftmost, k)
		default:
			both = append(both, k)
		}
	}
	var out row
	// one lays a piece of the kind that need not be turned, or else of the other.
	one := func(right, other *[]int) {
		from := right
		if len(*right) == 0 {
			from = other
		}
		out.add(from == other, (*from)[0])
		*from = (*from)[1:]
	}
	begin := func() { one(&foremost, &aftmost) }
	end := func() { one(&aftmost, &foremost) }
	half := len(foremost) + len(aftmost)
	if half > 1 || len(foremost) == 1 {
		begin()
	}
	out.add(false, both...)
	if half > 1 || len(aftmost) == 1 {
		end()
	}
	for len(foremost)+len(aftmost) > 1 {
		begin()
		end()
	}
	out.add(false, append(append(foremost, aftmost...), whole...)...)
	return out
}

// place says where along the board each piece of a lane begins, from the
// board's own end, and returns what they take with a kerf after each. A piece that
// shares the slanted cut of the one before begins so much sooner.
func (c *Cut) place(from measure.Length, pieces []Piece, w row, shared []measure.Length, r Rules) measure.Length {
	at, last := from, Hood
	for i, k := range w.pieces {
		p := &pieces[k]
		near, far := p.lies(w.turned[i])
		saved := measure.Length(0)
		if i > 0 && last != Hood && near != Hood && shared[i] == shared[i-1] {
			saved = shared[i]
		}
		at -= saved
		c.From, c.Saved, c.Turned = append(c.From, at), append(c.Saved, saved), append(c.Turned, w.turned[i])
		c.Used += p.Length - max(0, saved-r.CrossKerf)
		at += p.Length + r.CrossKerf
		last = far
	}
	return at - from
}
