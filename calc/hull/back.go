package hull

import "strakebook/calc/measure"

// Back is how the back of a plank is worked to lie on the hull. It is done when the
// plank is sawn: the board is scarfed and sawn to its bevel as thick as it is dressed,
// and the edges of a back hollowed first would no longer bear on the bench (common
// practice, no source).
type Back struct {
	Hollow measure.Length // the deepest to be worked; below nothing where the back is rounded
	Worked measure.Length // what the board is dressed the thicker for it; 0 where it is let be
}

// back is how the back of a plank of such hollows is worked.
func (r Rules) back(hollows []measure.Length) Back {
	var b Back
	for _, h := range hollows {
		if h.Abs() > b.Hollow.Abs() {
			b.Hollow = h
		}
	}
	if b.Hollow.Abs() >= r.HollowFrom {
		b.Worked = r.Up(b.Hollow.Abs())
	}
	return b
}

// Rounded is how far the inside corners of the edges lie off the board's inside face.
// A hollowed back leaves them standing on it, and what the board is too thick for
// elsewhere comes off the outside in fairing; a rounded one has them as far off as it
// is worked, the plank's own thickness from the outside face.
func (b Back) Rounded() measure.Length {
	if b.Hollow < 0 {
		return b.Worked
	}
	return 0
}

// BackOf is how the back of a strake's plank is worked; of strips and of strakes that
// are not lined off, not at all.
func (s *Shape) BackOf(skin Skin, strake string, side Side) Back {
	if l, k, ok := s.StrakeOf(skin, strake, side); ok && l.Skin != Strips {
		return l.Strakes[k].Back
	}
	return Back{}
}

// Flat is how wide a strake's plank is straight across at a station, from corner to
// corner, over its width along the back: as its board is marked out and sawn where the
// back is worked afterwards. It is 1 where it is not, or the strake is not there.
func (s *Shape) Flat(skin Skin, strake string, side Side, station string) float64 {
	l, k, ok := s.StrakeOf(skin, strake, side)
	if !ok || l.Skin == Strips || l.Strakes[k].Back.Worked == 0 {
		return 1
	}
	if i := s.station(station); i >= 0 {
		if v, ok := l.swell(k, i); ok && v > 1 {
			return 1 / v
		}
	}
	return 1
}

// hair is as much over a step of the rule as is not seen at the bench: our choice.
const hair = measure.Millimetre / 200

// Up rounds what the hull asks of a board up to a sixty-fourth of an inch, or a
// tenth of a millimetre in a book that is in these; a hair over a step is the
// working-out's and not the plank's.
func (r Rules) Up(l measure.Length) measure.Length {
	step := measure.SixtyFourth
	if r.Units == measure.StyleMM {
		step = measure.Millimetre / 10
	}
	return max(0, l-hair).RoundUp(step)
}
