package hull

import "strings"

// Listed is the row of the list of strakes that a strake of a side is of, by the row's
// name or as one of those it stands for, whatever the case; of no skin, the first that
// has it.
func Listed(strakes []Strake, skin Skin, strake string, side Side) (Strake, bool) {
	for _, s := range strakes {
		if skin != "" && s.Skin != skin || side != BothSides && s.Side != BothSides && s.Side != side {
			continue
		}
		if strings.EqualFold(s.Name, strake) {
			return s, true
		}
		for _, name := range s.Names() {
			if strings.EqualFold(name, strake) {
				return s, true
			}
		}
	}
	return Strake{}, false
}

// StrakeOf is the lining that a strake of a side is in, and its place there, as the
// hull is lined off; of no skin, the first that has it.
func (s *Shape) StrakeOf(skin Skin, strake string, side Side) (l *Lining, place int, ok bool) {
	if s == nil {
		return nil, 0, false
	}
	for i := range s.Linings {
		l := &s.Linings[i]
		if skin != "" && l.Skin != skin || side != BothSides && l.Side != BothSides && l.Side != side {
			continue
		}
		for k := range l.Strakes {
			if strings.EqualFold(l.Strakes[k].Name, strake) {
				return l, k, true
			}
		}
	}
	return nil, 0, false
}

// edge is the seam along the upper or lower edge of a strake.
func (s *Shape) edge(skin Skin, strake string, side Side, upper bool) (Seam, bool) {
	l, k, ok := s.StrakeOf(skin, strake, side)
	if !ok {
		return Seam{}, false
	}
	if !upper {
		k++
	}
	return l.Seams[k], true
}
